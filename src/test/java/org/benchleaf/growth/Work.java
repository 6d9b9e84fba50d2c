package org.benchleaf.growth;

import java.util.Locale;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Counts what the program does: a step for every method begun and every jump, and for every letter that a call of the Java
 * library looks at or copies. {@link CountingLoader} puts the calls into the classes that it loads.
 */
public final class Work {

    private static final Queue<long[]> ALL = new ConcurrentLinkedQueue<>();
    private static final ThreadLocal<long[]> OWN = ThreadLocal.withInitial(() -> {
        long[] own = new long[1];
        ALL.add(own);
        return own;
    });

    private Work() {
    }

    /** The steps of all threads since the program began. */
    static long done() {
        return ALL.stream().mapToLong(each -> each[0]).sum();
    }

    public static void step() {
        OWN.get()[0]++;
    }

    private static void letters(int number) {
        OWN.get()[0] += number;
    }

    public static Matcher matcher(Pattern pattern, CharSequence text) {
        return pattern.matcher(new CountedText(text));
    }

    public static Matcher reset(Matcher matcher, CharSequence text) {
        return matcher.reset(new CountedText(text));
    }

    public static String[] split(Pattern pattern, CharSequence text) {
        return pattern.split(new CountedText(text));
    }

    public static boolean matches(String text, String pattern) {
        return matcher(Pattern.compile(pattern), text).matches();
    }

    public static String replaceAll(String text, String pattern, String instead) {
        return matcher(Pattern.compile(pattern), text).replaceAll(instead);
    }

    public static String replaceFirst(String text, String pattern, String instead) {
        return matcher(Pattern.compile(pattern), text).replaceFirst(instead);
    }

    public static String[] split(String text, String pattern) {
        return split(text, pattern, 0);
    }

    public static String[] split(String text, String pattern, int limit) {
        letters(text.length());
        return Pattern.compile(pattern).split(new CountedText(text), limit);
    }

    public static int indexOf(String text, String part) {
        return indexOf(text, part, 0);
    }

    public static int indexOf(String text, String part, int from) {
        return seen(text, from, text.indexOf(part, from));
    }

    public static int indexOf(String text, int sign) {
        return indexOf(text, sign, 0);
    }

    public static int indexOf(String text, int sign, int from) {
        return seen(text, from, text.indexOf(sign, from));
    }

    private static int seen(String text, int from, int found) {
        letters(Math.max(0, (found < 0 ? text.length() : found) - Math.max(from, 0)));
        return found;
    }

    public static boolean contains(String text, CharSequence part) {
        return indexOf(text, part.toString()) >= 0;
    }

    public static String replace(String text, CharSequence part, CharSequence instead) {
        letters(text.length());
        return text.replace(part, instead);
    }

    public static String substring(String text, int from) {
        return substring(text, from, text.length());
    }

    public static String substring(String text, int from, int to) {
        String part = text.substring(from, to);
        letters(part.length());
        return part;
    }

    public static String strip(String text) {
        letters(text.length());
        return text.strip();
    }

    public static String toLowerCase(String text, Locale locale) {
        letters(text.length());
        return text.toLowerCase(locale);
    }

    public static String toString(StringBuilder text) {
        letters(text.length());
        return text.toString();
    }

    public static StringBuilder insert(StringBuilder text, int at, String part) {
        letters(text.length());
        return text.insert(at, part);
    }

    /** A text that counts each letter that it is asked for. */
    private record CountedText(CharSequence text) implements CharSequence {

        @Override
        public int length() {
            return text.length();
        }

        @Override
        public char charAt(int index) {
            step();
            return text.charAt(index);
        }

        @Override
        public CharSequence subSequence(int start, int end) {
            letters(end - start);
            return text.subSequence(start, end).toString();
        }

        @Override
        public String toString() {
            letters(text.length());
            return text.toString();
        }
    }
}
