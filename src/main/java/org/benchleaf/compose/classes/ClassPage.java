package org.benchleaf.compose.classes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.benchleaf.calculate.Figure;
import org.benchleaf.compose.part.ClassPageName;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.part.SubstanceMaker;
import org.benchleaf.compose.part.WorkingMaker;
import org.benchleaf.derive.classes.ClassSupplies;
import org.benchleaf.derive.classes.ScheduleReading;
import org.benchleaf.model.ClassDay;
import org.benchleaf.model.ClassPapers;
import org.benchleaf.model.CourseClass;
import org.benchleaf.model.Part;
import org.benchleaf.model.Step;
import org.benchleaf.model.Studio;
import org.benchleaf.page.Block;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Facts;
import org.benchleaf.page.LinkList;
import org.benchleaf.page.Note;
import org.benchleaf.page.Page;
import org.benchleaf.page.Section;
import org.benchleaf.page.Table;
import org.benchleaf.quantity.Amount;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** The teacher's page: what the class is about, who does what when, who releases whom, and what to do when it goes otherwise. */
public final class ClassPage implements ClassPageMaker {

    private static final ClassPageName NAME = new ClassPageName("class", ".html", true);

    @Override
    public ClassPageName name() {
        return NAME;
    }

    @Override
    public Page make(ClassDesk desk) {
        Sheet sheet = desk.sheet(NAME);
        sheet.add(desk.opening(sheet, NAME));
        sheet.add(facts(sheet, desk));
        sheet.add(questions(sheet, desk));
        sheet.add(desk.papers(sheet));
        sheet.add(doers(sheet, desk));
        outcomes(sheet, desk).ifPresent(sheet::add);
        new ClassChanges(sheet, desk).section().ifPresent(sheet::add);
        sheet.add(new StationChart(sheet, desk).section());
        sheet.add(holds(sheet, desk));
        sheet.add(waits(sheet, desk));
        sheet.add(room(sheet, desk));
        goesWrong(sheet, desk).ifPresent(sheet::add);
        sheet.add(records(sheet, desk));
        sheet.add(ways(sheet, desk));
        return desk.finish(sheet, NAME);
    }

    @Override
    public List<DataFile> files(ClassDesk desk) {
        return ClassFiles.of(desk);
    }

    /** The form of each station, in which stands who did what and how well. */
    private static Section records(Sheet sheet, ClassDesk desk) {
        Words words = sheet.words();
        List<LinkList.Entry> entries = new ArrayList<>();
        for (int station = 1; station <= desk.course().stations(); station++) {
            entries.add(new LinkList.Entry(sheet.link(words.say("class.record-n", "n", station),
                    desk.path("-record.html") + "#station-" + station), String.join(", ", desk.codes(station))));
        }
        return new Section("records", words.say("class.records"), Optional.of(words.say("class.records-lead")),
                List.of(new LinkList(entries)));
    }

    /** The files for other programs. */
    private static Section ways(Sheet sheet, ClassDesk desk) {
        Words words = sheet.words();
        List<LinkList.Entry> entries = new ArrayList<>(List.of(
                new LinkList.Entry(sheet.link(words.say("class.file.csv"), desk.path("-plan.csv")), words.say("class.file.csv-about")),
                file(sheet, desk, "plan.json", words.say("class.file.json"))));
        new ClassCalendar(desk, sheet).all().keySet().forEach(name ->
                entries.add(file(sheet, desk, name + ".ics", ClassCalendar.words(words, name))));
        return new Section("class-files", words.say("class.files"), Optional.of(words.say("class.files-lead")),
                List.of(new LinkList(entries)));
    }

    private static LinkList.Entry file(Sheet sheet, ClassDesk desk, String name, String text) {
        return new LinkList.Entry(sheet.link(text, desk.path("-" + name)), "");
    }

    private static Facts facts(Sheet sheet, ClassDesk desk) {
        Words words = sheet.words();
        CourseClass course = desk.course();
        List<Fact> facts = new ArrayList<>(List.of(
                Fact.of(words.say("class.begins"), desk.moment(sheet, course.starts())),
                Fact.of(words.say("class.ends"), desk.moment(sheet, desk.reading().clock(desk.reading().minutes()))),
                Fact.of(words.say("class.stations"), String.valueOf(course.stations())),
                Fact.of(words.say("class.trainees-each"), String.valueOf(course.day().traineesEach())),
                Fact.of(words.say("class.supervisors"), course.day().supervisors().map(String::valueOf)
                        .orElse(words.say("class.not-stated"))),
                Fact.of(words.say("class.worked-on"), words.say(course.papers().sheets() == ClassPapers.Sheets.OBJECT
                        ? "class.object" : "class.practice")),
                Fact.of(words.say("class.steps-of"), desk.plan().steps().stream()
                        .map(step -> desk.step(sheet, step.id()))
                        .collect(Collectors.collectingAndThen(Collectors.toList(), words::list)))));
        course.papers().like().ifPresent(like -> facts.add(Fact.of(words.say("class.like"), like)));
        course.papers().issue().ifPresent(issue -> {
            issue.preparedBy().ifPresent(who -> facts.add(Fact.of(words.say("class.prepared-by"), who)));
            facts.add(Fact.of(words.say("class.approved-by"), issue.approvedBy().orElse(words.say("class.nobody-yet"))));
        });
        return new Facts(facts);
    }

    /** What a teacher, a technician or a trainee asks, and where it is answered. */
    private static Section questions(Sheet sheet, ClassDesk desk) {
        Words words = sheet.words();
        List<LinkList.Entry> entries = List.of(
                question(sheet, "amounts", desk.path("-preparation.html") + "#begin"),
                question(sheet, "lay-out", desk.path("-preparation.html") + "#lay-out"),
                question(sheet, "when", "#plan"),
                question(sheet, "station", desk.path("-stations.html")),
                question(sheet, "release", "#holds"),
                question(sheet, "air", "#room"),
                question(sheet, "order", desk.path("-orders.html") + "#orders"),
                question(sheet, "left", desk.path("-preparation.html") + "#waste"),
                question(sheet, "who", "#records"),
                question(sheet, "changed", desk.course().papers().issue().isEmpty() ? "#papers" : "#changes"));
        return new Section("questions", words.say("class.questions"), Optional.empty(), List.of(new LinkList(entries)));
    }

    private static LinkList.Entry question(Sheet sheet, String name, String to) {
        return new LinkList.Entry(sheet.link(sheet.words().say("class.question." + name), to), "");
    }

    private static Section doers(Sheet sheet, ClassDesk desk) {
        Words words = sheet.words();
        return new Section("doers", words.say("class.doers"), Optional.of(words.say(desk.course().papers().sheets()
                == ClassPapers.Sheets.OBJECT ? "class.doers-lead-object" : "class.doers-lead")), List.of(new Table("doers-table",
                words.say("class.doers-caption"), words.columns("class.step", "class.done-by", "class.released-by"),
                desk.plan().steps().stream().map(step -> List.of(RichText.of(desk.step(sheet, step.id())),
                        RichText.of(doer(words, desk, step)),
                        RichText.of(step.hold().map(hold -> words.term("role", hold.releasedBy()))
                                .orElse(words.say("class.no-release"))))).toList(), Optional.empty())));
    }

    /** Where a trainee works alone at a station, the second one comes from another. */
    private static String doer(Words words, ClassDesk desk, Step step) {
        ClassDay.Doer doer = desk.course().doer(step);
        return doer == ClassDay.Doer.PAIR && desk.course().day().traineesEach() == 1 ? words.say("class.pair-of-two")
                : words.term("role", doer.word());
    }

    private static Optional<Section> outcomes(Sheet sheet, ClassDesk desk) {
        Words words = sheet.words();
        ClassPapers papers = desk.course().papers();
        List<Block> blocks = new ArrayList<>();
        if (!papers.aims().isEmpty()) {
            blocks.add(new Facts(papers.aims().stream().map(aim -> Fact.of(words.say("class.aim"), aim)).toList()));
        }
        if (!papers.outcomes().isEmpty()) {
            blocks.add(new Table("outcomes-table", words.say("class.outcomes-caption"), words.columns("class.step",
                    "class.will", "class.met-when", "class.not-yet"), papers.outcomes().stream().map(one -> List.of(
                            RichText.of(desk.step(sheet, one.at())),
                            RichText.of(deed(words, one)),
                            RichText.of(one.metWhen().orElse(words.say("class.not-stated"))),
                            RichText.of(one.notYet().orElse(words.say("class.not-stated"))))).toList(), Optional.empty()));
            papers.outcomes().stream().map(ClassPapers.Outcome::at).distinct().flatMap(step -> unseen(sheet, desk, step).stream())
                    .forEach(blocks::add);
        }
        return blocks.isEmpty() ? Optional.empty()
                : Optional.of(new Section("outcomes", words.say("class.outcomes"), Optional.empty(), blocks));
    }

    /** At which stations every supervisor is with another one when the work of a step begins, so that somebody else has to mark it. */
    private static Optional<Note> unseen(Sheet sheet, ClassDesk desk, String step) {
        List<ScheduleReading.Turn> turns = desk.reading().turns();
        Map<Integer, ScheduleReading.Turn> begun = new TreeMap<>();
        turns.stream().filter(turn -> turn.step().equals(step) && turn.isMainWork()).forEach(turn ->
                begun.putIfAbsent(turn.station(), turn));
        List<String> unseen = begun.values().stream().filter(turn -> !turn.isSupervised() && turns.stream().filter(other ->
                        other.station() != turn.station() && other.isSupervised() && other.start() < turn.end()
                        && turn.start() < other.end())
                .count() >= desk.course().day().supervisors().orElse(1)).sorted(Comparator.comparing(ScheduleReading.Turn::from))
                .map(turn -> sheet.words().say("class.not-seen-at", "n", turn.station(), "from", desk.clock(sheet, turn.from()),
                        "until", desk.clock(sheet, turn.to()))).toList();
        return unseen.isEmpty() ? Optional.empty() : Optional.of(new Note("plain", sheet.words().say("notice.word"), RichText.of(
                desk.course().papers().assessor().map(who -> sheet.words().say("class.not-seen-by", "step", desk.step(sheet, step),
                        "stations", String.join("; ", unseen), "who", who)).orElseGet(() -> sheet.words().say("class.not-seen",
                                "step", desk.step(sheet, step), "stations", String.join("; ", unseen))))));
    }

    /** Who is released when and whom the supervisor stands beside, in the order of time, with room to sign. */
    private static Section holds(Sheet sheet, ClassDesk desk) {
        Words words = sheet.words();
        List<List<RichText>> rows = desk.reading().turns().stream().filter(ScheduleReading.Turn::isSupervised)
                .sorted(Comparator.comparing(ScheduleReading.Turn::from).thenComparing(ScheduleReading.Turn::station))
                .map(turn -> List.of(RichText.of(desk.clock(sheet, turn.from())), RichText.of(String.valueOf(turn.station())),
                        RichText.of(desk.work(sheet, turn)),
                        RichText.of(turn.isHold() ? desk.desk().treatment().step(turn.step()).flatMap(desk.course()::look)
                                .orElse(words.say("class.not-stated")) : words.say("class.stays-beside")),
                        RichText.of(words.say("class.line")))).toList();
        String last = desk.reading().turns().stream().filter(ScheduleReading.Turn::isHold).map(ScheduleReading.Turn::to)
                .max(Comparator.naturalOrder()).map(time -> " "
                        + words.say("class.last-release", "time", desk.clock(sheet, time))).orElse("");
        return new Section("holds", words.say("class.holds"), Optional.of(words.say(last.isEmpty() ? "class.no-holds"
                : "class.holds-lead") + last), rows.isEmpty() ? List.of() : List.of(new Table("holds-table",
                        words.say("class.holds-caption"), words.columns("class.time", "class.station", "class.released",
                                "class.look", "class.sign"), rows, Optional.empty())));
    }

    private static Section waits(Sheet sheet, ClassDesk desk) {
        Words words = sheet.words();
        ScheduleReading reading = desk.reading();
        List<Block> blocks = new ArrayList<>();
        List<ScheduleReading.Wait> waits = reading.waits(minute -> desk.clock(sheet, reading.clock(minute)));
        if (!waits.isEmpty()) {
            blocks.add(new Table("waits-table", words.say("class.waits-caption"), words.columns("class.station",
                    "class.waits-for", "class.before", "class.why"), waits.stream().map(wait -> List.of(
                            RichText.of(String.valueOf(wait.station())), RichText.of(StationChart.length(sheet, wait.minutes())),
                            RichText.of(wait.before()), RichText.of(wait.why()))).toList(), Optional.empty()));
        }
        List<ScheduleReading.Gain> gains = reading.gains();
        if (!gains.isEmpty()) {
            blocks.add(new Table("gains-table", words.say("class.gains-caption"), words.columns("class.thing", "class.gain"),
                    gains.stream().map(gain -> List.of(RichText.of(gain.thing()), RichText.of(gain.sooner()
                            ? desk.moment(sheet, gain.end()) : words.say("class.no-gain")))).toList(), Optional.empty()));
        }
        return new Section("waits", words.say("class.waits"), Optional.of(words.say(waits.isEmpty() ? "class.no-waits"
                : "class.waits-lead")), blocks);
    }

    /** The air of the room, and the things that all share. */
    private static Section room(Sheet sheet, ClassDesk desk) {
        Words words = sheet.words();
        List<Block> blocks = new ArrayList<>();
        List<ClassSupplies.Air> air = desk.plan().supplies().air();
        if (!air.isEmpty()) {
            blocks.add(new Table("air-table", words.say("class.air-caption"), words.columns("class.step", "class.air-one",
                    "class.air-all", "class.air-share", "class.air-at-once"), air.stream().map(one -> List.of(
                            RichText.of(desk.step(sheet, one.step())), figure(sheet, one.one()), figure(sheet, one.peak()),
                            figure(sheet, one.share()), figure(sheet, one.atOnce()))).toList(), Optional.empty()));
            airOfTheRoom(sheet, desk, air).ifPresent(blocks::add);
            air.stream().flatMap(one -> one.peak().stream()).map(figure -> new WorkingMaker(sheet).make(figure))
                    .forEach(blocks::add);
        }
        blocks.add(new Table("shared-table", words.say("class.shared-caption"), words.columns("class.thing",
                "class.there-are", "class.at-once"), desk.reading().shared().stream().map(one -> List.of(
                        RichText.of(desk.reading().thing(one.thing())), RichText.of(String.valueOf(one.count())),
                        RichText.of(one.most() == 0 && one.thing().equals("supervisor") ? words.say("class.at-hand")
                                : String.valueOf(one.most())))).toList(), Optional.empty()));
        new WhichServes(sheet, desk).table().ifPresent(blocks::add);
        new OneForAll(sheet, desk).readings().ifPresent(blocks::add);
        loads(sheet, desk, blocks);
        desk.plan().supplies().bench().map(new WorkingMaker(sheet)::make).ifPresent(blocks::add);
        return new Section("room", words.say("class.room"), Optional.of(words.say(air.isEmpty() ? "class.room-no-spray"
                : "class.room-lead")), blocks);
    }

    /** With what room the air was worked out, and the limits for the air of what is sprayed; empty where neither is known. */
    private static Optional<Facts> airOfTheRoom(Sheet sheet, ClassDesk desk, List<ClassSupplies.Air> air) {
        Words words = sheet.words();
        Studio studio = sheet.library().studio();
        List<Fact> facts = new ArrayList<>();
        studio.roomVolume().ifPresent(volume -> facts.add(Fact.of(words.say("class.air-volume"), sheet.numbers().written(volume).text())));
        studio.airChanges().ifPresent(changes -> facts.add(Fact.of(words.say("class.air-changes"),
                sheet.numbers().amount(Quantity.number(changes.in(Unit.PER_HOUR))).text())));
        SubstanceMaker substances = new SubstanceMaker(sheet);
        air.stream().flatMap(one -> desk.desk().treatment().step(one.step()).stream()).flatMap(step -> step.part(Part.Mist.class).stream())
                .flatMap(mist -> sheet.library().substances(desk.desk().treatment().matter(mist.of()))).distinct()
               .map(sheet.library().reference().substances()::get)
                .forEach(substance -> facts.addAll(substances.exposure(substance)));
        return facts.isEmpty() ? Optional.empty() : Optional.of(new Facts(facts));
    }

    /** What is drawn from the room at once, beside what it gives. */
    private static void loads(Sheet sheet, ClassDesk desk, List<Block> blocks) {
        Words words = sheet.words();
        List<ClassSupplies.Load> loads = desk.plan().supplies().loads();
        if (!loads.isEmpty()) {
            blocks.add(new Table("load-table", words.say("class.load-caption"), words.columns("class.load", "class.load-most",
                    "class.load-when", "class.load-gives"), loads.stream().map(one -> List.of(
                            RichText.of(words.term("room-load", one.kind().word())), figure(sheet, Optional.of(one.most())),
                            RichText.of(desk.clock(sheet, desk.reading().clock(one.minute()))),
                            RichText.of(one.gives().map(gives -> sheet.numbers().written(gives).text())
                                    .orElseGet(() -> words.say("class.not-stated"))))).toList(), Optional.empty()));
            blocks.add(new Note("plain", words.say("notice.word"), RichText.of(words.say("class.load-note"))));
            loads.forEach(one -> blocks.add(new WorkingMaker(sheet).make(one.most())));
        }
    }

    private static RichText figure(Sheet sheet, Optional<Figure> figure) {
        return RichText.of(figure.map(sheet::amount).map(Amount::text).orElse(sheet.words().say("class.air-unknown")));
    }

    private static Optional<Section> goesWrong(Sheet sheet, ClassDesk desk) {
        Words words = sheet.words();
        List<List<RichText>> rows = desk.plan().steps().stream().filter(step -> step.ifNot().isPresent())
                .map(step -> List.of(RichText.of(desk.step(sheet, step.id())),
                        RichText.of(step.see().orElse(words.say("class.not-stated"))), RichText.of(step.ifNot().get()))).toList();
        return rows.isEmpty() ? Optional.empty() : Optional.of(new Section("goes-wrong", words.say("class.goes-wrong"),
                Optional.empty(), List.of(new Table("goes-wrong-table", words.say("class.goes-wrong-caption"),
                        words.columns("class.step", "class.see", "class.if-not"), rows, Optional.empty()))));
    }

    /** What the trainee does, and whether nothing makes up for it. */
    static String deed(Words words, ClassPapers.Outcome one) {
        return one.must() ? words.say("class.must", "will", one.will()) : one.will();
    }
}
