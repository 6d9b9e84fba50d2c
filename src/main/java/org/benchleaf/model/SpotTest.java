package org.benchleaf.model;

import java.util.Optional;
import org.benchleaf.message.Place;
import org.benchleaf.quantity.Quantity;

/**
 * One spot test.
 *
 * @param medium the id of the medium, or {@code paper}
 * @param with the id of a solution or material, or an indicator such as {@code iron(II) strip}, {@code absorption drop};
 *        of a retold case also {@code not known}
 * @param after the step after which it was done, if not on the untouched sheet
 * @param dwell how long the liquid stayed
 * @param result a word of the closed list
 * @param note anything more
 */
public record SpotTest(String medium, String with, Optional<String> after, Optional<Quantity> dwell, TestResult result,
        Optional<String> note, Place place) {

    /** Whether it is on record what was tested with. */
    public boolean isLiquidNamed() {
        return MissingValue.read(with).isEmpty();
    }
}
