package org.benchleaf.derive.figure;

import java.util.List;
import java.util.Optional;
import org.benchleaf.quantity.Quantity;

/**
 * One thing to prepare before the work begins.
 *
 * @param solution id
 * @param needed how much the steps use
 * @param batch how much to make at a time, rounded up to what can be measured and made well
 * @param batches how many times it is made; more than one where each bath is made fresh
 * @param measures what to measure out, in the order of making
 * @param beginBefore how long before its first use to begin
 * @param handsOn how much of that needs a person
 * @param keeps how long it keeps once made
 * @param usedIn ids of the steps that use it
 * @param figures ids of its figures
 * @param addsUp whether the volumes that are joined are shown to add up, since all of them are nearly water or a table is used
 * @param surplus why far more is made than the steps use ({@code far-more} times as much); empty where it is not
 */
public record Preparation(String solution, Quantity needed, Quantity batch, int batches, List<Measure> measures,
        Optional<Quantity> beginBefore, Optional<Quantity> handsOn, Optional<Quantity> keeps, List<String> usedIn,
        List<String> figures, boolean addsUp, Optional<Surplus> surplus) {

    public Preparation {
        measures = List.copyOf(measures);
        usedIn = List.copyOf(usedIn);
        figures = List.copyOf(figures);
    }

    /** Why far more is made than the steps use. */
    public enum Surplus {
        /** The author asks for that amount. */
        ASKED_FOR,
        /** No less can be made well, says the author. */
        LEAST_MADE_WELL,
        /** Less cannot be measured with what the studio has. */
        LEAST_MEASURED
    }

    /**
     * One thing to measure out.
     *
     * @param of material or solution id
     * @param exact the worked-out amount
     * @param measured the amount as the vessel or balance can show it
     * @param with the vessel or balance, in words; empty if the studio owns none that fits
     * @param vessel the same without how often it is filled
     * @param mark where a tray is filled with it instead, how far
     * @param within expanded uncertainty (k = 2) of the measured amount
     * @param from where it is added by a meter's reading, the least that it may take; the amount is then the most
     * @param dropper from what it is then added drop by drop; empty if the studio owns nothing for it
     * @param coarse how far the measured amount may lie off, in %, where that is more than {@code coarsest-measuring} allows
     * @param excess whether more of it is taken than dissolves, so that it is weighed roughly
     * @param figure id of the figure behind it
     */
    public record Measure(String of, Quantity exact, Quantity measured, Optional<String> with, Optional<String> vessel,
            Optional<Mark> mark, Optional<Quantity> within, Optional<Quantity> from, Optional<Dropper> dropper,
            Optional<Quantity> coarse, boolean excess, String figure) {
    }

    /**
     * From what a liquid is added drop by drop.
     *
     * @param vessel in words
     * @param fillings how often it is filled for the most that may be added
     */
    public record Dropper(String vessel, int fillings) {
    }

    /**
     * How far a tray is filled.
     *
     * @param tray the studio's name of it; empty if it has none for the sheet
     * @param depth of the liquid
     */
    public record Mark(Optional<String> tray, Quantity depth) {
    }
}
