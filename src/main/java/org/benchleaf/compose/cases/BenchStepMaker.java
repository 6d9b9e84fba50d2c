package org.benchleaf.compose.cases;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.compose.bench.BenchTimers;
import org.benchleaf.compose.chart.StepDrawings;
import org.benchleaf.compose.chart.StepLength;
import org.benchleaf.compose.part.BathTimes;
import org.benchleaf.compose.part.BriefingMaker;
import org.benchleaf.compose.part.CareLine;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.ChoiceFacts;
import org.benchleaf.compose.part.MeetingWords;
import org.benchleaf.compose.part.PartFacts;
import org.benchleaf.compose.part.PassageMaker;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.part.TimeWords;
import org.benchleaf.compose.part.WorkingMaker;
import org.benchleaf.compose.site.RuleStatements;
import org.benchleaf.derive.figure.Preparation;
import org.benchleaf.derive.figure.UsedThings;
import org.benchleaf.derive.hazard.StepCare;
import org.benchleaf.derive.time.Timeline;
import org.benchleaf.model.Finding;
import org.benchleaf.model.Part;
import org.benchleaf.model.Picture;
import org.benchleaf.model.SpotTest;
import org.benchleaf.model.Step;
import org.benchleaf.model.StepKind;
import org.benchleaf.page.BenchStep;
import org.benchleaf.page.Caution;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Paths;
import org.benchleaf.page.Photo;
import org.benchleaf.page.Working;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.text.RichText;
import org.benchleaf.words.StepTitle;
import org.benchleaf.words.WholeSentence;
import org.benchleaf.words.Words;

/** Makes one step of the strip: what to know first, what to do, with how much, and when it is done. */
final class BenchStepMaker {

    /** What the sheet needs at least: where a tray is chosen, its own amounts are those that the hand measures. */
    private static final Set<String> LEAST_OF_A_TRAY = Set.of("volume", "total");

    private final Sheet sheet;
    private final CaseDesk desk;
    private final BriefingMaker briefing;
    private final Map<String, String> statements;
    private final Map<String, Timeline.TimedStep> timed = new LinkedHashMap<>();

    BenchStepMaker(Sheet sheet, CaseDesk desk) {
        this.sheet = sheet;
        this.desk = desk;
        this.briefing = new BriefingMaker(sheet, desk);
        this.statements = RuleStatements.of(sheet.words(), desk.library());
        desk.worked().timeline().steps().forEach(step -> timed.put(step.step(), step));
    }

    /** The steps of the case, in order. */
    List<BenchStep> all() {
        List<BenchStep> steps = new ArrayList<>();
        for (Step step : desk.treatment().steps()) {
            steps.add(make(step, steps.size() + 1));
        }
        return steps;
    }

    private BenchStep make(Step step, int number) {
        Timeline.TimedStep time = timed.get(step.id());
        Optional<StepCare> care = Optional.ofNullable(desk.worked().care().get(step.id()));
        List<Caution> cautions = Stream.concat(new MeetingWords(sheet, desk).cautions(care).stream(),
                briefing.cautions(care.map(StepCare::cautions).orElse(List.of()), care.map(StepCare::subjects).orElse(Map.of())).stream())
                .toList();
        List<Working> amounts = workings(step, true);
        return new BenchStep(Paths.step(step.id()), number, new StepTitle(sheet.words(), desk.treatment()).of(step),
                clock(step, time), takes(step, time), hold(step),
                supervised(care), cautions, new CareLine(sheet, desk).all(cautions, care),
                briefing.equipment(care.map(StepCare::wear).orElse(List.of())), sheet.linked(step.instruction()), amounts,
                facts(step), told(step), reasons(step), new BenchTimers(sheet, desk).of(step, time), checks(step),
                workings(step, false), photo(step), new StepDrawings(sheet, desk, step).all(),
                follows(step, care));
    }

    /** The step, and every solution that it uses, itself or within another; those of a testing step stand in the list of the tests. */
    private List<String> follows(Step step, Optional<StepCare> care) {
        List<String> named = step.kind() == StepKind.TESTING ? desk.treatment().tests().stream().map(SpotTest::with).toList()
                : UsedThings.of(step);
        return Stream.concat(Stream.of(step.id()), desk.worked().preparations().stream()
                .filter(made -> made.usedIn().contains(step.id()) || named.contains(made.solution())
                        || care.filter(any -> any.materials().contains(made.solution())).isPresent())
                .map(Preparation::solution)).distinct().toList();
    }

    private Optional<Caution> supervised(Optional<StepCare> care) {
        return care.map(StepCare::supervision).filter(why -> !why.isEmpty()).map(why -> new Caution("danger",
                sheet.words().say("caution-level.danger"), sheet.words().say("bench.supervised-name"),
                sheet.linked(sheet.words().say("bench.supervised") + " " + String.join(" ", why)), RichText.of("")));
    }

    /** When it begins, and for what it waits before. */
    private String clock(Step step, Timeline.TimedStep time) {
        return step.waiting().map(wait -> sheet.words().say("bench.waits", "when", clock(time), "wait", waits(wait)))
                .orElseGet(() -> clock(time));
    }

    private String waits(Step.Wait wait) {
        Words words = sheet.words();
        return wait.time().map(time -> words.say("bench.wait-time", "time", new TimeWords(sheet).of(time)))
                .or(() -> wait.day().map(day -> words.say("bench.wait-day", "day", sheet.numbers().weekday(day))))
                .orElseGet(() -> words.say("bench.wait-sign", "sign", wait.sign().orElse("")));
    }

    private String clock(Timeline.TimedStep time) {
        Quantity start = time.start();
        if (!time.startKnown()) {
            return start.high() == 0 ? sheet.words().say("bench.start-unknown")
                    : sheet.words().say("bench.after-least", "time", sheet.numbers().duration(roughly(start)).text());
        }
        return start.high() == 0 ? sheet.words().say("bench.at-start")
                : sheet.words().say("bench.after", "time", sheet.numbers().duration(roughly(start)).text());
    }

    /** A clock to the minute below three hours, to the quarter of an hour beyond; nobody plans finer. */
    private static Quantity roughly(Quantity time) {
        double step = time.highIn(Unit.MINUTE) <= 180 ? 1 : 15;
        double low = StrictMath.rint(time.lowIn(Unit.MINUTE) / step) * step;
        double high = StrictMath.rint(time.highIn(Unit.MINUTE) / step) * step;
        return Quantity.range(low, high, Unit.MINUTE);
    }

    private String takes(Step step, Timeline.TimedStep time) {
        if (!time.known()) {
            return sheet.words().untimed(step.timeMissing());
        }
        String takes = new StepLength(sheet).of(step, time, BenchStepMaker::roughly);
        return time.handsOn().highIn(Unit.MINUTE) + 0.5 < time.takes().highIn(Unit.MINUTE)
                ? sheet.words().say("bench.takes-hands", "time", takes,
                        "hands", new StepLength(sheet).ofHands(step, time, BenchStepMaker::roughly))
                : takes;
    }

    private Optional<BenchStep.Hold> hold(Step step) {
        return step.hold().map(hold -> new BenchStep.Hold(
                sheet.words().say("bench.hold-before", "what", hold.before()),
                sheet.words().say("bench.hold-by", "who", sheet.words().term("role", hold.releasedBy())),
                sheet.words().term("role", hold.releasedBy()), hold.look(),
                hold.meanwhile(), hold.atMost().map(most -> sheet.words().say("bench.hold-at-most", "time",
                        sheet.numbers().duration(most).text())),
                hold.atMost().map(most -> Math.round(most.lowIn(Unit.SECOND))).orElse(0L)));
    }

    private List<Working> workings(Step step, boolean atHand) {
        List<Figure> all = desk.worked().figures().values().stream()
                .filter(figure -> figure.key().owner() == FigureKey.Owner.STEP && figure.key().of().equals(step.id())).toList();
        boolean tray = all.stream().anyMatch(figure -> figure.key().name().equals("tray-volume"));
        List<Figure> figures = all.stream().filter(figure -> (figure.key().role() == FigureKey.Role.AT_HAND
                && !(tray && LEAST_OF_A_TRAY.contains(figure.key().name()))) == atHand).toList();
        List<Figure> exposure = atHand ? List.of() : Optional.ofNullable(desk.worked().care().get(step.id()))
                .map(StepCare::exposure).orElse(List.of()).stream()
                .map(sheet::figure).flatMap(Optional::stream).filter(figure -> !figures.contains(figure)).toList();
        return Stream.concat(figures.stream(), exposure.stream())
                .filter(figure -> !sheet.shows(figure.id())).map(new WorkingMaker(sheet)::make).toList();
    }

    /** Whether amounts of the step follow from the size of the sheet. */
    private static boolean needsSize(Step step) {
        return step.part(Part.Bath.class).isPresent() || step.part(Part.Blotters.class).isPresent()
                || step.part(Part.Support.class).flatMap(Part.Support::margin).isPresent()
                || step.part(Part.Press.class).filter(press -> press.height().isEmpty()).isPresent();
    }

    private List<Fact> facts(Step step) {
        List<Fact> facts = new ArrayList<>();
        step.named().ifPresent(own -> facts.add(Fact.of(sheet.words().say("bench-fact.nearest"),
                sheet.words().say("bench-fact.nearest-kind", "kind", sheet.words().term("step-kind", step.kind().word())))));
        if (!step.of().isEmpty()) {
            String items = String.join("; ", new StepTitle(sheet.words(), desk.treatment()).items(step));
            facts.add(Fact.of(sheet.words().say("bench-fact.items"), step.of().size() == 1 ? items
                    : sheet.words().say("bench-fact.items-several", "items", items)));
        }
        PartFacts.applied(sheet.words(), step).ifPresent(facts::add);
        step.parts().forEach(part -> facts.addAll(part.ask(new PartFacts(sheet, desk))));
        facts.addAll(new BathTimes(sheet, desk, step).facts());
        facts.addAll(new ChoiceFacts(sheet, desk).of(step));
        desk.treatment().object().sizeMissing().filter(missing -> step.of().isEmpty() && needsSize(step)).ifPresent(missing -> facts.add(
                Fact.of(sheet.words().say("bench-fact.amounts"), sheet.words().say("missing.size", "missing",
                        sheet.words().missing(missing)))));
        new UntoldAmounts(desk, step).sentences(sheet.words()).forEach(sentence -> facts.add(
                Fact.of(sheet.words().say("bench-fact.amounts"), sentence)));
        List<String> uses = step.uses().stream().filter(id -> !isWorn(id)).toList();
        if (!uses.isEmpty()) {
            facts.add(new Fact(sheet.words().say("bench-fact.uses"), PartFacts.things(sheet, desk, uses)));
        }
        if (step.people() > 1) {
            facts.add(Fact.of(sheet.words().say("bench-fact.people"), String.valueOf(step.people())));
        }
        if (!step.by().isBlank()) {
            facts.add(Fact.of(sheet.words().say("bench-fact.by"), sheet.words().term("role", step.by())));
        }
        return facts;
    }

    /** Protective equipment stands with what is worn, and only there. */
    private boolean isWorn(String id) {
        return Optional.ofNullable(desk.library().materials().get(id))
                .filter(tool -> !desk.library().reference().worn(tool).isEmpty()).isPresent();
    }

    private List<Fact> told(Step step) {
        List<Fact> told = new ArrayList<>();
        if (!step.avoids().isEmpty()) {
            told.add(Fact.of(sheet.words().say("bench-fact.avoid"), String.join("; ",
                    step.avoids().stream().map(id -> PartFacts.medium(sheet.words(), desk, id)).toList())));
        }
        tell(told, "see", step.see());
        tell(told, "watch", step.watch());
        tell(told, "if-not", step.ifNot());
        tell(told, "until", step.until());
        step.atMost().ifPresent(most -> tell(told, "at-most",
                Optional.of(sheet.numbers().duration(most).text())));
        tell(told, "edge", step.edge());
        open(step).ifPresent(rules -> told.add(Fact.of(sheet.words().say("bench.told-open"),
                sheet.words().say("bench.open-rules", "rules", rules))));
        desk.treatment().sources().of(step).ifPresent(passage -> told.add(new Fact(sheet.words().say("bench.told-source"),
                new PassageMaker(sheet).make(passage))));
        step.resize().ifPresent(decision -> tell(told, decision.yes() ? "resize-yes" : "resize-no", decision.why()));
        return told;
    }

    /** The rules of which it cannot be told whether they are kept at a step. */
    private Optional<String> open(Step step) {
        List<String> rules = desk.worked().findings().stream()
                .filter(finding -> finding.standing() == Finding.Standing.NOT_TOLD
                        && finding.step().filter(step.id()::equals).isPresent())
                .map(finding -> statements.getOrDefault(finding.rule(), finding.what()))
                .map(WholeSentence::of).distinct().toList();
        return rules.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", rules));
    }

    private void tell(List<Fact> told, String key, Optional<String> text) {
        text.ifPresent(words -> told.add(new Fact(sheet.words().say("bench.told-" + key),
                sheet.linked(WholeSentence.of(words)))));
    }

    private List<RichText> reasons(Step step) {
        return desk.worked().findings().stream()
                .filter(finding -> finding.forTrainees() && finding.step().filter(step.id()::equals).isPresent())
                .map(Finding::reason).flatMap(Optional::stream).distinct().map(sheet::linked).toList();
    }

    private List<String> checks(Step step) {
        List<String> checks = new ArrayList<>();
        step.checks().forEach(look -> checks.add(sheet.words().say("bench.check-looked", "what", look)));
        checks.add(sheet.words().say("bench.check-done"));
        return checks;
    }

    private Optional<Photo> photo(Step step) {
        return desk.pictures().stream().filter(picture -> picture.step().filter(step.id()::equals).isPresent())
                .findFirst().map((Picture picture) -> CaseStudyPage.photo(sheet, desk, picture, Optional.empty(), false));
    }
}
