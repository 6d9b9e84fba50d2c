package org.benchleaf.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.benchleaf.message.FormMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Nearest;
import org.benchleaf.message.Place;
import org.benchleaf.model.CaseTexts;
import org.benchleaf.model.Instrument;
import org.benchleaf.model.Library;
import org.benchleaf.model.Phrases;
import org.benchleaf.model.Picture;
import org.benchleaf.model.Solution;
import org.benchleaf.model.Step;
import org.benchleaf.model.Translation;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.read.Draft;
import org.benchleaf.read.Node;
import org.benchleaf.read.PhrasesReader;
import org.benchleaf.read.TranslationFile;

/** Reads the words of a case in another language; a number that the case's own words do not have is refused. */
final class TranslationForm {

    /** A digit inside a word, as in H2O, B2 or No3.5, is no number; a pH written in one word is. */
    private static final Pattern NUMBER = Pattern.compile(
            "\\bpH(?=\\d)|\\p{L}[\\p{L}\\p{M}\\p{N}]*+(?:[.,]\\p{N}++)*+|(?<number>\\d++(?:[.,]\\d++)?)");

    private final Messages messages;
    private final TreatmentCase own;
    private final Library library;
    private final Map<String, String> originals;

    TranslationForm(Messages messages, TreatmentCase own, Library library) {
        this.messages = messages;
        this.own = own;
        this.library = library;
        this.originals = CaseTexts.of(own);
    }

    /**
     * The words in every language.
     *
     * @param language the language of the case itself
     * @param listed the languages of the studio; empty if it cannot be read, which is told elsewhere
     */
    List<Translation> read(List<Draft.Translated> drafts, String language, List<String> listed) {
        List<Translation> translations = new ArrayList<>();
        drafts.forEach(draft -> {
            language(draft, language, listed);
            draft.root().ifPresent(root -> translations.add(translation(draft, root)));
        });
        return translations;
    }

    private void language(Draft.Translated draft, String language, List<String> listed) {
        String tag = draft.language();
        if (!LanguageTags.isWellFormed(tag)) {
            messages.add(FormMessages.LANGUAGE_TAG.at(draft.place(), "found", tag));
        } else if (tag.equalsIgnoreCase(language)) {
            messages.add(FormMessages.TRANSLATED_INTO_ITSELF.at(draft.place(), "language", tag));
        } else if (!listed.isEmpty() && listed.stream().noneMatch(tag::equalsIgnoreCase)) {
            messages.add(FormMessages.LANGUAGE_NOT_LISTED.at(draft.place(), "language", tag,
                    "remedy", Nearest.to(tag, listed).map(near -> "Did you mean '" + near + "'? If not, add it")
                            .orElse("Add it") + " under 'languages' in studio.yaml, or delete the file."));
        }
    }

    private Translation translation(Draft.Translated draft, Node.Mapping root) {
        Form.TRANSLATION.check(root, messages);
        Map<String, String> texts = new LinkedHashMap<>();
        List<String> outdated = new ArrayList<>();
        Map<String, String> marks = TranslationFile.marks(root);
        Stream.of("step", "picture", "solution", "instrument").forEach(kind -> unknown(root, kind));
        TranslationFile.texts(root, (address, scalar) -> {
            String original = originals.get(address);
            if (original == null || scalar.text().isBlank()) {
                return;
            }
            compare(scalar, original);
            texts.put(address, scalar.text().strip());
            if (isOutdated(draft, address, marks.get(address), scalar.place())) {
                outdated.add(address);
            }
        });
        CaseTexts.sections(draft.story(), own.story()).forEach((address, section) -> {
            if (CaseTexts.isTold(section, originals.get(address))) {
                texts.put(address, section.written());
                if (isOutdated(draft, address, TranslationFile.mark(marks, section, address), section.place())) {
                    outdated.add(address);
                }
            }
        });
        withoutWords(draft, texts);
        return new Translation(draft.language(), texts, outdated, marks, originals.size(), draft.story(),
                phrases(draft.language()), draft.place());
    }

    /** What the program says in the language, and what the studio does. */
    private Phrases phrases(String language) {
        return library.translations().getOrDefault(language, PhrasesReader.in(language));
    }

    private void withoutWords(Draft.Translated draft, Map<String, String> texts) {
        List<String> missing = own.steps().stream().map(Step::id).filter(id -> !texts.containsKey("steps." + id + ".do")).toList();
        if (!missing.isEmpty()) {
            messages.add(FormMessages.NOT_TRANSLATED.at(draft.place(), "steps", String.join(", ", missing), "language", draft.language()));
        }
    }

    /** Whether the words of the case have another mark by now, which is told. */
    private boolean isOutdated(Draft.Translated draft, String address, String made, Place place) {
        String mark = CaseTexts.mark(originals.get(address));
        boolean outdated = made != null && !made.equals(mark);
        if (outdated) {
            messages.add(FormMessages.ORIGINAL_CHANGED.at(place, "text", address, "mark", mark, "case", own.id(),
                    "language", draft.language()));
        }
        return outdated;
    }

    /** Words under an id that the case lacks are told; where it has the id but not the text, nothing is shown of them. */
    private void unknown(Node.Mapping root, String kind) {
        List<String> ids = ids(kind + "s");
        if (root.get(kind + "s").orElse(null) instanceof Node.Mapping group) {
            group.entries().forEach((id, entry) -> {
                if (!ids.contains(id)) {
                    messages.add(FormMessages.UNKNOWN_REFERENCE.at(entry.keyPlace(), "id", id, "kinds", kind,
                            "remedy", Nearest.to(id, ids).map(near -> "Did you mean '" + near + "'?")
                                    .orElse("Write the id that stands in case.md.")));
                }
            });
        }
    }

    private List<String> ids(String group) {
        return switch (group) {
            case "steps" -> own.steps().stream().map(Step::id).toList();
            case "pictures" -> own.pictures().stream().map(Picture::id).toList();
            case "solutions" -> own.solutions().stream().map(Solution::id).toList();
            case "instruments" -> own.instruments().stream().map(Instrument::id).toList();
            default -> List.of();
        };
    }

    private void compare(Node.Scalar words, String original) {
        Set<String> numbers = numbers(original);
        numbers(words.text()).stream().filter(number -> !numbers.contains(number)).sorted().forEach(number ->
                messages.add(FormMessages.TRANSLATED_NUMBER.at(words.place(), "number", number)));
    }

    /** The numbers of a text, whichever decimal mark its language uses. */
    static Set<String> numbers(String text) {
        Set<String> numbers = new HashSet<>();
        Matcher number = NUMBER.matcher(text);
        while (number.find()) {
            if (number.group("number") != null) {
                numbers.add(number.group().replace(',', '.'));
            }
        }
        return numbers;
    }
}
