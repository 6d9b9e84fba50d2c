package org.benchleaf.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.benchleaf.ChangedContent;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.read.LibraryReader;
import org.benchleaf.read.StudioWordsFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A studio's own words in a language are begun, follow its files, and none is lost; what is expected is what the test itself wrote. */
class StudioTranslationTest extends TranslatingStudio {

    private Path file;

    @BeforeEach
    void the_file() {
        file = content.resolve("words.fr.yaml");
    }

    private String translated() throws IOException {
        done(new TranslationCommand(), "--studio", "fr");
        return Files.readString(file);
    }

    private String shown(String text) {
        return LibraryChecker.check(LibraryReader.read(content)).library().translations().get("fr").of(text);
    }

    @Test
    void a_skeleton_holds_every_text_of_the_studio_once_and_passes() throws IOException {
        assertThat(translated()).contains("#: materials\nEthanol, 96 % v/v: \"\"\n"
                        + "Strong alcohol. It lets water spread evenly and dries quickly.: \"\"\n"
                        + "closed, in the solvent cabinet: \"\"\nDeionised water: \"\"\n", "\nbuffered: \"\"\n",
                "#: classes/spring\nWashing a brittle sheet: \"\"\n", "#: glossary\ntideline: \"\"\n",
                "\nA brown edge where wet paper once met dry.: \"\"\n", "#: studio\n", "\nlarge tray: \"\"\n").doesNotContain("made from:");
        assertThat(out.toString()).contains("Written: ", " texts of the studio 0 translated, ", " 0 changed since.");
        assertThat(check()).contains("words.fr.yaml: of ").doesNotContain("error ", "warning ", "FORM-15");
        String skeleton = Files.readString(file);
        assertThat(translated()).isEqualTo(skeleton);
        assertThat(out.toString()).contains("Up to date: ");
    }

    @Test
    void a_text_that_was_changed_keeps_its_words_and_both_wordings_until_they_are_compared() throws IOException {
        translated();
        change(file, "Wool felt: \"\"", "# le plus épais\nWool felt: Feutre de laine");
        translated();
        assertThat(out.toString()).contains(" 1 translated, ");
        change(content.resolve("materials/papers.yaml"), "name: Wool felt", "name: Wool felt, 3 mm");
        assertThat(check()).contains("FORM-151");
        assertThat(translated()).contains("# le plus épais\n#en before: Wool felt\nWool felt, 3 mm: Feutre de laine\n");
        String compared = translated();
        assertThat(check()).contains("advice FORM-152", " 0 translated, ", " 1 changed since").doesNotContain("FORM-151");
        assertThat(shown("Wool felt, 3 mm")).isEqualTo("Wool felt, 3 mm");
        change(content.resolve("materials/papers.yaml"), "name: Wool felt, 3 mm", "name: Wool felt, 4 mm");
        assertThat(translated()).isEqualTo(compared.replace("3 mm", "4 mm"));
        change(file, "#en before: Wool felt\nWool felt, 4 mm: Feutre de laine", "Wool felt, 4 mm: Feutre de laine, 4 mm");
        translated();
        assertThat(check()).contains(" 1 translated, ", " 0 changed since").doesNotContain("FORM-15");
        assertThat(shown("Wool felt, 4 mm")).isEqualTo("Feutre de laine, 4 mm");
    }

    @Test
    void a_text_that_is_changed_back_has_its_words_again() throws IOException {
        translated();
        change(file, "Wool felt: \"\"", "Wool felt: Feutre de laine");
        String before = translated();
        change(content.resolve("materials/papers.yaml"), "name: Wool felt", "name: Thick felt");
        translated();
        change(content.resolve("materials/papers.yaml"), "name: Thick felt", "name: Wool felt");
        assertThat(translated()).isEqualTo(before);
    }

    @Test
    void words_of_a_text_that_was_taken_out_are_kept_and_come_back_with_it() throws IOException {
        translated();
        change(file, "washing: \"\"", "# à relire\nwashing: 'lavage : \"bain\"'");
        String before = translated();
        String term = "washing:\n  term: washing\n  plain: Bathing a sheet in water.\n";
        change(content.resolve("glossary.yaml"), "  see: [washing]\n", "");
        change(content.resolve("glossary.yaml"), term, "");
        String kept = translated();
        assertThat(kept).contains("\nno longer said:\n# à relire\n- was: washing\n  words: \"lavage : \\\"bain\\\"\"\n");
        assertThat(translated()).isEqualTo(kept);
        assertThat(check()).doesNotContain("FORM-15");
        Files.writeString(content.resolve("glossary.yaml"), Files.readString(content.resolve("glossary.yaml")) + term);
        assertThat(translated()).isEqualTo(before);
    }

    @Test
    void an_item_that_is_put_before_others_moves_no_words() throws IOException {
        translated();
        change(file, "medium tray: \"\"", "medium tray: bac moyen");
        translated();
        change(content.resolve("studio.yaml"), "trays:\n", "trays:\n  - {id: small tray, height: 300 mm, width: 200 mm, depth: 60 mm}\n");
        assertThat(translated()).contains("\nsmall tray: \"\"\nlarge tray: \"\"\nmedium tray: bac moyen\n").doesNotContain("#en before:");
    }

    /** YAML 1.2.2, section 7.4.2: a key without a sign of its own has at most 1024 letters. */
    @Test
    void a_text_longer_than_a_key_may_be_is_written_and_read() throws IOException {
        String longText = "Rinse it. ".repeat(120) + "Call: \"help\".";
        change(content.resolve("studio.yaml"), "waste: >-\n", "waste: >-\n  " + longText + "\n  ");
        String skeleton = translated();
        assertThat(skeleton).contains("\n? \"Rinse it.");
        change(file, "\n: \"\"\n", "\n: Rincez.\n");
        String told = translated();
        assertThat(told).contains("\n: Rincez.\n");
        assertThat(translated()).isEqualTo(told);
        assertThat(check()).contains(" 1 translated, ");
    }

    /** The demo's words were written by hand; begun again from the bare words, each stays. */
    @ParameterizedTest
    @ValueSource(strings = {"fr", "cy", "ar"})
    void words_written_by_hand_all_stay(String language) throws IOException {
        Path demo = folder.resolve("demo");
        ChangedContent.copy(Path.of("content"), demo);
        Path there = StudioWordsFile.file(demo, language);
        StudioWordsFile asKept = StudioWordsFile.read(demo, there).orElseThrow();
        Files.writeString(there, Files.readString(there).replaceAll("(?s)\nmade from:\n.*", "\n").replaceAll("(?m)^.*: \"\"\n", ""));
        assertThat(run(new TranslationCommand(), "--studio", language, "--content", demo.toString())).as(err::toString).isZero();
        StudioWordsFile after = StudioWordsFile.read(demo, there).orElseThrow();
        assertThat(after.texts()).extracting(StudioWordsFile.Text::text, StudioWordsFile.Text::words).containsExactlyInAnyOrderElementsOf(
                asKept.texts().stream().map(text -> org.assertj.core.groups.Tuple.tuple(text.text(), text.words())).toList());
        assertThat(after.marks()).isEqualTo(asKept.marks());
        assertThat(Files.readString(there)).contains("ot yet read by a native speaker");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"de | the studio does not list the language 'de'", "en | files are written in 'en'"})
    void a_language_that_is_not_listed_or_their_own_is_refused(String language, String told) {
        assertThat(run(new TranslationCommand(), "--studio", language, "--content", content.toString())).isEqualTo(2);
        assertThat(err.toString()).contains("translation: error: ", told);
        assertThat(content.resolve("words." + language + ".yaml")).doesNotExist();
    }

    @Test
    void a_case_and_the_studio_are_not_asked_for_at_once() {
        assertThat(run(new TranslationCommand(), "--studio", "fr", "tide", "fr", "--content", content.toString())).isEqualTo(2);
        assertThat(run(new TranslationCommand(), "--content", content.toString())).isEqualTo(2);
        assertThat(file).doesNotExist();
    }

    @Test
    void a_file_that_cannot_be_read_stays_as_it_is() throws IOException {
        Files.writeString(file, "Wool felt: [a\n");
        assertThat(run(new TranslationCommand(), "--studio", "fr", "--content", content.toString())).isOne();
        assertThat(err.toString()).contains("words.fr.yaml:");
        assertThat(file).hasContent("Wool felt: [a\n");
    }
}
