package org.benchleaf.derive.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.benchleaf.derive.Invented.mist;
import static org.benchleaf.derive.Invented.q;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.calculate.Figure;
import org.benchleaf.derive.Derived;
import org.benchleaf.derive.Invented;
import org.benchleaf.model.Recipe;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.junit.jupiter.api.Test;

/** Mixtures of several liquids; the sums stand beside the values and are worked by hand where no source is named. */
class MixtureFiguresTest {

    private static final Recipe BY_MASS = new Recipe.Mix(List.of(
            new Recipe.Share("isopropanol", q("12 % m/m"), "isopropanol"),
            new Recipe.Share("acetone", q("8 % m/m"), "acetone")), "ethanol-96");

    private static Invented solvents() {
        Invented invented = new Invented();
        invented.material("isopropanol", "liquid", "isopropanol", Optional.empty(), Optional.empty());
        invented.material("isopropanol-70", "liquid", "isopropanol", Optional.of("70 % v/v"), Optional.empty());
        invented.material("acetone", "liquid", "acetone", Optional.empty(), Optional.empty());
        invented.material("brand-cleaner", "liquid", "", Optional.empty(), Optional.empty());
        return invented;
    }

    private static Map<String, Figure> figures(Invented invented) {
        return invented.derived().worked().figures();
    }

    @Test
    void three_solvents_by_mass_are_each_told_by_mass_and_by_volume() {
        Map<String, Figure> figures = figures(solvents().solution("solvent", BY_MASS, Map.of("make", "500 g"),
                Optional.empty()));
        // 500 g × 12 % = 60 g; × 8 % = 40 g; 400 g are left.
        assertThat(figures.get("solvent.isopropanol-mass").value().in(Unit.GRAM)).isCloseTo(60, within(1e-9));
        assertThat(figures.get("solvent.acetone-mass").value().in(Unit.GRAM)).isCloseTo(40, within(1e-9));
        assertThat(figures.get("solvent.rest-mass").value().in(Unit.GRAM)).isCloseTo(400, within(1e-9));
        // Densities at 20 °C from memory: isopropanol 0.785, acetone 0.791, ethanol 96 % v/v 0.8074 g/mL (OIML R 22).
        assertThat(figures.get("solvent.isopropanol-volume").value().in(Unit.MILLILITRE)).isCloseTo(76.4, within(0.2));
        assertThat(figures.get("solvent.acetone-volume").value().in(Unit.MILLILITRE)).isCloseTo(50.6, within(0.2));
        assertThat(figures.get("solvent.rest-volume").value().in(Unit.MILLILITRE)).isCloseTo(495.4, within(0.5));
        assertThat(figures.get("solvent.separate-volume").value().in(Unit.MILLILITRE)).isCloseTo(622.4, within(1.0));
        assertThat(figures.get("solvent.separate-volume").notes()).anyMatch(note -> note.contains("not known"));
    }

    @Test
    void every_part_is_fetched_from_the_shelf() {
        Map<String, Figure> figures = figures(solvents().solution("solvent", BY_MASS, Map.of("make", "500 g"),
                Optional.empty()));
        assertThat(figures).containsKeys("total.isopropanol", "total.acetone", "total.ethanol-96");
        assertThat(figures.get("total.acetone").value().in(Unit.GRAM)).isCloseTo(40, within(1e-9));
    }

    @Test
    void by_volume_a_weak_stock_is_reckoned_with_and_the_volumes_are_joined() {
        Map<String, Figure> figures = figures(solvents().solution("solvent", new Recipe.Mix(List.of(
                new Recipe.Share("isopropanol", q("21 % v/v"), "isopropanol-70"),
                new Recipe.Share("acetone", q("10 % v/v"), "acetone")), "ethanol-96"), Map.of("make", "200 mL"),
                Optional.empty()));
        // 200 mL × 21 / 70 = 60 mL; × 10 % = 20 mL; 120 mL are left.
        assertThat(figures.get("solvent.isopropanol-volume").value().in(Unit.MILLILITRE)).isCloseTo(60, within(1e-9));
        assertThat(figures.get("solvent.acetone-volume").value().in(Unit.MILLILITRE)).isCloseTo(20, within(1e-9));
        assertThat(figures.get("solvent.rest-volume").value().in(Unit.MILLILITRE)).isCloseTo(120, within(1e-9));
        assertThat(figures.get("solvent.rest-volume").notes()).anyMatch(note -> note.contains("measured separately"));
        // The table has the density of the pure liquid only: a stock of 70 % has no mass here.
        assertThat(figures).doesNotContainKey("solvent.isopropanol-mass").containsKey("solvent.acetone-mass");
        assertThat(figures.get("solvent.isopropanol-volume").notes())
                .anyMatch(note -> note.startsWith("Its mass cannot be worked out, because"));
    }

    @Test
    void what_is_used_of_joined_volumes_is_made_with_room_for_what_they_lose() {
        Map<String, Figure> figures = figures(solvents().solution("solvent", new Recipe.Mix("acetone",
                q("50 % v/v"), "isopropanol", "acetone")).step("spray", mist("solvent", "100 mL")));
        // 100 mL × 1.05 = 105 mL, in steps of what can be measured.
        assertThat(figures.get("solvent.batch").value().in(Unit.MILLILITRE)).isGreaterThanOrEqualTo(105);
        assertThat(figures.get("solvent.batch").inputs()).extracting(Figure.Given::key).contains("shrinking");
    }

    @Test
    void ethanol_in_a_solvent_is_not_reckoned_as_if_it_were_in_water() {
        Map<String, Figure> figures = figures(solvents().solution("solvent", new Recipe.Mix("ethanol",
                q("48 % v/v"), "acetone", "ethanol-96"), Map.of("make", "100 mL"), Optional.empty()));
        // 100 mL × 48 / 96 = 50 mL; 50 mL are left, and none of it is water.
        assertThat(figures.get("solvent.stock-volume").value().in(Unit.MILLILITRE)).isCloseTo(50, within(1e-9));
        assertThat(figures.get("solvent.rest-volume").value().in(Unit.MILLILITRE)).isCloseTo(50, within(1e-9));
        assertThat(figures).doesNotContainKey("solvent.water-volume").doesNotContainKey("total.deionised-water");
    }

    @Test
    void ethanol_by_mass_from_a_stock_by_volume_goes_through_its_table() {
        Invented invented = solvents();
        invented.material("ethanol-eur", "liquid", "ethanol", Optional.of("96.9 % v/v"), Optional.empty());
        Map<String, Figure> figures = figures(invented.solution("mist", new Recipe.Mix("ethanol", q("70 % m/m"),
                "deionised-water", "ethanol-eur"), Map.of("make", "500 g"), Optional.empty()));
        // European Pharmacopoeia, Ethanol (96 per cent), from memory: 96.9 % V/V is 95.2 % m/m. 500 g × 70 / 95.2.
        assertThat(figures.get("mist.stock-mass").value().in(Unit.GRAM)).isCloseTo(367.6, within(0.4));
    }

    @Test
    void three_parts_by_volume_and_by_mass() {
        List<Recipe.Portion> portions = List.of(new Recipe.Portion("isopropanol", 3),
                new Recipe.Portion("acetone", 2), new Recipe.Portion("ethanol-96", 1));
        Map<String, Figure> figures = figures(solvents()
                .solution("volumes", new Recipe.Parts(portions, false, false), Map.of("make", "120 mL"), Optional.empty())
                .solution("masses", new Recipe.Parts(portions, true, false), Map.of("make", "60 g"), Optional.empty()));
        // 120 × 3/6, 2/6, 1/6; 60 × 1/6.
        assertThat(figures.get("volumes.first").value().in(Unit.MILLILITRE)).isCloseTo(60, within(1e-9));
        assertThat(figures.get("volumes.second").value().in(Unit.MILLILITRE)).isCloseTo(40, within(1e-9));
        assertThat(figures.get("volumes.part-3").value().in(Unit.MILLILITRE)).isCloseTo(20, within(1e-9));
        assertThat(figures.get("masses.part-3").value().in(Unit.GRAM)).isCloseTo(10, within(1e-9));
        assertThat(figures).containsKeys("total.isopropanol", "total.acetone", "total.ethanol-96");
    }

    @Test
    void a_range_of_shares_is_carried_through_to_every_amount() {
        Map<String, Figure> figures = figures(solvents().solution("solvent", new Recipe.Mix("acetone",
                q("10 % m/m to 20 % m/m"), "isopropanol", "acetone"), Map.of("make", "100 g"), Optional.empty()));
        assertThat(figures.get("solvent.stock-mass").value().low()).isCloseTo(10, within(1e-9));
        assertThat(figures.get("solvent.rest-mass").value().high()).isCloseTo(90, within(1e-9));
    }

    @Test
    void a_part_that_the_table_lacks_is_told_and_never_lost() {
        Invented invented = solvents().solution("solvent", new Recipe.Mix(List.of(
                new Recipe.Share("brand-cleaner", q("10 % m/m"), "brand-cleaner"),
                new Recipe.Share("acetone", q("20 % m/m"), "acetone")), "ethanol-96"), Map.of("make", "100 g"),
                Optional.empty());
        Derived derived = invented.derived();
        assertThat(derived.worked().figures()).containsKey("solvent.brand-cleaner-mass")
                .doesNotContainKey("solvent.brand-cleaner-volume");
        assertThat(derived.worked().hazards().get("solvent").unknown()).anyMatch(one ->
                one.toString().contains("brand-cleaner"));
    }

    @Test
    void a_mixture_by_mass_that_is_used_by_volume_weighs_at_most_what_its_heaviest_part_does() {
        Map<String, Figure> figures = figures(solvents().solution("solvent", BY_MASS)
                .step("spray", mist("solvent", "100 mL")));
        // The heaviest is ethanol of 96 %: 100 mL × 0.8074 g/mL = 80.7 g (OIML R 22); 5 % more is made, 84.8 g rounded up.
        assertThat(figures.get("solvent.needed").value().in(Unit.GRAM)).isCloseTo(80.7, within(0.2));
        assertThat(figures.get("solvent.batch").value().in(Unit.GRAM)).isCloseTo(85, within(1e-9));
    }

    /** 96 % v/v one in two is 48 % v/v, for which 500 mL of it take 531 mL of water, not 500 (densities of OIML R 22, from memory). */
    @Test
    void ethanol_one_in_so_many_of_water_goes_by_its_table() {
        Derived derived = solvents().solution("half", new Recipe.Dilute("ethanol-96", Optional.empty(),
                Optional.of(Quantity.number(2)), "deionised-water"), Map.of("make", "1000 mL"), Optional.empty()).derived();
        Map<String, Figure> figures = derived.worked().figures();

        // 500 mL × 0.8074 g/mL = 403.7 g; 1000 mL at 48 % v/v weigh 934.0 g; 530.3 g of water are 531.2 mL.
        assertThat(figures.get("half.stock-volume").value().in(Unit.MILLILITRE)).isCloseTo(500, within(0.5));
        assertThat(figures.get("half.water-volume").value().in(Unit.MILLILITRE)).isCloseTo(531.2, within(1.0));
        assertThat(derived.worked().preparations().get(0).addsUp()).isTrue();
    }

    /** What is nearly water adds up with water; strong peroxide, or a solvent, does not (common practice, no source). */
    @Test
    void one_part_in_so_many_is_told_to_add_up_only_where_both_are_nearly_water() {
        assertThat(addsUp("lime-water", "deionised-water")).isTrue();
        assertThat(addsUp("isopropanol", "deionised-water")).isFalse();
        assertThat(addsUp("lime-water", "isopropanol")).isFalse();
        assertThat(addsUp("no-such-liquid", "deionised-water")).isFalse();
    }

    private static boolean addsUp(String stock, String with) {
        return solvents().solution("lime-water", new Recipe.Saturate("calcium-hydroxide", "deionised-water", q("20 °C")))
                .solution("thin", new Recipe.Dilute(stock, Optional.empty(), Optional.of(Quantity.number(10)), with),
                        Map.of("make", "1000 mL"), Optional.empty()).derived().worked().preparations().stream()
                .filter(one -> one.solution().equals("thin")).findFirst().orElseThrow().addsUp();
    }
}
