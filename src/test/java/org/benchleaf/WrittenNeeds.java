package org.benchleaf;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** What steps need by the table of such things and by the case file, both read as they are written, without the program. */
final class WrittenNeeds {

    private WrittenNeeds() {
    }

    /** The rows of the table. */
    static List<Map<?, ?>> rows() throws IOException {
        List<?> rows = (List<?>) yaml(Files.readString(Path.of("src/main/resources/reference/bench-needs.yaml"), StandardCharsets.UTF_8));
        return new ArrayList<>(rows.stream().map(row -> (Map<?, ?>) row).toList());
    }

    /** Each thing that some of the steps need, with these steps. */
    static Map<String, Set<String>> of(Collection<Map<?, ?>> steps, Map<?, ?> solutions) throws IOException {
        Map<String, Set<String>> needed = new TreeMap<>();
        for (Map<?, ?> row : rows()) {
            steps.stream().filter(step -> work(step, solutions).stream().anyMatch(((List<?>) row.get("for"))::contains)).forEach(step ->
                    needed.computeIfAbsent((String) row.get("name"), any -> new TreeSet<>()).add((String) step.get("id")));
        }
        return needed;
    }

    private static Set<String> work(Map<?, ?> step, Map<?, ?> solutions) {
        Set<String> work = new TreeSet<>(Set.of((String) step.get("kind")));
        step.forEach((key, part) -> {
            if (part instanceof Map<?, ?> named) {
                work.add((String) key);
                made((String) named.get("with"), solutions, work);
                made((String) named.get("of"), solutions, work);
            }
        });
        if (step.get("uses") instanceof List<?> uses) {
            uses.forEach(id -> made((String) id, solutions, work));
        }
        if (step.get("mend") instanceof Map<?, ?> mend) {
            work.add(mend.get("activated") instanceof Map<?, ?> activated ? "woken by " + activated.get("by") : "laid wet");
            if (!Set.of("yes", "true").contains(String.valueOf(mend.get("patch")))) {
                work.add("torn strips");
            }
        }
        if (step.get("fixing") instanceof Map<?, ?> fixing) {
            work.add((String) fixing.get("method"));
        }
        if (step.get("bath") instanceof Map<?, ?> bath && bath.containsKey("temperature")) {
            work.add("bath at a temperature");
        }
        if (step.toString().contains("raking")) {
            work.add("looked at in raking light");
        }
        return work;
    }

    /** How a solution is made, and of what it is made. */
    private static void made(String id, Map<?, ?> solutions, Set<String> work) {
        if (id == null || !(solutions.get(id) instanceof Map<?, ?> solution)) {
            return;
        }
        if (solution.get("parts") instanceof Map<?, ?> parts) {
            work.add(Set.of("yes", "true").contains(String.valueOf(parts.get("cooked"))) ? "cooked" : "mixed");
            if ("mass".equals(parts.get("by"))) {
                work.add("weighed");
            }
        } else if (solution.containsKey("saturate")) {
            work.addAll(Set.of("saturated", "weighed"));
        } else if (solution.containsKey("dissolve")) {
            work.addAll(Set.of("dissolved", "weighed"));
        } else if (solution.containsKey("mix")) {
            work.add("mixed");
        } else if (solution.get("adjust") instanceof Map<?, ?> adjust) {
            work.add("brought to its pH");
            made((String) adjust.get("with"), solutions, work);
        }
    }

    private static Object yaml(String text) {
        return new Yaml(new SafeConstructor(new LoaderOptions())).load(text);
    }
}
