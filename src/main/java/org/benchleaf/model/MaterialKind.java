package org.benchleaf.model;

import java.util.Optional;
import java.util.stream.Stream;

/** A kind of material that the program knows; a studio may write others, which count as chemicals. */
public enum MaterialKind {
    LIQUID("liquid", Nature.WET),
    ADHESIVE("adhesive", Nature.WET),
    GEL("gel", Nature.WET),
    POULTICE("poultice", Nature.WET),
    PASTE("paste", Nature.WET),
    SOLID("solid", Nature.DRY),
    POWDER("powder", Nature.DRY),
    GAS("gas", Nature.DRY),
    TISSUE("tissue", Nature.THING),
    SUPPORT("support", Nature.THING),
    ABSORBENT("absorbent", Nature.THING),
    TOOL("tool", Nature.THING),
    BOARD("board", Nature.THING),
    HOUSING("housing", Nature.THING),
    INDICATOR("indicator", Nature.THING);

    private enum Nature {
        WET, DRY, THING
    }

    private final String word;
    private final Nature nature;

    MaterialKind(String word, Nature nature) {
        this.word = word;
        this.nature = nature;
    }

    /** The kind of a word as it stands in a file; empty if it is none of these. */
    public static Optional<MaterialKind> of(String word) {
        return Stream.of(values()).filter(kind -> kind.word.equals(word)).findFirst();
    }

    /** As it is written in a file. */
    public String word() {
        return word;
    }

    /** Whether it is no chemical: its substance and its hazards are not asked for. */
    public boolean isThing() {
        return nature == Nature.THING;
    }

    /** Whether it wets, whatever it is made of. */
    public boolean isWet() {
        return nature == Nature.WET;
    }

    /** Whether it does not wet, though its substance is a liquid. */
    public boolean isDry() {
        return nature == Nature.DRY;
    }
}
