package org.benchleaf.compose.classes;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.derive.classes.ClassSupplies;
import org.benchleaf.derive.classes.Duty;
import org.benchleaf.model.BenchNeed;
import org.benchleaf.model.BenchNote;
import org.benchleaf.model.Step;
import org.benchleaf.model.StepKind;
import org.benchleaf.page.Table;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** How the work around a class is done, for whoever prepares it. */
record ClassNotes(Sheet sheet, ClassDesk desk) {

    /** A row for each note that concerns the class; empty where none does. */
    Optional<Table> table() {
        Words words = sheet.words();
        List<List<RichText>> rows = ofClass().stream().map(note -> List.of(RichText.of(Words.capital(note.about())),
                RichText.of(note.words()))).toList();
        return rows.isEmpty() ? Optional.empty() : Optional.of(new Table("class-notes", words.say("class.notes-caption"),
                words.columns("class.note-about", "class.do"), rows, Optional.empty()));
    }

    /** Those that concern the class. */
    private List<BenchNote> ofClass() {
        Set<String> work = work();
        return desk.desk().library().reference().notes().stream().filter(note -> note.concerns(work)).toList();
    }

    /** What is done at a piece of a station's work, in full. */
    List<String> at(String work) {
        return ofClass().stream().filter(note -> note.at().contains(work)).map(BenchNote::words).toList();
    }

    /** Which notes tell how work of that word is done; empty where none does. */
    String pointer(String work) {
        List<String> about = ofClass().stream().filter(note -> note.at().contains(work)).map(BenchNote::about).toList();
        return about.isEmpty() ? "" : sheet.words().say("class.see-notes", "notes", sheet.words().list(about));
    }

    private Set<String> work() {
        Set<String> work = new LinkedHashSet<>();
        desk.plan().steps().forEach(step -> work.addAll(BenchNeed.work(step)));
        desk.plan().preparations().forEach(made -> desk.desk().treatment().solution(made.solution()).ifPresent(solution ->
                work.addAll(BenchNeed.work(solution.recipe()))));
        if (desk.plan().supplies().layOut().stream().anyMatch(item -> item.kind() == ClassSupplies.Kind.SHEET)
                && desk.course().papers().like().isPresent()) {
            work.add(BenchNote.PRACTICE_SHEETS);
        }
        desk.plan().duties().stream().filter(duty -> duty.kind() == Duty.Kind.SHEETS_GO_THROUGH).flatMap(duty ->
                duty.step().flatMap(desk.desk().treatment()::step).stream()).forEach(step -> work.addAll(BenchNeed.work(step)));
        if (desk.plan().duties().stream().filter(duty -> duty.kind() == Duty.Kind.SHEETS_GO_THROUGH).flatMap(duty ->
                duty.step().flatMap(desk.desk().treatment()::step).stream()).map(Step::kind).anyMatch(StepKind.TESTING::equals)) {
            work.add(BenchNote.TRIAL);
        }
        if (desk.plan().supplies().waste().stream().anyMatch(one -> one.cans().isPresent())) {
            work.add(BenchNote.WASTE_IN_CANS);
        }
        return work;
    }
}
