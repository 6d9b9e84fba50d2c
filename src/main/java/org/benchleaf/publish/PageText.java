package org.benchleaf.publish;

import java.io.IOException;
import java.io.Writer;
import java.util.List;

/** The text of a page while it is made; a template that never ends is stopped before memory is full. */
final class PageText extends Writer {

    private static final int MOST_LETTERS = 16_000_000;

    /** Elements of what is typed, read by a program or filled in. */
    private static final List<String> APART = List.of("script", "style", "code", "pre", "textarea");

    private final StringBuilder text = new StringBuilder();

    @Override
    public void write(char[] letters, int from, int count) throws IOException {
        if (text.length() + count > MOST_LETTERS) {
            throw new IOException("It writes more than " + MOST_LETTERS / 1_000_000 + " million letters.");
        }
        text.append(letters, from, count);
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

    @Override
    public String toString() {
        return text.toString();
    }
}
