package org.benchleaf.derive.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.benchleaf.derive.Invented.mist;
import static org.benchleaf.derive.Invented.q;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.check.CaseChecker;
import org.benchleaf.check.Checked;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.derive.Derived;
import org.benchleaf.derive.Deriver;
import org.benchleaf.derive.Invented;
import org.benchleaf.derive.WorkedCase;
import org.benchleaf.model.Library;
import org.benchleaf.model.Part;
import org.benchleaf.model.Reason;
import org.benchleaf.model.Recipe;
import org.benchleaf.model.Reference;
import org.benchleaf.model.StatedValue;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.LibraryReader;
import org.benchleaf.read.ReferenceReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class HazardAssessorTest {

    private static final Recipe MIST = new Recipe.Mix("ethanol", q("40 % v/v"), "deionised-water", "ethanol-96");
    private static final Recipe LIMEWATER = new Recipe.Saturate("calcium-hydroxide", "deionised-water", q("20 °C"));
    private static final Recipe BATH = new Recipe.Adjust("deionised-water", "lime-water", StatedValue.of(q("pH 8.5"), "8.5"),
            Optional.empty());

    static Stream<Arguments> mixtures() throws IOException {
        return Files.readAllLines(Path.of("src/test/resources/check-values/mixture-classes.csv")).stream()
                .filter(line -> !line.startsWith("#")).map(line -> line.split(",", -1))
                .map(cells -> Arguments.of(Stream.of(cells).map(String::strip).toArray()));
    }

    @ParameterizedTest
    @MethodSource("mixtures")
    void a_mixture_has_the_class_that_the_rules_give_it(String substance, String strength, String statements,
            String signal, String pictograms) {
        Invented invented = new Invented();
        invented.material("stock", "liquid", substance, Optional.empty(), Optional.empty());
        invented.solution("made", new Recipe.Mix(substance, q(strength), "deionised-water", "stock"));

        Hazards hazards = hazards(invented, "made");

        assertThat(hazards.hazardStatements()).isEqualTo(words(statements));
        assertThat(hazards.signal().orElse("")).isEqualTo(signal);
        assertThat(hazards.pictograms()).isEqualTo(words(pictograms));
        assertThat(hazards.precautions()).hasSizeLessThanOrEqualTo(6);
        assertThat(hazards.precautions().isEmpty()).isEqualTo(statements.isEmpty());
    }

    /** Saturated limewater: 0.15 % by mass, so nothing by addition; pH 12.4, so corrosive unless tests say otherwise. */
    @Test
    void limewater_shows_both_results_and_is_labelled_as_caustic() {
        Hazards hazards = hazards(new Invented().solution("lime-water", LIMEWATER), "lime-water");

        assertThat(hazards.hazardStatements()).containsExactly("H314", "H318");
        assertThat(hazards.signal()).contains("Danger");
        assertThat(hazards.pictograms()).containsExactly("GHS05");
        assertThat(hazards.grounds()).anySatisfy(ground -> {
            assertThat(ground.classification()).isEqualTo("not Eye Dam. 1");
            assertThat(ground.because()).contains("each is below the limit from which it counts");
        }).anySatisfy(ground -> {
            assertThat(ground.classification()).isEqualTo("Skin Corr. 1, H314");
            assertThat(ground.because()).contains("11.5");
        });
        assertThat(hazards.precautions()).contains("P280", "P305+P351+P338", "P310");
        assertThat(hazards.waste().group()).contains("alkaline water");
        assertThat(hazards.waste().drain()).isFalse();
        assertThat(hazards.firstAid()).contains("eyes", "skin");
        assertThat(hazards.wear()).contains("EYE", "GLV", "RSP", "COAT");
        assertThat(hazards.cautions()).contains("lime-dust", "caustic-splash");
    }

    /** Eye Dam. 1 covers Eye Irrit. 2 (CLP Annex I, table 3.3.3), so that a tenfold sum of more than the whole is not told. */
    @Test
    void a_class_that_a_stronger_one_covers_is_not_reasoned_about() {
        Hazards powder = hazards(new Invented().solution("lime-water", LIMEWATER), "calcium-hydroxide");

        assertThat(powder.hazardStatements()).containsExactly("H318", "H315", "H335");
        assertThat(powder.grounds()).extracting(Hazards.Ground::classification).doesNotContain("Eye Irrit. 2, H319");
        assertThat(powder.grounds()).extracting(Hazards.Ground::because).noneMatch(because -> because.contains("1000 %"));
    }

    @Test
    void only_the_powder_of_lime_makes_dust() {
        Invented invented = new Invented().solution("lime-water", LIMEWATER).solution("bath", BATH);

        assertThat(hazards(invented, "lime-water").cautions()).contains("lime-dust");
        assertThat(hazards(invented, "bath").cautions()).doesNotContain("lime-dust");
        assertThat(hazards(invented, "bath").wear()).contains("EYE").doesNotContain("RSP");
    }

    /** Paste is made from powder; when it is thinned there is none. Common practice, no source. */
    @Test
    void paste_is_made_from_powder_and_thinned_without() {
        Invented invented = new Invented();
        invented.material("starch", "solid", "wheat starch", Optional.empty(), Optional.empty());
        invented.solution("paste", new Recipe.Parts("starch", 1, "deionised-water", 5, true, false))
                .solution("thin-paste", new Recipe.Parts("paste", 1, "deionised-water", 2, true, false));

        assertThat(hazards(invented, "paste").cautions()).contains("fine-powder");
        assertThat(hazards(invented, "thin-paste").cautions()).doesNotContain("fine-powder");
    }

    /** GESTIS gives a flash point of -18 °C for acetone and of 12 °C for isopropanol; both are Flam. Liq. 2. */
    @Test
    void of_two_liquids_of_one_class_the_one_that_catches_fire_in_the_deepest_cold_is_named() {
        Invented invented = new Invented();
        invented.material("acetone", "liquid", "acetone", Optional.empty(), Optional.empty());
        invented.material("isopropanol", "liquid", "isopropanol", Optional.empty(), Optional.empty());
        Hazards hazards = hazards(invented.solution("both", new Recipe.Parts("isopropanol", 4, "acetone", 1, true, false)), "both");

        assertThat(hazards.grounds()).filteredOn(ground -> ground.classification().startsWith("Flam. Liq."))
                .extracting(Hazards.Ground::because).allMatch(because -> because.startsWith("As acetone:"));
    }

    /** Calcium hydroxide is 0.0203 mol/kg at saturation; one part in ten has pH 11.5 or less only further down. */
    @ParameterizedTest
    @ValueSource(ints = {2, 5})
    void limewater_only_a_little_diluted_is_still_caustic(int oneIn) {
        assertThat(diluted(oneIn).hazardStatements()).contains("H314");
    }

    @ParameterizedTest
    @ValueSource(ints = {20, 100})
    void limewater_much_diluted_has_no_class(int oneIn) {
        assertThat(diluted(oneIn).hazardStatements()).isEmpty();
    }

    @Test
    void a_bath_at_ph_8_5_has_no_class_but_whoever_prepares_it_is_warned_of_the_stock() {
        Hazards hazards = hazards(new Invented().solution("lime-water", LIMEWATER).solution("bath", BATH), "bath");

        assertThat(hazards.hazardStatements()).isEmpty();
        assertThat(hazards.cautions()).contains("caustic-splash", "limewater-in-use");
        assertThat(hazards.waste().group()).contains("neutral water");
        assertThat(hazards.waste().drain()).isTrue();
    }

    @Test
    void cellulose_in_spirit_catches_fire_like_the_spirit() {
        Invented invented = new Invented();
        invented.material("hpc", "solid", "hydroxypropyl cellulose", Optional.empty(), Optional.empty());
        invented.solution("film", new Recipe.Dissolve("hpc", q("4 % m/v"), "ethanol-96"));

        assertThat(hazards(invented, "film").hazardStatements()).containsExactly("H225");
    }

    @Test
    void paste_has_no_class_and_says_where_its_rest_goes() {
        Hazards hazards = hazards(new Invented().solution("paste",
                new Recipe.Parts("wheat-starch", 1, "deionised-water", 5, true, true)), "paste");

        assertThat(hazards.hazardStatements()).isEmpty();
        assertThat(hazards.signal()).isEmpty();
        assertThat(hazards.waste().group()).contains("adhesives");
        assertThat(hazards.waste().drain()).isFalse();
    }

    /** 50 mL of 96 % in 60 m³ without airing: 631 mg/m³, 334 ppm (worked example of the trade, NIOSH factor 1.89 at 25 °C). */
    @Test
    void vapour_in_the_room_agrees_with_the_worked_example() {
        Invented invented = spirit().step("relax", Map.of(), List.of(), mist("spirit", "50 mL"));

        assertThat(invented.figure("relax.vapour").value().in(Unit.MILLIGRAM_PER_CUBIC_METRE))
                .isCloseTo(631, within(631 * 0.01));
        assertThat(invented.figure("relax.vapour-ppm").value().value()).isCloseTo(334, within(334 * 0.02));
        assertThat(invented.codes()).doesNotContain("HAZ-002", "HAZ-005");
    }

    /** 10 % of the lower limit is 3300 ppm, more than three times the limit for a working day (NIOSH). */
    @Test
    void too_much_vapour_in_the_room_is_told_and_far_too_much_stops() {
        assertThat(spirit().step("relax", Map.of(), List.of(), mist("spirit", "200 mL")).codes()).contains("HAZ-002")
                .doesNotContain("HAZ-005");
        assertThat(spirit().step("relax", Map.of(), List.of(), mist("spirit", "600 mL")).codes()).contains("HAZ-005");
    }

    /** 0.82 mL of 96 % in 0.10 m³ reaches 10 % of the lower limit of 3.3 %, 8.2 mL the limit itself (worked example). */
    @Test
    void vapour_in_a_closed_chamber_agrees_with_the_worked_example() {
        Invented invented = spirit().step("damp", chamber("0.82 mL", "0.1 m³", false));

        Quantity share = invented.figure("damp.vapour-lower-limit").value();
        assertThat(share.in(Unit.PERCENT)).isCloseTo(10, within(0.2));
        assertThat(spirit().step("damp", chamber("8.2 mL", "0.1 m³", false)).figure("damp.vapour-lower-limit").value()
                .in(Unit.PERCENT)).isCloseTo(100, within(2.0));
        // The lower of the two published limits counts: 3.1 %.
        assertThat(share.highIn(Unit.PERCENT)).isCloseTo(10 * 3.3 / 3.1, within(0.2));
        assertThat(invented.codes()).contains("HAZ-001");
        assertThat(spirit().step("damp", chamber("0.7 mL", "0.1 m³", false)).codes()).doesNotContain("HAZ-001");
    }

    @Test
    void a_chamber_near_the_limit_needs_both_no_ignition_and_a_reason() {
        Invented without = spirit().step("damp", chamber("5 mL", "0.1 m³", true));
        assertThat(without.codes()).contains("HAZ-001");

        Derived answered = withReason(spirit().step("damp", chamber("5 mL", "0.1 m³", true)));
        assertThat(answered.messages().all()).noneMatch(said -> said.code().startsWith("HAZ-"));
        assertThat(answered.worked().findings()).singleElement().satisfies(finding -> {
            assertThat(finding.reason()).contains("The box is of glass.");
            assertThat(finding.forTrainees()).isTrue();
        });

        Derived sparks = withReason(spirit().step("damp", chamber("5 mL", "0.1 m³", false)));
        assertThat(sparks.messages().all()).anyMatch(said -> said.code().equals("HAZ-001"));
    }

    @Test
    void a_chamber_of_unknown_size_stops_and_one_with_water_does_not() {
        Part.Chamber unknown = new Part.Chamber("chamber", "spirit", Optional.of(q("5 mL")), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), false);
        Part.Chamber water = new Part.Chamber("chamber", "deionised-water", Optional.of(q("50 mL")), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), false);

        assertThat(spirit().step("damp", unknown).codes()).contains("HAZ-003");
        assertThat(new Invented().step("damp", water).codes()).noneMatch(code -> code.startsWith("HAZ"));
    }

    @Test
    void a_step_with_spirit_is_chemical_and_names_what_to_wear() {
        Invented invented = new Invented().solution("mist", MIST).step("relax", mist("mist", "60 mL"))
                .step("dry", new Part.Press(1, Optional.of(q("4 kg")), Optional.empty(), Optional.empty(), List.of(), Optional.empty()));
        Map<String, StepCare> care = invented.derived().worked().care();

        assertThat(care.get("relax").chemical()).isTrue();
        assertThat(care.get("relax").materials()).containsExactly("mist");
        assertThat(care.get("relax").wear()).contains("EXT", "GLV", "COAT", "EYE");
        assertThat(care.get("relax").cautions()).contains("vapour-catches-fire", "solvent-poured");
        assertThat(care.get("relax").exposure()).contains("relax.vapour", "relax.vapour-exposure-limit");
        assertThat(care.get("dry").chemical()).isFalse();
        assertThat(care.get("dry").cautions()).containsExactly("weights");
    }

    /** A caution says of which bottle it speaks: here the spirit, and not the water beside it. */
    @Test
    void a_caution_names_what_it_speaks_of() {
        Invented invented = new Invented().solution("mist", MIST).step("relax", mist("mist", "60 mL"),
                new Part.Bath("deionised-water", Optional.of(q("20 mm")), Optional.of(q("10 mm")), 1, true, Optional.empty(), List.of(),
                        Optional.empty(), 1, Optional.empty(), List.of(), Optional.empty(), Optional.empty()));
        StepCare care = invented.derived().worked().care().get("relax");

        assertThat(care.subjects().get("vapour-catches-fire")).containsExactly("mist");
        assertThat(care.subjects()).doesNotContainKeys("wet-paper", "wet-floor-and-lifting");
    }

    /** Whoever prepares something must know of which bottle a caution speaks: every shipped substance, made up in water. */
    @Test
    void every_caution_of_a_preparation_that_follows_from_a_substance_names_it() {
        Reference reference = ReferenceReader.shipped();
        for (String key : reference.substances().keySet()) {
            Invented invented = new Invented();
            invented.material("bottle", "liquid", key, Optional.empty(), Optional.empty());
            Hazards made = hazards(invented.solution("made", new Recipe.Parts("bottle", 1, "deionised-water", 9, true, false)), "made");
            assertThat(made.cautions()).as(key).filteredOn(caution -> {
                Reference.When when = reference.cautions().get(caution).when();
                return !when.statements().isEmpty() || !when.substances().isEmpty() || !when.traits().isEmpty();
            }).allSatisfy(caution -> assertThat(made.subjects().getOrDefault(caution, List.of())).as(caution).isNotEmpty()
                    .isSubsetOf("bottle", "made"));
        }
    }

    /** A property of the substance, and the name of a group that stands in no bottle's name: both name what goes in. */
    @Test
    void a_caution_by_property_or_by_the_name_of_a_substance_names_the_ingredient() {
        Invented invented = new Invented().solution("lime-water", LIMEWATER);
        invented.material("white", "solid", "sodium borohydride", Optional.empty(), Optional.empty());
        invented.material("dcm", "liquid", "dichloromethane", Optional.empty(), Optional.empty());
        invented.solution("reducing", new Recipe.Dissolve("white", q("1 % m/m"), "deionised-water"))
                .solution("strip", new Recipe.Parts("dcm", 1, "ethanol-96", 1, true, false)).step("strip", mist("strip", "5 mL"));

        assertThat(hazards(invented, "lime-water").subjects().get("lime-dust")).containsExactly("calcium-hydroxide");
        assertThat(hazards(invented, "reducing").subjects().get("gives-hydrogen")).containsExactly("white");
        assertThat(hazards(invented, "strip").subjects().get("chlorinated-solvents")).containsExactly("dcm");
        assertThat(invented.derived().worked().care().get("strip").subjects().get("chlorinated-solvents")).containsExactly("strip");
    }

    /** Dichloromethane asks for long gloves and a fume hood, ethanol for short ones and extraction: one of each is worn. */
    @Test
    void of_two_gloves_and_two_kinds_of_air_one_step_asks_for_the_stricter_alone() {
        Invented invented = new Invented().solution("mist", MIST);
        invented.material("dcm", "liquid", "dichloromethane", Optional.empty(), Optional.empty());
        invented.step("relax", mist("mist", "60 mL"),
                new Part.Bath("dcm", Optional.of(q("20 mm")), Optional.of(q("10 mm")), 1, true, Optional.empty(),
                List.of(), Optional.empty(), 1, Optional.empty(), List.of(), Optional.empty(), Optional.empty()));
        List<String> wear = invented.derived().worked().care().get("relax").wear();

        assertThat(wear).contains("GLL", "HOOD").doesNotContain("GLV", "EXT").doesNotHaveDuplicates();
    }

    /** The poster's mask is FFP3, and mould asks for FFP2 at least: the sheet asks for the stricter, once. */
    @Test
    void a_mask_that_the_step_names_and_one_that_a_caution_asks_for_agree() {
        assertThat(demo("flood-poster").care().values()).filteredOn(care -> care.wear().stream().anyMatch(code -> code.startsWith("RSP")))
                .extracting(StepCare::step).contains("air-dry", "tests", "take-off-mould", "surface-clean");
        for (String step : List.of("air-dry", "tests", "take-off-mould", "surface-clean")) {
            assertThat(demo("flood-poster").care().get(step).wear()).contains("RSP3", "EYE", "GLV").doesNotContain("RSP");
        }
    }

    /** Goggles for solvents poured from 50 mL on, and for spraying at all: common practice, no source. */
    @Test
    void a_little_spirit_is_poured_without_goggles_and_sprayed_with_them() {
        Invented invented = new Invented().solution("mist", MIST).step("relax", mist("mist", "15 mL"));

        assertThat(hazards(invented, "mist").wear()).contains("EXT", "GLV").doesNotContain("EYE");
        assertThat(invented.derived().worked().care().get("relax").wear()).contains("EXT", "EYE");
        assertThat(invented.derived().worked().care().get("relax").cautions()).contains("solvent-sprayed")
                .doesNotContain("solvent-poured");
    }

    @Test
    void a_liquid_that_the_table_does_not_have_is_told() {
        Invented invented = new Invented();
        invented.material("mystery", "liquid", "", Optional.empty(), Optional.empty());

        // Without a permission for sheets it is no error; the faulty content has the error.
        assertThat(invented.step("relax", mist("mystery", "15 mL")).codes()).contains("HAZ-020");
    }

    /** What nobody knows is told as such, has no kind of waste and is for nobody in training: common practice, no source. */
    @Test
    void a_mixture_with_an_unknown_part_is_unknown_and_shows_what_its_known_part_does() {
        Invented invented = new Invented();
        invented.material("mystery", "liquid", "", Optional.empty(), Optional.empty());
        Hazards hazards = hazards(invented.solution("made", new Recipe.Mix("ethanol", q("70 % v/v"), "mystery",
                "ethanol-96")), "made");

        assertThat(hazards.known()).isFalse();
        assertThat(hazards.unknown()).singleElement().satisfies(unknown -> {
            assertThat(unknown.about()).isEqualTo("composition");
            assertThat(unknown.why()).contains("mystery");
            assertThat(unknown.remedy()).contains("safety data sheet");
        });
        assertThat(hazards.hazardStatements()).contains("H225");
        assertThat(hazards.waste().group()).isEmpty();
        assertThat(hazards.waste().drain()).isFalse();
        assertThat(hazards.access().trainee()).isEqualTo(Reference.Trainee.REFUSED);
        assertThat(hazards.access().withheld()).isTrue();
    }

    /** Acetone and peroxide give explosive peroxides: common practice, no source. */
    @Test
    void what_must_not_meet_is_found_in_one_bottle() {
        Invented invented = new Invented();
        invented.material("acetone", "liquid", "acetone", Optional.empty(), Optional.empty());
        invented.material("peroxide", "liquid", "hydrogen peroxide", Optional.of("30 % m/m"), Optional.empty());
        Hazards hazards = hazards(invented.solution("made", new Recipe.Parts("acetone", 1, "peroxide", 1, true, false)),
                "made");

        assertThat(hazards.incompatible()).extracting(Hazards.Clash::with).contains("hydrogen peroxide");
    }

    /** At the spot tests every liquid of the treatment is handled for the first time: common practice, no source. */
    @Test
    void the_spot_tests_are_chemical_where_a_liquid_that_is_tried_is() {
        StepCare care = demo("tide-table").care().get("tests");

        assertThat(care.chemical()).isTrue();
        assertThat(care.materials()).contains("mist");
        assertThat(care.cautions()).contains("vapour-catches-fire", "limewater-in-use");
        assertThat(care.wear()).contains("EXT", "EYE", "GLV");
    }

    /** What the cautions of trade and of suppliers' sheets ask for (common practice, no source), found missing by a reader. */
    @Test
    void a_reader_finds_the_light_pad_beside_spirit_the_wet_sheet_and_the_hot_water_of_size_told() {
        WorkedCase map = demo("parish-map");
        assertThat(map.care().get("fill").cautions()).contains("switched-on-near-solvent", "sharp-blades");
        assertThat(map.care().get("join").cautions()).doesNotContain("switched-on-near-solvent");
        assertThat(map.care().get("relax").cautions()).containsExactly("wet-paper");
        assertThat(map.hazards().get("film").firstAid()).contains("eyes", "breath", "swallowed", "fire");

        WorkedCase plan = demo("lock-plan");
        assertThat(plan.hazards().get("cellulose").cautions()).contains("hot-cooking", "fine-powder");
    }

    private static WorkedCase demo(String name) {
        Path content = Path.of("content");
        Library library = LibraryChecker.check(LibraryReader.read(content)).library();
        Checked checked = CaseChecker.check(CaseReader.read(content, content.resolve("cases/" + name)), library,
                LocalDate.of(2026, 6, 1), new Deriver(library)::ph);
        return new Deriver(library).derive(checked.treatment().orElseThrow(), checked.findings()).worked();
    }

    private static Hazards diluted(int oneIn) {
        return hazards(new Invented().solution("lime-water", LIMEWATER).solution("weak", new Recipe.Dilute("lime-water",
                Optional.empty(), Optional.of(Quantity.number(oneIn)), "deionised-water")), "weak");
    }

    private static Invented spirit() {
        return new Invented().solution("spirit",
                new Recipe.Mix("ethanol", q("96 % v/v"), "deionised-water", "ethanol-96"));
    }

    private static Part.Chamber chamber(String amount, String volume, boolean noIgnition) {
        return new Part.Chamber("chamber", "spirit", Optional.of(q(amount)), Optional.of(q(volume)), Optional.empty(),
                Optional.empty(), Optional.empty(), noIgnition);
    }

    private static Derived withReason(Invented invented) {
        invented.reasons.add(new Reason("chamber-vapour-limit", Optional.of("damp"), Optional.empty(), "The box is of glass.",
                Invented.PLACE));
        return invented.derived();
    }

    private static Hazards hazards(Invented invented, String id) {
        return invented.derived().worked().hazards().get(id);
    }

    private static List<String> words(String text) {
        return text.isEmpty() ? List.of() : List.of(text.split(" "));
    }
}
