package org.benchleaf.compose.classes;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.benchleaf.compose.chart.StationDrawing;
import org.benchleaf.compose.part.ClassPageName;
import org.benchleaf.compose.part.RecipeMaker;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.derive.classes.ClassSupplies;
import org.benchleaf.derive.classes.ScheduleReading;
import org.benchleaf.derive.figure.Preparation;
import org.benchleaf.model.Part;
import org.benchleaf.model.Recipe;
import org.benchleaf.page.Block;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Facts;
import org.benchleaf.page.Link;
import org.benchleaf.page.LinkList;
import org.benchleaf.page.Note;
import org.benchleaf.page.Page;
import org.benchleaf.page.Section;
import org.benchleaf.page.Table;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** One sheet for each station: its own times, what it has, who helps, and room for names and initials. */
public final class StationSheetsPage implements ClassPageMaker {

    private static final ClassPageName NAME = new ClassPageName("class-stations", "-stations.html");

    @Override
    public ClassPageName name() {
        return NAME;
    }

    @Override
    public Page make(ClassDesk desk) {
        Sheet sheet = desk.sheet(NAME);
        sheet.add(desk.opening(sheet, NAME));
        sheet.add(ways(sheet, desk));
        sheet.add(desk.papers(sheet));
        for (int station = 1; station <= desk.course().stations(); station++) {
            sheet.add(section(sheet, desk, station));
        }
        return desk.finish(sheet, NAME);
    }

    private static Section ways(Sheet sheet, ClassDesk desk) {
        List<LinkList.Entry> entries = new ArrayList<>();
        for (int station = 1; station <= desk.course().stations(); station++) {
            entries.add(new LinkList.Entry(Link.to(sheet.words().say("class.station-n", "n", station), "#station-" + station),
                    String.join(", ", desk.codes(station))));
        }
        return new Section("stations", sheet.words().say("class.stations"), Optional.empty(), List.of(new LinkList(entries)));
    }

    private static Section section(Sheet sheet, ClassDesk desk, int station) {
        Words words = sheet.words();
        String name = words.say("class.station-n", "n", station);
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Facts(List.of(Fact.of(words.say("class.name"), words.say("class.line")),
                Fact.of(words.say("class.date"), words.say("class.line")))));
        blocks.add(times(sheet, desk, station));
        desk.bathsMadeInTrays().forEach(made -> blocks.add(bath(sheet, desk, station, made)));
        blocks.addAll(new Untested(sheet, desk).ofStation(station));
        blocks.addAll(furtherBaths(sheet, desk));
        blocks.addAll(kit(sheet, desk, station));
        ClassPreparationPage.wasteOfStation(sheet, desk, station).ifPresent(blocks::add);
        return new Section("station-" + station, desk.codes(station).isEmpty() ? name
                : words.list(List.of(name, words.list(desk.codes(station)))),
                Optional.of(desk.course().title() + ". " + desk.issue(sheet)), blocks);
    }

    private static Table times(Sheet sheet, ClassDesk desk, int station) {
        Words words = sheet.words();
        StationWords work = new StationWords(sheet, desk, station);
        List<List<RichText>> rows = new ArrayList<>(List.of(briefing(sheet, desk, station)));
        rows.addAll(desk.reading().whole().stream().filter(turn -> turn.station() == station || turn.isHelpedBy(station))
                .sorted(Comparator.comparing(ScheduleReading.Turn::from)).map(turn -> turn.station() == station
                        ? row(sheet, desk, turn, work) : help(sheet, desk, turn)).toList());
        return new Table("station-" + station + "-times", words.say("class.times-caption", "n", station),
                words.columns("class.from", "class.until", "class.do", "class.with", "class.sign"), rows, Optional.empty());
    }

    /** What comes before all work. */
    private static List<RichText> briefing(Sheet sheet, ClassDesk desk, int station) {
        Words words = sheet.words();
        ScheduleReading.Briefing briefing = desk.reading().briefing(station);
        return List.of(RichText.of(desk.clock(sheet, briefing.from())), RichText.of(desk.clock(sheet, briefing.to())),
                RichText.of(words.say("class.briefing-do", "sheet", desk.desk().treatment().title())),
                RichText.of(desk.reading().thing("supervisor")),
                RichText.of(words.say("class.line")));
    }

    /** Another station's work at which somebody of this one lends a hand. */
    private static List<RichText> help(Sheet sheet, ClassDesk desk, ScheduleReading.Turn turn) {
        Words words = sheet.words();
        return List.of(RichText.of(desk.clock(sheet, turn.from())), RichText.of(desk.clock(sheet, turn.to())),
                RichText.of(words.say("class.help", "n", turn.station(), "work", desk.work(sheet, turn))),
                RichText.of(words.say("class.station-n", "n", turn.station())), RichText.of(words.say("class.line")));
    }

    /** Of what each bath of the station is made, and to which pH. */
    private static Table bath(Sheet sheet, ClassDesk desk, int station, Preparation made) {
        Words words = sheet.words();
        RecipeMaker recipes = new RecipeMaker(sheet, desk.desk());
        Recipe.Adjust adjust = (Recipe.Adjust) desk.desk().treatment().solution(made.solution()).orElseThrow().recipe();
        String each = recipes.byTheMeter("class.each-bath", adjust);
        return new Table("station-" + station + "-" + made.solution(), words.say("class.station-n", "n", station) + ". "
                + temperature(sheet, desk, made).map(warm -> words.say("class.bath-temperature", "bath", each, "temperature", warm))
                        .orElse(each),
                words.columns("class.thing", "class.amount", "class.with"), made.measures().stream().map(measure -> List.of(
                        RichText.of(desk.thing(sheet, measure.of())), RichText.of(recipes.amount(made, measure)),
                        RichText.of(recipes.with(made, measure)))).toList(), Optional.empty());
    }

    private static Optional<String> temperature(Sheet sheet, ClassDesk desk, Preparation made) {
        return desk.plan().steps().stream().flatMap(step -> step.part(Part.Bath.class).stream())
                .filter(bath -> bath.of().equals(made.solution())).flatMap(bath -> bath.temperature().stream())
                .map(warm -> sheet.numbers().written(warm).text()).findFirst();
    }

    /** A bath beyond those that are planned has no time, and only what is to spare to be filled with. */
    private static List<Note> furtherBaths(Sheet sheet, ClassDesk desk) {
        Words words = sheet.words();
        return desk.plan().steps().stream().flatMap(step -> step.part(Part.Bath.class).stream())
                .filter(bath -> bath.atMost().filter(most -> most > bath.baths()).isPresent())
                .flatMap(bath -> desk.bathsMadeInTrays().stream().filter(made -> made.solution().equals(bath.of()))
                        .map(made -> new Note("plain", words.say("notice.word"), RichText.of(words.say("class.further-bath", "most",
                                bath.atMost().orElseThrow(), "planned", bath.baths(), "spare",
                                made.batches() - bath.baths() * desk.course().stations())))))
                .toList();
    }

    private static List<RichText> row(Sheet sheet, ClassDesk desk, ScheduleReading.Turn turn, StationWords work) {
        Words words = sheet.words();
        String with = turn.takes().stream().filter(one -> !one.endsWith("station " + turn.station()))
                .map(one -> thing(sheet, desk, turn, one)).collect(Collectors.collectingAndThen(Collectors.toList(), words::list));
        return List.of(RichText.of(desk.clock(sheet, turn.from())), RichText.of(desk.clock(sheet, until(desk, turn))),
                RichText.of(work.told(turn)), RichText.of(with.isEmpty() ? words.say("class.alone") : with),
                RichText.of(turn.isHandsOn() ? words.say("class.line") : words.say("class.waiting")));
    }

    /** A thing or person that a piece of work takes; of several things, which one. */
    private static String thing(Sheet sheet, ClassDesk desk, ScheduleReading.Turn turn, String thing) {
        OptionalInt number = desk.units().number(turn, thing);
        return number.isPresent() ? desk.unit(sheet, thing, number.getAsInt()) : desk.reading().thing(thing);
    }

    /** When a piece is over; a wait goes on until somebody works at the station again. */
    private static LocalDateTime until(ClassDesk desk, ScheduleReading.Turn turn) {
        return desk.reading().whole().stream().filter(next -> !turn.isHandsOn() && next.station() == turn.station()
                && !next.from().isBefore(turn.to())).map(ScheduleReading.Turn::from).min(Comparator.naturalOrder()).orElse(turn.to());
    }

    /** What lies at the station, as a list and as it is laid out. */
    private static List<Block> kit(Sheet sheet, ClassDesk desk, int station) {
        Words words = sheet.words();
        List<StationDrawing.Placed> placed = new ArrayList<>();
        List<List<RichText>> rows = new ArrayList<>();
        for (ClassSupplies.LaidOut item : desk.plan().supplies().layOut()) {
            if (item.station().isPresent() && item.kind() != ClassSupplies.Kind.SHARED) {
                Optional<String> tool = ClassPreparationPage.tool(desk, item.id());
                String name = ClassPreparationPage.name(sheet, desk, item) + tool.map(id -> words.say("class.in-the-tool", "tool",
                        desk.thing(sheet, id))).orElse("");
                String count = ClassPreparationPage.count(sheet, desk, item, item.station().get());
                int number = rows.size() + 1;
                rows.add(List.of(RichText.of(number + ". " + name), RichText.of(count)));
                if (tool.isEmpty()) {
                    placed.add(new StationDrawing.Placed(item, number, name, Optional.of(count)));
                }
            }
        }
        List<Block> blocks = new ArrayList<>(List.of(new Table("station-" + station + "-kit", words.say("class.kit-caption",
                "n", station), words.columns("class.thing", "class.amount"), rows, Optional.empty())));
        List<StationDrawing.Placed> shared = desk.plan().supplies().layOut().stream().filter(item -> item.kind()
                == ClassSupplies.Kind.SHARED || item.station().isEmpty() && desk.reading().shared().stream().anyMatch(one ->
                        one.thing().equals(item.id()))).map(item -> new StationDrawing.Placed(item, 0, desk.thing(sheet, item.id()),
                                item.all().map(all -> ClassPreparationPage.count(sheet, all)))).toList();
        new StationDrawing(sheet, desk.desk()).make("station-" + station + "-drawing", placed, shared).ifPresent(blocks::add);
        return blocks;
    }
}
