package org.benchleaf.model;

import java.util.Set;

/**
 * What a label leaves out because something stronger stands on it.
 *
 * @param statement the H code
 * @param leftOutBeside H codes beside which it is not printed
 * @param noPictogramBeside H codes beside which its pictogram is not shown for it
 * @param source where the rule was read
 */
public record Precedence(String statement, Set<String> leftOutBeside, Set<String> noPictogramBeside, String source) {

    public Precedence {
        leftOutBeside = Set.copyOf(leftOutBeside);
        noPictogramBeside = Set.copyOf(noPictogramBeside);
    }
}
