package org.benchleaf.compose.part;

import java.util.List;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.Page;

/**
 * Makes one kind of page of a case. A new kind is one class that implements this and one line in {@code PageMakers}.
 */
public interface CasePageMaker {

    /** What it is called and where it stands. */
    CasePageName name();

    /** Whether the page may and can be made. */
    default boolean applies(CaseDesk desk) {
        return desk.clearance().allows(name().output());
    }

    /** The page. */
    Page make(CaseDesk desk);

    /** The data files beside the page; most pages have none. */
    default List<DataFile> files(CaseDesk desk) {
        return List.of();
    }

    /** Those data files that each language has its own of; most pages have none. */
    default List<DataFile> filesTold(CaseDesk desk) {
        return List.of();
    }
}
