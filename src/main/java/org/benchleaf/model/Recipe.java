package org.benchleaf.model;

import java.util.Optional;
import org.benchleaf.quantity.Quantity;

/** How a solution is made: one of six ways. Ids name materials of the studio or other solutions of the case. */
public sealed interface Recipe {

    /** Asks a question that differs by the way of making. */
    <R> R ask(Kinds<R> kinds);

    /** One answer for each way of making. */
    interface Kinds<R> {
        R mix(Mix recipe);

        R dissolve(Dissolve recipe);

        R dilute(Dilute recipe);

        R saturate(Saturate recipe);

        R adjust(Adjust recipe);

        R parts(Parts recipe);
    }

    /**
     * A mixture of liquids to a strength by volume.
     *
     * @param liquid the liquid whose strength is given
     * @param strength its share
     * @param rest what makes up the rest
     * @param from the stock the liquid is taken from
     */
    record Mix(String liquid, Quantity strength, String rest, String from) implements Recipe {
        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.mix(this);
        }
    }

    /** A solid dissolved to a strength ({@code % m/v}, {@code % m/m}, g/L or mol/L). */
    record Dissolve(String solid, Quantity strength, String in) implements Recipe {
        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.dissolve(this);
        }
    }

    /**
     * A stock made weaker.
     *
     * @param stock what is diluted
     * @param strength the strength wanted, of the same kind as the stock's; empty if {@code oneIn} is given
     * @param oneIn one part made up to so many parts in all
     * @param with what it is diluted with
     */
    record Dilute(String stock, Optional<Quantity> strength, Optional<Quantity> oneIn, String with)
            implements Recipe {
        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.dilute(this);
        }
    }

    /** A solid shaken with a liquid until no more dissolves, the clear part drawn off. */
    record Saturate(String solid, String in, Quantity at) implements Recipe {
        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.saturate(this);
        }
    }

    /** A liquid brought to a pH with a stock, drop by drop, by the meter. */
    record Adjust(String liquid, String with, Quantity to, Optional<Quantity> at) implements Recipe {
        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.adjust(this);
        }
    }

    /**
     * So many parts of one and so many of another.
     *
     * @param byMass whether parts count mass; otherwise volume
     * @param cooked whether it is cooked, which drives off some water
     */
    record Parts(String first, double firstParts, String second, double secondParts, boolean byMass, boolean cooked)
            implements Recipe {
        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.parts(this);
        }
    }
}
