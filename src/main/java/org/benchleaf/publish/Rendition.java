package org.benchleaf.publish;

/**
 * One size of a published picture.
 *
 * @param path relative to the site's root
 * @param width in pixels
 * @param height in pixels
 */
public record Rendition(String path, int width, int height) {
}
