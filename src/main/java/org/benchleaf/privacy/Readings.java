package org.benchleaf.privacy;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The texts that a file can be read as: as it stands, without its marks, and with its escapes undone. */
final class Readings {

    private static final int HEAD = 4096;
    private static final Pattern BINARY = Pattern.compile("[\\x00-\\x08\\x0E-\\x1A]");
    private static final int ROUNDS = 3;
    private static final Pattern ESCAPE = Pattern.compile(
            "&#(\\d{1,7});?|&#[xX]([0-9a-fA-F]{1,6});?|&([a-zA-Z]{2,32});|((?:%[0-9a-fA-F]{2})+)"
                    + "|\\\\u\\{([0-9a-fA-F]{1,6})}|\\\\u([0-9a-fA-F]{4})|\\\\x([0-9a-fA-F]{2})|\\\\([nrtbf\"'/\\\\])");
    private static final String BEGINS_ESCAPE = "&%\\";
    private static final int LONGEST_TAG = 2000;
    /** The named signs that letters of European names come as; every other name counts as a sign between words. */
    private static final Map<String, String> NAMED = Map.ofEntries(
            Map.entry("amp", "&"), Map.entry("szlig", "ß"), Map.entry("aelig", "æ"), Map.entry("AElig", "Æ"),
            Map.entry("oelig", "œ"), Map.entry("oslash", "ø"), Map.entry("Oslash", "Ø"), Map.entry("eth", "ð"),
            Map.entry("thorn", "þ"), Map.entry("lt", "<"), Map.entry("gt", ">"), Map.entry("quot", "\""),
            // Signs that take no room; a name with one inside is one word.
            Map.entry("shy", ""), Map.entry("zwj", ""), Map.entry("zwnj", ""), Map.entry("lrm", ""), Map.entry("rlm", ""),
            Map.entry("ZeroWidthSpace", ""), Map.entry("NoBreak", ""), Map.entry("NegativeThinSpace", ""),
            Map.entry("NegativeVeryThinSpace", ""), Map.entry("NegativeMediumSpace", ""), Map.entry("NegativeThickSpace", ""),
            Map.entry("imath", "ı"), Map.entry("inodot", "ı"));
    private static final Pattern ACCENTED = Pattern.compile(
            "([a-zA-Z])(acute|grave|circ|tilde|uml|cedil|ring|caron|slash|strok|ogon|breve|dot|dblac|macr)");

    /** One reading of a file. */
    record Reading(String how, String text) {
    }

    private Readings() {
    }

    /** Whether a file is text: no byte of its head is one that texts do not hold. */
    static boolean isText(byte[] bytes) {
        String head = new String(bytes, 0, Math.min(bytes.length, HEAD), StandardCharsets.ISO_8859_1);
        Matcher binary = BINARY.matcher(head);
        // The packed streams of a PDF may begin behind the head, and short values stand in them by chance.
        return !head.startsWith("%PDF-") && !binary.find();
    }

    /** Every reading of a text, itself first. */
    static List<Reading> ofText(String text) {
        List<Reading> readings = new ArrayList<>();
        readings.add(new Reading("", text));
        String now = text;
        for (int round = 0; round < ROUNDS && hasEscapes(now); round++) {
            String undone = undone(now);
            if (undone.equals(now)) {
                break;
            }
            readings.add(new Reading("written with escapes", undone));
            now = undone;
        }
        String decoded = Base64Words.in(text);
        if (!decoded.isEmpty()) {
            readings.add(new Reading("in base64", decoded));
        }
        if (now.indexOf('<') >= 0) {
            readings.add(new Reading("with marks between its letters", withoutTags(now)));
        }
        return readings;
    }

    /** Every reading of bytes that are no text: as single bytes, as UTF-16 whose upper halves are empty, as UTF-8. */
    static List<Reading> ofBytes(byte[] bytes) {
        String single = new String(bytes, StandardCharsets.ISO_8859_1);
        List<Reading> readings = new ArrayList<>();
        readings.add(new Reading("inside its bytes", single));
        if (single.indexOf('\0') >= 0) {
            readings.add(new Reading("inside its bytes, as UTF-16", single.replace("\0", "")));
        }
        readings.add(new Reading("inside its bytes, as UTF-8", new String(bytes, StandardCharsets.UTF_8)));
        return readings;
    }

    private static boolean hasEscapes(String text) {
        return BEGINS_ESCAPE.chars().anyMatch(sign -> text.indexOf(sign) >= 0);
    }

    /** Looks for an escape only where a sign stands that begins one: texts are long, and escapes few. */
    private static String undone(String text) {
        Matcher escape = ESCAPE.matcher(text);
        StringBuilder undone = new StringBuilder(text.length());
        int from = 0;
        int[] next = new int[BEGINS_ESCAPE.length()];
        for (int at = next(text, 0, next); at < text.length(); at = next(text, Math.max(at + 1, from), next)) {
            if (escape.region(at, text.length()).lookingAt()) {
                undone.append(text, from, at).append(character(escape));
                from = escape.end();
            }
        }
        return undone.append(text, from, text.length()).toString();
    }

    /** Where the next sign stands that begins an escape, from a place on; each kind of sign is looked for once. */
    private static int next(String text, int from, int[] next) {
        int nearest = text.length();
        for (int kind = 0; kind < next.length; kind++) {
            if (next[kind] < from || from == 0) {
                int found = text.indexOf(BEGINS_ESCAPE.charAt(kind), from);
                next[kind] = found < 0 ? text.length() : found;
            }
            nearest = Math.min(nearest, next[kind]);
        }
        return nearest;
    }

    /** The text without its tags; what begins like one and does not end soon is none. */
    private static String withoutTags(String text) {
        StringBuilder kept = new StringBuilder(text.length());
        int from = 0;
        for (int at = text.indexOf('<'); at >= 0; at = text.indexOf('<', at)) {
            int end = at + 1;
            while (end < text.length() && text.charAt(end) != '<' && text.charAt(end) != '>') {
                end++;
            }
            if (end < text.length() && text.charAt(end) == '>' && end - at - 1 <= LONGEST_TAG) {
                kept.append(text, from, at);
                from = end + 1;
            }
            at = end;
        }
        return kept.append(text, from, text.length()).toString();
    }

    private static String character(Matcher escape) {
        if (escape.group(1) != null) {
            return codePoint(escape.group(1), 10);
        }
        for (int group : new int[] {2, 5, 6, 7}) {
            if (escape.group(group) != null) {
                return codePoint(escape.group(group), 16);
            }
        }
        if (escape.group(3) != null) {
            return named(escape.group(3));
        }
        if (escape.group(4) != null) {
            return percent(escape.group(4));
        }
        return "/\"'\\".contains(escape.group(8)) ? escape.group(8) : " ";
    }

    private static String named(String name) {
        Matcher accented = ACCENTED.matcher(name);
        return NAMED.getOrDefault(name, accented.matches() ? accented.group(1) : " ");
    }

    private static String codePoint(String digits, int base) {
        int point = Integer.parseInt(digits, base);
        return Character.isValidCodePoint(point) ? Character.toString(point) : " ";
    }

    private static String percent(String run) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (int at = 0; at < run.length(); at += 3) {
            bytes.write(Integer.parseInt(run.substring(at + 1, at + 3), 16));
        }
        return bytes.toString(StandardCharsets.UTF_8);
    }
}
