package org.benchleaf.message;

/** Puts a message into the lines that a terminal shows: place, code, what; the excerpt with a caret; why; what to do. */
public final class MessageText {

    private static final int WIDEST_EXCERPT = 160;

    private MessageText() {
    }

    /** The lines of a message, joined by line feeds, without one at the end. */
    public static String of(Message message) {
        Place place = message.place();
        StringBuilder text = new StringBuilder(place.file());
        if (place.line() > 0) {
            text.append(':').append(place.line());
            if (place.column() > 0) {
                text.append(':').append(place.column());
            }
        }
        text.append(": ").append(message.severity().word()).append(' ').append(message.code())
                .append(": ").append(message.what());
        text.append(excerpt(place));
        text.append("\n    why: ").append(message.why());
        text.append("\n    do:  ").append(message.fix());
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

    /** Control characters would move the terminal's cursor; they are shown as a middle dot. */
    private static String visible(String line) {
        return line.replace('\t', ' ').replaceAll("\\p{Cntrl}", "·");
    }
}
