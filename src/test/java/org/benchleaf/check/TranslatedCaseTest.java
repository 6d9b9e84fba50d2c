package org.benchleaf.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.benchleaf.derive.Deriver;
import org.benchleaf.model.CaseTexts;
import org.benchleaf.model.Library;
import org.benchleaf.model.Result;
import org.benchleaf.model.Step;
import org.benchleaf.model.Translation;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.LibraryReader;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A case told in another language has other words and nothing else: its numbers, ids and order are those of the case. */
class TranslatedCaseTest {

    /** What of results, of parts of steps and of versions is words. */
    private static final String WORDS = "(?:.*\\.)?(?:method|places|at|because|note|colour|changed)(?:\\..*)?";

    private static TreatmentCase translatedCase;

    /** The demo's tide table with its three other languages. */
    @BeforeAll
    static void read() {
        Path content = Path.of("content");
        Library library = LibraryChecker.check(LibraryReader.read(content)).library();
        translatedCase = CaseChecker.check(CaseReader.read(content, content.resolve("cases/tide-table")), library,
                LocalDate.of(2026, 11, 25), new Deriver(library)::ph).treatment().orElseThrow();
    }

    @Test
    void the_tide_table_has_every_text_in_each_language() {
        assertThat(translatedCase.translations()).extracting(Translation::language).containsExactlyInAnyOrder("fr", "cy", "ar");
        assertThat(translatedCase.translations()).allSatisfy(translation -> {
            assertThat(translation.texts().keySet()).containsExactlyInAnyOrderElementsOf(CaseTexts.of(translatedCase).keySet());
            assertThat(translation.outdated()).isEmpty();
            assertThat(translation.story().sections()).hasSameSizeAs(translatedCase.story().sections());
        });
    }

    @Test
    void the_words_are_those_of_the_translation_and_the_numbers_those_of_the_case() {
        for (Translation translation : translatedCase.translations()) {
            TreatmentCase told = CaseTexts.in(translation, translatedCase);
            assertThat(CaseTexts.of(told)).containsExactlyInAnyOrderEntriesOf(translation.texts());
            assertThat(told.steps()).extracting(Step::id).isEqualTo(translatedCase.steps().stream().map(Step::id).toList());
            assertThat(told.steps().stream().map(Step::parts).toList()).usingRecursiveComparison().ignoringFieldsMatchingRegexes(WORDS)
                    .isEqualTo(translatedCase.steps().stream().map(Step::parts).toList());
            assertThat(told.steps()).extracting(Step::takes).isEqualTo(translatedCase.steps().stream().map(Step::takes).toList());
            assertThat(told.object().size()).isEqualTo(translatedCase.object().size());
            assertThat(measured(told)).usingRecursiveComparison().ignoringFieldsMatchingRegexes(WORDS).isEqualTo(measured(translatedCase));
            assertThat(told.results()).extracting(result -> result.measure().word())
                    .isEqualTo(translatedCase.results().stream().map(result -> result.measure().word()).toList());
            assertThat(told.publication()).usingRecursiveComparison().ignoringFieldsMatchingRegexes(WORDS)
                    .isEqualTo(translatedCase.publication());
        }
    }

    /** The results that are more than words. */
    private static List<Result> measured(TreatmentCase treatment) {
        return treatment.results().stream().filter(result -> !(result instanceof Result.Words)).toList();
    }

    @Test
    void a_look_at_a_time_whose_translation_does_not_end_in_it_stays_in_the_words_of_the_case() {
        Translation french = translatedCase.translations().stream().filter(one -> one.language().equals("fr")).findFirst().orElseThrow();
        String address = CaseTexts.of(translatedCase).entrySet().stream().filter(text -> text.getValue().equals("colour at 5 min"))
                .findFirst().orElseThrow().getKey();
        assertThat(looks(french, address, "couleur à 5 min")).contains("couleur à 5 min").doesNotContain("colour at 5 min");
        assertThat(looks(french, address, "à 5 min, la couleur")).contains("colour at 5 min").doesNotContain("à 5 min, la couleur");
    }

    private static List<String> looks(Translation translation, String address, String words) {
        Map<String, String> texts = new HashMap<>(translation.texts());
        texts.put(address, words);
        return CaseTexts.in(new Translation(translation.language(), texts, List.of(), translation.marks(), translation.of(),
                translation.story(), translation.phrases(), translation.place()), translatedCase).steps().stream()
                .flatMap(step -> step.checks().stream()).toList();
    }

    @Test
    void a_text_whose_words_were_changed_since_stays_in_the_language_of_the_case() {
        Translation whole = translatedCase.translations().get(0);
        Translation outdated = new Translation(whole.language(), whole.texts(), List.of("title"), whole.marks(), whole.of(),
                whole.story(), whole.phrases(), whole.place());
        assertThat(CaseTexts.in(outdated, translatedCase).title()).isEqualTo(translatedCase.title());
        assertThat(CaseTexts.in(outdated, translatedCase).summary()).isEqualTo(whole.texts().get("summary"));
    }

    /** FIPS 180-4: the SHA-256 of "abc" begins with ba7816bf. */
    @Test
    void the_mark_of_a_text_is_the_beginning_of_its_hash() {
        assertThat(CaseTexts.mark("abc")).isEqualTo("ba7816bf");
    }
}
