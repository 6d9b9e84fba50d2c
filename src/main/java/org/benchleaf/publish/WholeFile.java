package org.benchleaf.publish;

/**
 * A file that holds a whole page, as the page's reader is offered it.
 *
 * @param path relative to the site's root
 * @param size in kilobytes of 1,000 bytes, rounded up, with the unit
 */
public record WholeFile(String path, String size) {

    private static final int KILO = 1000;

    static WholeFile of(SiteFile file) {
        return new WholeFile(file.path(), (file.bytes().length + KILO - 1) / KILO + " kB");
    }
}
