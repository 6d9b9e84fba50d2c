package org.benchleaf.compose;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.CaseList;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Link;
import org.benchleaf.words.Words;

/** A CaseList as it stands on a page. */
final class CaseListExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new CaseList(List.of(new CaseList.Entry(
                Link.to("A tide table that had met the tide", "cases/tide-table/index.html"), "en",
                "A brown, brittle sheet is washed and mended.", List.of(Fact.of("Level", "Foundation")),
                Optional.empty(), List.of(new CaseList.OtherPage(
                        Link.to("Results: A tide table", "cases/tide-table/results.html"), "Results")))),
                Words.in("en").group("case-list"));
    }
}
