package org.benchleaf.model;

import java.util.Map;
import java.util.Optional;
import org.benchleaf.message.Place;

/**
 * The words of a case in another language; numbers come from the case itself.
 *
 * @param language BCP 47 tag
 * @param steps words by step id
 * @param pictures words by picture id
 */
public record Translation(String language, String title, String summary, Map<String, StepWords> steps,
        Map<String, PictureWords> pictures, Story story, Place place) {

    public Translation {
        steps = Map.copyOf(steps);
        pictures = Map.copyOf(pictures);
    }

    /** The words of one step. */
    public record StepWords(String instruction, Optional<String> see, Optional<String> watch,
            Optional<String> ifNot, Optional<String> until) {
    }

    /** The words of one picture. */
    public record PictureWords(String alt, String caption) {
    }
}
