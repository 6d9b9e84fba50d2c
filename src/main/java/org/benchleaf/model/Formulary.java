package org.benchleaf.model;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Every method of calculation, the sources that they cite, and the tables that they look things up in.
 *
 * @param methods the methods, in the order in which they are listed
 * @param plainMethods how figures come about that nothing is calculated for, such as one taken over as written
 * @param sources the sources
 * @param tables the reference tables
 * @param constants numbers that cases do not state
 */
public record Formulary(List<Method> methods, List<Method> plainMethods, List<Source> sources,
        List<ReferenceTable> tables, List<Constant> constants) {

    public Formulary {
        methods = List.copyOf(methods);
        plainMethods = List.copyOf(plainMethods);
        sources = List.copyOf(sources);
        tables = List.copyOf(tables);
        constants = List.copyOf(constants);
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

    /**
     * The constant of this name.
     *
     * @throws IllegalArgumentException if there is none
     */
    public Constant constant(String name) {
        return constants.stream().filter(constant -> constant.name().equals(name)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no constant is called " + name));
    }
}
