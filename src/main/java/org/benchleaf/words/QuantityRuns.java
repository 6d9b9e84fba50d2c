package org.benchleaf.words;

import java.util.Comparator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.quantity.Unit;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.TextNode;

/**
 * Keeps a quantity together in a line that runs from right to left: "412 mm × 298 mm" would else be shown as "mm × 298 mm 412"
 * (Unicode Standard Annex 9, the bidirectional algorithm).
 */
public final class QuantityRuns {

    private static final String NUMBER = "[+±−-]?\\d[\\d.,\\u202f]*+";
    private static final String UNITS = Stream.of(Unit.values()).map(Unit::symbol).filter(symbol -> !symbol.isEmpty())
            .sorted(Comparator.comparingInt(String::length).reversed()).map(Pattern::quote).collect(Collectors.joining("|"));
    private static final String PIECE = "(?:" + NUMBER + "|[±×+–−/=<>≤≥]|(?:" + UNITS + ")(?![\\p{L}\\p{N}]))";
    private static final Pattern RUN = Pattern.compile("(?<![\\p{IsLatin}\\p{N}.,])(?:pH[ \\u00a0\\u202f])?+" + NUMBER
            + "(?:[ \\u00a0\\u202f]?+" + PIECE + ")*+");
    private static final Pattern ARABIC = Pattern.compile("\\p{IsArabic}");
    private static final Pattern BARE = Pattern.compile("[\\d.,:]*+");

    private QuantityRuns() {
    }

    /** A text of the same length with blanks in the place of every quantity. */
    static String without(String text) {
        return RUN.matcher(text).replaceAll(run -> " ".repeat(run.end() - run.start()));
    }

    /**
     * Sets every quantity of a text apart; a bare number needs it not. Where words stand between numbers, as in a range, what is set apart
     * as a whole runs from right to left, and each quantity in it is set apart again.
     */
    public static void isolate(TextNode text) {
        Element parent = text.parent();
        Element apart = parent.closest("bdi");
        if (parent.closest("bdi[dir=ltr], svg, option, title, textarea") != null
                || apart != null && !ARABIC.matcher(apart.text()).find()) {
            return;
        }
        String whole = text.getWholeText();
        Matcher run = RUN.matcher(whole);
        int from = 0;
        while (run.find()) {
            if (BARE.matcher(run.group()).matches()) {
                continue;
            }
            text.before(new TextNode(whole.substring(from, run.start())));
            text.before(new Element("bdi").attr("dir", "ltr").appendChild(new TextNode(run.group())));
            from = run.end();
        }
        if (from > 0) {
            text.before(new TextNode(whole.substring(from)));
            text.remove();
        }
    }
}
