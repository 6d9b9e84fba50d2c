package org.benchleaf.page;

import java.util.List;
import java.util.Map;

/**
 * The search, with the ways to go without it.
 *
 * @param up the way to the site's root: empty or {@code ../}
 * @param index the name of the script with the first part of the index
 * @param words fixed labels and what the script says
 * @param instead the index pages, for readers without scripts
 */
public record SearchForm(String up, String index, Map<String, String> words, List<Link> instead) implements Block {

    public SearchForm {
        instead = List.copyOf(instead);
    }
}
