package org.benchleaf.compose.part;

import java.util.List;
import org.benchleaf.page.Page;

/**
 * Makes one kind of page of the whole site, and pages below it. A new kind is one class that implements this and one
 * line in {@code PageMakers}.
 */
public interface SitePageMaker {

    /** What it is called and where the ways lead. */
    SitePageName name();

    /** The page of that name first, then any pages below it. */
    List<Page> make(SiteDesk desk);
}
