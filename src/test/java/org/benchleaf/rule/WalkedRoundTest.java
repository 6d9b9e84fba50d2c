package org.benchleaf.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.benchleaf.check.Checked;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.representer.Representer;
import org.yaml.snakeyaml.resolver.Resolver;

/** Treatments that try to walk round a rule: what is not known, said twice, or called by another name is asked all the same. */
class WalkedRoundTest {

    private static final Path ROWS = Path.of("src/test/resources/walked-round/treatments.yaml");

    private static Bench bench;

    @BeforeAll
    static void setUp(@TempDir Path folder) {
        bench = new Bench(folder);
    }

    @SuppressWarnings("unchecked")
    static Stream<Arguments> rows() throws IOException {
        return ((List<Map<String, Object>>) asWritten().load(Files.readString(ROWS))).stream()
                .map(row -> Arguments.of(row.get("try"), row));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    @SuppressWarnings("unchecked")
    void a_treatment_walks_round_no_rule(String name, Map<String, Object> row) {
        Checked checked = bench.check(Variation.of((List<String>) row.getOrDefault("on", List.of()), asWritten().dump(row.get("change"))));

        assertThat(Bench.otherErrors(checked)).isEmpty();
        List<String> spoken = Bench.spoken(checked);
        assertThat(spoken).containsAll((List<String>) row.getOrDefault("asks", List.of()));
        assertThat(spoken).doesNotContainAnyElementsOf((List<String>) row.getOrDefault("silent", List.of("-")));
    }

    static Stream<String> results() throws IOException {
        return Files.readAllLines(ROWS.resolveSibling("results.txt")).stream().filter(line -> !line.startsWith("#"));
    }

    @ParameterizedTest
    @MethodSource("results")
    void a_result_that_does_not_plainly_say_no_change_does_not_pass(String result) {
        Checked checked = bench.check(Variation.of(List.of(), asWritten().dump(Map.of("tests", List.of(
                Map.of("of", "text", "with", "bath", "dwell", "60 min", "result", result),
                Map.of("of", "text", "with", "paste", "dwell", "30 min", "result", "stable"))))));

        List<String> spoken = Bench.spoken(checked);
        assertThat(!Bench.otherErrors(checked).isEmpty() || spoken.contains("bleeding-blocks-liquid")
                || spoken.contains("every-liquid-tested")).as("%s %s", result, checked.messages().all()).isTrue();
    }

    @Test
    void every_row_expects_something() throws IOException {
        assertThat(rows().map(one -> one.get()[1])).allSatisfy(row -> assertThat(((Map<?, ?>) row).keySet().stream().map(String::valueOf))
                .containsAnyOf("asks", "silent"));
    }

    /** YAML in which every single value stays the text that was written. */
    private static Yaml asWritten() {
        DumperOptions dumping = new DumperOptions();
        dumping.setWidth(200);
        LoaderOptions loading = new LoaderOptions();
        return new Yaml(new SafeConstructor(loading), new Representer(dumping), dumping, loading, new Resolver() {
            @Override
            protected void addImplicitResolvers() {
                // None: "no" stays "no".
            }
        });
    }
}
