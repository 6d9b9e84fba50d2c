package org.benchleaf.compose.part;

import java.util.List;
import java.util.stream.Stream;
import org.benchleaf.model.Library;
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

    /**
     * The paths of its pages, without making any.
     *
     * @param cards the cases that they may list; without any, those of the pages that stand whatever cases there are
     */
    default Stream<String> paths(Library library, List<CaseCard> cards) {
        return Stream.of(name().path());
    }
}
