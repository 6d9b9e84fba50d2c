package org.benchleaf.model;

import java.util.Optional;
import org.benchleaf.message.Place;
import org.benchleaf.quantity.Quantity;

/**
 * One entry of the condition report.
 *
 * @param id how the file refers to it, if it does
 * @param what the term, such as {@code tideline}
 * @param of id of the item that it is on; the whole object if empty
 * @param where in words
 * @param side recto or verso
 * @param extent a length, an area, a count or a share
 * @param extentMissing why there is none, where the case says so
 * @param counted what a count is of, such as {@code strips}; empty where nobody said, and for everything but a count
 * @param degree slight, moderate, marked or severe
 * @param active yes, no or unknown
 * @param at distance from the left and from the top edge of the recto, for the condition map
 * @param note anything more
 */
public record Damage(Optional<String> id, String what, Optional<String> of, Optional<String> where, Optional<String> side,
        Optional<Quantity> extent, Optional<MissingValue> extentMissing, Optional<String> counted,
        Optional<String> degree, Optional<String> active, Optional<Spot> at, Optional<String> note, Place place) {

    /** A point on the sheet, measured from its upper left corner. */
    public record Spot(Quantity fromLeft, Quantity fromTop) {
    }
}
