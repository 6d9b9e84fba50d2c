package org.benchleaf.message;

import java.util.regex.Pattern;

/** Puts a message into the lines that a terminal shows: place, code, what; the excerpt with a caret; why; what to do. */
public final class MessageText {

    private static final int WIDEST_EXCERPT = 160;
    /** Controls, and signs of direction (Unicode Standard Annex 9, section 2). */
    private static final Pattern UNSEEN = Pattern.compile(
            "[\\p{Cc}\\u061C\\u200E\\u200F\\u2028\\u2029\\u202A-\\u202E\\u2066-\\u2069]");

    private MessageText() {
    }

    /** The lines of a message, joined by line feeds, without one at the end. */
    public static String of(Message message) {
        Place place = message.place();
        StringBuilder text = new StringBuilder(spelt(place.file()));
        if (place.line() > 0) {
            text.append(':').append(place.line());
            if (place.column() > 0) {
                text.append(':').append(place.column());
            }
        }
        text.append(": ").append(message.severity().word()).append(' ').append(message.code())
                .append(": ").append(spelt(message.what()));
        text.append(excerpt(place));
        text.append("\n    why: ").append(spelt(message.why()));
        text.append("\n    do:  ").append(spelt(message.fix()));
        return text.toString();
    }

    private static String excerpt(Place place) {
        String line = place.text().line(place.line());
        if (line.isBlank() || place.column() == 0) {
            return "";
        }
        int from = Math.max(0, Math.min(place.column() - 1, line.length()) - WIDEST_EXCERPT / 2);
        String shown = visible(line.substring(from, Math.min(line.length(), from + WIDEST_EXCERPT)));
        int caret = Math.min(place.column() - 1 - from, shown.length());
        int length = Math.max(1, Math.min(place.length(), shown.length() - caret));
        String number = String.valueOf(place.line());
        return "\n  " + number + " | " + shown
                + "\n  " + " ".repeat(number.length()) + " | " + " ".repeat(caret) + "^".repeat(length);
    }

    /** What would move the terminal's cursor or turn the direction of letters is shown as a middle dot. */
    private static String visible(String line) {
        return UNSEEN.matcher(line.replace('\t', ' ')).replaceAll("·");
    }

    /** The same in a sentence or name, where its number tells what it is. */
    private static String spelt(String text) {
        return UNSEEN.matcher(text).replaceAll(sign -> String.format("<U+%04X>", sign.group().codePointAt(0)));
    }
}
