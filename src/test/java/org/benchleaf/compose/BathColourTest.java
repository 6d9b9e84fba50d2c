package org.benchleaf.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.model.Library;
import org.benchleaf.page.BenchScreen;
import org.benchleaf.page.BenchView;
import org.junit.jupiter.api.Test;

/** The colour of a bath is written down beside what the case saw in the same bath and beside when the washing is enough. */
class BathColourTest {

    /** The readings and the end point of the tide table's case file. */
    @Test
    void the_colour_of_each_bath_knows_that_of_the_case_and_when_it_is_enough() {
        Library library = DemoSite.made().library();
        var worked = DemoSite.worked("tide-table", library);
        List<BenchScreen.Note> notes = PageComposer.compose(worked, library, Clearance.on(DemoSite.DAY,
                worked.source().publication(), Audience.EVERYBODY)).pages().stream().filter(page -> page.kind().equals("step-sheet"))
                .flatMap(AllBlocks::of).filter(BenchView.class::isInstance).map(BenchView.class::cast)
                .flatMap(view -> view.screens().stream()).flatMap(screen -> screen.notes().stream()).toList();

        assertThat(notes).filteredOn(note -> note.key().equals("colour")).extracting(note -> note.sight().orElseThrow().there())
                .containsExactly(Optional.of("straw yellow"), Optional.of("faintly yellow"), Optional.of("clear"), Optional.of("clear"));
        assertThat(notes).filteredOn(note -> note.key().equals("colour")).extracting(note -> note.sight().orElseThrow().until())
                .containsOnly("two baths in a row stay as clear as fresh water");
        assertThat(notes).filteredOn(note -> !note.key().equals("colour")).allMatch(note -> note.sight().isEmpty());
    }
}
