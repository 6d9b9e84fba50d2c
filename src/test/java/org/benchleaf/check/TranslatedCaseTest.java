package org.benchleaf.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.benchleaf.derive.Deriver;
import org.benchleaf.model.CaseTexts;
import org.benchleaf.model.Library;
import org.benchleaf.model.Step;
import org.benchleaf.model.Translation;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.LibraryReader;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A case told in another language has other words and nothing else: its numbers, ids and order are those of the case. */
class TranslatedCaseTest {

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
            assertThat(told.steps()).extracting(Step::parts).isEqualTo(translatedCase.steps().stream().map(Step::parts).toList());
            assertThat(told.steps()).extracting(Step::takes).isEqualTo(translatedCase.steps().stream().map(Step::takes).toList());
            assertThat(told.object().size()).isEqualTo(translatedCase.object().size());
            assertThat(told.results()).isEqualTo(translatedCase.results());
            assertThat(told.publication()).isEqualTo(translatedCase.publication());
        }
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
