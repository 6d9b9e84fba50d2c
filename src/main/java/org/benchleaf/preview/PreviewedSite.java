package org.benchleaf.preview;

import java.util.List;
import java.util.Optional;
import org.benchleaf.message.Message;
import org.benchleaf.publish.SiteFile;

/**
 * What a preview serves: files by their paths, each made when it is looked at. A path begins with the name of a site, as in
 * {@code site/cases/tide-table/steps.html}. May be asked by several threads at once.
 */
public interface PreviewedSite {

    /** Looks whether files on the disk have changed; afterwards pages are those of the files as they stand now. */
    boolean look();

    /** The names of the sites, that for the public first. */
    List<String> sites();

    /** The ids of all cases, also of those that have no page. */
    List<String> cases();

    /** A page; the last good one if it cannot be made anew. */
    Shown page(String path);

    /** A file that is no page; empty if there is none. */
    Optional<SiteFile> file(String path);

    /** What is told beside a page. */
    Strip strip(String path);

    /**
     * A page as it is shown.
     *
     * @param file the page, which loads {@link PreviewServer#script(int)}; empty if there is none and none was made before
     * @param version differs for each state of the page; {@link #NONE} if there is none
     */
    record Shown(Optional<SiteFile> file, int version) {

        /** The version of a page that is not there. */
        public static final int NONE = 0;

        /** No page. */
        public static Shown none() {
            return new Shown(Optional.empty(), NONE);
        }
    }

    /**
     * What is told beside a page.
     *
     * @param notices sentences on the page as a whole, such as that it is an older one
     * @param messages on the files that it is made of and on those that changed last
     */
    record Strip(List<String> notices, List<Message> messages) {

        public Strip {
            notices = List.copyOf(notices);
            messages = List.copyOf(messages);
        }
    }
}
