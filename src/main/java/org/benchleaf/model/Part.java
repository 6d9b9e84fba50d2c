package org.benchleaf.model;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.benchleaf.quantity.Quantity;

/** What a step uses, each with figures of its own. Ids name solutions of the case or materials of the studio. */
public sealed interface Part {

    /** Asks a question that differs by the kind of part. */
    <R> R ask(Kinds<R> kinds);

    /** One answer for each kind of part. */
    interface Kinds<R> {
        R bath(Bath part);

        R mist(Mist part);

        R chamber(Chamber part);

        R blotters(Blotters part);

        R press(Press part);

        R mend(Mend part);

        R heat(Heat part);

        R support(Support part);

        R cleaning(Cleaning part);

        R fixing(Fixing part);

        R weighing(Weighing part);

        R housing(Housing part);

        R layer(Layer part);

        R suction(Suction part);

        R light(Light part);

        R gas(Gas part);

        R tape(Tape part);

        R ageing(Ageing part);
    }

    /** The part's key in a case file, which is also the first word of its figures' names. */
    default String word() {
        return getClass().getSimpleName().toLowerCase(java.util.Locale.ROOT);
    }

    /**
     * Baths, one after the other.
     *
     * @param of the liquid
     * @param margin free border around the sheet on every side
     * @param depth of the liquid
     * @param baths how many are planned; one where nobody recorded it
     * @param counted whether anybody recorded how many there were
     * @param atMost how many without a further reason
     * @param each how long each lasts: one time for all, or one for each in order; empty if nobody tells
     * @param temperature of the liquid
     * @param sheets how many sheets share a bath
     * @param water what water it is made from
     * @param readings what was read bath by bath
     * @param filling how long it takes to fill the first and bring it to its pH, before the sheet goes in
     * @param changing how long it takes from lifting the sheet out of one to laying it into the next
     */
    record Bath(String of, Optional<Quantity> margin, Optional<Quantity> depth, int baths, boolean counted, Optional<Integer> atMost,
            List<StatedTime> each, Optional<Quantity> temperature, int sheets, Optional<Water> water,
            List<BathReading> readings, Optional<Quantity> filling, Optional<Quantity> changing) implements Part {
        public Bath {
            each = List.copyOf(each);
            readings = List.copyOf(readings);
        }

        /** The same baths with other readings. */
        Bath read(List<BathReading> other) {
            return new Bath(of, margin, depth, baths, counted, atMost, each, temperature, sheets, water, other, filling, changing);
        }

        /** How many baths are on record, by the number of the last that was read; none if no reading is. */
        public Optional<Integer> onRecord() {
            return readings.stream().map(BathReading::bath).max(Integer::compare);
        }

        /** Whether it is told how long the baths last, and how many there are. */
        public boolean isTimed() {
            return counted && !each.isEmpty();
        }

        /** Whether nobody tells how long one of the planned baths lasted at most. */
        public boolean isOpen() {
            return isTimed() && IntStream.rangeClosed(1, baths).mapToObj(this::lasting).anyMatch(StatedTime::isOpen);
        }

        /**
         * How long a bath lasts; one beyond those that are told lasts as long as the last of them.
         *
         * @param number from 1
         * @throws IllegalStateException if the baths are not timed
         */
        public StatedTime lasting(int number) {
            if (!isTimed()) {
                throw new IllegalStateException("nobody tells how long a bath lasts");
            }
            return each.get(Math.min(number, each.size()) - 1);
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.bath(this);
        }
    }

    /**
     * The water a bath is made from.
     *
     * @param source such as {@code deionised}, {@code distilled}, {@code tap}
     * @param ph measured
     * @param conductivity measured
     * @param analysis where the analysis of tap water is kept
     * @param pipes what the pipes are made of
     */
    record Water(String source, Optional<Quantity> ph, Optional<Quantity> conductivity, Optional<String> analysis,
            Optional<String> pipes) {
    }

    /**
     * What was read in one bath.
     *
     * @param bath the bath's number, from 1
     * @param phFresh before the sheet went in
     * @param phUsed after the sheet came out
     * @param conductivity after the sheet came out
     * @param colour of the used bath against fresh liquid, in words
     * @param added volume of stock added to reach the pH
     */
    record BathReading(int bath, Optional<Quantity> phFresh, Optional<Quantity> phUsed,
            Optional<Quantity> conductivity, Optional<String> colour, Optional<Quantity> added) {
    }

    /**
     * A fine spray.
     *
     * @param of the liquid
     * @param amount in all; empty if nobody recorded it
     * @param tool the sprayer; a material id
     * @param ultrasonic whether the tool makes its mist by ultrasound
     * @param water such as {@code deionised}, for an ultrasonic tool
     * @param cleaned when the tool was cleaned, such as {@code same day}
     * @param distance from the nozzle to the sheet
     */
    record Mist(String of, Optional<Quantity> amount, Optional<String> tool, boolean ultrasonic, Optional<String> water,
            Optional<String> cleaned, Optional<Quantity> distance) implements Part {
        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.mist(this);
        }
    }

    /**
     * A humidity chamber, a membrane pack or a damp pack.
     *
     * @param pack {@code chamber}, {@code membrane} or {@code damp pack}
     * @param of the liquid that gives the vapour
     * @param amount of liquid put in
     * @param volume of the closed space
     * @param humidity reached, relative
     * @param temperature in the chamber
     * @param lookEvery how often someone looks
     * @param noIgnition whether every source of ignition is kept away
     */
    record Chamber(String pack, String of, Optional<Quantity> amount, Optional<Quantity> volume,
            Optional<Quantity> humidity, Optional<Quantity> temperature, Optional<Quantity> lookEvery,
            boolean noIgnition) implements Part {
        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.chamber(this);
        }
    }

    /**
     * Drying between blotters.
     *
     * @param changes time from one change to the next; {@code overnight} is kept as an empty time
     * @param blotter material id of the blotter
     * @param layers sheets of blotter on each face
     * @param wet mass of the wet sheet
     * @param dry mass of the dry sheet
     */
    record Blotters(List<Optional<Quantity>> changes, Optional<String> blotter, int layers, Optional<Quantity> wet,
            Optional<Quantity> dry) implements Part {
        public Blotters {
            changes = List.copyOf(changes);
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.blotters(this);
        }
    }

    /**
     * Weights laid on side by side: the mass of each, over the whole sheet or an area of its own, and what lies between, from the sheet
     * outward.
     */
    record Press(int weights, Optional<Quantity> mass, Optional<Quantity> height, Optional<Quantity> width,
            List<String> between, Optional<Quantity> time) implements Part {
        public Press {
            between = List.copyOf(between);
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.press(this);
        }
    }

    /**
     * Mending with tissue.
     *
     * @param damages ids of the tears, splits or losses
     * @param tissue material id
     * @param with adhesive: a solution or material id
     * @param strip width of the strips
     * @param lap how far a strip reaches beyond each end of the tear
     * @param piece longest piece used
     * @param pasteLoad wet adhesive on tissue, mass per area
     * @param waste share added for loss
     * @param grain direction of the tissue's fibres, in words
     * @param ofPatch whether it is a lining or a large patch
     * @param activation what wakes an adhesive that lies on the tissue already; empty where it is laid down wet
     */
    record Mend(List<String> damages, String tissue, String with, Optional<Quantity> strip, Optional<Quantity> lap,
            Optional<Quantity> piece, Optional<Quantity> pasteLoad, Optional<Quantity> waste,
            Optional<String> grain, boolean ofPatch, Optional<Activation> activation) implements Part {
        public Mend {
            damages = List.copyOf(damages);
        }

        /** What is laid down wet: the adhesive, or only what wakes one that lies dry on the tissue. */
        public Optional<String> liquid() {
            return activation.isPresent() ? activation.flatMap(Activation::with) : Optional.of(with);
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.mend(this);
        }
    }

    /**
     * What makes a dry adhesive stick.
     *
     * @param by what does it
     * @param with the liquid that wakes it
     * @param load of that liquid, mass per area
     * @param coating dry adhesive on the tissue, mass per area
     * @param window temperatures between which the adhesive melts and the object bears it
     */
    record Activation(Agent by, Optional<String> with, Optional<Quantity> load, Optional<Quantity> coating,
            Optional<Quantity> window) {

        /** What can make a dry adhesive stick. */
        public enum Agent {
            HEAT, PRESSURE, SOLVENT, WATER;

            /** The word as written in a case file. */
            public String word() {
                return name().toLowerCase(java.util.Locale.ROOT);
            }

            /** The agent written with that word. */
            public static Optional<Agent> of(String word) {
                return List.of(values()).stream().filter(agent -> agent.word().equals(word)).findFirst();
            }
        }
    }

    /** Warmth from a tool: its temperature, empty if nobody recorded it, and how long it rests on one place. */
    record Heat(String tool, Optional<Quantity> temperature, Optional<Quantity> time) implements Part {
        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.heat(this);
        }
    }

    /**
     * What carries the sheet.
     *
     * @param under material id below
     * @param between material id next to the sheet, if any
     * @param rigid whether it can be lifted flat
     * @param margin how far the carrier reaches beyond the sheet on every side
     */
    record Support(String under, Optional<String> between, boolean rigid, Optional<Quantity> margin)
            implements Part {
        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.support(this);
        }
    }

    /** Dry cleaning tools in the order of use, and whether air is drawn off through a HEPA filter. */
    record Cleaning(List<String> tools, boolean extraction, boolean openBrushing) implements Part {
        public Cleaning {
            tools = List.copyOf(tools);
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.cleaning(this);
        }
    }

    /**
     * Protection of a sensitive medium.
     *
     * @param medium id of the medium
     * @param with solution or material id
     * @param method {@code ionic}, {@code volatile wax}, {@code resin} or {@code barrier}
     * @param rinse how long it is rinsed in all
     * @param rinses how many changes of water
     * @param clearBy the day by which a volatile fixative is expected to be gone
     * @param faces {@code one} or {@code both} faces of the sheet
     * @param beyond how far it reaches beyond the edge of the medium
     */
    record Fixing(String medium, String with, String method, Optional<Quantity> rinse, Optional<Integer> rinses,
            Optional<LocalDate> clearBy, Optional<String> faces, Optional<Quantity> beyond) implements Part {
        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.fixing(this);
        }
    }

    /** Weighings while drying: oven-dry or conditioned mass, wet mass, mass when put under restraint; each empty if nobody recorded it. */
    record Weighing(Optional<Quantity> dry, Optional<Quantity> wet, Optional<Quantity> restrained, Optional<Quantity> between,
            Optional<Quantity> blottedFor) implements Part {
        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.weighing(this);
        }
    }

    /**
     * What the object is kept in afterwards.
     *
     * @param temperature at which it is stored; empty where nobody tells
     */
    record Housing(List<String> materials, String buffered, Optional<Quantity> ph, Optional<Quantity> temperature) implements Part {
        public Housing {
            materials = List.copyOf(materials);
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.housing(this);
        }
    }

    /**
     * A poultice or a gel laid on the whole sheet or on a place.
     *
     * @param of what it is made of: a solution or material id
     * @param thickness of the layer; empty if nobody recorded it
     * @param height of the place; that of the sheet if empty
     * @param width of the place; that of the sheet if empty
     * @param each how long one lies
     * @param times how many are laid on, one after the other
     * @param between material id of what lies between it and the sheet; empty in direct contact
     * @param covered whether it is covered against drying out
     */
    record Layer(String of, Optional<Quantity> thickness, Optional<Quantity> height, Optional<Quantity> width,
            Optional<Quantity> each, int times, Optional<String> between, boolean covered) implements Part {
        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.layer(this);
        }
    }

    /**
     * Air drawn through the sheet.
     *
     * @param tool the table, plate or nozzle; a material id
     * @param of the liquid drawn through; a solution or material id
     * @param amount of that liquid
     * @param pressure below that of the room
     * @param time how long it is on
     */
    record Suction(String tool, Optional<String> of, Optional<Quantity> amount, Optional<Quantity> pressure,
            Optional<Quantity> time) implements Part {
        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.suction(this);
        }
    }

    /**
     * Light that bleaches.
     *
     * @param source {@code sun}, {@code daylight} or {@code lamps}; empty if nobody recorded it
     * @param illuminance on the sheet
     * @param filtered whether ultraviolet is taken out; empty if nobody recorded it
     * @param time of exposure in all
     */
    record Light(Optional<String> source, Optional<Quantity> illuminance, Optional<Boolean> filtered, Optional<Quantity> time)
            implements Part {
        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.light(this);
        }
    }

    /**
     * A gas led through a liquid.
     *
     * @param of material id of the gas
     * @param amount let in, as a volume at room pressure
     * @param time how long it bubbles
     * @param tool material id of the tube or frit
     */
    record Gas(String of, Optional<Quantity> amount, Optional<Quantity> time, Optional<String> tool) implements Part {
        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.gas(this);
        }
    }

    /**
     * Adhesive tape that is taken off.
     *
     * @param damages ids of the tapes and their stains
     * @param carrier such as {@code paper}, {@code plastic film}
     * @param adhesive such as {@code rubber}, {@code acrylic}, {@code water-soluble}
     * @param means how carrier and residue are taken off, in the order of use
     */
    record Tape(List<String> damages, Optional<String> carrier, Optional<String> adhesive, List<String> means)
            implements Part {
        public Tape {
            damages = List.copyOf(damages);
            means = List.copyOf(means);
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.tape(this);
        }
    }

    /**
     * Ageing made faster.
     *
     * @param of {@code test sheets}, {@code sample} or {@code object}
     * @param temperature in the chamber; empty where nobody recorded it
     * @param humidity in the chamber, relative
     * @param humidityMissing why there is none: not recorded, or dry heat, to which it does not apply
     * @param time how long; empty where nobody recorded it
     * @param standard by which it is done, in words
     */
    record Ageing(String of, Optional<Quantity> temperature, Optional<Quantity> humidity, Optional<MissingValue> humidityMissing,
            Optional<Quantity> time, Optional<String> standard) implements Part {

        /** Whether the object itself is aged, or that is not shown to be otherwise. */
        public boolean isOfTheObject() {
            return !List.of("test sheets", "sample").contains(of);
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.ageing(this);
        }
    }
}
