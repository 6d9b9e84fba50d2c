package org.benchleaf.compose.cases;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.benchleaf.calculate.Digits;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureChain;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.compose.part.HandAmounts;
import org.benchleaf.compose.part.Resolution;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.json.JsonText;
import org.benchleaf.page.BenchSums;
import org.benchleaf.page.Block;
import org.benchleaf.page.DataFile;

/** Lets the sheets of a case be worked again at the bench, where its file of figures may be published. */
final class BenchSumsMaker {

    private BenchSumsMaker() {
    }

    /** The part of a sheet that tells what was changed; empty where the figures may not be published. */
    static Optional<Block> part(Sheet sheet, CaseDesk desk) {
        if (!applies(desk)) {
            return Optional.empty();
        }
        return Optional.of(new BenchSums(sheet.way(desk.path(file(desk))), sheet.words().group("bench-sums")));
    }

    /** The figures of the case as a chain, for the scripts of its sheets in the language of the desk. */
    static List<DataFile> files(CaseDesk desk) {
        return applies(desk) ? List.of(new DataFile(desk.path(file(desk)), "window.BENCHLEAF_FIGURES = " + JsonText.script(
                JsonText.object("chain", FigureChain.text(desk.worked().figures().values(), BenchSumsMaker::rounding))) + ";\n"))
                : List.of();
    }

    /** Each language has its own, since the inputs are found by what the sheet calls them. */
    private static String file(CaseDesk desk) {
        return desk.folder().language().isEmpty() ? "figures.js" : "figures." + desk.folder().language() + ".js";
    }

    private static boolean applies(CaseDesk desk) {
        return desk.clearance().allows(Clearance.Output.FIGURES) && desk.clearance().allows(Clearance.Output.STEP_SHEET)
                && !desk.treatment().steps().isEmpty();
    }

    private static String rounding(Figure figure) {
        OptionalInt decimals = Resolution.of(figure);
        return HandAmounts.isToAMark(figure) ? Digits.TO_A_MARK : decimals.isPresent() ? String.valueOf(decimals.getAsInt()) : "";
    }
}
