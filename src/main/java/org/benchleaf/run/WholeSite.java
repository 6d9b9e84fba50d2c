package org.benchleaf.run;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.compose.part.SearchEntry;
import org.benchleaf.message.Messages;
import org.benchleaf.publish.SiteFile;
import org.benchleaf.publish.TakenFiles;

/**
 * What makes the files of a whole site, group by group, each with a mark of all that decides over it: where the mark is that of
 * the last edition, the files are the same and need not be made. Nothing is made before it is asked for.
 */
interface WholeSite {

    /** The mark of the pages and the data beside them, the first page before it offers anything among them. */
    String mark();

    /**
     * Makes the pages and the data.
     *
     * @param shown where it is shown how far they are
     * @param said is told what is the matter with them
     */
    Pages pages(Progress.Shown shown, Messages said);

    /** The mark of the index of the search. */
    String searchMark();

    /**
     * Makes the index of the search.
     *
     * @param found in the pages of the whole site
     * @param said is told what is the matter with it
     */
    List<SiteFile> search(Found found, Messages said);

    /** What decides over the files to be taken away, besides the other files; empty if the studio wants none of a whole site. */
    Optional<String> takenKey();

    /**
     * Makes what can be taken away of a whole site.
     *
     * @param files of the site, those to be taken away not among them
     * @param said is told what is the matter
     */
    TakenFiles taken(List<SiteFile> files, Messages said);

    /**
     * The site's first page, which belongs to no group.
     *
     * @param taken which it offers
     * @param said is told what is the matter with it
     */
    SiteFile first(TakenFiles taken, Messages said);

    /** What is the matter with the files of the content that all cases share; nothing if no case was read. */
    Messages sources();

    /**
     * The pages of the whole site and the data beside them.
     *
     * @param files without the first page
     */
    record Pages(List<SiteFile> files, Found found) {

        public Pages {
            files = List.copyOf(files);
        }
    }

    /**
     * What the search takes from the pages of the whole site.
     *
     * @param own from those in the site's own language
     * @param translated from those in other languages, by the language
     */
    record Found(List<SearchEntry> own, Map<String, List<SearchEntry>> translated) {

        static final Found NOTHING = new Found(List.of(), Map.of());

        public Found {
            own = List.copyOf(own);
            translated = Map.copyOf(translated);
        }
    }
}
