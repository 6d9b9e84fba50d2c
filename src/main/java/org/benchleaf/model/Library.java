package org.benchleaf.model;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * What all cases of a studio share.
 *
 * @param studio who publishes
 * @param materials what the studio uses, by id, in the order of the files
 * @param glossary terms, in alphabetical order
 * @param sources published sources, by key: those of the program and those of the studio
 * @param methods how figures are worked out, by name, in the order of the table
 * @param classes courses that use a case
 * @param reference tables of hazards and care
 * @param rules rules of the trade: those of the program as the studio changed them, then the studio's own
 * @param matrix what may be done to which medium or support
 * @param formulary the methods, sources and tables that every calculation rests on
 * @param translations what the program and the studio say in other languages, by BCP 47 tag
 * @param phrases the language in which the program's own texts stand in it
 */
public record Library(Studio studio, Map<String, Material> materials, List<Term> glossary,
        Map<String, Source> sources, Map<String, Method> methods, List<CourseClass> classes,
        Reference reference, List<Rule> rules, Matrix matrix, Formulary formulary,
        Map<String, Phrases> translations, Phrases phrases) {

    public Library {
        glossary = List.copyOf(glossary);
        classes = List.copyOf(classes);
        rules = List.copyOf(rules);
    }

    /** The same library with what is said in other languages, by BCP 47 tag. */
    public Library toldIn(Map<String, Phrases> languages) {
        return new Library(studio, materials, glossary, sources, methods, classes, reference, rules, matrix, formulary, languages, phrases);
    }

    /** The keys of the substances that bought things are described as; things that are not known, or are no substance, have none. */
    public Stream<String> substances(Stream<String> things) {
        return things.map(materials::get).filter(Objects::nonNull).flatMap(material -> material.substance().stream());
    }
}
