package org.benchleaf.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.benchleaf.message.Message;
import org.benchleaf.message.MessageText;
import org.benchleaf.message.Messages;
import org.benchleaf.model.Confidential;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class YamlFileTest {

    private final Messages messages = new Messages();

    /** The values that YAML 1.1 (yaml.org/type, 2005) turns into booleans, base-60 numbers, octals and days. */
    @ParameterizedTest
    @ValueSource(strings = {"no", "Yes", "on", "012", "1:30", "190:20:30", "2026-01-02", "1_000", "0x1F", "~", "1e3", ".5"})
    void a_value_stays_what_was_written(String written) {
        assertThat(scalar("key: " + written, "key").text()).isEqualTo(written);
        assertThat(messages.isEmpty()).isTrue();
    }

    @Test
    void places_count_lines_columns_and_pointers_of_keys_and_values() {
        Node.Mapping root = read("a:\r\n  - {b/c: d}\r\n");
        Node.Mapping inner = (Node.Mapping) ((Node.Sequence) root.get("a").orElseThrow()).items().get(0);
        Node.Entry entry = inner.entries().get("b/c");
        assertThat(entry.keyPlace()).extracting("line", "column", "length", "pointer").containsExactly(2, 6, 3, "/a/0/b~1c");
        assertThat(entry.value().place()).extracting("line", "column", "length").containsExactly(2, 11, 1);
    }

    @Test
    void places_are_right_behind_letters_outside_the_basic_plane() {
        Node.Scalar value = scalar("\"😀\": x\nkey: \"😀😀\"\nlast: end", "last");
        assertThat(value.place()).extracting("line", "column").containsExactly(3, 7);
    }

    @Test
    void many_faults_are_told_at_once() {
        read("a: &x 1\nb: *x\na: !int 2\n? [c]\n: 3\n");
        assertThat(codes()).containsExactly("READ-013", "READ-013", "READ-012", "READ-014", "READ-015");
    }

    @Test
    void nesting_to_the_limit_is_read_and_one_more_is_refused() {
        read("a: " + "[".repeat(31) + "x" + "]".repeat(31));
        assertThat(messages.isEmpty()).isTrue();
        read("a: " + "[".repeat(32) + "x" + "]".repeat(32));
        assertThat(codes()).containsExactly("READ-011");
    }

    @Test
    void thirty_thousand_brackets_end_in_a_message() {
        read("a: " + "[".repeat(30_000));
        assertThat(codes()).containsExactly("READ-011");
    }

    @Test
    void what_is_not_yaml_is_told_in_our_own_words_with_a_remedy() {
        Map<String, String> slips = Map.of("a: b: c", "double quotes", "a:\n\tb: c", "tab", "a: [b", "]", "a: {b: c",
                "}", "a: \"b", "quote", "a: %b", "double quotes", "a: 'b'\n  c: d", "ndent");
        slips.forEach((yaml, remedy) -> {
            Messages told = new Messages();
            YamlFile.read(new TextFile("f.yaml", yaml), 0, yaml.length(), told);
            assertThat(told.all()).as(yaml).hasSize(1);
            assertThat(told.all().get(0).what() + told.all().get(0).fix()).as(yaml).contains(remedy)
                    .doesNotContain("expected <", "mapping values", "while ");
        });
    }

    @Test
    void private_values_are_sealed_and_leave_no_trace_in_tree_or_messages() {
        String yaml = "object:\n  kind: letter\n  private:\n    owner: Halcyon Voss\n    people: [Ines O., \n      Tam L.]\n"
                + "    note: |\n      kept in\n      the strongroom\n  kind: map\n";
        YamlFile file = YamlFile.read(new TextFile("case.md", yaml), 0, yaml.length(), messages);
        assertThat(file.confidential().secrets()).extracting(Confidential.Secret::field, Confidential.Secret::value)
                .map(Object::toString).containsExactly("(\"owner\", \"Halcyon Voss\")", "(\"people\", \"Ines O.\")",
                        "(\"people\", \"Tam L.\")", "(\"note\", \"kept in\nthe strongroom\")");
        assertThat(file.root().orElseThrow().toString() + file.confidential()
                + messages.all().stream().map(MessageText::of).collect(Collectors.joining())
                + shown(file)).doesNotContain("Halcyon", "Voss", "Ines", "Tam", "kept in", "strongroom");
        assertThat(codes()).containsExactly("READ-012");
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "steps:\n  - id: one\n    provenance: \"Col. Hubert Strickenden, by descent\"\n    do: {x\n",
        "steps:\n  - id: one\n    provenance: \"Col. Hubert Strickenden,\n      by descent\"\n    do: wash\n    do: dry\n",
        "steps: [{id: one, owner: {family: Strickenden, given: Hubert}, do: wash, do: dry}]\n",
        "private:\n  owner:\n    - Hubert Strickenden\n  owner: [\n",
    })
    void what_stands_under_a_private_key_is_quoted_nowhere(String yaml) {
        YamlFile.read(new TextFile("case.md", yaml), 0, yaml.length(), messages);
        assertThat(messages.all()).isNotEmpty().allSatisfy(message -> {
            assertThat(MessageText.of(message)).doesNotContain("Strickenden", "Hubert", "descent");
            for (int line = 1; line <= 8; line++) {
                assertThat(message.place().text().line(line)).doesNotContain("Strickenden", "Hubert", "descent");
            }
        });
    }

    private static String shown(YamlFile file) {
        StringBuilder shown = new StringBuilder();
        for (int line = 1; line <= 12; line++) {
            shown.append(file.root().orElseThrow().place().text().line(line)).append('\n');
        }
        return shown.toString();
    }

    private Node.Mapping read(String yaml) {
        return YamlFile.read(new TextFile("f.yaml", yaml), 0, yaml.length(), messages).root()
                .orElse(new Node.Mapping(Map.of(), org.benchleaf.message.Place.file("f.yaml")));
    }

    private Node.Scalar scalar(String yaml, String key) {
        return (Node.Scalar) read(yaml).get(key).orElseThrow();
    }

    private List<String> codes() {
        return messages.all().stream().map(Message::code).toList();
    }
}
