package org.benchleaf.derive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchleaf.derive.Invented.bath;
import static org.benchleaf.derive.Invented.mend;
import static org.benchleaf.derive.Invented.q;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.message.Message;
import org.benchleaf.model.MeasureName;
import org.benchleaf.model.Part;
import org.benchleaf.model.Recipe;
import org.benchleaf.model.StatedValue;
import org.benchleaf.model.Studio;
import org.junit.jupiter.api.Test;

/** Brings out what can stand in the way of a figure, each alone. */
class FigureMessagesTest {

    private static Invented washed() {
        return new Invented().step("wash", bath("deionised-water", "50 mm", "30 mm", 3));
    }

    @Test
    void an_unknown_figure_in_the_text_is_told_with_what_may_have_been_meant() {
        List<Message> said = washed().cites("wash.volme").derived().messages().all();
        assertThat(said).hasSize(1);
        assertThat(said.get(0).code()).isEqualTo("FIG-001");
        assertThat(said.get(0).fix()).contains("wash.volume");
        assertThat(washed().cites("wash.volume").codes()).isEmpty();
    }

    @Test
    void an_unknown_figure_of_a_known_step_lists_that_steps_figures() {
        assertThat(washed().cites("wash.elapsed-hours").derived().messages().all().get(0).fix())
                .startsWith("There are wash.");
    }

    @Test
    void a_value_beyond_a_formulas_range_is_told_with_the_range() {
        Invented invented = new Invented().solution("mist", new Recipe.Mix("ethanol", q("97 % v/v"),
                "deionised-water", "ethanol-96"), Map.of("make", "100 mL"), Optional.empty());
        List<Message> said = invented.derived().messages().all();
        assertThat(said).extracting(Message::code).containsExactly("FIG-003");
        assertThat(said.get(0).what()).contains("found 97", "96", "% v/v");
    }

    @Test
    void a_tear_without_its_length_is_missing() {
        Invented invented = new Invented().step("mend", mend(List.of("t"), "ethanol-96", "5 mm", "0 %"));
        invented.damages.add(new org.benchleaf.model.Damage(Optional.of("t"), "tear", Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Invented.PLACE));
        assertThat(invented.codes()).containsExactly("FIG-004");
    }

    @Test
    void a_sheet_larger_than_every_tray_is_told_with_the_size_needed() {
        Invented invented = washed();
        invented.trays.add(new Studio.Tray("small", q("600 mm"), q("500 mm"), q("80 mm")));
        List<Message> said = invented.derived().messages().all();
        assertThat(said).extracting(Message::code).containsExactly("FIG-005");
        assertThat(said.get(0).what()).contains("520 mm", "694 mm");
    }

    @Test
    void a_bath_deeper_than_its_tray_is_told() {
        Invented invented = washed();
        invented.trays.add(new Studio.Tray("flat", q("700 mm"), q("550 mm"), q("20 mm")));
        assertThat(invented.codes()).containsExactly("FIG-006");
        invented.trays.add(new Studio.Tray("deep", q("900 mm"), q("700 mm"), q("60 mm")));
        assertThat(invented.codes()).isEmpty();
    }

    @Test
    void a_step_without_any_time_is_told() {
        assertThat(new Invented().step("look", Map.of(), List.of()).codes()).containsExactly("FIG-007");
    }

    @Test
    void a_step_longer_than_it_may_last_is_told() {
        assertThat(new Invented().step("a", Map.of("takes", "30 min to 60 min", "most", "20 min"), List.of()).codes())
                .containsExactly("FIG-008");
        assertThat(new Invented().step("a", Map.of("takes", "10 min to 60 min", "most", "20 min"), List.of()).codes())
                .isEmpty();
    }

    @Test
    void a_night_is_not_all_work_of_the_hands() {
        assertThat(new Invented().step("dry", Map.of("takes", "3 d", "overnight", "yes"), List.of()).codes())
                .containsExactly("FIG-009");
    }

    @Test
    void more_work_of_the_hands_than_time_is_told() {
        assertThat(new Invented().step("a", Map.of("takes", "1 h", "hands", "2 h"), List.of()).codes())
                .containsExactly("FIG-010");
    }

    @Test
    void nothing_to_make_is_told() {
        assertThat(new Invented().solution("weak", new Recipe.Dilute("ethanol-96", Optional.of(q("10 % v/v")),
                Optional.empty(), "deionised-water")).codes()).containsExactly("FIG-015");
    }

    @Test
    void readings_are_never_paired_where_their_places_do_not_match() {
        Invented invented = new Invented();
        invented.results.add(new org.benchleaf.model.Result.Readings(MeasureName.of("pH"), "cold extract",
                org.benchleaf.quantity.Unit.PH, List.of("a", "b"), List.of(4.4, 4.5, 4.6), List.of(7.0, 7.1, 7.2),
                Optional.empty(), Optional.empty(), Optional.empty(), org.benchleaf.model.MeasuringConditions.of("cold extract"),
                Invented.PLACE));
        Derived derived = invented.derived();
        assertThat(derived.worked().results().get(0).cautions()).contains("not-paired");
    }

    @Test
    void a_sheet_restrained_when_too_dry_is_told() {
        Part.Weighing late = new Part.Weighing(Optional.of(q("9.6 g")), Optional.of(q("24.4 g")), Optional.of(q("14.0 g")),
                Optional.empty(), Optional.empty());
        // By hand: 9.6 / 14.0 = 68.6 %, above 66 %.
        assertThat(new Invented().step("dry", late).codes()).containsExactly("FIG-018");
    }

    @Test
    void a_dose_above_its_ceiling_is_told_once() {
        Part.Bath bath = new Part.Bath("bath", Optional.of(q("50 mm")), Optional.of(q("30 mm")), 2, true, Optional.empty(),
                List.of(Invented.time("20 min")),
                Optional.empty(), 1, Optional.empty(), List.of(reading(1), reading(2)), Optional.empty(), Optional.empty());
        Invented invented = new Invented()
                .solution("lime", new Recipe.Saturate("calcium-hydroxide", "deionised-water", q("20 °C")),
                        Map.of("least", "250 mL"), Optional.empty())
                .solution("bath", new Recipe.Adjust("deionised-water", "lime", StatedValue.of(q("pH 8.5"), "8.5"), Optional.empty()))
                .step("wash", bath);
        assertThat(invented.codes()).containsExactly("FIG-019");
    }

    private static Part.BathReading reading(int bath) {
        return new Part.BathReading(bath, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.of(q("400 mL")));
    }

    @Test
    void what_is_worked_out_does_not_depend_on_what_is_wrong_elsewhere() {
        Invented invented = washed().cites("nothing.here").tear("t", "50 mm")
                .step("mend", mend(List.of("t"), "unknown", "5 mm", "0 %"));
        assertThat(invented.derived().worked().figures()).containsKeys("wash.volume", "mend.pieces");
    }
}
