package org.benchleaf.check;

import org.benchleaf.message.Messages;
import org.benchleaf.model.Library;

/**
 * What came of checking what all cases share.
 *
 * @param library with stand-ins where the messages have errors
 * @param messages everything said, reading included
 */
public record CheckedLibrary(Library library, Messages messages) {
}
