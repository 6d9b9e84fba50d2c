package org.benchleaf.model;

import java.util.Optional;
import org.benchleaf.message.Place;
import org.benchleaf.quantity.Quantity;

/**
 * One picture.
 *
 * @param id how the file refers to it
 * @param file name inside the case's pictures folder
 * @param moment before, during or after
 * @param side recto, verso or detail
 * @param light such as {@code normal}, {@code raking from the left}, {@code transmitted}, {@code UV}
 * @param alt what is seen and why it matters
 * @param caption what to look for
 * @param credit who made it
 * @param licence SPDX identifier
 * @param step id of the step it shows
 * @param pair id of the picture it is compared with
 * @param scale the scale or rule laid beside the sheet, in words
 * @param target the colour target laid beside the sheet, in words
 * @param caution what makes a comparison with the pair unfair, in words
 * @param sheet where in the picture the sheet lies, so that marks can be laid over it
 */
public record Picture(String id, String file, String moment, String side, String light, String alt, String caption,
        String credit, String licence, Optional<String> step, Optional<String> pair,
        Optional<String> scale, Optional<String> target, Optional<String> caution, Optional<Extent> sheet,
        Place place) {

    /** A part of a picture, in shares of the picture's width and height. */
    public record Extent(Quantity left, Quantity top, Quantity width, Quantity height) {
    }
}
