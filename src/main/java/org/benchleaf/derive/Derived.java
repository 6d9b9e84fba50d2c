package org.benchleaf.derive;

import org.benchleaf.message.Messages;

/** A worked case and what was said while it was worked out. */
public record Derived(WorkedCase worked, Messages messages) {
}
