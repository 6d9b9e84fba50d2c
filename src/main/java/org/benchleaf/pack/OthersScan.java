package org.benchleaf.pack;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.benchleaf.message.Message;
import org.benchleaf.message.Place;
import org.benchleaf.model.Confidential;

/**
 * Finds the private values of every case in texts that belong to another case, or to none, such as the glossary.
 *
 * <p>Whole names and whole values alone are looked for, since a part of one may be somebody else's by chance. May be used
 * from several threads.
 */
public final class OthersScan {

    private final Map<String, List<Needle>> needles = new HashMap<>();
    private final WordFinder finder;
    private final String mark;

    /**
     * Makes ready for a search.
     *
     * @param byCase the private values of every case, by the case's id
     */
    public OthersScan(Map<String, Confidential> byCase) {
        byCase.forEach((caseId, confidential) -> confidential.secrets().forEach(secret -> Needle.whole(caseId, secret)
                .forEach(needle -> needles.computeIfAbsent(needle.letters(), letters -> new ArrayList<>(1)).add(needle))));
        this.finder = new WordFinder(needles.keySet());
        this.mark = mark(byCase);
    }

    private static String mark(Map<String, Confidential> byCase) {
        StringBuilder all = new StringBuilder();
        new TreeMap<>(byCase).forEach((caseId, confidential) -> confidential.secrets().forEach(secret ->
                all.append(caseId).append('\0').append(secret.field()).append('\0').append(secret.value()).append('\0')));
        return Hash.of(all.toString().getBytes(StandardCharsets.UTF_8));
    }

    /** A mark of the values searched for: the same for the same values of the same cases, and nobody reads them from it. */
    public String mark() {
        return mark;
    }

    /**
     * Every leak in one file, each private field once.
     *
     * @param own the case that the file belongs to, whose values {@link LeakScan} looks for; empty for the whole site
     */
    public List<Message> scan(Searchable searched, String own) {
        String path = searched.file().path();
        Map<String, Message> found = new LinkedHashMap<>();
        search(path, Folded.of(path), own, "in the file's name", found);
        if (searched.isText()) {
            searched.readings().forEach(reading -> search(path, reading.letters(), own,
                    reading.how().isEmpty() ? "in its text" : reading.how(), found));
        }
        return List.copyOf(found.values());
    }

    private void search(String path, Folded letters, String own, String where, Map<String, Message> found) {
        finder.find(letters.letters(), (start, word) -> {
            if (letters.spot(start, start + word.length()).isWhole()) {
                needles.get(word).stream().filter(needle -> !needle.caseId().equals(own))
                        .forEach(needle -> LeakScan.note(needle, Place.file(path), where, found));
            }
        });
    }
}
