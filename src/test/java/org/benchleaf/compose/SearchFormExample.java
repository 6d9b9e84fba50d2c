package org.benchleaf.compose;

import java.util.List;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.Link;
import org.benchleaf.page.SearchForm;
import org.benchleaf.words.Words;

/** A SearchForm as it stands on a page. */
final class SearchFormExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new SearchForm("", "search-index.js", Words.in("en").group("search"), List.of(Link.to("Glossary", "glossary.html")));
    }
}
