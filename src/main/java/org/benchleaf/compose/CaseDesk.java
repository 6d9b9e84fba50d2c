package org.benchleaf.compose;

import java.util.List;
import java.util.Optional;
import org.benchleaf.derive.WorkedCase;
import org.benchleaf.model.Library;
import org.benchleaf.model.Picture;
import org.benchleaf.model.TreatmentCase;

/**
 * What the makers of one case's pages work from.
 *
 * @param worked the case
 * @param library what all cases share
 * @param clearance what may be produced
 * @param pages the makers of the pages that this case gets
 */
record CaseDesk(WorkedCase worked, Library library, Clearance clearance, List<CasePageMaker> pages) {

    TreatmentCase treatment() {
        return worked.source();
    }

    /** The path of one of the case's files. */
    String path(String file) {
        return Paths.inCase(treatment().id(), file);
    }

    /** Whether the case gets a page of that kind. */
    boolean has(String kind) {
        return pages.stream().anyMatch(page -> page.kind().equals(kind));
    }

    /** An empty page of that maker, ready to be filled. */
    Sheet sheet(CasePageMaker maker) {
        return new Sheet(path(maker.file()), maker.kind(), treatment().language(), library, worked.figures());
    }

    /** The filled page. */
    Page finish(Sheet sheet, CasePageMaker maker, String description) {
        String what = sheet.words().say("case-page." + maker.kind());
        return sheet.page(what, description, Optional.of(treatment().id()),
                new Frames(library, sheet.words(), clearance.audience()).ofCase(sheet.path(), what, treatment(), pages,
                        onScreenOnly(maker)));
    }

    /** What of a page no permission lets anybody print. */
    private List<String> onScreenOnly(CasePageMaker maker) {
        return !clearance.prints(maker.output()) ? List.of("page")
                : clearance.allows(Clearance.Output.PICTURES) && !clearance.prints(Clearance.Output.PICTURES)
                ? List.of("pictures") : List.of();
    }

    /** The pictures that may be shown. */
    List<Picture> pictures() {
        return clearance.pictures(treatment());
    }
}
