package org.benchleaf.model;

/** What is done with hands in a piece of a class's work, as far as a caution may be for that alone. */
public enum Handling {
    /** A stock is added to a bath. */
    ADDING("adding"),
    /** A tray is emptied. */
    EMPTYING("emptying"),
    /** A wet sheet is moved. */
    MOVING("moving");

    private final String word;

    Handling(String word) {
        this.word = word;
    }

    /** As the table of cautions has it. */
    public String word() {
        return word;
    }
}
