package org.benchleaf.message;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Finds the words that a mistyped one may have been meant for. */
public final class Nearest {

    private static final int LEAST_ALIKE = 4;

    private Nearest() {
    }

    /**
     * The known word with the fewest slips of the finger between it and the written one, if it is near enough; of words that begin alike,
     * as a word and its like in another language do (technik, technique), more may differ at the end.
     */
    public static Optional<String> to(String written, Collection<String> known) {
        String wanted = plain(written);
        String best = "";
        int fewest = Integer.MAX_VALUE;
        for (String candidate : known.stream().sorted().toList()) {
            String other = plain(candidate);
            int most = Math.max(Math.max(1, wanted.length() / 3), beginAlike(wanted, other) ? wanted.length() / 2 : 0);
            // Each letter that one has more than the other is a slip.
            int slips = Math.abs(other.length() - wanted.length()) > most ? Integer.MAX_VALUE : slips(wanted, other);
            if (slips <= most && slips < fewest) {
                fewest = slips;
                best = candidate;
            }
        }
        return best.isEmpty() ? Optional.empty() : Optional.of(best);
    }

    /** Whether two thirds of the written word, and no less than four letters, are the beginning of the other too. */
    private static boolean beginAlike(String written, String other) {
        int alike = Math.max(LEAST_ALIKE, (2 * written.length() + 2) / 3);
        return written.length() >= alike && other.startsWith(written.substring(0, alike));
    }

    /** Up to three known words that are near the written one or hold it, the nearest first. */
    public static List<String> several(String written, Collection<String> known) {
        int most = Math.max(2, written.length() / 3);
        return known.stream().filter(word -> slips(plain(written), plain(word)) <= most
                        || word.contains(written) && written.length() > 3)
                .sorted(Comparator.comparingInt((String word) -> slips(plain(written), plain(word)))
                        .thenComparing(Comparator.naturalOrder()))
                .limit(3).toList();
    }

    /** A word as it is compared: case, hyphens and underscores are not slips that tell two words apart. */
    public static String plain(String word) {
        return word.toLowerCase(Locale.ROOT).replace('-', ' ').replace('_', ' ');
    }

    /** Letters left out, put in, put wrong, or swapped with their neighbour (optimal string alignment). */
    private static int slips(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            d[i][0] = i;
        }
        for (int j = 0; j <= b.length(); j++) {
            d[0][j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            for (int j = 1; j <= b.length(); j++) {
                int wrong = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(Math.min(d[i - 1][j] + 1, d[i][j - 1] + 1), d[i - 1][j - 1] + wrong);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
