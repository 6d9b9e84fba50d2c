package org.benchleaf.quantity;

import java.util.ArrayList;
import java.util.List;

/**
 * A piece of a sentence in English with its values apart, so that it can be said in another language too.
 *
 * @param text in English; a hole such as {@code {low}} stands for each value
 * @param holes name, value, name, value, …; a value is a clause, or a number or text that is alike in every language
 */
public record Clause(String text, List<Object> holes) {

    public Clause {
        holes = List.copyOf(holes);
    }

    /**
     * A clause and what stands in its holes.
     *
     * @param holes name, value, name, value, …
     */
    public static Clause of(String text, Object... holes) {
        return new Clause(text, List.of(holes));
    }

    /** A clause without a value; most are, and a page's script is smaller where those make no list. */
    public static Clause of(String text) {
        return new Clause(text, List.of());
    }

    /** A clause with one value. */
    public static Clause of(String text, String name, Object value) {
        return new Clause(text, List.of(name, value));
    }

    /** A clause with two values. */
    public static Clause of(String text, String name, Object value, String other, Object more) {
        return new Clause(text, List.of(name, value, other, more));
    }

    /** A number with its unit, or a text that somebody put in: alike in every language. */
    public static Clause value(String text) {
        return of("{value}", "value", text);
    }

    /** Each of several texts as a clause. */
    public static List<Clause> each(List<String> texts) {
        List<Clause> clauses = new ArrayList<>();
        for (String text : texts) {
            clauses.add(of(text));
        }
        return clauses;
    }

    /** Several in a row. */
    public static Clause list(List<Clause> several) {
        return joined("{first}, {next}", several);
    }

    /** One of several. */
    public static Clause either(List<Clause> several) {
        return joined("{first} or {next}", several);
    }

    /** Several sentences. */
    public static Clause sentences(List<Clause> several) {
        return joined("{first} {next}", several);
    }

    private static Clause joined(String pair, List<Clause> several) {
        Clause joined = several.get(several.size() - 1);
        for (int at = several.size() - 2; at >= 0; at--) {
            joined = of(pair, "first", several.get(at), "next", joined);
        }
        return joined;
    }

    /** In English. */
    public String english() {
        return said(TextLanguage.ENGLISH);
    }

    /**
     * In a language.
     *
     * @throws IllegalStateException if the words of the language have a hole for which there is no value
     */
    public String said(TextLanguage language) {
        String words = language.words().apply(text);
        StringBuilder said = new StringBuilder();
        int from = 0;
        for (int hole = words.indexOf('{'); hole >= 0; hole = words.indexOf('{', from)) {
            int end = words.indexOf('}', hole);
            if (end < 0) {
                break;
            }
            said.append(words, from, hole).append(filled(words.substring(hole + 1, end), language));
            from = end + 1;
        }
        return said.append(words, from, words.length()).toString();
    }

    private String filled(String name, TextLanguage language) {
        for (int at = 0; at + 1 < holes.size(); at += 2) {
            if (holes.get(at).equals(name)) {
                return holes.get(at + 1) instanceof Clause clause ? clause.said(language)
                        : language.value(String.valueOf(holes.get(at + 1)));
            }
        }
        throw new IllegalStateException("no value for {" + name + "} in: " + text);
    }
}
