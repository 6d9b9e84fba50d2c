package org.benchleaf.model;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** A kind of materials that stand beside each other, and what they are compared by. */
public enum ComparedKind {
    ADHESIVE("adhesive", Set.of(), List.of(List.of("activated", "sets", "strength"), List.of("ph", "yellowing", "tests"),
            List.of("swelling", "mould", "removed"), List.of("suits", "keeps"))),
    TISSUE("tissue", Set.of("tissue"), List.of(List.of("fibre", "grammage", "direction"), List.of("moisture", "wet"), List.of("use"))),
    WASH_WATER("wash water", Set.of("liquid"), List.of(List.of("calcium", "ph", "conductivity"), List.of("aged", "size", "ink"),
            List.of("prepared"))),
    ERASER("eraser", Set.of("tool"), List.of(List.of("composition", "ph"), List.of("residue", "abrasion"), List.of("use"))),
    SOLVENT("solvent", Set.of(), List.of(List.of("dissolves", "paper"), List.of("tested"))),
    SUPPORT("support", Set.of("support", "absorbent"), List.of(List.of("passes", "wet", "sticks"), List.of("use", "cleaned")));

    private final String word;
    private final Set<String> things;
    private final List<List<String>> groups;

    ComparedKind(String word, Set<String> things, List<List<String>> groups) {
        this.word = word;
        this.things = things;
        this.groups = groups;
    }

    /** As a row writes it. */
    public String word() {
        return word;
    }

    /** The properties by which they are compared: so many together as a phone shows with little pushing, those that belong together. */
    public List<List<String>> groups() {
        return groups;
    }

    /** Whether a material of the studio that is of no known substance can be of it by its name. */
    boolean holds(Material material) {
        return things.contains(material.kind());
    }

    /** The kind written with that word. */
    public static Optional<ComparedKind> of(String word) {
        return Stream.of(values()).filter(kind -> kind.word.equals(word)).findFirst();
    }
}
