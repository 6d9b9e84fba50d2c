package org.benchleaf.derive.classes;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.benchleaf.calculate.Figure;
import org.benchleaf.derive.figure.Preparation;
import org.benchleaf.model.ClassStores;
import org.benchleaf.model.Reference;
import org.benchleaf.model.RoomLoad;
import org.benchleaf.quantity.Quantity;

/**
 * What is bought, bottled, laid out and thrown away for a class.
 *
 * @param orders one line for each material that is used up
 * @param vessels in what each preparation is made, kept and handed out, in the order of beginning
 * @param layOut everything that the steps of the class use, in the order in which they name it
 * @param practice what making the practice sheets takes besides
 * @param beside what is bought though no recipe and no step takes it by an amount
 * @param waste what is collected, by its kind
 * @param furtherBaths what the fillings to spare serve, of each step that may go on beyond the baths that are planned
 * @param stock how much stock the baths take that stations make in their trays, where the case wrote it down
 * @param bench how many stations find room along the bench; empty if the class does not say how long it is
 * @param loads what is drawn from the room at once, of each that a thing states
 * @param air the vapour in the room at each step that sprays
 */
public record ClassSupplies(List<Order> orders, List<Filling> vessels, List<LaidOut> layOut, List<LaidOut> practice,
        List<Bought> beside, List<Waste> waste,
        List<FurtherBaths> furtherBaths, List<StockForTrays> stock, Optional<Figure> bench, List<Load> loads, List<Air> air) {


    public ClassSupplies {
        orders = List.copyOf(orders);
        vessels = List.copyOf(vessels);
        layOut = List.copyOf(layOut);
        practice = List.copyOf(practice);
        beside = List.copyOf(beside);
        waste = List.copyOf(waste);
        furtherBaths = List.copyOf(furtherBaths);
        loads = List.copyOf(loads);
        air = List.copyOf(air);
    }

    /** The buffers with which the meter is calibrated; empty where no bath is brought to its pH, or the case names none. */
    public Optional<LaidOut> buffers() {
        return layOut.stream().filter(item -> item.id().equals(ClassStores.BUFFERS)).findFirst();
    }

    /**
     * What is needed of a material, and what to buy.
     *
     * @param material id
     * @param needed how much, with the spare
     * @param stock what stands on the shelf; empty if the class does not say
     * @param missing what the shelf lacks; all of it where the shelf is not known
     * @param packs how many packs; empty if nothing is missing or no pack is known
     * @param pack what one holds
     * @param left what is over in the end; empty if no pack is known
     * @param orderBy the last day on which to order; empty where it is not known how long it takes to come
     * @param inHouse the working day on which it has to be there
     */
    public record Order(String material, Figure needed, Optional<Quantity> stock, Optional<Figure> missing,
            Optional<Figure> packs, Optional<Quantity> pack, Optional<Figure> left, Optional<LocalDate> orderBy,
            LocalDate inHouse) {

        /** Whether the shelf has all that is needed. */
        public boolean isThere() {
            return stock.isPresent() && missing.filter(one -> one.value().high() <= 0).isPresent();
        }
    }

    /**
     * Sheets to work on, buffers of the meter, what is worn and thrown away.
     *
     * @param item as it is laid out
     * @param toMake ids of the solutions for whose making it is worn
     * @param orderBy the last day on which to order; empty where it is not known how long it takes to come
     * @param inHouse the working day on which it has to be there
     * @param packs in which packs; empty where the class does not say
     */
    public record Bought(LaidOut item, List<String> toMake, Optional<LocalDate> orderBy, LocalDate inHouse, Optional<Packs> packs) {
        public Bought {
            toMake = List.copyOf(toMake);
        }
    }

    /**
     * How many packs are bought of something.
     *
     * @param each what one holds
     * @param left what is over
     */
    public record Packs(Figure count, Quantity each, Figure left) {
    }

    /**
     * In what a preparation is made and handed out.
     *
     * @param solution id
     * @param place where it is made
     * @param vessel the kind of vessel; empty if the class names none that could be compared
     * @param holds what one holds
     * @param count how many are filled, at one time
     * @param batches how often they are filled with a batch of its own; once where a tray is filled where it stands
     * @param each what goes into one
     * @param clear into what the clear part of a batch is drawn off; empty if it stays where it was made
     * @param stations how many bottles are handed out, one to each station from each batch of which it draws; 0 if it is not
     *     drawn at the stations
     * @param inStation what goes into each of those
     */
    public record Filling(String solution, MadeAt place, Optional<String> vessel, Optional<Quantity> holds, int count, int batches,
            Optional<Quantity> each, Optional<Clear> clear, int stations, Optional<Quantity> inStation) {

        /** How many labels it takes: as many as vessels, each batch with its own. */
        public int labels() {
            return (count + clear.map(Clear::count).orElse(0)) * batches + stations;
        }
    }

    /**
     * Bottles of the clear part of what was shaken with a solid.
     *
     * @param kind of bottle
     * @param holds what one holds
     * @param count how many, of one batch
     * @param all what is in them where each is filled to the top; empty where they are not, for want of smaller ones
     */
    public record Clear(String kind, Quantity holds, int count, Optional<Quantity> all) {
    }

    /** Where a preparation is made. */
    public enum MadeAt {
        /** By the technician, before the class. */
        BENCH,
        /** By each station, in its own tray. */
        TRAY
    }

    /**
     * Something to lay out.
     *
     * @param id of the material or solution, the mass of a weight, the code of equipment, or the name of a vessel or shared thing
     * @param kind what of these it is
     * @param station how many, or how much, at one station; empty if it stands in the room for all
     * @param all how many, or how much, in all
     * @param words how it is laid out; may be empty
     * @param mark of a tray, which it is and how far it is filled
     * @param size of each piece, or of the largest; empty where it is not told or does not matter
     * @param steps ids of the steps that use it
     */
    public record LaidOut(String id, Kind kind, Optional<Quantity> station, Optional<Quantity> all, String words,
            Optional<Preparation.Mark> mark, Optional<PieceSize> size, List<String> steps) {
        public LaidOut {
            steps = List.copyOf(steps);
        }

        /** Something without a mark and a size. */
        public LaidOut(String id, Kind kind, Optional<Quantity> station, Optional<Quantity> all, String words, List<String> steps) {
            this(id, kind, station, all, words, Optional.empty(), Optional.empty(), steps);
        }

        /** A tray that is filled to a mark. */
        public LaidOut marked(Optional<Preparation.Mark> filled) {
            return new LaidOut(id, kind, station, all, words, filled, size, steps);
        }

        /** The same in pieces of a size. */
        public LaidOut sized(Optional<PieceSize> cut) {
            return new LaidOut(id, kind, station, all, words, mark, cut, steps);
        }
    }

    /**
     * What can be laid out; a vessel, or with what something is made, goes by the studio's name of it, a thing of the bench by a word of
     * its own.
     */
    public enum Kind { MATERIAL, SOLUTION, WEIGHT, VESSEL, BENCH, MAKING, SHARED, WORN, SHEET }

    /**
     * The most that is drawn from the room at once.
     *
     * @param most of it
     * @param minute of the plan at which that is first so
     * @param gives the most that the room gives; empty if the class does not say
     */
    public record Load(RoomLoad kind, Figure most, int minute, Optional<Quantity> gives) {
    }

    /**
     * The vapour in the room when all stations work in the order of the plan; all empty where it is not known.
     *
     * @param step id
     * @param one what one sheet alone would bring
     * @param peak the strongest in the class
     * @param share the same as a share of the limit for a working day
     * @param atOnce what it would be if all stations did it at the same time
     */
    public record Air(String step, Optional<Figure> one, Optional<Figure> peak, Optional<Figure> share, Optional<Figure> atOnce) {
    }

    /**
     * What the fillings to spare serve, where the case lets a step go on beyond the baths that are planned.
     *
     * @param step id
     * @param most how many baths a sheet has at most
     * @param fillings of a tray over and above those that are planned
     * @param stations at how many stations every further bath can be filled from them
     * @param besideSpareSheets the same where the spare sheets have their planned baths from them too
     */
    public record FurtherBaths(String step, int most, int fillings, int stations, int besideSpareSheets) {
    }

    /**
     * What is collected of one kind of waste, at most.
     *
     * @param kind key of the table of waste; empty if it is not known
     * @param solutions what it comes from
     * @param volume in all, or the mass where all of it is weighed and no can is named, counted as if nothing were left in the sheets
     * @param cans how many cans; empty if the class names none of that kind
     * @param can what one holds when full, and where they stand
     */
    public record Waste(Optional<String> kind, List<String> solutions, Figure volume, Optional<Figure> cans,
            Optional<ClassStores.Can> can) {
        public Waste {
            solutions = List.copyOf(solutions);
        }

        /** The word of its kind; empty if it is not known. */
        String name(Reference reference) {
            return kind.map(reference.waste()::get).map(Reference.WasteKind::name).orElse("");
        }
    }
}
