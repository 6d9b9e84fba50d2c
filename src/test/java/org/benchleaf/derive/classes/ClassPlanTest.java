package org.benchleaf.derive.classes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.benchleaf.derive.Invented.bath;
import static org.benchleaf.derive.Invented.q;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.derive.Invented;
import org.benchleaf.derive.hazard.HazardAssessor;
import org.benchleaf.derive.preparation.Groundwork;
import org.benchleaf.derive.time.Timeline;
import org.benchleaf.message.Messages;
import org.benchleaf.model.ClassDay;
import org.benchleaf.model.ClassPapers;
import org.benchleaf.model.ClassStores;
import org.benchleaf.model.CourseClass;
import org.benchleaf.model.Part;
import org.benchleaf.model.Practice;
import org.benchleaf.model.Recipe;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.QuantityReader;
import org.benchleaf.quantity.Unit;
import org.junit.jupiter.api.Test;

/** Holds amounts and start times of a class against sums done by hand. */
class ClassPlanTest {

    /** A day of which nothing is stated. */
    private static final ClassDay PLAIN = new ClassDay(Optional.empty(), List.of(), ClassDay.Rhythm.SHORTEST,
            Optional.empty(), 1, Optional.empty(), Optional.empty(), Map.of(), Map.of(), List.of(), Map.of());

    private static final ClassPapers PAPERS = new ClassPapers(false, List.of(), ClassPapers.Sheets.PRACTICE,
            Optional.empty(), Optional.empty(), Optional.empty(), List.of(), List.of(), List.of(),
            new Practice(1, 3), List.of(), Optional.empty());

    private static ClassStores stores(Quantity spare) {
        return new ClassStores(new ClassStores.Spare(spare, Optional.empty(), Quantity.of(0, Unit.PERCENT), 0, 0), List.of(),
                Map.of(), Map.of(), Map.of(), List.of(), Optional.empty(),
                new ClassStores.Room(Map.of(), Map.of(), Invented.PLACE));
    }

    private static CourseClass course(String starts, int stations, int sheets, String spare, String first) {
        Quantity share = QuantityReader.read(spare, Dimension.SHARE).quantity().orElseThrow();
        return new CourseClass("spring", "Spring", "invented", LocalDateTime.parse(starts), stations, sheets,
                Optional.of(first).filter(id -> !id.isEmpty()), Optional.empty(), PLAIN, PAPERS, stores(share),
                Invented.PLACE);
    }

    private static ClassPlan plan(Invented invented, CourseClass course) {
        return new ClassDeriver(new Groundwork.Maker(invented.library())).plan(course, invented.treatment(),
                new HazardAssessor.Assessment(Map.of(), Map.of(), List.of(), Set.of()), Map.of(),
                List.of(), new Messages());
    }

    private static Invented practiceWash() {
        Invented invented = new Invented();
        invented.height = "297 mm";
        invented.width = "210 mm";
        return invented.solution("weak", new Recipe.Dissolve("calcium-hydroxide", q("0.15 g/L"), "deionised-water"))
                .step("rinse", bath("deionised-water", "40 mm", "20 mm", 1))
                .step("soak", bath("weak", "40 mm", "20 mm", 2));
    }

    @Test
    void a_class_needs_its_baths_times_stations() {
        ClassPlan plan = plan(practiceWash(), course("2026-04-14T10:00", 6, 1, "15 %", ""));
        // By hand: 377 × 290 × 20 mm = 2.18660 L; × 2 baths × 6 stations = 26.239 L of solution, with the third bath
        // 39.36 L of water. A tray that is filled to a mark has no share to spare.
        assertThat(plan.figures().get("soak.volume").value().in(Unit.LITRE)).isCloseTo(2.1866, within(1e-6));
        assertThat(plan.figures().get("weak.needed").value().in(Unit.LITRE)).isCloseTo(26.239, within(0.001));
        assertThat(plan.sheets()).isEqualTo(6);
        Quantity water = plan.figures().get("total.deionised-water").value();
        // The batch is rounded up to 27 L before it is weighed out; 6 trays of the third bath are rinsed with 0.25 L each.
        assertThat(water.in(Unit.LITRE)).isCloseTo(13.1196 + 27 + 1.5, within(0.001));
        assertThat(plan.figures().get("weak.mass").value().in(Unit.GRAM)).isCloseTo(0.15 * 27, within(1e-9));
    }

    @Test
    void sheets_that_share_a_tray_need_fewer_trays() {
        Part.Bath shared = new Part.Bath("deionised-water", Optional.of(q("40 mm")), Optional.of(q("20 mm")), 1, true, Optional.empty(),
                List.of(Invented.time("20 min")), Optional.empty(), 3, Optional.empty(), List.of(), Optional.empty(), Optional.empty());
        Invented invented = new Invented().step("wash", shared);
        invented.height = "297 mm";
        invented.width = "210 mm";
        // By hand: seven sheets, three to a tray: three trays at each of two stations.
        assertThat(plan(invented, course("2026-04-14T10:00", 2, 7, "0 %", "")).figures().get("wash.total").value()
                .in(Unit.LITRE)).isCloseTo(2.1866 * 6, within(1e-6));
    }

    @Test
    void preparing_begins_so_early_that_all_is_ready_when_the_class_begins() {
        Invented invented = new Invented()
                .solution("lime", new Recipe.Saturate("calcium-hydroxide", "deionised-water", q("20 °C")),
                        Map.of("ready", "24 h", "hands", "15 min", "least", "250 mL"), Optional.empty())
                .solution("weak", new Recipe.Dilute("lime", Optional.empty(), Optional.of(q("10")), "deionised-water"),
                        Map.of("ready", "1 h", "hands", "1 h"), Optional.empty())
                .step("look", Map.of("takes", "30 min"), List.of())
                .step("soak", Map.of("takes", "1 h"), List.of("look"), bath("weak", "40 mm", "20 mm", 1));
        ClassPlan plan = plan(invented, course("2026-04-13T09:30", 1, 1, "0 %", "soak"));
        // 2026-04-13 is a Monday. One hour before 9:30 nobody is there: on Friday by 16:00, so that the hour of work
        // ends at closing. The limewater for it a day earlier still, on Thursday at 16:00.
        assertThat(plan.starts()).extracting(ClassPlan.Start::solution).containsExactly("lime", "weak");
        assertThat(plan.starts().get(1).begin()).isEqualTo(LocalDateTime.parse("2026-04-10T16:00"));
        assertThat(plan.starts().get(0).begin()).isEqualTo(LocalDateTime.parse("2026-04-09T16:00"));
        assertThat(plan.timeline().days().get(0).earliestStart()).isEqualTo(LocalDateTime.parse("2026-04-13T09:30"));
        assertThat(plan.timeline().steps()).extracting(Timeline.TimedStep::step).containsExactly("soak");
    }

    @Test
    void a_class_that_begins_with_an_unknown_step_is_our_own_mistake() {
        assertThatThrownBy(() -> plan(practiceWash(), course("2026-04-14T10:00", 1, 1, "0 %", "nowhere")))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("nowhere");
    }

    @Test
    void twice_the_stations_need_twice_the_solution() {
        for (int stations = 1; stations < 20; stations++) {
            double once = plan(practiceWash(), course("2026-04-14T10:00", stations, 1, "10 %", "")).figures()
                    .get("weak.needed").value().in(Unit.LITRE);
            double twice = plan(practiceWash(), course("2026-04-14T10:00", 2 * stations, 1, "10 %", "")).figures()
                    .get("weak.needed").value().in(Unit.LITRE);
            assertThat(twice).isCloseTo(2 * once, within(1e-9));
        }
    }
}
