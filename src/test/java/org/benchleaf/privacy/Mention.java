package org.benchleaf.privacy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URLEncoder;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.benchleaf.publish.SiteFile;

/**
 * One way in which a private fact may stand in a file.
 *
 * @param way what is special about it, the same for every fact of a kind
 * @param isBare whether it is a name with nothing beside it that shows that a person is meant
 * @param file the file that holds it
 */
record Mention(String way, boolean isBare, SiteFile file) {

    private static final String FILE = "cases/tide/index.html";
    private static final int SHORTEST_UTF_16 = 6;

    /** Words of a page. */
    static Mention words(String way, String text) {
        return new Mention(way, false, SiteFile.text(FILE, "<p>" + text + "</p>"));
    }

    /** Words of a page that hold a name and nothing that shows that it is one. */
    static Mention bare(String way, String text) {
        return new Mention(way, true, SiteFile.text(FILE, "<p>" + text + "</p>"));
    }

    /** The ways in which any text may be spelt in HTML, scripts, data, addresses, file names and packed files. */
    static List<Mention> spellings(String text) {
        List<Mention> all = new ArrayList<>(List.of(
                words("as it is", "Seen: " + text + ", and dry."),
                words("small letters", text.toLowerCase(Locale.ROOT)),
                words("capitals", text.toUpperCase(Locale.ROOT)),
                words("decimal references", each(text, c -> "&#" + c + ";")),
                words("hexadecimal references", each(text, c -> "&#x" + Integer.toHexString(c) + ";")),
                words("references in references", each(text, c -> "&amp;#" + c + ";")),
                words("unicode escapes", utf16(text, "\\u%04x")),
                words("escapes in escapes", utf16(text, "\\\\u%04X")),
                words("an address", "<a href='?q=" + URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20") + "'>x</a>"),
                words("a mark inside", text.substring(0, 1) + "<b>" + text.substring(1, 2) + "</b>" + text.substring(2)),
                words("soft hyphens", each(text, c -> Character.toString(c) + (Character.isLetter(c) ? "\u00AD" : ""))),
                words("spaces without width", each(text, c -> Character.toString(c) + "\u200B")),
                words("accents apart", Normalizer.normalize(text, Normalizer.Form.NFD)),
                words("line breaks", text.replace(" ", "\n      ")),
                words("an attribute", "<img alt=\"" + text + "\">"),
                new Mention("a file's name", false, SiteFile.text("assets/" + text.replaceAll("[\\s/:]+", "-") + ".txt", "x")),
                words("base64", "data:x;base64," + Base64.getEncoder().encodeToString(("for " + text + ".")
                        .getBytes(StandardCharsets.UTF_8))),
                new Mention("an archive", false, zip(text))));
        if (text.length() >= SHORTEST_UTF_16) {
            all.add(bytes("UTF-16LE", text));
        }
        return all;
    }

    private static Mention bytes(String charset, String text) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.writeBytes(new byte[] {(byte) 0xFF, 0, 1, 2, 3, (byte) 0x80});
        bytes.writeBytes(text.getBytes(Charset.forName(charset)));
        bytes.writeBytes(new byte[] {0, 1, 2});
        return new Mention(charset, false, new SiteFile("a.bin", bytes.toByteArray()));
    }

    private static SiteFile zip(String text) {
        ByteArrayOutputStream archive = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(archive)) {
            zip.putNextEntry(new ZipEntry("a.txt"));
            zip.write(("Seen: " + text + ".").repeat(9).getBytes(StandardCharsets.UTF_8));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return new SiteFile("a.zip", archive.toByteArray());
    }

    private static String each(String text, IntFunction<String> spelt) {
        return text.codePoints().mapToObj(spelt).collect(Collectors.joining());
    }

    private static String utf16(String text, String form) {
        return text.chars().mapToObj(c -> String.format(form, c)).collect(Collectors.joining());
    }
}
