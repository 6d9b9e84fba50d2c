package org.benchleaf.publish;

import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** What a file holds, told by its first bytes and never by its name. */
enum PictureKind {
    JPEG("jpeg", "a JPEG picture"),
    PNG("png", "a PNG picture"),
    WEBP("webp", "a WebP picture"),
    TIFF("tiff", "a TIFF picture"),
    SVG("", "a drawing made of lines (SVG), which may hold scripts and links"),
    PDF("", "a PDF document"),
    HEIC("", "a HEIC or AVIF picture"),
    GIF("", "a GIF picture"),
    EMPTY("", "nothing"),
    OTHER("", "no picture that the program knows");

    private final String format;
    private final String words;

    PictureKind(String format, String words) {
        this.format = format;
        this.words = words;
    }

    /** The name under which the image reader knows the format. */
    String format() {
        return format;
    }

    String words() {
        return words;
    }

    boolean isReadable() {
        return !format.isEmpty();
    }

    /** The kind of a file that begins so. */
    static PictureKind of(byte[] head) {
        String text = new String(head, StandardCharsets.ISO_8859_1);
        if (text.isEmpty()) {
            return EMPTY;
        }
        if (text.startsWith("\u00FF\u00D8\u00FF")) {
            return JPEG;
        }
        if (text.startsWith("\u0089PNG\r\n\u001A\n")) {
            return PNG;
        }
        if (text.startsWith("RIFF") && text.startsWith("WEBP", 8)) {
            return WEBP;
        }
        if (text.startsWith("II*\0") || text.startsWith("MM\0*")) {
            return TIFF;
        }
        if (text.startsWith("%PDF")) {
            return PDF;
        }
        if (text.startsWith("GIF8")) {
            return GIF;
        }
        if (text.startsWith("ftyp", 4)) {
            return HEIC;
        }
        return text.toLowerCase(Locale.ROOT).contains("<svg") ? SVG : OTHER;
    }
}
