package org.benchleaf.compose.cases;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.compose.chart.StepLength;
import org.benchleaf.compose.chart.TimelineChart;
import org.benchleaf.compose.classes.ClassDesk;
import org.benchleaf.compose.part.BathTimes;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.CasePageMaker;
import org.benchleaf.compose.part.CasePageName;
import org.benchleaf.compose.part.CaseReference;
import org.benchleaf.compose.part.ChoiceFacts;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.compose.part.HomeAdvice;
import org.benchleaf.compose.part.LevelWords;
import org.benchleaf.compose.part.Licences;
import org.benchleaf.compose.part.MeetingWords;
import org.benchleaf.compose.part.PartFacts;
import org.benchleaf.compose.part.PassageMaker;
import org.benchleaf.compose.part.PicturePair;
import org.benchleaf.compose.part.ProseMaker;
import org.benchleaf.compose.part.RecipeMaker;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.part.TrialTables;
import org.benchleaf.compose.part.WorkingMaker;
import org.benchleaf.derive.time.Timeline;
import org.benchleaf.json.JsonText;
import org.benchleaf.model.MaterialKind;
import org.benchleaf.model.Medium;
import org.benchleaf.model.MissingValue;
import org.benchleaf.model.Part;
import org.benchleaf.model.Picture;
import org.benchleaf.model.PrintObject;
import org.benchleaf.model.Proposal;
import org.benchleaf.model.Result;
import org.benchleaf.model.Retelling;
import org.benchleaf.model.Solution;
import org.benchleaf.model.Step;
import org.benchleaf.model.Story;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.page.Block;
import org.benchleaf.page.Comparison;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Facts;
import org.benchleaf.page.Findings;
import org.benchleaf.page.KeyNumbers;
import org.benchleaf.page.Link;
import org.benchleaf.page.LinkList;
import org.benchleaf.page.Opening;
import org.benchleaf.page.Page;
import org.benchleaf.page.Paths;
import org.benchleaf.page.Photo;
import org.benchleaf.page.PhotoRow;
import org.benchleaf.page.Prose;
import org.benchleaf.page.Section;
import org.benchleaf.page.StepOutline;
import org.benchleaf.text.RichText;
import org.benchleaf.text.TextBlock;
import org.benchleaf.words.PairWords;
import org.benchleaf.words.StepTitle;
import org.benchleaf.words.WholeSentence;
import org.benchleaf.words.Words;

/** The public story of a treatment: before and after first, then what, why, how, what it gave, what was not done. */
public final class CaseStudyPage implements CasePageMaker {

    private static final CasePageName NAME = new CasePageName("case-study", "index.html", Clearance.Output.CASE_STUDY);
    private static final String NOT_DONE = "not-done";

    @Override
    public CasePageName name() {
        return NAME;
    }

    @Override
    public Page make(CaseDesk desk) {
        Sheet sheet = desk.sheet(NAME).script("compare.js");
        if (!desk.clearance().strengths()) {
            sheet.withholdStrengths();
        }
        TreatmentCase treatment = desk.treatment();
        sheet.add(opening(sheet, treatment));
        treatment.sources().retelling().ifPresent(retelling -> sheet.add(source(sheet, retelling)));
        Optional<Comparison> comparison = comparison(sheet, desk);
        comparison.ifPresent(sheet::add);
        Set<String> placed = new HashSet<>();
        comparison.ifPresent(pair -> placed.addAll(List.of(pair.before().id(), pair.after().id())));
        AimAnswers answers = new AimAnswers(sheet, desk);
        Optional<Facts> aims = answers.facts();
        List<RichText> says = answers.otherSentences();
        List<Block> rest = rest(sheet, desk, placed);
        sheet.add(gave(sheet, desk, answers.others(), aims, says));
        rest.forEach(sheet::add);
        sheet.linkedData(linkedData(sheet, desk));
        return desk.finish(sheet, NAME, treatment.summary());
    }

    /** What stands below the results; made before their workings, so that a number in the story opens beside its sentence. */
    private static List<Block> rest(Sheet sheet, CaseDesk desk, Set<String> placed) {
        TreatmentCase treatment = desk.treatment();
        List<Block> rest = new ArrayList<>();
        rest.add(object(sheet, treatment));
        condition(sheet, desk).ifPresent(rest::add);
        if (!treatment.proposal().isAnswered()) {
            aims(sheet, treatment).ifPresent(rest::add);
        }
        rest.addAll(story(sheet, desk, placed));
        if (!tellsNotDone(treatment)) {
            notDone(sheet, treatment).ifPresent(options -> rest.add(new Section(NOT_DONE, sheet.words().say("study.not-done"),
                    Optional.of(sheet.words().say("study.not-done-lead")), List.of(options))));
        }
        new SpotTestTable(sheet, desk).onRecord().filter(any -> !desk.has(CasePageName.RESULTS)).ifPresent(rest::add);
        rest.add(done(sheet, desk));
        ClassDesk.section(sheet, desk).ifPresent(rest::add);
        ResultsPage.past(sheet, desk).ifPresent(rest::add);
        treatment.trials().forEach(trial -> rest.add(new TrialTables(sheet, desk, trial).arms()));
        timeline(sheet, desk).ifPresent(rest::add);
        rest.add(new HomeAdvice(sheet).section(treatment));
        otherPictures(sheet, desk, placed).ifPresent(rest::add);
        rest.add(new CitingSection(sheet, CaseReference.of(desk)).section(treatment.publication().citing().versions()));
        OpenData.section(sheet, desk).ifPresent(rest::add);
        return rest;
    }

    @Override
    public List<DataFile> files(CaseDesk desk) {
        return Stream.concat(new ReferenceFiles(CaseReference.of(desk)).all().stream(),
                LinkedArt.of(desk).map(LinkedArt::file).stream()).toList();
    }

    private static Opening opening(Sheet sheet, TreatmentCase treatment) {
        Words words = sheet.words();
        PrintObject object = treatment.object();
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of(words.say("fact.object"), objectWords(words, object)));
        object.made().ifPresent(made -> facts.add(Fact.of(words.say("fact.made"), made)));
        LevelWords.fact(words, treatment).ifPresent(facts::add);
        return new Opening(Optional.of(words.say("case-page.case-study")), treatment.title(),
                Optional.of(treatment.summary()), facts,
                Optional.of(new Opening.Notice(words.say("notice.word"),
                        words.say(treatment.sources().retelling().isEmpty() ? "frame.notice" : "frame.notice-retold"))));
    }

    /** From which publication it is told, and what of that was read. */
    private static Section source(Sheet sheet, Retelling retelling) {
        Words words = sheet.words();
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(words.say("source.of"), new PassageMaker(sheet).place(retelling.passage())));
        facts.add(Fact.of(words.say("source.by"), retelling.by()));
        facts.add(Fact.of(words.say("source.read"), retelling.read()));
        facts.add(Fact.of(words.say("source.not-read"), retelling.notRead()));
        retelling.passage().words().ifPresent(quoted -> facts.add(new Fact(words.say("source.words"), PassageMaker.quoted(quoted))));
        return new Section("source", words.say("source.heading"), Optional.of(words.say("source.lead")), List.of(new Facts(facts)));
    }

    private static String objectWords(Words words, PrintObject object) {
        Optional<MissingValue> missing = MissingValue.read(object.technique());
        return missing.isPresent() ? words.say("missing.technique", "kind", object.kind(), "missing", words.missing(missing.get()))
                : object.technique().isBlank() ? object.kind() : words.list(List.of(object.kind(), object.technique()));
    }

    private static String size(Sheet sheet, PrintObject object) {
        return object.size().map(size -> sheet.words().say("size", "height", sheet.numbers().written(size.height()).text(),
                "width", sheet.numbers().written(size.width()).text()))
                .orElseGet(() -> object.oneSide().map(side -> sheet.words().say(side.isHeight() ? "size.height-alone" : "size.width-alone",
                        "length", sheet.numbers().written(side.length()).text(), "missing", missingSize(sheet, object)))
                        .orElseGet(() -> missingSize(sheet, object)));
    }

    private static String missingSize(Sheet sheet, PrintObject object) {
        return object.sizeMissing().map(sheet.words()::missing).orElseGet(sheet.words()::notRecorded);
    }

    private static Optional<Comparison> comparison(Sheet sheet, CaseDesk desk) {
        Words words = sheet.words();
        return PicturePair.among(desk.pictures()).stream().findFirst().map(pair -> new Comparison(
                photo(sheet, desk, pair.before(), Optional.of(words.say("comparison.before")), true),
                photo(sheet, desk, pair.after(), Optional.of(words.say("comparison.after")), true),
                PairWords.of(words, pair.before(), pair.after()), words.group("comparison")));
    }

    static Photo photo(Sheet sheet, CaseDesk desk, Picture picture, Optional<String> tag, boolean first) {
        Words words = sheet.words();
        return new Photo(desk.treatment().id(), picture.id(), picture.alt(), picture.caption(),
                words.say("photo.light", "side", words.term("side", picture.side()),
                        "light", words.term("light", picture.light())),
                words.say("photo.credit", "credit", picture.credit(), "licence", picture.licence()), tag, first);
    }

    private static Section object(Sheet sheet, TreatmentCase treatment) {
        Words words = sheet.words();
        PrintObject object = treatment.object();
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(words.say("fact.object"), sheet.linked(objectWords(words, object))));
        object.made().ifPresent(made -> facts.add(new Fact(words.say("fact.made"), sheet.linked(
                object.madeEvidence().filter(CaseStudyPage::isTold).map(why -> words.say("made.evidence", "made", made, "why", why))
                .orElse(made)))));
        if (object.opinion()) {
            facts.add(Fact.of(words.say("fact.dating"), words.say("made.opinion")));
        }
        facts.add(new Fact(words.say("fact.support"), sheet.linked(support(sheet, treatment))));
        facts.add(Fact.of(words.say("fact.size"), size(sheet, object)));
        object.items().forEach(item -> facts.add(new Fact(WholeSentence.of(item.is()).replaceFirst("[.]$", ""),
                sheet.linked(item(sheet, treatment, item)))));
        if (!object.media().isEmpty()) {
            facts.add(new Fact(words.say("fact.media"), sheet.linked(String.join("; ", object.media().stream()
                    .map(medium -> mediumWords(words, medium, treatment)).toList()))));
        }
        return new Section("object", words.say("study.object"), Optional.empty(), List.of(new Facts(facts)));
    }

    /** Size, condition and decision of one item. */
    private static String item(Sheet sheet, TreatmentCase treatment, PrintObject.Item item) {
        Words words = sheet.words();
        String size = item.size().map(known -> words.say("size", "height", sheet.numbers().written(known.height()).text(),
                "width", sheet.numbers().written(known.width()).text()))
                .orElseGet(() -> words.missing(missingSize(treatment, treatment.object().items().indexOf(item))));
        boolean open = item.decision().isEmpty() && treatment.sources().retelling().isPresent();
        return words.say(open ? "item.facts-open" : "item.facts", "size", size,
                "condition", item.condition().map(words::told).orElseGet(words::notRecorded),
                "decision", item.decision().map(words::told).orElseGet(words::notRecorded));
    }

    private static Optional<MissingValue> missingSize(TreatmentCase treatment, int item) {
        return Stream.of("size", "size/width", "size/height").flatMap(key -> treatment.untold().at("object", "items", item, key).stream())
                .findFirst();
    }

    private static String mediumWords(Words words, Medium medium, TreatmentCase treatment) {
        PrintObject object = treatment.object();
        Optional<MissingValue> unread = treatment.untold().at("object", "media", object.media().indexOf(medium), "state");
        Optional<String> items = medium.of().isEmpty() ? Optional.empty() : Optional.of(words.say("medium.of", "items",
                words.list(medium.of().stream().flatMap(id -> object.item(id).stream()).map(PrintObject.Item::is).toList())));
        return words.list(Stream.concat(
                Stream.of(MissingValue.read(medium.is()).map(words::missing).orElse(medium.is())),
                Stream.concat(Stream.of(medium.colourBeside(), medium.where(), items).flatMap(Optional::stream)
                        .filter(CaseStudyPage::isTold), unread.filter(missing -> missing.kind() == MissingValue.Kind.NOT_READ)
                                .map(missing -> words.say("support.unread-state", "missing", words.missing(missing))).stream())).toList());
    }

    private static boolean isTold(String text) {
        return MissingValue.read(text).isEmpty();
    }

    private static String support(Sheet sheet, TreatmentCase treatment) {
        PrintObject object = treatment.object();
        List<String> parts = new ArrayList<>();
        String paper = object.support().paper();
        parts.add(MissingValue.read(paper).map(missing -> sheet.words().say("missing.paper", "missing", sheet.words().missing(missing)))
                .orElse(paper));
        object.support().sizing().filter(CaseStudyPage::isTold).ifPresent(parts::add);
        object.support().features().stream().filter(CaseStudyPage::isTold)
                .map(feature -> sheet.words().group("paper-feature").getOrDefault(feature, feature)).forEach(parts::add);
        parts.addAll(object.support().state());
        object.support().grammage().ifPresent(value -> parts.add(sheet.numbers().written(value).text()));
        object.support().thickness().ifPresent(value -> parts.add(sheet.words().say("support.thick",
                "value", sheet.numbers().written(value).text())));
        Stream.of("grammage", "thickness", "state").forEach(key -> treatment.untold().at("object", "support", key)
                .filter(missing -> missing.kind() == MissingValue.Kind.NOT_READ).ifPresent(missing -> parts.add(
                        sheet.words().say("support.unread-" + key, "missing", sheet.words().missing(missing)))));
        return sheet.words().list(parts);
    }

    private static Optional<Section> condition(Sheet sheet, CaseDesk desk) {
        boolean graded = desk.treatment().condition().stream().anyMatch(damage -> damage.degree().isPresent());
        return new ConditionMapMaker(sheet, desk).make().map(map -> new Section("condition", sheet.words().say("study.condition"),
                graded ? Optional.of(sheet.words().say("study.condition-lead")) : Optional.empty(), List.of(map)));
    }

    private static Optional<Section> aims(Sheet sheet, TreatmentCase treatment) {
        Words words = sheet.words();
        List<Proposal.Aim> aims = treatment.proposal().aims();
        if (aims.isEmpty()) {
            return Optional.empty();
        }
        List<TextBlock.Line> list = aims.stream()
                .map(aim -> new TextBlock.Line(sheet.linked(WholeSentence.of(aim.words())).parts())).toList();
        return Optional.of(new Section("aims", words.say("study.aims"), Optional.empty(),
                List.of(new Prose(List.of(Prose.Passage.of(TextBlock.ItemList.of(list)))))));
    }

    private static List<Block> story(Sheet sheet, CaseDesk desk, Set<String> placed) {
        List<Block> sections = new ArrayList<>();
        Set<String> taken = new LinkedHashSet<>();
        for (Story.Section section : desk.treatment().story().sections()) {
            Prose prose = new ProseMaker(sheet).make(section.text());
            if (section.heading().isEmpty()) {
                sections.add(prose);
                continue;
            }
            List<Block> blocks = new ArrayList<>(List.of(prose));
            if (section.id().equals(NOT_DONE)) {
                notDone(sheet, desk.treatment()).ifPresent(blocks::add);
            }
            desk.treatment().step(section.id()).flatMap(step -> mend(sheet, desk, step)).ifPresent(blocks::add);
            desk.pictures().stream().filter(picture -> !section.id().isEmpty()
                    && picture.step().filter(section.id()::equals).isPresent() && placed.add(picture.id()))
                    .forEach(picture -> blocks.add(photo(sheet, desk, picture, Optional.empty(), false)));
            desk.treatment().step(section.id()).filter(step -> desk.has(CasePageName.STEP_SHEET)).ifPresent(step ->
                    blocks.add(new LinkList(List.of(new LinkList.Entry(toStep(sheet, desk, step), "")))));
            sections.add(new Section(anchor(section, taken), section.heading(), Optional.empty(), blocks));
        }
        return sections;
    }

    /** Whether the story has a section of its own for a mend, which then tells of its adhesive. */
    private static boolean isMendOfStory(TreatmentCase treatment, Step step) {
        return step.part(Part.Mend.class).isPresent()
                && treatment.story().sections().stream().anyMatch(section -> section.id().equals(step.id()));
    }

    /** With what a mend holds, why that was chosen, and with what it comes off again. */
    private static Optional<Facts> mend(Sheet sheet, CaseDesk desk, Step step) {
        Words words = sheet.words();
        List<Fact> facts = new ArrayList<>();
        step.part(Part.Mend.class).ifPresent(part -> {
            desk.treatment().solution(part.with()).ifPresent(adhesive -> facts.add(new Fact(words.say("study.mend-with"),
                    sheet.linked(adhesive.name()).then(new RecipeMaker(sheet, desk).strength(adhesive)
                            .filter(any -> desk.clearance().strengths()).map(strength -> ", " + strength).orElse("")))));
            desk.treatment().reasons().stream().filter(reason -> reason.step().filter(step.id()::equals).isPresent())
                    .forEach(reason -> facts.add(new Fact(words.say("study.mend-why"), sheet.linked(WholeSentence.of(reason.why())))));
            facts.addAll(new ChoiceFacts(sheet, desk).against(step));
            facts.addAll(new TakingOff(sheet, desk).facts(List.of(step)));
        });
        return facts.isEmpty() ? Optional.empty() : Optional.of(new Facts(facts));
    }

    private static String anchor(Story.Section section, Set<String> taken) {
        String wanted = "story-" + Paths.slug(section.id().isEmpty() ? section.heading() : section.id());
        String anchor = wanted;
        for (int n = 2; !taken.add(anchor); n++) {
            anchor = wanted + "-" + n;
        }
        return anchor;
    }

    private static Link toStep(Sheet sheet, CaseDesk desk, Step step) {
        return sheet.link(sheet.words().say("study.to-step", "step",
                new StepTitle(sheet.words(), desk.treatment()).of(step)),
                Paths.stepSheet(desk.treatment().id()) + "#" + Paths.step(step.id()));
    }

    private static Section done(Sheet sheet, CaseDesk desk) {
        Words words = sheet.words();
        List<StepOutline.Item> items = new ArrayList<>();
        List<Step> steps = besideTrials(desk.treatment());
        for (Step step : steps) {
            Optional<String> takes = desk.worked().timeline().steps().stream()
                    .filter(timed -> timed.step().equals(step.id())).findFirst()
                    .map(timed -> takes(sheet, step, timed));
            items.add(new StepOutline.Item(new StepTitle(words, desk.treatment()).of(step),
                    instruction(sheet, desk, step), takes,
                    desk.has(CasePageName.STEP_SHEET) ? Optional.of(toStep(sheet, desk, step)) : Optional.empty()));
        }
        boolean apart = isTold(desk) && StepsApart.any(desk.treatment(), steps);
        List<Block> blocks = new ArrayList<>(List.of(new StepOutline(items, !apart)));
        List<Fact> facts = new ArrayList<>();
        if (!desk.treatment().solutions().isEmpty()) {
            facts.add(new Fact(words.say("study.prepared"), RichText.joined("; ",
                    desk.treatment().solutions().stream().map(solution -> prepared(sheet, desk, solution)).toList())));
        }
        facts.addAll(new TakingOff(sheet, desk).facts(desk.treatment().steps().stream()
                .filter(step -> !isMendOfStory(desk.treatment(), step)).toList()));
        if (!facts.isEmpty()) {
            blocks.add(new Facts(facts));
        }
        return new Section("done", words.say("study.done"),
                Optional.of(words.say(doneLead(desk) + (apart ? "-apart" : ""))), blocks);
    }

    /** Whether the page tells what others did or what is on record, rather than what is planned. */
    private static boolean isTold(CaseDesk desk) {
        return !desk.has(CasePageName.STEP_SHEET)
                && (desk.treatment().sources().retelling().isPresent() || desk.worked().isOnRecordAlone());
    }

    private static String doneLead(CaseDesk desk) {
        return desk.has(CasePageName.STEP_SHEET) ? "study.done-lead"
                : desk.treatment().sources().retelling().isPresent() ? "study.done-told"
                : desk.worked().isOnRecordAlone() ? "study.done-recorded" : "study.done-planned";
    }

    /** A solution by its name; where no preparation sheet tells how strong it is, with its strength, as far as that is for the public. */
    private static RichText prepared(Sheet sheet, CaseDesk desk, Solution solution) {
        RichText name = sheet.linked(solution.name());
        RecipeMaker maker = new RecipeMaker(sheet, desk);
        return desk.has("preparation") && desk.clearance().strengths() ? name
                : (desk.clearance().strengths() ? maker.strength(solution) : maker.open(solution))
                        .map(strength -> name.then(" (" + strength + ")")).orElse(name);
    }

    /**
     * What was done; without a step sheet, which would show them, with what cannot be worked out, the publication's words and, of a
     * retold case, the settings.
     */
    private static RichText instruction(Sheet sheet, CaseDesk desk, Step step) {
        RichText told = sheet.linked(new MeetingWords(sheet, desk).instruction(step));
        if (desk.has(CasePageName.STEP_SHEET)) {
            return told;
        }
        RichText set = desk.treatment().sources().retelling().isEmpty() ? told : told.then(settings(sheet, desk, step));
        RichText whole = set.then(new UntoldAmounts(desk, step).sentences(sheet.words()).stream().map(sentence -> " " + sentence)
                .collect(Collectors.joining()));
        return desk.treatment().sources().of(step)
                .map(passage -> whole.then(" (").then(new PassageMaker(sheet).make(passage)).then(")")).orElse(whole);
    }

    private static boolean isLiquid(CaseDesk desk, String id) {
        return desk.treatment().solution(id).isPresent() || kind(desk, id).filter(MaterialKind.LIQUID::equals).isPresent();
    }

    /** Whether it wets the sheet and is no liquid by itself: a gel, a poultice, a paste, an adhesive. */
    private static boolean isWetMass(CaseDesk desk, String id) {
        return !isLiquid(desk, id) && kind(desk, id).filter(MaterialKind::isWet).isPresent();
    }

    private static Optional<MaterialKind> kind(CaseDesk desk, String id) {
        return Optional.ofNullable(desk.library().materials().get(id)).flatMap(material -> MaterialKind.of(material.kind()));
    }

    /** How a step was set, and which liquids it used, as a sentence of its own; nothing where its parts tell nothing. */
    private static RichText settings(Sheet sheet, CaseDesk desk, Step step) {
        List<Fact> facts = new ArrayList<>(PartFacts.applied(sheet.words(), step).stream().toList());
        step.parts().forEach(part -> facts.addAll(part.ask(new PartFacts(sheet, desk))));
        Map<String, List<String>> used = new LinkedHashMap<>();
        used.put("study.liquids", step.uses().stream().filter(id -> isLiquid(desk, id)).toList());
        used.put("study.wet", step.uses().stream().filter(id -> isWetMass(desk, id)).toList());
        used.forEach((name, ids) -> {
            if (!ids.isEmpty()) {
                facts.add(new Fact(sheet.words().say(name), PartFacts.things(sheet, desk, ids)));
            }
        });
        List<RichText> settings = facts.stream().map((Fact fact) -> RichText.of(fact.name() + sheet.words().say("list.colon"))
                .then(fact.value())).toList();
        return settings.isEmpty() ? RichText.of("") : RichText.of(" ").then(RichText.joined("; ", settings)).then(".");
    }

    /** How long a step was to take; of a bath that was run more or less often than planned, how often too. */
    private static String takes(Sheet sheet, Step step, Timeline.TimedStep timed) {
        Words words = sheet.words();
        String takes = new StepLength(sheet).of(step, timed);
        return step.part(Part.Bath.class).flatMap(bath -> bath.onRecord().filter(read -> read != bath.baths())
                .map(read -> words.say("study.takes-baths", "takes", takes, "planned", words.count("record-days.bath", bath.baths()),
                        "read", words.count("record-days.bath", read)))).orElse(takes);
    }

    /** The steps that belong to no arm of a trial, which is told as a table of its arms. */
    private static List<Step> besideTrials(TreatmentCase treatment) {
        return treatment.steps().stream().filter(step -> treatment.trials().stream()
                .allMatch(trial -> trial.armOf(step).isEmpty())).toList();
    }

    /** How long it took by the record, before the times that were planned, where there was a plan. */
    private static String days(Sheet sheet, CaseDesk desk) {
        Words words = sheet.words();
        String kind = desk.worked().isOnRecordAlone() ? "recorded-" : "";
        List<LocalDate> days = desk.treatment().steps().stream().flatMap(step -> step.on().stream()).sorted().distinct().toList();
        if (!RecordedDays.areAllDays(desk.treatment())) {
            return words.say("study.time-" + kind + "when", "when", new RecordedDays(sheet, desk).when());
        }
        if (days.size() < 2) {
            return words.say("study.time-" + kind + "planned");
        }
        LocalDate first = days.get(0);
        LocalDate last = days.get(days.size() - 1);
        return words.say("study.time-" + kind + "days", "days", RecordedDays.count(words, first, last),
                "wait", new RecordedDays(sheet, desk).wait(desk.treatment()).map(wait -> " " + wait).orElse(""),
                "first", sheet.numbers().date(first), "last", sheet.numbers().date(last));
    }

    private static Optional<Section> timeline(Sheet sheet, CaseDesk desk) {
        Words words = sheet.words();
        List<KeyNumbers.Item> numbers = new ArrayList<>();
        TimelineChart times = new TimelineChart(sheet, desk);
        if (desk.worked().isOnRecordAlone()) {
            return times.isEmpty() ? Optional.empty() : Optional.of(new Section("time", words.say("study.time"),
                    Optional.of(days(sheet, desk)), List.of(times.data().table(Optional.empty()))));
        }
        for (String name : List.of("total", "hands-on")) {
            new WorkingMaker(sheet).once("timeline." + name).ifPresent(working -> numbers.add(
                    new KeyNumbers.Item(working, words.say("study.time-" + name), List.of())));
        }
        besideTrials(desk.treatment()).forEach(step -> new BathTimes(sheet, desk, step).working().ifPresent(working -> numbers.add(
                new KeyNumbers.Item(working, words.say("study.time-bath", "step", new StepTitle(words, desk.treatment()).of(step)),
                        new RecordedDays(sheet, desk).baths(step).stream().toList()))));
        if (numbers.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Section("time", words.say("study.time"),
                Optional.of(days(sheet, desk) + " " + words.say("study.time-money")),
                List.of(new KeyNumbers(numbers), times.chart(List.of(times.data().table(Optional.empty()))))));
    }

    /** The results in sentences, what was told in words or not measured, and one click down every number. */
    private static Section gave(Sheet sheet, CaseDesk desk, List<Result> others, Optional<Facts> aims, List<RichText> sentences) {
        Words words = sheet.words();
        List<KeyNumbers.Item> numbers = new ResultNumbers(sheet, desk).items();
        Optional<Facts> told = new ResultNumbers(sheet, desk).inWords(others);
        List<Block> blocks = new ArrayList<>();
        aims.ifPresent(blocks::add);
        // Large letters are for what the treatment was for: where aims are answered, the rest is told as they are.
        aims.filter(any -> !sentences.isEmpty()).ifPresent(any -> blocks.add(new Facts(List.of(
                new Fact(words.say("study.also-measured"), RichText.joined(" ", sentences))))));
        List<RichText> says = aims.isPresent() ? List.of() : !sentences.isEmpty() ? sentences
                : List.of(RichText.of(words.say(!numbers.isEmpty() ? "study.no-change"
                        : isMeasured(desk) ? isOneSided(desk) ? "study.one-side" : "study.not-compared" : "study.no-numbers")));
        blocks.add(new Findings(says, words.say("study.all-numbers"),
                numbers.isEmpty() ? List.of() : List.of(new KeyNumbers(numbers))));
        told.ifPresent(blocks::add);
        if (desk.has(CasePageName.RESULTS)) {
            blocks.add(new LinkList(List.of(new LinkList.Entry(sheet.link(
                    words.say(hasReadings(desk) ? "study.to-results" : "study.to-results-told"),
                    Paths.results(desk.treatment().id())), ""))));
        }
        return new Section("gave", words.say("study.gave"), aims.map(any -> words.say("study.gave-aims")), blocks);
    }

    /** Whether single readings stand among the results. */
    private static boolean hasReadings(CaseDesk desk) {
        return desk.treatment().results().stream().anyMatch(result -> result instanceof Result.Readings
                || result instanceof Result.Colour);
    }

    /** Whether a report states a number, though none that could be set against another. */
    private static boolean isMeasured(CaseDesk desk) {
        return desk.treatment().results().stream().anyMatch(Result.Stated.class::isInstance);
    }

    /** Whether no report states a number both before and after. */
    private static boolean isOneSided(CaseDesk desk) {
        return desk.treatment().results().stream().noneMatch(result -> result instanceof Result.Stated stated
                && stated.before().isPresent() && stated.after().isPresent());
    }

    /** Whether the story has a section of its own for what was not done, which then takes the options of the proposal. */
    private static boolean tellsNotDone(TreatmentCase treatment) {
        return treatment.story().sections().stream().anyMatch(section -> section.id().equals(NOT_DONE));
    }

    private static Optional<Facts> notDone(Sheet sheet, TreatmentCase treatment) {
        List<Fact> options = treatment.proposal().options().stream().map((Proposal.Option option) -> new Fact(
                sheet.words().say("study.considered", "option", option.option().strip()),
                sheet.linked(WholeSentence.of(option.whyNot())))).toList();
        return options.isEmpty() ? Optional.empty() : Optional.of(new Facts(options));
    }

    private static Optional<Section> otherPictures(Sheet sheet, CaseDesk desk, Set<String> placed) {
        List<Photo> photos = desk.pictures().stream().filter(picture -> !placed.contains(picture.id()))
                .map(picture -> photo(sheet, desk, picture, Optional.empty(), false)).toList();
        return photos.isEmpty() ? Optional.empty() : Optional.of(new Section("pictures",
                sheet.words().say("study.pictures"), Optional.empty(), List.of(new PhotoRow(photos))));
    }

    private static String linkedData(Sheet sheet, CaseDesk desk) {
        TreatmentCase treatment = desk.treatment();
        return JsonText.script(JsonText.object("@context", "https://schema.org", "@type", "LearningResource",
                "name", treatment.title(), "description", treatment.summary(), "inLanguage", treatment.language(),
                "learningResourceType", sheet.words().say("case-page.case-study"),
                "educationalLevel", treatment.level().map(level -> sheet.words().term("level", level.word())),
                "teaches", treatment.steps().stream()
                        .map(new StepTitle(sheet.words(), treatment)::kind).distinct().toList(),
                "license", Licences.address(treatment.publication().licence()),
                "isBasedOn", desk.basis(),
                "publisher", JsonText.object("@type", "Organization", "name", sheet.library().studio().name())));
    }
}
