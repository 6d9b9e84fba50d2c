package org.benchleaf.privacy;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The named blocks of a JPEG, PNG or WebP file, and which of them must not be in the site. */
final class PictureBlocks {

    /** An element or an attribute of the XMP data: both can hold facts. */
    private static final Pattern NAME = Pattern.compile("<([\\w.-]+(?::[\\w.-]+)?)|\\s([\\w.-]+(?::[\\w.-]+)?)\\s*=\\s*[\"']");
    private static final Pattern ALLOWED = Pattern.compile("x:xmpmeta|rdf:(RDF|Description|Alt|li|about)|dc:rights|"
            + "photoshop:Credit|xmlns:(x|rdf|dc|photoshop)|xml:lang");

    /** One block: its name, and where its body begins and ends. */
    record Block(String name, int from, int to) {
    }

    private PictureBlocks() {
    }

    /** The blocks before the picture itself, in order; empty if the file is no picture of these kinds. */
    static List<Block> of(byte[] bytes) {
        if (unsigned(bytes, 0) == 0xFF && unsigned(bytes, 1) == 0xD8) {
            return jpeg(bytes);
        }
        if (text(bytes, 1, 3).equals("PNG")) {
            return png(bytes);
        }
        return text(bytes, 0, 4).equals("RIFF") && text(bytes, 8, 4).equals("WEBP") ? webp(bytes) : List.of();
    }

    /** What a picture carries that may hold private facts, in words; empty if it carries nothing but credit and rights. */
    static Optional<String> forbidden(byte[] bytes) {
        for (Block block : of(bytes)) {
            Optional<String> words = switch (block.name()) {
                case "APP1" -> text(bytes, block.from(), 4).equals("Exif") ? Optional.of("a block of camera data (Exif)")
                        : foreignXmp(bytes, block);
                case "APP13" -> Optional.of("a block of press data (IPTC)");
                case "COM" -> Optional.of("a comment");
                case "tEXt", "zTXt", "iTXt" -> Optional.of("a block of text");
                case "eXIf", "EXIF" -> Optional.of("a block of camera data (Exif)");
                case "XMP " -> Optional.of("a block of XMP data");
                default -> Optional.empty();
            };
            if (words.isPresent()) {
                return words;
            }
        }
        return Optional.empty();
    }

    private static Optional<String> foreignXmp(byte[] bytes, Block block) {
        Matcher name = NAME.matcher(text(bytes, block.from(), block.to() - block.from()));
        boolean any = false;
        while (name.find()) {
            any = true;
            if (!ALLOWED.matcher(name.group(1) == null ? name.group(2) : name.group(1)).matches()) {
                return Optional.of("XMP data other than credit and rights");
            }
        }
        return any ? Optional.empty() : Optional.of("a block of unknown data");
    }

    private static List<Block> jpeg(byte[] bytes) {
        List<Block> blocks = new ArrayList<>();
        int at = 2;
        while (at + 3 < bytes.length && unsigned(bytes, at) == 0xFF) {
            int marker = unsigned(bytes, at + 1);
            if (marker == 0xFF) {
                at++;
                continue;
            }
            if (marker == 0xD9) {
                break;
            }
            int length = unsigned(bytes, at + 2) << 8 | unsigned(bytes, at + 3);
            int end = Math.min(bytes.length, at + 2 + length);
            blocks.add(new Block(marker >= 0xE0 && marker <= 0xEF ? "APP" + (marker - 0xE0)
                    : marker == 0xFE ? "COM" : Integer.toHexString(marker), Math.min(end, at + 4), end));
            at = marker == 0xDA ? afterScan(bytes, end) : end;
        }
        return blocks;
    }

    /** The next marker behind a scan; stuffed bytes and restart marks belong to the scan. */
    private static int afterScan(byte[] bytes, int from) {
        for (int at = from; at + 1 < bytes.length; at++) {
            int next = unsigned(bytes, at + 1);
            if (unsigned(bytes, at) == 0xFF && next != 0 && (next < 0xD0 || next > 0xD7)) {
                return at;
            }
        }
        return bytes.length;
    }

    private static List<Block> png(byte[] bytes) {
        List<Block> blocks = new ArrayList<>();
        for (int at = 8; at + 8 <= bytes.length;) {
            int length = Math.max(0, number(bytes, at, true));
            int end = (int) Math.min(bytes.length, at + 8L + length);
            blocks.add(new Block(text(bytes, at + 4, 4), at + 8, end));
            at = (int) Math.min(bytes.length, end + 4L);
        }
        return blocks;
    }

    private static List<Block> webp(byte[] bytes) {
        List<Block> blocks = new ArrayList<>();
        for (int at = 12; at + 8 <= bytes.length;) {
            int length = Math.max(0, number(bytes, at + 4, false));
            int end = (int) Math.min(bytes.length, at + 8L + length);
            blocks.add(new Block(text(bytes, at, 4), at + 8, end));
            at = end + (length & 1);
        }
        return blocks;
    }

    private static int number(byte[] bytes, int at, boolean highFirst) {
        int number = 0;
        for (int i = 0; i < 4; i++) {
            number |= unsigned(bytes, at + i) << 8 * (highFirst ? 3 - i : i);
        }
        return number;
    }

    private static int unsigned(byte[] bytes, int at) {
        return at < bytes.length ? bytes[at] & 0xFF : 0;
    }

    private static String text(byte[] bytes, int from, int length) {
        int start = Math.min(from, bytes.length);
        return new String(bytes, start, Math.max(0, Math.min(length, bytes.length - start)),
                StandardCharsets.ISO_8859_1);
    }
}
