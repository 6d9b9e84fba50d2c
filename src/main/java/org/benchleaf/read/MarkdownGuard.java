package org.benchleaf.read;

import java.util.BitSet;
import java.util.Optional;
import java.util.regex.Pattern;
import org.benchleaf.message.Message;
import org.benchleaf.message.ReadingMessages;

/**
 * Looks at Markdown before the parser does, because the parser has no limits of its own: deep nesting overflows its
 * stack, and many openers without an end make it slow beyond any use.
 */
final class MarkdownGuard {

    static final int MOST_BYTES = 256 * 1024;
    private static final Pattern RULE = Pattern.compile(" {0,3}([-*])(?:\\s*\\1){2,}+\\s*");
    static final int DEEPEST = 32;

    /** More openers of one kind than anybody leaves open in one paragraph, and few enough to cost nothing. */
    private static final int MOST_OPEN = 64;
    private static final int MOST_DEFINITIONS = 256;
    private static final int MOST_CELLS = 128;

    /**
     * The parser copies a whole block for nearly every sign in it, so that its work grows with signs times length.
     * A table of 500 long rows stays below a fifth of this; this much takes about a second.
     */
    private static final long MOST_WORK = 1_000_000_000L;

    private final Lines lines;
    private final String text;
    private final int bodyStart;

    private int square;
    private int round;
    private int angle;
    private int emphasis;
    private int ticks;
    private int definitions;
    private long work;
    private long blockSigns;
    private long blockLength;
    private final BitSet tickLengths = new BitSet();

    private MarkdownGuard(Lines lines, String text, int bodyStart) {
        this.lines = lines;
        this.text = text;
        this.bodyStart = bodyStart;
    }

    /** The first thing that the parser must not be given, if there is one. */
    static Optional<Message> refusal(Lines lines, String text, int bodyStart) {
        return new MarkdownGuard(lines, text, bodyStart).look();
    }

    private Optional<Message> look() {
        for (int from = bodyStart; from < text.length();) {
            int end = text.indexOf('\n', from);
            end = end < 0 ? text.length() : end;
            Optional<Message> refusal = line(from, end);
            if (refusal.isPresent()) {
                return refusal;
            }
            from = end + 1;
        }
        return Optional.empty();
    }

    private Optional<Message> line(int from, int end) {
        int content = from;
        int depth = 0;
        int indent = 0;
        // Marks of quotes and lists, and the blanks between them, nest one inside the other.
        for (; content < end; content++) {
            char c = text.charAt(content);
            if (c == ' ' || c == '\t') {
                indent += c == '\t' ? 4 : 1;
            } else if (c == '>' || (c == '-' || c == '*' || c == '+') && blankAt(content + 1, end)) {
                depth++;
            } else if (Character.isDigit(c) && numbered(content, end)) {
                depth++;
                content = text.indexOf(text.substring(content, end).indexOf(')') >= 0
                        && !text.substring(content, end).contains(".") ? ')' : '.', content);
            } else {
                break;
            }
        }
        if (depth + indent / 2 > DEEPEST && content < end || depth > DEEPEST && !isRule(from, end)) {
            return Optional.of(ReadingMessages.STORY_TOO_DEEP.at(lines.place(from, end, ""), "most", DEEPEST));
        }
        if (content == end || text.substring(content, end).isBlank()) {
            startParagraph();
            return Optional.empty();
        }
        return signs(content, end);
    }

    /** Whether a line of marks alone is drawn as a rule, which nests nothing (CommonMark 0.31.2, section 4.1). */
    private boolean isRule(int from, int end) {
        return RULE.matcher(text).region(from, end).matches();
    }

    private boolean blankAt(int at, int end) {
        return at >= end || text.charAt(at) == ' ' || text.charAt(at) == '\t' || text.charAt(at) == '\r';
    }

    private boolean numbered(int from, int end) {
        int at = from;
        while (at < end && at - from < 9 && Character.isDigit(text.charAt(at))) {
            at++;
        }
        return at < end && (text.charAt(at) == '.' || text.charAt(at) == ')') && blankAt(at + 1, end);
    }

    private void startParagraph() {
        work += blockSigns * blockLength;
        blockSigns = 0;
        blockLength = 0;
        square = 0;
        round = 0;
        angle = 0;
        emphasis = 0;
        ticks = 0;
        tickLengths.clear();
    }

    private Optional<Message> signs(int from, int end) {
        if (text.charAt(from) == '[' && text.substring(from, end).contains("]:") && ++definitions > MOST_DEFINITIONS) {
            return tooMany(from, end, "definitions of links");
        }
        for (int at = from; at < end; at++) {
            blockSigns += Character.isLetterOrDigit(text.charAt(at)) || text.charAt(at) == ' ' ? 0 : 1;
        }
        blockSigns++;
        blockLength += end - from + 1L;
        if (work + blockSigns * blockLength > MOST_WORK) {
            return tooMany(from, end, "signs and lines without a blank line between");
        }
        return leftOpen(from, end);
    }

    private Optional<Message> leftOpen(int from, int end) {
        int cells = 0;
        for (int at = from; at < end; at++) {
            switch (text.charAt(at)) {
                case '[' -> square++;
                case ']' -> square = Math.max(0, square - 1);
                case '(' -> round++;
                case ')' -> round = Math.max(0, round - 1);
                case '<' -> angle++;
                case '>' -> angle = Math.max(0, angle - 1);
                case '|' -> cells++;
                case '*', '_', '~' -> {
                    emphasis++;
                    at = endOfRun(at, end);
                }
                case '`' -> {
                    int last = endOfRun(at, end);
                    int length = last - at + 1;
                    // A run of a length seen before may close; one of a new length may stay open.
                    ticks += tickLengths.get(length) ? 0 : 1;
                    tickLengths.flip(length);
                    at = last;
                }
                default -> { }
            }
            if (square > MOST_OPEN || round > MOST_OPEN || angle > MOST_OPEN) {
                return tooMany(at, at + 1, "brackets left open");
            }
            if (ticks > MOST_OPEN) {
                return tooMany(at, at + 1, "backticks left open");
            }
            if (emphasis > MOST_OPEN * 16) {
                return tooMany(at, at + 1, "marks of emphasis");
            }
            if (cells > MOST_CELLS) {
                return tooMany(at, at + 1, "cells in one row");
            }
        }
        return Optional.empty();
    }

    private int endOfRun(int from, int end) {
        int at = from;
        while (at + 1 < end && text.charAt(at + 1) == text.charAt(from)) {
            at++;
        }
        return at;
    }

    private Optional<Message> tooMany(int from, int to, String what) {
        return Optional.of(ReadingMessages.STORY_TOO_MANY.at(lines.place(from, to, ""), "what", what));
    }
}
