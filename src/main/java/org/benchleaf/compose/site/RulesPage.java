package org.benchleaf.compose.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.part.SiteDesk;
import org.benchleaf.compose.part.SitePageMaker;
import org.benchleaf.compose.part.SitePageName;
import org.benchleaf.model.CaseField;
import org.benchleaf.model.Matrix;
import org.benchleaf.model.Rule;
import org.benchleaf.page.Block;
import org.benchleaf.page.Citation;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Facts;
import org.benchleaf.page.Link;
import org.benchleaf.page.LinkGroups;
import org.benchleaf.page.Opening;
import org.benchleaf.page.Page;
import org.benchleaf.page.Paths;
import org.benchleaf.page.RuleEntry;
import org.benchleaf.page.Section;
import org.benchleaf.page.Table;
import org.benchleaf.text.Inline;
import org.benchleaf.text.RichText;
import org.benchleaf.words.WholeSentence;
import org.benchleaf.words.Words;

/** What the checker asks of a treatment, why, where that was read, and what the studio changed. */
public final class RulesPage implements SitePageMaker {

    private static final SitePageName NAME = new SitePageName("rules", Paths.RULES, false);

    @Override
    public SitePageName name() {
        return NAME;
    }

    /** Where a rule or a verdict of the matrix stands on the page. */
    public static String anchor(String id) {
        return "rule-" + Paths.slug(id);
    }

    @Override
    public List<Page> make(SiteDesk desk) {
        Sheet sheet = desk.sheet(NAME);
        Words words = sheet.words();
        sheet.add(Opening.plain(words.say("way.rules"), words.say("rules.lead")));
        Map<String, List<Rule>> themes = new LinkedHashMap<>();
        desk.library().rules().forEach(rule -> themes.computeIfAbsent(rule.theme(), any -> new ArrayList<>()).add(rule));
        sheet.add(contents(sheet, desk.library().rules(), themes));
        sheet.add(changes(sheet, desk.library().rules(), desk.library().matrix()));
        themes.forEach((theme, rules) -> sheet.add(new Section("theme-" + Paths.slug(theme), theme, Optional.empty(),
                rules.stream().map(rule -> entry(sheet, rule)).toList())));
        matrix(sheet, desk.library().matrix()).ifPresent(sheet::add);
        return List.of(sheet.page(words.say("way.rules"), words.say("rules.lead")));
    }

    /** How many rules there are, and the ways to their themes and to the table. */
    private static Section contents(Sheet sheet, List<Rule> rules, Map<String, List<Rule>> themes) {
        Words words = sheet.words();
        List<LinkGroups.Entry> entries = new ArrayList<>();
        themes.forEach((theme, ofTheme) ->
                entries.add(new LinkGroups.Entry(Link.to(sheet.words().say("rules.on", "theme", theme), "#theme-" + Paths.slug(theme)),
                words.count("rules.in-theme", ofTheme.size()))));
        entries.add(new LinkGroups.Entry(Link.to(words.say("rules.matrix"), "#matrix"),
                words.say("rules.matrix-size")));
        return new Section("contents", words.say("rules.contents"), Optional.of(words.say("rules.count",
                "n", rules.size(), "stop", weighing(rules, Rule.Weight.STOP), "reason", weighing(rules, Rule.Weight.REASON),
                "advice", weighing(rules, Rule.Weight.ADVICE))),
                List.of(new LinkGroups(List.of(new LinkGroups.Group("themes", "", entries)))));
    }

    private static long weighing(List<Rule> rules, Rule.Weight weight) {
        return rules.stream().filter(rule -> rule.weight() == weight).count();
    }

    /** What the studio asks differently, each with its reason. */
    private static Section changes(Sheet sheet, List<Rule> rules, Matrix matrix) {
        Words words = sheet.words();
        List<Fact> facts = new ArrayList<>();
        rules.forEach(rule -> rule.change().ifPresent(change -> facts.add(new Fact(rule.statement(),
                Optional.of("#" + anchor(rule.id())), RichText.of(change.reason())))));
        rules.stream().filter(Rule::ofStudio).forEach(rule -> facts.add(Fact.of(rule.statement(),
                words.say("rules.of-studio"))));
        matrix.rows().forEach(row -> matrix.actions().forEach(action -> Optional.ofNullable(row.changes().get(action.id()))
                .ifPresent(change -> facts.add(Fact.of(cell(words, row, action), change.reason())))));
        return new Section("changes", words.say("rules.changed-heading"), facts.isEmpty()
                ? Optional.of(words.say("rules.changed-none")) : Optional.empty(),
                facts.isEmpty() ? List.of() : List.of(new Facts(facts)));
    }

    /** What a cell of the table of media and actions is about, such as "iron-gall ink, pressure". */
    static String cell(Words words, Matrix.Row row, Matrix.Action action) {
        return words.say("rules.cell", "medium", row.name(), "action", Words.small(action.name()));
    }

    private static Block entry(Sheet sheet, Rule rule) {
        Words words = sheet.words();
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of(words.say("rules.weight"), words.say("rules.weight-" + rule.weight().word())));
        facts.add(Fact.of(words.say("rules.asked-of"), rule.speaksOf().words()));
        Set<String> grounds = rule.restsOn(CaseField::says);
        if (!grounds.isEmpty()) {
            facts.add(Fact.of(words.say("rules.rests-on"), String.join(", ", grounds)));
        }
        facts.add(new Fact(words.say("rules.why"), sheet.linked(rule.why())));
        facts.add(new Fact(words.say("rules.backing"), backing(sheet, rule.backing(), rule.backing().note())));
        rule.heldBy().ifPresent(held -> facts.add(Fact.of(words.say("rules.held-by"), words.say("rules.held-how",
                "how", held.how(), "stage", held.stage()))));
        if (rule.ofStudio()) {
            facts.add(Fact.of(words.say("rules.studio"), words.say("rules.of-studio")));
        }
        rule.change().ifPresent(change -> facts.add(Fact.of(words.say("rules.changed"), words.say("rules.changed-what",
                "reason", change.reason(), "keys", String.join(", ", change.changed())))));
        return new RuleEntry(anchor(rule.id()), rule.statement(), rule.id(), facts);
    }

    private static RichText backing(Sheet sheet, Rule.Backing backing, Optional<String> beside) {
        List<RichText> parts = new ArrayList<>();
        backing.sources().forEach(key -> sheet.cite(key).map(Citation::link).map(RichText::of).ifPresent(parts::add));
        if (parts.isEmpty()) {
            parts.add(RichText.of(sheet.words().say("rules.common-practice")));
        }
        if (!backing.sources().isEmpty() || backing.status() != Rule.Backing.Status.PRACTICE) {
            parts.add(RichText.of(backing.status().words()));
        }
        beside.filter(note -> !note.isBlank()).ifPresent(note -> parts.add(RichText.of(note)));
        return RichText.joined("; ", parts);
    }

    private static Optional<Section> matrix(Sheet sheet, Matrix matrix) {
        if (matrix.rows().isEmpty()) {
            return Optional.empty();
        }
        Words words = sheet.words();
        List<Fact> legend = new ArrayList<>();
        for (Matrix.Verdict verdict : Matrix.Verdict.values()) {
            legend.add(Fact.of(verdict(sheet, verdict), words.say("rules.legend-" + key(verdict))));
        }
        return Optional.of(new Section("matrix", words.say("rules.matrix"), Optional.of(words.say("rules.matrix-lead")),
                List.of(new Facts(legend), table(sheet, matrix), new Facts(notes(sheet, matrix)))));
    }

    private static String key(Matrix.Verdict verdict) {
        return verdict.name().toLowerCase(Locale.ROOT);
    }

    private static String verdict(Sheet sheet, Matrix.Verdict verdict) {
        return sheet.words().say("rules.verdict-" + key(verdict));
    }

    private static Table table(Sheet sheet, Matrix matrix) {
        Words words = sheet.words();
        List<Table.Column> columns = new ArrayList<>(List.of(new Table.Column(words.say("rules.medium"), false)));
        matrix.actions().forEach(action -> columns.add(new Table.Column(action.name(), false)));
        List<List<RichText>> rows = new ArrayList<>();
        for (Matrix.Row row : matrix.rows()) {
            List<RichText> cells = new ArrayList<>(List.of(sheet.linked(row.name())));
            for (Matrix.Action action : matrix.actions()) {
                boolean stop = row.on(action.id()) == Matrix.Verdict.STOP;
                Inline word = new Inline.Text(verdict(sheet, row.on(action.id())));
                cells.add(RichText.of(new Inline.Anchor(anchor(Matrix.cellId(row, action)),
                        List.of(stop ? new Inline.Strong(List.of(word)) : word))));
            }
            rows.add(cells);
        }
        return new Table("matrix-table", words.say("rules.matrix-caption"), columns, rows, Optional.empty());
    }

    /** What each pair is about, and where that was read. */
    private static List<Fact> notes(Sheet sheet, Matrix matrix) {
        return matrix.rows().stream().map(row -> new Fact(row.name(), RichText.of(
                row.note().or(row.backing()::note).map(note -> WholeSentence.of(note) + " ").orElse("") + "(")
                .then(backing(sheet, row.backing(), Optional.empty())).then(")"))).toList();
    }
}
