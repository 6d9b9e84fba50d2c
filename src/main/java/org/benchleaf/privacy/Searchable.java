package org.benchleaf.privacy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.benchleaf.publish.SiteFile;

/**
 * A finished file made ready to be searched: every reading of it, each brought down to its letters. Making it ready
 * costs more than a search.
 */
public final class Searchable {

    private final SiteFile file;
    private final boolean text;
    private final List<Read> readings;
    private final SearchedFiles elsewhere;

    private Searchable(SiteFile file, boolean text, List<Read> readings, SearchedFiles elsewhere) {
        this.file = file;
        this.text = text;
        this.readings = readings;
        this.elsewhere = elsewhere;
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
        return of(file, SearchedFiles.none());
    }

    /** A file, ready to be searched but for what stands inside it and is searched by itself. */
    public static Searchable of(SiteFile file, SearchedFiles elsewhere) {
        boolean text = Readings.isText(file.bytes());
        return new Searchable(file, text, readings(file.bytes(), text, elsewhere), elsewhere);
    }

    /** Whether a packed thing inside it is searched by itself. */
    boolean isElsewhere(Unpacked.Inner inner) {
        return elsewhere.hold(inner.bytes());
    }

    /** What a packed thing inside it is read as. */
    List<Read> readings(Unpacked.Inner inner) {
        return readings(inner.bytes(), Readings.isText(inner.bytes()), elsewhere);
    }

    /** The file as it is. */
    public SiteFile file() {
        return file;
    }

    /** Whether it is text; the first reading is then the text as it stands. */
    boolean isText() {
        return text;
    }

    List<Read> readings() {
        return readings;
    }

    private static List<Read> readings(byte[] bytes, boolean text, SearchedFiles elsewhere) {
        return (text ? Readings.ofText(PictureData.without(elsewhere.leftOut(new String(bytes, StandardCharsets.UTF_8))))
                : Readings.ofBytes(bytes)).stream().map(Read::of).toList();
    }
}
