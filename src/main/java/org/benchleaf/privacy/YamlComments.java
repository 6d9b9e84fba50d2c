package org.benchleaf.privacy;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Takes comments off the lines of a YAML text, one after the other. A number sign in a block or in quotes is text (YAML 1.2.2,
 * 6.6, 7.3 and 8.1); where it is in doubt, the line stays whole.
 */
final class YamlComments {

    private static final Pattern COMMENT_LINE = Pattern.compile("^\\s*#.*");
    private static final Pattern COMMENT_BEHIND = Pattern.compile("^[^'\"#]*\\s#.*");
    /** The dashes of list entries that begin on this line. */
    private static final Pattern DASHES = Pattern.compile("^ *(?:- +)*+");
    private static final String BEFORE_A_QUOTE = ":-[{,?";
    private static final String BLOCK_SIGNS = "-+0123456789";
    private static final int NO_BLOCK = -1;

    /** The indent of what a block belongs to: its own lines stand further in. */
    private int block = NO_BLOCK;
    /** The sign that closes the quoted text of an earlier line; 0 if none is open. */
    private char quote;

    String without(String line) {
        if (block != NO_BLOCK && (line.isBlank() || indent(line) > block)) {
            return line;
        }
        block = NO_BLOCK;
        if (quote == 0 && COMMENT_LINE.matcher(line).matches()) {
            return "";
        }
        boolean ends = quote == 0 && COMMENT_BEHIND.matcher(line).matches();
        String shown = ends ? line.substring(0, line.indexOf('#')) : line;
        follow(shown);
        if (quote == 0 && beginsBlock(shown.stripTrailing())) {
            block = owner(shown);
        }
        return shown;
    }

    private static int indent(String line) {
        return line.length() - line.stripLeading().length();
    }

    /** Keeps whether quoted text is open behind the line. */
    private void follow(String line) {
        char last = BEFORE_A_QUOTE.charAt(0);
        for (int at = 0; at < line.length(); at++) {
            char c = line.charAt(at);
            if (quote == 0) {
                quote = (c == '"' || c == '\'') && BEFORE_A_QUOTE.indexOf(last) >= 0 ? c : 0;
            } else if (c == '\\' && quote == '"' || c == quote && quote == '\'' && line.startsWith("''", at)) {
                at++;
            } else if (c == quote) {
                quote = 0;
            }
            last = Character.isWhitespace(c) ? last : c;
        }
    }

    /** Whether the line ends with the sign of a block, with or without its signs of indent and of line ends. */
    private static boolean beginsBlock(String line) {
        int end = line.length();
        while (end > 0 && BLOCK_SIGNS.indexOf(line.charAt(end - 1)) >= 0) {
            end--;
        }
        if (end < 2 || "|>".indexOf(line.charAt(end - 1)) < 0 || line.charAt(end - 2) != ' ') {
            return false;
        }
        String before = line.substring(0, end - 1).stripTrailing();
        return before.endsWith(":") || before.endsWith("-");
    }

    /** The column of the key or the dash that a block belongs to. */
    private static int owner(String line) {
        Matcher dashes = DASHES.matcher(line);
        int key = dashes.find() ? dashes.end() : 0;
        return "|>".indexOf(line.charAt(key)) >= 0 ? line.lastIndexOf('-', key) : key;
    }
}
