package org.benchleaf.publish;

import org.benchleaf.compose.part.TakenName;

/**
 * A file that can be taken away, as a page offers it.
 *
 * @param path relative to the site's root
 * @param size in kilobytes of 1,000 bytes, rounded up, with the unit
 */
public record TakenFile(String path, String size) {

    private static final int KILO = 1000;

    /** Whether a file of the site is one to be taken away, which holds other files once more. */
    public static boolean isOne(String path) {
        return TakenName.isTaken(path);
    }

    /** A file with its size. */
    static TakenFile of(SiteFile file) {
        return new TakenFile(file.path(), (file.bytes().length + KILO - 1) / KILO + " kB");
    }
}
