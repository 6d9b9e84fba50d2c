package org.benchleaf.privacy;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Pictures that a page holds in its own text: they are looked through as pictures, not as letters. */
final class PictureData {

    private static final Pattern ADDRESS = Pattern.compile("data:image/[a-z+]{1,12}+;base64,([A-Za-z0-9+/]++={0,2})");

    private PictureData() {
    }

    /** The text without the data of its pictures. */
    static String without(String text) {
        return ADDRESS.matcher(text).replaceAll(found -> bytes(found.group(1)).isPresent() ? "" : Matcher.quoteReplacement(found.group()));
    }

    /** What the pictures of a text hold. */
    static List<byte[]> of(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        return ADDRESS.matcher(text).results().map(found -> bytes(found.group(1))).flatMap(Optional::stream).toList();
    }

    private static Optional<byte[]> bytes(String data) {
        try {
            return Optional.of(Base64.getDecoder().decode(data));
        } catch (IllegalArgumentException cut) {
            return Optional.empty();
        }
    }
}
