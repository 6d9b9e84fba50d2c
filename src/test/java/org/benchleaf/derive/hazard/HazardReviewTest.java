package org.benchleaf.derive.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchleaf.derive.Invented.q;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.derive.Invented;
import org.benchleaf.message.Message;
import org.benchleaf.model.LowReserve;
import org.benchleaf.model.Recipe;
import org.benchleaf.model.SpotTest;
import org.benchleaf.model.StepKind;
import org.benchleaf.model.TestResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What must not reach the bench is found wherever it stands in a case: common practice, no source. */
class HazardReviewTest {

    @Test
    void a_liquid_of_the_spot_tests_alone_is_asked_for_its_hazards() {
        Invented invented = new Invented();
        invented.material("mystery", "liquid", "", Optional.empty(), Optional.empty());
        invented.tests.add(new SpotTest("ink", "mystery", Optional.empty(), Optional.empty(),
                new TestResult("stable", "stable", TestResult.Group.NO_CHANGE), Optional.empty(), Invented.PLACE));

        assertThat(invented.derived().messages().all()).filteredOn(one -> one.code().equals("HAZ-020")).singleElement()
                .satisfies(one -> assertThat(one.what()).contains("mystery", "spot test on 'ink'"));
    }

    /** A kind of its own, such as "solvent", hides nothing: only what is named as a thing is not asked what it can do. */
    @Test
    void whatever_is_no_thing_is_asked_for_its_hazards() {
        assertThat(unknown("solvent", "")).contains("HAZ-020");
        assertThat(unknown("cleaner", "")).contains("HAZ-020");
        assertThat(unknown("tool", "no such substance")).contains("HAZ-020");
        assertThat(thing("soft brush")).doesNotContain("HAZ-020");
    }

    /** A kind hides nothing that the name gives away: a swab of acetone is no mere tool. Common practice, no source. */
    @Test
    void a_thing_that_is_named_for_a_substance_is_asked_for_its_hazards() {
        assertThat(thing("acetone-swab")).contains("HAZ-020");
        assertThat(thing("bleach pen")).contains("HAZ-020");
        assertThat(thing("Ammonia-wipe")).contains("HAZ-020");
        assertThat(thing("water-brush")).doesNotContain("HAZ-020");
        assertThat(thing("sds-folder")).doesNotContain("HAZ-020");
        assertThat(thing("ethereal-brush")).doesNotContain("HAZ-020");
    }

    /** Wipes are sold wet as often as dry. Common practice, no source. */
    @Test
    void a_thing_that_is_sold_wet_is_asked_for_what_it_holds() {
        assertThat(thing("lens wipes")).contains("HAZ-020");
        assertThat(thing("Pre-moistened cloth")).contains("HAZ-020");
        assertThat(thing("disinfectant-pad")).contains("HAZ-020");
        assertThat(thing("dry wipe")).doesNotContain("HAZ-020");
        assertThat(thing("moisture meter")).doesNotContain("HAZ-020");
    }

    /** What the thing is, or what is in it, is asked; what it is used with, for or against is not. Common practice, no source. */
    @ParameterizedTest
    @ValueSource(strings = {"Gellan gel", "brush cleaner", "Brush with enzyme", "Sponge (saliva)", "enzyme sponge", "saliva swabs",
            "solvent syringe",
        "tube of adhesive", "correction fluid", "Gel pad", "hand spray", "contaminated brush", "soiled spatula", "dry cleaning solvent",
        "Pinsel mit Leim",
        "éponge imbibée", "Schwamm, getränkt", "adhesive cartridge", "weight filled with something"})
    void a_tool_that_says_what_it_holds_is_asked_for_it(String name) {
        assertThat(thing(name)).contains("HAZ-020");
    }

    /** A name that no table has may be that of anything: common practice, no source. */
    @ParameterizedTest
    @ValueSource(strings = {"mystery", "No. 5", "blue pen", "stick", "prep pad", "Wonder block", "marker", "melting pen"})
    void a_tool_whose_name_is_that_of_no_tool_is_asked_what_it_holds(String name) {
        assertThat(thing(name)).contains("HAZ-020");
        assertThat(new Invented().dry(name).step("wash", Invented.bath(name, "50 mm", "25 mm", 1)).codes()).doesNotContain("HAZ-020");
    }

    @ParameterizedTest
    @ValueSource(strings = {"spatula", "paste brush", "Goat-hair brush, wide", "gel spatula", "Brush for paste", "Goggles against solvents",
            "solvent-resistant gloves",
        "Gloves (solvent proof)", "microspatula", "paintbrush", "paste bowl", "spray bottle", "Vacuum cleaner with HEPA filter",
        "fume hood or arm extraction",
        "Ziegenhaarpinsel", "dry cleaning sponge", "cotton swabs", "brush, dry", "Heated spatula", "syringe", "ink roller"})
    void a_tool_that_is_named_for_what_it_is_used_with_is_not_asked(String name) {
        assertThat(thing(name)).doesNotContain("HAZ-020");
    }

    /** Of what is no tool, only a filling that the name ends with or speaks of as inside is asked: common practice, no source. */
    @Test
    void another_thing_is_asked_where_its_name_says_that_something_is_in_it() {
        assertThat(thing("absorbent", "cloth with solvent")).contains("HAZ-020");
        assertThat(thing("support", "agar gel")).contains("HAZ-020");
        assertThat(thing("indicator", "indicator solution")).contains("HAZ-020");
        assertThat(thing("absorbent", "blotting paper")).doesNotContain("HAZ-020");
        assertThat(thing("support", "Unfamiliar carrier")).doesNotContain("HAZ-020");
        assertThat(thing("indicator", "acid detection strips")).doesNotContain("HAZ-020");
        assertThat(thing("tissue", "tissue with paste")).doesNotContain("HAZ-020");
    }

    /** A bottle of 70 % isopropanol may hold water or something else; its label says which. */
    @Test
    void the_rest_of_an_impure_solvent_is_asked_for_and_taken_as_the_author_says() {
        assertThat(isopropanol(Optional.empty())).contains("HAZ-020");
        assertThat(isopropanol(Optional.of("water"))).doesNotContain("HAZ-020");
        assertThat(isopropanol(Optional.of("no such substance"))).contains("HAZ-020");
    }

    /** A slip of copying, or a product of two things of which one was written: common practice, no source. */
    @ParameterizedTest
    @CsvSource({"acetone, water, true", "Methyl cellulose in ethanol, methyl cellulose, true",
            "Ethanol denatured with methanol, ethanol, true",
        "Enzyme in isopropyl alcohol, amylase, true", "Ethyl alcohol, ethanol, false", "Benzyl alcohol, benzyl alcohol, false",
        "Propyl alcohol, propan-1-ol, false", "Cellulose ether, methyl cellulose, false", "Peroxide of hydrogen, hydrogen peroxide, false",
        "Limewater, calcium hydroxide, false", "Water with chalk, calcium carbonate, false"})
    void a_material_whose_name_speaks_of_another_substance_is_asked(String name, String substance, boolean asked) {
        Invented invented = new Invented();
        invented.material(name, "liquid", substance, Optional.empty(), Optional.of("water"), Optional.empty());

        assertThat(invented.step("wash", Invented.bath(name, "50 mm", "25 mm", 1)).derived().messages().all())
                .filteredOn(one -> one.code().equals("HAZ-020") && one.what().contains("speaks of")).hasSize(asked ? 1 : 0);
    }

    private static List<String> isopropanol(Optional<String> rest) {
        Invented invented = new Invented();
        invented.material("isopropanol-70", "liquid", "isopropanol", Optional.of("70 % v/v"), rest, Optional.empty());
        return invented.step("wash", Invented.bath("isopropanol-70", "50 mm", "25 mm", 1)).codes();
    }

    private static List<String> thing(String name) {
        return thing("tool", name);
    }

    private static List<String> thing(String kind, String name) {
        Invented invented = new Invented();
        invented.material(name, kind, "", Optional.empty(), Optional.empty());
        return invented.step("wash", Invented.bath(name, "50 mm", "25 mm", 1)).codes();
    }

    private static List<String> unknown(String kind, String substance) {
        Invented invented = new Invented();
        invented.material("mystery", kind, substance, Optional.empty(), Optional.empty());
        return invented.step("wash", Invented.bath("mystery", "50 mm", "25 mm", 1)).codes();
    }

    /** Peroxide and acetone clash in the solution; bleach and ammonia, which come to it in the step, clash besides. */
    @Test
    void a_solution_that_clashes_by_itself_hides_no_other_clash_of_the_step() {
        Invented invented = new Invented();
        invented.material("acetone", "liquid", "acetone", Optional.empty(), Optional.empty());
        invented.material("peroxide", "liquid", "hydrogen peroxide", Optional.of("30 % m/m"), Optional.empty());
        invented.material("bleach", "liquid", "sodium hypochlorite", Optional.of("5 % m/m"), Optional.empty());
        invented.material("ammonia", "liquid", "ammonia solution", Optional.of("5 % m/m"), Optional.empty());
        invented.solution("made", new Recipe.Parts("acetone", 1, "peroxide", 1, true, false));
        invented.step("wash", Invented.bath("made", "50 mm", "25 mm", 1), Invented.bath("bleach", "50 mm", "25 mm", 1),
                Invented.bath("ammonia", "50 mm", "25 mm", 1));

        List<String> told = invented.derived().messages().all().stream().filter(one -> one.code().equals("HAZ-021"))
                .map(Message::what).toList();

        assertThat(told).anyMatch(what -> what.contains("solution 'made'") && what.contains("acetone"))
                .anyMatch(what -> what.contains("step 'wash'") && what.contains("ammonia") && what.contains("hypochlorite"))
                .noneMatch(what -> what.contains("step 'wash'") && what.contains("acetone and hydrogen peroxide"));
    }

    /** Bleach that is not rinsed out gives chloramines with ammonia in the next bath: common practice, no source. */
    @Test
    void what_an_earlier_step_left_in_the_sheet_meets_what_a_later_one_brings() {
        assertThat(sheet("wash")).singleElement().asString().contains("Step 'b'", "ammonia", "hypochlorite", "step 'a'", "chloramines");
        assertThat(sheet("dry")).hasSize(1);
        assertThat(sheet("rinse")).isEmpty();
    }

    private static List<String> sheet(String between) {
        Invented invented = new Invented();
        invented.material("bleach", "liquid", "sodium hypochlorite", Optional.of("5 % m/m"), Optional.empty());
        invented.material("ammonia", "liquid", "ammonia solution", Optional.of("5 % m/m"), Optional.empty());
        invented.step("a", StepKind.BLEACHING, Invented.bath("bleach", "50 mm", "25 mm", 1));
        if (between.equals("dry")) {
            invented.step("m", StepKind.DRYING);
        } else if (between.equals("rinse")) {
            invented.step("m", StepKind.RINSING, Invented.bath("deionised-water", "50 mm", "25 mm", 1));
        }
        invented.step("b", StepKind.ALKALIZATION, Invented.bath("ammonia", "50 mm", "25 mm", 1));
        return invented.derived().messages().all().stream().filter(one -> one.code().equals("HAZ-026")).map(Message::what).toList();
    }

    /** A pH from 11.5 on counts as corrosive without other data; a test is such data (CLP Annex I, 3.2.3.1.2). */
    @Test
    void a_stated_test_of_the_reserve_takes_off_what_it_rules_out_and_nothing_else() {
        assertThat(limewater(Set.of())).containsExactly("H314", "H318");
        assertThat(limewater(Set.of("H314"))).containsExactly("H318", "H315");
        assertThat(limewater(Set.of("H314", "H318"))).containsExactly("H315", "H319");
        assertThat(limewater(LowReserve.STATEMENTS)).isEmpty();
    }

    /** A test holds for what was tested, not for what is made with it. */
    @Test
    void the_test_of_a_solution_says_nothing_of_another_made_from_it() {
        Invented invented = tested(LowReserve.STATEMENTS).solution("half", new Recipe.Dilute("lime-water",
                Optional.empty(), Optional.of(org.benchleaf.quantity.Quantity.number(2)), "deionised-water"));

        assertThat(hazards(invented, "half").hazardStatements()).contains("H314");
    }

    private static List<String> limewater(Set<String> rulesOut) {
        return hazards(tested(rulesOut), "lime-water").hazardStatements();
    }

    private static Invented tested(Set<String> rulesOut) {
        Optional<LowReserve> test = rulesOut.isEmpty() ? Optional.empty()
                : Optional.of(new LowReserve(rulesOut, Optional.empty(), "OECD 431, report", "report"));
        return new Invented().tested("lime-water", new Recipe.Saturate("calcium-hydroxide", "deionised-water", q("20 °C")), test);
    }

    private static Hazards hazards(Invented invented, String id) {
        return invented.derived().worked().hazards().get(id);
    }

    /** 4 % to 9 % peroxide is 8 % at its worst: serious eye damage (entry 008-003-00-9), nothing for a trainee. */
    @Test
    void a_range_of_strength_is_classified_by_its_worst_end_and_told_as_a_range() {
        Invented invented = new Invented();
        invented.material("peroxide", "liquid", "hydrogen peroxide", Optional.of("30 % m/m"), Optional.empty());
        invented.solution("weak", new Recipe.Dilute("peroxide", Optional.of(q("4 % m/m to 9 % m/m")), Optional.empty(),
                "deionised-water"));
        Hazards weak = hazards(invented, "weak");

        assertThat(weak.hazardStatements()).contains("H318");
        assertThat(weak.access().trainee()).isEqualTo(org.benchleaf.model.Reference.Trainee.REFUSED);
        assertThat(weak.groundsOf("H318")).anySatisfy(ground -> assertThat(ground.because()).contains("4 to 9 % by mass"));
    }

    /** The rest of a range is at its most where the range is at its least: 40 % to 97 % ethanol leaves 3 % to 60 % toluene. */
    @Test
    void the_rest_of_a_range_counts_at_its_most() {
        Invented invented = new Invented();
        invented.material("toluene", "liquid", "toluene", Optional.empty(), Optional.empty());
        invented.material("isopropanol", "liquid", "isopropanol", Optional.empty(), Optional.empty());
        invented.solution("made", new Recipe.Mix("isopropanol", q("40 % m/m to 98 % m/m"), "toluene",
                "isopropanol"));

        assertThat(hazards(invented, "made").hazardStatements()).contains("H361d", "H304");
    }

    /** 30 % peroxide weighs 1.11 g/mL (handbook, from memory): one part in four by volume may be 8.3 % by mass. */
    @Test
    void a_stock_thinned_by_volume_counts_as_heavy_as_it_may_be() {
        Invented invented = new Invented();
        invented.material("peroxide", "liquid", "hydrogen peroxide", Optional.of("30 % m/m"), Optional.empty());
        invented.solution("weak", new Recipe.Dilute("peroxide", Optional.empty(),
                Optional.of(org.benchleaf.quantity.Quantity.number(4)), "deionised-water"));

        assertThat(hazards(invented, "weak").hazardStatements()).contains("H318");
    }

    /** What the pH of a material says of its own solution it does not say of one in limewater (pH 12.4, CRC, from memory). */
    @Test
    void the_stated_ph_of_a_material_hides_no_alkaline_liquid_that_it_is_dissolved_in() {
        Invented invented = new Invented();
        invented.materials.put("cellulose", new org.benchleaf.model.Material("cellulose", "Cellulose", "solid", "A size.",
                Optional.of("methyl cellulose"), Optional.empty(), Optional.empty(), Optional.of(q("pH 7")), Optional.empty(),
                Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Set.of(), Optional.empty(),
                Invented.PLACE));
        invented.solution("lime-water", new Recipe.Saturate("calcium-hydroxide", "deionised-water", q("20 °C")));
        invented.solution("size", new Recipe.Dissolve("cellulose", q("2 % m/m"), "lime-water"));

        assertThat(hazards(invented, "size").hazardStatements()).contains("H314");
    }
}
