package org.benchleaf.compose.part;

import java.util.List;
import java.util.Optional;
import org.benchleaf.derive.hazard.Hazards;
import org.benchleaf.model.Reference;
import org.benchleaf.page.Hazard;
import org.benchleaf.page.LabelSheet;
import org.benchleaf.page.SingleSheet;
import org.benchleaf.words.Words;

/** Makes the label of one bottle that belongs to no case, as a sheet of its own. */
public final class BottleLabel {

    private static final String LANGUAGE = "en";
    /** The second of the sizes, for bottles of up to half a litre; nobody has said how large the bottle is. */
    private static final int SIZE = 2;

    private BottleLabel() {
    }

    /**
     * The label.
     *
     * @param name what is in the bottle, as it was written
     * @param hazards what it can do; where something is not known, the label says that it must not be used
     */
    public static SingleSheet of(String name, Hazards hazards, Reference reference) {
        Words words = Words.in(LANGUAGE);
        Hazard hazard = new Hazard("hazard", name, hazards.signal(),
                HazardMaker.pictograms(reference, hazards.pictograms()),
                HazardMaker.says(reference, hazards),
                HazardMaker.statements(reference, hazards.precautions()), List.of(),
                hazards.unknown().stream().map(Hazards.Unknown::why).toList());
        LabelSheet.Label label = new LabelSheet.Label(SIZE, name, Optional.empty(), Optional.empty(), Optional.of(hazard),
                hazards.isUnclassified(), hazards.care());
        return new SingleSheet(name, words.language(), List.of(new LabelSheet(List.of(label),
                words.group("label-sheet"))));
    }
}
