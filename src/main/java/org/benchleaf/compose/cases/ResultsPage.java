package org.benchleaf.compose.cases;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.compose.chart.BathChart;
import org.benchleaf.compose.chart.TimelineChart;
import org.benchleaf.compose.part.BathTable;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.CasePageMaker;
import org.benchleaf.compose.part.CasePageName;
import org.benchleaf.compose.part.ChoiceFacts;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.compose.part.Evidence;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.site.RuleStatements;
import org.benchleaf.compose.site.RulesPage;
import org.benchleaf.json.JsonText;
import org.benchleaf.model.Finding;
import org.benchleaf.model.Part;
import org.benchleaf.model.Step;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.page.Block;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Facts;
import org.benchleaf.page.Findings;
import org.benchleaf.page.Link;
import org.benchleaf.page.LinkList;
import org.benchleaf.page.Opening;
import org.benchleaf.page.Page;
import org.benchleaf.page.Paths;
import org.benchleaf.page.Prose;
import org.benchleaf.page.Section;
import org.benchleaf.page.Table;
import org.benchleaf.page.Working;
import org.benchleaf.page.WorkingList;
import org.benchleaf.text.RichText;
import org.benchleaf.words.StepTitle;
import org.benchleaf.words.WholeSentence;
import org.benchleaf.words.Words;

/** What was measured, how, and what follows: charts with their tables, figures with their working, data as files. */
public final class ResultsPage implements CasePageMaker {

    private static final Set<Finding.Standing> PAST = EnumSet.of(Finding.Standing.NOT_RECORDED, Finding.Standing.NOT_WRITTEN_DOWN,
            Finding.Standing.NOT_DONE);

    private static final CasePageName NAME = new CasePageName(CasePageName.RESULTS, "results.html", Clearance.Output.RESULTS);
    /** Where on the page the files with the numbers are listed. */
    static final String DATA = "data";

    @Override
    public CasePageName name() {
        return NAME;
    }

    @Override
    public boolean applies(CaseDesk desk) {
        return CasePageMaker.super.applies(desk) && (!desk.treatment().results().isEmpty()
                || !desk.treatment().trials().isEmpty());
    }

    @Override
    public Page make(CaseDesk desk) {
        Sheet sheet = sheet(desk);
        Words words = sheet.words();
        ResultData data = new ResultData(sheet, desk);
        sheet.add(new Opening(Optional.of(words.say("case-page.results")), desk.treatment().title(),
                Optional.of(words.say("results.lead")), List.of(), Optional.empty()));
        data.results().forEach(result -> sheet.add(result.make()));
        data.trials().forEach(trial -> sheet.add(trial.measured()));
        baths(sheet, desk, data).ifPresent(sheet::add);
        new SpotTestTable(sheet, desk).onRecord().ifPresent(sheet::add);
        sheet.add(times(sheet, desk));
        new RecordedDays(sheet, desk).section().ifPresent(sheet::add);
        List<Fact> choices = new ChoiceFacts(sheet, desk).all();
        if (!choices.isEmpty()) {
            sheet.add(section(sheet, "choices", new Facts(choices)));
        }
        findings(sheet, desk).forEach(sheet::add);
        files(sheet, desk, data).ifPresent(sheet::add);
        kept(sheet, desk).ifPresent(sheet::add);
        sheet.linkedData(JsonText.script(data.linkedData()));
        return desk.finish(sheet, NAME, words.say("results.page-description", "case", desk.treatment().title()));
    }

    @Override
    public List<DataFile> files(CaseDesk desk) {
        return new ResultData(sheet(desk), desk).files();
    }

    /** The results as those of other cases are compared with them. */
    static List<Evidence> evidence(CaseDesk desk) {
        return new ResultData(sheet(desk), desk).results().stream().map(ResultSections::evidence).toList();
    }

    private static Sheet sheet(CaseDesk desk) {
        Sheet sheet = desk.sheet(NAME);
        return desk.clearance().strengths() ? sheet : sheet.withholdStrengths();
    }

    private static Optional<Section> baths(Sheet sheet, CaseDesk desk, ResultData data) {
        List<Block> blocks = new ArrayList<>();
        for (BathTable baths : data.baths()) {
            List<Table> shown = List.of(baths.data().table(desk.file(sheet, baths.data())));
            new BathChart(sheet, baths).chart(shown).ifPresentOrElse(blocks::add, () -> blocks.addAll(shown));
        }
        Words words = sheet.words();
        List<Fact> waters = waters(sheet, desk);
        if (!blocks.isEmpty() && !waters.isEmpty()) {
            blocks.add(new Facts(waters));
        }
        if (!blocks.isEmpty() && !desk.worked().isOnRecordAlone()) {
            blocks.add(new Prose(List.of(Prose.Passage.paragraph(words.say("baths.planned")))));
            blocks.add(new Facts(data.baths().stream().flatMap(baths -> baths.planned().stream()).distinct().toList()));
            List<Working> workings = data.baths().stream().flatMap(BathTable::workings).toList();
            if (!workings.isEmpty()) {
                blocks.add(new WorkingList(words.say("baths.workings"), workings));
            }
        }
        return blocks.isEmpty() ? Optional.empty() : Optional.of(new Section("baths", words.say("baths.heading"),
                Optional.of(words.say("baths.lead")), blocks));
    }

    /** What the water of each step was before anything was put into it, as far as it was read. */
    private static List<Fact> waters(Sheet sheet, CaseDesk desk) {
        return desk.treatment().steps().stream().flatMap(step -> step.part(Part.Bath.class).stream())
                .flatMap(bath -> bath.water().stream()).map(water -> Stream.of(
                        water.ph().map(read -> "pH " + sheet.numbers().written(read).text()),
                        water.conductivity().map(read -> sheet.numbers().written(read).text())).flatMap(Optional::stream).toList())
                .filter(read -> !read.isEmpty())
                .map(read -> Fact.of(sheet.words().say("baths.water"), sheet.words().list(read))).distinct().toList();
    }

    private static Section times(Sheet sheet, CaseDesk desk) {
        TimelineChart times = new TimelineChart(sheet, desk);
        Table table = times.data().table(desk.file(sheet, times.data()));
        return new Section("times-section", sheet.words().say("times.heading"), Optional.empty(), List.of(
                desk.worked().isOnRecordAlone() ? table : times.chart(List.of(table))));
    }

    /** How the rules of the trade were answered, for colleagues: answered or advised, not told, left open, not kept. */
    private static List<Section> findings(Sheet sheet, CaseDesk desk) {
        List<Section> sections = new ArrayList<>();
        answers(sheet, desk, Set.of(Finding.Standing.ANSWERED, Finding.Standing.ADVISED))
                .ifPresent(facts -> sections.add(section(sheet, "findings", facts)));
        answers(sheet, desk, Set.of(Finding.Standing.NOT_TOLD))
                .ifPresent(facts -> sections.add(section(sheet, "findings-not-told", facts)));
        answers(sheet, desk, Set.of(Finding.Standing.OPEN_IN_SOURCE))
                .ifPresent(facts -> sections.add(section(sheet, "findings-open", facts)));
        past(sheet, desk).ifPresent(sections::add);
        return sections;
    }

    /** The rules that were met, closed below all else: many, and none of them tells anything of this sheet. */
    private static Optional<Section> kept(Sheet sheet, CaseDesk desk) {
        List<LinkList.Entry> kept = desk.worked().findings().stream()
                .filter(finding -> finding.standing() == Finding.Standing.KEPT)
                .map(finding -> new LinkList.Entry(Link.to(finding.what(), sheet.way(Paths.RULES + "#"
                        + RulesPage.anchor(finding.rule()))), "")).toList();
        // A record with gaps shows of no rule that it was kept: many are, only because it tells nothing against them.
        return kept.isEmpty() || desk.worked().isOnRecordAlone() ? Optional.empty() : Optional.of(section(sheet, "findings-kept",
                new Findings(List.of(), sheet.words().say("findings-kept.open", "n", kept.size()), List.of(new LinkList(kept)))));
    }

    /** What the record of a treatment that is done leaves open, and what of the rules was not kept in it. */
    static Optional<Section> past(Sheet sheet, CaseDesk desk) {
        return answers(sheet, desk, PAST).map(facts -> section(sheet, "findings-past", facts));
    }

    private static Section section(Sheet sheet, String key, Block block) {
        return new Section(key, sheet.words().say(key + ".heading"), Optional.of(sheet.words().say(key + ".lead")), List.of(block));
    }

    private static Optional<Facts> answers(Sheet sheet, CaseDesk desk, Set<Finding.Standing> standings) {
        Map<String, String> statements = RuleStatements.of(sheet.words(), desk.library());
        Map<String, List<Fact>> byRule = new LinkedHashMap<>();
        for (Finding finding : desk.worked().findings()) {
            if (standings.contains(finding.standing())) {
                String rule = statements.getOrDefault(finding.rule(), finding.what());
                byRule.computeIfAbsent(rule, any -> new ArrayList<>()).add(new Fact(rule, Optional.of(finding.rule())
                        .filter(statements::containsKey).map(id -> sheet.way(Paths.RULES + "#" + RulesPage.anchor(id))),
                        answer(sheet, desk, finding)));
            }
        }
        List<Fact> facts = byRule.values().stream().flatMap(List::stream).toList();
        return facts.isEmpty() ? Optional.empty() : Optional.of(new Facts(facts));
    }

    private static RichText answer(Sheet sheet, CaseDesk desk, Finding finding) {
        Words words = sheet.words();
        String step = finding.step().flatMap(desk.treatment()::step).map(one -> atStep(words, desk.treatment(), one)).orElse("");
        String told = finding.standing() == Finding.Standing.OPEN_IN_SOURCE ? finding.what()
                : finding.standing() == Finding.Standing.NOT_TOLD ? notTold(words, finding)
                : finding.standing().isOfThePast() ? words.say("findings-past." + finding.standing().name().toLowerCase(Locale.ROOT)
                        .replace('_', '-'), "reason", WholeSentence.of(finding.reason().orElseThrow()))
                : finding.reason().map(reason -> words.say("findings.answered", "reason", reason))
                .orElseGet(() -> words.say("findings.advice", "what", finding.what()));
        return RichText.of(step + told);
    }

    /** The step, with its number where another has the same name. */
    private static String atStep(Words words, TreatmentCase treatment, Step step) {
        StepTitle title = new StepTitle(words, treatment);
        boolean alone = treatment.steps().stream().map(title::of).filter(title.of(step)::equals).count() == 1;
        return words.say(alone ? "findings.at-step" : "findings.at-numbered-step", "step", title.of(step),
                "n", treatment.steps().indexOf(step) + 1);
    }

    private static String notTold(Words words, Finding finding) {
        return finding.reason().map(reason -> words.say("findings-not-told.answered", "what", finding.what(), "reason", reason))
                .orElse(finding.what());
    }

    private static Optional<Section> files(Sheet sheet, CaseDesk desk, ResultData data) {
        Words words = sheet.words();
        List<LinkList.Entry> links = new ArrayList<>();
        if (desk.clearance().allows(Clearance.Output.DATA)) {
            data.tables().forEach(table -> links.add(new LinkList.Entry(sheet.link(table.file(),
                    desk.path(table.file())), table.caption() + ". " + table.about(words))));
        }
        if (data.hasFigures()) {
            links.add(new LinkList.Entry(sheet.link("figures.json", desk.path("figures.json")),
                    words.say("results.figures-about")));
        }
        return links.isEmpty() ? Optional.empty() : Optional.of(new Section(DATA, words.say("results.data"),
                Optional.of(words.say("results.data-lead", "licence", desk.treatment().publication().licence())),
                List.of(new LinkList(links))));
    }
}
