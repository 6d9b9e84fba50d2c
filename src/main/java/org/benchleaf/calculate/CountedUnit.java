package org.benchleaf.calculate;

import java.util.List;
import org.benchleaf.quantity.Amount;

/** A unit that is a word of the language, in the plural forms of that language. No record: the script of sums grows by what one brings. */
public final class CountedUnit {

    private static final String NUMBER = "{n}";

    /** The language, then each form before its text. */
    private final List<String> cells;

    /**
     * Takes the forms of one unit.
     *
     * @param cells the language as its BCP 47 tag, then each plural form and its text: {@code {n} weeks}; the text of a form that names
     *     its number, as the Arabic dual does, has no {@code {n}}
     */
    public CountedUnit(List<String> cells) {
        this.cells = cells;
    }

    /** So many of the unit; the word stands alone where it names its number. */
    Amount of(long number, String digits) {
        String text = cells.get(cells.indexOf(Plurals.form(cells.get(0), number)) + 1);
        return text.startsWith(NUMBER) ? new Amount(digits, text.substring(NUMBER.length()).strip()) : new Amount(text, "");
    }

    /** In one line, for the script of a page: what it was made of, parted by tabs. */
    public String line() {
        return String.join("\t", cells);
    }

    /** What {@link #line} wrote. */
    public static CountedUnit read(String line) {
        return new CountedUnit(Cells.cut(line, '\t'));
    }
}
