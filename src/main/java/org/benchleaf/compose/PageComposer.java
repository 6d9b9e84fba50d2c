package org.benchleaf.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.derive.WorkedCase;
import org.benchleaf.model.Library;
import org.benchleaf.model.Studio;

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
        return new CasePages(offered(composition.all(), library), composition.files(), composition.card());
    }

    /** The pages, of which the first says which can be taken away as one file each. */
    private static List<Page> offered(List<Page> pages, Library library) {
        if (pages.isEmpty() || !library.studio().takeAlong().contains(Studio.TakeAlong.ONE_FILE)) {
            return pages;
        }
        Words words = Words.in(pages.get(0).language());
        TakeAlong whole = new TakeAlong(pages.stream().map(page -> Link.to(page.title(), page.path())).toList(),
                words.say("take-along.note"));
        List<Page> offered = new ArrayList<>(pages);
        offered.set(0, pages.get(0).with(new Section("take-along", words.say("take-along.heading"),
                Optional.of(words.say("take-along.lead")), List.of(whole))));
        return offered;
    }
}
