package org.benchleaf.compose.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.PageComposer;
import org.benchleaf.compose.PageMakers;
import org.benchleaf.compose.chart.EvidenceSeries;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.compose.part.Clearance.Output;
import org.benchleaf.compose.part.Evidence;
import org.benchleaf.compose.part.SiteDesk;
import org.benchleaf.model.AuthorGuide;
import org.benchleaf.model.Library;
import org.benchleaf.page.CaseLines;
import org.benchleaf.page.Chart;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.EvidenceFilter;
import org.benchleaf.page.EvidencePlot;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Facts;
import org.benchleaf.page.Findings;
import org.benchleaf.page.Page;
import org.benchleaf.page.Section;
import org.benchleaf.page.Table;
import org.junit.jupiter.api.Test;

/** What all cases of a studio tell of one measure: only what was read alike stands on one scale. */
class EvidencePagesTest {

    private static final Library LIBRARY = DemoSite.made().library();

    /**
     * The pH of a surface and that of an extract are two measurements with two standards (TAPPI T 529, surface pH of paper;
     * TAPPI T 509, cold extraction; from memory), as are two formulas of colour difference (CIE 142:2001 and CIE 15; from memory).
     */
    @Test
    void only_results_of_one_kind_share_a_scale() {
        List<EvidenceMeasure> measures = EvidenceMeasure.all(List.of(
                card(1, ph("surface", "4.4")), card(2, ph("cold extract", "5.1")), card(3, ph("surface", "6.0")),
                card(4, colour("CIEDE2000, D65, 10°, d/8")), card(5, colour("CIE76, D65, 10°, d/8")),
                card(6, colour("CIEDE2000, D65, 2°, d/8"))));

        assertThat(measures).extracting(EvidenceMeasure::name).containsExactly("colour", "pH");
        assertThat(measures.get(0).series()).extracting(EvidenceSeries::cases).containsExactly(1, 1, 1);
        assertThat(measures.get(1).series()).extracting(series -> series.rows().stream().map(row -> row.card().id()).toList())
                .containsExactly(List.of("case-1", "case-3"), List.of("case-2"));
    }

    @Test
    void what_cannot_be_compared_is_named_with_the_reason_and_drawn_nowhere() {
        Evidence aged = new Evidence("pH", "ph", "surface", "", "after-ageing", "", List.of(Evidence.Reach.one("after", "6.1")), "a#b", "");
        Evidence words = new Evidence("pH", "method", "", "", "not-measured", "the ink bled", List.of(), "a#b", "");
        List<Page> pages = pages(List.of(card(1, ph("surface", "4.4")), card(2, aged), card(3, words)), "evidence/ph");

        assertThat(plots(pages)).singleElement().satisfies(plot -> assertThat(plot.rows()).hasSize(1));
        assertThat(blocks(pages.get(0), Table.class)).singleElement().satisfies(table -> assertThat(table.rows())
                .extracting(row -> row.get(1).plain()).containsExactly(
                        "It was read on paper that had been aged to test it.",
                        "It was not measured. In the words of the case: the ink bled."));
    }

    @Test
    void thousands_of_cases_stand_each_once_on_pages_of_one_length_and_one_scale() {
        List<Page> pages = pages(IntStream.range(0, 10_000).mapToObj(n -> card(n, ph("surface", "" + (3 + n % 70 / 10.0)))).toList(),
                "evidence/ph");

        assertThat(pages).hasSize(200).extracting(Page::path).doesNotHaveDuplicates().contains("evidence/ph.html", "evidence/ph--200.html");
        assertThat(plots(pages)).allSatisfy(plot -> {
            assertThat(plot.rows()).hasSize(EvidencePages.ROWS_A_PAGE);
            assertThat(plot.axis().orElseThrow().marks()).isEqualTo(plots(pages).get(0).axis().orElseThrow().marks());
        });
        assertThat(plots(pages).stream().flatMap(plot -> plot.rows().stream()).map(row -> row.link().href()))
                .hasSize(10_000).doesNotHaveDuplicates();
    }

    /** A scale is for comparing: of a single case a sentence, its link and the numbers say all. */
    @Test
    void of_a_single_case_nothing_is_drawn() {
        Page page = pages(List.of(card(1, ph("surface", "4.4"))), "evidence/ph").get(0);

        assertThat(plots(List.of(page))).singleElement().satisfies(plot -> {
            assertThat(plot.axis()).isEmpty();
            assertThat(plot.rows()).singleElement().satisfies(row -> assertThat(row.drawing()).isEmpty());
            assertThat(plot.table().rows()).isNotEmpty();
        });
        assertThat(page.blocks()).anySatisfy(block -> assertThat(block).isInstanceOfSatisfying(Section.class, section ->
                assertThat(section.lead()).contains("1 case, 1 reading. No other case read it in this way yet.")));
    }

    /** The scale is read off its own marks, as a reader would, between the first and the last. */
    @Test
    void each_mark_lies_where_its_scale_says() {
        EvidencePlot plot = plots(pages(List.of(card(1, ph("surface", "4.4")), card(2, ph("surface", "7.2"))), "evidence/ph")).get(0);
        List<Chart.Mark> labels = plot.axis().orElseThrow().marks().stream().filter(mark -> mark.kind().equals("text")).toList();
        Chart.Mark first = labels.get(0);
        Chart.Mark last = labels.get(labels.size() - 1);
        double from = Double.parseDouble(first.text());
        double unit = (last.x() - first.x()) / (Double.parseDouble(last.text()) - from);

        assertThat(plot.rows().stream().flatMap(row -> row.drawing().orElseThrow().marks().stream())
                .filter(mark -> !mark.value().isEmpty()))
                .hasSize(2).allSatisfy(mark -> assertThat((double) mark.x()).isCloseTo(
                        first.x() + (Double.parseDouble(mark.value()) - from) * unit, within(1.0)));
    }

    /** The readings stand in the case file of the tide table: before 4.3 to 4.6, after 7.0 to 7.4. */
    @Test
    void a_case_tells_what_its_readings_reach_from_and_to() {
        assertThat(evidence(Set.of(Output.RESULTS, Output.DATA)).get(0).reaches()).extracting(Evidence.Reach::of,
                Evidence.Reach::count, Evidence.Reach::low, Evidence.Reach::high).containsExactly(
                org.assertj.core.groups.Tuple.tuple("before", "5", "4.3", "4.6"),
                org.assertj.core.groups.Tuple.tuple("after", "5", "7.0", "7.4"));
    }

    @Test
    void results_and_data_go_out_each_with_its_own_permission() {
        assertThat(evidence(Set.of(Output.STEP_SHEET, Output.DATA))).isEmpty();
        List<Evidence> shown = evidence(Set.of(Output.RESULTS));
        assertThat(shown).isNotEmpty().allSatisfy(one -> assertThat(one.file()).isEmpty());
        assertThat(files(shown)).isEmpty();
        assertThat(files(evidence(Set.of(Output.RESULTS, Output.DATA)))).contains("evidence/ph.csv", "evidence/ph.csv-metadata.json");
    }

    /** A case that is taken down leaves the files line by line. */
    @Test
    void each_row_of_a_file_is_one_line_with_the_way_to_its_case() {
        Evidence one = new Evidence("pH", "method", "flat\nelectrode, \"old\"", "", "", "", List.of(Evidence.Reach.one("after", "6.1")),
                "cases/case-1/results.html#x", "cases/case-1/x.csv");
        String csv = EvidencePages.files(desk(List.of(card(1, one)))).get(0).text();

        assertThat(csv.lines()).hasSize(2).last().asString().contains("cases/case-1/results.html#x").contains("flat electrode");
    }

    /** The coordinates stand in the case file of the tide table, spot "foot margin". */
    @Test
    void a_file_holds_what_its_differences_were_worked_out_from() {
        String csv = text(evidence("tide-table", Set.of(Output.RESULTS, Output.DATA)), "evidence/colour.csv");
        List<String> names = List.of(csv.lines().findFirst().orElseThrow().split(","));
        List<String> row = csv.lines().filter(line -> line.contains("foot margin")).map(line -> line.replaceAll("\"[^\"]*\"", "-"))
                .map(line -> List.of(line.split(",", -1))).findFirst().orElseThrow();

        assertThat(List.of("L before", "a before", "b before", "L after", "a after", "b after").stream()
                .map(name -> row.get(names.indexOf(name))).toList()).containsExactly("78.4", "3.1", "19.6", "83.2", "1.7", "14.1");
    }

    /** The counts stand in the case file of the poster: 46, 61, 38, 17 before and 0, 1, 0, 0 after, added by hand. */
    @Test
    void counts_stand_beside_their_sum() {
        List<Evidence> counts = evidence("flood-poster", Set.of(Output.RESULTS, Output.DATA)).stream()
                .filter(one -> one.measure().equals("raised mould spots")).toList();
        EvidencePlot plot = plots(pages(List.of(card(1, counts.get(0))), "evidence/raised-mould-spots")).get(0);

        assertThat(plot.table().columns()).extracting(Table.Column::header).endsWith("In all");
        assertThat(plot.table().rows()).extracting(row -> row.get(row.size() - 1).plain()).containsExactly("162", "1");
        assertThat(text(counts, "evidence/raised-mould-spots.csv").lines().skip(1)).anyMatch(line -> line.contains(",162,"));
    }

    @Test
    void every_column_of_a_file_is_explained_on_its_page() {
        List<Evidence> colour = evidence("tide-table", Set.of(Output.RESULTS, Output.DATA)).stream()
                .filter(one -> one.kind().equals("colour")).toList();
        Facts about = blocks(pages(List.of(card(1, colour.get(0))), "evidence/colour").get(0), Findings.class).get(0).more().stream()
                .map(Facts.class::cast).findFirst().orElseThrow();

        assertThat(about.facts()).extracting(Fact::name).containsExactly(
                text(colour, "evidence/colour.csv").lines().findFirst().orElseThrow().split(","));
    }

    @Test
    void a_case_whose_results_say_nothing_of_a_measure_is_named_and_one_without_results_is_not() {
        CaseCard silent = card(2, colour("CIEDE2000, D65, 10°, d/8"));
        CaseCard withheld = card(3, colour("CIEDE2000, D65, 10°, d/8"));
        Page page = new EvidencePages().make(desk(List.of(card(1, ph("surface", "4.4")), silent, new CaseCard(withheld.id(),
                withheld.title(), "", "en", "", "", "", List.of(), List.of(), List.of(), List.of(), "", "", List.of(), List.of(),
                List.of("cases/case-3/index.html"), List.of(), "", List.of(), List.of(), CaseCard.LastChange.NONE, List.of(), ""))))
                .stream().filter(one -> one.path().equals("evidence/ph.html")).findFirst().orElseThrow();

        assertThat(blocks(page, CaseLines.class)).singleElement().satisfies(lines -> assertThat(lines.entries())
                .extracting(entry -> entry.title().text()).containsExactly("Poster 2"));
    }

    @Test
    void pages_that_stand_apart_for_a_colour_name_each_spot() {
        EvidencePlot plot = plots(pages(List.of(card(1, colour("CIEDE2000, D65, 10°, d/8"))), "evidence/colour")).get(0);

        assertThat(plot.table().rows()).extracting(row -> row.get(1).plain(), row -> row.get(2).plain()).containsExactly(
                org.assertj.core.groups.Tuple.tuple("margin", "4.7"), org.assertj.core.groups.Tuple.tuple("red letter", "0.3"));
    }

    @Test
    void the_choices_tell_rows_apart_by_what_their_cases_are() {
        Page page = pages(List.of(card(1, ph("surface", "4.4")), card(2, ph("surface", "5"))), "evidence/ph").get(0);
        EvidenceFilter filter = page.blocks().stream().filter(EvidenceFilter.class::isInstance).map(EvidenceFilter.class::cast)
                .findFirst().orElseThrow();

        assertThat(filter.choices()).extracting(EvidenceFilter.Choice::id).containsExactly("only-paper");
        assertThat(plots(List.of(page)).get(0).rows()).extracting(row -> row.has().split(" ")[1])
                .containsExactly("paper-wood-pulp", "paper-rag");
    }

    private static Evidence ph(String kind, String number) {
        return new Evidence("pH", "ph", kind, "", "", "", List.of(Evidence.Reach.one("before", number)), "", "");
    }

    private static Evidence colour(String conditions) {
        return new Evidence("colour", "colour", conditions, "", "", "", List.of(Evidence.Reach.one("margin", "4.7"),
                Evidence.Reach.one("red letter", "0.3")), "", "");
    }

    private static CaseCard card(int number, Evidence evidence) {
        String id = "case-" + number;
        Evidence own = new Evidence(evidence.measure(), evidence.kind(), evidence.like(), evidence.unit(), evidence.apart(),
                evidence.because(), evidence.reaches(), "cases/" + id + "/results.html#x", evidence.file());
        return new CaseCard(id, "Poster " + number, "", "en", "foundation", "poster", "lithography", List.of(), List.of(), List.of(),
                List.of("washing"), "", "", List.of(), List.of(), List.of("cases/" + id + "/results.html"), List.of(),
                number % 2 == 0 ? "rag" : "wood pulp", List.of(own), List.of(), CaseCard.LastChange.NONE, List.of(), "");
    }

    private static List<Evidence> evidence(Set<Output> outputs) {
        return evidence("tide-table", outputs);
    }

    private static List<Evidence> evidence(String id, Set<Output> outputs) {
        return PageComposer.compose(DemoSite.worked(id, LIBRARY), LIBRARY, new Clearance(DemoSite.DAY, Audience.EVERYBODY,
                outputs, outputs, true, List.of())).card().evidence();
    }

    private static String text(List<Evidence> evidence, String path) {
        return made(evidence).stream().filter(file -> file.path().equals(path)).findFirst().orElseThrow().text();
    }

    private static List<String> files(List<Evidence> evidence) {
        return made(evidence).stream().map(DataFile::path).toList();
    }

    private static List<DataFile> made(List<Evidence> evidence) {
        CaseCard card = card(1, ph("surface", "1"));
        return EvidencePages.files(desk(List.of(new CaseCard(card.id(), card.title(), "", "en", "", "", "", List.of(), List.of(),
                List.of(), List.of(), "", "", List.of(), List.of(), card.pages(), List.of(), "", evidence,
                List.of(), CaseCard.LastChange.NONE, List.of(), ""))));
    }

    private static SiteDesk desk(List<CaseCard> cards) {
        return new SiteDesk(LIBRARY, cards, List.of(), AuthorGuide.EMPTY, Audience.EVERYBODY, PageMakers.NAMES);
    }

    private static List<Page> pages(List<CaseCard> cards, String path) {
        return new EvidencePages().make(desk(cards)).stream().filter(page -> page.path().matches(path + "(--\\d+)?\\.html")).toList();
    }

    private static List<EvidencePlot> plots(List<Page> pages) {
        return pages.stream().flatMap(page -> blocks(page, EvidencePlot.class).stream()).toList();
    }

    private static <T> List<T> blocks(Page page, Class<T> kind) {
        return page.blocks().stream().filter(Section.class::isInstance).map(Section.class::cast)
                .flatMap(section -> section.blocks().stream()).filter(kind::isInstance).map(kind::cast).toList();
    }
}
