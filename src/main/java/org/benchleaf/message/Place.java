package org.benchleaf.message;

/**
 * A place in a file: line and column counted from 1, and the JSON Pointer of the field where there is one.
 *
 * @param text the file, for its path and the excerpt
 * @param line line, from 1; 0 where the message concerns the whole file
 * @param column column in characters, from 1; 0 where the message concerns the whole line or file
 * @param length how many characters the caret underlines, at least 1
 * @param pointer JSON Pointer (RFC 6901) into the front matter; empty for the root or outside it
 */
public record Place(SourceText text, int line, int column, int length, String pointer) {

    /** The whole of a file, named by its path alone. */
    public static Place file(String path) {
        return new Place(new SourceText(path, ""), 0, 0, 1, "");
    }

    /** A place without a field. */
    public static Place at(SourceText text, int line, int column) {
        return new Place(text, line, column, 1, "");
    }

    /** The path as the author knows it. */
    public String file() {
        return text.file();
    }

    /** A place further right on the same line. */
    public Place shifted(int characters, int newLength) {
        return new Place(text, line, column + characters, Math.max(1, newLength), pointer);
    }
}
