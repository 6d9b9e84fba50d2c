package org.benchleaf.compose;

import java.util.List;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.CaseLines;
import org.benchleaf.page.Link;

/** CaseLines as they stand on a page. */
final class CaseLinesExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new CaseLines(List.of(
                new CaseLines.Entry(Link.to("A tide table that had met the tide", "cases/tide-table/index.html"), "en",
                        "broadside, letterpress"),
                new CaseLines.Entry(Link.to("Una carta que no se lavó", "cases/carta/index.html"), "es", "carta")));
    }
}
