package org.benchleaf.compose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.benchleaf.model.StepKind;
import org.junit.jupiter.api.Test;

/** Holds the files of words against the code that asks for them and against each other. */
class WordsTest {

    private static final Path FOLDER = Path.of("src/main/resources/words");
    private static final Path SOURCES = Path.of("src/main/java/org/benchleaf/compose");
    private static final Pattern SAID = Pattern.compile("\\bsay\\(\\s*\"([a-zA-Z0-9.-]+)\"");
    private static final Pattern COUNTED = Pattern.compile("\\bcount\\(\\s*\"([a-zA-Z0-9.-]+)\"");
    private static final Pattern GROUPED = Pattern.compile("\\bgroup\\(\"([a-zA-Z0-9.-]+)\"\\)");

    private static Properties read(Path file) throws IOException {
        Properties words = new Properties();
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            words.load(reader);
        }
        return words;
    }

    private static List<String> asked(Pattern pattern) throws IOException {
        TreeSet<String> keys = new TreeSet<>();
        try (Stream<Path> files = Files.list(SOURCES)) {
            for (Path file : files.filter(path -> path.toString().endsWith(".java")).toList()) {
                Matcher matcher = pattern.matcher(Files.readString(file));
                while (matcher.find()) {
                    // A key that ends in a hyphen or dot is finished by the program: see the tests of those pages.
                    if (!matcher.group(1).matches(".*[.-]")) {
                        keys.add(matcher.group(1));
                    }
                }
            }
        }
        return List.copyOf(keys);
    }

    @Test
    void every_key_that_the_program_asks_for_is_there() throws IOException {
        Words english = Words.in("en");
        assertThat(asked(SAID)).isNotEmpty().allMatch(english::has);
        assertThat(asked(COUNTED)).isNotEmpty().allMatch(key -> english.has(key + ".one") && english.has(key + ".other"));
        assertThat(asked(GROUPED)).isNotEmpty().allSatisfy(group -> assertThat(english.group(group)).isNotEmpty());
    }

    @Test
    void every_kind_of_step_and_of_page_has_a_name() {
        Words english = Words.in("en");
        assertThat(StepKind.values()).allSatisfy(kind ->
                assertThat(english.has("step-kind." + kind.word().replace(' ', '-'))).as(kind.word()).isTrue());
        assertThat(PageMakers.CASE).allSatisfy(page -> assertThat(english.has("case-page." + page.name().kind())).isTrue());
        assertThat(PageMakers.SITE).allSatisfy(page -> assertThat(english.has("way." + page.name().kind())).isTrue());
        assertThat(Facets.values()).allSatisfy(facet -> {
            assertThat(english.has("browse.by-" + facet.word())).isTrue();
        });
    }

    @Test
    void every_language_has_every_key_and_no_other() throws IOException {
        Properties english = read(FOLDER.resolve("interface_en.properties"));
        try (Stream<Path> files = Files.list(FOLDER)) {
            for (Path file : files.toList()) {
                assertThat(read(file).keySet()).as(file.toString())
                        .containsExactlyInAnyOrderElementsOf(english.keySet());
            }
        }
    }

    @Test
    void a_language_without_words_of_its_own_gets_the_english_ones() {
        assertThat(Words.in("tlh").language()).isEqualTo("en");
        assertThat(Words.in("en-ZA").say("way.library")).isEqualTo("Cases");
    }

    @Test
    void a_missing_key_and_an_open_hole_stop_the_program() {
        assertThatThrownBy(() -> Words.in("en").say("no.such-key")).hasMessageContaining("no.such-key");
        assertThatThrownBy(() -> Words.in("en").say("size", "height", "1")).hasMessageContaining("{width}");
    }
}
