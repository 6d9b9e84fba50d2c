package org.benchleaf.page;

import java.util.List;
import java.util.Map;
import org.benchleaf.text.RichText;

/**
 * What a result says in plain words, and beside it what it does not show.
 *
 * @param says sentences about what was found
 * @param limits sentences about what must not be read into it
 * @param words fixed labels
 */
public record Meaning(List<RichText> says, List<String> limits, Map<String, String> words) implements Block {

    public Meaning {
        says = List.copyOf(says);
        limits = List.copyOf(limits);
    }
}
