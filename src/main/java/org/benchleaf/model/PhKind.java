package org.benchleaf.model;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The kinds of pH measurement; numbers of two kinds are not compared. */
public enum PhKind {
    /** A flat electrode on the wetted surface. */
    SURFACE("surface"),
    /** An indicator strip, on the surface or in a liquid. */
    STRIP("strip"),
    /** In cold water in which the paper lay (TAPPI T 509, ISO 6588-1). */
    COLD_EXTRACT("cold extract"),
    /** In water in which the paper was boiled (TAPPI T 435, ISO 6588-2). */
    HOT_EXTRACT("hot extract");

    private final String word;

    PhKind(String word) {
        this.word = word;
    }

    /** The kind of that word, as an author writes it. */
    public static Optional<PhKind> named(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst();
    }

    /** As an author writes it. */
    public String word() {
        return word;
    }

    /** Whether the inside of the paper was measured. */
    public boolean isExtract() {
        return this == COLD_EXTRACT || this == HOT_EXTRACT;
    }

    /** The kinds that the words of a method tell; an extract of which no more is told counts as a cold one. */
    static Set<PhKind> in(String method) {
        String text = method.toLowerCase(Locale.ROOT);
        Stream<PhKind> found = Stream.of(SURFACE, STRIP).filter(kind -> text.contains(kind.word));
        return Stream.concat(found, text.contains("extract")
                ? Stream.of(text.contains("hot") ? HOT_EXTRACT : COLD_EXTRACT) : Stream.empty()).collect(Collectors.toSet());
    }
}
