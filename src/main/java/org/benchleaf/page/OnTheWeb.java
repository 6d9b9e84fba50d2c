package org.benchleaf.page;

import java.util.Optional;

/**
 * What a page says for programs that show a link to it (Open Graph), by whole addresses.
 *
 * @param address of the page
 * @param picture address of the picture beside the link; empty if there is none
 * @param alt what the picture shows; empty if there is none
 */
public record OnTheWeb(String address, Optional<String> picture, Optional<String> alt) {

    /** Width in pixels; with the height the shape in which most programs show such pictures (common practice, no source). */
    public static final int PICTURE_WIDTH = 1200;
    /** Height in pixels. */
    public static final int PICTURE_HEIGHT = 630;

    /** Width of the picture in pixels. */
    public int width() {
        return PICTURE_WIDTH;
    }

    /** Height of the picture in pixels. */
    public int height() {
        return PICTURE_HEIGHT;
    }
}
