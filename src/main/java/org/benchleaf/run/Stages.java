package org.benchleaf.run;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.message.Messages;
import org.benchleaf.privacy.PrivateScan;
import org.benchleaf.publish.SiteFile;

/** The line of stages as one run of publishing sees it; several cases may be in it at once. */
interface Stages {

    /** The folders of all cases, in the order of their names. */
    List<Path> cases();

    /** Everything besides a case's own files that decides over its pages: shared files, the templates, the program. */
    String seed(String caseId);

    /** For whom there is a site, that for the public first. */
    List<Audience> audiences();

    /** Reads and checks one case. */
    Checked check(Path caseFolder);

    /**
     * A mark of the private values of all cases, which tells whether they are the same and not what they are; empty if
     * no case was made, since then none of them can be new.
     */
    Optional<String> privateValues();

    /**
     * Looks for the private values that have come since an earlier edition.
     *
     * @param before the mark that was left by it
     */
    PrivateScan newValues(String before);

    /** A file shared by all cases that is another one than when the run began; empty if all are the same. */
    Optional<Path> changed();

    /**
     * What makes the files of a whole site.
     *
     * @param cards of the cases that have pages in it
     */
    WholeSite whole(Audience audience, List<CaseCard> cards);

    /** One case, read and checked. */
    interface Checked {

        /** What was said so far. */
        Messages messages();

        /** What the check and the permissions came to: two days of the same standing give the same pages. */
        String standing();

        /**
         * Works the case out and makes its files, also where the rules have errors to tell: of a case that cannot be
         * understood there are none.
         */
        Made make();
    }

    /**
     * One case, made.
     *
     * @param parts what of it stands in each site; empty if the messages have errors or the case cannot be understood
     * @param messages what was said while making it
     */
    record Made(Map<Audience, Part> parts, Messages messages) {
    }

    /** What of a case stands in one site. */
    record Part(List<SiteFile> files, CaseCard card) {
    }
}
