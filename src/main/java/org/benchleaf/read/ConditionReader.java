package org.benchleaf.read;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Place;
import org.benchleaf.message.RuleMessages;
import org.benchleaf.model.BuildingBlock;
import org.benchleaf.model.CaseField;
import org.benchleaf.model.Condition;
import org.benchleaf.model.Matrix;
import org.benchleaf.model.Part;
import org.benchleaf.model.Permission;
import org.benchleaf.model.StepKind;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.QuantityReader;

/** Reads conditions: building blocks with what they take, and the named terms made of them. */
final class ConditionReader {

    private static final String ANY_OF = "any of";
    private static final String NONE_OF = "none of";
    private static final String IS = "is";

    private final Map<String, Condition> terms;
    private final Collection<String> actions;
    private final Messages messages;

    ConditionReader(Map<String, Condition> terms, Collection<String> actions, Messages messages) {
        this.terms = terms;
        this.actions = actions;
        this.messages = messages;
    }

    /** Reads named terms, each of which may use those before it. */
    void terms(Node node) {
        if (node instanceof Node.Mapping mapping) {
            mapping.entries().forEach((name, entry) -> terms.put(name, condition(entry.value())));
        }
    }

    Condition condition(Node node) {
        List<Condition.Clause> clauses = new ArrayList<>();
        if (node instanceof Node.Mapping mapping) {
            mapping.entries().forEach((key, entry) -> clauses.addAll(clauses(key, entry)));
        } else {
            messages.add(RuleMessages.RULE_ROW_INCOMPLETE.at(node.place(), "key", "condition"));
        }
        return new Condition(clauses);
    }

    private List<Condition.Clause> clauses(String key, Node.Entry entry) {
        switch (key) {
            case ANY_OF:
                return List.of(new Condition.AnyOf(conditions(entry.value())));
            case NONE_OF:
                return List.of(new Condition.NoneOf(conditions(entry.value())));
            case IS:
                return RowFields.words(entry.value()).stream().flatMap(term -> term(term, entry.value())).toList();
            default:
                Optional<BuildingBlock> block = BuildingBlock.of(key);
                if (block.isEmpty()) {
                    unknown(entry.keyPlace(), key, "a building block of rules",
                            Stream.of(BuildingBlock.values()).map(BuildingBlock::word));
                }
                return block.<List<Condition.Clause>>map(known ->
                        List.of(new Condition.Block(known, given(known, entry.value())))).orElse(List.of());
        }
    }

    private List<Condition> conditions(Node node) {
        return node instanceof Node.Sequence sequence ? sequence.items().stream().map(this::condition).toList()
                : List.of(condition(node));
    }

    private Stream<Condition.Clause> term(String name, Node at) {
        if (!terms.containsKey(name)) {
            unknown(at.place(), name, "a term of the rule file", terms.keySet().stream().sorted());
        }
        return terms.getOrDefault(name, Condition.ALWAYS).clauses().stream();
    }

    private Condition.Given given(BuildingBlock block, Node node) {
        Condition.Given none = Condition.Given.NOTHING;
        return switch (block.takes()) {
            case NOTHING -> {
                if (!RowFields.words(node).equals(List.of("yes"))) {
                    unknown(node.place(), String.join(", ", RowFields.words(node)), "what this block takes", Stream.of("yes"));
                }
                yield none;
            }
            case WORDS -> withWords(words(block, node));
            case FIELDS -> withFields(RowFields.words(node).stream().flatMap(word -> field(word, node).stream()).toList());
            case FIELD_WORDS -> new Condition.Given(List.of(), List.of(), byField(node, RowFields::words), Map.of(), Map.of(),
                    Map.of(), Map.of(), Optional.empty());
            case FIELD_LIMITS -> new Condition.Given(List.of(), List.of(), Map.of(),
                    present(byField(node, this::quantity)), Map.of(), Map.of(), Map.of(), Optional.empty());
            case FIELD_PAIRS -> new Condition.Given(List.of(), List.of(), Map.of(), Map.of(),
                    present(byField(node, other -> RowFields.words(other).stream().findFirst()
                            .flatMap(word -> field(word, other)))), Map.of(), Map.of(), Optional.empty());
            case LIMIT -> withNumbers(numbers(Map.of("limit", node)));
            case CONDITION -> new Condition.Given(List.of(), List.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(),
                    Optional.of(condition(node)));
            case ACTION_VERDICTS -> withNamed(named(node, this::checkVerdict));
            case INDICATORS -> withNamed(named(node, (key, word, at) -> { }));
            case RATIO -> ratio(node);
            case METER -> withNumbers(numbers(entries(node, "buffers", "near")));
        };
    }

    private static Condition.Given withWords(List<String> words) {
        return new Condition.Given(words, List.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Optional.empty());
    }

    private static Condition.Given withFields(List<CaseField> fields) {
        return new Condition.Given(List.of(), fields, Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Optional.empty());
    }

    private static Condition.Given withNamed(Map<String, List<String>> named) {
        return new Condition.Given(List.of(), List.of(), Map.of(), Map.of(), Map.of(), named, Map.of(), Optional.empty());
    }

    private static Condition.Given withNumbers(Map<String, Quantity> numbers) {
        return new Condition.Given(List.of(), List.of(), Map.of(), Map.of(), Map.of(), Map.of(), numbers, Optional.empty());
    }

    private Condition.Given ratio(Node node) {
        List<CaseField> fields = entries(node, "of", "to").values().stream()
                .flatMap(value -> RowFields.words(value).stream().flatMap(word -> field(word, value).stream())).toList();
        return new Condition.Given(List.of(), fields, Map.of(), Map.of(), Map.of(), Map.of(),
                numbers(entries(node, "is", "within")), Optional.empty());
    }

    /** The values under these keys, in this order; each missing one is told. */
    private Map<String, Node> entries(Node node, String... keys) {
        Map<String, Node> found = new LinkedHashMap<>();
        for (String key : keys) {
            Optional<Node> value = node instanceof Node.Mapping mapping ? mapping.get(key) : Optional.empty();
            value.ifPresentOrElse(present -> found.put(key, present),
                    () -> messages.add(RuleMessages.RULE_ROW_INCOMPLETE.at(node.place(), "key", key)));
        }
        return found;
    }

    private Map<String, Quantity> numbers(Map<String, Node> nodes) {
        Map<String, Quantity> numbers = new LinkedHashMap<>();
        nodes.forEach((key, node) -> quantity(node).ifPresent(quantity -> numbers.put(key, quantity)));
        return numbers;
    }

    private List<String> words(BuildingBlock block, Node node) {
        List<String> words = RowFields.words(node);
        switch (block) {
            case KIND -> check(words, node, "a kind of step", Stream.of(StepKind.values()).map(StepKind::word).toList());
            case PART -> check(words, node, "a part of a step", Stream.of(Part.class.getPermittedSubclasses())
                    .map(part -> part.getSimpleName().toLowerCase(Locale.ROOT)).toList());
            case PERMITTED -> check(words, node, "a use that a permission can cover", Stream.of(Permission.Use.values())
                    .map(use -> use.name().toLowerCase(Locale.ROOT)).toList());
            default -> { }
        }
        return words;
    }

    private void check(List<String> words, Node at, String what, List<String> known) {
        words.stream().filter(word -> !known.contains(word)).forEach(word -> unknown(at.place(), word, what, known.stream()));
    }

    /** Says every word of a list that is not an action of the matrix. */
    void checkActions(Node node) {
        check(RowFields.words(node), node, "an action of the matrix", List.copyOf(actions));
    }

    private void checkVerdict(String action, String sign, Node at) {
        check(List.of(action), at, "an action of the matrix", List.copyOf(actions));
        check(List.of(sign), at, "a verdict of the matrix", Stream.of(Matrix.Verdict.values())
                .map(Matrix.Verdict::sign).toList());
    }

    private interface Check {
        void check(String key, String word, Node at);
    }

    private Map<String, List<String>> named(Node node, Check check) {
        Map<String, List<String>> named = new LinkedHashMap<>();
        if (node instanceof Node.Mapping mapping) {
            mapping.entries().forEach((key, entry) -> {
                named.put(key, RowFields.words(entry.value()));
                named.get(key).forEach(word -> check.check(key, word, entry.value()));
            });
        }
        return named;
    }

    private <T> Map<CaseField, T> byField(Node node, Function<Node, T> value) {
        Map<CaseField, T> values = new LinkedHashMap<>();
        if (node instanceof Node.Mapping mapping) {
            mapping.entries().forEach((key, entry) -> field(key, entry.value())
                    .ifPresent(field -> values.put(field, value.apply(entry.value()))));
        } else {
            messages.add(RuleMessages.RULE_ROW_INCOMPLETE.at(node.place(), "key", "field"));
        }
        return values;
    }

    private static <T> Map<CaseField, T> present(Map<CaseField, Optional<T>> values) {
        Map<CaseField, T> found = new LinkedHashMap<>();
        values.forEach((field, value) -> value.ifPresent(there -> found.put(field, there)));
        return found;
    }

    private Optional<CaseField> field(String word, Node at) {
        Optional<CaseField> field = CaseField.of(word);
        if (field.isEmpty()) {
            unknown(at.place(), word, "a field that rules can ask about", Stream.of(CaseField.values()).map(CaseField::word));
        }
        return field;
    }

    private Optional<Quantity> quantity(Node node) {
        String text = String.join("", RowFields.words(node));
        Optional<Quantity> quantity = QuantityReader.read(text).quantity()
                .or(() -> QuantityReader.read(text, Dimension.NUMBER).quantity());
        if (quantity.isEmpty()) {
            unknown(node.place(), text, "a quantity with its unit", Stream.of("15 min", "pH 8.5", "1 kPa"));
        }
        return quantity;
    }

    private void unknown(Place place, String word, String what, Stream<String> known) {
        messages.add(RuleMessages.RULE_WORD_UNKNOWN.at(place, "word", word, "what", what, "known", RowFields.list(known)));
    }
}
