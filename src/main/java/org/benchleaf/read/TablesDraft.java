package org.benchleaf.read;

import java.util.Optional;
import org.benchleaf.message.Messages;
import org.benchleaf.model.Reference;

/**
 * The tables of hazards of a content folder, as they were read, without the rest of what its cases share.
 *
 * @param studio studio.yaml, whose window for the drain belongs to them; empty if there is none
 * @param reference the tables
 * @param messages what was said while reading
 */
public record TablesDraft(Optional<LibraryDraft.YamlPart> studio, Reference reference, Messages messages) {
}
