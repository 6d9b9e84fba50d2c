package org.benchleaf.model;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Every method of calculation, the sources that they cite, and the tables that they look things up in.
 *
 * @param methods the methods, in the order in which they are listed
 * @param plainMethods how the plain sums between them are done; they are not calculations of their own
 * @param sources the sources
 * @param tables the reference tables
 */
public record Formulary(List<Method> methods, List<Method> plainMethods, List<Source> sources, List<ReferenceTable> tables) {

    public Formulary {
        methods = List.copyOf(methods);
        plainMethods = List.copyOf(plainMethods);
        sources = List.copyOf(sources);
        tables = List.copyOf(tables);
    }

    /** The method or plain method of this name, if there is one. */
    public Optional<Method> method(String name) {
        return Stream.concat(methods.stream(), plainMethods.stream()).filter(method -> method.name().equals(name)).findFirst();
    }

    /** The source of this key, if there is one. */
    public Optional<Source> source(String key) {
        return sources.stream().filter(source -> source.key().equals(key)).findFirst();
    }

    /**
     * The table of this name.
     *
     * @throws IllegalArgumentException if there is none
     */
    public ReferenceTable table(String name) {
        return tables.stream().filter(table -> table.name().equals(name)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no reference table is called " + name));
    }
}
