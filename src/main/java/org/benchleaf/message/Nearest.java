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
            int slips = slips(wanted, other, Math.min(most, fewest - 1));
            if (slips < fewest) {
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
        return known.stream().filter(word -> slips(plain(written), plain(word), most) <= most
                        || word.contains(written) && written.length() > 3)
                .sorted(Comparator.comparingInt((String word) -> slips(plain(written), plain(word), Integer.MAX_VALUE))
                        .thenComparing(Comparator.naturalOrder()))
                .limit(3).toList();
    }

    /** A word as it is compared: case, hyphens and underscores are not slips that tell two words apart. */
    public static String plain(String word) {
        return word.toLowerCase(Locale.ROOT).replace('-', ' ').replace('_', ' ');
    }

    /**
     * Letters left out, put in, put wrong, or swapped with their neighbour (optimal string alignment).
     *
     * @param most how many are of interest: whole sentences are compared here too, nearly all of them with quite another
     * @return the number of slips, or the largest number there is if they are more than that
     */
    private static int slips(String a, String b, int most) {
        // Each letter that one has more than the other is a slip.
        if (Math.abs(a.length() - b.length()) > most) {
            return Integer.MAX_VALUE;
        }
        int[] beforeThat = new int[b.length() + 1];
        int[] before = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            before[j] = j;
        }
        int fewestBefore = 0;
        for (int i = 1; i <= a.length(); i++) {
            int[] row = row(a, b, i, before, beforeThat);
            int fewest = i;
            for (int slips : row) {
                fewest = Math.min(fewest, slips);
            }
            // A swap reaches back over one row, so two must be beyond what is of interest.
            if (Math.min(fewest, fewestBefore) > most) {
                return Integer.MAX_VALUE;
            }
            fewestBefore = fewest;
            beforeThat = before;
            before = row;
        }
        return before[b.length()] <= most ? before[b.length()] : Integer.MAX_VALUE;
    }

    /** The slips between the first i letters of one word and every beginning of the other, from those of one and two letters less. */
    private static int[] row(String a, String b, int i, int[] before, int[] beforeThat) {
        int[] row = new int[b.length() + 1];
        row[0] = i;
        for (int j = 1; j <= b.length(); j++) {
            int wrong = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
            row[j] = Math.min(Math.min(before[j] + 1, row[j - 1] + 1), before[j - 1] + wrong);
            if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                row[j] = Math.min(row[j], beforeThat[j - 2] + 1);
            }
        }
        return row;
    }
}
