package org.benchleaf.pack;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.benchleaf.message.LeakMessages;
import org.benchleaf.message.Message;
import org.benchleaf.message.Place;
import org.benchleaf.model.Confidential;

/**
 * Finds the private values of every case in texts that belong to another case, or to none, such as the glossary.
 *
 * <p>Whole names and whole values alone are looked for, since a part of one may be somebody else's by chance. Values are
 * found by the hash of their first letters, rolled along the text: the trees in which {@link LeakScan} keeps the values of
 * one case would take hundreds of megabytes for those of ten thousand. May be used from several threads.
 */
public final class OthersScan {

    private static final int HEAD = Needle.LONG_ENOUGH;
    private static final int BASE = 31;
    private static final int MARKS = 1 << 20;

    private final Map<Integer, List<Needle>> byHead = new HashMap<>();
    /** Marks the heads that there are, so that the others, nearly all, are passed over without a look into the map. */
    private final BitSet heads = new BitSet(MARKS);
    private final int highest;
    private final String mark;

    /**
     * Makes ready for a search.
     *
     * @param byCase the private values of every case, by the case's id
     */
    public OthersScan(Map<String, Confidential> byCase) {
        byCase.forEach((caseId, confidential) -> confidential.secrets().forEach(secret ->
                Needle.whole(caseId, secret).forEach(needle -> byHead.computeIfAbsent(
                        needle.letters().substring(0, HEAD).hashCode(), head -> new ArrayList<>(1)).add(needle))));
        byHead.keySet().forEach(head -> heads.set(bit(head)));
        int power = 1;
        for (int i = 1; i < HEAD; i++) {
            power *= BASE;
        }
        this.highest = power;
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

    private void search(String path, Folded folded, String own, String where, Map<String, Message> found) {
        CharSequence letters = folded.letters();
        int head = 0;
        for (int at = 0; at < letters.length(); at++) {
            head = head * BASE + letters.charAt(at);
            int start = at - HEAD + 1;
            if (start >= 0) {
                if (heads.get(bit(head))) {
                    compare(head, path, folded, start, own, where, found);
                }
                head -= letters.charAt(start) * highest;
            }
        }
    }

    private static int bit(int head) {
        return (head ^ head >>> 12) & MARKS - 1;
    }

    private void compare(int head, String path, Folded folded, int start, String own, String where,
            Map<String, Message> found) {
        for (Needle needle : byHead.getOrDefault(head, List.of())) {
            if (!needle.caseId().equals(own) && stands(needle, folded, folded.letters(), start)) {
                found.putIfAbsent(needle.caseId() + '/' + needle.field(), LeakMessages.PRIVATE_VALUE.at(
                        Place.file(path), "field", needle.field(), "case", needle.caseId(), "where", where));
            }
        }
    }

    private static boolean stands(Needle needle, Folded folded, CharSequence letters, int start) {
        int end = start + needle.letters().length();
        return end <= letters.length() && CharSequence.compare(letters.subSequence(start, end), needle.letters()) == 0
                && folded.isWhole(start, end);
    }
}
