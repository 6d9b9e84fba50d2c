package org.benchleaf.derive.classes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.benchleaf.derive.CaseLayOut;
import org.benchleaf.derive.Invented;
import org.benchleaf.model.Part;
import org.junit.jupiter.api.Test;

/** What tape is taken off with lies ready too, whether it is a material of the studio or told in words. */
class TapeLayOutTest {

    @Test
    void the_means_of_taking_tape_off_are_laid_out() {
        Invented invented = new Invented().dry("crepe-eraser").step("untape", new Part.Tape(List.of(), Optional.of("plastic film"),
                Optional.of("rubber"), List.of("warm spatula", "crepe-eraser")));
        assertThat(CaseLayOut.of(invented.derived().worked(), invented.library())).allSatisfy(item -> {
            assertThat(item.steps()).containsExactly("untape");
            assertThat(item.all().orElseThrow().value()).isEqualTo(1);
        }).extracting(ClassSupplies.LaidOut::id).containsExactly("crepe-eraser", "warm spatula");
    }
}
