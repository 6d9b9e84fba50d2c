package org.benchleaf.compose;

import java.util.List;
import java.util.function.Supplier;

/** A SearchForm as it stands on a page. */
final class SearchFormExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new SearchForm("", "search-index.js", Words.in("en").group("search"), List.of(Link.to("Glossary", "glossary.html")));
    }
}
