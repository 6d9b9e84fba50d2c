package org.benchleaf.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.DemoSite;
import org.benchleaf.model.BenchNeed;
import org.benchleaf.model.BenchNote;
import org.benchleaf.model.StepKind;
import org.benchleaf.publish.SiteFile;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a technician who had only the papers of the demo's washing class in hand had to guess is told there. */
class ClassGuessesTest {

    private static final DemoSite DEMO = DemoSite.made();
    private static final Map<String, Document> PAGES = DEMO.files().stream()
            .filter(file -> file.path().matches("cases/tide-table/class-.*\\.html"))
            .collect(Collectors.toMap(SiteFile::path, file -> Jsoup.parse(new String(file.bytes(), StandardCharsets.UTF_8))));

    private static String text(Element part) {
        return part.text().replaceAll("\\p{Z}", " ");
    }

    private static Document page(String ending) {
        return PAGES.get("cases/tide-table/class-" + ending);
    }

    private static Document document(String path) {
        return DEMO.files().stream().filter(file -> file.path().equals(path)).findFirst()
                .map(file -> Jsoup.parse(new String(file.bytes(), StandardCharsets.UTF_8))).orElseThrow();
    }

    private static String row(String ending, String table, String begins) {
        return page(ending).getElementById(table).select("tr").stream().map(ClassGuessesTest::text)
                .filter(row -> row.startsWith(begins)).findFirst().orElse("no row " + begins);
    }

    /** Each thing of which nobody knew how, when or by whom it is done. */
    @ParameterizedTest
    @ValueSource(strings = {"number of its station", "one to spare takes its place", "It is not renewed", "stay closed until the class",
        "95–105 %", "pH 0.05", "the technician stands a labelled beaker", "ten times", "the day before",
        "the technician collects the sprayers", "storage solution", "within 5 % of what the standard tells",
        "used standard and all rinsings go with",
        "in a plastic bag that closes", "the technician and the supervisor move it", "just above the temperature at which the wax melts"})
    void the_preparation_sheet_tells_how_work_around_the_class_is_done(String told) {
        assertThat(text(page("spring-course-preparation.html").getElementById("class-notes"))).contains(told);
    }

    @Test
    void a_class_that_only_mends_is_told_of_its_sheets_alone() {
        assertThat(page("tissue-and-paste-preparation.html").getElementById("class-notes").select("tbody tr")).hasSize(1);
    }

    @Test
    void every_work_that_a_note_names_is_one_that_a_class_can_have() throws IOException {
        Set<String> known = new TreeSet<>(BenchNeed.OWN_WORDS);
        known.addAll(BenchNote.OWN_WORDS);
        Stream.of(StepKind.values()).map(StepKind::word).forEach(known::add);
        known.addAll(Set.of("bath", "mend", "support", "press", "blotters", "weighing", "mist", "volatile wax"));
        assertThat(Pattern.compile("for: \\[([^]]+)]").matcher(Files.readString(Path.of(
                "src/main/resources/reference/bench-notes.yaml"))).results().flatMap(found -> Stream.of(found.group(1).split(", "))))
                .isNotEmpty().isSubsetOf(known);
    }

    /** The class's file has two pH meters, which two stations use at one time. */
    @Test
    void each_meter_has_its_own_bottle_rod_and_beakers() {
        assertThat(row("spring-course-preparation.html", "lay-out-table", "Rinse bottle")).contains(" 2 ");
        assertThat(row("spring-course-preparation.html", "lay-out-table", "Stirring rod")).contains(" 2 ");
        assertThat(row("spring-course-preparation.html", "lay-out-table", "Beaker")).contains(" 8 ");
    }

    /**
     * By hand: the longest contact of the plan is that of station 6, from 10:09 to 12:31, 142 min, after 20 min of mist. Five minutes at a
     * sheet each time; 20 min of one sheet leave time for four. Three sheets end on Friday at 17:30: the last drop is blotted from 17:25,
     * set from 15:03, the mist from 14:43. Four more are done before these, their drops blotted from 14:03 on, after the break.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "1 | Fri 11:21, 11:41, 14:03", "4 | Fri 11:36, 11:56, 14:18",
        "5 | Fri 14:33, 14:53, 17:15", "7 | Fri 14:43, 15:03, 17:25"})
    void each_drop_of_a_trial_has_its_times_outside_the_breaks(String sheet, String times) {
        assertThat(row("spring-course-preparation.html", "trial-record", sheet + " ")).startsWith(sheet + " " + times);
    }

    /** The case's tests of both colours in the washing water lasted 2 h, the plan keeps them wet for 2 h 22 min at most. */
    @Test
    void a_trial_lasts_as_long_as_the_plan_keeps_the_colour_wet() {
        assertThat(text(page("spring-course-preparation.html").getElementById("trial-record"))).contains("stamp-pad ink: Washing water, "
                + "made gently alkaline, 2 h 22 min", "rinting ink: Washing water, made gently alkaline, 2 h 22 min");
        assertThat(text(page("spring-course-preparation.html").getElementById("practice-table"))).contains(
                "a drop of “Washing water, made gently alkaline” stays for 2 h 22 min");
        assertThat(text(page("spring-course-preparation.html").body())).contains("The trial of the practice sheets lasts for 2 h 22 min");
        assertThat(text(page("spring-course-stations.html").body())).contains("lasted for 2 h 22 min: look at its row");
    }

    /** By hand from the case's record of 2.9 to 3.1 mL: 6 × 3 and 24 × 3 mL. */
    @Test
    void how_much_stock_all_trays_take_needs_no_sum() {
        assertThat(row("spring-course-preparation.html", "begin-table", "Washing water, made gently alkaline Tuesday")).contains(
                "expect 3 mL for one filling, 18 mL for one at each station, 72 mL for all");
    }

    /**
     * By hand: the plan has the first sheet taken out on Friday 17 April at 12:55; the technician weighs the day before, 6 times 2 min
     * that end at the same time of day, before the break.
     */
    @Test
    void a_sheet_that_dries_until_its_mass_stands_still_is_weighed_the_day_before() {
        assertThat(row("spring-course-preparation.html", "begin-table", "Weigh each sheet")).contains("Thursday 16 April 2026, 12:43 ",
                "12 min (6 × 1–2 min)");
        assertThat(text(page("spring-course-stations.html").body())).contains("what it weighed on Thursday 16 April 2026",
                "who goes on after the class: weighs it each working day");
    }

    /** What the technician weighs on Thursday and the trainee on Friday has its field, under its key of a record. */
    @Test
    void what_a_dried_sheet_weighs_on_two_days_has_its_fields() {
        String form = page("spring-course-record.html").html();
        assertThat(form).contains("On the working day before", "Taken out", "day before", "taken out");
    }

    /** What is ordered by its pieces says of what; the meter's standard is bought, and its label stands by each vessel of stock. */
    @Test
    void gloves_standard_blotters_hood_and_sprayer_leave_nothing_to_guess() {
        assertThat(row("spring-course-orders.html", "orders-table", "gloves")).contains("1 × pack of 50", "for the size");
        assertThat(row("spring-course-orders.html", "orders-table", "Conductivity standard")).contains("Tuesday 31 March 2026");
        assertThat(row("spring-course-preparation.html", "lay-out-table", "Blotting paper")).contains("on each face 1 with which it is "
                + "blotted and first laid between, and 1 at each of 5 changes");
        assertThat(row("spring-course-preparation.html", "lay-out-table", "hood")).contains("1 of 2");
        assertThat(row("spring-course-stations.html", "station-4-kit", "2. Ethanol")).contains(", in this: Hand sprayer");
        assertThat(row("spring-course-preparation.html", "waste-table", "practice sheets")).contains("up to 7", "until the wax is gone");
        assertThat(text(page("spring-course-labels.html").getElementById("labels"))).contains("Stock poured out", "diluted 1 + 9");
    }

    /** From the order list: a respirator is ordered by Monday 23 March; the papers are there a week before, for its fit test. */
    @Test
    void papers_are_issued_before_the_first_order_is_due() {
        assertThat(row("spring-course-orders.html", "orders-table", "respirator")).contains("Monday 23 March 2026");
        assertThat(text(page("spring-course-orders.html").body())).contains("Issue 3 of Monday 16 March 2026");
    }

    /** By hand: the case weighs its dry sheet at 9.6 g; a five-hundredth of that is 0.019 g, and the next step of a balance 0.01 g. */
    @Test
    void what_a_note_or_a_limit_asks_for_is_laid_out() {
        assertThat(row("spring-course-preparation.html", "lay-out-table", "Balance")).contains("to 0.01 g or finer, for a dry sheet of "
                + "9.6 g");
        assertThat(row("spring-course-preparation.html", "lay-out-table", "pH meter")).contains("storage solution of its electrode");
        assertThat(text(page("spring-course-preparation.html").getElementById("class-notes"))).doesNotContain("trolley");
        assertThat(text(page("spring-course-preparation.html").body())).contains("for the diluted stock of the trials", "1 mL with 9 mL");
        assertThat(text(page("spring-course-preparation.html").getElementById("calibration-record"))).contains(
                "Slope, or first buffer read again", "Passed: yes or no");
        assertThat(row("spring-course-orders.html", "orders-table", "gloves")).contains("counted in pairs");
        assertThat(row("spring-course-preparation.html", "begin-table", "Weigh each sheet")).contains("and what lies over the sheet");
    }

    /** By hand: the studio opens at 9:00, when the fifth change of blotters begins; nobody comes in the night before that. */
    @Test
    void a_wait_goes_on_until_the_next_work_and_a_wet_sheet_lies_somewhere_meanwhile() {
        assertThat(page("spring-course-stations.html").select("table[id$=-times] tr, [id$=-times] tr").stream().map(ClassGuessesTest::text)
                .filter(row -> row.contains("Drying: between blotters 5"))).isNotEmpty().allSatisfy(row ->
                        assertThat(row).contains("09:0").doesNotContain(" 08:"));
        assertThat(text(page("spring-course-stations.html").body())).contains("let the sheet lie flat on its web and carrier");
    }

    /** Whoever reads a case finds the classes that work through it. */
    @Test
    void the_page_of_a_case_leads_to_its_classes() {
        assertThat(document("cases/tide-table/index.html").select("#classes a").eachAttr("href"))
                .anyMatch(href -> href.contains("class-spring-course.html"));
    }

    /** Common practice, no source: a note stands in full where a hand needs it, and is pointed to from the technician's table. */
    @Test
    void what_the_notes_tell_is_told_or_pointed_to_where_it_is_needed() {
        for (int station = 1; station <= 6; station++) {
            assertThat(text(page("spring-course-stations.html").getElementById("station-" + station + "-times"))).contains(
                    "draw the rod slowly to and fro", "Nobody lifts a full one alone");
        }
        assertThat(row("spring-course-preparation.html", "practice-table", "Practice sheets: Fixing")).contains(
                "How it is done: keeping waxed sheets, heat of the spatula");
        assertThat(row("spring-course-preparation.html", "practice-table", "Practice sheets: Testing")).contains("drops of a trial");
        assertThat(row("spring-course-preparation.html", "begin-table", "Lay out the stations")).contains("stock beside the meters");
        assertThat(row("spring-course-preparation.html", "begin-table", "pH meter 1 of 2")).contains("passing a calibration");
    }

    /** From prose to list: each thing that a note of the class names stands on a list of it, and each word for a thing has been named. */
    @ParameterizedTest
    @ValueSource(strings = {"spring-course", "tissue-and-paste"})
    void every_thing_that_a_note_names_is_on_a_list_of_the_class(String course) {
        List<BenchNote> notes = DEMO.library().reference().notes();
        List<String> told = page(course + "-preparation.html").getElementById("class-notes").select("tbody tr").stream()
                .map(row -> text(row.child(1))).toList();
        String lists = Stream.of("lay-out-table", "practice-things-table").map(id -> page(course + "-preparation.html").getElementById(id))
                .filter(table -> table != null).flatMap(table -> table.select("tbody th").stream()).map(ClassGuessesTest::text)
                .collect(Collectors.joining("\n")).toLowerCase(Locale.ROOT);
        notes.stream().filter(note -> told.contains(note.words().replaceAll("\\p{Z}", " "))).forEach(note -> {
            assertThat(note.things()).as(note.about()).isNotEmpty().allSatisfy(thing -> assertThat(lists).contains(
                    thing.replace("shared ", "").replace("trial-stock-beaker", "diluted stock").replace("waste-can", "waste can")
                            .toLowerCase(Locale.ROOT)));
            THINGS.stream().filter(thing -> note.words().matches("(?s).*\\b" + thing + "s?\\b.*")).forEach(thing ->
                    assertThat(lists).as(note.about() + " names " + thing).contains(thing));
        });
        assertThat(told).isNotEmpty();
    }

    /** Common practice, no source: words for things that a hand takes. */
    private static final List<String> THINGS = List.of("pencil", "bag", "film", "folder", "box", "trolley", "spatula", "pipette", "beaker",
            "buffer", "rod", "can", "thermometer", "meter", "standard", "sprayer", "electrode", "storage solution", "rack", "bottle", "jug",
            "hose", "bucket", "funnel", "balance", "panel", "board", "weight", "scissors", "lamp", "loupe", "brush");

    /** From the plan: the supervisor is elsewhere when station 4 lowers its sheet, from 9:46 to 9:50. */
    @Test
    void who_marks_what_no_supervisor_sees_is_told_when() {
        assertThat(text(page("spring-course.html").getElementById("outcomes"))).contains("station 4, 09:46–09:50",
                "Who marks then, and does nothing else: head of studio");
    }

    /**
     * By hand: the first part is 0.4 mL and what the case added at most 3.1 mL, so eight parts; each up to 1 min with its stirring and
     * reading (common practice, no source), after 6 min of filling and with 1 min to rinse the meter: 15 min. Of the second bath what the
     * first took less one part goes in at once, then drops: three readings, for which the plan has 3 min.
     */
    @Test
    void the_first_bath_has_the_minutes_of_its_filling_and_of_all_its_additions() {
        assertThat(page("spring-course-stations.html").select("[id$=-times] tr").stream().map(ClassGuessesTest::text)
                .filter(row -> row.contains("Washing: make the bath"))).hasSize(6).allSatisfy(row -> {
                    assertThat(Duration.between(LocalTime.parse(row.substring(0, 5)), LocalTime.parse(row.substring(6, 11))))
                            .isEqualTo(Duration.ofMinutes(15));
                    assertThat(row).contains("An addition, with its stirring and reading, usually takes");
                });
        assertThat(text(page("spring-course-stations.html").body())).contains("then further parts of the same volume with a reading after "
                + "each", "begin with one part less than the last took in all").doesNotContain("as much again");
    }

    /** The class has two pH meters and two sinks in use at one time, and one balance: of the first two each row says which. */
    @Test
    void each_station_is_told_which_meter_and_which_sink() {
        assertThat(page("spring-course-stations.html").select("[id$=-times] tr").stream().map(row -> text(row.child(3)))
                .filter(with -> with.contains("meter") || with.contains("sink"))).isNotEmpty().allSatisfy(with ->
                        assertThat(with.replaceAll("(pH meter|sink) [12]", "")).doesNotContain("meter", "sink"));
        for (String paper : List.of("spring-course.html", "spring-course-preparation.html")) {
            assertThat(page(paper).getElementById("serves-table").select("tbody tr").eachText()).hasSize(4)
                    .anyMatch(row -> row.startsWith("pH meter 2")).anyMatch(row -> row.startsWith("sink 1"));
        }
        assertThat(text(page("spring-course-preparation.html").getElementById("waste-table"))).contains("beside pH meter 1");
        assertThat(page("tissue-and-paste-stations.html").getElementById("station-9-times").text()).containsPattern("bench place [1-6]");
    }

    /** What presses is told as one mass, and the board under it as a thing of its own. */
    @Test
    void the_mass_on_the_sheet_is_that_of_the_weight_alone() {
        assertThat(text(page("spring-course-stations.html").body())).contains("under a board and 4 kg", "in which its mass is not counted")
                .doesNotContain("4 kg of boards");
    }

    /** From the studio's file: 60 m³ and 4 changes an hour; ethanol's limit for a working day is 1000 ppm (table of vapours). */
    @Test
    void the_air_is_told_with_its_room_and_its_limit() {
        assertThat(text(page("spring-course.html").getElementById("room"))).contains("60 m³", "Air changes in an hour 4", "1000 ppm");
    }

    /** By hand: on Tuesday each of six stations changes blotters four times, one on each face: 48. */
    @Test
    void the_rack_has_room_for_the_blotters_of_a_day() {
        assertThat(row("spring-course-preparation.html", "waste-table", "wet blotters")).contains("up to 48 come on one day");
    }

    /**
     * By hand, from what is usual (common practice, no source): 7 sheets of up to 4 min each, before the laying out at 16:30 on Monday;
     * 7 times 1.5 to 4.5 g of wax; three calibrations of 20 to 50 mL of each buffer.
     */
    @Test
    void wax_and_buffers_are_enough_for_what_is_done_with_them() {
        assertThat(row("spring-course-preparation.html", "begin-table", "Look at the wax of each practice sheet")).contains(
                "Monday 13 April 2026, 16:02", "28 min (7 × 2–4 min)", "Cyclododecane", "thin wax");
        assertThat(text(page("spring-course-preparation.html").getElementById("class-notes"))).contains("which asks for no new test",
                "each station takes its sheet out of the bag");
        assertThat(row("spring-course-orders.html", "orders-table", "Cyclododecane")).contains("11–32 g");
        assertThat(row("spring-course-orders.html", "orders-table", "Buffers for the meter")).contains("(60–150) mL", "1 × 250 mL");
        assertThat(row("spring-course-orders.html", "orders-table", "Sheet of clear film")).contains("Monday 30 March 2026");
    }

    /** By hand: 6 stations change one blotter on each face 4 times on Tuesday and once on Wednesday at 9:00, within 24 h: 60. */
    @Test
    void the_rack_has_room_for_all_blotters_that_are_wet_together() {
        assertThat(row("spring-course-preparation.html", "lay-out-table", "Drying rack")).contains("room for 60 at once", "12–24 h");
        for (int station = 1; station <= 6; station++) {
            assertThat(text(page("spring-course-stations.html").getElementById("station-" + station + "-times")).split(
                    "hangs them up at once", -1)).hasSize(2);
        }
    }

    /** From the studio's file: the medium tray is 550 mm × 420 mm. */
    @Test
    void the_tray_is_told_with_its_size() {
        assertThat(row("spring-course-preparation.html", "lay-out-table", "Medium tray")).contains("550 mm × 420 mm");
        assertThat(text(page("spring-course-stations.html").getElementById("station-1-kit"))).contains("550 mm × 420 mm");
    }

    /** By hand: the first meter is calibrated from 9:06; checking the other takes up to 5 min (common practice, no source). */
    @Test
    void the_conductivity_meter_has_its_time_and_its_field() {
        assertThat(row("spring-course-preparation.html", "begin-table", "Conductivity meter")).contains("Tuesday 14 April 2026, 09:01");
        assertThat(row("spring-course-preparation.html", "calibration-record", "Tuesday 14 April 2026, 09:01")).contains(
                "conductivity meter");
        assertThat(text(page("spring-course-stations.html").body())).contains("no station begins before").doesNotContain("nobody begins");
    }

    /** From the case's hold and the plan: some stations wait for their release; a bath change of 5 min has 2 of lifting and laying in. */
    @Test
    void what_happens_while_a_sheet_waits_and_in_a_change_stands_on_the_station_sheet() {
        String stations = text(page("spring-course-stations.html").body());
        assertThat(stations).contains("misted again where an edge dries. The station stays with it", "the technician sprays",
                "lay over it again what lay on it", "from the jugs, which you filled while", "back to its place, where its buffers stay");
        assertThat(text(page("spring-course.html").body())).contains("A bath change is told in three lines",
                "begins within 15 min of the end of misting");
        assertThat(text(page("spring-course-preparation.html").getElementById("class-notes"))).contains("What no bath took stays closed");
        assertThat(page("spring-course-record.html").html()).contains("Wet sheet with its web", "That web alone, wet");
    }

    /** From the order list: the one respirator is worn to make limewater, by the technician. */
    @Test
    void what_the_technician_alone_wears_is_no_waste_of_a_station() {
        assertThat(text(page("spring-course-stations.html").body())).doesNotContain("respirator");
        assertThat(text(page("spring-course-preparation.html").getElementById("waste-table"))).contains("respirator");
    }

    @Test
    void the_front_page_leads_to_the_classes() {
        assertThat(document("index.html").select("main a").eachAttr("href")).contains("cases/tide-table/class-spring-course.html",
                "cases/tide-table/class-tissue-and-paste.html");
    }

    /** The step sheet is read aloud in the class: its hold and its waste are those of the class. */
    @Test
    void the_step_sheet_that_is_read_aloud_says_the_same_as_the_class() {
        String steps = text(document("cases/tide-table/steps.html").body());
        String look = "the dry sheet in raking light, with no loose dirt and its wax even on both faces, and the last test of its stamp";
        assertThat(steps).contains(look, "What is left is collected as the class’s preparation sheet tells")
                .doesNotContain("Rinsing water goes to the drain");
        assertThat(text(page("spring-course.html").getElementById("holds"))).contains(look);
    }

    /** Whoever lays the wax out knows where, how large and on which face the stamp is. */
    @Test
    void the_stamp_of_the_practice_sheets_has_a_size_a_place_and_a_face() {
        assertThat(text(page("spring-course-preparation.html").getElementById("practice-sheets"))).contains("45 mm × 30 mm at the "
                + "lower right of its printed face, 25 mm from both edges");
        assertThat(row("spring-course-orders.html", "orders-table", "Practice sheets")).contains("45 mm × 30 mm");
    }
}
