package org.benchleaf.publish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.benchleaf.DemoSite;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Reads the charts of the demo as a reader would, off their axes, and holds them against tables and files. */
class DrawnNumbersTest {

    private static final String PLAN = "-plan.csv";
    private static final Pattern CELL = Pattern.compile("(?:^|,)(?:\"((?:[^\"]|\"\")*)\"|([^,\"]*))");
    private static final Map<String, String> FILES = new LinkedHashMap<>();
    private static final Map<String, Document> PAGES = new LinkedHashMap<>();

    @BeforeAll
    static void read() {
        DemoSite.made().files().forEach(file -> {
            if (file.path().matches("cases/.*\\.(csv|json)")) {
                FILES.put(file.path(), new String(file.bytes(), StandardCharsets.UTF_8));
            } else if (file.isPage()) {
                PAGES.put(file.path(), Jsoup.parse(new String(file.bytes(), StandardCharsets.UTF_8)));
            }
        });
    }

    private static Stream<Element> charts() {
        return PAGES.values().stream().flatMap(page -> page.select("svg[data-table]").stream());
    }

    private static Element chart(String page, String id) {
        return PAGES.get(page).getElementById(id + "-title").parent();
    }

    private static double number(String text) {
        return Double.parseDouble(text.replace('−', '-').replace("\u202F", ""));
    }

    @Test
    void each_drawn_number_stands_in_a_cell_beside_it() {
        assertThat(charts()).hasSizeGreaterThan(15).allSatisfy(chart -> {
            Element beside = chart.ownerDocument().getElementById(chart.attr("data-table"));
            List<String> cells = beside.select("td, th").eachText();
            assertThat(chart.select("[data-value]")).isNotEmpty().allSatisfy(mark -> {
                String told = mark.attr("data-value");
                // A time such as "3 h 30 min" is one cell; coordinates are several numbers, each a cell of its own.
                assertThat(cells.contains(told) || cells.containsAll(List.of(told.split(" "))) || cells.containsAll(ends(told)))
                        .as(told).isTrue();
            });
        });
    }

    /** Of a range such as "30–45 min" the two ends, each with its unit; their cells stand beside each other. */
    private static List<String> ends(String told) {
        String[] ends = told.split("\\h?–\\h?");
        return ends.length < 2 ? List.of(told) : List.of(ends[0].matches("\\d+") ? ends[0] + ends[1].replaceFirst("\\d+", "") : ends[0],
                ends[1]);
    }

    @Test
    void each_drawing_has_words_for_those_who_do_not_see_it() {
        assertThat(charts()).allSatisfy(chart -> {
            assertThat(chart.attr("role")).isEqualTo("img");
            for (String id : chart.attr("aria-labelledby").split(" ")) {
                assertThat(chart.getElementById(id).text()).isNotBlank();
            }
            assertThat(chart.parents().select("figcaption, .evidence-plot__key").first().text()).isNotBlank();
            assertThat(chart.select("a, [style]")).isEmpty();
        });
    }

    /** The axis as a reader takes it: two numbers written below two lines give the place of every other. */
    private static double onAxis(Element chart, int row, double value) {
        TreeMap<Integer, List<Element>> rows = new TreeMap<>();
        chart.select("text[text-anchor=middle]").stream().filter(text -> text.text().matches("[−\\d.]+"))
                .forEach(text -> rows.computeIfAbsent(Integer.valueOf(text.attr("y")), any -> new ArrayList<>()).add(text));
        List<Element> axis = new ArrayList<>(rows.values()).get(row);
        Element first = axis.get(0);
        Element last = axis.get(axis.size() - 1);
        return between(number(first.text()), number(first.attr("x")), number(last.text()), number(last.attr("x")), value);
    }

    private static double between(double from, double fromAt, double to, double toAt, double value) {
        return fromAt + (value - from) / (to - from) * (toAt - fromAt);
    }

    @Test
    void a_reading_stands_where_the_axis_has_its_number() {
        Element chart = chart("cases/tide-table/results.html", "result-1-ph-chart");
        assertThat(chart.select("circle[data-value]")).hasSize(6).allSatisfy(dot ->
                assertThat(number(dot.attr("cx"))).isCloseTo(onAxis(chart, 0, number(dot.attr("data-value"))), within(1.5)));
        assertThat(chart.select("rect.chart__mark--after[data-value]")).hasSize(6).allSatisfy(square ->
                assertThat(number(square.attr("x")) + 6)
                        .isCloseTo(onAxis(chart, 0, number(square.attr("data-value"))), within(1.5)));
    }

    /** By hand from the readings: changes 2.9, 2.6, 2.9, 2.8, 2.6; mean 2.76; s 0.1517; t(4) 2.776; ± 0.188. */
    @Test
    void the_change_stands_on_its_own_axis_with_its_interval() {
        Element chart = chart("cases/tide-table/results.html", "result-1-ph-chart");
        Element reach = chart.selectFirst(".chart__path--span");
        assertThat(reach.attr("data-value")).isEqualTo("2.57 2.95");
        Matcher ends = Pattern.compile("M(\\d+) \\d+v14M\\d+ \\d+H(\\d+)").matcher(reach.attr("d"));
        assertThat(ends.find()).isTrue();
        assertThat(number(ends.group(1))).isCloseTo(onAxis(chart, 1, 2.57), within(1.5));
        assertThat(number(ends.group(2))).isCloseTo(onAxis(chart, 1, 2.95), within(1.5));
        assertThat(chart.selectFirst(".chart__path--change").attr("data-value")).isEqualTo("2.76");
    }

    @Test
    void lighter_lies_higher_and_yellower_lies_to_the_right() {
        Element chart = chart("cases/tide-table/results.html", "result-2-colour-plane");
        List<Element> upward = chart.select("text[text-anchor=end]").stream()
                .filter(text -> text.text().matches("[−\\d.]+")).toList();
        Element first = upward.get(0);
        Element last = upward.get(upward.size() - 1);
        assertThat(chart.select("circle[data-value]")).hasSize(3).allSatisfy(dot -> {
            String[] lightnessAndYellowness = dot.attr("data-value").split(" ");
            assertThat(number(dot.attr("cx"))).isCloseTo(onAxis(chart, 0, number(lightnessAndYellowness[1])), within(1.5));
            // The baseline of a mark's number lies five units below its line.
            assertThat(number(dot.attr("cy"))).isCloseTo(between(number(first.text()), number(first.attr("y")) - 5,
                    number(last.text()), number(last.attr("y")) - 5, number(lightnessAndYellowness[0])), within(1.5));
        });
        assertThat(number(first.attr("y"))).isGreaterThan(number(last.attr("y")));
    }

    /** On a scale of roots a step that begins after four times as long stands twice as far from the start. */
    @Test
    void a_step_begins_where_the_scale_of_roots_has_its_start() {
        Element chart = chart("cases/tide-table/results.html", "times-chart");
        List<List<String>> rows = rows(FILES.get("cases/tide-table/times.csv"));
        List<Element> bars = chart.select("rect.chart__bar--waiting[data-value]");
        assertThat(bars).hasSize(rows.size() - 1);
        Element axis = chart.select("text[text-anchor=middle]").stream().filter(text -> text.text().equals("24\u202Fh"))
                .findFirst().orElseThrow();
        double zero = number(bars.get(0).attr("x"));
        double day = number(axis.attr("x")) - zero;
        for (int i = 0; i < bars.size(); i++) {
            double minutes = Double.parseDouble(rows.get(i + 1).get(1));
            assertThat(number(bars.get(i).attr("x")) - zero).as(rows.get(i + 1).get(0))
                    .isCloseTo(day * Math.sqrt(minutes / 1440), within(1.5));
        }
    }

    static List<List<String>> rows(String csv) {
        return csv.lines().map(line -> {
            List<String> cells = new ArrayList<>();
            Matcher cell = CELL.matcher(line);
            while (cell.find()) {
                cells.add(cell.group(1) == null ? cell.group(2) : cell.group(1).replace("\"\"", "\""));
            }
            return cells;
        }).toList();
    }

    @Test
    void each_table_and_its_file_hold_the_same() {
        List<String> compared = new ArrayList<>();
        PAGES.keySet().stream().filter(path -> path.startsWith("cases/"))
                .forEach(path -> PAGES.get(path).select(".table__data a").forEach(link -> {
            String file = beside(path, link.attr("href"));
            List<List<String>> rows = rows(FILES.get(file));
            List<Element> shown = link.parent().previousElementSibling().select("tr");
            assertThat(shown).as(file).hasSize(rows.size());
            for (int i = 1; i < rows.size(); i++) {
                List<String> cells = shown.get(i).children().eachText();
                for (int k = 0; k < cells.size(); k++) {
                    assertThat(same(cells.get(k), rows.get(i).get(k))).as(file + ": " + cells.get(k) + " and "
                            + rows.get(i).get(k)).isTrue();
                }
            }
            compared.add(file);
        }));
        assertThat(compared).hasSizeGreaterThan(15).doesNotHaveDuplicates();
        assertThat(FILES.keySet().stream().filter(file -> file.endsWith(".csv") && !file.endsWith(PLAN)))
                .containsExactlyInAnyOrderElementsOf(compared);
    }

    /** The page has a column for each station, the file a line for each piece of work. */
    @Test
    void the_plan_of_a_class_and_its_file_tell_the_same_times() {
        List<String> plans = FILES.keySet().stream().filter(file -> file.endsWith(PLAN)).toList();
        assertThat(plans).hasSize(2).allSatisfy(file -> {
            List<List<String>> lines = rows(FILES.get(file));
            List<String> cells = PAGES.get(file.replace(PLAN, ".html")).select("#plan-numbers td").eachText();
            assertThat(cells).hasSize(lines.size() - 1);
            Map<String, Integer> times = new TreeMap<>();
            cells.forEach(cell -> times.merge(cell.substring(cell.length() - 5), 1, Integer::sum));
            lines.stream().skip(1).forEach(line -> times.merge(line.get(3).substring(11), -1, Integer::sum));
            assertThat(times.values()).containsOnly(0);
        });
    }

    /** What a link of a page leads to. */
    private static String beside(String page, String href) {
        return URI.create(page).resolve(href).getPath();
    }

    /** The cells of a page's tables that have a file, row by row. */
    private static List<List<String>> cells(String path) {
        return PAGES.get(path).select(".table__data").stream().flatMap(data -> data.previousElementSibling().select("tr").stream())
                .map(row -> row.children().eachText()).toList();
    }

    /** The numbers of a text in their order, with a point before their fractions. */
    private static List<String> numbersIn(String text) {
        return Pattern.compile("\\d+(?:[.,]\\d+)?").matcher(text).results().map(number -> number.group().replace(',', '.')).toList();
    }

    @Test
    void a_table_on_a_translated_page_has_the_files_and_the_numbers_of_the_original() {
        List<String> translated = PAGES.keySet().stream().filter(path -> path.matches("..+/cases/.+/results.html")).toList();
        assertThat(translated).hasSizeGreaterThan(3).allSatisfy(path -> {
            String original = path.substring(path.indexOf("cases/"));
            assertThat(PAGES.get(path).select(".table__data a").eachAttr("href").stream().map(href -> beside(path, href)))
                    .containsExactlyElementsOf(PAGES.get(original).select(".table__data a").eachAttr("href").stream()
                            .map(href -> beside(original, href)).toList());
            List<List<String>> rows = cells(original);
            List<List<String>> told = cells(path);
            assertThat(told).hasSameSizeAs(rows);
            for (int i = 0; i < rows.size(); i++) {
                assertThat(told.get(i).stream().map(DrawnNumbersTest::numbersIn)).as(path + ": " + told.get(i))
                        .containsExactlyElementsOf(rows.get(i).stream().map(DrawnNumbersTest::numbersIn).toList());
            }
        });
    }

    /** Words of a page with a common space where the page sets a unit to its number. */
    private static String plain(String shown) {
        return shown.replace('\u202F', ' ');
    }

    /** The same number, the same words, a time in minutes, or a reason instead of a number. */
    private static boolean same(String shown, String filed) {
        if (plain(shown).equals(filed) || shown.replace('−', '-').replace("\u202F", "").equals(filed)) {
            return true;
        }
        Matcher part = Pattern.compile("(\\d+)[\u202F ](min|h|d)").matcher(shown);
        double minutes = 0;
        double step = 1;
        while (part.find()) {
            double size = part.group(2).equals("d") ? 1440 : part.group(2).equals("h") ? 60 : 1;
            minutes += Integer.parseInt(part.group(1)) * size;
            step = Math.max(step, part.group(2).equals("d") ? 30 : 0.5);
        }
        return filed.isEmpty() ? !shown.isBlank() && !shown.matches(".*\\d.*")
                : filed.matches("\\d+") && Math.abs(minutes - Double.parseDouble(filed)) <= step;
    }

    @Test
    void each_file_of_numbers_is_described_column_by_column() throws Exception {
        for (String csv : FILES.keySet().stream().filter(file -> file.endsWith(".csv")).toList()) {
            JsonNode described = new ObjectMapper().readTree(FILES.get(csv + "-metadata.json"));
            assertThat(csv).endsWith("/" + described.get("url").asText());
            List<List<String>> rows = rows(FILES.get(csv));
            List<String> titles = new ArrayList<>();
            for (JsonNode column : described.at("/tableSchema/columns")) {
                titles.add(column.get("titles").asText());
                assertThat(column.get("name").asText()).matches("[A-Za-z0-9_]+");
                assertThat(column.get("dc:description").asText()).isNotBlank();
                int k = titles.size() - 1;
                if (column.get("datatype").asText().equals("number")) {
                    assertThat(rows.stream().skip(1).map(row -> row.get(k))).as(csv).allMatch(cell ->
                            cell.isEmpty() || cell.matches("-?\\d+(\\.\\d+)?"));
                }
            }
            assertThat(titles).as(csv).isEqualTo(rows.get(0)).doesNotHaveDuplicates();
        }
    }

    @Test
    void the_data_set_for_programs_says_no_number_that_the_page_does_not() throws Exception {
        for (String path : PAGES.keySet().stream().filter(page -> page.endsWith("/results.html")).toList()) {
            Document page = PAGES.get(path);
            JsonNode set = new ObjectMapper().readTree(page.selectFirst("script[type=application/ld+json]").data());
            String text = page.body().text();
            assertThat(set.get("variableMeasured")).allSatisfy(variable ->
                    assertThat(text).contains(variable.get("value").asText()));
            assertThat(set.get("distribution")).allSatisfy(file -> assertThat(FILES)
                    .containsKey(beside(path, file.get("contentUrl").asText())));
        }
    }

    @Test
    void every_figure_of_a_result_opens_to_its_working() throws Exception {
        for (String path : FILES.keySet().stream().filter(file -> file.endsWith("/figures.json")).toList()) {
            Document page = PAGES.get(path.replace("figures.json", "results.html"));
            for (JsonNode figure : new ObjectMapper().readTree(FILES.get(path)).get("figures")) {
                String id = figure.get("id").asText();
                if (id.startsWith("results.")) {
                    assertThat(page.getElementById("working-" + id.replace('.', '-'))).as(id).isNotNull();
                }
            }
        }
    }

    @Test
    void results_and_materials_never_call_anything_safe() {
        PAGES.forEach((path, page) -> {
            if (path.startsWith("materials/") || path.endsWith("/results.html")) {
                assertThat(page.text().toLowerCase(java.util.Locale.ROOT)).as(path).doesNotContainPattern("\\bsafe\\b");
            }
        });
    }

    @Test
    void a_material_tells_its_hazard_its_limits_and_where_they_were_read() {
        Element ethanol = PAGES.get("materials/ethanol-96.html").getElementById("hazards");
        // Regulation (EC) No 1272/2008, Annex VI, index 603-002-00-5: Flam. Liq. 2, H225, GHS02, Danger.
        assertThat(ethanol.text()).contains("H225 Highly flammable liquid and vapour", "Danger", "flame");
        // NIOSH Pocket Guide, ethyl alcohol: REL and PEL 1000 ppm, IDLH 3300 ppm (10 % of the lower limit).
        assertThat(ethanol.text()).contains("1000\u202Fppm", "3300\u202Fppm");
        assertThat(ethanol.select("a[href*=sources.html]")).hasSizeGreaterThan(2);
        assertThat(ethanol.select("details")).isEmpty();
        assertThat(PAGES.get("materials/soft-brush.html").getElementById("hazards")).isNull();
    }

    @Test
    void each_rule_says_why_how_heavy_and_where_from() {
        Document rules = PAGES.get("rules.html");
        assertThat(DemoSite.made().library().rules()).isNotEmpty().allSatisfy(rule -> {
            Element entry = rules.getElementById("rule-" + rule.id());
            assertThat(plain(entry.text())).contains(rule.statement(), rule.backing().sources().isEmpty()
                    ? "common practice, no source" : "[");
            assertThat(entry.select("dt").eachText()).contains("Weight", "Why", "Where from", "Asked of");
            rule.change().ifPresent(change -> assertThat(plain(entry.text())).contains(change.reason()));
        });
        DemoSite.made().library().matrix().rows().forEach(row -> DemoSite.made().library().matrix().actions().forEach(
                action -> assertThat(rules.getElementById("rule-" + row.id() + "-" + action.id())).isNotNull()));
    }
}
