package org.benchleaf.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.benchleaf.message.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every value and every list of a case may be {@code not known}, a list without brackets, but those that stand with a reason in
 * {@code not-known.yaml}.
 */
class NotKnownTest {

    private static final String NOT_KNOWN = "not known";

    @Test
    void every_value_may_be_not_known_but_those_that_publishing_cannot_do_without(@TempDir Path folder) {
        Bench bench = new Bench(folder);
        Map<String, String> refused = new TreeMap<>();
        Set<String> tried = new TreeSet<>();
        for (List<String> change : List.of(List.<String>of(), List.of("bleached"), List.of("damp"), List.of("fixed"), List.of("gel"),
                List.of("misted"), List.of("tape"), List.of("other-parts"))) {
            Map<String, Object> sound = Variation.of(change, "{}");
            List<String> before = slips(bench, sound);
            for (List<Object> way : ways(sound, List.of())) {
                String field = field(way);
                if (tried.add(field)) {
                    slips(bench, mapping(replaced(sound, way, 0))).stream().filter(code -> !before.contains(code)).findFirst()
                            .ifPresent(code -> refused.put(field, code));
                }
            }
        }
        assertThat(tried).hasSizeGreaterThan(80);
        assertThat(refused.keySet()).isEqualTo(Variation.reasons("not-known.yaml").keySet());
    }

    /** What is said of the form of a case, but that something is never used. */
    private static List<String> slips(Bench bench, Map<String, Object> written) {
        return bench.check(written).messages().all().stream().map(Message::code)
                .filter(code -> code.startsWith("FORM") && !code.equals("FORM-032")).toList();
    }

    /** The ways to every list and every single value, through groups and lists. */
    private static List<List<Object>> ways(Object node, List<Object> way) {
        List<List<Object>> ways = new ArrayList<>();
        if (node instanceof Map<?, ?> group) {
            group.forEach((key, value) -> ways.addAll(ways(value, longer(way, key))));
        } else if (node instanceof List<?> list) {
            ways.add(way);
            for (int at = 0; at < list.size(); at++) {
                ways.addAll(ways(list.get(at), longer(way, at)));
            }
        } else {
            ways.add(way);
        }
        return ways;
    }

    private static List<Object> longer(List<Object> way, Object key) {
        List<Object> longer = new ArrayList<>(way);
        longer.add(key);
        return longer;
    }

    private static String field(List<Object> way) {
        List<String> words = new ArrayList<>();
        way.forEach(key -> words.add(key instanceof Integer ? "-" : key.toString()));
        if (words.get(0).equals("solutions")) {
            words.set(1, "*");
        }
        return String.join(".", words);
    }

    private static Object replaced(Object node, List<Object> way, int depth) {
        if (depth == way.size()) {
            return NOT_KNOWN;
        }
        if (node instanceof Map<?, ?> group) {
            Map<Object, Object> copy = new LinkedHashMap<>(group);
            copy.put(way.get(depth), replaced(group.get(way.get(depth)), way, depth + 1));
            return copy;
        }
        List<Object> copy = new ArrayList<>((List<?>) node);
        int at = (Integer) way.get(depth);
        copy.set(at, replaced(copy.get(at), way, depth + 1));
        return copy;
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> mapping(Object node) {
        return (Map<String, Object>) node;
    }
}
