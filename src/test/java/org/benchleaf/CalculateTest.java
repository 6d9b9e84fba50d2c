package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.benchleaf.model.CheckValue;
import org.benchleaf.model.Formulary;
import org.benchleaf.model.Method;
import org.benchleaf.read.CheckValueReader;
import org.benchleaf.read.MethodReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** The command line of the single calculations: what it prints where, and how it ends. */
class CalculateTest {

    private static final Formulary FORMULARY = MethodReader.read();

    /** What a run left behind. */
    private record Ran(int code, String out, String err) {

        static Ran of(String... words) {
            StringWriter out = new StringWriter();
            StringWriter err = new StringWriter();
            int code = Main.run(new PrintWriter(out), new PrintWriter(err), words);
            return new Ran(code, out.toString(), err.toString());
        }

        /** JSON is read as YAML, of which it is a part. */
        @SuppressWarnings("unchecked")
        Map<String, Object> json() {
            return (Map<String, Object>) new Yaml(new SafeConstructor(new LoaderOptions())).load(out);
        }

        @SuppressWarnings("unchecked")
        Map<String, Object> figure(String id) {
            return ((List<Map<String, Object>>) json().get("figures")).stream()
                    .filter(figure -> figure.get("id").equals(id)).findFirst().orElseThrow();
        }

        @SuppressWarnings("unchecked")
        String whyWithheld(String id) {
            return ((List<Map<String, Object>>) json().get("withheld")).stream()
                    .filter(entry -> entry.get("id").equals(id)).findFirst().orElseThrow().get("why").toString();
        }
    }

    static Stream<Method> everyMethod() {
        return FORMULARY.methods().stream();
    }

    @ParameterizedTest
    @MethodSource("everyMethod")
    void every_calculation_runs_as_text_and_as_json(Method method) {
        Map<String, String> inputs = new LinkedHashMap<>();
        CheckValue row = CheckValueReader.read(FORMULARY).stream()
                .filter(file -> file.calculation().equals(method.name())).findFirst().orElseThrow().rows().get(0);
        inputs.putAll(row.inputs());
        String[] words = Stream.concat(Stream.of("calculate", method.name()),
                inputs.entrySet().stream().map(input -> input.getKey() + "=" + input.getValue())).toArray(String[]::new);
        Ran text = Ran.of(words);
        assertThat(text.code()).as(text.err()).isZero();
        assertThat(text.out()).contains(method.formula()).contains(method.range());
        Ran json = Ran.of(Stream.concat(Stream.of(words), Stream.of("--format", "json")).toArray(String[]::new));
        assertThat(json.json()).containsEntry("calculation", method.name());
    }

    @Test
    void a_result_is_printed_at_full_precision_in_the_unit_of_the_list() {
        Ran ran = Ran.of("calculate", "ethanol-weakening", "stock=96 % v/v", "stock-volume=1000 mL",
                "strength=70 % v/v", "--format=json");
        // OIML R 22 (1975): 407.8 mL; mass balance, worked from the published formula.
        assertThat((Double) ran.figure("water-volume").get("value")).isBetween(407.75, 407.85);
        assertThat(String.valueOf(ran.figure("water-volume").get("value")).length()).isGreaterThan(10);
        assertThat(ran.figure("water-volume")).containsEntry("unit", "mL");
    }

    @Test
    void words_that_the_shell_split_belong_to_the_value_before_them() {
        assertThat(Ran.of("calculate", "parts", "parts=1", "+", "5", "total=180", "g").out())
                .isEqualTo(Ran.of("calculate", "parts", "parts=1 + 5", "total=180 g").out());
    }

    @Test
    void without_a_name_every_calculation_is_listed_with_its_inputs() {
        Ran ran = Ran.of("calculate");
        assertThat(ran.code()).isZero();
        assertThat(FORMULARY.methods()).allSatisfy(method -> {
            assertThat(ran.out().lines()).contains(method.name());
            method.inputs().forEach(input -> assertThat(ran.out()).contains(input.key() + "="));
        });
    }

    @Test
    void a_value_out_of_range_names_the_range_and_its_source_and_ends_with_1() {
        Ran ran = Ran.of("calculate", "ethanol-density", "mass-fraction=30 % m/m", "temperature=41 °C");
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.err()).contains("temperature").contains("41 °C").contains("-20 to 40 °C").contains("OIML R 22");
        assertThat(ran.out()).isEmpty();
    }

    @Test
    void a_missing_value_and_a_wrong_unit_are_told_in_one_run_and_end_with_1() {
        Ran ran = Ran.of("calculate", "rinsing", "held=0.1 kg", "baths=3");
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.err().lines()).hasSize(2).anyMatch(line -> line.contains("held"))
                .anyMatch(line -> line.contains("bath is missing"));
    }

    @Test
    void an_unknown_name_is_answered_with_a_near_one_and_ends_with_2() {
        Ran ran = Ran.of("calculate", "lime-watr", "temperature=20 °C");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("did you mean lime-water");
    }

    @Test
    void an_unknown_key_is_answered_with_a_near_one_and_ends_with_2() {
        Ran ran = Ran.of("calculate", "lime-water", "temperatur=20 °C");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("did you mean temperature");
    }

    @Test
    void a_word_that_is_no_input_and_an_input_given_twice_end_with_2() {
        assertThat(Ran.of("calculate", "lime-water", "20").code()).isEqualTo(2);
        assertThat(Ran.of("calculate", "lime-water", "temperature=20 °C", "temperature=25 °C").code()).isEqualTo(2);
        assertThat(Ran.of("calculate", "lime-water", "temperature=20 °C", "--format", "xml").code()).isEqualTo(2);
        assertThat(Ran.of("calculat").code()).isEqualTo(2);
    }

    @Test
    void what_a_group_of_arguments_lacks_is_told_with_one_word_for_an_error() {
        Ran ran = Ran.of("translation");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).startsWith("benchleaf: error: Missing required argument").doesNotContain("Error:");
    }

    @Test
    void a_yes_or_no_is_a_word_to_people_and_a_number_to_programs() {
        // ISO 9706: 20 g/kg, 0.4 mol/kg of acid; 0.400 mmol in 0.999 g reach it, 0.399 mmol do not.
        assertThat(reserve("21.00 mL", "text").out()).containsPattern("meets-threshold +yes ");
        assertThat(reserve("21.00 mL", "json").figure("meets-threshold")).containsEntry("value", 1.0)
                .containsEntry("low", 1.0).containsEntry("high", 1.0).containsEntry("unit", "yes/no");
        assertThat(reserve("21.01 mL", "json").figure("meets-threshold")).containsEntry("value", 0.0);
    }

    @Test
    void a_yes_or_no_that_the_tolerance_leaves_open_is_withheld() {
        assertThat(reserve("21.00 ± 0.05 mL", "text").out()).containsPattern("meets-threshold +undecided ");
        assertThat(reserve("21.00 ± 0.05 mL", "json").whyWithheld("meets-threshold")).contains("both yes and no");
    }

    private static Ran reserve(String base, String format) {
        return Ran.of("calculate", "alkaline-reserve", "sample=0.999 g", "acid-volume=25 mL", "acid=0.1 mol/L",
                "base-volume=" + base, "base=0.1 mol/L", "--format", format);
    }

    @Test
    void an_output_without_a_value_is_no_figure_and_says_why() {
        Ran ran = Ran.of("calculate", "size-change", "before=100 mm", "after=101 mm", "--format", "json");
        assertThat((List<?>) ran.json().get("figures")).hasSize(1);
        assertThat(ran.whyWithheld("area-change")).contains("across");
    }

    @Test
    void whatever_is_typed_there_is_never_a_stack_trace() {
        for (Method method : FORMULARY.methods()) {
            for (String value : List.of("", "0", "-1", "1e300 g", "NaN", "1,5 mL", "5 to 1 mL", "±", "\u0000", "999999999 °C")) {
                String[] words = Stream.concat(Stream.of("calculate", method.name()),
                        method.inputs().stream().map(input -> input.key() + "=" + value)).toArray(String[]::new);
                Ran ran = Ran.of(words);
                assertThat(ran.code()).as("%s with '%s': %s", method.name(), value, ran.err()).isIn(0, 1);
                assertThat(ran.err()).doesNotContain("Exception").doesNotContain("\tat ");
            }
        }
    }
}
