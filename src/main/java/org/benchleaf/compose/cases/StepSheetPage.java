package org.benchleaf.compose.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.calculate.Figure;
import org.benchleaf.compose.bench.BenchViewMaker;
import org.benchleaf.compose.classes.ClassDesk;
import org.benchleaf.compose.part.BriefingMaker;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.CasePageMaker;
import org.benchleaf.compose.part.CasePageName;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.compose.part.HazardMaker;
import org.benchleaf.compose.part.LevelWords;
import org.benchleaf.compose.part.MeetingWords;
import org.benchleaf.compose.part.PartFacts;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.part.WorkingMaker;
import org.benchleaf.derive.figure.Preparation;
import org.benchleaf.derive.time.Timeline;
import org.benchleaf.json.JsonText;
import org.benchleaf.model.Step;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.page.BenchDesk;
import org.benchleaf.page.BenchStep;
import org.benchleaf.page.BenchStrip;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Facts;
import org.benchleaf.page.Link;
import org.benchleaf.page.Opening;
import org.benchleaf.page.Page;
import org.benchleaf.page.Paths;
import org.benchleaf.page.Section;
import org.benchleaf.page.SignOff;
import org.benchleaf.page.Working;
import org.benchleaf.page.WorkingList;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.text.RichText;
import org.benchleaf.words.StepTitle;
import org.benchleaf.words.Words;

/** The sheet for the bench: the briefing first, then what must stand ready, then step by step. */
public final class StepSheetPage implements CasePageMaker {

    private static final CasePageName NAME = new CasePageName(CasePageName.STEP_SHEET, "steps.html", Clearance.Output.STEP_SHEET);

    @Override
    public CasePageName name() {
        return NAME;
    }

    @Override
    public boolean applies(CaseDesk desk) {
        return CasePageMaker.super.applies(desk) && !desk.treatment().steps().isEmpty();
    }

    @Override
    public Page make(CaseDesk desk) {
        Sheet sheet = desk.sheet(NAME).script("bench.js").script("bench-view.js");
        Words words = sheet.words();
        TreatmentCase treatment = desk.treatment();
        sheet.add(opening(sheet, desk));
        sheet.add(new BenchDesk("benchleaf." + Paths.slug(desk.library().studio().name()) + "." + treatment.id() + ".1",
                words.group("desk")));
        BenchSumsMaker.part(sheet, desk).ifPresent(sheet::add);
        sheet.add(new BriefingMaker(sheet, desk).beforeSteps(ClassDesk.waste(sheet, desk)));
        new SpotTestTable(sheet, desk).atTheBench().ifPresent(sheet::add);
        reasons(sheet, desk).ifPresent(sheet::add);
        ready(sheet, desk).ifPresent(sheet::add);
        List<BenchStep> steps = new BenchStepMaker(sheet, desk).all();
        sheet.add(new Section("steps", words.say("bench.steps"), Optional.of(words.say("bench.steps-lead")),
                List.of(new BenchStrip(steps, words.group("strip")))));
        signOff(sheet, desk).ifPresent(sheet::add);
        sheet.add(new BenchViewMaker(sheet, desk, steps).make());
        sheet.linkedData(linkedData(sheet, desk, steps));
        return desk.finish(sheet, NAME, words.say("bench.description", "case", treatment.title()));
    }

    @Override
    public List<DataFile> files(CaseDesk desk) {
        return BenchSumsMaker.files(desk);
    }

    @Override
    public List<DataFile> filesTold(CaseDesk desk) {
        return BenchSumsMaker.files(desk);
    }

    /** A time of all steps together: at least that long where the time of one is not on record. */
    private static String whole(Sheet sheet, Timeline timeline, Quantity time) {
        String told = sheet.numbers().duration(time).text();
        return timeline.complete() ? told : time.highIn(Unit.MINUTE) == 0 ? sheet.words().notRecorded()
                : sheet.words().say("missing.at-least", "value", told);
    }

    private static Opening opening(Sheet sheet, CaseDesk desk) {
        Words words = sheet.words();
        List<Fact> facts = new ArrayList<>();
        LevelWords.fact(words, desk.treatment()).ifPresent(facts::add);
        facts.add(Fact.of(words.say("bench.whole-time"),
                whole(sheet, desk.worked().timeline(), desk.worked().timeline().total())));
        facts.add(Fact.of(words.say("bench.hands-on"),
                whole(sheet, desk.worked().timeline(), desk.worked().timeline().handsOn())));
        facts.add(Fact.of(words.say("bench-fact.people"), String.valueOf(
                desk.treatment().steps().stream().mapToInt(Step::people).max().orElse(1))));
        return new Opening(Optional.of(words.say("case-page.step-sheet")), desk.treatment().title(),
                Optional.of(words.say("bench.lead")), facts,
                Optional.of(new Opening.Notice(words.say("notice.word"), words.say("bench.notice"))));
    }

    /** Reasons that belong to no single step, so that no step can tell them. */
    private static Optional<Section> reasons(Sheet sheet, CaseDesk desk) {
        List<Fact> reasons = new ArrayList<>();
        desk.worked().findings().stream().filter(finding -> finding.forTrainees() && finding.step().isEmpty())
                .forEach(finding -> desk.library().rules().stream().filter(rule -> rule.id().equals(finding.rule()))
                        .forEach(rule -> finding.reason().ifPresent(reason ->
                                reasons.add(new Fact(rule.statement(), sheet.linked(reason))))));
        return reasons.isEmpty() ? Optional.empty() : Optional.of(new Section("reasons", sheet.words().say("strip.why"),
                Optional.empty(), List.of(new Facts(reasons.stream().distinct().toList()))));
    }

    private static Optional<Section> ready(Sheet sheet, CaseDesk desk) {
        if (desk.worked().preparations().isEmpty()) {
            return Optional.empty();
        }
        Words words = sheet.words();
        List<Fact> facts = new ArrayList<>();
        for (Preparation preparation : desk.worked().preparations()) {
            String amount = sheet.numbers().amount(preparation.batch()).text()
                    + (preparation.batches() > 1 ? words.say("bench.ready-times", "times", words.times(preparation.batches())) : "");
            String name = new HazardMaker(sheet, desk).name(preparation.solution());
            RichText batch = Working.marked(preparation.solution() + ".batch", RichText.of(amount));
            facts.add(new Fact(name, !desk.has("preparation") ? batch : batch.then(" ").then(sheet.hyperlink(
                    words.say("bench.ready-how", "what", name),
                    Paths.preparation(desk.treatment().id()) + "#" + PartFacts.prepared(preparation.solution())))));
        }
        return Optional.of(new Section("ready", words.say("bench.ready"), Optional.of(words.say("bench.ready-lead")),
                List.of(new Facts(facts), new WorkingList(words.say("bench.ready-workings"), batches(sheet, desk)))));
    }

    /** How much of each is made at a time; two solutions have a figure of the same label, so each bears its name. */
    private static List<Working> batches(Sheet sheet, CaseDesk desk) {
        return desk.worked().preparations().stream().flatMap(preparation ->
                sheet.figure(preparation.solution() + ".batch").stream().map(batch -> new Figure(batch.key(),
                        sheet.words().list(List.of(new HazardMaker(sheet, desk).name(preparation.solution()), batch.label())),
                        batch.value(),
                        batch.method(), batch.inputs(), batch.sources(), batch.notes()))).map(new WorkingMaker(sheet)::make).toList();
    }

    private static Optional<Section> signOff(Sheet sheet, CaseDesk desk) {
        Words words = sheet.words();
        List<SignOff.Row> rows = new ArrayList<>();
        List<Step> steps = desk.treatment().steps();
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            String title = words.say("bench.sign-step", "n", i + 1,
                    "kind", new StepTitle(words, desk.treatment()).of(step));
            step.hold().ifPresent(hold -> rows.add(new SignOff.Row(Link.to(title, "#" + Paths.step(step.id())),
                    hold.before(), hold.look().orElse(""), words.term("role", hold.releasedBy()))));
        }
        return rows.isEmpty() ? Optional.empty() : Optional.of(new Section("holds", words.say("bench.holds"),
                Optional.of(words.say("bench.holds-lead")),
                List.of(new SignOff(words.say("bench.holds-caption"), rows, words.group("sign")))));
    }

    private static String linkedData(Sheet sheet, CaseDesk desk, List<BenchStep> steps) {
        TreatmentCase treatment = desk.treatment();
        List<Object> list = new ArrayList<>();
        for (BenchStep step : steps) {
            list.add(JsonText.object("@type", "HowToStep", "position", step.number(), "name", step.kind(),
                    "text", new MeetingWords(sheet, desk)
                    .instruction(treatment.steps().get(step.number() - 1)), "url", "#" + step.anchor()));
        }
        return JsonText.script(JsonText.object("@context", "https://schema.org", "@type", "HowTo", "name", treatment.title(),
                "inLanguage", treatment.language(), "license", treatment.publication().licence(),
                "isBasedOn", desk.basis(),
                "totalTime", Optional.of(desk.worked().timeline()).filter(Timeline::complete)
                        .map(timeline -> sheet.numbers().iso(timeline.total())),
                "supply", treatment.solutions().stream().map(solution ->
                        JsonText.object("@type", "HowToSupply", "name", solution.name())).toList(),
                "step", list));
    }
}
