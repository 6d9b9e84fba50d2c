package org.benchleaf.model;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * A value that a record does not give, and says so.
 *
 * @param kind which of the closed words was written
 * @param why what stands in parentheses behind it; empty if nothing does
 */
public record MissingValue(Kind kind, Optional<String> why) {

    /** Why there is no value. */
    public enum Kind {
        /** Nobody recorded it. */
        NOT_KNOWN("not known"),
        /** A publication or a record may tell it, and who retells it did not read that. */
        NOT_READ("not read"),
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
        String written = text.strip();
        return Stream.of(Kind.values()).filter(kind -> written.startsWith(kind.word))
                .flatMap(kind -> of(kind, written.substring(kind.word.length()).strip()).stream()).findFirst();
    }

    private static Optional<MissingValue> of(Kind kind, String rest) {
        if (rest.isEmpty()) {
            return Optional.of(new MissingValue(kind, Optional.empty()));
        }
        return rest.startsWith("(") && rest.endsWith(")") && rest.length() > 1 ? Optional.of(new MissingValue(kind,
                Optional.of(rest.substring(1, rest.length() - 1).strip()).filter(why -> !why.isEmpty()))) : Optional.empty();
    }
}
