package org.benchleaf.compose;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.benchleaf.page.BenchScreen;
import org.benchleaf.page.Block;
import org.benchleaf.page.RecordForm;
import org.benchleaf.words.Words;

/** A RecordForm as it stands on a page. */
final class RecordFormExample implements Supplier<Block> {

    @Override
    public Block get() {
        RecordForm.NoteGroup bath = new RecordForm.NoteGroup("Bath 1", List.of(
                new BenchScreen.Note("readings", 1, "pH fresh", "pH, fresh", "pH", "", Optional.empty(), Optional.empty()),
                new BenchScreen.Note("readings", 1, "added", "Added", "", "mL", Optional.empty(), Optional.empty()),
                new BenchScreen.Note("readings", 1, "laid in", "Laid in", "", "", Optional.empty(), Optional.empty()),
                new BenchScreen.Note("readings", 1, "additions", "Additions: what, how much, when", "", "", Optional.empty(),
                        Optional.empty())));
        RecordForm.Looked lowers = new RecordForm.Looked(1, 1, "lowers the sheet", "lowers the sheet (must)", "no fold",
                Optional.of("lifted without its carrier"));
        RecordForm.Task wash = new RecordForm.Task("wash", "Washing", Optional.of(new RecordForm.Hold("lowering",
                "supervisor", Optional.of("the re-test of the stamp"))), List.of(bath), List.of(lowers));
        return new RecordForm("tide-table", "1a2b", "spring-course", "3",
                List.of(new RecordForm.Station(1, "Station 1, A", List.of("A"))), List.of(wash),
                List.copyOf(Words.in("en").group("class-level").values()), Words.in("en").group("record-form"));
    }
}
