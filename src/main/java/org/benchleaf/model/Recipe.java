package org.benchleaf.model;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;

/**
 * How a solution is made: one of six ways, or in proportions that nobody recorded. Ids name materials of the studio or other solutions of
 * the case.
 */
public sealed interface Recipe {

    /** The ids of what it is made from, in the order of making. */
    List<String> ingredients();

    /** Whether nobody recorded what it was made of, or in which proportions. */
    default boolean isOpen() {
        return this instanceof Untold || ingredients().stream().anyMatch(id -> MissingValue.read(id).isPresent());
    }

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

        R untold(Untold recipe);
    }

    /**
     * A mixture of any number of liquids, each with its share of the whole, and the rest.
     *
     * @param shares the parts whose share is given, all by mass or all by volume; at least one
     * @param rest what makes up the rest
     */
    record Mix(List<Share> shares, String rest) implements Recipe {

        public Mix {
            shares = List.copyOf(shares);
        }

        /** A mixture of one liquid and the rest. */
        public Mix(String liquid, Quantity strength, String rest, String from) {
            this(List.of(new Share(liquid, strength, from)), rest);
        }

        /** Whether the shares count mass; otherwise volume. */
        public boolean byMass() {
            return shares.get(0).strength().dimension() == Dimension.MASS_FRACTION;
        }

        @Override
        public List<String> ingredients() {
            return Stream.concat(shares.stream().map(Share::from), Stream.of(rest)).toList();
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.mix(this);
        }
    }

    /**
     * One part of a mixture.
     *
     * @param liquid what the share counts: a substance, or a material or solution as it is in its bottle
     * @param strength its share of the mixture
     * @param from the stock it is taken from; the liquid itself where the share counts the stock as it is
     */
    record Share(String liquid, Quantity strength, String from) {

        /** Whether the share counts the stock as it is in its bottle, whatever that holds. */
        public boolean asItIs() {
            return liquid.equals(from);
        }
    }

    /** A solid dissolved to a strength ({@code % m/v}, {@code % m/m}, g/L or mol/L). */
    record Dissolve(String solid, Quantity strength, String in) implements Recipe {
        @Override
        public List<String> ingredients() {
            return List.of(solid, in);
        }

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
        public List<String> ingredients() {
            return List.of(stock, with);
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.dilute(this);
        }
    }

    /**
     * A solid shaken with a liquid until no more dissolves, the clear part drawn off.
     *
     * @param at the temperature; empty where nobody recorded it
     */
    record Saturate(String solid, String in, Optional<Quantity> at) implements Recipe {

        /** At a temperature that is on record. */
        public Saturate(String solid, String in, Quantity at) {
            this(solid, in, Optional.of(at));
        }

        @Override
        public List<String> ingredients() {
            return List.of(solid, in);
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.saturate(this);
        }
    }

    /**
     * A liquid brought to a pH with a stock, drop by drop, by the meter; or a stock that is thinned with water until it has that pH.
     *
     * @param to the pH as it is told: a number, a range, "about", or open at one end
     */
    record Adjust(String liquid, String with, StatedValue to, Optional<Quantity> at) implements Recipe {
        @Override
        public List<String> ingredients() {
            return List.of(liquid, with);
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.adjust(this);
        }
    }

    /**
     * So many parts of one thing and so many of each other.
     *
     * @param portions at least two, in the order of making
     * @param byMass whether parts count mass; otherwise volume
     * @param cooked whether it is cooked, which drives off some water
     */
    record Parts(List<Portion> portions, boolean byMass, boolean cooked) implements Recipe {

        public Parts {
            portions = List.copyOf(portions);
        }

        /** Two things. */
        public Parts(String first, double firstParts, String second, double secondParts, boolean byMass,
                boolean cooked) {
            this(List.of(new Portion(first, firstParts), new Portion(second, secondParts)), byMass, cooked);
        }

        /** The number of all parts together. */
        public double all() {
            return portions.stream().mapToDouble(Portion::parts).sum();
        }

        @Override
        public List<String> ingredients() {
            return portions.stream().map(Portion::of).toList();
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.parts(this);
        }
    }

    /**
     * Things that were put together, and nobody recorded in which proportions, or whether its parts counted mass or volume.
     *
     * @param id of the solution; two of the same things need not be alike
     * @param ingredients in the order in which they are named
     * @param portions the parts of each, where only what they count is not recorded; else empty
     */
    record Untold(String id, List<String> ingredients, List<Portion> portions) implements Recipe {

        public Untold {
            ingredients = List.copyOf(ingredients);
            portions = List.copyOf(portions);
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.untold(this);
        }
    }

    /** So many parts of a material or solution. */
    record Portion(String of, double parts) {
    }
}
