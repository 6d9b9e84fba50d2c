package org.benchleaf.read;

import java.util.OptionalInt;

/**
 * Finds the line on which a key lacks its colon. YAML takes that line and those below it as one text, and says so at the next colon,
 * a line or more below.
 */
final class MissingColon {

    private final String yaml;

    MissingColon(String yaml) {
        this.yaml = yaml;
    }

    /**
     * Where the key stands; empty if the colon at which YAML gave up is one too many on its own line, or ends a text of several lines.
     *
     * @param at the offset of that colon
     */
    OptionalInt before(int at) {
        int line = startOfLine(at);
        String head = yaml.substring(line, at);
        if (head.contains(": ") || head.contains("\"") || head.contains("'") || head.contains("{") || head.contains("[")) {
            return OptionalInt.empty();
        }
        int indent = indent(line);
        int key = -1;
        for (int above = lineAbove(line); above >= 0; above = lineAbove(above)) {
            if (isEmpty(above)) {
                continue;
            }
            if (indent(above) != indent || hasKey(above)) {
                return key >= 0 && isHead(above, indent) ? OptionalInt.of(key) : OptionalInt.empty();
            }
            key = above + indent;
            if (yaml.startsWith("- ", above + written(above))) {
                return OptionalInt.of(key);
            }
        }
        return key >= 0 && indent == 0 ? OptionalInt.of(key) : OptionalInt.empty();
    }

    /** Whether keys of that indentation stand below the line: it is indented less and ends with its colon. */
    private boolean isHead(int line, int indent) {
        return indent(line) < indent && text(line).endsWith(":");
    }

    private boolean hasKey(int line) {
        return text(line).contains(": ") || text(line).endsWith(":");
    }

    private boolean isEmpty(int line) {
        return text(line).isEmpty() || text(line).startsWith("#");
    }

    private String text(int line) {
        int end = yaml.indexOf('\n', line);
        return yaml.substring(line, end < 0 ? yaml.length() : end).strip();
    }

    /** How many blanks stand before the key; the hyphen of a list and what follows it count as blanks. */
    private int indent(int line) {
        int at = written(line);
        while (yaml.startsWith("- ", line + at)) {
            at += 2;
        }
        return at;
    }

    private int written(int line) {
        int at = 0;
        while (line + at < yaml.length() && yaml.charAt(line + at) == ' ') {
            at++;
        }
        return at;
    }

    private int startOfLine(int at) {
        return at <= 0 ? 0 : yaml.lastIndexOf('\n', at - 1) + 1;
    }

    /** The beginning of the line above; less than nothing at the first. */
    private int lineAbove(int line) {
        return line == 0 ? -1 : startOfLine(line - 1);
    }
}
