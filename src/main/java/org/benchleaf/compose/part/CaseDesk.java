package org.benchleaf.compose.part;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.derive.WorkedCase;
import org.benchleaf.model.Library;
import org.benchleaf.model.Picture;
import org.benchleaf.model.Solution;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.page.Link;
import org.benchleaf.page.Page;
import org.benchleaf.page.Paths;
import org.benchleaf.words.StepTitle;
import org.benchleaf.words.Words;

/**
 * What the makers of one case's pages work from.
 *
 * @param worked the case
 * @param library what all cases share
 * @param clearance what may be produced
 * @param pages the pages that this case gets
 * @param names every kind of page
 * @param folder in which language they are told, and where they lie
 */
public record CaseDesk(WorkedCase worked, Library library, Clearance clearance, List<CasePageName> pages,
                PageNames names, LanguageFolder folder) {

    public TreatmentCase treatment() {
        return worked.source();
    }

    /** The path of one of the case's files. */
    public String path(String file) {
        return Paths.inCase(treatment().id(), file);
    }

    /** The publication from which the case is told, in full, for programs; empty if it is not. */
    public Optional<String> basis() {
        return treatment().sources().retelling().map(retelling -> Sources.of(library).reference(retelling.passage().source()));
    }

    /** Whether the case gets a page of that kind. */
    public boolean has(String kind) {
        return pages.stream().anyMatch(page -> page.kind().equals(kind));
    }

    /** The link from a page of the case to the file of a table, if it may be produced. */
    public Optional<Link> file(Sheet sheet, DataTable table) {
        return clearance.allows(Clearance.Output.DATA) ? Optional.of(sheet.link(
                sheet.words().say("results.file", "what", table.caption()), path(table.file()))) : Optional.empty();
    }

    /** An empty page of that name, ready to be filled. */
    public Sheet sheet(CasePageName page) {
        return new Sheet(folder.of(path(page.file())), page.kind(), treatment().language(), library, worked.figures(), names)
                .toldFrom(treatment().sources()).lyingIn(folder).naming(this::owner).stating(worked.asStated());
    }

    /** The step with its number, or the solution, of which a figure is; empty if it is of the case itself. */
    public Optional<String> owner(FigureKey key) {
        return switch (key.owner()) {
            case STEP -> treatment().step(key.of()).map(step -> (treatment().steps().indexOf(step) + 1) + ". "
                    + new StepTitle(Words.in(treatment().language()), treatment()).of(step));
            case SOLUTION -> treatment().solution(key.of()).map(Solution::name);
            default -> Optional.empty();
        };
    }

    /** The filled page. */
    public Page finish(Sheet sheet, CasePageName page, String description) {
        String what = sheet.words().say("case-page." + page.kind());
        return sheet.page(what, description, Optional.of(treatment().id()),
                new Frames(library, sheet.words(), clearance.audience(), names.ofSite()).lyingIn(folder).ofCase(sheet.path(), what,
                        treatment(), pages, onScreenOnly(page), linkPicture()));
    }

    private List<String> onScreenOnly(CasePageName page) {
        return onScreenOnly(page.output(), page.output() == Clearance.Output.PREPARATION_SHEET);
    }

    /** What of a page no permission lets anybody print, and what it leaves off its paper. */
    public List<String> onScreenOnly(Clearance.Output output, boolean workings) {
        return Stream.concat(unlicensed(output).stream(), leftOff(output, workings).filter(any -> clearance.prints(output))).toList();
    }

    /** The details of a case study, which the results have; the workings of recipes and of a class as the author chose. */
    private Stream<String> leftOff(Clearance.Output output, boolean workings) {
        return output == Clearance.Output.CASE_STUDY ? Stream.of("details")
                : Stream.of("workings").filter(any -> workings && !treatment().workingsPrinted());
    }

    private List<String> unlicensed(Clearance.Output output) {
        return !clearance.prints(output) ? List.of("page")
                : clearance.allows(Clearance.Output.PICTURES) && !clearance.prints(Clearance.Output.PICTURES)
                ? List.of("pictures") : List.of();
    }

    /** The picture beside a link to the case; empty without an address on the web or where the public text is not permitted. */
    public Optional<LinkPicture> linkPicture() {
        return clearance.audience().isPublic() && clearance.allows(Clearance.Output.CASE_STUDY) && library.studio().web().isPresent()
                ? LinkPicture.of(path(Paths.LINK_PICTURE), pictures()) : Optional.empty();
    }

    /** The pictures that may be shown. */
    public List<Picture> pictures() {
        return clearance.pictures(treatment());
    }
}
