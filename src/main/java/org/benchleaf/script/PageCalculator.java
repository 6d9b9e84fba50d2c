package org.benchleaf.script;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.benchleaf.calculate.Calculations;
import org.benchleaf.calculate.Cells;
import org.benchleaf.calculate.CountedUnit;
import org.benchleaf.calculate.Digits;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureChain;
import org.benchleaf.calculate.FormularyText;
import org.benchleaf.calculate.Outcome;
import org.benchleaf.model.Method;
import org.benchleaf.quantity.Amount;
import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.TextLanguage;
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
    private static TextLanguage language = TextLanguage.ENGLISH;

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
     * @param weeks the unit of whole weeks in that language, as {@link CountedUnit#line} has it
     * @param words a line for each text that the calculations say: in English and in that language; empty for English
     * @param direction {@code rtl} for a language that runs from right to left
     */
    @JSExport
    public static void load(String formulary, String decimalMark, String weeks, String words, String direction) {
        calculations = new Calculations(FormularyText.read(formulary));
        digits = new Digits(decimalMark.charAt(0), CountedUnit.read(weeks));
        Map<String, String> said = new HashMap<>();
        for (List<String> line : Cells.lines(words)) {
            said.put(line.get(0), line.get(1));
        }
        language = new TextLanguage(text -> said.getOrDefault(text, text), decimalMark.charAt(0), direction.equals("rtl"));
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
        for (List<String> line : Cells.lines(inputs)) {
            texts.put(line.get(0), language.typed(line.get(1)));
        }
        Outcome outcome = calculations.work(name, texts);
        List<String> lines = new ArrayList<>();
        if (outcome instanceof Outcome.Refused refused) {
            refused.refusals().forEach(each -> add(lines, "refused", each.input(), each.about(name(name, each.input())).said(language)));
        } else {
            Outcome.Worked worked = (Outcome.Worked) outcome;
            worked.method().outputs().forEach(output -> answer(lines, worked, output));
            worked.givens().forEach(given -> add(lines, "given", said(given.label()), given(given),
                    said(given.from().text())));
            told(lines, "note", worked.notes());
        }
        return String.join("\n", lines);
    }

    /**
     * Works the figures of a sheet again that follow from changed inputs.
     *
     * @param figures what {@link FigureChain} made
     * @param changes a line for each: the figure's id, the label of the input as the chain has it and its text
     * @return lines {@code number} (figure, digits, unit) or {@code none} (figure, why), each followed by its
     *     lines {@code by} (a change from which it follows) and {@code note}
     */
    @JSExport
    public static String follow(String figures, String changes) {
        List<String> lines = new ArrayList<>();
        for (FigureChain.Reworked each : FigureChain.read(figures, calculations).follow(changes(changes))) {
            each.value().map(value -> digits.told(value, each.rounding())).ifPresentOrElse(
                    amount -> add(lines, "number", each.id(), amount.number(), amount.unit()),
                    () -> add(lines, "none", each.id(), each.why().said(language)));
            told(lines, "by", each.causes());
            told(lines, "note", each.notes());
        }
        return String.join("\n", lines);
    }

    private static List<List<String>> changes(String changes) {
        return Cells.lines(changes).stream().map(line -> List.of(line.get(0), line.get(1), language.typed(line.get(2)))).toList();
    }

    /** What the form calls an input: by its label, or by its key where the calculation has no such input. */
    private static Clause name(String calculation, String input) {
        for (Method method : calculations.formulary().method(calculation).stream().toList()) {
            for (Method.Input each : method.inputs()) {
                if (each.key().equals(input)) {
                    return Clause.of(each.label());
                }
            }
        }
        return Clause.of(input);
    }

    private static String said(String text) {
        return language.words().apply(text);
    }

    /** What was put in, as a text of the language. */
    private static String given(Figure.Given given) {
        return given.values().isEmpty() ? said(given.text()) : language.withMark(given.text());
    }

    private static void answer(List<String> lines, Outcome.Worked worked, Method.Output output) {
        if (worked.numbers().containsKey(output.key())) {
            Amount amount = digits.amount(worked.numbers().get(output.key()));
            add(lines, "number", output.key(), said(output.label()), amount.number(), amount.unit());
        } else if (worked.words().containsKey(output.key())) {
            add(lines, "word", output.key(), said(output.label()), said(worked.words().get(output.key())));
        } else {
            add(lines, "withheld", output.key(), said(output.label()), worked.withheld().get(output.key()).said(language));
        }
    }

    private static void told(List<String> lines, String key, List<Clause> clauses) {
        for (Clause clause : clauses) {
            add(lines, key, clause.said(language));
        }
    }

    private static void add(List<String> lines, String... cells) {
        lines.add(String.join("\t", cells).replace('\n', ' '));
    }
}
