package org.benchleaf.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.benchleaf.message.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A message about something of a wrong shape shows one of the right shape. */
class ShapeExampleTest {

    @Test
    void an_item_of_a_list_is_shown_as_the_example_of_the_list_has_it(@TempDir Path folder) {
        assertThat(new Bench(folder).check(Variation.of(List.of(), "steps:\n  - {id: wash, uses: [[film]]}\n")).messages().all())
                .filteredOn(one -> one.code().equals("FORM-003")).extracting(Message::fix)
                .singleElement().asString().matches("Write it like this: [a-z-]+");
    }
}
