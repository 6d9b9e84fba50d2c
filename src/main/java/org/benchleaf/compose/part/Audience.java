package org.benchleaf.compose.part;

import java.util.List;
import java.util.Set;
import org.benchleaf.model.Permission.Covered;
import org.benchleaf.model.Studio;

/** For whom a site is made. */
public enum Audience {
    /** Everybody: the one site of a studio that has one, with its sheets. */
    EVERYBODY(Set.of(Covered.WEB)),
    /** The public of a studio whose sheets stand apart. */
    PUBLIC(Set.of(Covered.WEB)),
    /** Those who are taught: the training site of a studio whose sheets stand apart. */
    TRAINEES(Set.of(Covered.WEB, Covered.TEACHING_ON_SITE));

    private final Set<Covered> ways;

    Audience(Set<Covered> ways) {
        this.ways = ways;
    }

    /** The sites that a studio publishes. */
    public static List<Audience> of(Studio studio) {
        return studio.publishing() == Studio.Publishing.APART ? List.of(PUBLIC, TRAINEES) : List.of(EVERYBODY);
    }

    /** Whether anybody can read the site. */
    public boolean isPublic() {
        return this != TRAINEES;
    }

    /** The ways of which a permission must cover one. */
    Set<Covered> ways() {
        return ways;
    }
}
