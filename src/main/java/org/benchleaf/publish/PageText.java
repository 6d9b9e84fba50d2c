package org.benchleaf.publish;

import java.io.IOException;
import java.io.Writer;
import java.util.List;

/**
 * The text of a page while it is made. Templates write empty lines and indents, a sixth of a page's weight, which are left out line by line
 * as they come; in {@code pre} they are text. A template that never ends is stopped before memory is full.
 */
final class PageText extends Writer {

    private static final int MOST_LETTERS = 16_000_000;

    /** Elements of what is typed, read by a program or filled in. */
    private static final List<String> APART = List.of("script", "style", "code", "pre", "textarea");

    private final StringBuilder text = new StringBuilder();
    private long written;
    private int lineBegins;
    private boolean verbatim;

    @Override
    public void write(char[] letters, int from, int count) throws IOException {
        written += count;
        if (written > MOST_LETTERS) {
            throw new IOException("It writes more than " + MOST_LETTERS / 1_000_000 + " million letters.");
        }
        int begin = from;
        for (int at = from; at < from + count; at++) {
            if (letters[at] == '\n') {
                text.append(letters, begin, at - begin);
                endLine();
                begin = at + 1;
            }
        }
        text.append(letters, begin, from + count - begin);
    }

    private void endLine() {
        String line = text.substring(lineBegins);
        String kept = verbatim ? line : line.strip();
        text.setLength(lineBegins);
        if (verbatim || !kept.isEmpty()) {
            text.append(kept).append('\n');
        }
        lineBegins = text.length();
        verbatim = line.lastIndexOf("<pre") > line.lastIndexOf("</pre>") || verbatim && !line.contains("</pre>");
    }

    /** Whether what is written next are words to be read: not inside a tag, nor in an element that holds something else. */
    boolean isInRunningText() {
        int tag = text.lastIndexOf("<");
        return tag < 0 || text.indexOf(">", tag) > 0 && APART.stream().noneMatch(element -> begins(element, tag + 1));
    }

    private boolean begins(String element, int from) {
        int behind = from + element.length();
        return behind < text.length() && text.substring(from, behind).equals(element) && !Character.isLetterOrDigit(text.charAt(behind));
    }

    @Override
    public void flush() {
    }

    @Override
    public void close() {
    }

    /** The whole text; its last line ends as the others do. */
    String whole() {
        if (text.length() > lineBegins) {
            endLine();
        }
        return text.toString();
    }
}
