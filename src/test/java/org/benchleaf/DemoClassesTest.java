package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.calculate.Figure;
import org.benchleaf.check.CaseChecker;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.derive.Deriver;
import org.benchleaf.derive.WorkedCase;
import org.benchleaf.derive.classes.ClassPlan;
import org.benchleaf.derive.classes.ClassSupplies;
import org.benchleaf.derive.classes.Duty;
import org.benchleaf.derive.classes.Outlasting;
import org.benchleaf.derive.classes.ScheduleReading;
import org.benchleaf.model.Library;
import org.benchleaf.model.SpotTest;
import org.benchleaf.model.Step;
import org.benchleaf.model.TestedContact;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.LibraryReader;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** The demo's classes against sums worked by hand, and their lists against the case file as it is written. */
class DemoClassesTest {

    private static final Path CONTENT = Path.of("content");
    private static final Path CASE = CONTENT.resolve("cases/tide-table");
    /** The keys under which a step names what it uses, in the front matter. */
    private static final Set<String> NAMING = Set.of("of", "tool", "tools", "under", "between", "blotter", "tissue", "with",
            "materials", "uses");

    private static WorkedCase worked;
    private static Map<String, Map<?, ?>> steps;
    private static Map<?, ?> solutions;

    @BeforeAll
    static void work() throws IOException {
        Library library = LibraryChecker.check(LibraryReader.read(CONTENT)).library();
        Deriver deriver = new Deriver(library);
        TreatmentCase treatment = CaseChecker.check(CaseReader.read(CONTENT, CASE), library, LocalDate.of(2026, 6, 1),
                deriver::ph).treatment().orElseThrow();
        worked = deriver.derive(treatment, List.of()).worked();
        String text = Files.readString(CASE.resolve("case.md"), StandardCharsets.UTF_8);
        Map<?, ?> front = new Yaml(new SafeConstructor(new LoaderOptions())).load(text.split("(?m)^---$")[1]);
        solutions = (Map<?, ?>) front.get("solutions");
        steps = ((List<?>) front.get("steps")).stream().map(step -> (Map<?, ?>) step)
                .collect(Collectors.toMap(step -> (String) step.get("id"), step -> step));
    }

    private static ClassPlan course(String id) {
        return worked.classes().stream().filter(plan -> plan.source().id().equals(id)).findFirst().orElseThrow();
    }

    private static Figure figure(String id) {
        return course("spring-course").figures().get(id);
    }

    private static ClassSupplies.Order order(String material) {
        return course("spring-course").supplies().orders().stream().filter(one -> one.material().equals(material))
                .findFirst().orElseThrow();
    }

    /**
     * By hand: the spare sheet makes 7 of 6, more than 6 · 1.10: 7 · 15 mL + 6 · 3 mL and 1 mL for the trial of each = 130 mL;
     * 130 · 40 / 96 = 54.17 mL of spirit.
     */
    @Test
    void what_is_drawn_has_a_share_to_spare_and_what_stays_in_six_bottles() {
        assertThat(figure("mist.needed").value().in(Unit.MILLILITRE)).isCloseTo(130, within(1e-9));
        assertThat(figure("mist.batch").value().in(Unit.MILLILITRE)).isCloseTo(130, within(1e-9));
        assertThat(figure("total.ethanol-96").value().in(Unit.MILLILITRE)).isCloseTo(130 * 40 / 96.0, within(1e-9));
    }

    /**
     * By hand: the tray of 550 mm by 420 mm to 25 mm is 5.775 L; 3 baths at 6 stations are 18, and 6 to spare, as the class states,
     * are more than the 3 of its spare sheet: 24 fillings, 138.6 L.
     */
    @Test
    void a_tray_filled_to_a_mark_has_no_share_to_spare_but_fillings() {
        assertThat(figure("bath.needed").value().in(Unit.LITRE)).isCloseTo(24 * 5.775, within(1e-9));
    }

    /** By hand: 6 stacks of 2 are 12 for one sheet; 7 sheets are 84, more than 72 · 1.10; 80 are missing, 4 packs of 25, 20 over. */
    @Test
    void blotters_are_whole_and_bought_in_packs() {
        ClassSupplies.Order blotters = order("blotter-300");
        assertThat(blotters.needed().value().value()).isEqualTo(84);
        assertThat(blotters.packs().orElseThrow().value().value()).isEqualTo(4);
        assertThat(blotters.left().orElseThrow().value().value()).isEqualTo(20);
    }

    /**
     * By hand, on a calendar of 2026: the mist is made on Friday 10 April, for the trial of the practice sheets, and its spirit is in the
     * house on Thursday 9 April; five working days before, over Easter Monday and Good Friday: 8, 7, 2 and 1 April and 31 March.
     */
    @Test
    void an_order_is_counted_back_over_days_on_which_nobody_works() {
        assertThat(order("ethanol-96").inHouse()).isEqualTo(LocalDate.of(2026, 4, 9));
        assertThat(order("ethanol-96").orderBy()).contains(LocalDate.of(2026, 3, 31));
        assertThat(order("ethanol-96").packs().orElseThrow().value().value()).isEqualTo(1);
    }

    /**
     * By hand: limewater is needed at 13:45 on Friday, when what the trial needs is begun, and takes 24 h; the mist needs up to 30 min
     * before it, and before the break at 13:00.
     */
    @Test
    void hands_on_time_lies_before_closing_and_before_the_use() {
        Map<String, LocalDateTime> begins = course("spring-course").starts().stream()
                .collect(Collectors.toMap(ClassPlan.Start::solution, ClassPlan.Start::begin));
        assertThat(begins).containsEntry("lime-water", LocalDateTime.of(2026, 4, 9, 13, 45))
                .containsEntry("mist", LocalDateTime.of(2026, 4, 10, 12, 30));
    }

    private static List<String> stretches(String course, Duty.Kind kind, String step) {
        return course(course).duties().stream().filter(duty -> duty.kind() == kind && duty.step().orElse("").equals(step))
                .flatMap(duty -> duty.stretches().stream()).map(one -> one.from() + " to " + one.to().toLocalTime()).toList();
    }

    /**
     * By hand: ready on Monday 13 April at 9:00, a day before the class. Of 15 min by hand 5 go to each of three times at a sheet: the
     * mist is set, blotted after 20 min for the water, which is blotted after 120 min, at the latest at 17:30. The water keeps 1 h, its
     * drop comes 20 min after the mist: (60 - 20) / 5 + 1 = 9 sheets a beaker; within 20 min 4 are begun: 4 and 3. The three are blotted
     * from 17:15, so they begin at 14:55, after a beaker of up to 10 min. The four need 50 min with theirs before that, after the break:
     * from 13:55. The meter is calibrated from 13:45, the mist made before the break from 12:30, limewater drawn off before that
     * for 15 min, and the wax laid on before 12:15 in 175 min.
     */
    @Test
    void practice_sheets_are_made_by_one_pair_of_hands_and_tried_with_liquids_that_are_there() {
        assertThat(stretches("spring-course", Duty.Kind.SHEETS_GO_THROUGH, "test-again")).containsExactly("2026-04-10T14:05 to 14:45",
                "2026-04-10T14:55 to 15:10", "2026-04-10T15:15 to 15:30", "2026-04-10T16:25 to 16:45", "2026-04-10T17:15 to 17:30");
        assertThat(stretches("spring-course", Duty.Kind.BATH_FOR_A_TRIAL, "test-again")).containsExactly("2026-04-10T13:55 to 14:05",
                "2026-04-10T14:45 to 14:55");
        assertThat(stretches("spring-course", Duty.Kind.METER_CALIBRATED, "test-again")).containsExactly("2026-04-10T13:45 to 13:55");
        assertThat(stretches("spring-course", Duty.Kind.SHEETS_GO_THROUGH, "fix-stamp")).containsExactly("2026-04-10T09:20 to 12:15");
        Duty trial = course("spring-course").duties().stream().filter(duty -> duty.kind() == Duty.Kind.SHEETS_GO_THROUGH
                && duty.step().equals(Optional.of("test-again"))).findFirst().orElseThrow();
        assertThat(trial.with()).containsEntry("mist", Optional.of(Quantity.of(7, Unit.MILLILITRE)))
                .containsEntry("bath", Optional.of(Quantity.of(100, Unit.MILLILITRE)));
    }

    /** What a trial needs is ready before it: solutions, the meter, each beaker before the sheets that are tried from it. */
    @Test
    void nothing_that_a_trial_needs_is_ready_only_when_it_begins() {
        ClassPlan plan = course("spring-course");
        LocalDateTime first = plan.duties().stream().filter(duty -> duty.kind() == Duty.Kind.SHEETS_GO_THROUGH
                && duty.step().equals(Optional.of("test-again"))).map(Duty::begin).findFirst().orElseThrow();
        assertThat(plan.starts()).filteredOn(start -> !start.inTrays()).isNotEmpty().allSatisfy(start ->
                assertThat(start.readyFor()).isBefore(first));
        assertThat(plan.duties()).filteredOn(duty -> duty.kind() == Duty.Kind.METER_CALIBRATED).singleElement().satisfies(duty ->
                assertThat(duty.needed()).isBefore(first));
    }

    /** By hand: 12 sheets and two to spare, 5 min each, are 70 min before Monday 20 April at 9:00: on Friday from 16:20 to 17:30. */
    @Test
    void clean_sheets_are_torn_before_the_class() {
        assertThat(stretches("tissue-and-paste", Duty.Kind.SHEETS_MADE, "")).containsExactly("2026-04-17T16:20 to 17:30");
    }

    /**
     * By hand: six stations of up to 10 min are the last hour of the day before a class that begins when the studio opens; clearing
     * away takes 6 min at most for each of them.
     */
    @Test
    void stations_are_laid_out_before_anybody_begins_and_the_room_is_cleared_after_all() {
        assertThat(stretches("spring-course", Duty.Kind.LAYING_OUT, "")).containsExactly("2026-04-13T16:30 to 17:30");
        assertThat(stretches("spring-course", Duty.Kind.CLEARING_AWAY, "")).containsExactly("2026-04-17T14:07 to 14:43");
    }

    /** The case says that the washing water keeps 1 h: from the end of filling a tray until the sheet is lifted out of it. */
    @Test
    void no_bath_is_older_than_it_keeps_while_a_sheet_lies_in_it() {
        List<ScheduleReading.Turn> turns = new ScheduleReading(course("spring-course").schedule().orElseThrow()).whole();
        for (int station = 1; station <= 6; station++) {
            for (int bath = 1; bath <= 3; bath++) {
                LocalDateTime filled = turn(turns, station, bath == 1 ? "make the bath" : "bath change " + (bath - 1)).to();
                assertThat(turn(turns, station, "bath " + bath).to()).as("bath " + bath + " of station " + station)
                        .isBeforeOrEqualTo(filled.plusHours(1));
            }
        }
    }

    /**
     * By hand, from what the record of the class asks: the sheet is weighed dry before it is misted and wet before it is laid in; what was
     * read fresh, at each of two changes what was used too, and the third bath after it; a bath that stood is read at its release.
     * The third tray is emptied once, at a sink, and until then it is in use.
     */
    @Test
    void what_the_record_asks_has_its_time() {
        List<ScheduleReading.Turn> turns = new ScheduleReading(course("spring-course").schedule().orElseThrow()).whole();
        for (int station = 1; station <= 6; station++) {
            assertThat(turn(turns, station, "weigh the dry sheet").to()).isBeforeOrEqualTo(turn(turns, station, "prewetting").from());
            assertThat(turn(turns, station, "weigh the wet sheet").to()).isBeforeOrEqualTo(
                    turn(turns, station, "lay between blotters").from());
            ScheduleReading.Turn blotted = turn(turns, station, "weigh the blotted sheet");
            assertThat(blotted.takes()).contains("balance");
            assertThat(blotted.from()).isAfterOrEqualTo(turn(turns, station, "lay between blotters").to());
            assertThat(turn(turns, station, "hold before lowering").takes()).contains("pH meter");
            // One rinse, 2 min for the sample of the used bath, 3 min for the fresh one.
            ScheduleReading.Turn read = turn(turns, station, "read the bath");
            assertThat(read.end() - read.start()).isEqualTo(6);
            ScheduleReading.Turn last = turn(turns, station, "read the used bath");
            assertThat(last.takes()).contains("pH meter");
            assertThat(last.end() - last.start()).isEqualTo(3);
            ScheduleReading.Turn emptied = turn(turns, station, "empty the tray");
            assertThat(emptied.takes()).contains("sink", "tray");
            assertThat(emptied.end() - emptied.start()).isEqualTo(3);
            assertThat(emptied.from()).isBefore(turn(turns, station, "blotter change 1").from());
        }
    }

    /**
     * By hand, from the class's file: there is one balance, and a weighing takes 2 min at most: dry, wet, the wet web, blotted and dried,
     * five for each of six sheets, no two of them at one time.
     */
    @Test
    void each_weighing_has_its_turn_at_the_one_balance() {
        List<ScheduleReading.Turn> weighings = new ScheduleReading(course("spring-course").schedule().orElseThrow()).turns().stream()
                .filter(turn -> turn.work().startsWith("weigh ")).sorted(Comparator.comparing(ScheduleReading.Turn::from)).toList();
        assertThat(weighings).hasSize(30).allSatisfy(turn -> {
            assertThat(turn.takes()).contains("balance");
            assertThat(turn.end() - turn.start()).isEqualTo(2);
        });
        for (int i = 1; i < weighings.size(); i++) {
            assertThat(weighings.get(i).from()).isAfterOrEqualTo(weighings.get(i - 1).to());
        }
    }

    /** From the case's file: a sheet is laid under its boards when it has been blotted for 10 min, and weighed before. */
    @Test
    void boards_and_weight_are_taken_when_the_blotted_sheet_has_been_weighed() {
        List<ScheduleReading.Turn> turns = new ScheduleReading(course("spring-course").schedule().orElseThrow()).turns();
        for (int station = 1; station <= 6; station++) {
            LocalDateTime weighed = turn(turns, station, "weigh the blotted sheet").to();
            int here = station;
            assertThat(turns).filteredOn(turn -> turn.station() == here && turn.takes().stream().anyMatch(one -> one.endsWith("board")))
                    .isNotEmpty().allSatisfy(turn -> assertThat(turn.from()).isAfterOrEqualTo(weighed));
            assertThat(turn(turns, station, "blotter change 1").takes()).contains("2 × board", "weight");
        }
    }

    /** From the case's file: the stamp is watched for the whole first minute, so whoever lowered the sheet helps nobody meanwhile. */
    @Test
    void nobody_leaves_a_sheet_in_its_first_minute() {
        List<ScheduleReading.Turn> turns = new ScheduleReading(course("spring-course").schedule().orElseThrow()).turns();
        for (int station = 1; station <= 6; station++) {
            ScheduleReading.Turn watch = turn(turns, station, "watch the sheet in its bath");
            assertThat(watch.from()).isEqualTo(turn(turns, station, "lower").to());
            assertThat(watch.end() - watch.start()).isEqualTo(1);
            int here = station;
            assertThat(turns).filteredOn(turn -> turn.isHelpedBy(here)).noneMatch(turn -> turn.start() < watch.end()
                    && watch.start() < turn.end());
        }
    }

    /** By hand: a portion takes up to 2 min; six stations of the first group mend from 13:25, six of the second from 15:20. */
    @Test
    void portions_are_filled_by_the_technician_before_a_station_begins_with_them() {
        assertThat(stretches("tissue-and-paste", Duty.Kind.PORTIONS_FILLED, "")).containsExactly("2026-04-21T13:13 to 13:25",
                "2026-04-21T15:08 to 15:20");
        Duty mist = course("spring-course").duties().stream().filter(duty -> duty.kind() == Duty.Kind.PORTIONS_FILLED).findFirst()
                .orElseThrow();
        assertThat(mist.count()).isEqualTo(6);
        assertThat(mist.minutes()).isEqualTo(12);
        assertThat(mist.with()).containsEntry("mist", Optional.of(Quantity.of(18, Unit.MILLILITRE)));
        assertThat(mist.stretches().get(0).from().toLocalDate()).isEqualTo(java.time.LocalDate.of(2026, 4, 14));
    }

    /** By hand: up to 15 min before it is needed on Friday at 13:45, when it has settled for the night; the mist takes 12:30 to 13:00. */
    @Test
    void the_clear_part_is_drawn_off_before_it_is_needed() {
        assertThat(stretches("spring-course", Duty.Kind.CLEAR_DRAWN_OFF, "")).containsExactly("2026-04-10T12:15 to 12:30");
    }

    /** An outcome is not met by luck: what the class asks of a time goes by the plan, whose own waits are up to an hour. */
    @Test
    void an_outcome_that_asks_for_a_time_goes_by_the_plan() {
        assertThat(course("spring-course").source().papers().outcomes()).filteredOn(one -> one.at().equals("dry")).singleElement()
                .satisfies(one -> assertThat(one.metWhen().orElseThrow()).contains("of the time on the station sheet"));
    }

    /** By hand: six places are in use from 13:25 until all have cleared away at 15:20; the second group begins when they are free. */
    @Test
    void nobody_begins_at_a_place_that_is_not_cleared_away() {
        List<ScheduleReading.Turn> turns = new ScheduleReading(course("tissue-and-paste").schedule().orElseThrow()).turns();
        LocalDateTime cleared = turns.stream().filter(turn -> turn.station() <= 6).map(ScheduleReading.Turn::to)
                .max(LocalDateTime::compareTo).orElseThrow();
        assertThat(cleared.toLocalTime()).isEqualTo(LocalTime.of(15, 20));
        assertThat(turns).filteredOn(turn -> turn.station() > 6).isNotEmpty().allSatisfy(turn ->
                assertThat(turn.from()).isAfterOrEqualTo(cleared));
    }

    /** By hand: six stations mend at a time and each looks in raking light; six portions of 2 min before 13:25 begin at 13:13. */
    @Test
    void each_that_mends_at_one_time_has_a_lamp_and_its_paste_is_ready_before_it_is_portioned() {
        assertThat(course("tissue-and-paste").supplies().layOut()).filteredOn(item -> item.id().equals("lamp for raking light"))
                .singleElement().satisfies(lamp -> assertThat(lamp.all().orElseThrow().value()).isEqualTo(6));
        assertThat(course("tissue-and-paste").starts()).singleElement().satisfies(paste -> {
            assertThat(paste.readyFor()).isEqualTo(LocalDateTime.of(2026, 4, 21, 13, 13));
            assertThat(paste.begin()).isEqualTo(LocalDateTime.of(2026, 4, 21, 10, 13));
        });
    }

    /** The step sheet is read aloud, so the class says nothing else of what the supervisor looks at. */
    @Test
    void what_is_looked_at_is_what_the_case_says() {
        Step relax = course("spring-course").steps().stream().filter(step -> step.id().equals("relax")).findFirst().orElseThrow();
        assertThat(course("spring-course").source().look(relax)).isEqualTo(relax.hold().orElseThrow().look());
    }

    /** Common practice, no source: a meter is calibrated before it is first used on a day, for up to 10 min. */
    @Test
    void nobody_has_the_meter_before_it_is_calibrated() {
        assertThat(new ScheduleReading(course("spring-course").schedule().orElseThrow()).turns().stream()
                .filter(turn -> turn.takes().contains("pH meter")).map(ScheduleReading.Turn::from))
                .isNotEmpty().allSatisfy(from -> assertThat(from.toLocalTime()).isAfterOrEqualTo(LocalTime.of(9, 10)));
    }

    private static ScheduleReading.Turn turn(List<ScheduleReading.Turn> turns, int station, String work) {
        return turns.stream().filter(turn -> turn.station() == station && turn.work().equals(work)).findFirst().orElseThrow();
    }

    /** By hand: one bottle of the mist and six sprayers; 24 fillings of trays; a bottle to shake limewater in, two for its clear part. */
    @Test
    void there_are_as_many_labels_as_vessels() {
        assertThat(course("spring-course").supplies().vessels()).allSatisfy(one -> assertThat(one.labels())
                .isEqualTo(Map.of("mist", 7, "bath", 24, "lime-water", 3).get(one.solution())));
    }

    /**
     * By hand, for one station: briefing to 9:10, weigh 2, bath 15, hold 3, mist 7, hold 3, lower 4, three baths of 20 and two changes of
     * 1 + 3 + 6 + 1, drain 10, weigh 2, lay in 7, weigh 2: 11:27; blotters after 15, 30 and 60 min, 5 each, the third held up by the break
     * until 13:45;
     * after 150 min the fourth, and the night to 9:00. Of the 72 h under weight 1210 min have passed by 9:05 on Wednesday:
     * 3110 more until Friday 12:55, take out 5; after the break weigh 2, at one balance, so the
     * sixth at 13:57; clear away 10.
     */
    @Test
    void six_stations_are_done_on_the_friday_and_no_plan_is_shorter() {
        var schedule = course("spring-course").schedule().orElseThrow();
        assertThat(schedule.course().starts().plusMinutes(schedule.timetable().end()))
                .isEqualTo(LocalDateTime.of(2026, 4, 17, 14, 7));
        assertThat(schedule.timetable().end()).isEqualTo(schedule.floor().minutes());
    }

    /**
     * One sheet alone is the figure of the case. By hand from the plan: mist begins at 9:36, 9:49 and 9:59, then 13 min and more apart, and
     * at 4 changes an hour e^(-4 · t / 60) is left: when the third ends, 1 + e^(-4 · 10 / 60) + e^(-4 · 23 / 60) = 1.729 of one sheet.
     */
    @Test
    void the_air_is_that_of_all_stations_in_the_order_of_the_plan() {
        ClassSupplies.Air air = course("spring-course").supplies().air().get(0);
        double one = air.one().orElseThrow().value().in(Unit.PPM);
        assertThat(air.peak().orElseThrow().value().in(Unit.PPM)).isCloseTo(1.729 * one, within(0.01 * one));
        assertThat(air.atOnce().orElseThrow().value().in(Unit.PPM)).as("all begin and end together: six of one").isCloseTo(6 * one,
                within(0.01 * one));
    }

    @Test
    void nothing_that_a_step_names_is_missing_from_the_list() {
        for (ClassPlan plan : worked.classes()) {
            Set<String> listed = plan.supplies().layOut().stream().map(ClassSupplies.LaidOut::id).collect(Collectors.toSet());
            assertThat(plan.steps()).isNotEmpty().allSatisfy(step -> {
                assertThat(listed).as(step.id()).containsAll(laidOut(step.id()));
                assertThat(listed).as(step.id()).containsAll(weights(step.id()).keySet());
                assertThat(listed).as(step.id()).containsAll(worked.care().get(step.id()).wear());
            });
        }
    }

    /**
     * From what a step before the class names, wears and needs, as the case file writes it, to the lists. By hand: two steps; of wax
     * 7 · 2 g; one spatula, loupe and fine pipette for one pair of hands; the loupe and the pipette for the trial alone.
     */
    @Test
    void nothing_that_making_the_practice_sheets_takes_is_missing() throws IOException {
        ClassSupplies supplies = course("spring-course").supplies();
        Set<String> listed = Stream.concat(supplies.layOut().stream(), supplies.practice().stream()).map(ClassSupplies.LaidOut::id)
                .collect(Collectors.toSet());
        for (String step : List.of("fix-stamp", "test-again")) {
            assertThat(listed).containsAll(named(step)).containsAll(worked.care().get(step).wear())
                    .containsAll(needed(List.of(step)).keySet());
        }
        assertThat(supplies.practice()).extracting(item -> item.id() + " " + item.all().map(all -> (int) all.value()).orElse(0))
                .contains("cyclic-wax 21", "heated spatula 1", "loupe 1", "fine pipette 1", "trial-beaker 1");
        assertThat(course("tissue-and-paste").supplies().practice()).extracting(ClassSupplies.LaidOut::id).containsExactly("pencil");
    }

    /**
     * By hand, on a calendar of 2026: the sheets are waxed from Thursday 9 April, so they are there on Wednesday 8; ten working days
     * before,
     * over Good Friday and Easter Monday: 7, 2, 1 April, 31, 30, 27, 26, 25, 24 and 23 March. The lime is weighed on Thursday too. The torn
     * sheets of the other class are torn on Friday 17 April, there on Thursday 16, ordered five working days before: 15, 14, 13, 10,
     * 9 April. A respirator takes ten days too; buffers for Friday 10 April are there on Thursday and take five: 8, 7, 2, 1 April and
     * 31 March; three calibrations take 30 mL each of every buffer.
     */
    @Test
    void sheets_and_what_is_worn_are_there_before_they_are_used() {
        assertThat(bought("spring-course", "sheet")).isEqualTo("7 by 2026-03-24 there 2026-04-09");
        assertThat(bought("spring-course", "RSP")).isEqualTo("1 by 2026-03-23 there 2026-04-08");
        assertThat(bought("spring-course", "buffers")).isEqualTo("90 by 2026-03-31 there 2026-04-09");
        assertThat(bought("tissue-and-paste", "sheet")).isEqualTo("14 by 2026-04-09 there 2026-04-16");
    }

    /** From the lines above: a class that is issued on 25 March is too late for the respirator of the 23rd and the sheets of the 24th. */
    @Test
    void what_nobody_makes_is_told_too_where_it_has_to_be_ordered_before_the_issue(@TempDir Path folder) throws IOException {
        ChangedContent.copy(CONTENT, folder.resolve("content"));
        Path course = folder.resolve("content/classes/spring-course.yaml");
        Files.writeString(course, Files.readString(course).replaceFirst("on: 2026-03-\\d\\d", "on: 2026-03-25"));
        Library library = LibraryChecker.check(LibraryReader.read(folder.resolve("content"))).library();
        assertThat(new Deriver(library).derive(worked.source(), List.of()).messages().all()).filteredOn(one ->
                one.code().equals("CLASS-010")).extracting(one -> one.what().replaceAll(" would .*", "")).containsExactlyInAnyOrder(
                        "respirator", "practice sheets");
    }

    private static String bought(String course, String id) {
        return course(course).supplies().beside().stream().filter(one -> one.item().id().equals(id)).map(one ->
                (int) one.item().all().orElseThrow().value() + " by " + one.orderBy().map(LocalDate::toString).orElse("") + " there "
                        + one.inHouse()).findFirst().orElseThrow();
    }

    @Test
    void nothing_is_listed_that_no_step_names() {
        for (ClassPlan plan : worked.classes()) {
            assertThat(plan.supplies().layOut()).isNotEmpty().allSatisfy(item -> {
                switch (item.kind()) {
                    case MATERIAL, SOLUTION -> assertThat(item.steps()).isNotEmpty()
                            .allSatisfy(step -> assertThat(namedAndFilled(step)).contains(item.id()));
                    case VESSEL -> assertThat(item.steps()).isNotEmpty().allSatisfy(step -> assertThat(!filled(step).isEmpty()
                            || needed(List.of(step)).containsKey(item.id())).as(item.id()).isTrue());
                    case WORN -> assertThat(item.steps()).isNotEmpty()
                            .allSatisfy(step -> assertThat(wornFor(plan, step)).contains(item.id()));
                    case WEIGHT -> assertThat(item.steps()).isNotEmpty()
                            .allSatisfy(step -> assertThat(weights(step)).containsKey(item.id()));
                    case SHARED -> assertThat(plan.source().day().shared()).containsKey(item.id());
                    case SHEET -> assertThat(item.steps()).isEmpty();
                    // With what is prepared, and what stands at a bath: held by the lists below.
                    case MAKING, BENCH -> assertThat(item.steps()).isNotEmpty();
                }
            });
        }
    }

    /** What is worn at a step, or to prepare what it uses. */
    private static Set<String> wornFor(ClassPlan plan, String step) {
        Set<String> codes = new TreeSet<>(worked.care().get(step).wear());
        plan.preparations().stream().filter(one -> one.usedIn().contains(step))
                .forEach(one -> codes.addAll(worked.hazards().get(one.solution()).wear()));
        return codes;
    }

    /**
     * By hand, from the sheets of the class: lime is weighed on the bench balance, its 250 mL of water measured in the cylinder of that
     * size, shaken in a bottle of 500 mL and drawn off into two of 100 mL, which it fills;
     * 54 mL of spirit and 80 mL of water in that of 100 mL, into
     * a bottle of 250 mL; portions of 18 mL are measured in that of 25 mL and go into the sprayers;
     * a can for solvents, a bottle for limewater and seven of 25 L for 139.2 L of water; the buffers on either side of pH 8.5; for lime
     * powder the technician wears a respirator. Common practice, no source: what weighing, drawing off, filling, stirring, changing baths
     * and cutting need.
     */
    @Test
    void what_preparing_and_collecting_needs_is_laid_out() {
        List<ClassSupplies.LaidOut> list = course("spring-course").supplies().layOut();
        assertThat(list).filteredOn(item -> item.kind() == ClassSupplies.Kind.MAKING)
                .extracting(item -> item.id() + " " + item.words() + " " + (int) item.all().orElseThrow().value())
                .containsExactlyInAnyOrder(
                        "bench balance  1", "250 mL measuring cylinder, class B  1", "100 mL measuring cylinder, class B  1",
                        "25 mL measuring cylinder, class B  1", "plastic bottle 500 mL 1", "plastic bottle 250 mL 1",
                        "plastic bottle 100 mL 2", "thermometer to bring the baths to their temperature 1",
                        "weighing boat for each solid that is weighed 1", "stirring rod  2",
                        "pipette to draw off with its filler, to draw the clear part off into its bottle 1", "funnel to fill bottles 1",
                        "rinse bottle with deionised water, to rinse the electrode 2",
                        "beaker at each meter two for buffers, one for rinsings, one for stock that is poured out and not poured back 8",
                        "conductivity standard in date, to check the meter with before the first bath 1",
                        "bottle for used buffers closed and labelled 1", "conductivity meter with its standard 1",
                        "balance its step at most a five-hundredth of the lightest dry sheet; with a plate larger"
                                + " than the sheet, to weigh it dry and wet 1",
                        "measuring cylinder to measure what is left in a sprayer 1", "lamp for raking light  1",
                        "drying rack or lines, under extraction, for wet blotters 1",
                        "jug together as large as one filling, to fill trays; those for a change are filled while the sheet still lies in "
                                + "its bath 4",
                        "hose with a clip, from the tray down into the bucket 2",
                        "bucket to empty trays into, larger than one filling 2", "wide funnel to pour used baths into cans 2",
                        "scissors with a ruler, to cut pieces to size 1");
        assertThat(list).filteredOn(item -> item.kind() == ClassSupplies.Kind.BENCH)
                .extracting(item -> item.id() + " " + item.words() + " " + (int) item.all().orElseThrow().value())
                .containsExactlyInAnyOrder(
                        "tray  6",
                        "board stiff and flat, one under the stack and one over it, under the weight, in which its mass is not counted 12",
                        "draining-board  6", "buffers pH 7, pH 9.18 2", "waste-can flammable solvents, 1 L 1",
                        "waste-can rinsing water, 25 L 7", "waste-can alkaline water, 500 mL 1");
        assertThat(list).filteredOn(item -> item.id().equals("RSP")).singleElement()
                .satisfies(item -> assertThat(item.all().orElseThrow().value()).isEqualTo(1));
    }

    /** By hand: 24 fillings less 3 at each of 6 stations are 6; a fourth bath at each takes them all, beside 3 of a spare sheet at 3. */
    @Test
    void fillings_to_spare_serve_a_fourth_bath_at_each_station() {
        assertThat(course("spring-course").supplies().furtherBaths()).containsExactly(new ClassSupplies.FurtherBaths("wash", 4, 6, 6, 3));
        assertThat(course("tissue-and-paste").supplies().furtherBaths()).isEmpty();
    }

    /** From the work of each step and the making of what it uses, as the case file writes them, to the list, and back. */
    @Test
    void what_work_needs_without_a_word_of_the_case_is_laid_out_and_nothing_else() throws IOException {
        Set<String> names = WrittenNeeds.rows().stream().map(row -> (String) row.get("name")).collect(Collectors.toSet());
        for (ClassPlan plan : worked.classes()) {
            Map<String, Set<String>> told = plan.supplies().layOut().stream().filter(item -> names.contains(item.id()))
                    .collect(Collectors.toMap(ClassSupplies.LaidOut::id, item -> new TreeSet<>(item.steps())));
            assertThat(told).isEqualTo(needed(plan.steps().stream().map(Step::id).toList())).isNotEmpty();
        }
    }

    /** By hand: each of twelve stations has a paste brush and tweezers; the room has one boiler, plate, sieve and spoon for the paste. */
    @Test
    void paste_is_cooked_and_laid_with_what_is_laid_out() {
        Map<String, Double> counts = course("tissue-and-paste").supplies().layOut().stream()
                .filter(item -> Set.of("double boiler", "hot plate",
                "fine sieve", "stirring spoon", "paste brush", "tweezers").contains(item.id())).collect(Collectors.toMap(
                        ClassSupplies.LaidOut::id, item -> item.all().orElseThrow().value()));
        assertThat(counts).isEqualTo(Map.of("double boiler", 1.0, "hot plate", 1.0, "fine sieve", 1.0, "stirring spoon", 1.0,
                "paste brush", 12.0, "tweezers", 12.0));
    }

    private static Map<String, Set<String>> needed(List<String> ids) {
        try {
            return WrittenNeeds.of(ids.stream().<Map<?, ?>>map(steps::get).toList(), solutions);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /**
     * By hand: a sheet of 900 mm by 600 mm at 5 g/m² is 2.7 g; the tears of 64, 38 and 22 mm
     * with 5 mm at each end are 74 + 48 + 32 = 154 mm of 8 mm, 6.16 mg; of 14 sheets 0.0862 g: one sheet.
     */
    @Test
    void tissue_is_ordered_by_the_sheet() {
        ClassSupplies.Order tissue = course("tissue-and-paste").supplies().orders().stream().filter(one -> one.material().equals("kozo-5"))
                .findFirst().orElseThrow();
        assertThat(tissue.needed().value()).isEqualTo(Quantity.count(1));
        assertThat(tissue.packs().orElseThrow().value()).isEqualTo(Quantity.count(1));
        assertThat(course("tissue-and-paste").figures().get("total.kozo-5").value().in(Unit.GRAM)).isCloseTo(14 * 0.00616, within(1e-6));
    }

    /**
     * By hand: 12 sheets and 2 to spare are 14, more than 12 · 1.10; 2 at each of 3 weights are 84 pieces. A station has 5 strips and
     * 10 % more, which is one: 6, of 14 sheets 84. Of paste each has 4 g, the middle of 3 to 5 g (common practice), 48 g of the 100 g.
     */
    @Test
    void twelve_stations_and_two_spare_sheets_are_fourteen_of_everything() {
        List<ClassSupplies.LaidOut> list = course("tissue-and-paste").supplies().layOut();
        assertThat(list).filteredOn(item -> Set.of("sheet", "polyester-web", "blotter-300", "kozo-5").contains(item.id()))
                .extracting(item -> item.id() + " " + item.station().map(one -> (int) one.value()).orElse(0) + " "
                        + (int) item.all().orElseThrow().value()).containsExactlyInAnyOrder("sheet 1 14", "polyester-web 6 84",
                        "blotter-300 6 84", "kozo-5 6 84", "kozo-5 0 1");
        assertThat(list).filteredOn(item -> item.id().equals("paste")).singleElement().satisfies(paste -> {
            assertThat(paste.station().orElseThrow().in(Unit.GRAM)).isEqualTo(4);
            assertThat(paste.all().orElseThrow().in(Unit.GRAM)).isCloseTo(100, within(1e-9));
        });
    }

    /** By hand: 100 g of paste are 16.67 g of starch and 83.33 g of water, 83.33 / 0.99820 = 83.48 mL; 200 g and 450 mL are there. */
    @Test
    void what_is_weighed_is_told_in_grams_and_water_is_kept_by_its_volume() {
        ClassSupplies supplies = course("tissue-and-paste").supplies();
        assertThat(supplies.vessels().get(0).each().orElseThrow().in(Unit.GRAM)).isCloseTo(100, within(1e-9));
        assertThat(supplies.waste().get(0).volume().value().in(Unit.GRAM)).isCloseTo(100, within(1e-9));
        Map<String, ClassSupplies.Order> orders = supplies.orders().stream().collect(Collectors.toMap(ClassSupplies.Order::material,
                one -> one));
        assertThat(orders.get("deionised-water").needed().value().in(Unit.MILLILITRE)).isCloseTo(83.48, within(0.01));
        assertThat(orders.get("deionised-water").left().orElseThrow().value().in(Unit.MILLILITRE)).isCloseTo(366.52, within(0.01));
        assertThat(orders.get("wheat-starch").left().orElseThrow().value().in(Unit.GRAM)).isCloseTo(183.33, within(0.01));
        assertThat(orders.get("blotter-300").needed().value().in(Unit.SQUARE_METRE)).isCloseTo(84 * 0.1 * 0.15, within(1e-9));
    }

    /** By hand: 24 fillings of 5.8 L stand beside the sinks, and 24 times 250 mL to rinse; the rest goes into limewater and mist. */
    @Test
    void beside_the_sinks_stands_what_goes_into_trays_and_what_rinses_them() {
        assertThat(course("spring-course").supplies().layOut()).filteredOn(item -> item.id().equals("deionised-water"))
                .extracting(item -> item.all().orElseThrow().in(Unit.LITRE)).satisfiesExactly(
                        fillings -> assertThat(fillings).isCloseTo(139.2, within(1e-9)),
                        rinsing -> assertThat(rinsing).isCloseTo(6, within(1e-9)));
    }

    /** By hand: three jars of paste go to nobody's sprayer, so each of twelve stations has a vessel for its portion. */
    @Test
    void portions_have_a_vessel() {
        assertThat(course("tissue-and-paste").supplies().layOut()).filteredOn(item -> item.id().equals("portion-vessel")).singleElement()
                .satisfies(item -> assertThat(item.all().orElseThrow().value()).isEqualTo(12));
    }

    /** By hand: 3 weights at each of 12 stations are 36, and there is no share to spare of what lasts. */
    @Test
    void weights_are_counted_for_every_station() {
        assertThat(course("tissue-and-paste").supplies().layOut()).filteredOn(item -> item.kind() == ClassSupplies.Kind.WEIGHT)
                .singleElement().satisfies(item -> {
                    assertThat(item.id()).isEqualTo("1 kg");
                    assertThat(item.station().orElseThrow().value()).isEqualTo(3);
                    assertThat(item.all().orElseThrow().value()).isEqualTo(36);
                });
    }

    /** By hand: each of six stations adds limewater with a pipette of its own; the tray of 550 by 420 mm is the medium one, to 25 mm. */
    @Test
    void what_a_bath_is_made_of_at_the_tray_is_laid_out() {
        List<ClassSupplies.LaidOut> list = course("spring-course").supplies().layOut();
        assertThat(list).extracting(ClassSupplies.LaidOut::id).contains("deionised-water", "lime-water");
        assertThat(list).filteredOn(item -> item.kind() == ClassSupplies.Kind.VESSEL).extracting(item -> item.id() + " "
                + (int) item.all().orElseThrow().value()).containsExactlyInAnyOrder("5 mL graduated pipette, class B 6", "small beaker 6");
        assertThat(list).filteredOn(item -> item.id().equals("tray")).singleElement().satisfies(tray -> {
            assertThat(tray.mark().orElseThrow().tray()).contains("medium tray");
            assertThat(tray.mark().orElseThrow().depth().in(Unit.MILLIMETRE)).isEqualTo(25);
        });
    }

    /** What a step names; a bath that is made at its tray stands on the list as what it is made of. */
    private static Set<String> laidOut(String step) {
        Set<String> ids = named(step);
        if (!filled(step).isEmpty() && steps.get(step).get("bath") instanceof Map<?, ?> bath) {
            ids.remove((String) bath.get("of"));
            ids.addAll(filled(step));
        }
        return ids;
    }

    private static Set<String> namedAndFilled(String step) {
        Set<String> ids = named(step);
        ids.addAll(filled(step));
        return ids;
    }

    /** What the bath of a step is made of at its tray, as the case file tells it: a liquid and what brings it to its pH. */
    private static Set<String> filled(String step) {
        Set<String> ids = new TreeSet<>();
        if (steps.get(step).get("bath") instanceof Map<?, ?> bath && solutions.get(bath.get("of")) instanceof Map<?, ?> solution
                && solution.get("adjust") instanceof Map<?, ?> adjust) {
            ids.add((String) adjust.get("liquid"));
            ids.add((String) adjust.get("with"));
        }
        return ids;
    }

    /** The rule on tests asks for one that lasts as long as the contact, so one that is as long is enough and a minute less is not. */
    @Test
    void a_plan_may_keep_an_ink_wet_for_as_long_as_it_was_tested_and_no_longer() {
        ClassPlan plan = course("spring-course");
        List<Outlasting> all = outlasting(plan, 1);
        assertThat(all).hasSize(6);
        int most = (int) all.stream().mapToDouble(one -> one.lasts().value()).max().orElseThrow();
        assertThat(outlasting(plan, most)).isEmpty();
        assertThat(outlasting(plan, most - 1)).hasSize(1);
        assertThat(plan.outlasting()).isEmpty();
    }

    private static List<Outlasting> outlasting(ClassPlan plan, int minutes) {
        return Outlasting.of(List.of(tested(minutes)), new ScheduleReading(plan.schedule().orElseThrow()));
    }

    private static TestedContact tested(int minutes) {
        SpotTest test = worked.source().tests().get(0);
        return new TestedContact(List.of("wash"), Optional.of("dry"), "bath", new SpotTest("stamp", "bath", Optional.empty(),
                Optional.of(Quantity.of(minutes, Unit.MINUTE)), test.result(), Optional.empty(), test.place()));
    }

    /** The weights that a step lays on in the case file: how many of which mass. */
    private static Map<String, Integer> weights(String step) {
        return steps.get(step).get("press") instanceof Map<?, ?> press
                ? Map.of((String) press.get("mass"), (Integer) Optional.<Object>ofNullable(press.get("weights")).orElse(1)) : Map.of();
    }

    /** What a step names in the case file, read without the program. */
    private static Set<String> named(String step) {
        Set<String> ids = new TreeSet<>();
        steps.get(step).forEach((key, value) -> {
            if (value instanceof Map<?, ?> part) {
                part.forEach((name, what) -> {
                    if (NAMING.contains(name)) {
                        texts(what).forEach(ids::add);
                    }
                });
            } else if (NAMING.contains(key)) {
                texts(value).forEach(ids::add);
            }
        });
        return ids;
    }

    private static Stream<String> texts(Object value) {
        return value instanceof Collection<?> list ? new ArrayList<>(list).stream().map(String::valueOf)
                : Stream.of(String.valueOf(value));
    }
}
