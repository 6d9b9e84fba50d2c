package org.benchleaf.publish;

import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.zip.InflaterInputStream;

/** Walks through a picture's file without decoding it and looks for what would take a decoder hours or all memory. */
final class PictureLabour {

    /** Programs write about ten passes over a progressive JPEG; each costs as much as a whole picture. */
    static final int MOST_SCANS = 100;
    /** Larger than any profile or text that stands beside a picture. */
    static final int MOST_UNPACKED = 16_000_000;
    private static final int MOST_CHUNKS = 100_000;
    private static final int PNG_SIGNATURE = 8;
    private static final Set<String> PACKED = Set.of("iCCP", "zTXt", "iTXt");
    private static final int START_OF_SCAN = 0xDA;
    private static final int START_OF_PROGRESSIVE = 0xC2;
    private static final int END_OF_IMAGE = 0xD9;

    private PictureLabour() {
    }

    /** What is too much about a file, in words; empty if nothing is, or if the file ends before that can be told. */
    static Optional<String> found(Path file, PictureKind kind) throws IOException {
        try (DataInputStream in = new DataInputStream(new BufferedInputStream(Files.newInputStream(file), 1 << 16))) {
            return kind == PictureKind.JPEG ? scans(in) : kind == PictureKind.PNG ? chunks(in) : Optional.empty();
        } catch (EOFException cut) {
            return Optional.empty();
        }
    }

    /** Counts the scans of a progressive JPEG by its markers (ITU-T T.81, annex B). */
    private static Optional<String> scans(DataInputStream in) throws IOException {
        in.skipNBytes(2);
        int scans = 0;
        boolean progressive = false;
        for (int marker = marker(in); marker != END_OF_IMAGE; marker = marker(in)) {
            if (marker >= 0xD0 && marker <= 0xD8 || marker == 1) {
                continue;
            }
            progressive |= marker == START_OF_PROGRESSIVE;
            if (marker == START_OF_SCAN && (!progressive || ++scans > MOST_SCANS)) {
                return progressive ? Optional.of("more than " + MOST_SCANS + " passes over its dots") : Optional.empty();
            }
            int length = in.readUnsignedShort();
            in.skipNBytes(Math.max(0, length - 2));
        }
        return Optional.empty();
    }

    /** The next marker; dots in between hold no 0xFF that a zero does not follow (ITU-T T.81, B.1.1.5). */
    private static int marker(DataInputStream in) throws IOException {
        int before = 0;
        while (true) {
            int now = in.readUnsignedByte();
            if (before == 0xFF && now != 0 && now != 0xFF) {
                return now;
            }
            before = now;
        }
    }

    /** Unpacks the packed chunks of a PNG, and keeps nothing of them (PNG specification, 11.3). */
    private static Optional<String> chunks(DataInputStream in) throws IOException {
        in.skipNBytes(PNG_SIGNATURE);
        for (int chunk = 0; chunk < MOST_CHUNKS; chunk++) {
            int length = in.readInt();
            String name = new String(in.readNBytes(4), StandardCharsets.ISO_8859_1);
            if (length < 0 || name.equals("IEND")) {
                return Optional.empty();
            }
            if (PACKED.contains(name)) {
                if (unpacksToTooMuch(name, in.readNBytes(length))) {
                    return Optional.of("a text or profile that unpacks to more than " + MOST_UNPACKED / 1_000_000 + " MB");
                }
            } else {
                in.skipNBytes(length);
            }
            in.skipNBytes(4);
        }
        return Optional.of("more than " + MOST_CHUNKS + " pieces");
    }

    private static boolean unpacksToTooMuch(String name, byte[] body) {
        int from = packedFrom(name, body);
        if (from >= body.length) {
            return false;
        }
        byte[] buffer = new byte[1 << 14];
        try (InputStream in = new InflaterInputStream(new ByteArrayInputStream(body, from, body.length - from))) {
            long all = 0;
            for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
                all += read;
                if (all > MOST_UNPACKED) {
                    return true;
                }
            }
            return false;
        } catch (IOException notPacked) {
            return false;
        }
    }

    /** Behind the keyword; in iTXt behind two marks, the language and the keyword in it, if it is packed at all. */
    private static int packedFrom(String name, byte[] body) {
        int keyword = behindZero(body, 0);
        if (!name.equals("iTXt")) {
            return keyword + 1;
        }
        boolean packed = keyword < body.length && body[keyword] == 1;
        return packed ? behindZero(body, behindZero(body, keyword + 2)) : body.length;
    }

    private static int behindZero(byte[] body, int from) {
        int at = from;
        while (at < body.length && body[at] != 0) {
            at++;
        }
        return at + 1;
    }
}
