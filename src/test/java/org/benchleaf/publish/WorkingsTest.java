package org.benchleaf.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.DemoSite;
import org.benchleaf.model.Library;
import org.benchleaf.model.LibraryTexts;
import org.benchleaf.model.Method;
import org.benchleaf.model.Translation;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** No figure of the demo stands on a page without the way in which it was worked out. */
class WorkingsTest {

    /** A number, a range or a number with its tolerance, and the word behind it, which may be a unit. */
    private static final Pattern AMOUNT = Pattern.compile("[−-]?\\d[\\d.]*(?:,\\d+)?(?: ?[–±] ?\\d[\\d.]*(?:,\\d+)?)? [^ ,;:)(]+");

    private static final Map<String, Document> PAGES = new TreeMap<>();
    /** By language, then by the anchor of the method. */
    private static final Map<String, Map<String, Method>> METHODS = new HashMap<>();
    private static final Map<String, Properties> WORDS = new HashMap<>();

    @BeforeAll
    static void make() throws IOException {
        DemoSite demo = DemoSite.made();
        demo.files().stream().filter(SiteFile::isPage).forEach(file ->
                PAGES.put(file.path(), Jsoup.parse(new String(file.bytes(), StandardCharsets.UTF_8))));
        tell("en", demo.library());
        for (Translation translation : DemoSite.worked("tide-table", demo.library()).source().translations()) {
            tell(translation.language(), LibraryTexts.in(translation.phrases(), demo.library()));
        }
    }

    private static void tell(String language, Library library) throws IOException {
        METHODS.put(language,
                library.methods().values().stream().collect(Collectors.toMap(method -> "method-" + method.name(), method -> method)));
        Properties words = new Properties();
        try (Reader file = Files.newBufferedReader(Path.of("src/main/resources/words/interface_" + language + ".properties"))) {
            words.load(file);
        }
        WORDS.put(language, words);
    }

    @Test
    void every_working_tells_formula_numbers_result_uncertainty_source_and_caveat() {
        List<String> lacking = new ArrayList<>();
        PAGES.forEach((path, page) -> page.select(".working").forEach(working -> {
            String language = page.child(0).attr("lang");
            Method method = METHODS.get(language).get(working.select(".working__title a").attr("href").replaceFirst(".*#", ""));
            require(lacking, path, working, "method", method != null);
            Element whole = whole(page, working);
            require(lacking, path, working, "formula as MathML", !whole.select(".working__formula math *").isEmpty());
            require(lacking, path, working, "formula as text", whole.select(".working__plain").text().length() > 2);
            require(lacking, path, working, "numbers put in", !working.select(".working__given tbody tr").isEmpty()
                    && working.select(".working__given tbody td").eachText().stream().noneMatch(String::isBlank));
            List<String> told = working.select(".working__result dt").eachText();
            require(lacking, path, working, "uncertainty and source", told.containsAll(Stream.of("working.spread", "working.sources")
                    .map(WORDS.get(language)::getProperty).toList()));
            require(lacking, path, working, "anything in a line", working.select(".working__result dd").eachText()
                    .stream().noneMatch(String::isBlank));
            String result = plain(whole.select(".working__result").text());
            require(lacking, path, working, "caveats of the method", method == null
                    || method.caveats().stream().map(WorkingsTest::plain).allMatch(result::contains));
        }));
        assertThat(lacking).isEmpty();
        assertThat(WORDS.get("en")).containsEntry("working.full", "Result with more digits").containsEntry("working.spread", "Uncertainty")
                .containsEntry("working.sources", "Sources");
    }

    /** The unit of a number is that of its uncertainty, which has at most two digits that count (JCGM 100:2008, 7.2.6). */
    @Test
    void an_uncertainty_is_no_finer_than_its_number_and_nothing_is_told_twice() {
        Pattern half = Pattern.compile("± (0[.]0*)?(\\d[\\d.]*)( [^ ,]+)?,.*");
        List<String> wrong = new ArrayList<>();
        PAGES.forEach((path, page) -> page.select(".working").forEach(working -> {
            String number = plain(working.select(".working__number").text()).strip();
            working.select(".working__result > div").forEach(line -> {
                String value = plain(line.select("dd").text()).strip();
                Matcher told = half.matcher(value);
                if (line.select("dt").text().equals("Result with more digits") && value.equals(number)) {
                    wrong.add(path + ": " + number + " twice");
                } else if (line.select("dt").text().equals("Uncertainty") && told.matches()
                        && (told.group(2).replace(".", "").replaceFirst("0+$", "").length() > 2
                        || number.matches("[^a-z]* .*") && !Optional.ofNullable(told.group(3)).orElse("").strip()
                        .equals(plain(working.select(".working__unit").text()).strip()))) {
                    wrong.add(path + ": " + number + ", " + value);
                }
            });
        }));
        assertThat(wrong).isEmpty();
    }

    /** The working that tells the formula: itself, or the one of the same method on the same page to which it leads. */
    private static Element whole(Document page, Element working) {
        String method = working.select(".working__title a").attr("href");
        Element link = working.selectFirst(".working__body > p:not(.working__title):not(.working__plain) > a[href^=#working-]");
        if (link == null) {
            return working;
        }
        Element whole = page.getElementById(link.attr("href").substring(1)).closest(".working");
        assertThat(whole.select(".working__title a").attr("href")).isEqualTo(method);
        return whole;
    }

    @Test
    void a_formula_stands_once_on_a_page_and_k_is_explained_where_it_first_stands() {
        PAGES.forEach((path, page) -> {
            List<String> methods = page.select(".working:has(.working__plain) .working__title a").eachAttr("href");
            assertThat(methods).as(path).doesNotHaveDuplicates();
        });
        assertThat(PAGES.get("cases/tide-table/results.html").select(".working").text()
                .split("twice the standard uncertainty", -1)).hasSize(2);
        assertThat(PAGES.get("cases/tide-table/results.html").select(".working:contains(k = 2)").first().text())
                .contains("k = 2: twice the standard uncertainty; about 95 of 100 values lie inside it.");
    }

    private static void require(List<String> lacking, String path, Element working, String what, boolean there) {
        if (!there) {
            lacking.add(path + ": " + working.select(".working__label").text() + " lacks " + what);
        }
    }

    @Test
    void every_case_shows_workings_on_each_of_its_pages() {
        Stream.of("index", "steps", "preparation", "results").forEach(page -> assertThat(PAGES.keySet().stream()
                .filter(path -> path.matches("cases/[^/]+/" + page + ".html"))).hasSize(5)
                .allSatisfy(path -> assertThat(PAGES.get(path).select(".working")).as(path).isNotEmpty()));
    }

    @Test
    void a_figure_told_outside_of_its_working_has_its_working_on_the_same_page() throws IOException {
        List<String> bare = new ArrayList<>();
        for (Map.Entry<String, Document> page : PAGES.entrySet()) {
            Matcher folder = Pattern.compile("(?:[a-z]+/)?(cases/[^/]+/)").matcher(page.getKey());
            if (folder.lookingAt()) {
                Set<String> workedOut = workedOut(folder.group());
                workedOut.removeAll(written(folder.group(1)));
                Set<String> shown = numbers(page.getValue());
                if (page.getKey().contains("/class-")) {
                    shown.addAll(numbersBehind(page.getKey(), page.getValue()));
                }
                for (String amount : told(page.getValue())) {
                    if (workedOut.contains(amount) && !shown.contains(amount)) {
                        bare.add(page.getKey() + ": " + amount);
                    }
                }
            }
        }
        assertThat(bare).isEmpty();
    }

    /** Every amount that has a working on some page of the case. */
    private static Set<String> workedOut(String folder) {
        Set<String> amounts = new HashSet<>();
        PAGES.forEach((path, page) -> {
            if (path.startsWith(folder)) {
                amounts.addAll(numbers(page));
            }
        });
        return amounts;
    }

    /** What lies in the hand at a station has its workings on the pages of the case that it leads to. */
    private static Set<String> numbersBehind(String path, Document page) {
        String folder = path.substring(0, path.lastIndexOf('/') + 1);
        Set<String> amounts = new HashSet<>();
        page.select("main a[href]").eachAttr("href").stream().map(href -> PAGES.get(folder + href.replaceFirst("#.*", "")))
                .filter(Objects::nonNull).forEach(linked -> amounts.addAll(numbers(linked)));
        return amounts;
    }

    private static Set<String> numbers(Document page) {
        return page.select(".working__number").eachText().stream().map(WorkingsTest::plain).collect(Collectors.toSet());
    }

    /** Any space as a plain one. */
    private static String plain(String text) {
        return text.replaceAll("\\h+", " ");
    }

    /** The amounts that an author wrote, in the case or for the whole studio: they need no working. */
    private static Set<String> written(String folder) throws IOException {
        Set<String> amounts = new HashSet<>();
        try (Stream<Path> files = Files.walk(Path.of("content"))) {
            for (Path file : files.filter(path -> path.toString().matches(".*\\.(yaml|md)")).toList()) {
                if (file.startsWith("content/" + folder) || !file.startsWith("content/cases")) {
                    Matcher amount = Pattern.compile("(\\d[\\d.]*) (\\S+?)(?=[,;:)}\\]]|\\s|$)")
                            .matcher(Files.readString(file));
                    while (amount.find()) {
                        amounts.add(amount.group());
                    }
                }
            }
        }
        return amounts;
    }

    private static List<String> told(Document page) {
        Document rest = page.clone();
        rest.select(".working").remove();
        List<String> amounts = new ArrayList<>();
        Matcher amount = AMOUNT.matcher(plain(rest.select("main").text()));
        while (amount.find()) {
            amounts.add(amount.group());
        }
        return amounts;
    }
}
