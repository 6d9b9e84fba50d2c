package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** Holds the calculations against the names, inputs, usual values, outputs and units that others rely on. */
class ContractTest {

    private static final List<Map<String, Object>> LISTED =
            maps(json(run("calculate", "--format", "json").out()).get("calculations"));

    /** One line of the contract. */
    record Promise(String name, List<Input> inputs, Map<String, String> outputs) {

        static Promise of(String line) {
            String[] cells = line.split(", ", 3);
            Map<String, String> outputs = new LinkedHashMap<>();
            for (String output : cells[2].split("; ")) {
                String[] parts = output.split(" ", 2);
                outputs.put(parts[0], parts.length == 1 ? "" : parts[1]);
            }
            return new Promise(cells[0], Stream.of(cells[1].split("; ")).map(Input::of).toList(), outputs);
        }

        @Override
        public String toString() {
            return name;
        }
    }

    /** One promised input. */
    record Input(String key, boolean required, String usual) {

        static Input of(String text) {
            boolean required = !text.startsWith("[");
            String[] parts = text.replaceAll("[\\[\\]]", "").split("=", 2);
            return new Input(parts[0], required, parts.length == 1 ? null : parts[1]);
        }
    }

    /** A value for one input that cannot be taken. */
    record Slip(String name, String key, String value) {
    }

    /** What a run left behind. */
    private record Ran(int code, String out, String err) {
    }

    static Stream<Promise> contract() throws IOException {
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                ContractTest.class.getResourceAsStream("/contract/calculations.csv"), StandardCharsets.UTF_8))) {
            return lines.lines().skip(2).map(Promise::of).toList().stream();
        }
    }

    static Stream<Promise> requiringInputs() throws IOException {
        return contract().filter(promise -> promise.inputs().stream().anyMatch(Input::required));
    }

    /** Texts that no input of the calculations takes: luminous intensity, a word, nothing, two numbers. */
    static Stream<Slip> slips() throws IOException {
        List<Slip> slips = new ArrayList<>();
        for (Promise promise : contract().toList()) {
            for (Input input : promise.inputs()) {
                for (String value : List.of("3 cd", "plenty", "", "1, 2 cd")) {
                    slips.add(new Slip(promise.name(), input.key(), value));
                }
            }
        }
        return slips.stream();
    }

    @Test
    void the_list_names_every_promised_calculation_and_no_other() throws IOException {
        assertThat(LISTED).extracting(entry -> entry.get("name"))
                .containsExactlyElementsOf(contract().map(Promise::name).toList());
    }

    @ParameterizedTest
    @MethodSource("contract")
    void the_list_shows_the_promised_inputs_usual_values_outputs_and_units(Promise promise) {
        Map<String, Object> entry = entry(promise.name());
        assertThat(inputs(entry).stream().map(input -> new Input((String) input.get("key"),
                (boolean) input.get("required"), (String) input.get("usual"))).toList()).isEqualTo(promise.inputs());
        Map<String, String> outputs = new LinkedHashMap<>();
        maps(entry.get("outputs")).forEach(output -> outputs.put((String) output.get("key"),
                (String) output.get("unit")));
        assertThat(outputs).isEqualTo(promise.outputs());
        String text = run("calculate").out();
        assertThat(text.lines()).contains(promise.name());
        promise.inputs().forEach(input -> assertThat(text).contains("    " + input.key() + "=…"));
    }

    @ParameterizedTest
    @MethodSource("contract")
    void every_output_is_a_number_in_the_promised_unit_or_is_withheld_with_a_reason(Promise promise) {
        Map<String, Object> result = json(run(words(promise.name(), examples(promise), "--format", "json")).out());
        Map<String, String> told = new LinkedHashMap<>();
        for (Map<String, Object> figure : maps(result.get("figures"))) {
            assertThat(figure.keySet()).containsExactly("id", "label", "value", "low", "high", "unit", "formula",
                    "inputs", "sources");
            assertThat(List.of(figure.get("value"), figure.get("low"), figure.get("high")))
                    .allSatisfy(value -> assertThat(value).as("%s", figure.get("id")).isInstanceOf(Number.class));
            told.put((String) figure.get("id"), (String) figure.get("unit"));
        }
        for (Map<String, Object> withheld : maps(result.get("withheld"))) {
            assertThat((String) withheld.get("why")).isNotBlank();
            told.put((String) withheld.get("id"), promise.outputs().get(withheld.get("id")));
        }
        // Readings keep their own unit: the promise leaves that of a mean change open.
        assertThat(told).containsOnlyKeys(promise.outputs().keySet());
        assertThat(promise.outputs()).allSatisfy((key, unit) -> assertThat(told.get(key)).as(key).isEqualTo(unit));
    }

    @ParameterizedTest
    @MethodSource("contract")
    void an_unknown_key_ends_with_2_and_says_which_keys_there_are(Promise promise) {
        Map<String, String> inputs = new LinkedHashMap<>(examples(promise));
        inputs.put("qwertyuiop", "3");
        Ran ran = run(words(promise.name(), inputs));
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("'qwertyuiop'");
        promise.inputs().forEach(input -> assertThat(ran.err()).contains(input.key()));
        assertThat(ran.out()).isEmpty();
    }

    @Test
    void an_unknown_name_ends_with_2_and_says_which_names_there_are() throws IOException {
        Ran ran = run("calculate", "qwertyuiop", "temperature=20 °C");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(contract()).allSatisfy(promise -> assertThat(ran.err()).contains(promise.name()));
        assertThat(ran.out()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("requiringInputs")
    void a_missing_value_ends_with_1_and_names_what_is_allowed_and_where_that_comes_from(Promise promise) {
        for (Input input : promise.inputs()) {
            if (input.required()) {
                Map<String, String> inputs = new LinkedHashMap<>(examples(promise));
                inputs.remove(input.key());
                assertTold(run(words(promise.name(), inputs)), promise.name(), input.key());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("slips")
    void a_wrong_unit_word_or_value_ends_with_1_and_names_what_is_allowed_and_where_that_comes_from(Slip slip)
            throws IOException {
        Promise promise = contract().filter(one -> one.name().equals(slip.name())).findFirst().orElseThrow();
        Map<String, String> inputs = new LinkedHashMap<>(examples(promise));
        inputs.put(slip.key(), slip.value());
        assertTold(run(words(slip.name(), inputs)), slip.name(), slip.key());
    }

    /** Nothing on the way out but one message: the input, the ends of its range or its words, and their source. */
    private static void assertTold(Ran ran, String name, String key) {
        Map<String, Object> input = inputs(entry(name)).stream().filter(one -> one.get("key").equals(key)).findFirst()
                .orElseThrow();
        assertThat(ran.code()).as(ran.err()).isEqualTo(1);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err().lines()).singleElement().satisfies(line -> {
            assertThat(line).startsWith("calculate: error: " + key).contains("allowed is ");
            assertThat((String) input.get("source")).isNotBlank();
            assertThat(line).contains("(" + input.get("source") + ")");
            for (String end : List.of("low", "high")) {
                Optional.ofNullable((Number) input.get(end)).ifPresent(number -> assertThat(line).contains(
                        number.doubleValue() == Math.rint(number.doubleValue()) ? String.valueOf(number.longValue())
                                : number.toString()));
            }
            assertThat((List<?>) input.get("words")).allSatisfy(word -> assertThat(line).contains((String) word));
        });
    }

    /** Values that work: the examples of the list, without the one of a pair that shuts the other out. */
    private static Map<String, String> examples(Promise promise) {
        Map<String, String> examples = new LinkedHashMap<>();
        inputs(entry(promise.name())).forEach(input ->
                examples.put((String) input.get("key"), (String) input.get("example")));
        // A strength by volume or by mass; for % m/v, the volume and neither a mass nor a molar mass.
        switch (promise.name()) {
            case "ethanol-density" -> examples.remove("mass-fraction");
            case "dissolving" -> examples.keySet().removeAll(List.of("mass", "molar-mass"));
            default -> { }
        }
        return examples;
    }

    private static Map<String, Object> entry(String name) {
        return LISTED.stream().filter(one -> one.get("name").equals(name)).findFirst().orElseThrow();
    }

    private static List<Map<String, Object>> inputs(Map<String, Object> entry) {
        return maps(entry.get("inputs"));
    }

    @SuppressWarnings("unchecked")
    private static List<Map<String, Object>> maps(Object list) {
        return (List<Map<String, Object>>) list;
    }

    /** JSON is read as YAML, of which it is a part. */
    @SuppressWarnings("unchecked")
    private static Map<String, Object> json(String text) {
        return (Map<String, Object>) new Yaml(new SafeConstructor(new LoaderOptions())).load(text);
    }

    private static String[] words(String name, Map<String, String> inputs, String... more) {
        return Stream.of(Stream.of("calculate", name),
                inputs.entrySet().stream().map(input -> input.getKey() + "=" + input.getValue()), Stream.of(more))
                .flatMap(each -> each).toArray(String[]::new);
    }

    private static Ran run(String... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Main.run(new PrintWriter(out), new PrintWriter(err), words);
        return new Ran(code, out.toString(), err.toString());
    }
}
