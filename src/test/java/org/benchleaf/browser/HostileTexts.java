package org.benchleaf.browser;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.benchleaf.command.CheckCommand;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import picocli.CommandLine;

/**
 * Every field of a sound content folder that takes free words, found by trying: words are put into the values, and
 * where the check objects the value is put back.
 */
final class HostileTexts {

    private static final ObjectMapper JSON = new ObjectMapper();
    /** Values that name another file or row, or must not appear on any page at all. */
    private static final Set<String> LEFT_ALONE = Set.of("file", "private", "rule", "substance");

    private final Path content;
    private final Map<Path, String> written = new LinkedHashMap<>();
    private final List<Field> fields = new ArrayList<>();

    /**
     * One value.
     *
     * @param key the nearest key above it
     */
    record Field(Path file, String key, int start, int end) {
    }

    private record Spot(String file, int line, int column) {
    }

    private HostileTexts(Path content) {
        this.content = content;
    }

    /** The fields of a content folder that take free words. */
    static HostileTexts in(Path content) throws IOException {
        HostileTexts texts = new HostileTexts(content);
        try (Stream<Path> all = Files.walk(content)) {
            for (Path file : all.filter(path -> path.toString().matches(".*\\.(yaml|md)")).sorted().toList()) {
                texts.gather(file, Files.readString(file));
            }
        }
        texts.tryOut();
        return texts;
    }

    List<Field> fields() {
        return fields;
    }

    private void gather(Path file, String text) {
        written.put(file, text);
        boolean story = file.toString().endsWith(".md");
        int from = story ? 4 : 0;
        String yaml = story ? text.substring(from, text.indexOf("\n---\n", from) + 1) : text;
        gather(file, from, "", new Yaml(new LoaderOptions()).compose(new StringReader(yaml)));
    }

    private void gather(Path file, int from, String key, Node node) {
        if (node instanceof MappingNode mapping) {
            mapping.getValue().forEach(entry -> {
                String name = ((ScalarNode) entry.getKeyNode()).getValue();
                if (!LEFT_ALONE.contains(name)) {
                    gather(file, from, name, entry.getValueNode());
                }
            });
        } else if (node instanceof SequenceNode sequence) {
            sequence.getValue().forEach(item -> gather(file, from, key, item));
        } else if (node instanceof ScalarNode scalar) {
            fields.add(new Field(file, key, from + scalar.getStartMark().getIndex(),
                    from + scalar.getEndMark().getIndex()));
        }
    }

    /** First every value at whose place the check objects, then by halves those that it objects to elsewhere. */
    private void tryOut() {
        List<Field> back = new ArrayList<>(fields);
        while (!back.isEmpty()) {
            Map<Spot, Field> spots = fill(HostileTexts::plain);
            back = refused().stream().filter(spots::containsKey).map(spots::get).toList();
            fields.removeAll(back);
        }
        List<Field> left = List.copyOf(fields);
        fields.clear();
        accept(left);
    }

    private void accept(List<Field> more) {
        fields.addAll(more);
        fields.sort(Comparator.comparing(Field::file).thenComparing(Field::start));
        fill(HostileTexts::plain);
        if (refused().isEmpty()) {
            return;
        }
        fields.removeAll(more);
        if (more.size() > 1) {
            accept(more.subList(0, more.size() / 2));
            accept(more.subList(more.size() / 2, more.size()));
        }
    }

    /** Writes every field anew; gives where each of them stands now. */
    Map<Spot, Field> fill(Function<Field, String> words) {
        Map<Spot, Field> spots = new LinkedHashMap<>();
        written.forEach((file, text) -> {
            StringBuilder anew = new StringBuilder();
            int from = 0;
            for (Field field : fields.stream().filter(one -> one.file().equals(file)).toList()) {
                anew.append(text, from, field.start());
                spots.put(spot(file, anew), field);
                anew.append(quoted(words.apply(field)));
                // A text over several lines keeps their number.
                text.substring(field.start(), field.end()).chars().filter(c -> c == '\n').forEach(c -> anew.append('\n'));
                from = field.end();
            }
            write(file, anew.append(text, from, text.length()).toString());
        });
        return spots;
    }

    /** Words without a number, different in every field. */
    private static String plain(Field field) {
        return "Plain words " + Integer.toString(field.start(), 36).replaceAll("[0-9]", "x");
    }

    private static Spot spot(Path file, StringBuilder before) {
        int line = (int) before.chars().filter(c -> c == '\n').count() + 1;
        return new Spot(file.toString(), line, before.length() - before.lastIndexOf("\n"));
    }

    /** Where the check finds an error now. */
    List<Spot> refused() {
        List<Spot> refused = new ArrayList<>();
        for (JsonNode message : messages()) {
            if (message.path("severity").asText().equals("error")) {
                refused.add(new Spot(message.path("file").asText(), message.path("line").asInt(),
                        message.path("column").asInt()));
            }
        }
        return refused;
    }

    /** What the check says now. */
    JsonNode messages() {
        StringWriter out = new StringWriter();
        new CommandLine(new CheckCommand()).setOut(new PrintWriter(out)).setErr(new PrintWriter(new StringWriter()))
                .execute("--content", content.toString(), "--format", "json");
        try {
            return JSON.readTree(out.toString());
        } catch (JsonProcessingException broken) {
            throw new IllegalStateException(broken);
        }
    }

    /** A JSON string is a YAML string in double quotes. */
    private static String quoted(String words) {
        try {
            return JSON.writeValueAsString(words);
        } catch (JsonProcessingException broken) {
            throw new IllegalStateException(broken);
        }
    }

    private static void write(Path file, String text) {
        try {
            Files.writeString(file, text);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
