package org.benchleaf.read;

import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.model.Reference;

/**
 * The words for the places that an official statement leaves to whoever labels the bottle: {@code …}, and what stands in
 * square brackets.
 *
 * @param words one text for each place, in their order; an empty one leaves the place out
 * @param source where the words come from
 */
record Blanks(List<String> words, String source) {

    private static final Pattern PLACE = Pattern.compile("/?…|\\[[^\\[\\]]*+\\]");

    Blanks {
        words = List.copyOf(words);
    }

    /** The row of one statement, which must be known and have as many places as the row has words. */
    static Blanks of(ReferenceRow row, Map<String, Reference.Statement> statements) {
        int places = Optional.ofNullable(statements.get(row.key())).map(known -> in(known.official())).orElse(0);
        return new Blanks(row.texts("words", places), row.text("source"));
    }

    /** How many places of a wording are open. */
    static int in(String official) {
        return (int) PLACE.matcher(official).results().count();
    }

    /** The wording as it is printed: an alternative that is left out takes its slash along, the sentence keeps its stop. */
    String filledInto(String official) {
        Iterator<String> next = words.iterator();
        String filled = PLACE.matcher(official).replaceAll(place -> {
            String word = next.next();
            boolean slash = place.group().startsWith("/") && !word.isEmpty();
            return Matcher.quoteReplacement(slash ? "/" + word : word);
        });
        return filled.endsWith(".") ? filled : filled + ".";
    }
}
