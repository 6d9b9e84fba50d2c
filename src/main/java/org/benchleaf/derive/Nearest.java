package org.benchleaf.derive;

import java.util.Comparator;
import java.util.List;

/** Finds the names that a mistyped one may have been meant for. */
final class Nearest {

    private Nearest() {
    }

    static List<String> to(String written, List<String> names) {
        int most = Math.max(2, written.length() / 3);
        return names.stream().filter(name -> distance(written, name) <= most || name.contains(written)
                        && written.length() > 3)
                .sorted(Comparator.comparingInt((String name) -> distance(written, name))
                        .thenComparing(Comparator.naturalOrder()))
                .limit(3).toList();
    }

    /** Levenshtein (1966): the fewest letters added, dropped or exchanged. */
    private static int distance(String from, String to) {
        int[] row = new int[to.length() + 1];
        for (int k = 0; k <= to.length(); k++) {
            row[k] = k;
        }
        for (int i = 1; i <= from.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int k = 1; k <= to.length(); k++) {
                int exchanged = diagonal + (from.charAt(i - 1) == to.charAt(k - 1) ? 0 : 1);
                diagonal = row[k];
                row[k] = Math.min(exchanged, Math.min(row[k], row[k - 1]) + 1);
            }
        }
        return row[to.length()];
    }
}
