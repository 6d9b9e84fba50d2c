package org.benchleaf.privacy;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * The words that a text holds in base64 (RFC 4648, sections 4 and 5). Nearly every long word of a text could be base64 and gives
 * nothing when it is taken as that, so a text is only made of bytes that can be words.
 */
final class Base64Words {

    private static final int SHORTEST_RUN = 8;
    private static final int LONG_RUN = 16;
    private static final int SIGNS_AT_ONCE = 4;
    private static final int BYTES_AT_ONCE = 3;
    private static final int BITS_OF_SIGN = 6;
    private static final int BITS_OF_BYTE = 8;
    /** The value of each of the 64 signs, in the usual alphabet or in that for addresses; -1 for every other. */
    private static final byte[] VALUES = values();

    private final String text;
    private final StringBuilder decoded = new StringBuilder();
    /** The values of the signs of one run. */
    private byte[] run = new byte[LONG_RUN * LONG_RUN];
    private int length;
    private byte[] bytes = new byte[LONG_RUN * LONG_RUN];

    private Base64Words(String text) {
        this.text = text;
    }

    private static byte[] values() {
        byte[] values = new byte[Byte.MAX_VALUE + 1];
        Arrays.fill(values, (byte) -1);
        String signs = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
        for (int value = 0; value < signs.length(); value++) {
            values[signs.charAt(value)] = (byte) value;
        }
        values['-'] = values['+'];
        values['_'] = values['/'];
        return values;
    }

    /** What every run of signs gives that is words, wherever in a long run they begin, each on a line; empty if none does. */
    static String in(String text) {
        return new Base64Words(text).decoded();
    }

    private String decoded() {
        int end = 0;
        for (int start = nextRun(0); start < text.length(); start = nextRun(end + 1)) {
            end = endOfRun(start);
            length = 0;
            add(start, end);
            end = goOn(end);
            decode();
        }
        return decoded.toString();
    }

    /**
     * Where the next run begins that is not too short; behind the text if none does. Whether a run can be long enough is asked of its
     * last sign first, so that most signs of shorter ones are passed over.
     *
     * @param from no sign of a run stands before it
     */
    private int nextRun(int from) {
        int start = from;
        while (start + SHORTEST_RUN <= text.length()) {
            int at = start + SHORTEST_RUN - 1;
            while (at >= start && isSign(at)) {
                at--;
            }
            if (at < start) {
                return start;
            }
            start = at + 1;
        }
        return text.length();
    }

    private boolean isSign(int at) {
        char sign = text.charAt(at);
        return sign < VALUES.length && VALUES[sign] >= 0;
    }

    private int endOfRun(int start) {
        int end = start;
        while (end < text.length() && isSign(end)) {
            end++;
        }
        return end;
    }

    private void add(int from, int to) {
        if (length + to - from > run.length) {
            run = Arrays.copyOf(run, 2 * (length + to - from));
        }
        for (int at = from; at < to; at++) {
            run[length++] = VALUES[text.charAt(at)];
        }
    }

    /** Adds the runs of the lines that follow, and tells where the last of them ends. */
    private int goOn(int end) {
        int last = end;
        while (true) {
            int at = text.startsWith("\r", last) ? last + 1 : last;
            if (!text.startsWith("\n", at)) {
                return last;
            }
            do {
                at++;
            } while (at < text.length() && (text.charAt(at) == ' ' || text.charAt(at) == '\t'));
            int next = endOfRun(at);
            if (next - at < SHORTEST_RUN) {
                return last;
            }
            add(at, next);
            last = next;
        }
    }

    private void decode() {
        int starts = length < LONG_RUN ? 1 : SIGNS_AT_ONCE;
        for (int from = 0; from < starts; from++) {
            int size = decode(from);
            if (mayBeWords(size)) {
                String words = new String(bytes, 0, size, StandardCharsets.UTF_8);
                if (isWords(words)) {
                    decoded.append(words).append('\n');
                }
            }
        }
    }

    /** Fills the bytes from the signs of the run, and tells how many they are; a last sign by itself holds no whole byte. */
    private int decode(int from) {
        int size = (length - from) / SIGNS_AT_ONCE * BYTES_AT_ONCE + Math.max(0, (length - from) % SIGNS_AT_ONCE - 1);
        if (size > bytes.length) {
            bytes = new byte[2 * size];
        }
        int bits = 0;
        int held = 0;
        int filled = 0;
        for (int at = from; filled < size; at++) {
            bits = bits << BITS_OF_SIGN | run[at];
            held += BITS_OF_SIGN;
            if (held >= BITS_OF_BYTE) {
                held -= BITS_OF_BYTE;
                bytes[filled++] = (byte) (bits >> held);
            }
        }
        return size;
    }

    /**
     * Whether it can be words, told without making a text of it: counts controls, and bytes of more than seven bits that have
     * no other beside them, which is never so in UTF-8.
     */
    private boolean mayBeWords(int size) {
        int wrong = 0;
        for (int at = 0; at < size && wrong * SIGNS_AT_ONCE <= size; at++) {
            boolean alone = bytes[at] < 0 && (at == 0 || bytes[at - 1] >= 0) && (at + 1 == size || bytes[at + 1] >= 0);
            if (alone || bytes[at] >= 0 && bytes[at] < ' ' && !Character.isWhitespace(bytes[at])) {
                wrong++;
            }
        }
        return wrong * SIGNS_AT_ONCE <= size;
    }

    /** Whether most of it is signs that a text may hold; of bytes taken by chance half are none. */
    private static boolean isWords(String text) {
        int wrong = 0;
        for (int at = 0; at < text.length(); at++) {
            char sign = text.charAt(at);
            if (sign == '\uFFFD' || sign < ' ' && !Character.isWhitespace(sign)) {
                wrong++;
            }
        }
        return wrong * SIGNS_AT_ONCE <= text.length();
    }
}
