package org.benchleaf.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchleaf.DemoSite;
import org.benchleaf.page.Block;
import org.benchleaf.page.Briefing;
import org.benchleaf.page.Chart;
import org.benchleaf.page.DrawingRow;
import org.benchleaf.page.LabelSheet;
import org.benchleaf.page.Note;
import org.benchleaf.page.Table;
import org.benchleaf.text.RichText;
import org.junit.jupiter.api.Test;

/** What the papers of the demo's washing class tell those who buy, lay out and compare. */
class ClassSheetsTest {

    private static final DemoSite DEMO = DemoSite.made();

    /** One station sprays at a time, under one of the two hoods of the class's file; panel, tray and boards stand at each. */
    @Test
    void a_station_is_drawn_with_what_it_has_and_what_all_share_apart() {
        assertThat(page("-stations.html").filter(DrawingRow.class::isInstance).map(DrawingRow.class::cast)
                .flatMap(row -> row.drawings().stream()).filter(drawing -> drawing.id().matches("station-\\d-drawing")))
                .hasSize(6).allSatisfy(drawing -> {
                    String told = drawing.description().replaceAll("\\h", " ");
                    String wet = told.substring(0, told.indexOf("Dry side: "));
                    assertThat(wet).startsWith("Wet side: ").contains("Medium tray", "Waterproof panel").doesNotContain("hood");
                    assertThat(told).contains("Board, stiff and flat").endsWith("Shared by all stations: hood, 1; pH meter, 2; "
                            + "sink, 2; balance, 1.");
                });
    }

    /** From the case's file: of its buffers those of pH 7.00 and 9.18 lie on either side of a bath of pH 8.5. */
    @Test
    void the_buffers_of_the_meter_are_ordered() {
        assertThat(rows("-orders.html", "orders-table")).anySatisfy(row -> assertThat(row.get(0))
                .contains("pH 7, pH 9.18", "(20–50) mL of each").doesNotContain("4.01"));
    }

    /** From the issues' file: of ethanol there were 39.17 mL; an order is told with three digits. */
    @Test
    void an_earlier_issue_is_told_with_the_digits_of_the_order_list() {
        assertThat(rows("-spring-course.html", "changes-since-2")).anySatisfy(row -> assertThat(row.get(1)).isEqualTo("39.2 mL"))
                .allSatisfy(row -> assertThat(String.join(" ", row)).doesNotContainPattern("\\d\\.\\d\\d"));
    }

    @Test
    void several_of_a_thing_are_told_by_a_sign_and_not_by_a_word_in_the_singular() {
        assertThat(rows("-stations.html", "station-1-times")).anySatisfy(row -> assertThat(row.get(3)).contains("2 × board"));
    }

    /** From the case's file, which sprays from 40 cm, and the table of cautions, which has several who spray take turns. */
    @Test
    void a_station_sheet_tells_how_far_to_spray_from_and_what_to_heed_where_the_work_begins() {
        assertThat(rows("-stations.html", "station-4-times")).anySatisfy(row -> assertThat(row.get(2)).contains("Mist the sheet", "40 cm",
                "Danger: Sprayed solvent", "take turns")).anySatisfy(row -> assertThat(row.get(2)).contains("with goggles on"));
    }

    /** From the class's file: all of the washing water goes into cans beside the sinks, and out of cans into the tray. */
    @Test
    void what_becomes_of_the_washing_water_is_told_in_one_way() {
        String page = page("-preparation.html").map(String::valueOf).collect(Collectors.joining("\n"));
        assertThat(page).contains("The class collects all of it in its cans. They stand beside the sinks.")
                .doesNotContain("goes to the drain");
        assertThat(rows("-preparation.html", "waste-table")).allSatisfy(row -> assertThat(row.get(3)).doesNotContain("No can"));
    }

    /**
     * By hand: two pairs for each of 8 who are there, and two to make the practice sheets. 7 × 472 mm × 358 mm of film are
     * 1.18 m²; 14 of web of that size and 14 of 600 mm × 480 mm are 6.4 m².
     */
    @Test
    void what_is_cut_or_worn_out_is_ordered_too() {
        assertThat(rows("-orders.html", "orders-table")).extracting(row -> row.get(0) + ": " + row.get(1)).contains(
                "Polyester film, 100 µm: 1.18 m²", "Spun-bonded polyester web: 6.4 m²").anyMatch(row -> row.startsWith("gloves, pairs")
                && row.endsWith(": 18")).anyMatch(row -> row.startsWith("respirator") && row.endsWith(": 1"));
    }

    /**
     * By hand, from the class's file, which is closed on 3 and 6 April: film, web and felt are cut on Monday 13 April and in the
     * house on Friday 10 April; 10 working days back are 9, 8, 7, 2, 1 April, 31, 30, 27, 26 and 25 March. Buffers are there on
     * Thursday 9 April, gloves and respirator on Wednesday 8 April; 5 working days back from the 9th are 8, 7, 2, 1 April and 31 March,
     * from the 8th 30 March, and 10 from the 8th 23 March. 18 pairs out of 50 leave 32.
     */
    @Test
    void each_line_of_the_order_list_tells_when_to_order() {
        List<List<String>> rows = rows("-orders.html", "orders-table");
        assertThat(rows).extracting(row -> row.get(4)).doesNotContain("delivery not stated, ask the supplier");
        assertThat(rows).extracting(row -> row.get(0).split("[,:] ")[0] + ": " + row.get(4)).contains(
                "Wool felt: Wednesday 25 March 2026", "Polyester film: Wednesday 25 March 2026",
                "Spun-bonded polyester web: Wednesday 25 March 2026", "Buffers for the meter: Tuesday 31 March 2026",
                "gloves: Monday 30 March 2026", "respirator: Monday 23 March 2026");
        assertThat(rows).filteredOn(row -> row.get(0).startsWith("gloves")).singleElement()
                .satisfies(row -> assertThat(row.get(3) + ", " + row.get(6)).isEqualTo("1 × pack of 50, 32"));
    }

    /** By hand, 2 min each: 7 pieces of film, 28 of web, 14 of felt, up to the 28 min for the wax before
     * the laying out at 16:30; six stations take 6 min each. */
    @Test
    void who_cuts_what_and_how_long_the_room_is_cleared_stands_with_what_to_begin() {
        assertThat(rows("-preparation.html", "begin-table")).extracting(row -> row.get(0) + "; " + row.get(1) + "; " + row.get(2))
                .contains("Cut to size: Polyester film, 100 µm; Monday 13 April 2026, 15:48; 14 min (7 × 1–2 min)",
                        "Cut to size: Spun-bonded polyester web; Monday 13 April 2026, 14:52; 56 min (28 × 1–2 min)",
                        "Cut to size: Wool felt; Monday 13 April 2026, 14:24; 28 min (14 × 1–2 min)")
                .anyMatch(row -> row.startsWith("Clear the room away") && row.endsWith("36 min (6 × 4–6 min)"));
    }

    /** From the class's file, which weighs the blotted sheet before the weight: boards wait, and the web that is subtracted is weighed. */
    @Test
    void a_sheet_that_is_weighed_again_has_its_boards_after_that_and_a_failed_trial_stops_at_the_hold() {
        List<String> told = rows("-stations.html", "station-4-times").stream().map(row -> row.get(2)).toList();
        assertThat(told).anyMatch(row -> row.contains("under a board and 4 kg") && row.contains("Not yet the boards: they go on at ")
                        && row.contains("when the sheet has been weighed."))
                .anyMatch(row -> row.contains("fold the web up and lay it under the carrier"))
                .anyMatch(row -> row.contains("Spray 15\u202fmL in all") || row.contains("Spray 15 mL in all"))
                .anyMatch(row -> row.contains("hold before misting") && row.contains("left every blotter white"));
    }

    /** 18 pairs of gloves by the order list, and one respirator; water to rinse: 24 times 250 mL. */
    @Test
    void what_was_worn_stands_in_the_table_of_waste_and_rinsing_water_with_what_is_laid_out() {
        assertThat(rows("-preparation.html", "waste-table")).filteredOn(row -> row.get(0).equals("what was worn"))
                .extracting(row -> row.get(1).split(",")[0] + ": " + row.get(2)).contains("gloves: up to 18", "respirator: up to 1");
        assertThat(rows("-preparation.html", "lay-out-table")).anySatisfy(row -> assertThat(row.get(0) + ": " + row.get(2))
                .isEqualTo("Deionised water, beside the sinks, to rinse trays and beakers, for rinse bottles and dilutions: 6 L"));
    }

    /** The case leaves its workings off paper. */
    @Test
    void the_workings_of_class_pages_stay_on_the_screen_where_the_case_says_so() {
        assertThat(DemoSite.pages(DEMO.cases(), DEMO.site()).stream().filter(page -> page.path().equals(
                "cases/tide-table/class-spring-course.html") || page.path().equals("cases/tide-table/class-spring-course-orders.html")))
                .hasSize(2).allSatisfy(page -> assertThat(page.frame().onScreenOnly()).contains("workings"));
    }

    /** From the case's file: strips of 8 mm reach 5 mm beyond a tear, and their fibres run across it. */
    @Test
    void a_station_sheet_tells_how_strips_are_torn() {
        assertThat(DemoSite.pages(DEMO.cases(), DEMO.site()).stream().filter(page -> page.path().equals(
                "cases/tide-table/class-tissue-and-paste-stations.html")).flatMap(AllBlocks::of).filter(Table.class::isInstance)
                .map(Table.class::cast).filter(one -> one.id().equals("station-7-times")).flatMap(one -> one.rows().stream())
                .map(row -> row.get(2).plain().replaceAll("\\h", " "))).anySatisfy(told -> assertThat(told).contains(
                        "Width of a strip: 8 mm", "Beyond each end: 5 mm", "Fibres run: across the tear"));
    }

    /** By hand: 84 blotters of 600 mm × 480 mm are 24.2 m². */
    @Test
    void wet_blotters_are_told_by_their_area() {
        assertThat(rows("-preparation.html", "waste-table")).filteredOn(row -> row.get(0).equals("wet blotters")).singleElement()
                .satisfies(row -> assertThat(row.get(2) + row.get(3)).contains("84", "24.2 m²"));
    }

    /** By hand: 100 g of lime on the shelf less about 0.8 g. */
    @Test
    void what_is_left_on_a_full_shelf_is_told() {
        assertThat(rows("-orders.html", "orders-table")).filteredOn(row -> row.get(0).startsWith("Calcium hydroxide")).singleElement()
                .satisfies(row -> assertThat(row.get(6)).matches("99(\\.\\d+)? g"));
    }

    /**
     * By hand: 7 of the mist, 24 fillings, 3 of limewater (one to make it in, two for its clear part);
     * cans: 7 of water, 1 of solvents,
     * 1 of limewater; used buffers 1; left wax 1; bottles to rinse electrodes 2, one at each meter, with a beaker of
     * limewater; the water of the trial of the practice sheets is made twice, with one beaker of diluted limewater.
     */
    @Test
    void there_is_a_label_for_each_vessel_also_of_waste() {
        List<LabelSheet.Label> labels = page("-labels.html").filter(LabelSheet.class::isInstance).map(LabelSheet.class::cast)
                .flatMap(sheet -> sheet.labels().stream()).toList();
        assertThat(labels).hasSize(7 + 24 + 3 + 7 + 1 + 1 + 1 + 1 + 2 + 2 + 2 + 1);
        assertThat(labels).extracting(LabelSheet.Label::name).contains("Waste: left of the practice sheets", "Rinse bottle");
        assertThat(labels).filteredOn(label -> label.name().equals("Waste: alkaline water")).singleElement().satisfies(label -> {
            assertThat(label.waste()).isTrue();
            assertThat(label.hazard().orElseThrow().signal()).contains("Danger");
        });
        // Water by itself has no class of hazard (CLP, Annex VI lists none for it); a bottle of it must not be told as unknown.
        assertThat(labels).filteredOn(label -> label.name().equals("Rinse bottle")).hasSize(2)
                .allSatisfy(label -> assertThat(label.unclassified()).isTrue());
        assertThat(labels).filteredOn(label -> label.name().equals("Waste: used buffers")).singleElement()
                .satisfies(label -> assertThat(label.unclassified()).isFalse());
    }

    /** From the case's file and the studio's: the carrier is 472 mm × 358 mm, blotters are 600 mm × 480 mm. */
    @Test
    void the_panel_and_the_boards_are_told_how_large_they_must_be() {
        assertThat(rows("-preparation.html", "lay-out-table")).extracting(row -> row.get(0))
                .anyMatch(name -> name.startsWith("Waterproof panel") && name.endsWith("at least 472 mm × 358 mm"))
                .anyMatch(name -> name.startsWith("Board, stiff and flat") && name.endsWith("at least 600 mm × 480 mm"));
    }

    /** By hand: 137 mL are needed of 250 mL; a bottle of 250 mL would not be full of the clear part, two of 100 mL are. */
    @Test
    void the_clear_part_of_limewater_goes_into_bottles_that_it_fills() {
        assertThat(rows("-preparation.html", "begin-table")).filteredOn(row -> row.get(0).equals("Saturated limewater")).singleElement()
                .satisfies(row -> assertThat(row.get(5)).contains("1 × plastic bottle of 500 mL", "2 × plastic bottle of 100 mL",
                        "each filled to the top"));
        assertThat(rows("-preparation.html", "lay-out-table")).filteredOn(row -> row.get(0).startsWith("Saturated limewater"))
                .singleElement().satisfies(row -> assertThat(row.get(2)).isEqualTo("200 mL"));
        assertThat(rows("-preparation.html", "lay-out-table")).filteredOn(row -> row.get(0).equals("Plastic bottle, 100 mL"))
                .singleElement().satisfies(row -> assertThat(row.get(2)).isEqualTo("2"));
    }

    /** From the plan: the second meter is first used beside the first; each takes up to 10 min. Three calibrations with that of Friday. */
    @Test
    void each_meter_is_calibrated_before_it_is_used() {
        assertThat(rows("-preparation.html", "begin-table")).extracting(row -> row.get(0)).contains(
                "pH meter 1 of 2: the technician calibrates it with its buffers",
                "pH meter 2 of 2: the technician calibrates it with its buffers");
        assertThat(rows("-preparation.html", "lay-out-table")).anySatisfy(row -> assertThat(row.get(0)).contains("of which there are 3"));
    }

    /** From the plan: one supervisor goes from release to release, so nobody who releases sees every sheet lowered. */
    @Test
    void the_class_tells_where_nobody_who_releases_sees_what_is_marked() {
        assertThat(page("-spring-course.html").filter(Note.class::isInstance).map(note -> ((Note) note).text().plain()))
                .anySatisfy(told -> assertThat(told).startsWith("Washing: when it begins at these stations")
                        .contains("Who marks then, and does nothing else"));
    }

    /** From the table of hazards: left wax is collected; by hand 7 sheets take 1 to 3 g and 0.5 to 1.5 g where the wax is thin: 31.5 g. */
    @Test
    void left_wax_is_collected_too() {
        assertThat(rows("-preparation.html", "waste-table")).filteredOn(row -> row.get(1).equals("Cyclododecane")).singleElement()
                .satisfies(row -> assertThat(row.get(2) + row.get(4)).contains("31.5 g", "closed, labelled bag or bottle"));
    }

    /** From the case's file: 1 + 5 by mass. */
    @Test
    void parts_are_told_in_words_and_by_what_they_are_counted() {
        assertThat(labels("cases/tide-table/class-tissue-and-paste-labels.html")).filteredOn(label -> label.name().equals(
                "Wheat starch paste")).isNotEmpty().allSatisfy(label -> assertThat(label.strength().orElseThrow()).isEqualTo(
                        "1 part of wheat starch, precipitated, to 5 parts of deionised water, by mass"));
    }

    private static List<LabelSheet.Label> labels(String path) {
        return DemoSite.pages(DEMO.cases(), DEMO.site()).stream().filter(page -> page.path().equals(path)).flatMap(AllBlocks::of)
                .filter(LabelSheet.class::isInstance).map(LabelSheet.class::cast).flatMap(sheet -> sheet.labels().stream()).toList();
    }

    /** From the class's file and the case: the briefing before all work, looks after 1, 5 and 15 min, the supervisor at the mist. */
    @Test
    void a_station_sheet_has_the_briefing_the_looks_and_who_stands_beside() {
        List<List<String>> rows = rows("-stations.html", "station-1-times");
        assertThat(rows.get(0)).startsWith("09:00", "09:10").element(2).asString().contains("Read the briefing",
                "at the head of the step sheet “A tide table that had met the tide”");
        assertThat(rows.stream().map(row -> row.get(2)).filter(work -> work.contains("Look for"))).containsExactly(
                "Washing: look after min 1. Look for: colour at 1 min.", "Washing: look after min 5. Look for: colour at 5 min.",
                "Washing: look after min 15. Look for: colour at 15 min.");
        assertThat(rows).anySatisfy(row -> assertThat(row.get(2)).contains("Mist the sheet", "The supervisor stays beside you"));
        assertThat(rows.stream().filter(row -> row.get(2).equals("Washing: bath 1"))).hasSize(1);
    }

    /** From the table of cautions: stock is added where a bath is made or read, a tray emptied where it is changed. */
    @Test
    void a_caution_stands_at_the_work_that_it_is_for_and_is_told_in_full_once() {
        List<String> work = rows("-stations.html", "station-1-times").stream().map(row -> row.get(2)).toList();
        assertThat(work).filteredOn(told -> told.contains("Add the stock with a pipette")).singleElement().asString()
                .startsWith("Washing: make the bath.");
        assertThat(work).filteredOn(told -> told.contains("Never lift it without its support")).singleElement().asString()
                .startsWith("Prewetting.");
        assertThat(work).filteredOn(told -> told.contains("Empty trays by hose or jug")).singleElement().asString()
                .startsWith("Washing: bath change 1.");
        assertThat(work).filteredOn(told -> told.startsWith("Washing: read the bath.")).hasSize(2)
                .allSatisfy(told -> assertThat(told).endsWith("Heed again: alkaline bath, caustic stock."));
        assertThat(work).filteredOn(told -> told.startsWith("Washing: bath change 2.") || told.startsWith("Washing: empty the tray."))
                .hasSize(2).allSatisfy(told -> assertThat(told).endsWith("Heed again: wet floor, heavy trays."));
    }

    /** From the case's file: what is watched at the washing, one blotter layer, until when the sheet dries. */
    @Test
    void every_piece_of_the_hands_tells_how_it_is_done() {
        List<List<String>> rows = rows("-stations.html", "station-1-times");
        assertThat(rows.subList(1, rows.size())).filteredOn(row -> !row.get(4).equals("waiting") && !row.get(2).startsWith("Help station"))
                .allSatisfy(row -> assertThat(row.get(2)).contains(". ").hasSizeGreaterThan(40));
        assertThat(rows).extracting(row -> row.get(2)).anyMatch(told -> told.startsWith("Washing: lower.")
                        && told.contains("Watch: the stamp, for the whole first minute."))
                .anyMatch(told -> told.startsWith("Drying: blotter change 3. Change the blotters: 1 fresh on each face."))
                .anyMatch(told -> told.startsWith("Drying: weigh the dried sheet.")
                        && told.contains("the mass changes by less than 0.5 % in a day"));
    }

    /** Sugarman and Vitale (1992): paper begins to distort at 63 ± 3 % of solids, whatever the sheet weighs. */
    @Test
    void when_a_sheet_goes_under_the_boards_is_told_by_its_own_mass() {
        assertThat(rows("-stations.html", "station-1-times")).extracting(row -> row.get(2))
                .filteredOn(told -> told.startsWith("Drying: weigh the blotted sheet")).singleElement().asString()
                .contains("dry mass of this sheet, divided by what it weighs now, is 60–66 %", "those of the object",
                        "Below that it is too wet", "Above that it is drier than wished");
    }

    /** By hand: 7 practice sheets; the case asks two tests of the stamp under its wax, and the plan keeps the black wet for longer than
     * it was tested; with the sheet, its times, whether it may go and initials 7 columns; meters: 1 for the trial, 2 on the day, and
     * the conductivity meter. */
    @Test
    void what_the_trial_showed_and_each_calibration_have_their_form() {
        assertThat(rows("-preparation.html", "trial-record")).hasSize(7).allSatisfy(row -> assertThat(row).hasSize(7));
        assertThat(page("-preparation.html").filter(Table.class::isInstance).map(Table.class::cast)
                .filter(one -> one.id().equals("trial-record")).flatMap(one -> one.columns().stream())
                .map(column -> column.header().replaceAll("\\h", " ")))
                .anyMatch(told -> told.endsWith(": Ethanol and water for misting, 20 min"));
        assertThat(rows("-preparation.html", "calibration-record")).hasSize(4);
    }

    /** Common practice, no source: what is collected is told by what goes in, since when and by whom, and is not used. */
    @Test
    void a_label_of_waste_says_nothing_of_using_it() {
        assertThat(page("-labels.html").filter(LabelSheet.class::isInstance).map(LabelSheet.class::cast)
                .map(sheet -> sheet.words().get("unknown-waste"))).singleElement().asString().contains("what goes in")
                .doesNotContain("use");
    }

    /** From the table of labels: the sizes are those for what is hazardous; 5.8 L of weak water needs none of them. */
    @Test
    void a_label_of_what_is_not_hazardous_has_the_least_size() {
        assertThat(page("-labels.html").filter(LabelSheet.class::isInstance).map(LabelSheet.class::cast)
                .flatMap(sheet -> sheet.labels().stream()).filter(label -> label.name().startsWith("Washing water"))).hasSize(26)
                .allSatisfy(label -> assertThat(label.size()).isZero());
    }

    /** By hand: 3 baths at 6 stations are 18 fillings, 3 of the spare sheet make 21; the case allows a fourth bath. */
    @Test
    void a_station_sheet_tells_that_a_further_bath_has_no_time_and_what_is_to_spare() {
        assertThat(page("-stations.html").filter(Note.class::isInstance).map(note -> ((Note) note).text().plain())
                .filter(text -> text.contains("up to 4 baths"))).hasSize(6).allSatisfy(text ->
                        assertThat(text).contains("has time for 3", "all stations together: 6"));
    }

    /**
     * From the case's file: both inks held in the washing water for 120 min. The time counts, as the rule on tests counts it, from the
     * lowering to the first change of blotters, here by the clock of the plan's table.
     */
    @Test
    void where_the_plan_keeps_an_ink_wet_for_longer_than_it_was_tested_the_papers_say_so() {
        List<List<String>> plan = page("-spring-course.html").filter(Chart.class::isInstance).map(Chart.class::cast)
                .flatMap(chart -> chart.tables().stream()).filter(table -> table.id().equals("plan-table-1"))
                .flatMap(table -> table.rows().stream()).map(row -> row.stream().map(RichText::plain).toList()).toList();
        List<String> told = IntStream.rangeClosed(1, 6).mapToObj(station -> {
            int minutes = minute(plan, "Drying: blotter change 1", station) - minute(plan, "Washing: lower", station);
            assertThat(minutes).isGreaterThan(120);
            return "station " + station + ", " + minutes / 60 + " h " + minutes % 60 + " min";
        }).toList();
        for (String page : List.of("-spring-course.html", "-preparation.html")) {
            assertThat(notes(page).filter(note -> note.contains("the longest test that passed lasted 2 h"))).hasSize(1)
                    .allSatisfy(note -> assertThat(note).contains("“Washing water, made gently alkaline”", String.join("; ", told)));
        }
        assertThat(notes("-stations.html").filter(note -> note.contains(": tested in"))).hasSize(6);
    }

    /** From the plan: the last bath is read when the sheet lies between its blotters; "a bath left open drifts" (the case's cautions). */
    @Test
    void a_bath_that_is_read_late_is_told_to_have_stood_open() {
        assertThat(rows("-stations.html", "station-4-times")).filteredOn(row -> row.get(2).startsWith("Washing: read the used bath"))
                .singleElement().satisfies(row -> assertThat(row.get(2)).contains("since the sheet left it at "
                        + rows("-stations.html", "station-4-times").stream().filter(one -> one.get(2).startsWith("Washing: drain"))
                                .findFirst().orElseThrow().get(0)));
    }

    /** From the table of waste and the case's cautions: mending brings blades, its webs and blotters; by hand 14 × 6 pieces of each. */
    @Test
    void blades_used_pieces_and_cuttings_stand_in_the_table_of_waste() {
        List<List<String>> rows = tables("cases/tide-table/class-tissue-and-paste-preparation.html", "waste-table");
        assertThat(rows).filteredOn(row -> row.get(0).equals("Blades and needles")).singleElement().satisfies(row -> assertThat(row)
                .contains("Mending", "the sharps box", "Into the sharps box, never into the bin."));
        assertThat(rows).filteredOn(row -> row.get(0).equals("pieces that were used")).extracting(row -> row.get(1) + ", " + row.get(2))
                .containsExactlyInAnyOrder("Spun-bonded polyester web, up to 84", "Blotting paper, 300 g/m², up to 84");
        assertThat(rows).filteredOn(row -> row.get(0).equals("off-cuts")).singleElement().satisfies(row -> assertThat(row.get(1))
                .contains("Kozo tissue"));
        assertThat(tables("cases/tide-table/class-tissue-and-paste-stations.html", "station-1-waste")).extracting(row -> row.get(0))
                .anyMatch(from -> from.startsWith("Blades and needles"));
        assertThat(rows("-preparation.html", "waste-table")).extracting(row -> row.get(0)).doesNotContain("Blades and needles");
    }

    /** From the case's cautions: scalpels cut, and a cut has its first aid. */
    @Test
    void whoever_lays_scalpels_out_is_told_that_they_cut() {
        assertThat(DemoSite.pages(DEMO.cases(), DEMO.site()).stream().filter(page -> page.path().equals(
                "cases/tide-table/class-tissue-and-paste-preparation.html")).flatMap(AllBlocks::of).filter(Briefing.class::isInstance)
                .map(String::valueOf)).singleElement().asString().contains("Scalpels and needles cut.", "Press something clean on the cut");
    }

    /** By the clock of the plan's own rows: no row of the table is a time at which fewer than two stations read a bath. */
    @Test
    void who_has_the_one_conductivity_meter_first_is_told() {
        List<List<String>> turns = rows("-preparation.html", "conductivity-turns");
        assertThat(turns).isNotEmpty().isEqualTo(rows("-spring-course.html", "conductivity-turns"));
        assertThat(turns).allSatisfy(turn -> {
            assertThat(LocalTime.parse(turn.get(0))).isBefore(turn.get(1));
            for (String station : turn.subList(2, 4)) {
                assertThat(rows("-stations.html", "station-" + station.replace("Station ", "") + "-times")).anySatisfy(row -> {
                    assertThat(row.get(2)).matches("Washing: read the (used )?bath\\..*");
                    assertThat(LocalTime.parse(row.get(0))).isBeforeOrEqualTo(turn.get(0));
                    assertThat(LocalTime.parse(row.get(1))).isAfterOrEqualTo(turn.get(1));
                });
            }
            assertThat(rows("-stations.html", "station-" + turn.get(3).replace("Station ", "") + "-times")).anySatisfy(row ->
                    assertThat(row.get(0) + row.get(2)).startsWith(turn.get(0))
                            .contains(turn.get(2) + " has the conductivity meter first"));
        });
    }

    /**
     * From the table of usual times: a beaker takes up to 10 min to make, then come the drops of its sheets. From the studio's file it
     * closes at 17:30, so wax that is begun on Thursday afternoon goes on on Friday.
     */
    @Test
    void work_that_is_broken_off_tells_when_it_goes_on() {
        List<String> beakers = begin("Washing water, made gently alkaline: for the trial, in a beaker");
        assertThat(beakers).hasSizeGreaterThan(1);
        assertThat(begin("Practice sheets: Testing: whether the wax holds")).containsAll(beakers.stream().map(time ->
                LocalTime.parse(time).plusMinutes(10).toString()).toList());
        assertThat(rows("-preparation.html", "begin-table")).filteredOn(row -> row.get(0).equals("Practice sheets: Fixing"))
                .singleElement().satisfies(row -> assertThat(row.get(1)).contains("Thursday 9 April", "Friday 10 April"));
    }

    private static List<String> begin(String prepared) {
        return rows("-preparation.html", "begin-table").stream().filter(row -> row.get(0).equals(prepared)).findFirst().stream()
                .flatMap(row -> Pattern.compile("\\d\\d:\\d\\d").matcher(row.get(1)).results()).map(MatchResult::group).toList();
    }

    /** From the class's file: 12 stations in groups of 6, at 6 places. */
    @Test
    void stations_of_a_later_group_are_kept_aside() {
        assertThat(tables("cases/tide-table/class-tissue-and-paste-preparation.html", "begin-table")).extracting(row -> row.get(0))
                .anyMatch(work -> work.startsWith("Lay out the stations") && work.contains("later groups: on trays aside"));
        assertThat(rows("-preparation.html", "begin-table")).extracting(row -> row.get(0)).noneMatch(work -> work.contains("later groups"));
    }

    private static List<List<String>> tables(String path, String id) {
        return DemoSite.pages(DEMO.cases(), DEMO.site()).stream().filter(page -> page.path().equals(path)).flatMap(AllBlocks::of)
                .filter(Table.class::isInstance).map(Table.class::cast).filter(one -> one.id().equals(id))
                .flatMap(one -> one.rows().stream())
                .map(row -> row.stream().map(cell -> cell.plain().replaceAll("\\h", " ")).toList()).toList();
    }

    private static int minute(List<List<String>> plan, String work, int station) {
        return LocalTime.parse(plan.stream().filter(row -> row.get(0).equals(work)).findFirst().orElseThrow().get(station))
                .toSecondOfDay() / 60;
    }

    private static Stream<String> notes(String page) {
        return page(page).filter(Note.class::isInstance).map(note -> ((Note) note).text().plain().replaceAll("\\h", " "));
    }

    private static List<List<String>> rows(String page, String table) {
        List<List<String>> rows = page(page).filter(Table.class::isInstance).map(Table.class::cast).filter(one -> one.id().equals(table))
                .flatMap(one -> one.rows().stream())
                .map(row -> row.stream().map(cell -> cell.plain().replaceAll("\\h", " ")).toList()).toList();
        assertThat(rows).as(page + " " + table).isNotEmpty();
        return rows;
    }

    private static Stream<Block> page(String name) {
        return DemoSite.pages(DEMO.cases(), DEMO.site()).stream()
                .filter(page -> page.path().startsWith("cases/tide-table/class-spring-course") && page.path().endsWith(name))
                .flatMap(AllBlocks::of);
    }
}
