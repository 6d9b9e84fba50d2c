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
 * @param asks what it asks that the case leaves open
 */
public record Message(Id id, Place place, String what, String why, String fix, OpenQuestion asks) {

    /** The order in which messages are told: by file, line, column, code. */
    static final Comparator<Message> READING_ORDER = Comparator
            .comparing((Message message) -> message.place().file())
            .thenComparingInt(message -> message.place().line())
            .thenComparingInt(message -> message.place().column())
            .thenComparing(message -> message.id().code())
            .thenComparing(Message::what);

    /** One that asks nothing. */
    public Message(Id id, Place place, String what, String why, String fix) {
        this(id, place, what, why, fix, OpenQuestion.NONE);
    }

    /** The stable code. */
    public String code() {
        return id.code();
    }

    /** How much it weighs. */
    public Severity severity() {
        return id.severity();
    }

    /**
     * One entry of the catalogue of messages. Codes are never reused or renumbered.
     *
     * <p>The wordings have named holes in braces, such as {@code {step}}, which {@link Messages} fills.
     */
    public interface Id {

        /** The stable code, such as {@code FORM-014}. */
        String code();

        /** How much it weighs. */
        Severity severity();

        /** What is the matter, one sentence. */
        String what();

        /** Why it matters, one sentence. */
        String why();

        /** What to do about it, one sentence. */
        String fix();

        /** Whether it asks a retold case for what only its publication can tell, so that it may be left as it is. */
        default boolean leftToSource() {
            return false;
        }

        /**
         * Makes a message of this entry.
         *
         * @param place where
         * @param holes name, value, name, value, …: every hole of the three sentences
         * @throws IllegalArgumentException if a hole of the sentences is left open
         */
        default Message at(Place place, Object... holes) {
            return new Message(this, place, Holes.fill(what(), holes), Holes.fill(why(), holes),
                    Holes.fill(fix(), holes));
        }
    }
}
