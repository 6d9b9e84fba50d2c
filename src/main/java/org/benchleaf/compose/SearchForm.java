package org.benchleaf.compose;

import java.util.List;
import java.util.Map;

/**
 * The search, with the ways to go without it.
 *
 * @param words fixed labels and what the script says
 * @param instead the index pages, for readers without scripts
 */
public record SearchForm(Map<String, String> words, List<Link> instead) implements Block {

    public SearchForm {
        instead = List.copyOf(instead);
    }
}
