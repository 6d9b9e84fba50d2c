package org.benchleaf.derive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.benchleaf.derive.Invented.PLACE;
import static org.benchleaf.derive.Invented.q;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.benchleaf.calculate.Figure;
import org.benchleaf.derive.figure.WorkedResult;
import org.benchleaf.model.MeasureName;
import org.benchleaf.model.MeasuringConditions;
import org.benchleaf.model.Result;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.junit.jupiter.api.Test;

/** Holds results against sums by hand, published tables and Commons Math, and checks that nothing more is claimed. */
class ResultsTest {

    private static Invented readings(String measure, String method, Unit unit, List<String> places,
            List<Double> before, List<Double> after) {
        Invented invented = new Invented();
        invented.results.add(reading(measure, method, unit, places, before, after));
        return invented;
    }

    private static Result.Readings reading(String measure, String method, Unit unit, List<String> places,
            List<Double> before, List<Double> after) {
        return new Result.Readings(MeasureName.of(measure), method, unit, places, before, after, Optional.empty(), Optional.empty(),
                Optional.empty(), MeasuringConditions.of(method), PLACE);
    }

    private static List<String> cautions(Invented invented) {
        return invented.derived().worked().results().get(0).cautions();
    }

    @Test
    void ph_has_its_arithmetic_mean_and_says_so_beside_the_mean_of_activity() {
        Invented invented = readings("pH", "surface, flat electrode", Unit.PH, List.of("a", "b", "c", "d", "e"),
                List.of(4.6, 4.8, 4.5, 4.7, 4.9), List.of(7.9, 8.1, 7.8, 8.0, 8.2));
        // By hand: mean 4.70, deviations ±0.1, ±0.2, 0: sd √(0.10 / 4) = 0.158; by activity 4.68 (trade's example).
        assertThat(invented.figure("results.pH.mean-before").value().value()).isCloseTo(4.70, within(1e-9));
        assertThat(invented.figure("results.pH.sd-before").value().value()).isCloseTo(0.158114, within(1e-6));
        assertThat(invented.figure("results.pH.activity-mean-before").value().value()).isCloseTo(4.68, within(0.005));
        assertThat(invented.figure("results.pH.mean-before").notes()).contains("The arithmetic mean of the pH values.");
        assertThat(cautions(invented)).contains("arithmetic-mean-of-ph", "surface-only");
        Quantity range = invented.figure("results.pH.range-after").value();
        assertThat(List.of(range.low(), range.high())).containsExactly(7.8, 8.2);
    }

    @Test
    void readings_by_an_unknown_or_another_method_have_no_change_and_say_why() {
        Result.Readings known = reading("pH", "surface", Unit.PH, List.of("a", "b", "c"), List.of(4.4, 4.5, 4.6),
                List.of(7.0, 7.1, 7.2));
        Map<String, MeasuringConditions> cases = Map.of("method-not-known", new MeasuringConditions(Optional.empty(), Set.of(),
                        false, Optional.empty(), Optional.empty()),
                "methods-differ", new MeasuringConditions(Optional.empty(), Set.of(), true, Optional.of("cold extract"),
                        Optional.empty()));
        cases.forEach((caution, conditions) -> {
            Invented invented = new Invented();
            invented.results.add(new Result.Readings(known.measure(), known.method(), known.unit(), known.places(),
                    known.before(), known.after(), Optional.empty(), Optional.empty(), Optional.empty(), conditions, PLACE));
            WorkedResult worked = invented.derived().worked().results().get(0);
            assertThat(worked.cautions()).contains(caution);
            assertThat(worked.figures()).containsKey("mean-after").doesNotContainKeys("change", "change-p", "range-change");
        });
    }

    @Test
    void things_counted_are_told_as_counts_without_an_interval() {
        Invented invented = readings("spots", "counted", Unit.COUNT, List.of("a", "b", "c", "d"),
                List.of(46.0, 61.0, 38.0, 17.0), List.of(0.0, 1.0, 0.0, 0.0));
        // By hand: 46 + 61 + 38 + 17 = 162; 1 of 162 is 0.617 %.
        assertThat(invented.figure("results.spots.total-before").value().value()).isEqualTo(162);
        assertThat(invented.figure("results.spots.total-after").value().value()).isEqualTo(1);
        assertThat(invented.figure("results.spots.left").value().value()).isCloseTo(0.6173, within(1e-4));
        assertThat(invented.figure("results.spots.removed").value().value()).isCloseTo(99.3827, within(1e-4));
        assertThat(invented.figure("results.spots.change").value().spread()).isEqualTo(Quantity.Spread.NONE);
        assertThat(cautions(invented)).contains("counted");
        assertThat(invented.derived().worked().results().get(0).figures()).doesNotContainKey("change-p");
    }

    @Test
    void no_interval_of_a_length_runs_below_nothing() {
        // By hand: the changes −1, −9 and −20 have the mean −10 and a standard deviation of 9.5: ± 23.7, from a mean of 10.3.
        Invented invented = readings("height", "steel rule", Unit.MILLIMETRE, List.of("a", "b", "c"),
                List.of(1.0, 10.0, 20.0), List.of(0.0, 1.0, 0.0));
        assertThat(cautions(invented)).contains("interval-below-nothing");
        assertThat(invented.figure("results.height.change").value().spread()).isNotEqualTo(Quantity.Spread.TOLERANCE);
    }

    @Test
    void a_change_of_ph_has_the_ratio_of_hydrogen_ion_activity_beside_it() {
        Invented invented = readings("pH", "surface", Unit.PH, List.of(), List.of(5.0), List.of(7.0));
        // USGS Water Science School: pH 5 is a hundred times more acidic than pH 7 (from memory).
        assertThat(invented.figure("results.pH.activity-ratio").value().value()).isCloseTo(100, within(1e-9));
    }

    @Test
    void a_carbonate_content_as_reported_has_its_reserve() {
        Invented invented = new Invented();
        invented.results.add(new Result.Reserve(MeasureName.of("reserve"), Optional.of("report"), Optional.empty(), Optional.empty(),
                Optional.of(q("3 % m/m")), Optional.empty(), Optional.empty(), Optional.empty(), PLACE));
        // By hand: 2 · 30 g/kg / 100.087 g/mol = 0.5995 mol/kg.
        assertThat(invented.figure("results.reserve.reserve").value().value()).isCloseTo(0.5995, within(1e-4));
    }

    @Test
    void matching_places_are_compared_in_pairs() {
        List<Double> before = List.of(0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0);
        List<Double> after = List.of(1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4);
        Invented invented = readings("sleep", "hours", Unit.NONE,
                List.of("1", "2", "3", "4", "5", "6", "7", "8", "9", "10"), before, after);
        // Student (1908), The probable error of a mean: paired 1.58, 95 % interval 0.7001142 to 2.4598858, p 0.002833.
        Quantity change = invented.figure("results.sleep.change").value();
        assertThat(change.value()).isCloseTo(1.58, within(1e-9));
        assertThat(change.low()).isCloseTo(0.7001142, within(1e-5));
        assertThat(change.high()).isCloseTo(2.4598858, within(1e-5));
        assertThat(invented.figure("results.sleep.change-p").value().value()).isCloseTo(0.002833, within(1e-6));
    }

    @Test
    void readings_without_places_are_compared_by_their_means() {
        List<Double> before = List.of(4.4, 4.5, 4.3, 4.6);
        List<Double> after = List.of(7.3, 7.1, 7.2, 7.4, 7.0);
        Invented invented = readings("pH", "strips", Unit.PH, List.of(), before, after);
        SummaryStatistics one = new SummaryStatistics();
        before.forEach(one::addValue);
        SummaryStatistics two = new SummaryStatistics();
        after.forEach(two::addValue);
        double v1 = one.getVariance() / 4;
        double v2 = two.getVariance() / 5;
        double degrees = (v1 + v2) * (v1 + v2) / (v1 * v1 / 3 + v2 * v2 / 4);
        double half = new TDistribution(degrees).inverseCumulativeProbability(0.975) * Math.sqrt(v1 + v2);
        Quantity change = invented.figure("results.pH.change").value();
        assertThat(change.value()).isCloseTo(two.getMean() - one.getMean(), within(1e-9));
        assertThat(change.halfWidth()).isCloseTo(half, within(1e-6));
        assertThat(cautions(invented)).contains("not-paired", "indicator-strips");
    }

    @Test
    void two_readings_have_a_change_but_no_significance() {
        Invented invented = readings("pH", "surface", Unit.PH, List.of("a", "b"), List.of(4.4, 4.6), List.of(7.1, 7.3));
        Derived derived = invented.derived();
        assertThat(derived.worked().figures().get("results.pH.change").value().spread())
                .isEqualTo(Quantity.Spread.RESOLUTION);
        assertThat(derived.worked().figures()).doesNotContainKey("results.pH.change-p");
        assertThat(cautions(invented)).contains("fewer-than-three");
    }

    @Test
    void a_single_reading_is_a_valid_result_without_statistics() {
        Invented invented = readings("pH", "cold extract", Unit.PH, List.of(), List.of(4.4), List.of());
        assertThat(invented.derived().worked().results().get(0).figures().keySet())
                .containsExactly("n-before", "mean-before");
        assertThat(cautions(invented)).contains("single-reading", "one-time-only");
        assertThat(invented.codes()).isEmpty();
    }

    @Test
    void words_and_what_was_not_measured_never_become_numbers() {
        Invented invented = new Invented();
        invented.results.add(new Result.Words(MeasureName.of("strength"), "by hand", Optional.of("1"), Optional.of("doubled"), List.of(),
                Optional.empty(), PLACE));
        invented.results.add(new Result.NotMeasured(MeasureName.of("reserve"), "no sample", PLACE));
        Derived derived = invented.derived();
        assertThat(derived.worked().results()).allSatisfy(result -> assertThat(result.figures()).isEmpty());
        assertThat(derived.worked().figures().keySet()).noneMatch(id -> id.startsWith("results."));
    }

    @Test
    void surface_and_extract_ph_are_kept_apart() {
        Invented invented = readings("pH", "surface, flat electrode", Unit.PH, List.of(), List.of(4.4), List.of());
        invented.results.add(reading("pH", "cold extract", Unit.PH, List.of(), List.of(), List.of(7.4)));
        Derived derived = invented.derived();
        assertThat(derived.worked().figures()).doesNotContainKeys("results.pH.change", "results.pH-2.change");
        assertThat(derived.worked().results()).allSatisfy(result ->
                assertThat(result.cautions()).contains("surface-and-extract-not-compared"));
        assertThat(invented.codes()).containsExactly("FIG-016");
    }

    @Test
    void a_colour_difference_names_its_formula_illuminant_and_observer() {
        Invented invented = new Invented();
        invented.results.add(colour(Optional.of("CIEDE2000"), List.of(
                new Result.ColourSpot("foot margin", List.of(78.4, 3.1, 19.6), List.of(83.2, 1.7, 14.1)),
                new Result.ColourSpot("check", List.of(50.0, 2.6772, -79.7751), List.of(50.0, 0.0, -82.7485)))));
        // Sharma, Wu and Dalal (2005), table 1, pair 1: 2.0425. The trade's example: 4.69.
        assertThat(invented.figure("results.colour.de2000.check").value().value()).isCloseTo(2.0425, within(1e-4));
        Figure spot = invented.figure("results.colour.de2000.foot-margin");
        assertThat(spot.value().value()).isCloseTo(4.69, within(0.005));
        assertThat(spot.label()).contains("CIEDE2000", "D65", "10°");
        Quantity mean = invented.figure("results.colour.de2000.mean").value();
        assertThat(mean.value()).isCloseTo((4.687 + 2.0425) / 2, within(0.001));
        assertThat(mean.low()).isCloseTo(2.0425, within(1e-4));
    }

    @Test
    void yellowness_follows_from_lab_where_light_and_observer_are_stated() {
        Invented invented = new Invented();
        invented.results.add(colour(Optional.of("CIEDE2000"), List.of(new Result.ColourSpot("white",
                List.of(100.0, 0.0, 0.0), List.of(96.0, -0.5, 8.0)))));
        // ASTM E313: the perfect white has a yellowness of 0, by its coefficients to 0.001 times a hundred.
        assertThat(invented.figure("results.colour.yellowness-before.white").value().value()).isCloseTo(0, within(0.1));
        // By hand: f = 112 / 116; Y = 100 f³ = 90.008; X = 94.811 (f − 0.001)³ = 85.072; Z = 107.304 (f − 0.04)³
        // = 85.069; 100 (1.3013 × 85.072 − 1.1498 × 85.069) / 90.008 = 14.324.
        assertThat(invented.figure("results.colour.yellowness-after.white").value().value())
                .isCloseTo(14.324, within(0.002));
    }

    @Test
    void yellowness_is_not_told_of_a_blue_ground_or_a_red_letter() {
        Invented invented = new Invented();
        invented.results.add(colour(Optional.of("CIEDE2000"), List.of(
                new Result.ColourSpot("blue", List.of(34.2, -2.8, -26.4), List.of(34.4, -2.9, -26.7)),
                new Result.ColourSpot("red", List.of(44.1, 38.7, 22.0), List.of(46.2, 39.9, 22.9)),
                new Result.ColourSpot("margin", List.of(78.4, 3.1, 19.6), List.of(83.2, 1.7, 14.1)))));
        assertThat(invented.derived().worked().figures().keySet()).filteredOn(id -> id.contains("yellowness"))
                .containsExactly("results.colour.yellowness-before.margin", "results.colour.yellowness-after.margin");
    }

    @Test
    void the_smallest_and_the_largest_change_are_those_of_places_not_of_means() {
        Invented invented = readings("pH", "surface", Unit.PH, List.of("a", "b", "c"), List.of(4.4, 4.5, 4.3),
                List.of(7.3, 7.1, 7.2));
        // By hand: 2.9, 2.6, 2.9.
        Quantity changes = invented.figure("results.pH.range-change").value();
        assertThat(changes.low()).isCloseTo(2.6, within(1e-9));
        assertThat(changes.high()).isCloseTo(2.9, within(1e-9));
    }

    @Test
    void conditions_of_colour_that_are_not_stated_are_said_to_be_missing() {
        Invented invented = new Invented();
        invented.results.add(new Result.Colour(MeasureName.of("colour"), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                List.of(new Result.ColourSpot("a", List.of(78.4, 3.1, 19.6), List.of(83.2, 1.7, 14.1))),
                Optional.empty(), PLACE));
        assertThat(cautions(invented)).contains("formula-not-stated", "illuminant-not-stated", "observer-not-stated");
    }

    private static Result.Colour colour(Optional<String> formula, List<Result.ColourSpot> spots) {
        return new Result.Colour(MeasureName.of("colour"), formula, Optional.of("D65"), Optional.of("10°"), Optional.of("d/8"),
                Optional.of(q("4 mm")), Optional.of(3), Optional.empty(), Optional.empty(), spots, Optional.empty(),
                PLACE);
    }

    @Test
    void size_changes_along_and_across_the_grain_and_in_area() {
        Invented invented = new Invented();
        invented.grain = Optional.of("along the height");
        invented.results.add(size("420.0 mm", "297.0 mm", "421.3 mm", "302.3 mm", "50 % RH", "52 % RH"));
        // By hand: 1.3 / 420 = 0.3095 %; 5.3 / 297 = 1.7845 %; 1.003095 × 1.017845 − 1 = 2.0995 %.
        assertThat(invented.figure("results.size.change").value().value()).isCloseTo(0.3095, within(1e-4));
        assertThat(invented.figure("results.size.across-change").value().value()).isCloseTo(1.7845, within(1e-4));
        assertThat(invented.figure("results.size.area-change").value().value()).isCloseTo(2.0995, within(1e-4));
        assertThat(invented.codes()).isEmpty();
        invented.grain = Optional.of("along the width");
        assertThat(invented.figure("results.size.change").value().value()).isCloseTo(1.7845, within(1e-4));
    }

    @Test
    void a_change_of_size_is_known_no_finer_than_the_rule_that_read_it() {
        Invented invented = new Invented();
        invented.grain = Optional.of("along the height");
        invented.results.add(size("412.0 mm", "298.0 mm", "412.5 mm", "300.0 mm", "50 % RH", "51 % RH"));
        // By hand, JCGM 100:2008, F.2.2.1 and 5.1.2: a step of 0.5 mm gives 0.5 / √3 = 0.2887 mm (k = 2) for each reading;
        // 0.2887 √(1 + (412.5 / 412)²) / 412 = 0.0992 %; 0.2887 √(1 + (300 / 298)²) / 298 = 0.1375 %.
        assertThat(invented.figure("results.size.change").value().halfWidth()).isCloseTo(0.0992, within(2e-4));
        assertThat(invented.figure("results.size.across-change").value().halfWidth()).isCloseTo(0.1375, within(2e-4));
        assertThat(cautions(invented)).contains("height-within-one-step").doesNotContain("width-within-one-step");
    }

    @Test
    void a_size_read_in_another_humidity_is_questioned() {
        Invented invented = new Invented();
        invented.results.add(size("420.0 mm", "297.0 mm", "421.3 mm", "302.3 mm", "40 % RH", "60 % RH"));
        assertThat(invented.codes()).containsExactly("FIG-017");
        assertThat(cautions(invented)).contains("other-humidity", "grain-unknown");
    }

    private static Result.Size size(String h1, String w1, String h2, String w2, String before, String after) {
        return new Result.Size(MeasureName.of("size"), "steel rule", q(h1), q(w1), q(h2), q(w2), Optional.of(q(before)),
                Optional.of(q(after)), Optional.empty(), PLACE);
    }

    @Test
    void a_titration_below_two_per_cent_is_indicative_and_misses_the_threshold() {
        Invented invented = new Invented();
        invented.results.add(new Result.Reserve(MeasureName.of("reserve"), Optional.empty(), Optional.empty(),
                Optional.of(new Result.Titration(q("1.000 g"), Optional.empty(), q("20.00 mL"), q("0.1 mol/L"),
                        q("17.10 mL"), q("0.1 mol/L"))), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), PLACE));
        // By hand: (20.00 − 17.10) × 0.1 / 1.000 = 0.29 mol/kg; × 100.087 / 2 / 10 = 1.451 %.
        assertThat(invented.figure("results.reserve.reserve").value().value()).isCloseTo(0.29, within(1e-9));
        assertThat(invented.figure("results.reserve.carbonate").value().value()).isCloseTo(1.451, within(0.001));
        assertThat(cautions(invented)).contains("threshold-not-met", "below-titration-limit");
    }

    @Test
    void a_mean_of_counts_is_no_longer_a_count() {
        Invented invented = readings("mould spots", "by eye", Unit.COUNT, List.of(), List.of(46.0, 47.0),
                List.of(0.0, 1.0));
        assertThat(invented.figure("results.mould-spots.change").value()).isEqualTo(Quantity.number(-46));
        assertThat(invented.figure("results.mould-spots.mean-before").value()).isEqualTo(Quantity.number(46.5));
    }
}
