package org.benchleaf.derive.hazard;

import org.benchleaf.derive.figure.Reading;
import org.benchleaf.model.Reference;

/**
 * A share by mass, from 0 to 1, with its ends where it is not exact.
 *
 * @param least the smallest that it can be
 * @param most the largest that it can be, by which hazards are classified
 */
public record MassShare(double least, double most) {

    static final MassShare NONE = new MassShare(0, 0);
    static final MassShare WHOLE = new MassShare(1, 1);
    /** Ends nearer than this are told as one number. */
    private static final double TOLD_APART = 1.02;
    /** A hundredth of the least limit of any class by default (0.1 %). Common practice, no source. */
    private static final double TOLD_AS_LESS = 1e-5;
    private static final double PER_CENT = 100;

    public MassShare {
        most = Math.max(0, Math.min(1, most));
        least = Math.max(0, Math.min(most, least));
    }

    static MassShare of(double share) {
        return new MassShare(share, share);
    }

    /** What fills up the whole. */
    MassShare rest() {
        return new MassShare(1 - most, 1 - least);
    }

    MassShare plus(MassShare other) {
        return new MassShare(least + other.least, most + other.most);
    }

    MassShare times(MassShare other) {
        return new MassShare(least * other.least, most * other.most);
    }

    /** Whether its ends are told apart. */
    public boolean isRange() {
        return most > least * TOLD_APART;
    }

    /** Per cent by mass in the words of the tables, both ends where they differ; below any limit of a class no digits are told. */
    String words(Reference reference) {
        if (most > 0 && most < TOLD_AS_LESS) {
            return reference.sentence("share-less", "limit", Reading.number(TOLD_AS_LESS * PER_CENT));
        }
        String high = Reading.number(most * PER_CENT);
        return isRange() ? reference.sentence("share-range", "low", Reading.number(least * PER_CENT), "high", high)
                : reference.sentence("share", "share", high);
    }
}
