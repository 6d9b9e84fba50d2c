package org.benchleaf.model;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A value that a record does not give, and says so.
 *
 * @param kind which of the closed words was written
 * @param why what stands in parentheses behind it; empty if nothing does
 */
public record MissingValue(Kind kind, Optional<String> why) {

    private static final Pattern WRITTEN = Pattern.compile("(not known|not yet known|not applicable|withheld)(?:\\s*\\((.*)\\))?",
            Pattern.DOTALL);

    /** Why there is no value. */
    public enum Kind {
        /** Nobody recorded it. */
        NOT_KNOWN("not known"),
        /** It is still to be found out and written; in drafts only. */
        NOT_YET_KNOWN("not yet known"),
        /** There can be none. */
        NOT_APPLICABLE("not applicable"),
        /** It is known and kept back. */
        WITHHELD("withheld");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The word as an author writes it. */
        public String word() {
            return word;
        }
    }

    /** The missing value that a text stands for, such as {@code not known (the notebook is lost)}; empty if it is another. */
    public static Optional<MissingValue> read(String text) {
        Matcher written = WRITTEN.matcher(text.strip());
        return written.matches() ? Optional.of(new MissingValue(kind(written.group(1)),
                Optional.ofNullable(written.group(2)).map(String::strip).filter(why -> !why.isEmpty()))) : Optional.empty();
    }

    private static Kind kind(String word) {
        return Stream.of(Kind.values()).filter(kind -> kind.word.equals(word)).findFirst().orElseThrow();
    }
}
