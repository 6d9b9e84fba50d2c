package org.benchleaf.publish;

import java.util.List;

/** Knows the files made of each picture, so that a page can name them with their sizes. */
@FunctionalInterface
public interface Pictures {

    /** The sizes of a picture, narrowest first; empty if no file was made of it. */
    List<Rendition> of(String caseId, String pictureId);

    /** No pictures at all. */
    static Pictures none() {
        return (caseId, pictureId) -> List.of();
    }
}
