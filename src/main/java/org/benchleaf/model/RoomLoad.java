package org.benchleaf.model;

import java.util.Locale;
import org.benchleaf.quantity.Dimension;

/** What things draw from a room or give off into it while they run; power that is drawn ends as heat in the room. */
public enum RoomLoad {
    POWER(Dimension.POWER), WATER(Dimension.FLOW), NOISE(Dimension.SOUND);

    private final Dimension dimension;

    RoomLoad(Dimension dimension) {
        this.dimension = dimension;
    }

    /** What it is measured as. */
    public Dimension dimension() {
        return dimension;
    }

    /** As class files write it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
