package org.benchleaf.read;

import java.util.Optional;
import org.benchleaf.message.Messages;

/** A bench record as it was read, and what was said while reading. */
public record RecordDraft(Optional<Node.Mapping> root, Messages messages) {
}
