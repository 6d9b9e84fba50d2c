package org.benchleaf.rule;

import java.util.Optional;
import org.benchleaf.message.Place;
import org.benchleaf.model.Picture;
import org.benchleaf.model.Result;
import org.benchleaf.model.Step;

/**
 * What a rule is asked of at one time; what it does not concern stays empty.
 *
 * @param step the step
 * @param layer the medium or the support
 * @param liquid id of the liquid that reaches it
 * @param place where the file speaks of it
 */
record Asked(Optional<Step> step, Optional<Layer> layer, Optional<String> liquid, Optional<Result> result,
        Optional<Picture> picture, Place place) {

    static Asked ofCase(Place place) {
        return new Asked(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), place);
    }

    static Asked of(Step step) {
        return ofCase(step.place()).at(step);
    }

    static Asked of(Layer medium) {
        return ofCase(medium.place()).on(medium);
    }

    static Asked of(Result result) {
        return new Asked(Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(result), Optional.empty(),
                result.place());
    }

    static Asked of(Picture picture) {
        return new Asked(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(picture),
                picture.place());
    }

    /** The same of another step; the medium stays, a liquid does not. */
    Asked at(Step other) {
        return new Asked(Optional.of(other), layer, Optional.empty(), result, picture, place);
    }

    Asked on(Layer other) {
        return new Asked(step, Optional.of(other), liquid, result, picture, place);
    }

    Asked with(String other) {
        return new Asked(step, layer, Optional.of(other), result, picture, place);
    }
}
