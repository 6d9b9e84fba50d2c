package org.benchleaf.calculate;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.benchleaf.quantity.Amount;

/**
 * A unit that is a word of the language, in the plural forms of that language.
 *
 * @param language BCP 47 tag
 * @param texts by plural form: {@code {n} weeks}; a form that names its number, as the Arabic dual does, has no {@code {n}}
 */
public record CountedUnit(String language, Map<String, String> texts) {

    private static final String NUMBER = "{n}";

    public CountedUnit {
        texts = Map.copyOf(texts);
    }

    /** So many of the unit; the word stands alone where it names its number. */
    Amount of(long number, String digits) {
        String text = texts.get(Plurals.form(language, number));
        return text.startsWith(NUMBER) ? new Amount(digits, text.substring(NUMBER.length()).strip()) : new Amount(text, "");
    }

    /** In one line, for the script of a page: the language, then each form with its text, parted by tabs. */
    public String line() {
        return texts.entrySet().stream().sorted(Map.Entry.comparingByKey())
                .map(entry -> "\t" + entry.getKey() + "\t" + entry.getValue()).collect(Collectors.joining("", language, ""));
    }

    /** What {@link #line} wrote. */
    public static CountedUnit read(String line) {
        List<String> cells = Cells.cut(line, '\t');
        Map<String, String> texts = new LinkedHashMap<>();
        for (int at = 1; at + 1 < cells.size(); at += 2) {
            texts.put(cells.get(at), cells.get(at + 1));
        }
        return new CountedUnit(cells.get(0), texts);
    }
}
