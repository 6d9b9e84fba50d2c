package org.benchleaf.command;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchleaf.model.FirstStep;
import org.benchleaf.model.MissingValue;
import org.benchleaf.model.StepKind;
import org.benchleaf.read.YamlText;

/** Writes the file of a new case: what was answered, and {@code not yet known} where nothing was. */
final class FirstCase {

    private static final String OPEN = MissingValue.Kind.NOT_YET_KNOWN.word();
    /** What a step of a retold case holds, whatever its kind: a publication seldom tells the parts that a bench needs. */
    private static final List<String> TOLD = List.of("uses: " + OPEN, "source: {where: " + OPEN + "}");
    private static final Pattern NOT_OF_AN_ID = Pattern.compile("[^a-z0-9]+");

    private final FirstAnswers answers;
    private final Set<String> materials;
    private final Set<String> sources;
    private final Map<StepKind, FirstStep> kinds;
    private final StringBuilder text = new StringBuilder();

    /**
     * Prepares to write.
     *
     * @param materials the ids of what the studio uses
     * @param sources the keys of the publications in the studio's list
     * @param kinds what a new step of a kind usually needs
     */
    FirstCase(FirstAnswers answers, Set<String> materials, Set<String> sources, Map<StepKind, FirstStep> kinds) {
        this.answers = answers;
        this.materials = materials;
        this.sources = sources;
        this.kinds = kinds;
    }

    /** The text of the file. */
    String write(String language) {
        line("---").line("title: " + value(answers.title())).line("summary: " + OPEN).line("level: " + OPEN)
                .line("language: " + language).line("");
        publication();
        source();
        object();
        condition();
        proposal();
        Map<String, String> media = ids(answers.media().stream().map(medium -> medium.get(0)).toList());
        Map<String, String> liquids = ids(answers.liquids());
        tests(media.keySet(), liquids.keySet());
        solutions(liquids);
        steps();
        results();
        return line("---").line("").line("<!-- The story of the treatment begins here, with '## ' before each heading. -->")
                .text.toString();
    }

    private FirstCase line(String line) {
        text.append(line).append('\n');
        return this;
    }

    /** Others are asked for a retold case: its source's licence stands in the place of the owner's permissions. */
    private void publication() {
        line("publication:").line("  state: draft").line("  licence: " + OPEN)
                .line("  strengths for the public: " + OPEN);
        if (isRetold()) {
            line("  source licence: " + value(answers.source().licence())).line("");
        } else {
            line("  permissions:").line("    - {for: [treatment], from: owner, on: " + value(answers.agreed()) + "}")
                    .line("    - {for: [teaching, text, pictures], from: owner, on: " + OPEN + "}").line("");
        }
    }

    private boolean isRetold() {
        return answers.source().isRetold();
    }

    private void source() {
        if (isRetold()) {
            line("source:").line("  of: " + value(sourceKey()));
            answers.source().rest().forEach((key, said) -> line("  " + key + ": " + value(said)));
            line("");
        }
    }

    /** The key of the publication: as it was said if the studio's list has it, else what was said as a key. */
    private String sourceKey() {
        String said = answers.source().of();
        return sources.contains(said) ? said : String.join("", ids(List.of(said)).keySet());
    }

    /** What to enter in the studio's list for a publication that is not in it yet; empty where there is nothing to enter. */
    List<String> toEnter() {
        String said = answers.source().of();
        return !isRetold() || sources.contains(said) ? List.of() : List.of(
                "No source in sources.yaml has the key '" + sourceKey() + "', under which the case names it. Enter it there:",
                "  " + sourceKey() + ":", "    author: …", "    year: …", "    title: …",
                "    where: …", "    status: read in part");
    }

    private void object() {
        line("object:").line("  kind: " + value(answers.object().get(0))).line("  technique: " + value(answers.object().get(1)))
                .line("  support: {paper: " + value(answers.paper().get(0)) + ", grammage: "
                        + value(answers.paper().get(1)) + ", state: " + OPEN + "}")
                .line("  size: " + size(answers.size()));
        list("  media", rows(answers.media(), "is", "colour").stream().map(row ->
                row.substring(0, row.length() - 1) + ", state: " + OPEN + "}").toList());
        if (!answers.items().isEmpty()) {
            list("  items", ids(answers.items()).entrySet().stream().map(item -> "{id: " + item.getKey() + ", is: "
                    + value(item.getValue()) + "}").toList());
        }
        if (!isRetold()) {
            line("  private:").line("    owner: " + value(answers.owner())).line("    people: " + OPEN);
        }
        line("");
    }

    private static String size(List<String> sides) {
        return sides.size() == 1 ? value(sides.get(0)) : "{height: " + value(sides.get(0)) + ", width: " + value(sides.get(1)) + "}";
    }

    private void condition() {
        List<String> extents = answers.extents();
        List<String> rows = rows(answers.damages(), "what", "where");
        list("condition", IntStream.range(0, rows.size()).mapToObj(at -> rows.get(at).substring(0, rows.get(at).length() - 1)
                + ", extent: " + value(extents.get(at)) + "}").toList());
    }

    private void proposal() {
        if (isRetold()) {
            aims();
            return;
        }
        line("proposal:");
        line("  aims: " + (answers.aims().isEmpty() ? OPEN : flow(answers.aims())));
        list("  options", answers.instead().stream().map(option -> "{option: " + value(option.get(0)) + ", why not: "
                + value(option.get(1)) + "}").toList());
        line("  approved: " + value(answers.agreed()));
        List<String> proposed = answers.kinds().stream().map(step -> step.get(0)).filter(kind -> !kind.equals(FirstAnswers.OTHER))
                .distinct().toList();
        line("  steps: " + (proposed.isEmpty() ? OPEN : flow(proposed)));
        List<String> risky = proposed.stream().filter(kind -> needed(kind).risky()).toList();
        if (!risky.isEmpty()) {
            line("  risks:");
            risky.forEach(kind -> line("    " + kind + ": " + OPEN));
        }
        line("");
    }

    /** Of a retold case: what its publication was for, if that was said; it proposes nothing and asks nobody. */
    private void aims() {
        if (!answers.aims().isEmpty()) {
            line("proposal:").line("  aims: " + flow(answers.aims())).line("");
        }
    }

    private FirstStep needed(String kind) {
        return StepKind.of(kind).map(kinds::get).orElse(FirstStep.PLAIN);
    }

    /** Each medium is tested with each liquid; the author strikes out what will never meet. Others made the tests of a retold case. */
    private void tests(Set<String> media, Set<String> liquids) {
        if (isRetold()) {
            return;
        }
        List<String> rows = new ArrayList<>();
        media.forEach(medium -> liquids.forEach(liquid -> rows.add("{of: " + medium + ", with: " + liquid + ", dwell: "
                + OPEN + ", result: " + OPEN + "}")));
        list("tests", rows);
    }

    /** What is not one of the studio's materials is made for the case. */
    private void solutions(Map<String, String> liquids) {
        List<Map.Entry<String, String>> made = liquids.entrySet().stream()
                .filter(liquid -> !materials.contains(liquid.getKey())).toList();
        if (!made.isEmpty()) {
            line("solutions:");
            made.forEach(liquid -> line("  " + liquid.getKey() + ":").line("    name: " + value(liquid.getValue())));
            line("");
        }
    }

    private void steps() {
        if (answers.steps().isEmpty()) {
            line("steps: " + OPEN);
            return;
        }
        line("steps:");
        List<List<String>> said = answers.kinds();
        List<String> ids = List.copyOf(ids(said.stream().map(step -> step.get(0)).toList()).keySet());
        for (int at = 0; at < said.size(); at++) {
            step(ids.get(at), said.get(at).get(0), said.get(at).get(1));
            List<String> before = before(said, at).stream().map(ids::get).toList();
            if (!before.isEmpty()) {
                line("    after: [" + String.join(", ", before) + "]");
            }
        }
    }

    private void step(String id, String kind, String item) {
        line("  - id: " + id).line("    kind: " + kind);
        if (kind.equals(FirstAnswers.OTHER)) {
            line("    named: " + OPEN).line("    nearest: " + OPEN);
        }
        if (!item.isEmpty()) {
            ids(answers.items()).forEach((key, name) -> {
                if (name.equals(item)) {
                    line("    of: [" + key + "]");
                }
            });
        }
        line("    do: " + OPEN).line("    takes: " + OPEN);
        List<String> needed = needed(kind).lines();
        (isRetold() ? TOLD : needed).forEach(line -> line("    " + line));
        if (isRetold() && !needed.isEmpty()) {
            line("    # If the publication tells it, take the '# ' away and fill in:");
            needed.forEach(line -> line("    # " + line.replace(OPEN, "…")));
        }
    }

    /** The steps for which one waits, by their places: the last of its item, or of every item for a step on the whole object. */
    private static List<Integer> before(List<List<String>> said, int at) {
        String item = said.get(at).get(1);
        Map<String, Integer> last = new LinkedHashMap<>();
        for (int earlier = 0; earlier < at; earlier++) {
            String other = said.get(earlier).get(1);
            if (other.isEmpty()) {
                last.clear();
            }
            last.put(other, earlier);
        }
        if (item.isEmpty()) {
            return last.size() > 1 ? last.entrySet().stream().filter(one -> !one.getKey().isEmpty()).map(Map.Entry::getValue).toList()
                    : List.copyOf(last.values());
        }
        return Stream.of(item, "").map(last::get).filter(Objects::nonNull).limit(1).toList();
    }

    private void results() {
        if (isRetold()) {
            line("").line("results: " + OPEN);
        }
    }

    private void list(String key, List<String> rows) {
        String indent = " ".repeat(key.length() - key.stripLeading().length()) + "  - ";
        line(key + ":" + (rows.isEmpty() ? " " + OPEN : ""));
        rows.forEach(row -> line(indent + row));
        if (!key.startsWith(" ")) {
            line("");
        }
    }

    /** A row for each answer of two parts, with an id of its own; a second part that was not said is left out. */
    private static List<String> rows(List<List<String>> answers, String first, String second) {
        List<String> ids = List.copyOf(ids(answers.stream().map(answer -> answer.get(0)).toList()).keySet());
        List<String> rows = new ArrayList<>();
        for (int at = 0; at < ids.size(); at++) {
            rows.add("{id: " + ids.get(at) + ", " + first + ": " + value(answers.get(at).get(0))
                    + (answers.get(at).get(1).isEmpty() ? "" : ", " + second + ": " + value(answers.get(at).get(1))) + "}");
        }
        return rows;
    }

    /** An id for each name, in their order: two of one name are numbered. */
    private static Map<String, String> ids(List<String> names) {
        Map<String, String> ids = new LinkedHashMap<>();
        for (String name : names) {
            String plain = NOT_OF_AN_ID.matcher(Normalizer.normalize(name, Normalizer.Form.NFD).replaceAll("\\p{M}", "")
                    .toLowerCase(Locale.ROOT)).replaceAll("-").replaceAll("^[-0-9]+|-$", "");
            String id = plain.isEmpty() ? "one" : plain;
            for (int number = 2; ids.containsKey(id); number++) {
                id = (plain.isEmpty() ? "one" : plain) + "-" + number;
            }
            ids.put(id, name);
        }
        return ids;
    }

    private static String flow(List<String> values) {
        return values.stream().map(FirstCase::value).collect(Collectors.joining(", ", "[", "]"));
    }

    private static String value(String answer) {
        return answer.isBlank() ? OPEN : YamlText.inBraces(answer);
    }
}
