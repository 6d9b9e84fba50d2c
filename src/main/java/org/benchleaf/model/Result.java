package org.benchleaf.model;

import java.util.List;
import java.util.Optional;
import org.benchleaf.message.Place;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** One thing measured before and after, or only once, or not at all. */
public sealed interface Result {

    /** What was measured, such as {@code pH}. */
    MeasureName measure();

    /** Where in the file. */
    Place place();

    /** Asks a question that differs by the kind of result. */
    <R> R ask(Kinds<R> kinds);

    /** One answer for each kind of result. */
    interface Kinds<R> {
        R readings(Readings result);

        R colour(Colour result);

        R size(Size result);

        R reserve(Reserve result);

        R stated(Stated result);

        R words(Words result);

        R notMeasured(NotMeasured result);
    }

    /**
     * Numbers read with one method.
     *
     * @param method how, such as {@code surface, flat electrode}
     * @param unit of the numbers
     * @param places where each reading was taken, in order; may be empty
     * @param before readings before; may be empty
     * @param after readings after; may be empty
     * @param instrument id of the instrument
     * @param equilibrated how long the sheet had rested before the reading after
     * @param note anything more
     * @param conditions how they were read
     */
    record Readings(MeasureName measure, String method, Unit unit, List<String> places, List<Double> before,
            List<Double> after, Optional<String> instrument, Optional<Quantity> equilibrated, Optional<String> note,
            MeasuringConditions conditions, Place place) implements Result {
        public Readings {
            places = List.copyOf(places);
            before = List.copyOf(before);
            after = List.copyOf(after);
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.readings(this);
        }
    }

    /**
     * CIELAB coordinates at registered spots.
     *
     * @param formula the colour difference reported, such as {@code CIEDE2000}
     * @param illuminant such as {@code D65}
     * @param observer such as {@code 10°}
     * @param geometry such as {@code d/8}
     */
    record Colour(MeasureName measure, Optional<String> formula, Optional<String> illuminant, Optional<String> observer,
            Optional<String> geometry, Optional<Quantity> aperture, Optional<Integer> readingsEach,
            Optional<String> instrument, Optional<Quantity> equilibrated, List<ColourSpot> spots,
            Optional<String> note, Place place) implements Result {
        public Colour {
            spots = List.copyOf(spots);
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.colour(this);
        }
    }

    /**
     * One spot: L*, a*, b* before and after, each empty if not measured.
     *
     * @param id the words of the case file for its place, by which its figures are named
     * @param at its place, in the language in which the case is told
     */
    record ColourSpot(String id, String at, List<Double> before, List<Double> after) {
        public ColourSpot {
            before = List.copyOf(before);
            after = List.copyOf(after);
        }

        /** A spot as the case file has it. */
        public ColourSpot(String at, List<Double> before, List<Double> after) {
            this(at, at, before, after);
        }
    }

    /** Height and width before and after, with the humidity of the room at each measuring. */
    record Size(MeasureName measure, String method, Quantity heightBefore, Quantity widthBefore, Quantity heightAfter,
            Quantity widthAfter, Optional<Quantity> humidityBefore, Optional<Quantity> humidityAfter,
            Optional<String> note, Place place) implements Result {
        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.size(this);
        }
    }

    /**
     * Alkaline reserve, titrated on a sample or calculated as a ceiling.
     *
     * @param step id of the step whose bath left it, for a calculated ceiling
     * @param measured what the titration read, if there was one
     * @param carbonate reported share of calcium carbonate, if the report gives one
     * @param amount reported mol/kg, if the report gives one
     */
    record Reserve(MeasureName measure, Optional<String> method, Optional<String> step, Optional<Titration> measured,
            Optional<Quantity> carbonate, Optional<Quantity> amount, Optional<Quantity> uptake, Optional<String> note,
            Place place) implements Result {
        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.reserve(this);
        }
    }

    /** The readings of one titration. */
    record Titration(Quantity sample, Optional<Quantity> moisture, Quantity acidVolume, Quantity acid,
            Quantity baseVolume, Quantity base) {
    }

    /**
     * Values as a report states them: a mean, a range, "about", "less than".
     *
     * @param unit of the values
     * @param before the value before, if one is stated
     * @param after the value after, if one is stated
     * @param conditions how they were read
     */
    record Stated(MeasureName measure, String method, Unit unit, Optional<StatedValue> before, Optional<StatedValue> after,
            Optional<String> instrument, Optional<Quantity> equilibrated, Optional<String> note,
            MeasuringConditions conditions, Place place) implements Result {
        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.stated(this);
        }
    }

    /**
     * A result in words: a rank, "doubled", "not reported"; never turned into a number.
     *
     * @param ranks the words of the scale from the lowest to the highest; empty if there is none
     * @param unit of the numbers that nobody told; empty where it was measured in none
     */
    record Words(MeasureName measure, String method, Optional<String> before, Optional<String> after, List<String> ranks,
            Optional<Unit> unit, Optional<String> instrument, Optional<Quantity> equilibrated, Optional<String> note,
            MeasuringConditions conditions, Place place) implements Result {
        public Words {
            ranks = List.copyOf(ranks);
        }

        /** Of which nothing is told but the method. */
        public Words(MeasureName measure, String method, Optional<String> before, Optional<String> after, List<String> ranks,
                Optional<String> note, Place place) {
            this(measure, method, before, after, ranks, Optional.empty(), Optional.empty(), Optional.empty(), note,
                    MeasuringConditions.of(method), place);
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.words(this);
        }
    }

    /** Something that was not measured, and why. */
    record NotMeasured(MeasureName measure, String because, Place place) implements Result {
        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.notMeasured(this);
        }
    }
}
