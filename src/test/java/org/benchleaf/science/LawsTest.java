package org.benchleaf.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.inference.TTest;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.junit.jupiter.api.Test;

/** What must hold for any input: directions, round trips, limits, and agreement with reference libraries. */
class LawsTest {

    private static final int DRAWS = 300;
    private final Random random = new Random(20260302);

    @Test
    void strength_by_mass_and_back_is_the_same_strength() {
        for (int k = 0; k < DRAWS; k++) {
            double strength = 100 * random.nextDouble();
            Quantity byMass = EthanolWater.massFraction(Quantity.of(strength, Unit.PERCENT_BY_VOLUME));
            assertThat(EthanolWater.strength(byMass).value()).isCloseTo(strength, within(1e-9));
            assertThat(byMass.value()).isLessThanOrEqualTo(strength);
        }
    }

    @Test
    void more_ethanol_is_lighter_at_every_temperature_from_10_to_40_degrees() {
        for (int k = 0; k < DRAWS; k++) {
            double t = 10 + 30 * random.nextDouble();
            double p = 99 * random.nextDouble();
            assertThat(density(p + 1, t)).isLessThan(density(p, t));
        }
    }

    @Test
    void warm_mixtures_with_some_ethanol_are_lighter_than_cold_ones() {
        for (int k = 0; k < DRAWS; k++) {
            double p = 15 + 85 * random.nextDouble();
            double t = -10 + 49 * random.nextDouble();
            assertThat(density(p, t + 1)).isLessThan(density(p, t));
        }
    }

    @Test
    void a_mixture_keeps_the_mass_of_its_parts_and_gets_its_water_from_its_weakening() {
        for (int k = 0; k < DRAWS; k++) {
            double stock = 50 + 50 * random.nextDouble();
            double strength = 1 + (stock - 1) * random.nextDouble();
            EthanolWater.Mixture mixture = EthanolWater.mixture(vv(strength), millilitres(1000), vv(stock), celsius(20));
            double mass = mixture.stockMass().value() + mixture.waterMass().value();
            assertThat(mass).isCloseTo(mixture.density().value(), within(1e-9 * mass));
            EthanolWater.Weakening weakening = EthanolWater.weakening(vv(stock), mixture.stockVolume(), vv(strength));
            assertThat(weakening.waterVolume().value()).isCloseTo(mixture.waterVolume().value(), within(1e-6));
            assertThat(weakening.volume().value()).isCloseTo(1000, within(1e-6));
        }
    }

    @Test
    void from_spirit_of_96_per_cent_the_water_is_always_more_than_the_rest_of_the_volume() {
        for (double strength = 5; strength < 95; strength += 0.5) {
            EthanolWater.Mixture mixture = EthanolWater.mixture(vv(strength), millilitres(1000), vv(96), celsius(20));
            assertThat(mixture.waterVolume().value()).isGreaterThan(1000 - mixture.stockVolume().value());
        }
    }

    @Test
    void two_mixtures_poured_together_hold_the_ethanol_of_both() {
        for (int k = 0; k < DRAWS; k++) {
            double first = 100 * random.nextDouble();
            double second = 100 * random.nextDouble();
            double volume = 1 + 500 * random.nextDouble();
            EthanolWater.Blend blend = EthanolWater.blend(millilitres(100), vv(first), millilitres(volume), vv(second));
            // A strength by volume counts the ethanol as if it stood alone, so its sum is kept.
            assertThat(blend.volume().value() * blend.strength().value())
                    .isCloseTo(100 * first + volume * second, within(1e-6));
        }
    }

    @Test
    void a_mixture_stronger_than_its_stock_is_refused() {
        assertThatThrownBy(() -> EthanolWater.mixture(vv(97), millilitres(1), vv(96), celsius(20)))
                .isInstanceOfSatisfying(OutsideRange.class, outside -> {
                    assertThat(outside.input()).isEqualTo("strength");
                    assertThat(outside.allowed().english()).contains("96");
                });
    }

    @Test
    void airing_a_room_never_makes_its_vapour_stronger() {
        Vapour.Limits limits = new Vapour.Limits(MolarMass.ETHANOL.value(), Quantity.of(3.3, Unit.PERCENT_BY_VOLUME),
                Quantity.of(1000, Unit.PPM));
        double closed = Vapour.ofEthanol(vv(70), millilitres(50), Quantity.of(30, Unit.CUBIC_METRE), Optional.empty(),
                celsius(20), limits).concentration().value();
        double before = closed;
        for (double changes = 0.001; changes < 100; changes *= 2) {
            double aired = Vapour.ofEthanol(vv(70), millilitres(50), Quantity.of(30, Unit.CUBIC_METRE),
                    Optional.of(new Vapour.Airing(Quantity.of(changes, Unit.PER_HOUR), Quantity.of(1, Unit.HOUR))),
                    celsius(20), limits).concentration().value();
            assertThat(aired).isLessThan(before);
            before = aired;
        }
        assertThat(Vapour.ofEthanol(vv(70), millilitres(50), Quantity.of(30, Unit.CUBIC_METRE),
                Optional.of(new Vapour.Airing(Quantity.of(1e-9, Unit.PER_HOUR), Quantity.of(1, Unit.HOUR))),
                celsius(20), limits).concentration().value()).isCloseTo(closed, within(closed * 1e-8));
    }

    @Test
    void limewater_gets_weaker_and_less_alkaline_as_it_warms() {
        for (double t = 0; t < 40; t += 0.5) {
            LimeWater.Saturated cold = LimeWater.saturated(celsius(t));
            LimeWater.Saturated warm = LimeWater.saturated(celsius(t + 0.5));
            assertThat(warm.calcium().value()).isLessThan(cold.calcium().value());
            assertThat(warm.ph().value()).isLessThan(cold.ph().value());
        }
    }

    @Test
    void limewater_settles_at_every_temperature_and_strength() {
        for (int k = 0; k < 20 * DRAWS; k++) {
            Quantity t = celsius(40 * random.nextDouble());
            double saturated = LimeWater.saturated(t).calcium().value();
            double ph = LimeWater.ph(Quantity.of(saturated * random.nextDouble(), Unit.MOLE_PER_KILOGRAM), t).value();
            assertThat(ph).isBetween(6.7, LimeWater.saturated(t).ph().value());
        }
    }

    @Test
    void the_dose_for_a_ph_gives_that_ph_back() {
        for (int k = 0; k < DRAWS; k++) {
            double t = 40 * random.nextDouble();
            double lowest = LimeWater.ph(Quantity.of(0, Unit.MOLE_PER_KILOGRAM), celsius(t)).value();
            double highest = LimeWater.saturated(celsius(t)).ph().value();
            double ph = lowest + (highest - lowest) * random.nextDouble();
            LimeWater.Dose dose = dose(ph, t, 0);
            assertThat(LimeWater.ph(dose.calcium(), celsius(t)).value()).isCloseTo(ph, within(1e-9));
        }
    }

    @Test
    void a_higher_ph_and_more_carbon_dioxide_both_need_more_lime() {
        for (int k = 0; k < DRAWS; k++) {
            double t = 5 + 30 * random.nextDouble();
            double ph = 7.6 + 3 * random.nextDouble();
            double ppm = 1000 * random.nextDouble();
            assertThat(dose(ph + 0.1, t, ppm).calcium().value()).isGreaterThan(dose(ph, t, ppm).calcium().value());
            assertThat(dose(ph, t, ppm + 10).calcium().value()).isGreaterThan(dose(ph, t, ppm).calcium().value());
        }
    }

    @Test
    void a_dose_with_hardly_any_carbon_dioxide_is_the_dose_without() {
        assertThat(dose(8.5, 25, 1e-6).calcium().value())
                .isCloseTo(dose(8.5, 25, 0).calcium().value(), within(1e-11));
    }

    @Test
    void limewater_can_make_no_water_more_alkaline_than_itself_nor_more_acid() {
        assertThatThrownBy(() -> dose(13, 25, 0)).isInstanceOf(OutsideRange.class).hasMessageContaining("12.48");
        assertThatThrownBy(() -> dose(6, 25, 0)).isInstanceOf(OutsideRange.class).hasMessageContaining("saturated");
    }

    @Test
    void water_takes_up_more_carbon_dioxide_in_the_cold_and_dissolves_more_calcite_with_it() {
        for (double t = 0; t < 45; t += 5) {
            Quantity air = Quantity.of(420, Unit.PPM);
            assertThat(CarbonateWater.inBalance(celsius(t + 5), air, false).carbon().value())
                    .isLessThan(CarbonateWater.inBalance(celsius(t), air, false).carbon().value());
            assertThat(CarbonateWater.inBalance(celsius(t + 5), air, true).calcium().value())
                    .isLessThan(CarbonateWater.inBalance(celsius(t), air, true).calcium().value());
        }
        double before = 0;
        for (double ppm = 10; ppm <= 1e6; ppm *= 10) {
            CarbonateWater.InBalance water = CarbonateWater.inBalance(celsius(25), Quantity.of(ppm, Unit.PPM), true);
            assertThat(water.calcium().value()).isGreaterThan(before);
            before = water.calcium().value();
        }
    }

    @Test
    void a_whole_atmosphere_is_a_million_parts_per_million() {
        assertThat(CarbonateWater.inBalance(celsius(25), Quantity.of(1e6, Unit.PPM), true))
                .isEqualTo(CarbonateWater.inBalance(celsius(25), Quantity.of(1, Unit.ATMOSPHERE), true));
    }

    @Test
    void a_solver_without_a_sign_change_says_so_and_ends() {
        assertThatThrownBy(() -> Roots.between("the answer", x -> x * x + 1, -1, 1, 1e-12))
                .isInstanceOf(NoConvergence.class).hasMessageContaining("the answer");
        assertThatThrownBy(() -> Roots.between("the answer", x -> Double.NaN, -1, 1, 1e-12))
                .isInstanceOf(NoConvergence.class);
    }

    @Test
    void a_solver_finds_the_roots_of_steep_flat_and_kinked_functions() {
        assertThat(Roots.between("x", x -> x * x * x - 2, 0, 2, 1e-14)).isCloseTo(Math.cbrt(2), within(1e-13));
        assertThat(Roots.between("x", x -> Math.pow(x, 9), -1, 1.5, 1e-14)).isCloseTo(0, within(1e-2));
        assertThat(Roots.between("x", x -> x < 0.3 ? -1 : 1, 0, 1, 1e-14)).isCloseTo(0.3, within(1e-13));
        assertThat(Roots.between("x", x -> Math.exp(50 * x) - 1e10, 0, 1, 1e-14))
                .isCloseTo(Math.log(1e10) / 50, within(1e-13));
    }

    @Test
    void an_ionic_strength_beyond_the_activity_formula_is_told() {
        assertThatThrownBy(() -> Davies.settled("brine", 25, ions -> 0.6)).isInstanceOf(NoConvergence.class)
                .hasMessageContaining("0.5");
        boolean[] up = new boolean[1];
        assertThatThrownBy(() -> Davies.settled("a swinging solution", 25, ions -> (up[0] = !up[0]) ? 0.1 : 0.2))
                .isInstanceOf(NoConvergence.class).hasMessageContaining("did not settle");
    }

    @Test
    void a_colour_does_not_differ_from_itself_and_ciede2000_does_not_care_which_comes_first() {
        for (int k = 0; k < DRAWS; k++) {
            Colour one = colour();
            Colour other = colour();
            assertThat(one.to(one).de2000().value()).isZero();
            assertThat(one.to(other).de2000().value()).isCloseTo(other.to(one).de2000().value(), within(1e-9));
            Colour.Difference difference = one.to(other);
            double squares = square(difference.lightnessChange()) + square(difference.chromaChange())
                    + square(difference.hueChange());
            assertThat(square(difference.de76())).isCloseTo(squares, within(1e-9 * Math.max(1, squares)));
            double distance = square(Quantity.number(one.lightness().value() - other.lightness().value()))
                    + square(Quantity.number(one.red().value() - other.red().value()))
                    + square(Quantity.number(one.yellow().value() - other.yellow().value()));
            assertThat(square(difference.de76())).isCloseTo(distance, within(1e-9 * Math.max(1, distance)));
        }
    }

    @Test
    void tristimulus_values_lead_to_lab_and_back() {
        for (int k = 0; k < DRAWS; k++) {
            Colour.Tristimulus white = WhitePoint.values()[k % WhitePoint.values().length].white();
            Colour.Tristimulus measured = new Colour.Tristimulus(Quantity.number(100 * random.nextDouble()),
                    Quantity.number(100 * random.nextDouble()), Quantity.number(100 * random.nextDouble()));
            Colour.Tristimulus back = Colour.of(measured, white).tristimulus(white);
            assertThat(back.x().value()).isCloseTo(measured.x().value(), within(1e-9));
            assertThat(back.y().value()).isCloseTo(measured.y().value(), within(1e-9));
            assertThat(back.z().value()).isCloseTo(measured.z().value(), within(1e-9));
        }
    }

    @Test
    void the_white_itself_has_lightness_100_and_no_colour() {
        for (WhitePoint white : WhitePoint.values()) {
            Colour colour = Colour.of(white.white(), white.white());
            assertThat(colour.lightness().value()).isCloseTo(100, within(1e-12));
            assertThat(colour.red().value()).isZero();
            assertThat(colour.yellow().value()).isZero();
        }
    }

    @Test
    void p_and_t_agree_with_a_reference_library_to_ten_places() {
        for (int k = 0; k < DRAWS; k++) {
            double degrees = 0.5 + 60 * random.nextDouble();
            double t = 8 * random.nextDouble() - 4;
            TDistribution reference = new TDistribution(degrees);
            assertThat(StudentT.twoSided(Quantity.number(t), Quantity.number(degrees)).value())
                    .isCloseTo(2 * reference.cumulativeProbability(-Math.abs(t)), within(1e-10));
            double tail = 0.001 + 0.4 * random.nextDouble();
            assertThat(StudentT.upperPoint(Quantity.number(tail), Quantity.number(degrees)).value())
                    .isCloseTo(reference.inverseCumulativeProbability(1 - tail), within(1e-6));
        }
    }

    @Test
    void both_tests_agree_with_a_reference_library() {
        for (int k = 0; k < DRAWS; k++) {
            double[] before = readings(3 + random.nextInt(20));
            double[] after = readings(before.length);
            double[] others = readings(3 + random.nextInt(20));
            Change paired = Change.paired(quantities(before), quantities(after));
            assertThat(paired.test().orElseThrow().t().value())
                    .isCloseTo(new TTest().pairedT(after, before), within(1e-9));
            assertThat(paired.test().orElseThrow().p().value())
                    .isCloseTo(new TTest().pairedTTest(after, before), within(1e-9));
            Change unpaired = Change.unpaired(quantities(before), quantities(others));
            assertThat(unpaired.test().orElseThrow().t().value()).isCloseTo(new TTest().t(others, before), within(1e-9));
            assertThat(unpaired.test().orElseThrow().p().value())
                    .isCloseTo(new TTest().tTest(others, before), within(1e-9));
        }
    }

    @Test
    void fewer_than_three_readings_or_none_that_scatter_give_no_significance() {
        assertThat(Change.paired(quantities(4.4, 4.5), quantities(7.9, 8.1)).test()).isEmpty();
        assertThat(Change.paired(quantities(4.4), quantities(7.9)).sd()).isEmpty();
        assertThat(Change.unpaired(quantities(1, 2, 3), quantities(1)).test()).isEmpty();
        assertThat(Change.paired(quantities(1, 2, 3), quantities(2, 3, 4)).test()).isEmpty();
        assertThat(Change.paired(quantities(4.6, 4.8, 4.5), quantities(7.9, 8.1, 7.8)).test()).isEmpty();
    }

    @Test
    void more_of_a_substance_leaves_with_time_and_the_two_forms_of_the_series_meet() {
        double before = 0;
        for (double f = 0.0005; f < 3; f += 0.0005) {
            double now = Baths.leached(Quantity.number(f)).value();
            assertThat(now).isGreaterThan(before);
            assertThat(now - before).isLessThan(3);
            before = now;
        }
        assertThat(Baths.leached(Quantity.number(0.02)).value())
                .isCloseTo(Baths.leached(Quantity.number(Math.nextDown(0.02))).value(), within(1e-9));
    }

    @Test
    void the_dew_point_of_saturated_air_is_its_own_temperature() {
        for (double t = -45; t <= 60; t += 2.5) {
            assertThat(MoistAir.state(celsius(t), Quantity.of(100, Unit.PERCENT_HUMIDITY)).dewPoint().value())
                    .isCloseTo(t, within(1e-9));
            assertThat(MoistAir.state(celsius(t), Quantity.of(50, Unit.PERCENT_HUMIDITY)).dewPoint().value()).isLessThan(t);
        }
    }

    @Test
    void water_is_heaviest_at_four_degrees() {
        double densest = Water.density(celsius(3.983035)).value();
        for (double t = 0; t <= 40; t += 0.25) {
            assertThat(Water.density(celsius(t)).value()).isLessThanOrEqualTo(densest);
        }
    }

    @Test
    void a_cooler_or_drier_room_never_shortens_a_life() {
        for (int k = 0; k < DRAWS; k++) {
            Quantity energy = Quantity.of(50 + 100 * random.nextDouble(), Unit.KILOJOULE_PER_MOLE);
            double t = -19 + 78 * random.nextDouble();
            double rh = 6 + 89 * random.nextDouble();
            double life = Ageing.multiplier(celsius(t), Quantity.of(rh, Unit.PERCENT_HUMIDITY), energy).value();
            assertThat(Ageing.multiplier(celsius(t - 1), Quantity.of(rh, Unit.PERCENT_HUMIDITY), energy).value())
                    .isGreaterThan(life);
            assertThat(Ageing.multiplier(celsius(t), Quantity.of(rh - 1, Unit.PERCENT_HUMIDITY), energy).value())
                    .isGreaterThan(life);
        }
    }

    @Test
    void every_temperature_range_ends_where_it_says() {
        assertThatThrownBy(() -> EthanolWater.density(Quantity.of(50, Unit.PERCENT_BY_MASS), celsius(40.1)))
                .isInstanceOf(OutsideRange.class).hasMessageContaining("OIML R 22");
        assertThatThrownBy(() -> EthanolWater.density(Quantity.of(50, Unit.PERCENT_BY_MASS), celsius(-20.1)))
                .isInstanceOf(OutsideRange.class);
        assertThatThrownBy(() -> Water.density(celsius(-0.1))).isInstanceOf(OutsideRange.class)
                .hasMessageContaining("Tanaka");
        assertThatThrownBy(() -> LimeWater.saturated(celsius(40.1))).isInstanceOf(OutsideRange.class);
        assertThatThrownBy(() -> SaltHumidity.POTASSIUM_CARBONATE.humidity(celsius(19))).isInstanceOf(OutsideRange.class)
                .hasMessageContaining("potassium carbonate");
        assertThatThrownBy(() -> Water.density(Quantity.of(4, Unit.GRAM))).isInstanceOf(IllegalArgumentException.class);
    }

    private static LimeWater.Dose dose(double ph, double celsius, double ppm) {
        return LimeWater.dose(Quantity.of(ph, Unit.PH), Quantity.of(1, Unit.LITRE), celsius(celsius), celsius(celsius),
                Quantity.of(ppm, Unit.PPM));
    }

    private Colour colour() {
        return Colour.of("before", Quantity.number(100 * random.nextDouble()),
                Quantity.number(120 * random.nextDouble() - 60), Quantity.number(120 * random.nextDouble() - 60));
    }

    private double[] readings(int count) {
        return random.doubles(count, 4, 9).toArray();
    }

    private static List<Quantity> quantities(double... readings) {
        return Arrays.stream(readings).mapToObj(reading -> Quantity.of(reading, Unit.PH)).toList();
    }

    private static double density(double percent, double celsius) {
        return EthanolWater.density(Quantity.of(percent, Unit.PERCENT_BY_MASS), celsius(celsius)).value();
    }

    private static double square(Quantity number) {
        return number.value() * number.value();
    }

    private static Quantity celsius(double t) {
        return Quantity.of(t, Unit.CELSIUS);
    }

    private static Quantity vv(double percent) {
        return Quantity.of(percent, Unit.PERCENT_BY_VOLUME);
    }

    private static Quantity millilitres(double volume) {
        return Quantity.of(volume, Unit.MILLILITRE);
    }
}
