package org.benchleaf.derive.figure;

import java.util.Optional;
import org.benchleaf.calculate.Figure;

/**
 * One thing to measure out.
 *
 * @param of id of the material or solution
 * @param figure the amount for one batch
 * @param from where it is added by a meter's reading rather than measured out, the least that it may take; the amount
 *     is then the most
 * @param excess whether more of it is taken than dissolves, so that it is weighed roughly
 */
public record Ingredient(String of, Figure figure, Optional<Figure> from, boolean excess) {

    /** What is measured out. */
    Ingredient(String of, Figure figure) {
        this(of, figure, Optional.empty(), false);
    }
}
