package org.benchleaf.publish;

import org.benchleaf.message.Message;

/** Publishing stops because a template is wrong; carries what is told of it. */
public final class TemplateStop extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final transient Message told;

    TemplateStop(Message told) {
        super(told.what());
        this.told = told;
    }

    /** The message, with the place in the template. */
    public Message told() {
        return told;
    }
}
