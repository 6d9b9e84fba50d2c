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
import org.junit.jupiter.api.Test;

/** A case told in another language has other words and nothing else: its numbers, ids and order are those of the case. */
class TranslatedCaseTest {

    private static final Path CONTENT = Path.of("content");
    private static final TreatmentCase CASE = read();

    private static TreatmentCase read() {
        Library library = LibraryChecker.check(LibraryReader.read(CONTENT)).library();
        return CaseChecker.check(CaseReader.read(CONTENT, CONTENT.resolve("cases/tide-table")), library,
                LocalDate.of(2026, 11, 25), new Deriver(library)::ph).treatment().orElseThrow();
    }

    @Test
    void the_demo_has_every_text_of_the_tide_table_in_each_language() {
        assertThat(CASE.translations()).extracting(Translation::language).containsExactlyInAnyOrder("fr", "cy", "ar");
        assertThat(CASE.translations()).allSatisfy(translation -> {
            assertThat(translation.texts().keySet()).containsExactlyInAnyOrderElementsOf(CaseTexts.of(CASE).keySet());
            assertThat(translation.outdated()).isEmpty();
            assertThat(translation.story().sections()).hasSameSizeAs(CASE.story().sections());
        });
    }

    @Test
    void the_words_are_those_of_the_translation_and_the_numbers_those_of_the_case() {
        for (Translation translation : CASE.translations()) {
            TreatmentCase told = CaseTexts.in(translation, CASE);
            assertThat(CaseTexts.of(told)).containsExactlyInAnyOrderEntriesOf(translation.texts());
            assertThat(told.steps()).extracting(Step::id).isEqualTo(CASE.steps().stream().map(Step::id).toList());
            assertThat(told.steps()).extracting(Step::parts).isEqualTo(CASE.steps().stream().map(Step::parts).toList());
            assertThat(told.steps()).extracting(Step::takes).isEqualTo(CASE.steps().stream().map(Step::takes).toList());
            assertThat(told.object().size()).isEqualTo(CASE.object().size());
            assertThat(told.results()).isEqualTo(CASE.results());
            assertThat(told.publication()).isEqualTo(CASE.publication());
        }
    }

    @Test
    void a_text_whose_words_were_changed_since_stays_in_the_language_of_the_case() {
        Translation whole = CASE.translations().get(0);
        Translation outdated = new Translation(whole.language(), whole.texts(), List.of("title"), whole.marks(), whole.of(),
                whole.story(), whole.place());
        assertThat(CaseTexts.in(outdated, CASE).title()).isEqualTo(CASE.title());
        assertThat(CaseTexts.in(outdated, CASE).summary()).isEqualTo(whole.texts().get("summary"));
    }

    /** FIPS 180-4: the SHA-256 of "abc" begins with ba7816bf. */
    @Test
    void the_mark_of_a_text_is_the_beginning_of_its_hash() {
        assertThat(CaseTexts.mark("abc")).isEqualTo("ba7816bf");
    }
}
