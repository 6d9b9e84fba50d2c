package org.benchleaf.command;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.model.CaseTexts;
import org.benchleaf.read.StudioWordsFile;

/**
 * Puts a studio's words in another language to the texts that its files say now. Words whose text was changed go to the text at its
 * address and are marked; words for which no text is left are kept apart. No word is dropped.
 */
final class StudioWordsUpdate {

    /** With which comments begin that tell where the texts below stand; no blank stands before it. */
    static final String HEAD = ": ";

    /**
     * Words of a text.
     *
     * @param words in the other language; may be empty
     * @param before the text from which they were made, where the studio says something else by now; else empty
     * @param notes comments of the translator, each without its sign
     */
    record Told(String words, String before, List<String> notes) {

        static final Told NOTHING = new Told("", "", List.of());

        Told {
            notes = List.copyOf(notes);
        }
    }

    /** Words for which the studio has no text any more, with the text from which they were made. */
    record Kept(String was, Told told) {
    }

    private final Map<String, String> texts;
    private final Map<String, String> marks;
    private final OriginalWords shown;
    private final Map<String, Told> placed = new LinkedHashMap<>();
    private final List<Kept> kept = new ArrayList<>();
    private final List<String> closing = new ArrayList<>();

    /**
     * Places the words.
     *
     * @param texts of the studio by their addresses
     * @param file with what was translated until now; empty if there is none
     */
    StudioWordsUpdate(Map<String, String> texts, Optional<StudioWordsFile> file, OriginalWords shown) {
        this.texts = texts;
        this.marks = file.map(StudioWordsFile::marks).orElse(Map.of());
        this.shown = shown;
        List<StudioWordsFile.Text> left = new ArrayList<>(file.map(StudioWordsFile::texts).orElse(List.of()));
        left.removeIf(this::isSaid);
        left.forEach(this::follow);
        closing.addAll(file.map(StudioWordsFile::closing).orElse(List.of()));
    }

    /** Every text of the studio once, in the order of its files, each with the file and group in which it stands first. */
    Map<String, String> groups() {
        Map<String, String> groups = new LinkedHashMap<>();
        texts.forEach((address, text) -> groups.putIfAbsent(text, group(address)));
        StudioWordsFile.OWN_KEYS.forEach(groups::remove);
        return groups;
    }

    private static String group(String address) {
        String[] keys = address.split("\\.", 3);
        return keys[0].equals("classes") ? keys[0] + "/" + keys[1] : keys[0];
    }

    /** What is told for a text of the studio. */
    Told at(String text) {
        return placed.getOrDefault(text, Told.NOTHING);
    }

    /** The marks of the texts from which words were made, by address. */
    Map<String, String> marks() {
        Map<String, String> made = new LinkedHashMap<>();
        texts.forEach((address, text) -> {
            if (!at(text).words().isEmpty()) {
                made.put(address, CaseTexts.mark(at(text).before().isEmpty() ? text : at(text).before()));
            }
        });
        return made;
    }

    /** Words for which the studio has no text any more. */
    List<Kept> kept() {
        return Collections.unmodifiableList(kept);
    }

    /** Comments that belong to no text, each without its sign. */
    List<String> closing() {
        return Collections.unmodifiableList(closing);
    }

    /** A translator who was shown both wordings and took the older one away has compared them. */
    private boolean isSaid(StudioWordsFile.Text written) {
        boolean said = texts.containsValue(written.text()) && !placed.containsKey(written.text());
        if (said) {
            placed.put(written.text(), told(written, before(written)));
        }
        return said;
    }

    private String before(StudioWordsFile.Text written) {
        String before = shown.fromYaml(written.comments(), true);
        return before.equals(written.text()) ? "" : before;
    }

    private Told told(StudioWordsFile.Text written, String before) {
        return new Told(written.words(), before, written.comments().stream()
                .filter(comment -> !shown.isIn(comment) && !comment.startsWith(HEAD)).toList());
    }

    private void follow(StudioWordsFile.Text written) {
        String from = before(written).isEmpty() ? written.text() : before(written);
        if (written.words().isEmpty()) {
            closing.addAll(told(written, "").notes());
            return;
        }
        Optional<String> now = now(from);
        now.ifPresentOrElse(text -> placed.put(text, with(at(text).notes(), told(written, text.equals(from) ? "" : from))),
                () -> kept.add(new Kept(from, told(written, ""))));
    }

    private static Told with(List<String> notes, Told told) {
        Set<String> all = new LinkedHashSet<>(notes);
        all.addAll(told.notes());
        return new Told(told.words(), told.before(), List.copyOf(all));
    }

    /** What the studio says now in the place of a text, if nobody has translated that. */
    private Optional<String> now(String from) {
        return texts.entrySet().stream()
                .filter(entry -> entry.getValue().equals(from) || CaseTexts.mark(from).equals(marks.get(entry.getKey())))
                .map(Map.Entry::getValue).filter(text -> at(text).words().isEmpty()).findFirst();
    }
}
