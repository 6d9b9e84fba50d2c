package org.benchleaf.script;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.benchleaf.calculate.Calculations;
import org.benchleaf.calculate.Cells;
import org.benchleaf.calculate.Digits;
import org.benchleaf.calculate.FigureChain;
import org.benchleaf.calculate.FormularyText;
import org.benchleaf.calculate.Outcome;
import org.benchleaf.model.Method;
import org.benchleaf.quantity.Amount;
import org.teavm.jso.JSExport;

/**
 * The calculations as a page's script calls them: text goes in, text comes out, one record a line with its cells parted
 * by tabs.
 *
 * <p>Compiled to JavaScript when the program is built, with all that it reaches, so that a page works its sums with the
 * same code as the program does.
 */
public final class PageCalculator {

    private static Calculations calculations;
    private static Digits digits;

    private PageCalculator() {
    }

    /** A script is entered here; all is done by the methods below. */
    public static void main(String[] none) {
        // Nothing to do until a page asks.
    }

    /**
     * Makes ready to calculate.
     *
     * @param formulary what {@link FormularyText} made
     * @param decimalMark the decimal mark of the page's language, one character
     * @param weeks the unit of whole weeks in that language
     */
    @JSExport
    public static void load(String formulary, String decimalMark, String weeks) {
        calculations = new Calculations(FormularyText.read(formulary));
        digits = new Digits(decimalMark.charAt(0), weeks);
    }

    /**
     * Does a calculation.
     *
     * @param name the name of the calculation
     * @param inputs a line for each input: its key and its text
     * @return lines that begin with {@code number} (key, label, digits, unit), {@code word} (key, label, word),
     *     {@code withheld} (key, label, why), {@code given} (label, text, from) or {@code note}; or with {@code refused}
     *     (input, sentence)
     */
    @JSExport
    public static String work(String name, String inputs) {
        Map<String, String> texts = new LinkedHashMap<>();
        Cells.lines(inputs).forEach(line -> texts.put(line.get(0), line.get(1)));
        Outcome outcome = calculations.work(name, texts);
        List<String> lines = new ArrayList<>();
        if (outcome instanceof Outcome.Refused refused) {
            refused.refusals().forEach(each -> add(lines, "refused", each.input(), each.sentence()));
        } else {
            Outcome.Worked worked = (Outcome.Worked) outcome;
            worked.method().outputs().forEach(output -> answer(lines, worked, output));
            worked.givens().forEach(given -> add(lines, "given", given.label(), given.text(), given.from().text()));
            worked.notes().forEach(note -> add(lines, "note", note));
        }
        return String.join("\n", lines);
    }

    /**
     * Works the figures of a sheet again that follow from changed inputs.
     *
     * @param figures what {@link FigureChain} made
     * @param changes a line for each: the figure's id, the label of the input and its text
     * @return lines {@code number} (figure, digits, unit) or {@code none} (figure, why), each followed by its
     *     lines {@code by} (a change from which it follows) and {@code note}
     */
    @JSExport
    public static String follow(String figures, String changes) {
        List<String> lines = new ArrayList<>();
        for (FigureChain.Reworked each : FigureChain.read(figures, calculations).follow(Cells.lines(changes))) {
            each.value().map(value -> digits.told(value, each.rounding())).ifPresentOrElse(
                    amount -> add(lines, "number", each.id(), amount.number(), amount.unit()),
                    () -> add(lines, "none", each.id(), each.why()));
            each.causes().forEach(cause -> add(lines, "by", cause));
            each.notes().forEach(note -> add(lines, "note", note));
        }
        return String.join("\n", lines);
    }

    private static void answer(List<String> lines, Outcome.Worked worked, Method.Output output) {
        if (worked.numbers().containsKey(output.key())) {
            Amount amount = digits.amount(worked.numbers().get(output.key()));
            add(lines, "number", output.key(), output.label(), amount.number(), amount.unit());
        } else if (worked.words().containsKey(output.key())) {
            add(lines, "word", output.key(), output.label(), worked.words().get(output.key()));
        } else {
            add(lines, "withheld", output.key(), output.label(), worked.withheld().get(output.key()));
        }
    }

    private static void add(List<String> lines, String... cells) {
        lines.add(String.join("\t", cells).replace('\n', ' '));
    }
}
