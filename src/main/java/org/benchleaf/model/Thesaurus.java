package org.benchleaf.model;

import java.util.List;
import java.util.Optional;

/**
 * The identifiers that a published thesaurus gives the terms of the trade.
 *
 * @param terms one for each word of a facet
 */
public record Thesaurus(List<Term> terms) {

    private static final String CONCEPTS = "http://vocab.getty.edu/aat/";

    public Thesaurus {
        terms = List.copyOf(terms);
    }

    /** What a word names; the same word may be a process here and a material there. */
    public enum Facet {
        /** A damage or state of an object. */
        CONDITION,
        /** What is done. */
        PROCESS,
        /** What a thing is made of or treated with. */
        MATERIAL,
        /** What is treated. */
        OBJECT,
        /** Words of records themselves, such as height. */
        RECORD;

        /** The word in the table. */
        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /**
     * A term of the Art &amp; Architecture Thesaurus.
     *
     * @param word as case files and tables write it
     * @param facet what it names
     * @param concept number of the concept
     * @param source where word and number were read together
     */
    public record Term(String word, Facet facet, String concept, String source) {
    }

    /** The address of a concept; empty if the table has none for that very word. */
    public Optional<String> conceptOf(Facet facet, String word) {
        return terms.stream().filter(term -> term.facet() == facet && term.word().equalsIgnoreCase(word)).findFirst()
                .map(term -> CONCEPTS + term.concept());
    }
}
