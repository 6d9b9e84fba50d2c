package org.benchleaf.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Labels at true size, with a ruler to check the printer by.
 *
 * @param labels in the order of preparing, small ones last
 * @param words fixed labels
 */
public record LabelSheet(List<Label> labels, Map<String, String> words) implements Block {

    public LabelSheet {
        labels = List.copyOf(labels);
    }

    /**
     * One label.
     *
     * @param size which of the sizes for growing bottles, from 1; 0 of what is not hazardous
     * @param name what is in it
     * @param strength with its kind; empty if there is none
     * @param keeps how long it keeps
     * @param hazard what it can do; empty if nothing follows or nothing is known
     * @param unclassified whether everything in it is known and no class follows: only then, and without care, the label says that
     * @param care why care is asked for where no class follows
     * @param waste whether it is for a vessel that is filled bit by bit, and then tells when it was begun and full
     */
    public record Label(int size, String name, Optional<String> strength, Optional<String> keeps,
            Optional<Hazard> hazard, boolean unclassified, List<String> care, boolean waste) {
        public Label {
            care = List.copyOf(care);
        }

        /** The label of something that is made once. */
        public Label(int size, String name, Optional<String> strength, Optional<String> keeps, Optional<Hazard> hazard,
                boolean unclassified, List<String> care) {
            this(size, name, strength, keeps, hazard, unclassified, care, false);
        }
    }
}
