package org.benchleaf.publish;

import java.nio.charset.StandardCharsets;
import java.util.Base64;

/**
 * One finished file of the site.
 *
 * @param path relative to the site's root, with forward slashes
 * @param bytes what it holds; not copied, so never changed by anyone
 */
public record SiteFile(String path, byte[] bytes) {

    /** A file of text, as UTF-8. */
    public static SiteFile text(String path, String text) {
        return new SiteFile(path, text.getBytes(StandardCharsets.UTF_8));
    }

    /** What a file of text holds. */
    public String text() {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    /** Whether it is a page, which has links and anchors. */
    public boolean isPage() {
        return path.endsWith(".html");
    }

    /** A picture as the address of itself, for a page that needs no other file. */
    String pictureData() {
        return "data:" + pictureType() + ";base64," + Base64.getEncoder().encodeToString(bytes);
    }

    /** The media type of a picture, by its name. */
    String pictureType() {
        return "image/" + (path.endsWith(".svg") ? "svg+xml" : path.endsWith(".png") ? "png" : "jpeg");
    }
}
