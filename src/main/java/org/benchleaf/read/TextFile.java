package org.benchleaf.read;

import org.benchleaf.message.SourceText;

/**
 * A text file of the content folder, free of what no text should hold.
 *
 * @param name the path as the author knows it
 * @param text without byte order mark
 */
record TextFile(String name, String text) {

    Lines lines() {
        return new Lines(new SourceText(name, text), text);
    }
}
