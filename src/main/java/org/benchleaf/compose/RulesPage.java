package org.benchleaf.compose;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.model.Matrix;
import org.benchleaf.model.Rule;

/** What the checker asks of a treatment, why, where that was read, and what the studio changed. */
final class RulesPage implements SitePageMaker {

    @Override
    public String kind() {
        return "rules";
    }

    @Override
    public String path() {
        return Paths.RULES;
    }

    @Override
    public boolean inMenu() {
        return false;
    }

    /** Where a rule or a verdict of the matrix stands on the page. */
    static String anchor(String id) {
        return "rule-" + Paths.slug(id);
    }

    @Override
    public List<Page> make(SiteDesk desk) {
        Sheet sheet = desk.sheet(this);
        Words words = sheet.words();
        sheet.add(Opening.plain(words.say("way.rules"), words.say("rules.lead")));
        Map<String, List<Rule>> themes = new LinkedHashMap<>();
        desk.library().rules().forEach(rule -> themes.computeIfAbsent(rule.theme(), any -> new ArrayList<>()).add(rule));
        themes.forEach((theme, rules) -> sheet.add(new Section("theme-" + Paths.slug(theme), theme, Optional.empty(),
                rules.stream().map(rule -> entry(sheet, rule)).toList())));
        matrix(sheet, desk.library().matrix()).ifPresent(sheet::add);
        return List.of(sheet.page(words.say("way.rules"), words.say("rules.lead")));
    }

    private static Block entry(Sheet sheet, Rule rule) {
        Words words = sheet.words();
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of(words.say("rules.weight"), words.say("rules.weight-" + rule.weight().word())));
        facts.add(new Fact(words.say("rules.why"), sheet.linked(rule.why())));
        facts.add(new Fact(words.say("rules.backing"), backing(sheet, rule.backing())));
        rule.heldBy().ifPresent(held -> facts.add(Fact.of(words.say("rules.held-by"), held.how())));
        if (rule.ofStudio()) {
            facts.add(Fact.of(words.say("rules.studio"), words.say("rules.of-studio")));
        }
        rule.change().ifPresent(change -> facts.add(Fact.of(words.say("rules.changed"), change.reason())));
        return new RuleEntry(anchor(rule.id()), rule.statement(), rule.id(), facts);
    }

    private static Html backing(Sheet sheet, Rule.Backing backing) {
        List<String> parts = new ArrayList<>();
        backing.sources().forEach(key -> sheet.cite(key).ifPresent(citation -> parts.add("<a href=\""
                + Html.escape(citation.href()) + "\">[" + citation.number() + "] " + Html.escape(citation.text()) + "</a>")));
        if (parts.isEmpty()) {
            parts.add(Html.escape(sheet.words().say("rules.common-practice")));
        }
        parts.add(Html.escape(backing.status().words()));
        backing.note().filter(note -> !note.isBlank()).ifPresent(note -> parts.add(Html.escape(note)));
        return new Html(String.join("; ", parts));
    }

    private static Optional<Section> matrix(Sheet sheet, Matrix matrix) {
        if (matrix.rows().isEmpty()) {
            return Optional.empty();
        }
        Words words = sheet.words();
        List<Table.Column> columns = new ArrayList<>(List.of(new Table.Column(words.say("rules.medium"), false)));
        matrix.actions().forEach(action -> columns.add(new Table.Column(action.name(), false)));
        List<List<Html>> rows = new ArrayList<>();
        for (Matrix.Row row : matrix.rows()) {
            List<Html> cells = new ArrayList<>(List.of(sheet.linked(row.name())));
            for (Matrix.Action action : matrix.actions()) {
                cells.add(new Html("<span id=\"" + anchor(Matrix.cellId(row, action)) + "\">"
                        + Html.escape(row.on(action.id()).words()) + "</span>"));
            }
            rows.add(cells);
        }
        List<Block> blocks = new ArrayList<>(List.of(new Table("matrix-table", words.say("rules.matrix-caption"), columns,
                rows, Optional.empty())));
        List<Fact> changes = new ArrayList<>();
        matrix.rows().forEach(row -> row.changes().forEach((action, change) ->
                changes.add(Fact.of(row.name() + ", " + action, change.reason()))));
        if (!changes.isEmpty()) {
            blocks.add(new Facts(changes));
        }
        return Optional.of(new Section("matrix", words.say("rules.matrix"), Optional.of(words.say("rules.matrix-lead")),
                blocks));
    }
}
