package org.benchleaf.compose;

import java.util.List;

/**
 * Makes one kind of page of the whole site, and pages below it. A new kind is one class that implements this and one
 * line in {@link PageMakers}.
 */
interface SitePageMaker {

    /** The kind, such as {@code glossary}; {@code way.<kind>} words the way to it. */
    String kind();

    /** The path of the page that the ways lead to. */
    String path();

    /** Whether it stands in the menu at the head of each page; at the foot all stand. */
    boolean inMenu();

    /** The page at {@link #path()} first, then any pages below it. */
    List<Page> make(SiteDesk desk);
}
