package org.benchleaf.model;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What an author says about how a case is cited.
 *
 * @param authors "Family, Given" for a person, another form for a body; empty if the studio is the author
 * @param identifier a persistent identifier, as {@code doi:…} or {@code ark:…}
 * @param versions what changed and when, newest last
 */
public record Citing(List<String> authors, Optional<String> identifier, List<Version> versions) {

    /** Nothing is said. */
    public static final Citing UNSAID = new Citing(List.of(), Optional.empty(), List.of());

    public Citing {
        authors = List.copyOf(authors);
        versions = List.copyOf(versions);
    }

    /**
     * One version of a case.
     *
     * @param on its day
     * @param changed what is other than in the version before
     */
    public record Version(LocalDate on, String changed) {
    }
}
