package org.benchleaf.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.quantity.Amount;
import org.benchleaf.text.Inline;
import org.benchleaf.text.RichText;

/**
 * A worked-out number that opens in place to its working.
 *
 * @param figure the id of the figure
 * @param anchor where links to the working arrive
 * @param label what the number is
 * @param amount the number, rounded
 * @param method name of the calculation, in words
 * @param methodHref the calculation's own page; empty if it has none
 * @param formula the formula as MathML; empty if the method has none
 * @param formulaText the formula as plain text
 * @param formulaAt the working of this page that tells the formula and what else they have in common, where this one does not
 * @param given what was put in
 * @param full the result with more digits, to follow the sum by hand; empty if the number has them already
 * @param spread how far it may lie off, in words
 * @param sources where the method and its inputs come from
 * @param caveats what it must not be taken for
 * @param said what the publication from which the case is told says to it
 * @param reworkable whether the page of sums can work it again with other values
 * @param words fixed labels
 */
public record Working(String figure, String anchor, String label, Amount amount, String method, String methodHref,
        Optional<Markup> formula, String formulaText, Optional<Link> formulaAt, List<Given> given, Optional<String> full, String spread,
        List<Citation> sources, List<String> caveats, Optional<RichText> said, boolean reworkable,
        Map<String, String> words) implements Block {

    public Working {
        given = List.copyOf(given);
        sources = List.copyOf(sources);
        caveats = List.copyOf(caveats);
    }

    /** Text that tells a figure, marked so that it can be told anew where an input is changed at the bench. */
    public static RichText marked(String figure, RichText text) {
        return RichText.of(new Inline.MarkedFigure(figure, text.parts()));
    }

    /** One number that was put in: what, how much, and where it comes from, with a link if that is another figure. */
    public record Given(String label, String text, String from, Optional<String> href) {
    }
}
