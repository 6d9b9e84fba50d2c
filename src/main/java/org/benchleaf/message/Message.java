package org.benchleaf.message;

import java.util.Comparator;

/**
 * One thing said to the author, with its holes filled.
 *
 * @param id the entry of the catalogue
 * @param place where
 * @param what what is the matter
 * @param why why it matters
 * @param fix what to do
 */
public record Message(MessageId id, Place place, String what, String why, String fix) {

    /** The order in which messages are told: by file, line, column, code. */
    public static final Comparator<Message> READING_ORDER = Comparator
            .comparing((Message message) -> message.place().file())
            .thenComparingInt(message -> message.place().line())
            .thenComparingInt(message -> message.place().column())
            .thenComparing(message -> message.id().code())
            .thenComparing(Message::what);

    /** The stable code. */
    public String code() {
        return id.code();
    }

    /** How much it weighs. */
    public Severity severity() {
        return id.severity();
    }
}
