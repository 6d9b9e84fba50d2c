package org.benchleaf.read;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.benchleaf.message.Messages;
import org.benchleaf.message.RuleMessages;
import org.benchleaf.model.Condition;
import org.benchleaf.model.Matrix;
import org.benchleaf.model.Rule;

/** Reads the rows of a rule file: rules, rows of the matrix, and what a studio changes in either. */
final class RuleRows {

    private static final String REASON = "reason";
    private static final Pattern HOLE = Pattern.compile("\\{([a-z][a-zA-Z]*)}");
    private static final List<String> HOLES = List.of("step", "kind", "medium", "liquid", "measure", "picture", "contact", "tested");
    private static final List<String> RULE_KEYS = List.of("id", "theme", "rule", "severity", "trainees", "past", "for each",
            "answers for", "where", "needs", "forbids", "what", "why", "fix", "source", "status", "note");
    private static final List<String> HELD_KEYS = List.of("id", "theme", "rule", "severity", "held by", "why", "source",
            "status", "note");
    private static final List<String> ROW_KEYS = List.of("id", "name", "also", "verdicts", "note", "source", "status");
    private static final List<String> CHANGE_KEYS = List.of("rule", "severity", "says", "where", "needs", "forbids", REASON);
    private static final List<String> CELL_KEYS = List.of("row", "action", "verdict", REASON);

    private final ConditionReader conditions;
    private final Set<String> sources;
    private final boolean ofStudio;
    private final Messages messages;

    RuleRows(ConditionReader conditions, Set<String> sources, boolean ofStudio, Messages messages) {
        this.conditions = conditions;
        this.sources = sources;
        this.ofStudio = ofStudio;
        this.messages = messages;
    }

    Optional<Rule> rule(Node.Mapping node) {
        RowFields row = new RowFields(node, messages);
        // A studio can only add rules that are asked of the case: nothing would hold any other.
        row.only(!ofStudio && node.get("held by").isPresent() ? HELD_KEYS : RULE_KEYS);
        Optional<Rule.HeldBy> heldBy = row.mapping("held by").flatMap(held -> heldBy(new RowFields(held, messages)));
        Optional<String> id = row.needed("id");
        Optional<String> theme = row.needed("theme");
        Optional<String> statement = row.needed("rule");
        Optional<Rule.Weight> weight = weight(row, row.needed("severity"));
        Optional<String> why = row.needed("why");
        Optional<Rule.Backing> backing = backing(row);
        Optional<Rule.Subject> subject = heldBy.isPresent() ? Optional.of(Rule.Subject.CASE) : subject(row);
        Optional<String> what = heldBy.isPresent() ? Optional.of("") : row.needed("what");
        Optional<String> fix = heldBy.isPresent() ? Optional.of("") : row.needed("fix");
        Stream.of(what, why, fix).flatMap(Optional::stream).forEach(text -> checkHoles(row, text));
        node.get("answers for").ifPresent(conditions::checkActions);
        Condition where = node.get("where").map(conditions::condition).orElse(Condition.ALWAYS);
        Optional<Condition> needs = node.get("needs").map(conditions::condition);
        Optional<Condition> forbids = node.get("forbids").map(conditions::condition);
        boolean whole = Stream.of(id, theme, statement, weight, why, backing, subject, what, fix)
                .allMatch(Optional::isPresent);
        return whole ? Optional.of(new Rule(id.get(), theme.get(), statement.get(), weight.get(), row.yes("trainees"),
                row.yes("past"), subject.get(), row.words("answers for"), where, needs, forbids, heldBy, what.get(), why.get(), fix.get(),
                backing.get(), ofStudio, Optional.empty(), node.place())) : Optional.empty();
    }

    Optional<Matrix.Action> action(Node.Mapping node) {
        RowFields row = new RowFields(node, messages);
        Optional<String> id = row.needed("id");
        Optional<String> name = row.needed("name");
        Optional<Node.Mapping> is = row.mapping("is");
        return id.isPresent() && name.isPresent() ? is.map(condition -> new Matrix.Action(id.get(), name.get(),
                row.yes("wet"), conditions.condition(condition))) : Optional.empty();
    }

    Optional<Matrix.Row> row(Node.Mapping node, Collection<String> actions) {
        RowFields row = new RowFields(node, messages);
        row.only(ROW_KEYS);
        Optional<String> id = row.needed("id");
        Optional<String> name = row.needed("name");
        Optional<Rule.Backing> backing = backing(row);
        Map<String, Matrix.Verdict> verdicts = new LinkedHashMap<>();
        RowFields cells = new RowFields(row.mapping("verdicts").orElse(new Node.Mapping(Map.of(), node.place())), messages);
        actions.forEach(action -> cells.needed(action).flatMap(sign -> verdict(cells, sign))
                .ifPresent(verdict -> verdicts.put(action, verdict)));
        List<String> also = row.words("also").stream().map(word -> word.toLowerCase(Locale.ROOT)).toList();
        return id.isPresent() && name.isPresent() && backing.isPresent() ? Optional.of(new Matrix.Row(id.get(), name.get(),
                also, verdicts, row.text("note"), backing.get(), ofStudio, Map.of(), node.place())) : Optional.empty();
    }

    /** A rule of the program as the studio changes it. */
    Optional<Rule> change(Node.Mapping node, Map<String, Rule> rules) {
        RowFields row = new RowFields(node, messages);
        row.only(CHANGE_KEYS);
        Optional<Rule> old = row.needed("rule").flatMap(id -> known(row, id, rules));
        Optional<String> reason = reason(row, row.text("rule").orElse(""));
        if (old.isEmpty() || reason.isEmpty()) {
            return Optional.empty();
        }
        if (old.get().heldBy().isPresent()) {
            messages.add(RuleMessages.RULE_HELD_ELSEWHERE.at(node.place(), "rule", old.get().id()));
            return Optional.empty();
        }
        List<String> changed = new ArrayList<>(node.entries().keySet());
        changed.removeAll(List.of("rule", REASON));
        Rule rule = old.get();
        return Optional.of(rule.changed(new Rule.Change(changed, reason.get(), node.place()),
                row.text("says").orElse(rule.statement()),
                row.text("severity").flatMap(word -> weight(row, Optional.of(word))).orElse(rule.weight()),
                node.get("where").map(conditions::condition).orElse(rule.where()),
                node.get("needs").map(conditions::condition).or(rule::needs),
                node.get("forbids").map(conditions::condition).or(rule::forbids)));
    }

    /** A row of the matrix with one verdict as the studio changes it. */
    Optional<Matrix.Row> cell(Node.Mapping node, Map<String, Matrix.Row> rows, Collection<String> actions) {
        RowFields row = new RowFields(node, messages);
        row.only(CELL_KEYS);
        Optional<Matrix.Row> old = row.needed("row").flatMap(id -> known(row, id, rows));
        Optional<String> action = row.needed("action").filter(id -> {
            if (!actions.contains(id)) {
                unknown(row, id, "an action of the matrix", actions.stream());
            }
            return actions.contains(id);
        });
        Optional<Matrix.Verdict> verdict = row.needed("verdict").flatMap(sign -> verdict(row, sign));
        Optional<String> reason = reason(row, row.text("row").orElse(""));
        if (old.isEmpty() || action.isEmpty() || verdict.isEmpty() || reason.isEmpty()) {
            return Optional.empty();
        }
        Map<String, Matrix.Verdict> verdicts = new LinkedHashMap<>(old.get().verdicts());
        verdicts.put(action.get(), verdict.get());
        Map<String, Rule.Change> changes = new LinkedHashMap<>(old.get().changes());
        changes.put(action.get(), new Rule.Change(List.of("verdict"), reason.get(), node.place()));
        Matrix.Row was = old.get();
        return Optional.of(new Matrix.Row(was.id(), was.name(), was.also(), verdicts, was.note(), was.backing(),
                was.ofStudio(), changes, was.place()));
    }

    /** A hole that nothing fills would stop the program when the rule speaks. */
    private void checkHoles(RowFields row, String text) {
        HOLE.matcher(text).results().map(hole -> hole.group(1)).filter(name -> !HOLES.contains(name)).forEach(name ->
                unknown(row, "{" + name + "}", "a hole that a rule's words can have",
                        HOLES.stream().map(known -> "{" + known + "}")));
    }

    private Optional<Rule.HeldBy> heldBy(RowFields held) {
        Optional<String> stage = held.needed("stage");
        Optional<String> how = held.needed("how");
        return stage.isPresent() && how.isPresent() ? Optional.of(new Rule.HeldBy(stage.get(), how.get())) : Optional.empty();
    }

    private Optional<Rule.Weight> weight(RowFields row, Optional<String> word) {
        Optional<Rule.Weight> weight = word.flatMap(Rule.Weight::of);
        if (word.isPresent() && weight.isEmpty()) {
            unknown(row, word.get(), "a severity", Stream.of(Rule.Weight.values()).map(Rule.Weight::word));
        }
        return weight;
    }

    private Optional<Rule.Subject> subject(RowFields row) {
        Optional<String> word = row.needed("for each");
        Optional<Rule.Subject> subject = word.flatMap(Rule.Subject::of);
        if (word.isPresent() && subject.isEmpty()) {
            unknown(row, word.get(), "what a rule can be asked of", Stream.of(Rule.Subject.values()).map(Rule.Subject::word));
        }
        return subject;
    }

    private Optional<Matrix.Verdict> verdict(RowFields row, String sign) {
        Optional<Matrix.Verdict> verdict = Matrix.Verdict.of(sign);
        if (verdict.isEmpty()) {
            unknown(row, sign, "a verdict of the matrix", Stream.of(Matrix.Verdict.values()).map(Matrix.Verdict::sign));
        }
        return verdict;
    }

    private Optional<Rule.Backing> backing(RowFields row) {
        List<String> keys = row.words("source").equals(List.of(Rule.Backing.NO_SOURCE)) ? List.of() : row.words("source");
        if (row.words("source").isEmpty()) {
            row.missing("source");
        }
        keys.stream().filter(key -> !sources.contains(key)).forEach(key -> messages.add(
                RuleMessages.RULE_SOURCE_UNKNOWN.at(row.row().place(), "source", key)));
        Optional<String> word = row.needed("status");
        Optional<Rule.Backing.Status> status = word.flatMap(Rule.Backing.Status::of);
        if (word.isPresent() && status.isEmpty()) {
            unknown(row, word.get(), "a status", Stream.of(Rule.Backing.Status.values())
                    .map(known -> known.name().toLowerCase(Locale.ROOT)));
        }
        return status.map(known -> new Rule.Backing(keys, known, row.text("note")));
    }

    private Optional<String> reason(RowFields row, String rule) {
        Optional<String> reason = row.text(REASON);
        if (reason.isEmpty()) {
            messages.add(RuleMessages.RULE_CHANGE_WITHOUT_REASON.at(row.row().place(), "rule", rule));
        }
        return reason;
    }

    private <T> Optional<T> known(RowFields row, String id, Map<String, T> all) {
        if (!all.containsKey(id)) {
            messages.add(RuleMessages.RULE_CHANGE_UNKNOWN.at(row.row().place(), "rule", id));
        }
        return Optional.ofNullable(all.get(id));
    }

    private void unknown(RowFields row, String word, String what, Stream<String> known) {
        messages.add(RuleMessages.RULE_WORD_UNKNOWN.at(row.row().place(), "word", word, "what", what,
                "known", RowFields.list(known)));
    }
}
