package org.benchleaf.calculate;

/** Where an input comes from: another figure, which makes the figures of a case a graph; a constant; what someone wrote. */
public sealed interface Origin {

    /** As data and the terminal print it: the id of a figure, or a few words. */
    String text();

    /** Another figure. */
    record OfFigure(FigureKey key) implements Origin {
        @Override
        public String text() {
            return key.id();
        }
    }

    /** A number that cases do not state, by its name in the table of constants. */
    record OfConstant(String name) implements Origin {
        @Override
        public String text() {
            return Place.USUAL.text();
        }
    }

    /** A place where someone wrote it down. */
    enum Place implements Origin {
        CASE_FILE("case file"),
        STUDIO("studio"),
        MATERIAL("material"),
        SUBSTANCES("table of substances"),
        SHEETS("number of sheets"),
        CLASS("class"),
        /** The usual value that comes with a calculation. */
        USUAL("usual value"),
        /** Written with the calculation itself. */
        GIVEN("given");

        private final String text;

        Place(String text) {
            this.text = text;
        }

        @Override
        public String text() {
            return text;
        }
    }
}
