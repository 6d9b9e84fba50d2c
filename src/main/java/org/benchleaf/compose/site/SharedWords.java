package org.benchleaf.compose.site;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.benchleaf.compose.part.SearchEntry;
import org.benchleaf.compose.part.WordList;

/**
 * Words that stand once for the whole index, so that a page names them by their place. Only words of the site's own pages are
 * among them: a case that is taken down leaves none behind.
 */
final class SharedWords {

    /** Signs that stand for a step of 0, 1, 2 and so on from one place to the next; the last one for as many and no word. */
    private static final String SIGNS = "0123456789abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ!#$%()*+,-./:;=?@[]^_{|}~";
    private static final int FEWEST = 2;

    private final Map<String, Integer> places = new HashMap<>();
    private final String packed;

    private SharedWords(Collection<String> words) {
        TreeSet<String> sorted = new TreeSet<>(words);
        sorted.forEach(word -> places.put(word, places.size()));
        packed = WordList.packed(sorted);
    }

    /** The words that stand on at least two of the site's own pages. */
    static SharedWords of(List<SearchEntry> ownPages) {
        Map<String, Integer> times = new TreeMap<>();
        ownPages.forEach(entry -> {
            WordList.unpacked(entry.strong()).forEach(word -> times.merge(word, 1, Integer::sum));
            WordList.unpacked(entry.weak()).forEach(word -> times.merge(word, 1, Integer::sum));
        });
        times.values().removeIf(count -> count < FEWEST);
        return new SharedWords(times.keySet());
    }

    /** All of them, packed. */
    String packed() {
        return packed;
    }

    /** Those of a packed list that are shared, by their places: the step from the one before, and so on. */
    String placesIn(String list) {
        StringBuilder steps = new StringBuilder();
        int before = 0;
        for (String word : WordList.unpacked(list)) {
            Integer place = places.get(word);
            if (place != null) {
                step(place - before, steps);
                before = place;
            }
        }
        return steps.toString();
    }

    private static void step(int length, StringBuilder steps) {
        int most = SIGNS.length() - 1;
        int left = length;
        for (; left >= most; left -= most) {
            steps.append(SIGNS.charAt(most));
        }
        steps.append(SIGNS.charAt(left));
    }

    /** Those of a packed list that are not shared, packed. */
    String othersIn(String list) {
        return WordList.packed(WordList.unpacked(list).stream().filter(word -> !places.containsKey(word)).toList());
    }
}
