package org.benchleaf.check;

import java.util.Arrays;
import org.benchleaf.quantity.Dimension;

/** In which kinds the strength of a solution may be stated. */
final class StrengthKinds {

    private StrengthKinds() {
    }

    /** Those that are asked for; of a case that tells what was done also a bare per cent, whose kind nobody recorded. */
    static Dimension[] of(Context context, Dimension... wanted) {
        if (!context.done()) {
            return wanted;
        }
        Dimension[] kinds = Arrays.copyOf(wanted, wanted.length + 1);
        kinds[wanted.length] = Dimension.SHARE;
        return kinds;
    }
}
