package org.benchleaf.calculate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.derive.figure.Job;
import org.benchleaf.model.CheckValues;
import org.benchleaf.model.Formulary;
import org.benchleaf.model.Method;
import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.read.CheckValueReader;
import org.benchleaf.read.MethodReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Calculations by their names: what is read, what is refused and with what words, what is told beside the numbers. */
class CalculationsTest {

    private static final Formulary FORMULARY = MethodReader.read();
    private static final Calculations CALCULATIONS = new Calculations(FORMULARY);

    /** Every end of every range of every method, with inputs that work otherwise. */
    record End(Method method, Method.Input input, double end, boolean upper, Map<String, String> inputs) {
    }

    static Stream<End> everyEnd() {
        Map<String, CheckValues> files = new LinkedHashMap<>();
        CheckValueReader.read(FORMULARY).forEach(file -> files.put(file.calculation(), file));
        return FORMULARY.methods().stream().flatMap(method -> method.inputs().stream()
                .filter(input -> input.unit().isPresent() && !input.many())
                .flatMap(input -> Stream.of(
                        input.low().map(low -> new End(method, input, low, false, inputs(files, method))),
                        input.high().map(high -> new End(method, input, high, true, inputs(files, method))))
                        .flatMap(Optional::stream)));
    }

    private static Map<String, String> inputs(Map<String, CheckValues> files, Method method) {
        return new LinkedHashMap<>(files.get(method.name()).rows().get(0).inputs());
    }

    @ParameterizedTest
    @MethodSource("everyEnd")
    void a_value_beyond_the_end_of_a_range_is_refused_with_that_range_and_its_source(End end) {
        Unit unit = end.input().unit().orElseThrow();
        double beyond = end.end() + (end.upper() ? 1 : -1) * Math.max(1, Math.abs(end.end()) * 0.01);
        Map<String, String> inputs = end.inputs();
        inputs.put(end.input().key(), Written.of(Quantity.of(beyond, unit)));
        Outcome outcome = CALCULATIONS.work(end.method().name(), inputs);
        assertThat(outcome).isInstanceOf(Outcome.Refused.class);
        Refusal refusal = ((Outcome.Refused) outcome).refusals().get(0);
        assertThat(refusal.input()).isEqualTo(end.input().key());
        assertThat(refusal.kind()).isEqualTo(Refusal.Kind.NOT_ALLOWED);
        assertThat(refusal.source()).isEqualTo(end.input().rangeSource());
        assertThat(refusal.allowed().english()).contains(Written.number(end.end()));
    }

    @ParameterizedTest
    @CsvSource({
        "ethanol-mixture, 'strength=70 %; volume=500 mL', strength, '% v/v, % m/m'",
        "ethanol-mixture, 'strength=97 % v/v; volume=500 mL', strength, '96'",
        "ethanol-mixture, 'strength=70 % m/m; volume=500 mL', strength, 'another kind'",
        "ethanol-mixture, 'strength=70 % v/v; volume=500', volume, 'no unit'",
        "ethanol-mixture, 'strength=70 % v/v; volume=0 mL', volume, 'more than 0'",
        "ethanol-density, 'temperature=20 °C', strength, 'either a strength or a mass-fraction'",
        "ethanol-density, 'strength=1 % v/v; mass-fraction=1 % m/m; temperature=20 °C', strength, 'not both'",
        "vapour, 'liquid=turpentine; strength=70 % v/v; volume=50 mL; room=30 m³', liquid, 'ethanol'",
        "vapour, 'liquid=ethanol; strength=70 % v/v; volume=50 mL; room=30 m³; air-changes=2 /h', over, 'both or neither'",
        "dissolving, 'strength=0.01 mol/L; volume=1 L', molar-mass, 'g/mol'",
        "dissolving, 'strength=2 % m/v; mass=100 g', mass, 'volume'",
        "dissolving, 'strength=2 % m/m; volume=1 L', volume, 'mass'",
        "dissolving, 'strength=2 %; volume=1 L', strength, '% m/v'",
        "dilution, 'stock=1.5 g/L; strength=0.1 mol/L; volume=1 L', strength, 'a mass per volume'",
        "dilution, 'stock=1.5 g/L; strength=2 g/L; volume=1 L', strength, '1.5'",
        "parts, 'parts=1:5; total=180 g', parts, '1 + 4'",
        "parts, 'parts=1; total=180 g', parts, '2'",
        "lime-dose, 'ph=pH 13; volume=1 L', ph, '12.48'",
        "lime-dose, 'ph=pH 12.45; volume=1 L; made-at=40 °C', ph, 'holds less'",
        "alkaline-reserve, 'sample=1 g; acid-volume=20 mL; acid=0.1 mol/L; base-volume=21 mL; base=0.1 mol/L', base-volume, '20'",
        "bath, 'height=420 mm; width=594 mm; margin=50 mm; depth=30 mm; baths=1.5', baths, 'whole number'",
        "drying, 'dry=10 g; first=20 g; second=20 g; between=20 min', second, 'first weighing'",
        "solids, 'dry=10 g; now=9 g', now, 'dry mass'",
        "size-change, 'before=1 m; after=1 m; across-before=1 m', across-after, 'neither'",
        "humidifying, 'volume=1 m³; temperature=20 °C; from=60 %; to=50 %', to, '60'",
        "salt-humidity, 'salt=potassium nitrate; temperature=30 °C', temperature, 'potassium nitrate'",
        "colour-difference, 'before=1, 2; after=1, 2, 3', before, '3 numbers'",
        "colour-difference, 'before=88,2, 1,1, 12,6; after=1, 2, 3', before, 'decimal mark'",
        "change, 'before=1, 2, 3; after=1, 2', after, 'paired=no'",
        "change, 'before=1 g, 2 g, 3 g; after=1 mm, 2 mm, 3 mm', after, 'a mass'",
    })
    void inputs_that_contradict_each_other_or_may_mean_several_things_are_asked_about(String name, String inputs,
            String input, String word) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (String pair : inputs.split("; ")) {
            texts.put(pair.substring(0, pair.indexOf('=')), pair.substring(pair.indexOf('=') + 1));
        }
        Outcome outcome = CALCULATIONS.work(name, texts);
        assertThat(outcome).isInstanceOf(Outcome.Refused.class);
        assertThat(((Outcome.Refused) outcome).refusals()).first().satisfies(refusal -> {
            assertThat(refusal.input()).isEqualTo(input);
            assertThat(refusal.sentence()).contains(word);
        });
    }

    @Test
    void a_usual_value_is_told_as_one_and_a_given_one_as_given() {
        Outcome.Worked worked = worked("ethanol-mixture", Map.of("strength", "70 % v/v", "volume", "500 mL"));
        assertThat(worked.givens()).extracting(Figure.Given::key, Figure.Given::text, Figure.Given::from).contains(
                tuple("stock", "96 % v/v", Calculations.USUAL),
                tuple("strength", "70 % v/v", Calculations.GIVEN));
    }

    @Test
    void quantities_already_read_give_the_same_as_their_texts_and_keep_where_they_come_from() {
        Origin volume = new Origin.OfFigure(new FigureKey(FigureKey.Owner.STEP, "wash", "volume", ""));
        Inputs inputs = Inputs.none().with("held", Quantity.of(0.1, Unit.LITRE), Job.MATERIAL)
                .with("bath", Quantity.of(1000, Unit.MILLILITRE), volume)
                .with("baths", Quantity.count(3), Job.CASE_FILE);
        Outcome.Worked worked = (Outcome.Worked) CALCULATIONS.run("rinsing", inputs);
        assertThat(worked.numbers()).isEqualTo(worked("rinsing",
                Map.of("held", "0.1 L", "bath", "1 L", "baths", "3")).numbers());
        assertThat(worked.numbers()).containsOnlyKeys("left");
        assertThat(worked.givens()).extracting(Figure.Given::from).containsExactly(Job.MATERIAL, volume, Job.CASE_FILE);
        assertThat(worked.method().sources()).isNotEmpty();
        assertThat(worked.method().caveats()).anyMatch(caveat -> caveat.contains("Ideal mixing"));
    }

    @Test
    void a_quantity_of_the_wrong_kind_is_refused_and_never_an_exception() {
        Inputs inputs = Inputs.none().with("temperature", Quantity.of(3, Unit.GRAM), Job.CASE_FILE);
        assertThat(CALCULATIONS.run("water-density", inputs)).isInstanceOf(Outcome.Refused.class);
    }

    @Test
    void an_output_is_a_word_or_has_a_reason_why_it_has_no_value() {
        Outcome.Worked reserve = worked("alkaline-reserve", Map.of("sample", "1 g", "acid-volume", "20 mL", "acid",
                "0.1 mol/L", "base-volume", "17.1 mL", "base", "0.1 mol/L"));
        assertThat(reserve.method().outputs()).filteredOn(output -> output.label().contains("threshold")).singleElement()
                .satisfies(output -> assertThat(reserve.words()).containsEntry(output.key(), "no"));
        Outcome.Worked size = worked("size-change", Map.of("before", "100 mm", "after", "101 mm"));
        assertThat(size.withheld().values()).isNotEmpty().extracting(Clause::english).anyMatch(why -> why.contains("were not given"));
    }

    @Test
    void a_range_that_leaves_the_formulas_range_is_refused_whole() {
        assertThat(CALCULATIONS.work("water-density", Map.of("temperature", "35 to 45 °C")))
                .isInstanceOf(Outcome.Refused.class);
    }

    /** TAPPI T 553, summary: quantitative from about 2 % calcium carbonate on. */
    @Test
    void a_reserve_below_two_per_cent_is_told_to_be_indicative_only() {
        assertThat(worked("alkaline-reserve", titration("20.98 mL")).notes()).isEmpty();
        assertThat(worked("alkaline-reserve", titration("21.02 mL")).notes())
                .singleElement().asString().contains("2 %", "indicative only", "TAPPI T 553");
    }

    private static Map<String, String> titration(String base) {
        return Map.of("sample", "1 g", "acid-volume", "25 mL", "acid", "0.1 mol/L", "base-volume", base, "base",
                "0.1 mol/L");
    }

    @Test
    void readings_keep_their_own_unit() {
        Outcome.Worked change = worked("change", Map.of("before", "pH 4.6, pH 4.8, pH 4.5", "after",
                "pH 7.9, pH 8.1, pH 7.8"));
        assertThat(change.numbers().get("mean-change").unit()).isEqualTo(Unit.PH);
        Outcome.Worked lengths = worked("change", Map.of("before", "1 mm, 2 mm, 3 mm", "after", "2 mm, 3 mm, 5 mm"));
        assertThat(lengths.numbers().get("mean-change").unit()).isEqualTo(Unit.MILLIMETRE);
        assertThat(lengths.numbers().get("t").unit()).isEqualTo(Unit.NONE);
    }

    @Test
    void air_equilibrated_water_needs_about_six_times_the_lime_for_ph_8_5() {
        // PHREEQC with phreeqc.dat and minteq.v4.dat: 1.01e-5 against 1.60e-6 mol/kg.
        double air = worked("lime-dose", Map.of("ph", "pH 8.5", "volume", "1 L", "carbon-dioxide", "420 ppm"))
                .numbers().get("calcium").value();
        double pure = worked("lime-dose", Map.of("ph", "8.5", "volume", "1 L")).numbers().get("calcium").value();
        assertThat(air / pure).isCloseTo(6.3, within(0.3));
    }

    @Test
    void a_formulary_that_lacks_a_method_is_our_own_mistake() {
        Formulary lacking = new Formulary(FORMULARY.methods().subList(1, FORMULARY.methods().size()),
                FORMULARY.plainMethods(), FORMULARY.sources(), FORMULARY.tables(), FORMULARY.constants());
        assertThatThrownBy(() -> new Calculations(lacking)).isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("ethanol-mixture");
    }

    @Test
    void every_example_of_a_method_can_be_read() {
        for (Method method : FORMULARY.methods()) {
            for (Method.Input input : method.inputs()) {
                assertThat(new InputReading(input).read(input.example(), Job.CASE_FILE).text()).as("%s %s", method.name(),
                        input.key()).isEqualTo(input.example());
            }
        }
    }

    private static Outcome.Worked worked(String name, Map<String, String> inputs) {
        Outcome outcome = CALCULATIONS.work(name, inputs);
        assertThat(outcome).as("%s", outcome).isInstanceOf(Outcome.Worked.class);
        return (Outcome.Worked) outcome;
    }
}
