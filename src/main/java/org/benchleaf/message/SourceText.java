package org.benchleaf.message;

import java.util.ArrayList;
import java.util.List;

/** The text of one file as it was read, cut into lines, so that a message can show the line it speaks of. */
public final class SourceText {

    private final String file;
    private final List<String> lines;

    /**
     * Keeps a file's text.
     *
     * @param file the path as the author knows it, with forward slashes
     * @param text the whole text, without byte order mark; lines may end in LF or CR LF
     */
    public SourceText(String file, String text) {
        this.file = file;
        List<String> cut = new ArrayList<>();
        int start = 0;
        for (int end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', start)) {
            cut.add(withoutReturn(text.substring(start, end)));
            start = end + 1;
        }
        cut.add(withoutReturn(text.substring(start)));
        this.lines = List.copyOf(cut);
    }

    private static String withoutReturn(String line) {
        return line.endsWith("\r") ? line.substring(0, line.length() - 1) : line;
    }

    /** The path as the author knows it. */
    public String file() {
        return file;
    }

    /** How many lines the file has. */
    public int lineCount() {
        return lines.size();
    }

    /** The text of a line, counted from 1; empty beyond the end. */
    public String line(int number) {
        return number >= 1 && number <= lines.size() ? lines.get(number - 1) : "";
    }
}
