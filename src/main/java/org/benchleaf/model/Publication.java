package org.benchleaf.model;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.benchleaf.message.Place;

/**
 * Who may see what of a case, and since when.
 *
 * @param state how far the case has come
 * @param licence SPDX identifier of the licence of text and data
 * @param sourceLicence the licence of the publication from which the case is retold; empty if it is not
 * @param withholdUntil nothing is published before this day
 * @param strengths whether anybody may read the strengths of solutions, in whatever file; empty if it is not written
 * @param permissions written permissions
 * @param citing how it is cited
 */
public record Publication(State state, String licence, Optional<SourceLicence> sourceLicence, Optional<LocalDate> withholdUntil,
        Optional<Boolean> strengths, List<Permission> permissions, Citing citing, Place place) {

    /** How far a case has come. */
    public enum State {
        /** Being written: checked, never published. */
        DRAFT,
        /** Ready, as far as the permissions go. */
        CLEARED,
        /** Taken back: removed from the site on the next run. */
        WITHDRAWN
    }

    public Publication {
        permissions = List.copyOf(permissions);
    }

    /** The same, cited in another way. */
    Publication citing(Citing other) {
        return new Publication(state, licence, sourceLicence, withholdUntil, strengths, permissions, other, place);
    }

    /** Whether anybody may read the strengths of solutions; not if nobody wrote it. */
    public boolean strengthsForPublic() {
        return strengths.orElse(false);
    }

    /** Whether the case is retold from a publication whose licence allows it, so that no owner is asked. */
    public boolean isAllowedBySource() {
        return sourceLicence.filter(SourceLicence::allows).isPresent();
    }

    /** Whether a use is permitted on a day by at least one permission then in force. */
    public boolean permits(Permission.Use use, LocalDate day) {
        return permissions.stream().anyMatch(permission -> permission.inForce(use, day));
    }
}
