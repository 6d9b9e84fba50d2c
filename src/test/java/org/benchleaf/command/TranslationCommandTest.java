package org.benchleaf.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.benchleaf.ChangedContent;
import org.benchleaf.json.JsonText;
import org.benchleaf.model.CaseTexts;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.TranslationFile;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A translation is begun, follows the case, and loses no word; what is expected are the words that the test itself wrote. */
class TranslationCommandTest extends TranslatingStudio {

    private static final String DO = "Lower the sheet on its carrier into the bath, one short side first.";
    private static final String FAIRE = "Baissez la feuille sur son support, un petit côté d’abord.";

    private Path original;
    private Path file;

    @BeforeEach
    void the_file() {
        original = content.resolve("cases/tide/case.md");
        file = content.resolve("cases/tide/case.fr.md");
    }

    private String translated() throws IOException {
        done(new TranslationCommand(), "tide", "fr");
        return Files.readString(file);
    }

    /** Writes words at a text that is empty in the skeleton, by the words of the case above it. */
    private void translate(String shown, String key, String words) throws IOException {
        change(file, "#en: " + shown + "\n" + key + " \"\"", "#en: " + shown + "\n" + key + " " + words);
    }

    private Document page(String path) throws IOException {
        Path site = folder.resolve("site");
        done(new PublishCommand(), "--site", site.toString(), "--on", "2026-04-01");
        return Jsoup.parse(Files.readString(site.resolve(path)));
    }

    private TranslationFile read() {
        return CaseReader.translation(content, file).orElseThrow();
    }

    private String wordsAt(String address) {
        return read().texts().stream().filter(text -> text.address().equals(address)).findFirst().orElseThrow().words();
    }

    @Test
    void a_skeleton_holds_every_text_of_the_case_and_passes() throws IOException {
        assertThat(translated()).contains("title: \"\"", "  wash:\n    #en: " + DO + "\n    do: \"\"\n", "<!--en #wash:\n## Into the water",
                "## Into the water {#wash}\n", "\nmade from:\n");
        assertThat(out.toString()).contains("Written: ", "0 translated", "0 changed in the case since.");
        assertThat(check()).contains("case.fr.md: of ", " 0 translated, ").doesNotContain("error ", "warning ");
        // A text for each of seven damages, each with its place, and for ten steps what to do: counted by hand in the case.
        assertThat(read().texts()).extracting(TranslationFile.Text::address)
                .filteredOn(address -> address.startsWith("condition.")).hasSize(14);
        assertThat(read().texts()).extracting(TranslationFile.Text::address)
                .filteredOn(address -> address.matches("steps\\.[^.]*\\.do")).hasSize(10);
    }

    @Test
    void what_is_not_translated_is_shown_in_the_language_of_the_case_and_marked() throws IOException {
        translated();
        translate(DO, "    do:", FAIRE);
        Document page = page("fr/cases/tide/steps.html");
        assertThat(page.select("[lang=en]").eachText()).anySatisfy(text -> assertThat(text).contains("Drain, blot, and lay the sheet"));
        assertThat(page.select("main").text()).contains(FAIRE).doesNotContain(DO);
    }

    @Test
    void a_second_run_and_a_run_after_translating_change_nothing_else() throws IOException {
        String skeleton = translated();
        assertThat(translated()).isEqualTo(skeleton);
        assertThat(out.toString()).contains("Up to date: ");
        translate(DO, "    do:", FAIRE);
        String words = Files.readString(file);
        assertThat(translated()).isEqualTo(words);
    }

    @Test
    void a_text_that_was_changed_in_the_case_keeps_its_words_and_both_wordings_until_they_are_compared() throws IOException {
        translated();
        translate(DO, "    do:", FAIRE);
        String changed = DO.replace("one short side first", "a long side first");
        change(original, DO, changed);
        assertThat(check()).contains("advice FORM-150", "1 changed in the case since");
        assertThat(translated()).contains("    #en before: " + DO + "\n    #en: " + changed + "\n    do: " + FAIRE + "\n");
        assertThat(translated()).contains("#en before: " + DO);
        Document page = page("fr/cases/tide/steps.html");
        assertThat(page.select("[lang=en]").eachText()).anySatisfy(text -> assertThat(text).contains(changed));
        assertThat(page.text()).doesNotContain(FAIRE);
        change(file, "    #en before: " + DO + "\n", "");
        translated();
        assertThat(check()).contains("0 changed in the case since").doesNotContain("FORM-150");
    }

    @Test
    void words_follow_their_text_in_a_list_and_to_another_name() throws IOException {
        translated();
        translate("Soak the starch for an hour.", "      -", "Faites tremper l’amidon une heure.");
        translate("Hinge the sheet into a folder of buffered board.", "    do:", "Mettez la feuille en chemise.");
        change(original, "how: [Soak the starch", "how: [Weigh it first., Soak the starch");
        change(original, "  - id: house\n", "  - id: folder\n");
        change(content.resolve("cases/tide/case.es.md"), "  house:", "  folder:");
        translated();
        assertThat(wordsAt("solutions.paste.how.2")).isEqualTo("Faites tremper l’amidon une heure.");
        assertThat(wordsAt("solutions.paste.how.1")).isEmpty();
        assertThat(wordsAt("steps.folder.do")).isEqualTo("Mettez la feuille en chemise.");
        assertThat(check()).contains("0 changed in the case since");
    }

    @Test
    void words_of_a_text_that_was_taken_out_are_kept_and_come_back_with_it() throws IOException {
        String see = "    see: The sheet goes limp without dark patches.\n";
        translated();
        translate("The sheet goes limp without dark patches.", "    see:", "'La feuille : souple, \"sans\" tache.'");
        change(original, see, "");
        assertThat(translated()).contains("\nno longer in the case:\n- was: steps.relax.see\n"
                + "  words: \"La feuille : souple, \\\"sans\\\" tache.\"\n");
        String kept = Files.readString(file);
        assertThat(translated()).isEqualTo(kept);
        assertThat(check()).doesNotContain("error ", "warning ");
        change(original, "    if not: Mist again", see + "    if not: Mist again");
        assertThat(translated()).doesNotContain("no longer in the case:");
        assertThat(wordsAt("steps.relax.see")).isEqualTo("La feuille : souple, \"sans\" tache.");
    }

    @Test
    void sections_of_the_story_follow_the_case_in_the_same_way() throws IOException {
        translated();
        change(file, "-->\n\n## What we did first {#tests}",
                "-->\n\n## D’abord {#tests}\n\nToutes les encres ont été *essayées*.\n\n<!-- à relire -->");
        change(original, "The black printing ink held.", "The black ink held.");
        change(original, "## Why this sheet was brown", "A line above all headings.\n\n## Why this sheet was so brown");
        assertThat(check()).contains("advice FORM-150");
        String text = translated();
        assertThat(text).contains("<!--en #tests before:\n## What we did first",
                "## D’abord {#tests}\n\nToutes les encres ont été *essayées*.\n\n"
                + "<!-- à relire -->", "<!--en:\nA line above all headings.\n-->",
                "## Why this sheet was so brown {#story-why-this-sheet-was-so-brown}");
        assertThat(translated()).isEqualTo(text);
        assertThat(page("fr/cases/tide/index.html").text()).contains("The black ink held.").doesNotContain("Toutes les encres");
        String older = text.substring(text.indexOf("<!--en #tests before:"), text.indexOf("<!--en #tests:"));
        change(file, older, "");
        translated();
        assertThat(page("fr/cases/tide/index.html").text()).contains("D’abord", "Toutes les encres").doesNotContain("The black ink held.");
        Files.writeString(original, Files.readString(original).replaceFirst("(?s)## What we did first.*?\n\n(?=## )", ""));
        assertThat(translated()).contains("- was: story.tests", "Toutes les encres ont été *essayées*.\\n\\n<!-- à relire -->");
        assertThat(check()).doesNotContain("error ");
    }

    private static final List<String> AWKWARD = List.of("Il dit : « non »", "\"entre guillemets\"", "c'est l'heure", "---", "- tiret",
            "# dièse", "a # b", "clé: valeur", "fin:", "جدول المدّ والجزر", "🧻 papier 📄", "  blancs aux bouts  ", "deux  blancs",
            "ligne\nligne\n\nautre", "tab\tulation", "{wash.volume} et [liste]", "& ancre *alias !étiquette %", "barre \\ oblique",
            "null", "~", "non", "fin \u202F: ligne", "a\u00A0: b\u202F!", "…", "> plié", "| littéral", "@ `accent`",
            "#en: comme un commentaire", "--> fin", "-- <!-- deux", "  - x", "? y", "%TAG", "¿Qué?", "'", "\"", "\\n",
            "x ".repeat(300) + "y");

    /** Puts the words into as many texts of the skeleton, in double quotes as YAML 1.2.2, 7.3.1, has them. */
    private List<TranslationFile.Text> withAwkwardWords() throws IOException {
        List<String> lines = new ArrayList<>(translated().lines().toList());
        int next = 0;
        for (int at = 0; next < AWKWARD.size(); at++) {
            if (lines.get(at).endsWith(" \"\"")) {
                lines.set(at, lines.get(at).substring(0, lines.get(at).length() - 2) + JsonText.of(AWKWARD.get(next++)));
            }
        }
        Files.writeString(file, String.join("\n", lines) + "\n");
        List<TranslationFile.Text> texts = read().texts().subList(0, AWKWARD.size());
        assertThat(texts).extracting(TranslationFile.Text::words).isEqualTo(AWKWARD);
        return texts;
    }

    @Test
    void words_survive_whatever_they_hold() throws IOException {
        List<TranslationFile.Text> before = withAwkwardWords();
        translated();
        assertThat(read().texts().subList(0, AWKWARD.size())).extracting(TranslationFile.Text::words).isEqualTo(AWKWARD);
        assertThat(before).extracting(TranslationFile.Text::address).contains("title", "condition.tide.where");
        String whole = Files.readString(original);
        Files.writeString(original, whole.replaceAll("  - \\{id: (?:tide|fold|waves), .*\n", ""));
        String shorter = translated();
        assertThat(read().texts()).extracting(TranslationFile.Text::words).containsAll(AWKWARD);
        assertThat(translated()).isEqualTo(shorter).contains("was: condition.tide.where");
        Files.writeString(original, whole);
        translated();
        assertThat(read().texts().subList(0, AWKWARD.size())).extracting(TranslationFile.Text::words).isEqualTo(AWKWARD);
    }

    @Test
    void a_long_text_is_broken_in_lines_that_mean_the_same() throws IOException {
        translated();
        String words = "Posez la feuille, attendez, regardez et notez - ".repeat(12).strip() + " fin";
        translate(DO, "    do:", words);
        assertThat(translated().lines().filter(line -> line.startsWith("    do: Posez")))
                .allSatisfy(line -> assertThat(line).hasSizeLessThan(125));
        assertThat(wordsAt("steps.wash.do")).isEqualTo(words);
    }

    @Test
    void comments_of_the_translator_stay_with_their_texts() throws IOException {
        translated();
        translate(DO, "    do:", FAIRE + " # à vérifier");
        change(file, "made from:\n", "# merci\nmade from:\n");
        assertThat(translated()).contains("    # à vérifier\n    #en: " + DO, "# merci\n");
        String once = Files.readString(file);
        assertThat(translated()).isEqualTo(once);
    }

    /** The demo's translations were written by hand and are up to date; begun again without comments, each gets its words and marks. */
    @ParameterizedTest
    @ValueSource(strings = {"fr", "cy", "ar"})
    void a_translation_written_by_hand_keeps_every_word(String language) throws IOException {
        Path demo = folder.resolve("demo");
        ChangedContent.copy(Path.of("content"), demo);
        Path there = demo.resolve("cases/tide-table/case." + language + ".md");
        String asKept = Files.readString(there);
        Files.writeString(there, asKept.replaceAll("(?m)^ *#en: .*\n", "").replaceAll("(?s)<!--en #.*?-->\n", ""));
        TranslationFile before = CaseReader.translation(demo, there).orElseThrow();
        assertThat(run(new TranslationCommand(), "tide-table", language, "--content", demo.toString())).as(err::toString).isZero();
        TranslationFile after = CaseReader.translation(demo, there).orElseThrow();
        assertThat(after.texts()).extracting(TranslationFile.Text::address, TranslationFile.Text::words).containsAll(
                before.texts().stream().map(text -> org.assertj.core.groups.Tuple.tuple(text.address(), text.words())).toList());
        assertThat(after.marks()).containsAllEntriesOf(before.marks());
        assertThat(after.sections()).extracting(written -> written.section().text()).isEqualTo(
                before.sections().stream().map(written -> written.section().text()).toList());
        assertThat(Files.readString(there)).isEqualTo(asKept).contains("# Not yet read by a native speaker.");
        assertThat(out.toString()).contains(" 0 not yet, 0 changed in the case since.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"storm | fr | no case is called 'storm'; the cases are tide",
        "tide | de | the studio does not list the language 'de'", "tide | en | is written in 'en'"})
    void a_case_or_language_that_is_not_there_is_refused(String name, String language, String told) {
        assertThat(run(new TranslationCommand(), name, language, "--content", content.toString())).isEqualTo(2);
        assertThat(err.toString()).contains("translation: error: ", told);
        assertThat(file).doesNotExist();
    }

    @Test
    void a_case_with_errors_and_a_translation_that_cannot_be_read_stay_as_they_are() throws IOException {
        Files.writeString(file, "---\ntitle: [a\n---\n");
        assertThat(run(new TranslationCommand(), "tide", "fr", "--content", content.toString())).isOne();
        assertThat(err.toString()).contains("case.fr.md:");
        assertThat(file).hasContent("---\ntitle: [a\n---\n");
        Files.delete(file);
        change(original, "level: foundation", "level: lowest");
        assertThat(run(new TranslationCommand(), "tide", "fr", "--content", content.toString())).isOne();
        assertThat(err.toString()).contains("case.md:", "lowest");
        assertThat(file).doesNotExist();
    }

    @Test
    void an_error_that_only_the_translation_has_is_mended() throws IOException {
        Files.writeString(file, "---\nsteps:\n  rinse:\n    do: Rincez.\n---\n");
        assertThat(run(new CheckCommand(), "--content", content.toString())).isOne();
        assertThat(translated()).contains("- was: steps.rinse.do\n  words: Rincez.\n");
        check();
    }

    /** FIPS 180-4: the SHA-256 of "abc" begins with ba7816bf; the words of the case are marked by it. */
    @Test
    void every_text_has_the_mark_of_its_words() throws IOException {
        change(original, "technique: letterpress", "technique: abc");
        translated();
        assertThat(read().marks()).containsEntry("object.technique", "ba7816bf");
        assertThat(read().marks().keySet()).containsAll(List.of("title", "steps.wash.do", "story.wash"));
        assertThat(CaseTexts.sectionId("story.wash")).contains("wash");
    }
}
