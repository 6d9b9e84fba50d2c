package org.benchleaf.derive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.benchleaf.derive.Invented.bath;
import static org.benchleaf.derive.Invented.mend;
import static org.benchleaf.derive.Invented.mist;
import static org.benchleaf.derive.Invented.q;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.benchleaf.calculate.Figure;
import org.benchleaf.derive.figure.Preparation;
import org.benchleaf.model.MeasureName;
import org.benchleaf.model.Part;
import org.benchleaf.model.Recipe;
import org.benchleaf.model.StatedValue;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.junit.jupiter.api.Test;

/** Holds figures of whole cases against sums done by hand; the sum stands beside each value. */
public class WorkedExamplesTest {

    private static void holds(Figure figure, double expected, Unit unit, Offset<Double> offset) {
        assertThat(figure.value().in(unit)).as(figure.id()).isCloseTo(expected, offset);
    }

    @Test
    void a_sheet_with_its_margin_needs_height_by_width_by_depth() {
        Invented invented = new Invented().step("wash", bath("deionised-water", "50 mm", "30 mm", 3));
        // By hand: 520 mm × 694 mm × 30 mm = 10.8264 L; three baths 32.479 L.
        holds(invented.figure("wash.volume"), 10.8264, Unit.LITRE, within(1e-9));
        holds(invented.figure("wash.total"), 32.4792, Unit.LITRE, within(1e-9));
        holds(invented.figure("total.deionised-water"), 32.4792, Unit.LITRE, within(1e-9));
    }

    @Test
    void the_smallest_tray_that_fits_is_filled_to_the_same_depth() {
        Invented invented = new Invented().step("wash", bath("deionised-water", "50 mm", "30 mm", 3));
        invented.trays.add(new org.benchleaf.model.Studio.Tray("huge", q("1000 mm"), q("800 mm"), q("100 mm")));
        invented.trays.add(new org.benchleaf.model.Studio.Tray("turned", q("700 mm"), q("600 mm"), q("100 mm")));
        invented.trays.add(new org.benchleaf.model.Studio.Tray("small", q("690 mm"), q("600 mm"), q("100 mm")));
        // By hand: 694 mm does not go into 690 mm; turned it goes into 700 × 600: 0.42 m² × 30 mm = 12.6 L.
        holds(invented.figure("wash.tray-volume"), 12.6, Unit.LITRE, within(1e-9));
        holds(invented.figure("total.deionised-water"), 37.8, Unit.LITRE, within(1e-9));
        assertThat(invented.figure("wash.tray-volume").notes().get(0)).contains("turned");
    }

    @Test
    void three_tears_of_a_class_need_one_least_batch_of_paste() {
        Invented invented = new Invented().tear("a", "120 mm").tear("b", "45 mm").tear("c", "80 mm")
                .solution("paste", new Recipe.Parts("wheat-starch", 1, "deionised-water", 6, true, true),
                        Map.of("least", "100 g"), Optional.empty())
                .step("mend", mend(List.of("a", "b", "c"), "paste", "10 mm", "0 %"));
        // By hand: strips of 140 + 65 + 100 = 305 mm by 8 mm = 24.4 cm²; 4 + 2 + 3 pieces; 24.4 cm² × 9 g/m²
        // = 21.96 mg; 24.4 cm² × 0.03 g/cm² = 0.732 g; 100 g at 1 + 6: 14.29 g starch.
        holds(invented.figure("mend.area"), 24.4, Unit.SQUARE_CENTIMETRE, within(1e-9));
        holds(invented.figure("mend.pieces"), 9, Unit.COUNT, within(1e-9));
        holds(invented.figure("mend.tissue-mass"), 21.96, Unit.MILLIGRAM, within(1e-9));
        holds(invented.figure("mend.paste-mass"), 0.732, Unit.GRAM, within(1e-9));
        holds(invented.figure("paste.batch"), 100, Unit.GRAM, within(1e-9));
        holds(invented.figure("paste.first"), 100.0 / 7, Unit.GRAM, within(1e-9));
        holds(invented.figure("total.wheat-starch"), 100.0 / 7, Unit.GRAM, within(1e-9));
    }

    @Test
    void twelve_sheets_with_waste_need_twelve_times_the_paste() {
        Invented invented = new Invented().tear("a", "120 mm").tear("b", "45 mm").tear("c", "80 mm")
                .solution("paste", new Recipe.Parts("wheat-starch", 1, "deionised-water", 6, true, true),
                        Map.of("least", "100 g"), Optional.empty())
                .step("mend", mend(List.of("a", "b", "c"), "paste", "10 mm", "50 %"));
        Derived derived = new Deriver(invented.library()).derive(invented.treatment(), List.of(), 12);
        // By hand: 12 × 0.732 g × 1.5 = 13.176 g.
        holds(derived.worked().figures().get("paste.needed"), 13.176, Unit.GRAM, within(1e-9));
    }

    @Test
    void ethanol_and_water_are_mixed_by_mass_and_the_amount_follows_from_the_mist() {
        Invented invented = new Invented()
                .solution("mist", new Recipe.Mix("ethanol", q("70 % v/v"), "deionised-water", "ethanol-96"),
                        Map.of("make", "500 mL"), Optional.empty())
                .step("relax", mist("mist", "15 mL"));
        // By hand from the definition of % v/v: 500 mL × 70 / 96 = 364.58 mL of spirit.
        holds(invented.figure("mist.stock-volume"), 364.58, Unit.MILLILITRE, within(0.01));
        // More water than the 135.4 mL that are left over, since the mixture contracts.
        assertThat(invented.figure("mist.water-volume").value().in(Unit.MILLILITRE)).isGreaterThan(135.42 + 10);
        holds(invented.figure("mist.needed"), 15, Unit.MILLILITRE, within(1e-9));
    }

    @Test
    void one_saturated_bath_leaves_a_ceiling_far_below_two_per_cent() {
        Invented invented = new Invented();
        invented.grammage = Optional.of("80 g/m²");
        invented.solution("lime", new Recipe.Saturate("calcium-hydroxide", "deionised-water", q("25 °C")))
                .step("soak", bath("lime", "50 mm", "30 mm", 1));
        invented.results.add(new org.benchleaf.model.Result.Reserve(MeasureName.of("reserve"), Optional.empty(), Optional.of("soak"),
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(q("120 g/m²")), Optional.empty(),
                Invented.PLACE));
        // Five per cent of room, since published solubilities of calcium hydroxide differ by that much.
        // By hand: 0.120 kg/m² × 0.0203 mol/kg × 100.087 g/mol = 0.244 g/m² on 80 g/m² = 0.305 % = 0.061 mol/kg.
        holds(invented.figure("results.reserve.ceiling-carbonate"), 0.305, Unit.PERCENT_BY_MASS, within(0.016));
        holds(invented.figure("results.reserve.ceiling-reserve"), 0.061, Unit.MOLE_PER_KILOGRAM, within(0.0031));
        assertThat(invented.derived().worked().results().get(0).cautions()).contains("ceiling", "ceiling-below-threshold");
    }

    @Test
    void a_bath_brought_to_a_ph_names_a_starting_point_and_a_ceiling_and_asks_to_record() {
        Invented invented = new Invented()
                .solution("lime", new Recipe.Saturate("calcium-hydroxide", "deionised-water", q("25 °C")))
                .solution("bath", new Recipe.Adjust("deionised-water", "lime", StatedValue.of(q("pH 8.5"), "8.5"), Optional.of(q("25 °C"))))
                .step("wash", bath("bath", "50 mm", "30 mm", 3));
        Derived derived = invented.derived();
        Preparation bath = preparation(derived, "bath");
        // Three baths are brought to their pH one by one: 10.83 L, rounded up to 11 L.
        assertThat(bath.batches()).isEqualTo(3);
        assertThat(bath.batch().in(Unit.LITRE)).isCloseTo(11, within(1e-9));
        // By hand: 0.078 mL of saturated limewater in a litre of water free of carbon dioxide, 11 L.
        holds(derived.worked().figures().get("bath.dose"), 0.078 * 11, Unit.MILLILITRE, within(0.03));
        assertThat(derived.worked().figures().get("bath.dose-ceiling").value().value())
                .isGreaterThan(derived.worked().figures().get("bath.dose").value().value());
        assertThat(derived.worked().figures().get("bath.dose").notes()).anyMatch(note -> note.contains("record"));
        // The limewater for three baths is in turn part of what must be made.
        assertThat(derived.worked().figures().get("lime.needed").inputs().get(0).from().text()).isEqualTo("bath.dose-ceiling");
    }

    @Test
    void solids_tell_when_to_restrain_and_how_much_water_has_to_go() {
        Part.Weighing weighing = new Part.Weighing(Optional.of(q("11.73 g")), Optional.of(q("27.28 g")), Optional.empty(),
                Optional.empty(), Optional.empty());
        Invented invented = new Invented().step("dry", weighing);
        // By hand: 11.73 / 0.66 = 17.77 g, / 0.63 = 18.62 g, / 0.60 = 19.55 g; 27.28 − 11.73 = 15.55 g of water.
        Quantity mass = invented.figure("dry.restraint-mass").value();
        assertThat(mass.low()).isCloseTo(17.77, within(0.01));
        assertThat(mass.value()).isCloseTo(18.62, within(0.01));
        assertThat(mass.high()).isCloseTo(19.55, within(0.01));
        holds(invented.figure("dry.water"), 15.55, Unit.GRAM, within(1e-9));
        holds(invented.figure("dry.wet-solids"), 43.0, Unit.PERCENT, within(0.01));
    }

    @Test
    void table_weights_are_told_in_kilopascals() {
        Invented invented = new Invented();
        invented.height = "420 mm";
        invented.width = "297 mm";
        invented.step("press", new Part.Press(1, Optional.of(q("11.5 kg")), Optional.empty(), Optional.empty(), List.of(),
                Optional.of(q("3 d"))));
        // By hand: 11.5 kg × 9.80665 m/s² / 0.12474 m² = 904 Pa.
        holds(invented.figure("press.pressure"), 0.904, Unit.KILOPASCAL, within(0.0005));
    }

    @Test
    void blotters_are_counted_from_the_water_but_never_fewer_than_cover_both_faces() {
        Part.Blotters part = new Part.Blotters(List.of(Optional.of(q("15 min")), Optional.of(q("1 h"))),
                Optional.of("blotter"), 1, Optional.of(q("104.4 g")), Optional.of(q("15.6 g")));
        Invented invented = new Invented().blotter("480 mm", "350 mm", "300 g/m²", "0.5 g/g").step("dry", part);
        // By hand: 88.8 g of water; a blotter of 0.48 × 0.35 × 300 = 50.4 g takes 25.2 g: four.
        holds(invented.figure("dry.blotter-mass"), 50.4, Unit.GRAM, within(1e-9));
        holds(invented.figure("dry.per-change"), 4, Unit.COUNT, within(1e-9));
        holds(invented.figure("dry.total"), 12, Unit.COUNT, within(1e-9));
        Part.Blotters little = new Part.Blotters(part.changes(), part.blotter(), 1, Optional.of(q("10 g")),
                Optional.of(q("9 g")));
        // By hand: one of 480 × 350 mm covers a sheet of 420 × 297 mm, two side by side cover one of 420 × 594 mm.
        Invented small = new Invented();
        small.width = "297 mm";
        holds(small.blotter("480 mm", "350 mm", "300 g/m²", "0.5 g/g").step("dry", little).figure("dry.per-change"), 2,
                Unit.COUNT, within(1e-9));
        Invented large = new Invented().blotter("480 mm", "350 mm", "300 g/m²", "0.5 g/g").step("dry", little);
        holds(large.figure("dry.per-change"), 4, Unit.COUNT, within(1e-9));
        assertThat(large.figure("dry.cover").notes()).contains(
                "Laid side by side, since one is too small for the sheet (common practice, no source).");
    }

    /** Solids of a sheet damp from vapour: 81 ± 5 %; fully wet: 43 ± 9 % (Sugarman and Vitale 1992). */
    @Test
    void a_sheet_that_only_took_up_vapour_holds_less_water_than_one_from_a_bath() {
        Part.Chamber chamber = new Part.Chamber("chamber", "deionised-water", Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), true);
        Part.Blotters part = new Part.Blotters(List.of(Optional.of(q("30 min"))), Optional.of("blotter"), 1,
                Optional.empty(), Optional.empty());
        Invented damp = new Invented().blotter("700 mm", "700 mm", "300 g/m²", "0.5 g/g").step("relax", chamber)
                .step("dry", part);
        // By hand: 100 g/m² × 0.420 m × 0.594 m = 24.948 g; 24.948 g / 0.81 = 30.8 g, 24.948 g / 0.43 = 58.0 g.
        holds(damp.figure("dry.wet-mass"), 30.8, Unit.GRAM, within(0.01));
        Invented wet = new Invented().blotter("700 mm", "700 mm", "300 g/m²", "0.5 g/g").step("relax", chamber)
                .solution("spirit", new Recipe.Mix("ethanol", q("40 % v/v"), "deionised-water", "ethanol-96"))
                .step("spray", Invented.mist("spirit", "15 mL")).step("dry", part);
        holds(wet.figure("dry.wet-mass"), 58.0, Unit.GRAM, within(0.05));
    }

    public static Preparation preparation(Derived derived, String id) {
        return derived.worked().preparations().stream().filter(one -> one.solution().equals(id)).findFirst()
                .orElseThrow();
    }
}
