package org.benchleaf.command;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.benchleaf.model.CaseTexts;
import org.benchleaf.model.Story;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.read.TranslationFile;

/** Makes the file of a translation from the case and from what the file holds already. */
final class TranslationMaker {

    private final TreatmentCase treatment;
    private final String language;
    private final Map<String, String> originals;
    private final OriginalWords shown;
    /** What comments in the story show of the words of the case, by address. */
    private final Map<String, String> now = new HashMap<>();
    private final Map<String, String> before = new HashMap<>();

    /**
     * Prepares for a case.
     *
     * @param language BCP 47 tag of the translation
     */
    TranslationMaker(TreatmentCase treatment, String language) {
        this.treatment = treatment;
        this.language = language;
        this.originals = CaseTexts.of(treatment);
        this.shown = new OriginalWords(treatment.language());
    }

    /**
     * The text of the file.
     *
     * @param there the file as it is; empty if there is none
     */
    String text(Optional<TranslationFile> there) {
        List<TranslatedWords> words = new ArrayList<>();
        if (there.isEmpty()) {
            words.add(TranslatedWords.none(originals.keySet().iterator().next(), "").with(head()));
        }
        there.ifPresent(file -> file.texts().forEach(text -> words.add(words(text, file.marks()))));
        String opening = there.map(file -> withoutOriginals(file.opening())).orElse("");
        there.ifPresent(file -> words.addAll(story(file)));
        TranslationUpdate update = new TranslationUpdate(originals, words, there.map(TranslationFile::closing).orElse(List.of()));
        return new TranslationText(update, shown, opening).text();
    }

    private List<String> head() {
        String own = "#" + treatment.language();
        return List.of(" The words of this case in '" + language + "'. Write each behind its key; what the case says stands above it ("
                        + own + ":).",
                " What is left empty is shown in the language of the case. Numbers, ids and hazards come from case.md.",
                " When the case has changed, run 'benchleaf translation " + treatment.id() + " " + language + "' again. Where it says"
                        + " something else by now,",
                " its older words stand there too (" + own + " before:): bring the translation up to date, take the older words away,",
                " and run it once more.");
    }

    private TranslatedWords words(TranslationFile.Text text, Map<String, String> marks) {
        List<String> notes = text.comments().stream().filter(comment -> !shown.isIn(comment)).toList();
        return new TranslatedWords(text.address(), text.words(), text.mark().orElse(marks.getOrDefault(text.address(), "")),
                shown.fromYaml(text.comments(), false), shown.fromYaml(text.comments(), true), notes);
    }

    private String withoutOriginals(String markdown) {
        return shown.outOfMarkdown(markdown, now::put, before::put);
    }

    private List<TranslatedWords> story(TranslationFile file) {
        // First all of them: the comment that shows a section stands at the end of the one before it.
        List<String> left = file.sections().stream().map(written -> withoutOriginals(written.markdown())).toList();
        Story story = new Story(file.sections().stream().map(TranslationFile.Written::section).toList());
        Map<Story.Section, String> addresses = CaseTexts.sections(story, treatment.story()).entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getValue, Map.Entry::getKey, (one, twin) -> one));
        List<TranslatedWords> words = new ArrayList<>();
        for (int at = 0; at < left.size(); at++) {
            Story.Section section = story.sections().get(at);
            String own = CaseTexts.address(section.id());
            words.add(section(addresses.getOrDefault(section, own), own, left.get(at),
                    Optional.ofNullable(TranslationFile.mark(file.marks(), section, addresses.getOrDefault(section, own))).orElse("")));
        }
        return words;
    }

    /** A heading that only stands for a section which nobody has translated is no translation. */
    private TranslatedWords section(String address, String own, String markdown, String mark) {
        boolean empty = List.of(originals.getOrDefault(address, ""), now.getOrDefault(own, "")).stream()
                .anyMatch(original -> markdown.equals(TranslationText.heading(own, original)));
        return new TranslatedWords(address, empty ? "" : markdown, mark, now.getOrDefault(own, now.getOrDefault(address, "")),
                before.getOrDefault(own, before.getOrDefault(address, "")), List.of());
    }
}
