package org.benchleaf.compose.classes;

import java.util.ArrayList;
import java.util.List;
import org.benchleaf.compose.bench.BenchNotes;
import org.benchleaf.compose.bench.BenchViewMaker;
import org.benchleaf.compose.part.ClassPageName;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.derive.classes.BesideWork;
import org.benchleaf.model.ClassPapers;
import org.benchleaf.model.Part;
import org.benchleaf.model.Step;
import org.benchleaf.page.BenchDesk;
import org.benchleaf.page.BenchScreen;
import org.benchleaf.page.Page;
import org.benchleaf.page.Paths;
import org.benchleaf.page.RecordForm;
import org.benchleaf.words.Words;

/** The record of a class: a form for each station, filled in on paper or on the device, where it stays. */
public final class ClassRecordPage implements ClassPageMaker {

    private static final ClassPageName NAME = new ClassPageName("class-record", "-record.html");

    @Override
    public ClassPageName name() {
        return NAME;
    }

    @Override
    public Page make(ClassDesk desk) {
        Sheet sheet = desk.sheet(NAME).script("bench.js").script("record.js");
        Words words = sheet.words();
        sheet.add(desk.opening(sheet, NAME));
        sheet.add(new BenchDesk("benchleaf." + Paths.slug(desk.desk().library().studio().name()) + ".class."
                + desk.course().id() + ".1", words.group("record-desk")));
        sheet.add(AssessmentPage.levels(words));
        sheet.add(form(sheet, desk));
        sheet.add(desk.papers(sheet));
        return desk.finish(sheet, NAME);
    }

    private static RecordForm form(Sheet sheet, ClassDesk desk) {
        List<RecordForm.Task> tasks = desk.plan().steps().stream().map(step -> task(sheet, desk, step)).toList();
        List<RecordForm.Station> stations = new ArrayList<>();
        for (int station = 1; station <= desk.course().stations(); station++) {
            List<String> codes = desk.codes(station);
            stations.add(new RecordForm.Station(station, sheet.words().say("class.station-n", "n", station)
                    + (codes.isEmpty() ? "" : sheet.words().say("list.comma") + sheet.words().list(codes)), codes));
        }
        return new RecordForm(desk.desk().treatment().id(), BenchViewMaker.fingerprint(tasks), desk.course().id(),
                desk.course().papers().issue().map(issue -> String.valueOf(issue.number())).orElse(""), stations, tasks,
                List.copyOf(sheet.words().group("class-level").values()), sheet.words().group("record-form"));
    }

    private static RecordForm.Task task(Sheet sheet, ClassDesk desk, Step step) {
        return new RecordForm.Task(step.id(), sheet.words().say("record-form-task", "step",
                desk.step(sheet, step.id()), "who", sheet.words().term("role", desk.course().doer(step).word())),
                step.hold().map(hold -> new RecordForm.Hold(
                hold.before(), sheet.words().term("role", hold.releasedBy()), desk.course().look(step))), notes(sheet, desk, step),
                outcomes(sheet, desk, step));
    }

    /** Bath by bath and change by change, and at the end what is weighed and used. */
    private static List<RecordForm.NoteGroup> notes(Sheet sheet, ClassDesk desk, Step step) {
        BenchNotes notes = new BenchNotes(sheet);
        List<RecordForm.NoteGroup> groups = new ArrayList<>();
        int baths = step.part(Part.Bath.class).map(bath -> bath.atMost().orElse(bath.baths())).orElse(0);
        for (int bath = 1; bath <= baths; bath++) {
            List<BenchScreen.Note> read = new ArrayList<>(notes.of(step, bath, false, false));
            read.addAll(notes.ofClassBath(bath));
            groups.add(new RecordForm.NoteGroup(sheet.words().say("bench.timer-bath", "n", bath), read));
        }
        int changes = step.part(Part.Blotters.class).map(blotters -> blotters.changes().size()).orElse(0);
        for (int change = 1; change <= changes; change++) {
            groups.add(new RecordForm.NoteGroup(sheet.words().say("class.blotter-change-n", "n", change), notes.ofChange(change)));
        }
        List<BenchScreen.Note> last = new ArrayList<>(notes.of(step, 0, true, true));
        if (desk.reading().turns().stream().anyMatch(turn -> turn.step().equals(step.id()) && turn.work().equals(BesideWork.WEIGH_WEB))) {
            last.addAll(notes.ofWetWeb());
        }
        if (desk.reading().turns().stream().anyMatch(turn -> turn.step().equals(step.id()) && turn.isWeighedDried())) {
            last.addAll(notes.ofClassDrying());
        }
        if (!last.isEmpty()) {
            groups.add(new RecordForm.NoteGroup(sheet.words().say("record-form.amounts"), last));
        }
        return groups;
    }

    private static List<RecordForm.Looked> outcomes(Sheet sheet, ClassDesk desk, Step step) {
        List<ClassPapers.Outcome> all = desk.course().papers().outcomes();
        List<RecordForm.Looked> looked = new ArrayList<>();
        for (int number = 1; number <= all.size(); number++) {
            ClassPapers.Outcome one = all.get(number - 1);
            for (int place = 1; one.at().equals(step.id()) && place <= desk.course().day().traineesEach(); place++) {
                looked.add(new RecordForm.Looked(number, place, one.will(), ClassPage.deed(sheet.words(), one),
                        one.metWhen().orElse(sheet.words().say("class.not-stated")), one.notYet()));
            }
        }
        return looked;
    }
}
