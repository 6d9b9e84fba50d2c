package org.benchleaf.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.benchleaf.check.Checked;
import org.benchleaf.model.CaseField;
import org.benchleaf.model.Condition;
import org.benchleaf.model.Rule;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.yaml.snakeyaml.Yaml;

/** Takes each fact that a rule rests on out of the case that trips it: the rule may ask, but not fall silent. */
class MissingFactsTest {

    private static final Path EXCEPTIONS = Variation.FOLDER.resolve("silent-without.yaml");

    private static Bench bench;

    @BeforeAll
    static void setUp(@TempDir Path folder) {
        bench = new Bench(folder);
    }

    static Stream<Rule> rules() {
        return EveryRuleTest.askedOfTheCase();
    }

    @ParameterizedTest
    @MethodSource("rules")
    void a_rule_does_not_fall_silent_when_a_fact_is_missing(Rule rule) {
        Set<String> silent = new TreeSet<>();
        for (CaseField field : fields(rule)) {
            Map<String, Object> root = Variation.of(Variation.FOLDER.resolve(rule.id()).resolve("trips.yaml"));
            Checked checked = without(root, field) ? bench.check(root) : null;
            // Where the format itself wants the fact, the case is refused before the rules are asked.
            if (checked != null && Bench.otherErrors(checked).isEmpty() && !Bench.spoken(checked).contains(rule.id())) {
                silent.add(field.word());
            }
        }
        assertThat(silent).isEqualTo(exceptions().getOrDefault(rule.id(), Map.of()).keySet());
    }

    /** Not read, or not known for a reason: what the paper is stays open all the same, and no rule on papers falls silent. */
    @Test
    void a_paper_of_which_the_kind_was_not_read_is_asked_after_as_one_that_is_not_known() {
        Set<String> open = spokenOfPaper("not known");
        assertThat(open).isNotEmpty().isEqualTo(spokenOfPaper("not read")).isEqualTo(spokenOfPaper("not known (the notebook is lost)"));
        assertThat(spokenOfPaper("rag")).isNotEqualTo(open);
    }

    @SuppressWarnings("unchecked")
    private static Set<String> spokenOfPaper(String paper) {
        Map<String, Object> root = Variation.of(List.of(), "{}");
        ((Map<String, Object>) ((Map<String, Object>) root.get("object")).get("support")).put("paper", paper);
        return new TreeSet<>(Bench.spoken(bench.check(root)));
    }

    @Test
    void every_rule_that_is_asked_of_a_case_names_what_it_rests_on() {
        assertThat(rules()).allSatisfy(rule -> assertThat(rule.restsOn(CaseField::written)).as(rule.id()).isNotEmpty()
                .allMatch(fact -> !fact.isBlank()));
    }

    @Test
    void every_exception_has_a_reason() {
        assertThat(exceptions().values()).allSatisfy(fields -> assertThat(fields.values()).allMatch(why -> why.endsWith(".")));
    }

    private static Set<CaseField> fields(Rule rule) {
        Set<CaseField> fields = new TreeSet<>(rule.where().fields());
        Stream.of(rule.needs(), rule.forbids()).flatMap(Optional::stream).map(Condition::fields).forEach(fields::addAll);
        return fields;
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Map<String, String>> exceptions() {
        try {
            return (Map<String, Map<String, String>>) new Yaml().load(Files.readString(EXCEPTIONS));
        } catch (IOException broken) {
            throw new java.io.UncheckedIOException(broken);
        }
    }

    /** Takes a field out wherever the case has it; whether it had it at all. */
    private static boolean without(Map<String, Object> root, CaseField field) {
        List<Map<String, Object>> owners = new ArrayList<>();
        switch (field.home()) {
            case CASE -> owners.add(root);
            case OBJECT -> owners.add(map(root.get("object")));
            case LAYER -> {
                owners.addAll(list(map(root.get("object")).get("media")));
                owners.add(map(map(root.get("object")).get("support")));
            }
            case STEP, HOUSING, MEASURING -> owners.addAll(list(root.get("steps")));
            case LIQUID -> map(root.get("solutions")).values().forEach(solution -> owners.add(map(solution)));
            case RESULT -> owners.addAll(list(root.get("results")));
            case PICTURE -> owners.addAll(list(root.get("pictures")));
        }
        boolean had = false;
        for (Map<String, Object> owner : owners) {
            had |= removed(owner, field.keys());
        }
        return had;
    }

    private static boolean removed(Map<String, Object> owner, List<String> keys) {
        if (keys.size() == 1) {
            return owner.remove(keys.get(0)) != null;
        }
        Object inner = owner.get(keys.get(0));
        List<Map<String, Object>> next =
                inner instanceof List<?> ? list(inner) : inner instanceof Map<?, ?> ? List.of(map(inner)) : List.of();
        boolean had = false;
        for (Map<String, Object> one : next) {
            had |= removed(one, keys.subList(1, keys.size()));
        }
        return had;
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> map(Object value) {
        return value instanceof Map<?, ?> ? (Map<String, Object>) value : new LinkedHashMap<>();
    }

    private static List<Map<String, Object>> list(Object value) {
        return value instanceof List<?> items
                ? items.stream().filter(Map.class::isInstance).map(MissingFactsTest::map).toList() : List.of();
    }
}
