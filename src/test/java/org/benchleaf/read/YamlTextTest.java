package org.benchleaf.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.benchleaf.message.Messages;
import org.benchleaf.message.SourceText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written is what is read: YAML 1.1 and 1.2.2, chapter 7.3, tell which words need quotes. */
class YamlTextTest {

    private static final String SIGNS = "abz ÄжبΩ字019 ,:;#-?!&*|>'\"%@`{}[]()/\\.~=<+_\t\n\u00a0\u2028\u0085\u200f😀";

    @ParameterizedTest
    @ValueSource(strings = {"wheat starch paste", "4.5 % m/v", "1:8", "on", "2 × 20 min", "a: b", "it's", "«papier»", "7.2 ± 0.1"})
    void words_that_mean_themselves_stand_bare_behind_a_key(String words) {
        assertThat(YamlText.onLine(words).equals(words)).isEqualTo(!words.contains(": "));
    }

    @Test
    void a_comma_needs_quotes_within_braces_alone() {
        assertThat(YamlText.onLine("soft, brown")).isEqualTo("soft, brown");
        assertThat(YamlText.inBraces("soft, brown")).isEqualTo("\"soft, brown\"");
    }

    @ParameterizedTest
    @MethodSource("texts")
    void every_text_is_read_as_it_was_given(String words) {
        assertThat(read("key: " + YamlText.onLine(words) + "\nnext: end")).isEqualTo(words);
        assertThat(read("key: {inner: " + YamlText.inBraces(words) + ", next: end}")).isEqualTo(words);
        assertThat(read("key: [" + YamlText.inBraces(words) + "]")).isEqualTo(words);
        assertThat(YamlText.onLine(words) + YamlText.inBraces(words)).doesNotContain("\n");
    }

    static Stream<String> texts() {
        Random random = new Random(7);
        Stream<String> byChance = Stream.generate(() -> random.ints(random.nextInt(9), 0, SIGNS.codePointCount(0, SIGNS.length()))
                .map(at -> SIGNS.codePoints().toArray()[at])
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString()).limit(500);
        return Stream.concat(List.of("", " ", "- a", "? a", "a #b", "a:", "\"", "'", "%", "@b", "no", "null", "~", "<<", "=", "---", "...",
                "a\\b", "ends in a blank ", " begins with one", "two  blanks", "one\ntwo\n", "[x]", "{x}").stream(), byChance);
    }

    private static String read(String yaml) {
        Messages messages = new Messages();
        Lines lines = new Lines(new SourceText("case.md", yaml), yaml);
        Node.Mapping root = (Node.Mapping) YamlReader.events(yaml, 0, lines, messages)
                .flatMap(events -> YamlReader.tree(events, lines, messages)).orElseThrow();
        Node value = root.get("key").orElseThrow();
        Node inner = value instanceof Node.Mapping group ? group.get("inner").orElseThrow()
                : value instanceof Node.Sequence list ? list.items().get(0) : value;
        return ((Node.Scalar) inner).text();
    }
}
