package org.benchleaf.command;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.benchleaf.model.CaseTexts;

/**
 * Puts the words of a translation to the texts that a case has now. Words made from a wording that stands elsewhere by now, as when
 * an item was put before it in a list, follow it; words whose wording was changed stay and are marked; words for which no
 * text is left are kept apart. No word is dropped.
 */
final class TranslationUpdate {

    private static final String NOT_KEPT = "not kept";

    private final Map<String, String> originals;
    private final Map<String, String> marks = new LinkedHashMap<>();
    private final Map<String, TranslatedWords> placed = new LinkedHashMap<>();
    private final List<TranslatedWords> kept = new ArrayList<>();
    private final List<String> closing = new ArrayList<>();
    /** Addresses of texts that the case had before and nobody has translated: words of another text are not theirs. */
    private final Set<String> waiting;

    /**
     * Places the words.
     *
     * @param originals the texts of the case by their addresses
     * @param written what the translation has, in its order
     * @param closing comments behind its last text
     */
    TranslationUpdate(Map<String, String> originals, List<TranslatedWords> written, List<String> closing) {
        this.originals = originals;
        originals.forEach((address, text) -> marks.put(address, CaseTexts.mark(text)));
        this.waiting = written.stream().filter(words -> !words.areThere() && isShown(words)).map(TranslatedWords::address)
                .collect(Collectors.toSet());
        List<TranslatedWords> rest = new ArrayList<>();
        written.stream().filter(TranslatedWords::areThere).map(this::compared).forEach(rest::add);
        rest.removeIf(this::isUpToDate);
        rest.removeIf(this::isElsewhere);
        rest.removeIf(this::isChanged);
        kept.addAll(rest);
        written.stream().filter(words -> !words.areThere()).forEach(words -> notes(words.address(), words.notes()));
        this.closing.addAll(closing);
    }

    /** The texts of the case by their addresses, in its order. */
    Map<String, String> originals() {
        return Collections.unmodifiableMap(originals);
    }

    /** What the translation has for a text of the case. */
    TranslatedWords at(String address) {
        return placed.getOrDefault(address, TranslatedWords.none(address, marks.get(address)));
    }

    /** Words for which the case has no text any more. */
    List<TranslatedWords> kept() {
        return Collections.unmodifiableList(kept);
    }

    /** Comments that belong to no text, each without its sign. */
    List<String> closing() {
        return Collections.unmodifiableList(closing);
    }

    /** A translator who was shown both wordings and took the older one away has compared them. */
    private TranslatedWords compared(TranslatedWords words) {
        String original = originals.get(words.address());
        if (original == null) {
            return words;
        }
        boolean seen = words.before().isEmpty() && isShown(words);
        return words.mark().isEmpty() || seen ? words.madeFrom(marks.get(words.address()), "") : words;
    }

    /** Whether the file shows the text beside its words as the case has it now. */
    private boolean isShown(TranslatedWords words) {
        return OriginalWords.inOneLine(words.shown()).equals(OriginalWords.inOneLine(originals.getOrDefault(words.address(), "")));
    }

    private boolean isUpToDate(TranslatedWords words) {
        return words.mark().equals(marks.get(words.address())) && place(words.madeFrom(words.mark(), ""));
    }

    private boolean isElsewhere(TranslatedWords words) {
        Optional<String> there = marks.entrySet().stream().filter(entry -> entry.getValue().equals(words.mark())
                && !placed.containsKey(entry.getKey()) && !waiting.contains(entry.getKey())).map(Map.Entry::getKey).findFirst();
        return there.isPresent() && place(words.at(there.get()).madeFrom(words.mark(), ""));
    }

    private boolean isChanged(TranslatedWords words) {
        String before = !words.before().isEmpty() ? words.before() : !words.shown().isEmpty() ? words.shown() : NOT_KEPT;
        return originals.containsKey(words.address()) && place(words.madeFrom(words.mark(), before));
    }

    private boolean place(TranslatedWords words) {
        return placed.putIfAbsent(words.address(), words) == null;
    }

    private void notes(String address, List<String> notes) {
        if (originals.containsKey(address)) {
            placed.put(address, at(address).with(notes));
        } else {
            closing.addAll(notes);
        }
    }
}
