package org.benchleaf.derive.figure;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.model.Result;

/**
 * A result with its statistics.
 *
 * @param source the result as written
 * @param name its name in the ids of figures, such as {@code pH}
 * @param figures its figures by their last word, such as {@code mean-before}, {@code change}, {@code de2000.foot-margin}
 * @param cautions keys of what must be said beside it, such as {@code fewer-than-three}, {@code surface-only}
 */
public record WorkedResult(Result source, String name, Map<String, Figure> figures, List<String> cautions) {

    /** The caution that the height changed by no more than the rule can read. */
    public static final String HEIGHT_WITHIN_ONE_STEP = "height-within-one-step";
    /** The caution that the width changed by no more than the rule can read. */
    public static final String WIDTH_WITHIN_ONE_STEP = "width-within-one-step";

    public WorkedResult {
        cautions = List.copyOf(cautions);
    }

    /** What is told of it in no number of its own, or in more than a number, by the name under which a story cites it. */
    public Map<String, AsStated> asStated() {
        Map<String, AsStated> told = new LinkedHashMap<>();
        if (source instanceof Result.Stated stated) {
            stated.before().ifPresent(value -> told.put(cited("before"), new AsStated.Value(value, stated.unit())));
            stated.after().ifPresent(value -> told.put(cited("after"), new AsStated.Value(value, stated.unit())));
        } else if (source instanceof Result.Words words) {
            words.before().ifPresent(text -> told.put(cited("before"), new AsStated.InWords(text)));
            words.after().ifPresent(text -> told.put(cited("after"), new AsStated.InWords(text)));
        }
        return told;
    }

    private String cited(String when) {
        return FigureKey.ofResult(name, FigureKey.STATED + when, "").id();
    }
}
