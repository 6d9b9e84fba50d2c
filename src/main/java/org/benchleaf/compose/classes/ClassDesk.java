package org.benchleaf.compose.classes;

import java.time.LocalDateTime;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.ClassPageName;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.compose.part.Frames;
import org.benchleaf.compose.part.HazardMaker;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.derive.classes.ClassPlan;
import org.benchleaf.derive.classes.ClassSupplies;
import org.benchleaf.derive.classes.PlanWords;
import org.benchleaf.derive.classes.ScheduleReading;
import org.benchleaf.derive.classes.SharedUnits;
import org.benchleaf.derive.figure.Preparation;
import org.benchleaf.model.ClassPapers;
import org.benchleaf.model.CourseClass;
import org.benchleaf.model.Material;
import org.benchleaf.model.Solution;
import org.benchleaf.model.Step;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.page.Fact;
import org.benchleaf.page.LinkList;
import org.benchleaf.page.Opening;
import org.benchleaf.page.Page;
import org.benchleaf.page.Paths;
import org.benchleaf.page.Section;
import org.benchleaf.words.StepTitle;
import org.benchleaf.words.Words;

/**
 * What the makers of the pages of one class work from.
 *
 * @param desk of the case that the class works through
 * @param plan of the class
 * @param reading its schedule
 * @param units which one of a shared thing each station has
 */
public record ClassDesk(CaseDesk desk, ClassPlan plan, ScheduleReading reading, SharedUnits units) {

    private ClassDesk(CaseDesk desk, ClassPlan plan, ScheduleReading reading) {
        this(desk, plan, reading, new SharedUnits(reading));
    }

    /**
     * The desks of the classes of a case that have pages: of those that say so themselves, and where both sheets of the case
     * may be produced.
     */
    public static List<ClassDesk> of(CaseDesk desk) {
        if (!desk.clearance().allows(Clearance.Output.STEP_SHEET)
                || !desk.clearance().allows(Clearance.Output.PREPARATION_SHEET)) {
            return List.of();
        }
        return desk.worked().classes().stream().filter(plan -> plan.source().papers().published())
                .flatMap(plan -> plan.schedule().stream().map(schedule ->
                        new ClassDesk(desk, plan, new ScheduleReading(schedule, words(desk))))).toList();
    }

    /** The plan in the words of the pages. */
    private static PlanWords words(CaseDesk desk) {
        TreatmentCase treatment = desk.treatment();
        Words words = Words.in(treatment.language());
        return new PlanWords(desk.library().phrases(), id -> step(words, treatment, id), kind -> words.term("step-kind", kind),
                id -> treatment.step(id).flatMap(Step::hold).map(Step.Hold::before).orElse(""));
    }

    private static String step(Words words, TreatmentCase treatment, String id) {
        return treatment.step(id).map(new StepTitle(words, treatment)::of).orElse(id);
    }

    /** The ways from a page of the case to its classes. */
    private static List<LinkList.Entry> ways(Sheet sheet, CaseDesk desk) {
        return of(desk).stream().map(one -> new LinkList.Entry(sheet.link(one.course().title(), one.path(".html")),
                sheet.words().say("class.way", "begins", one.moment(sheet, one.course().starts()),
                        "stations", one.course().stations()))).toList();
    }

    /** The ways from a page of the case to its classes, as a section; empty where no class has pages. */
    public static Optional<Section> section(Sheet sheet, CaseDesk desk) {
        return Optional.of(ways(sheet, desk)).filter(classes -> !classes.isEmpty()).map(classes ->
                new Section("classes", sheet.words().say("class.ways"), Optional.empty(), List.of(new LinkList(classes))));
    }

    /** That what is left is collected in a class as its preparation sheet tells; none where no class has pages. */
    public static List<Fact> waste(Sheet sheet, CaseDesk desk) {
        return of(desk).isEmpty() ? List.of() : List.of(Fact.of(sheet.words().say("class.waste-in-class"),
                sheet.words().say("class.waste-by-class")));
    }

    /** The ways from one paper of a class to the others. */
    Section papers(Sheet sheet) {
        Words words = sheet.words();
        List<LinkList.Entry> entries = new ArrayList<>();
        desk.names().ofClass().stream().filter(page -> !desk.folder().of(path(page.ending())).equals(sheet.path())).forEach(page ->
                entries.add(new LinkList.Entry(sheet.link(words.say("class-page." + page.kind()), path(page.ending())),
                        words.say("class-page." + page.kind() + "-about"))));
        entries.add(new LinkList.Entry(sheet.link(words.say("case-page.step-sheet"),
                Paths.stepSheet(desk.treatment().id())), words.say("class.step-sheet-about")));
        return new Section("papers", words.say("class.papers"), Optional.empty(), List.of(new LinkList(entries)));
    }

    CourseClass course() {
        return plan.source();
    }

    /** The codes of those who work at a station, from 1; none if the class names none. */
    List<String> codes(int station) {
        List<String> codes = course().papers().trainees();
        int each = course().day().traineesEach();
        return codes.isEmpty() ? List.of() : codes.subList((station - 1) * each, station * each);
    }

    /** The path of one of the class's files, which lie beside the pages of its case. */
    public String path(String ending) {
        return desk.path(Paths.OF_CLASS + Paths.fileName(course().id()) + ending);
    }

    /** An empty page of the class. */
    Sheet sheet(ClassPageName page) {
        Sheet sheet = new Sheet(desk.folder().of(path(page.ending())), page.kind(), desk.treatment().language(), desk.library(),
                plan.figures(), desk.names());
        return sheet.madeFor(desk.clearance().audience()).toldFrom(desk.treatment().sources()).lyingIn(desk.folder())
                .naming(this::owner);
    }

    /** What a figure of the class, or of its case, is of. */
    private Optional<String> owner(FigureKey key) {
        return desk.treatment().solutions().stream().filter(solution -> isOf(key, solution.id())).map(Solution::name).findFirst()
                .or(() -> desk.library().materials().entrySet().stream().filter(material -> isOf(key, material.getKey())).findFirst()
                        .map(material -> desk.library().phrases().of(material.getValue().name())))
                .or(() -> desk.owner(key));
    }

    private boolean isOf(FigureKey key, String thing) {
        return FigureKey.ofClass(course().id(), thing, key.name()).equals(key);
    }

    /** The head of a page: which class, which issue, and that nothing here is the whole of what must be known. */
    Opening opening(Sheet sheet, ClassPageName page) {
        Words words = sheet.words();
        return new Opening(Optional.of(words.say("class-page." + page.kind())), course().title(),
                Optional.of(issue(sheet)), List.of(),
                Optional.of(new Opening.Notice(words.say("notice.word"), words.say("bench.notice"))));
    }

    /** Under which number the page is handed out. */
    String issue(Sheet sheet) {
        Words words = sheet.words();
        return course().papers().issue().map(issue -> words.say(issue.isDraft() ? "class.issue-draft" : "class.issue-of",
                "number", issue.number(), "on", sheet.numbers().weekday(issue.on()))
                + issue.replaces().map(before -> " " + words.say("class.issue-replaces", "number", before)).orElse("")
                + issue.validUntil().map(until -> " " + words.say("class.issue-until", "until",
                        sheet.numbers().weekday(until))).orElse("") + " " + words.say(issued(issue.number())
                                .filter(then -> !then.mark().equals(plan.papers().mark())).isPresent() ? "class.issue-changed"
                                : "class.issue-mark", "mark", plan.papers().mark())).orElseGet(() -> words.say("class.issue-none"));
    }

    /** What an issue stated when it was handed out; empty if that is not on record. */
    Optional<ClassPapers.Issued> issued(int number) {
        return course().papers().issued().stream().filter(one -> one.number() == number).findFirst();
    }

    /** The filled page. */
    Page finish(Sheet sheet, ClassPageName page) {
        Words words = sheet.words();
        String what = words.say("class-page." + page.kind());
        String title = words.more(what, course().title());
        return sheet.page(title, words.say("class.description", "what", what, "class", course().title()),
                Optional.of(desk.treatment().id()),
                new Frames(desk.library(), words, desk.clearance().audience(), desk.names().ofSite()).lyingIn(desk.folder())
                        .ofCase(sheet.path(), title, desk.treatment(), desk.pages(),
                                desk.onScreenOnly(Clearance.Output.PREPARATION_SHEET, page.workings()), Optional.empty()));
    }

    /** The time of day, with a short weekday where it is not the day on which the class begins. */
    String clock(Sheet sheet, LocalDateTime time) {
        String clock = sheet.numbers().clock(time.toLocalTime());
        return time.toLocalDate().equals(course().starts().toLocalDate()) ? clock
                : time.getDayOfWeek().getDisplayName(TextStyle.SHORT, Locale.forLanguageTag(sheet.words().language()))
                        + " " + clock;
    }

    /** Baths that each station makes in its own tray. */
    List<Preparation> bathsMadeInTrays() {
        return plan.preparations().stream().filter(one -> plan.supplies().vessels().stream().anyMatch(vessel ->
                vessel.solution().equals(one.solution()) && vessel.place() == ClassSupplies.MadeAt.TRAY)).toList();
    }

    /** Day and time in full. */
    String moment(Sheet sheet, LocalDateTime time) {
        return sheet.words().say("class.moment", "day", sheet.numbers().weekday(time.toLocalDate()),
                "time", sheet.numbers().clock(time.toLocalTime()));
    }

    /** What a step is called. */
    String step(Sheet sheet, String id) {
        return step(sheet.words(), desk.treatment(), id);
    }

    /** A piece of work, with the step to which it belongs. */
    String work(Sheet sheet, ScheduleReading.Turn turn) {
        String step = step(sheet, turn.step());
        String work = reading.work(turn);
        return step.equalsIgnoreCase(work) ? step : sheet.words().more(step, work);
    }

    /** One of several things that are shared. */
    String unit(Sheet sheet, String thing, int number) {
        return sheet.words().say("class.unit", "thing", reading.thing(thing), "n", number);
    }

    /** What a material, solution, piece of equipment or thing that is shared is called. */
    String thing(Sheet sheet, String id) {
        return Optional.ofNullable(desk.library().materials().get(id)).map(Material::name).map(desk.library().phrases()::of)
                .or(() -> Optional.ofNullable(desk.library().reference().equipment().get(id)).map(one -> one.name()))
                .orElseGet(() -> desk.treatment().solution(id).isPresent() ? new HazardMaker(sheet, desk).name(id) : reading.thing(id));
    }
}
