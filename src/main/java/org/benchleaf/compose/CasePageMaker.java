package org.benchleaf.compose;

import java.util.List;

/**
 * Makes one kind of page of a case. A new kind is one class that implements this and one line in {@link PageMakers}.
 */
interface CasePageMaker {

    /** The kind, such as {@code step-sheet}; {@code case-page.<kind>} words its name. */
    String kind();

    /** The file's name in the case's folder. */
    String file();

    /** Whether the page may and can be made. */
    default boolean applies(CaseDesk desk) {
        return desk.clearance().allows(output());
    }

    /** What of a case the page is, for the permissions. */
    Clearance.Output output();

    /** The page. */
    Page make(CaseDesk desk);

    /** The data files beside the page; most pages have none. */
    default List<DataFile> files(CaseDesk desk) {
        return List.of();
    }
}
