package org.benchleaf.model;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What the program can draw beside a word of the glossary. */
public enum TermDrawing {
    BLEEDING, BUCKLING, CARRIER, CHAMBER, COCKLING, FEATHERED_EDGE, FOXING, GRAIN, HALO, INFILL, LAP, MAT_BURN, RAKING_LIGHT, SPLIT,
    STACK, TEAR, TIDELINE, TWO_FACES;

    /** As the glossary writes it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** The drawing written with that word. */
    public static Optional<TermDrawing> of(String word) {
        return Stream.of(values()).filter(drawing -> drawing.word().equals(word)).findFirst();
    }
}
