package org.benchleaf.message;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Fills the named holes of a sentence. */
public final class Holes {

    private static final Pattern HOLE = Pattern.compile("\\{([a-z][a-zA-Z]*)}");

    private Holes() {
    }

    /**
     * The sentence with every hole {@code {name}} filled.
     *
     * @param pairs name and value by turns
     * @throws IllegalArgumentException if a hole has no value
     */
    public static String fill(String sentence, Object... pairs) {
        Matcher hole = HOLE.matcher(sentence);
        StringBuilder filled = new StringBuilder();
        while (hole.find()) {
            hole.appendReplacement(filled, Matcher.quoteReplacement(value(hole.group(1), sentence, pairs)));
        }
        return hole.appendTail(filled).toString();
    }

    private static String value(String name, String sentence, Object... pairs) {
        for (int i = 0; i + 1 < pairs.length; i += 2) {
            if (pairs[i].equals(name)) {
                return String.valueOf(pairs[i + 1]);
            }
        }
        throw new IllegalArgumentException("no value for {" + name + "} in: " + sentence);
    }
}
