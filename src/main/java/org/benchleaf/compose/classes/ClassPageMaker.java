package org.benchleaf.compose.classes;

import java.util.List;
import org.benchleaf.compose.part.ClassPageName;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.Page;

/** Makes one kind of page of a class. A new kind is one class that implements this and one line in {@code PageMakers}. */
public interface ClassPageMaker {

    /** What it is called and where it stands. */
    ClassPageName name();

    /** The page. */
    Page make(ClassDesk desk);

    /** The files beside the page; most pages have none. */
    default List<DataFile> files(ClassDesk desk) {
        return List.of();
    }
}
