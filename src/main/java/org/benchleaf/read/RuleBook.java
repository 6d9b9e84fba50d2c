package org.benchleaf.read;

import java.util.List;
import org.benchleaf.model.Matrix;
import org.benchleaf.model.Rule;
import org.benchleaf.model.Source;

/**
 * The rules of the trade as a studio keeps them.
 *
 * @param rules the rules of the program, as the studio changed them, then the studio's own
 * @param matrix the matrix, likewise
 * @param sources the published sources that come with both
 */
public record RuleBook(List<Rule> rules, Matrix matrix, List<Source> sources) {

    public RuleBook {
        rules = List.copyOf(rules);
        sources = List.copyOf(sources);
    }
}
