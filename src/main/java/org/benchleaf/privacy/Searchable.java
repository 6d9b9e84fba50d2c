package org.benchleaf.privacy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.publish.SiteFile;

/**
 * A finished file made ready to be searched: every reading of it, each brought down to its letters. Making it ready
 * costs more than a search.
 */
public final class Searchable {

    private static final int HEAD = 4096;
    private static final Pattern BINARY = Pattern.compile("[\\x00-\\x08\\x0E-\\x1A]");

    private final SiteFile file;
    private final boolean text;
    private final List<Read> readings;

    private Searchable(SiteFile file, boolean text, List<Read> readings) {
        this.file = file;
        this.text = text;
        this.readings = readings;
    }

    /** One reading, and its letters. */
    record Read(String how, String text, Folded letters) {

        static Read of(String text) {
            return of(new Readings.Reading("", text));
        }

        private static Read of(Readings.Reading reading) {
            return new Read(reading.how(), reading.text(), Folded.of(reading.text()));
        }
    }

    /** A file, ready to be searched. */
    public static Searchable of(SiteFile file) {
        boolean text = isText(file.bytes());
        return new Searchable(file, text, readings(file.bytes(), text));
    }

    SiteFile file() {
        return file;
    }

    /** Whether it is text; the first reading is then the text as it stands. */
    boolean isText() {
        return text;
    }

    List<Read> readings() {
        return readings;
    }

    static List<Read> readings(byte[] bytes, boolean text) {
        return (text ? Readings.ofText(PictureData.without(new String(bytes, StandardCharsets.UTF_8))) : Readings.ofBytes(bytes)).stream()
                .map(Read::of).toList();
    }

    static boolean isText(byte[] bytes) {
        String head = new String(bytes, 0, Math.min(bytes.length, HEAD), StandardCharsets.ISO_8859_1);
        Matcher binary = BINARY.matcher(head);
        // The packed streams of a PDF may begin behind the head, and short values stand in them by chance.
        return !head.startsWith("%PDF-") && !binary.find();
    }
}
