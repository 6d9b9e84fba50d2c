package org.benchleaf.model;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The publications on which a case rests, as a whole and in its parts.
 *
 * @param retelling from which it is retold; empty if it is told by those who did it
 * @param parts what stands to a step or a result, by the JSON Pointer of its place in the file
 * @param figures what stands to a worked-out figure, by the figure's name
 */
public record CaseSources(Optional<Retelling> retelling, Map<String, Passage> parts, Map<String, Passage> figures) {

    /** No publication at all. */
    public static final CaseSources NONE = new CaseSources(Optional.empty(), Map.of(), Map.of());

    public CaseSources {
        parts = Map.copyOf(parts);
        figures = Map.copyOf(figures);
    }

    /** What stands to a step. */
    public Optional<Passage> of(Step step) {
        return Optional.ofNullable(parts.get(step.place().pointer()));
    }

    /** What stands to a result. */
    public Optional<Passage> of(Result result) {
        return Optional.ofNullable(parts.get(result.place().pointer()));
    }

    /** What stands to the figure of that name. */
    public Optional<Passage> ofFigure(String name) {
        return Optional.ofNullable(figures.get(name));
    }

    /** Every passage that is named. */
    public Stream<Passage> all() {
        return Stream.of(retelling.map(Retelling::passage).stream(), parts.values().stream(), figures.values().stream())
                .flatMap(passages -> passages);
    }
}
