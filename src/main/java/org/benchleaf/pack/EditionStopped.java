package org.benchleaf.pack;

import org.benchleaf.message.Message;

/** Ends a run because of the disk, another run, or a file in the way; carries what to tell the author. */
public final class EditionStopped extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Message message;

    /** Stops with a message. */
    public EditionStopped(Message message) {
        super(message.what());
        this.message = message;
    }

    /** Stops with a message and what caused it. */
    public EditionStopped(Message message, Throwable cause) {
        super(message.what(), cause);
        this.message = message;
    }

    /** What to tell the author. */
    public Message told() {
        return message;
    }
}
