package org.benchleaf.compose;

import org.benchleaf.compose.cases.CasePages;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.compose.part.Offers;
import org.benchleaf.derive.WorkedCase;
import org.benchleaf.model.Library;

/** Cuts one worked case into the pages that it may have. */
public final class PageComposer {

    private PageComposer() {
    }

    /**
     * The pages of a case, data beside them, and what the site's own pages need of it.
     *
     * @param clearance what may be produced on the day of publishing; a case of which nothing may be gets no pages
     */
    public static CasePages compose(WorkedCase worked, Library library, Clearance clearance) {
        CaseComposition composition = new CaseComposition(worked, library, clearance);
        return new CasePages(Offers.onCase(composition.all(), library.studio().takeAlong()), composition.files(), composition.card(),
                composition.book(), composition.manifest(), composition.linkPicture(), composition.translated().stream()
                        .map(translated -> translated.offering(library.studio())).toList());
    }
}
