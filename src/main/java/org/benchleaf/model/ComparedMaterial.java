package org.benchleaf.model;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A material as it stands beside others of its kind: what published sources say of it, and nothing about which to take.
 *
 * @param name in words
 * @param kind only materials of one kind are compared
 * @param substances keys of the table of substances that the studio's own materials of it are made of
 * @param named words of which one stands in the name of a studio's material of it that is no chemical, in lower case
 * @param alone whether a liquid is of it only where nothing else is in it
 * @param cells what is said, by property
 * @param arguments what speaks for or against it
 */
public record ComparedMaterial(String name, ComparedKind kind, Set<String> substances, List<String> named, boolean alone,
        Map<String, Cell> cells, List<Argument> arguments) {

    public ComparedMaterial {
        substances = Set.copyOf(substances);
        named = List.copyOf(named);
        arguments = List.copyOf(arguments);
        cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
    }

    /** What is said of a property; empty if no source is known. */
    public Optional<Cell> of(String property) {
        return Optional.ofNullable(cells.get(property));
    }

    /** Whether one of the studio's materials is made of it, or is named as it. */
    public boolean isOf(Material material) {
        return material.substance().filter(substances::contains).isPresent() || kind.holds(material) && isCalled(material.name());
    }

    /** Whether a name holds one of its own names. */
    boolean isCalled(String name) {
        return !named.isEmpty() && PublicCare.isTold(named, List.of(name));
    }

    /**
     * What is said of one property.
     *
     * @param says one or two sentences
     * @param source key of the source, or the words that it is common practice without one
     * @param with keys of the substances that it speaks of, by which a test of a colour answers it; mostly none
     */
    public record Cell(String says, String source, List<String> with) {
        public Cell {
            with = List.copyOf(with);
        }
    }

    /** What speaks for it and against it on a sheet of which these words are told. */
    public List<Argument> argumentsFor(List<String> told) {
        return arguments.stream().filter(one -> PublicCare.isTold(one.where(), told)).toList();
    }

    /**
     * One thing that speaks for or against it.
     *
     * @param where words of which one must stand in what the case tells of the sheet, in lower case; empty if it always holds
     * @param favours whether it speaks for it
     * @param says one sentence
     * @param source key of the source, or the words that it is common practice without one
     * @param rule the rule or cell of the matrix that asks about it when the case is checked; empty if none does
     */
    public record Argument(List<String> where, boolean favours, String says, String source, Optional<String> rule) {
        public Argument {
            where = List.copyOf(where);
        }
    }
}
