package org.benchleaf.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.benchleaf.model.TestResult;
import org.benchleaf.model.TestWords;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How the words of conservators for the results of spot tests are read. What belongs to which group is common practice,
 * no source; that a slight transfer counts against a liquid is from memory.
 */
class TestWordsTest {

    private static final TestWords WORDS = TestWordsReader.read();

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "stable|NO_CHANGE", "Stable.|NO_CHANGE", "no bleed|NO_CHANGE", "does not bleed|NO_CHANGE",
        "did not run|NO_CHANGE", "no colour on the swab|NO_CHANGE", "no feathering|NO_CHANGE",
        "not soluble|NO_CHANGE", "without transfer|NO_CHANGE", "does not soften|NO_CHANGE",
        "slight transfer|SOME_CHANGE", "slightly soluble|SOME_CHANGE", "bleeds slightly|SOME_CHANGE",
        "faint feathering|SOME_CHANGE", "borderline|SOME_CHANGE", "±|SOME_CHANGE",
        "bleeds|CHANGE", "runs|CHANGE", "feathers|CHANGE", "softens|CHANGE", "swells|CHANGE", "colour change|CHANGE",
        "tideline|CHANGE", "comes off on the swab|CHANGE", "not stable|CHANGE", "no longer stable|CHANGE",
        "not fast|CHANGE", "not unchanged|CHANGE", "unchanged|NO_CHANGE", "does not hold|CHANGE",
        "not tested|NOT_TESTED", "n/t|NOT_TESTED", "not permitted|NOT_TESTED",
        "not known|NOT_KNOWN", "?|NOT_KNOWN", "inconclusive|NOT_KNOWN", "unknown|NOT_KNOWN",
    })
    void the_trades_words_are_read_in_their_group(String written, TestResult.Group group) {
        assertThat(WORDS.of("bath", Optional.empty()).read(written)).map(TestResult::group).contains(group);
    }

    @ParameterizedTest
    @CsvSource({"fine", "good", "ok", "stable but bleeds", "no change at first and bleeds later", "passed?", "safe",
        "not quite stable and not quite fast", "looks all right"})
    void anything_else_is_no_result(String written) {
        assertThat(WORDS.of("bath", Optional.empty()).read(written)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "iron(II) strip|negative|none", "iron(II) strip|positive|strong", "iron(II) strip|faint|weak",
        "iron(II) strip|unknown|not known", "absorption drop|beads|stands", "absorption drop|absorbs slowly|takes in",
    })
    void an_indicator_has_words_of_its_own(String indicator, String written, String word) {
        assertThat(WORDS.of(indicator, Optional.empty()).read(written)).map(TestResult::word).contains(word);
    }

    @Test
    void no_word_stands_for_two_things_in_one_set() {
        for (TestWords.WordSet set : WORDS.sets()) {
            List<String> all = set.words().stream().flatMap(word -> java.util.stream.Stream.concat(
                    java.util.stream.Stream.of(word.word()), word.also().stream())).toList();
            assertThat(all).as(set.name()).doesNotHaveDuplicates();
        }
    }

    @Test
    void the_schema_of_the_case_names_every_word_with_its_meaning_and_every_indicator() throws IOException {
        String schema = Files.readString(Path.of("src/main/resources/schema/case.schema.json"));
        for (TestWords.WordSet set : WORDS.sets()) {
            assertThat(set.words()).allSatisfy(word -> {
                assertThat(schema).contains('"' + word.word() + '"');
                assertThat(schema).contains(word.word() + " (" + word.means() + ")");
            });
        }
        assertThat(WORDS.indicators()).allSatisfy(indicator -> assertThat(schema).contains('"' + indicator + '"'));
    }
}
