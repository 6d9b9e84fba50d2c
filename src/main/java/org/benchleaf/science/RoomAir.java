package org.benchleaf.science;

import java.util.List;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Vapour in a room into which several work at different times. */
public final class RoomAir {

    private RoomAir() {
    }

    /**
     * The strongest vapour when several let off the same, each from a time of its own.
     *
     * <p>Formula: at the end of each, the sum over all of c · exp(−n (t − b)) for those that are over and
     * c · (1 − exp(−n (t − a))) / (1 − exp(−n τ)) for those that go on; the largest of these sums.
     *
     * <p>Units: any measure of vapour, times and changes of air in time in; the measure of the first out.
     *
     * <p>Range: each 0 or more; at least one start, none below 0; τ and changes of air above 0. The air is taken to be mixed.
     *
     * <p>Source: mass balance of a mixed room; what several bring adds up, and what is over falls by exp(−n t).
     *
     * @param each what one alone would bring at its end
     * @param starts when each begins
     * @param over how long each goes on
     * @param airChanges changes of air
     * @throws OutsideRange if a value lies outside its range
     */
    public static Quantity peak(Quantity each, List<Quantity> starts, Quantity over, Quantity airChanges) {
        double one = Require.atLeastZero("each", each, each.unit());
        double rate = Require.aboveZero("air-changes", airChanges, Unit.PER_SECOND);
        double lasts = Require.aboveZero("over", over, Unit.SECOND);
        double[] begins = starts.stream().mapToDouble(start -> Require.atLeastZero("starts", start, Unit.SECOND)).toArray();
        double most = 0;
        for (double begin : begins) {
            double sum = 0;
            for (double other : begins) {
                sum += share(begin + lasts - other, lasts, rate);
            }
            most = Math.max(most, sum);
        }
        return Quantity.of(one * most, each.unit());
    }

    /**
     * What a gas adds to the air of a room when all of it is let in and none leaves.
     *
     * <p>Formula: c = V / room.
     *
     * <p>Units: volumes at the same temperature and pressure in; ppm by volume out.
     *
     * <p>Range: volume 0 or more and no more than the room; room above 0. The air is taken to be mixed.
     *
     * <p>Source: definition of parts per million by volume.
     *
     * @param volume of the gas, at the pressure of the room
     * @param room volume of the room
     * @throws OutsideRange if a value lies outside its range
     */
    public static Quantity rise(Quantity volume, Quantity room) {
        double space = Require.aboveZero("room", room, Unit.LITRE);
        double gas = Require.within("volume", volume, 0, space, Unit.LITRE, "a room holds no more gas than its own volume");
        return Quantity.of(1e6 * gas / space, Unit.PPM);
    }

    /** What one has brought so long after its begin, as a share of what it brings at its end. */
    private static double share(double since, double lasts, double rate) {
        if (since <= 0) {
            return 0;
        }
        return since < lasts ? StrictMath.expm1(-rate * since) / StrictMath.expm1(-rate * lasts)
                : StrictMath.exp(-rate * (since - lasts));
    }
}
