package org.benchleaf.derive.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.benchleaf.model.Substance;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.read.ReferenceReader;
import org.junit.jupiter.api.Test;

/** A bare per cent counts as all that it can mean, so that no hazard is told smaller than it may be. */
class BarePerCentTest {

    /** By hand: 1 % by mass is 0.01; 10 g in a litre of a liquid as light as propan-2-ol (0.785 g/mL) are 10 / 785. */
    @Test
    void a_bare_per_cent_is_a_range_of_shares_by_mass() {
        Substance solid = ReferenceReader.shipped().substances().get("calcium hydroxide");
        MassShare share = BoughtMaterials.share(solid, Quantity.of(1, Unit.PERCENT));
        assertThat(share.least()).isCloseTo(0.01, within(1e-12));
        assertThat(share.most()).isCloseTo(10.0 / 785, within(1e-9));
    }
}
