package org.benchleaf.page;

import java.util.List;

/**
 * Pictures side by side as far as the page is wide.
 *
 * @param photos in order
 */
public record PhotoRow(List<Photo> photos) implements Block {

    public PhotoRow {
        photos = List.copyOf(photos);
    }
}
