package org.benchleaf.compose.cases;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.compose.chart.StationDrawing;
import org.benchleaf.compose.classes.ClassDesk;
import org.benchleaf.compose.classes.ClassPreparationPage;
import org.benchleaf.compose.part.BriefingMaker;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.CasePageMaker;
import org.benchleaf.compose.part.CasePageName;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.compose.part.HazardMaker;
import org.benchleaf.compose.part.LabelMaker;
import org.benchleaf.compose.part.PartFacts;
import org.benchleaf.compose.part.RecipeMaker;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.part.WorkingMaker;
import org.benchleaf.derive.CaseLayOut;
import org.benchleaf.derive.classes.ClassSupplies;
import org.benchleaf.derive.figure.Preparation;
import org.benchleaf.page.Block;
import org.benchleaf.page.KeyNumbers;
import org.benchleaf.page.Opening;
import org.benchleaf.page.Page;
import org.benchleaf.page.Section;
import org.benchleaf.page.Table;
import org.benchleaf.page.Working;
import org.benchleaf.page.WorkingList;
import org.benchleaf.text.RichText;
import org.benchleaf.words.StepTitle;
import org.benchleaf.words.Words;

/** The sheet for the technician: what to make, in the order of beginning, what to lay out, and the labels. */
public final class PreparationPage implements CasePageMaker {

    static final CasePageName NAME = new CasePageName("preparation", "preparation.html", Clearance.Output.PREPARATION_SHEET);

    @Override
    public CasePageName name() {
        return NAME;
    }

    @Override
    public Page make(CaseDesk desk) {
        Sheet sheet = desk.sheet(NAME);
        Words words = sheet.words();
        sheet.add(new Opening(Optional.of(words.say("case-page.preparation")), desk.treatment().title(),
                Optional.of(words.say("prepare.lead")), List.of(),
                Optional.of(new Opening.Notice(words.say("notice.word"), words.say("bench.notice")))));
        BenchSumsMaker.part(sheet, desk).ifPresent(sheet::add);
        sheet.add(new BriefingMaker(sheet, desk).beforePreparing());
        ClassDesk.section(sheet, desk).ifPresent(sheet::add);
        recipes(sheet, desk).ifPresent(sheet::add);
        layOut(sheet, desk).ifPresent(sheet::add);
        totals(sheet, desk).ifPresent(sheet::add);
        if (!desk.worked().preparations().isEmpty()) {
            sheet.add(new Section("labels", words.say("prepare.labels"), Optional.of(words.say("prepare.labels-lead")),
                    List.of(new LabelMaker(sheet, desk).make())));
        }
        return desk.finish(sheet, NAME, words.say("prepare.description", "case", desk.treatment().title()));
    }

    private static Optional<Section> recipes(Sheet sheet, CaseDesk desk) {
        List<Block> cards = new ArrayList<>();
        RecipeMaker maker = new RecipeMaker(sheet, desk);
        for (Preparation preparation : desk.worked().preparations()) {
            cards.add(maker.make(preparation));
        }
        Words words = sheet.words();
        return cards.isEmpty() ? Optional.empty() : Optional.of(new Section("prepare", words.say("prepare.heading"),
                Optional.of(words.say("prepare.heading-lead")), cards));
    }

    /** Everything that lies ready: materials, tools and weights, each once, with how many. */
    private static Optional<Section> layOut(Sheet sheet, CaseDesk desk) {
        Words words = sheet.words();
        List<ClassSupplies.LaidOut> items = CaseLayOut.of(desk.worked(), desk.library());
        if (items.isEmpty()) {
            return Optional.empty();
        }
        List<StationDrawing.Placed> placed = new ArrayList<>();
        List<List<RichText>> rows = new ArrayList<>();
        for (ClassSupplies.LaidOut item : items) {
            placed.add(new StationDrawing.Placed(item, placed.size() + 1, name(sheet, desk, item),
                    item.all().map(all -> ClassPreparationPage.count(sheet, all))));
            rows.add(row(sheet, desk, item, placed.size()));
        }
        List<Block> blocks = new ArrayList<>(List.of(new Table("lay-out-table", words.say("class.lay-out-caption"),
                words.columns("class.thing", "class.amount", "class.for"), rows, Optional.empty())));
        new StationDrawing(sheet, desk).make("lay-out-drawing", placed).ifPresent(blocks::add);
        List<Working> cuts = cuts(sheet, desk);
        if (!cuts.isEmpty()) {
            blocks.add(new WorkingList(words.say("prepare.cuts"), cuts));
        }
        return Optional.of(new Section("lay-out", words.say("prepare.lay-out"), Optional.empty(), blocks));
    }

    /** How the sizes of what is cut were worked out; what two steps cut alike, once. */
    private static List<Working> cuts(Sheet sheet, CaseDesk desk) {
        Map<String, Working> cuts = new LinkedHashMap<>();
        desk.worked().figures().values().stream().filter(figure -> figure.method().equals("cut-size"))
                .forEach(figure -> cuts.putIfAbsent(figure.label() + figure.value(), new WorkingMaker(sheet).make(figure)));
        return List.copyOf(cuts.values());
    }

    private static String name(Sheet sheet, CaseDesk desk, ClassSupplies.LaidOut item) {
        return switch (item.kind()) {
            case WEIGHT -> ClassPreparationPage.weight(sheet, item);
            case VESSEL, BENCH, MAKING -> ClassPreparationPage.onTheBench(sheet, item);
            default -> new HazardMaker(sheet, desk).name(item.id());
        };
    }

    private static List<RichText> row(Sheet sheet, CaseDesk desk, ClassSupplies.LaidOut item, int number) {
        RichText name = switch (item.kind()) {
            case WEIGHT, VESSEL, BENCH, MAKING -> RichText.of(name(sheet, desk, item));
            default -> PartFacts.thing(sheet, desk, item.id());
        };
        String how = Stream.concat(Optional.of(item.words()).filter(words -> !words.isEmpty()).stream(), item.size().map(size ->
                ClassPreparationPage.size(sheet, size)).stream()).map(told -> sheet.words().say("list.comma") + told)
                .collect(Collectors.joining());
        return List.of(RichText.of(number + ". ").then(name).then(how),
                RichText.of(item.all().map(all -> ClassPreparationPage.count(sheet, all))
                .orElse(sheet.words().say("class.not-worked-out"))), RichText.of(item.steps().stream()
                        .flatMap(id -> desk.treatment().step(id).stream())
                        .map(step -> new StepTitle(sheet.words(), desk.treatment()).of(step)).distinct()
                        .collect(Collectors.joining(sheet.words().say("list.comma")))));
    }

    private static Optional<Section> totals(Sheet sheet, CaseDesk desk) {
        List<KeyNumbers.Item> items = desk.worked().figures().values().stream()
                .filter(figure -> figure.key().role() == FigureKey.Role.TOTAL).map(new WorkingMaker(sheet)::make)
                .map(working -> new KeyNumbers.Item(working, working.label(), List.of())).toList();
        Words words = sheet.words();
        return items.isEmpty() ? Optional.empty() : Optional.of(new Section("totals", words.say("prepare.totals"),
                Optional.of(words.say("prepare.totals-lead")), List.of(new KeyNumbers(items))));
    }
}
