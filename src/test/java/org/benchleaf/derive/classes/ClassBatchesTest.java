package org.benchleaf.derive.classes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.benchleaf.derive.Invented.bath;
import static org.benchleaf.derive.Invented.mist;
import static org.benchleaf.derive.Invented.q;

import java.time.DayOfWeek;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.derive.Invented;
import org.benchleaf.derive.hazard.HazardAssessor;
import org.benchleaf.derive.preparation.Groundwork;
import org.benchleaf.derive.time.WorkHours;
import org.benchleaf.message.Message;
import org.benchleaf.message.Messages;
import org.benchleaf.model.ClassDay;
import org.benchleaf.model.ClassPapers;
import org.benchleaf.model.ClassStores;
import org.benchleaf.model.CourseClass;
import org.benchleaf.model.Practice;
import org.benchleaf.model.Recipe;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.QuantityReader;
import org.benchleaf.quantity.Unit;
import org.junit.jupiter.api.Test;

/** Holds the batches of a class, and when each is begun, against sums done by hand. The studio is open from 9:00 to 17:00. */
class ClassBatchesTest {

    private static final Recipe MIST = new Recipe.Dissolve("calcium-hydroxide", q("1 g/L"), "deionised-water");
    private static final ClassPapers PAPERS = new ClassPapers(false, List.of(), ClassPapers.Sheets.PRACTICE,
            Optional.empty(), Optional.empty(), Optional.empty(), List.of(), List.of(), List.of(), new Practice(1, 3), List.of(),
            Optional.empty());

    private final Messages messages = new Messages();

    /** Six stations on Tuesday 14 April 2026 with 10 % to spare and 3 mL left in each bottle; planned if something is shared. */
    private ClassPlan plan(Invented invented, String starts, Map<String, Integer> shared) {
        ClassDay day = new ClassDay(Optional.empty(), List.of(), ClassDay.Rhythm.SHORTEST, Optional.empty(), 1, Optional.empty(),
                Optional.empty(), shared, Map.of(), List.of(), Map.of());
        ClassStores.Spare spare = new ClassStores.Spare(QuantityReader.read("10 %", Dimension.SHARE).quantity().orElseThrow(),
                Optional.of(q("3 mL")), QuantityReader.read("0 %", Dimension.SHARE).quantity().orElseThrow(), 0, 0);
        ClassStores stores = new ClassStores(spare, List.of(), Map.of(), Map.of(), Map.of(), List.of(), Optional.empty(),
                new ClassStores.Room(Map.of(), Map.of(), Invented.PLACE));
        CourseClass course = new CourseClass("spring", "Spring", "invented", LocalDateTime.parse(starts), 6, 1, Optional.empty(),
                Optional.empty(), day, PAPERS, stores, Invented.PLACE);
        return new ClassDeriver(new Groundwork.Maker(invented.library())).plan(course, invented.treatment(),
                new HazardAssessor.Assessment(Map.of(), Map.of(), List.of(), Set.of()), Map.of(), List.of(),
                messages);
    }

    /** By hand: 20 min of work before 13:00 would begin at 12:40, in the break from 12:30; before the break it begins at 12:10. */
    @Test
    void nothing_is_made_in_the_breaks() {
        WorkHours hours = new WorkHours(EnumSet.allOf(DayOfWeek.class), LocalTime.of(9, 0), LocalTime.of(17, 0), Set.of());
        List<ClassDay.Break> breaks = List.of(new ClassDay.Break(LocalTime.of(12, 30), LocalTime.of(13, 15)));

        assertThat(FreeTime.latestBegin(hours, breaks, LocalDateTime.parse("2026-04-14T13:00"), 20, 20)).isEqualTo("2026-04-14T12:10");
        assertThat(FreeTime.latestBegin(hours, breaks, LocalDateTime.parse("2026-04-14T13:40"), 20, 20)).isEqualTo("2026-04-14T13:20");
    }

    /** By hand: what lies in the way, a break and work at 11:00, is gone around backwards; what waits ends on the same day. */
    @Test
    void free_time_is_taken_from_the_end() {
        FreeTime free = new FreeTime(new WorkHours(EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY), LocalTime.of(9, 0),
                LocalTime.of(17, 0), Set.of()), List.of(new ClassDay.Break(LocalTime.of(12, 0), LocalTime.of(13, 0))));
        free.take(new Duty.Stretch(LocalDateTime.parse("2026-04-14T11:00"), LocalDateTime.parse("2026-04-14T11:30")));

        assertThat(free.latest(LocalDateTime.parse("2026-04-14T13:00"), 30, 0).from()).isEqualTo("2026-04-14T11:30");
        assertThat(free.latest(LocalDateTime.parse("2026-04-14T13:00"), 30, 0).from()).isEqualTo("2026-04-14T10:30");
        assertThat(free.latest(LocalDateTime.parse("2026-04-13T09:00"), 30, 60).from()).isEqualTo("2026-04-10T15:30");
    }

    private static Invented misting(String keeps) {
        return new Invented().solution("mist", MIST, Map.of("keeps", keeps, "hands", "10 min"), Optional.empty())
                .step("damp", Map.of("takes", "10 min"), List.of(), mist("mist", "15 mL"));
    }

    private static List<ClassPlan.Start> starts(ClassPlan plan, String solution) {
        return plan.starts().stream().filter(start -> start.solution().equals(solution)).toList();
    }

    /**
     * By hand: a briefing of 10 min from 12:50, one hood, 10 min each: the stations mist at 13:00, 13:10 … 13:50, and the portion of each
     * is filled in up to 2 min before. What is made by 12:58 keeps until 13:23, so that the third station, done by 13:30, needs another.
     * Three batches of two stations, ready by 12:58, 13:18 and 13:38, begun 10 min before.
     * One holds 2 · 15 mL · 1.10 + 2 · 3 mL = 39 mL; six stations in all 6 · 15 · 1.10 + 6 · 3 = 117 mL.
     */
    @Test
    void a_mist_that_keeps_25_minutes_is_made_three_times_for_six_stations_at_one_hood() {
        ClassPlan plan = plan(misting("25 min"), "2026-04-14T12:50", Map.of("hood", 1));
        assertThat(starts(plan, "mist")).extracting(ClassPlan.Start::begin).containsExactly(LocalDateTime.parse("2026-04-14T12:48"),
                LocalDateTime.parse("2026-04-14T13:08"), LocalDateTime.parse("2026-04-14T13:28"));
        assertThat(starts(plan, "mist")).extracting(start -> start.batch().freshUntil().orElseThrow()).containsExactly(
                LocalDateTime.parse("2026-04-14T13:23"), LocalDateTime.parse("2026-04-14T13:43"), LocalDateTime.parse("2026-04-14T14:03"));
        assertThat(starts(plan, "mist")).allSatisfy(start -> assertThat(start.batch().stations()).hasSize(2));
        assertThat(plan.figures().get("mist.needed").value().in(Unit.MILLILITRE)).isCloseTo(117, within(1e-9));
        assertThat(plan.figures().get("mist.needed-of-batch-2").value().in(Unit.MILLILITRE)).isCloseTo(39, within(1e-9));
        assertThat(plan.preparations()).singleElement().satisfies(one -> {
            assertThat(one.batches()).isEqualTo(3);
            assertThat(one.batch().in(Unit.MILLILITRE)).isCloseTo(39, within(1e-9));
        });
        // Each batch in a vessel of its own, and a bottle for each station.
        assertThat(plan.supplies().vessels()).singleElement().satisfies(one -> assertThat(one.labels()).isEqualTo(3 + 6));
        assertThat(messages.all()).isEmpty();
    }

    /**
     * By hand: from 12:58, when the first portion is filled, to 14:00 are 62 min, so a mist that keeps so long is fresh for the last and is
     * made once; one minute less, twice.
     */
    @Test
    void what_keeps_until_the_last_station_is_done_is_made_once() {
        assertThat(starts(plan(misting("62 min"), "2026-04-14T12:50", Map.of("hood", 1)), "mist")).hasSize(1);
        ClassPlan twice = plan(misting("61 min"), "2026-04-14T12:50", Map.of("hood", 1));
        // Of two batches neither has to be larger than three stations': 3 · 15 · 1.10 + 3 · 3 = 58.5 mL.
        assertThat(starts(twice, "mist")).extracting(start -> start.batch().stations().size()).containsExactly(3, 3);
        assertThat(twice.figures().get("mist.needed-of-batch-2").value().in(Unit.MILLILITRE)).isCloseTo(58.5, within(1e-9));
    }

    /**
     * By hand: the batches of the mist are begun at 12:48, 13:08 and 13:28; a stock that keeps 15 min and takes 10 is begun 10 min before
     * each.
     */
    @Test
    void a_stock_is_as_fresh_as_what_it_goes_into() {
        Invented invented = new Invented().solution("stock", new Recipe.Dissolve("calcium-hydroxide", q("1 g/L"), "deionised-water"),
                        Map.of("keeps", "15 min", "hands", "10 min"), Optional.empty())
                .solution("mist", new Recipe.Dilute("stock", Optional.empty(), Optional.of(q("10")), "deionised-water"),
                        Map.of("keeps", "25 min", "hands", "10 min"), Optional.empty())
                .step("damp", Map.of("takes", "10 min"), List.of(), mist("mist", "15 mL"));
        assertThat(starts(plan(invented, "2026-04-14T12:50", Map.of("hood", 1)), "stock")).extracting(ClassPlan.Start::begin)
                .containsExactly(LocalDateTime.parse("2026-04-14T12:38"), LocalDateTime.parse("2026-04-14T12:58"),
                        LocalDateTime.parse("2026-04-14T13:18"));
    }

    /**
     * By hand, without a plan: all stations mist at 10:00 and, after 10 min and a wait of 3 h, at 13:10 again. What keeps 2 h is made for
     * each of them, by 10:00 and by 13:10: 6 · 15 · 1.10 + 6 · 3 = 117 mL each time.
     */
    @Test
    void without_a_plan_the_steps_tell_when_it_is_drawn() {
        Invented invented = misting("2 h").step("again", Map.of("takes", "10 min", "wait", "3 h"), List.of("damp"), mist("mist", "15 mL"));
        ClassPlan plan = plan(invented, "2026-04-14T10:00", Map.of());
        assertThat(starts(plan, "mist")).extracting(ClassPlan.Start::begin).containsExactly(LocalDateTime.parse("2026-04-14T09:50"),
                LocalDateTime.parse("2026-04-14T13:00"));
        assertThat(plan.figures().get("mist.needed-of-batch-2").value().in(Unit.MILLILITRE)).isCloseTo(117, within(1e-9));
    }

    /** By hand: three baths of 20 min, the first at 10:00 filled after 4.5 min at the usual pace; what keeps 30 min fills two of them. */
    @Test
    void a_bath_has_to_be_fresh_when_it_is_filled() {
        Invented invented = new Invented().solution("weak", MIST, Map.of("keeps", "30 min", "hands", "10 min"), Optional.empty())
                .step("soak", Map.of(), List.of(), bath("weak", "40 mm", "20 mm", 3));
        ClassPlan plan = plan(invented, "2026-04-14T10:00", Map.of());
        assertThat(starts(plan, "weak")).hasSize(2);
        assertThat(starts(plan, "weak").get(0).readyFor()).isEqualTo(LocalDateTime.parse("2026-04-14T10:00"));
    }

    /**
     * By hand: the first two stations mist at 9:10, after the briefing at opening, and at 9:20; 20 min of work before their portions of
     * 9:08 and 9:18 do not fit between opening and them, and are done on the day before.
     */
    @Test
    void what_nobody_can_make_fresh_is_told() {
        Invented slow = new Invented().solution("mist", MIST, Map.of("keeps", "25 min", "hands", "20 min"), Optional.empty())
                .step("damp", Map.of("takes", "10 min"), List.of(), mist("mist", "15 mL"));
        plan(slow, "2026-04-14T09:00", Map.of("hood", 1));
        assertThat(messages.all()).extracting(Message::code).containsExactly("CLASS-017", "CLASS-017");
    }
}
