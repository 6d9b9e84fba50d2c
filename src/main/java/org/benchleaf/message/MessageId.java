package org.benchleaf.message;

/**
 * One entry of the catalogue of messages. Codes are never reused or renumbered.
 *
 * <p>The wordings have named holes in braces, such as {@code {step}}, which {@link Messages} fills.
 */
public interface MessageId {

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
