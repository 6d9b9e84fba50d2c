package org.benchleaf.model;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.message.Place;

/**
 * One written permission.
 *
 * @param uses what it allows
 * @param from in which role the giver gave it, such as {@code owner}; never a name
 * @param on the day it was given
 * @param covers what it covers, in words; empty if everything
 * @param withdrawnOn the day it was taken back
 */
public record Permission(Set<Use> uses, String from, LocalDate on, String covers,
        Optional<LocalDate> withdrawnOn, Place place) {

    /** What a permission can allow. */
    public enum Use {
        /** The treatment itself. */
        TREATMENT,
        /** Taking a sample. */
        SAMPLING,
        /** The sheets for trainees. */
        TEACHING,
        /** The public text. */
        TEXT,
        /** The pictures. */
        PICTURES
    }

    public Permission {
        uses = Set.copyOf(uses);
    }

    /** Whether it allows a use on a day: from the day it was given to the day before it was withdrawn. */
    public boolean inForce(Use use, LocalDate day) {
        return uses.contains(use) && !day.isBefore(on) && withdrawnOn.map(day::isBefore).orElse(true);
    }
}
