package org.benchleaf.json;

import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.CharacterEscapes;
import com.fasterxml.jackson.core.io.SerializedString;

/**
 * Escapes for JSON inside a script element: the characters that could end the element, and the line ends that old scripts cannot
 * read. Every control character is written by its number.
 */
final class ScriptEscapes extends CharacterEscapes {

    private static final long serialVersionUID = 1L;

    @Override
    public int[] getEscapeCodesForAscii() {
        int[] escapes = standardAsciiEscapesForJSON();
        for (char control = 0; control < ' '; control++) {
            escapes[control] = ESCAPE_STANDARD;
        }
        escapes['<'] = ESCAPE_STANDARD;
        escapes['>'] = ESCAPE_STANDARD;
        escapes['&'] = ESCAPE_STANDARD;
        return escapes;
    }

    @Override
    public SerializableString getEscapeSequence(int character) {
        return character == '\u2028' || character == '\u2029'
                ? new SerializedString(String.format("\\u%04x", character)) : null;
    }
}
