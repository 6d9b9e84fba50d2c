package org.benchleaf.compose;

import java.util.List;

/** Makes one kind of page of a class. A new kind is one class that implements this and one line in {@link PageMakers}. */
interface ClassPageMaker {

    /** What it is called and where it stands. */
    ClassPageName name();

    /** The page. */
    Page make(ClassDesk desk);

    /** The files beside the page; most pages have none. */
    default List<DataFile> files(ClassDesk desk) {
        return List.of();
    }
}
