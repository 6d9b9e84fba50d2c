package org.benchleaf.publish;

/**
 * One size of a published picture.
 *
 * @param width in dots
 * @param height in dots
 * @param file the finished file
 */
public record PictureFile(int width, int height, SiteFile file) {
}
