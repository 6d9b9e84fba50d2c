package org.benchleaf.browser;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.benchleaf.ChangedContent;

/**
 * Writes a content folder full of words that try to run: a case for each part of their list, with the whole part in every
 * field and in the story; and in what the cases share the whole list, or a part a field where a file would grow too large.
 */
final class HostileEdition {

    private static final int MOST_IN_A_FILE = 180_000;
    private static final int LONGEST_ALT = 150;
    private static final List<String> PLACES = List.of("%s", "- %s", "> %s", "*%s*", "Words [%s](https://example.org/) words",
            "`%s`", "### %s");

    private final Path content;
    private final HostileTexts texts;
    private final List<String> words;
    private final Path cases;

    HostileEdition(Path content, HostileTexts texts, List<String> words) {
        this.content = content;
        this.texts = texts;
        this.words = words;
        this.cases = content.resolve("cases");
    }

    /** Writes it all; gives the lines that came to stand in the stories. */
    List<String> write() throws IOException {
        Path first = cases.resolve("tide");
        long own = texts.fields().stream().filter(field -> field.file().equals(first.resolve("case.md"))).count();
        List<List<String>> parts = NaughtyStrings.parts(words, (int) (MOST_IN_A_FILE / own));
        for (int at = parts.size() - 1; at >= 0; at--) {
            fill(parts.get(at));
            if (at > 0) {
                ChangedContent.copy(first, cases.resolve("tide-" + at));
            }
        }
        return tell(parts);
    }

    private void fill(List<String> part) {
        Map<Path, Long> counts = texts.fields().stream()
                .collect(Collectors.groupingBy(HostileTexts.Field::file, Collectors.counting()));
        Map<Path, Integer> turns = new HashMap<>();
        Map<Path, Integer> alts = new HashMap<>();
        texts.fill(field -> {
            int turn = turns.merge(field.file(), 1, Integer::sum);
            if (field.key().equals("alt")) {
                return NaughtyStrings.few(part, alts.merge(field.file(), 1, Integer::sum) * 3, LONGEST_ALT);
            }
            if (field.file().startsWith(cases)) {
                return String.join(" ", part);
            }
            List<List<String>> shared = NaughtyStrings.parts(words, (int) (MOST_IN_A_FILE / counts.get(field.file())));
            return String.join(" ", shared.get(turn % shared.size()));
        });
    }

    /** Adds the words to the stories; a line that is refused is left out of them, as its author would have to. */
    private List<String> tell(List<List<String>> parts) throws IOException {
        Map<Path, List<String>> lines = new HashMap<>();
        Map<Path, String> before = new HashMap<>();
        for (int at = 0; at < parts.size(); at++) {
            Path file = cases.resolve(at == 0 ? "tide" : "tide-" + at).resolve("case.md");
            before.put(file, Files.readString(file) + "\n## Words from outside\n\n");
            lines.put(file, parts.get(at).stream()
                    .flatMap(one -> PLACES.stream().map(place -> place.replace("%s", one))).toList());
            Files.writeString(file, before.get(file) + String.join("\n\n", lines.get(file)) + "\n");
        }
        // What is taken out can leave the rest of a block behind, which is refused in its turn.
        boolean refused = true;
        while (refused) {
            refused = leaveOutRefused(lines, before);
        }
        return lines.values().stream().flatMap(List::stream).toList();
    }

    /** Whether there was a line that is refused; it is taken out. */
    private boolean leaveOutRefused(Map<Path, List<String>> lines, Map<Path, String> before) throws IOException {
        Map<String, Set<Integer>> refused = new HashMap<>();
        for (JsonNode message : texts.messages()) {
            if (message.path("severity").asText().equals("error")) {
                refused.computeIfAbsent(message.path("file").asText(), file -> new HashSet<>())
                        .add(message.path("line").asInt());
            }
        }
        boolean any = false;
        for (Path file : lines.keySet()) {
            int first = (int) before.get(file).lines().count() + 1;
            Set<Integer> out = refused.getOrDefault(file.toString(), Set.of());
            List<String> all = lines.get(file);
            List<String> sound = IntStream.range(0, all.size()).filter(line -> !out.contains(first + 2 * line))
                    .mapToObj(all::get).toList();
            any |= sound.size() < all.size();
            lines.put(file, sound);
            Files.writeString(file, before.get(file) + String.join("\n\n", sound) + "\n");
        }
        return any;
    }
}
