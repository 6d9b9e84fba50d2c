package org.benchleaf.message;

/** A message of the catalogue that stands with all its words in one place. */
interface CatalogueEntry extends Message.Id {

    /** The code, weight and words; see the methods of {@link Message.Id} that give each. */
    record Entry(String code, Severity severity, String what, String why, String fix) {
    }

    Entry entry();

    @Override
    default String code() {
        return entry().code();
    }

    @Override
    default Severity severity() {
        return entry().severity();
    }

    @Override
    default String what() {
        return entry().what();
    }

    @Override
    default String why() {
        return entry().why();
    }

    @Override
    default String fix() {
        return entry().fix();
    }
}
