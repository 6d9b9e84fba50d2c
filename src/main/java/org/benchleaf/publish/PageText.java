package org.benchleaf.publish;

import java.io.IOException;
import java.io.Writer;

/** The text of a page while it is made; a template that never ends is stopped before memory is full. */
final class PageText extends Writer {

    private static final int MOST_LETTERS = 16_000_000;

    private final StringBuilder text = new StringBuilder();

    @Override
    public void write(char[] letters, int from, int count) throws IOException {
        if (text.length() + count > MOST_LETTERS) {
            throw new IOException("It writes more than " + MOST_LETTERS / 1_000_000 + " million letters.");
        }
        text.append(letters, from, count);
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
