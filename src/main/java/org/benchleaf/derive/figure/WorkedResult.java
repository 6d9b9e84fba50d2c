package org.benchleaf.derive.figure;

import java.util.List;
import java.util.Map;
import org.benchleaf.calculate.Figure;
import org.benchleaf.model.Result;

/**
 * A result with its statistics.
 *
 * @param source the result as written
 * @param figures its figures by their last word, such as {@code mean-before}, {@code change}, {@code de2000.foot-margin}
 * @param cautions keys of what must be said beside it, such as {@code fewer-than-three}, {@code surface-only}
 */
public record WorkedResult(Result source, Map<String, Figure> figures, List<String> cautions) {

    /** The caution that the height changed by no more than the rule can read. */
    public static final String HEIGHT_WITHIN_ONE_STEP = "height-within-one-step";
    /** The caution that the width changed by no more than the rule can read. */
    public static final String WIDTH_WITHIN_ONE_STEP = "width-within-one-step";

    public WorkedResult {
        cautions = List.copyOf(cautions);
    }
}
