package org.benchleaf.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.message.FormMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Nearest;
import org.benchleaf.model.Picture;
import org.benchleaf.model.Step;
import org.benchleaf.model.Translation;
import org.benchleaf.read.Draft;
import org.benchleaf.read.Node;

/** Reads the words of a case in another language; a number that the case's own words do not have is refused. */
final class TranslationForm {

    /** A digit inside a word, as in H2O, B2 or No3.5, is no number; a pH written in one word is. */
    private static final Pattern NUMBER = Pattern.compile(
            "\\bpH(?=\\d)|\\p{L}[\\p{L}\\p{M}\\p{N}]*+(?:[.,]\\p{N}++)*+|(?<number>\\d++(?:[.,]\\d++)?)");

    private final Messages messages;
    private final Map<String, Step> steps = new LinkedHashMap<>();
    private final Map<String, Picture> pictures = new LinkedHashMap<>();
    private final String title;
    private final String summary;

    TranslationForm(Messages messages, String title, String summary, List<Step> steps, List<Picture> pictures) {
        this.messages = messages;
        this.title = title;
        this.summary = summary;
        steps.forEach(step -> this.steps.putIfAbsent(step.id(), step));
        pictures.forEach(picture -> this.pictures.putIfAbsent(picture.id(), picture));
    }

    /**
     * The words in every language.
     *
     * @param own the language of the case itself
     * @param listed the languages of the studio; empty if it cannot be read, which is told elsewhere
     */
    List<Translation> read(List<Draft.Translated> drafts, String own, List<String> listed) {
        List<Translation> translations = new ArrayList<>();
        drafts.forEach(draft -> {
            language(draft, own, listed);
            draft.root().ifPresent(root -> translations.add(translation(draft, root)));
        });
        return translations;
    }

    private void language(Draft.Translated draft, String own, List<String> listed) {
        String tag = draft.language();
        if (!LanguageTags.isWellFormed(tag)) {
            messages.add(FormMessages.LANGUAGE_TAG.at(draft.place(), "found", tag));
        } else if (tag.equalsIgnoreCase(own)) {
            messages.add(FormMessages.TRANSLATED_INTO_ITSELF.at(draft.place(), "language", tag));
        } else if (!listed.isEmpty() && listed.stream().noneMatch(tag::equalsIgnoreCase)) {
            messages.add(FormMessages.LANGUAGE_NOT_LISTED.at(draft.place(), "language", tag,
                    "remedy", Nearest.to(tag, listed).map(near -> "Did you mean '" + near + "'? If not, add it")
                            .orElse("Add it") + " under 'languages' in studio.yaml, or delete the file."));
        }
    }

    private Translation translation(Draft.Translated draft, Node.Mapping root) {
        Form.TRANSLATION.check(root, messages);
        // The schema speaks of what is missing; nothing here is worked with, so a stand-in does no harm.
        Fields fields = new Fields(root, new Fields.Soundness(messages));
        compare(fields, "title", title);
        compare(fields, "summary", summary);
        return new Translation(draft.language(), fields.needText("title"), fields.needText("summary"),
                steps(fields, draft), pictures(fields), draft.story(), draft.place());
    }

    private Map<String, Translation.StepWords> steps(Fields fields, Draft.Translated draft) {
        Map<String, Translation.StepWords> words = new HashMap<>();
        fields.group("steps").ifPresent(group -> group.named().forEach((id, step) -> {
            Optional<Step> own = known(id, steps, "step", group);
            own.ifPresent(original -> compareAll(step, Map.of("do", original.instruction(),
                    "see", original.see().orElse(""), "watch", original.watch().orElse(""),
                    "if not", original.ifNot().orElse(""), "until", original.until().orElse(""))));
            words.put(id, new Translation.StepWords(step.needText("do"), step.text("see"), step.text("watch"),
                    step.text("if not"), step.text("until")));
        }));
        steps.keySet().stream().filter(id -> !words.containsKey(id)).forEach(id -> messages.add(
                FormMessages.NOT_TRANSLATED.at(draft.place(), "step", id, "language", draft.language())));
        return words;
    }

    private Map<String, Translation.PictureWords> pictures(Fields fields) {
        Map<String, Translation.PictureWords> words = new HashMap<>();
        fields.group("pictures").ifPresent(group -> group.named().forEach((id, picture) -> {
            known(id, pictures, "picture", group).ifPresent(original -> compareAll(picture,
                    Map.of("alt", original.alt(), "caption", original.caption())));
            words.put(id, new Translation.PictureWords(picture.needText("alt"), picture.needText("caption")));
        }));
        return words;
    }

    private <T> Optional<T> known(String id, Map<String, T> all, String kind, Fields group) {
        if (!all.containsKey(id)) {
            messages.add(FormMessages.UNKNOWN_REFERENCE.at(group.keyPlace(id), "id", id, "kinds", kind,
                    "remedy", Nearest.to(id, all.keySet()).map(near -> "Did you mean '" + near + "'?")
                            .orElse("Write the id that stands in case.md.")));
        }
        return Optional.ofNullable(all.get(id));
    }

    private void compareAll(Fields fields, Map<String, String> originals) {
        originals.forEach((key, original) -> compare(fields, key, original));
    }

    private void compare(Fields fields, String key, String original) {
        Set<String> own = numbers(original);
        numbers(fields.text(key).orElse("")).stream().filter(number -> !own.contains(number)).sorted().forEach(number ->
                messages.add(FormMessages.TRANSLATED_NUMBER.at(fields.place(key), "number", number)));
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
