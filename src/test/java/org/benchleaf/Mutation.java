package org.benchleaf;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** Changes a sound file a little, as a slip of the hand, a broken disk or somebody's malice would; the same by each seed. */
final class Mutation {

    private static final List<String> SNIPPETS = List.of("---\n", ": ", "{", "}", "[", "]", "&a ", "*a", "!!str ", "\"", "'", "%",
            "\t", "\r", "\uFEFF", "\uD83E\uDDFB", "\u0000", "\u202E", "{wash.volume}", "{#wash}", "|", ">", "# ", "- ", "~", "<<: ",
            "`", "<b>", "[x](javascript:x)", "\\", "${x}", "../", ",", ";", "\n\n", "99999999999999999999");
    private static final List<String> VALUES = List.of("", "~", "[]", "{}", "\"\"", "\" \"", "0", "-1", "1", "1e9", "NaN", "no",
            "2026-02-30", "9999-12-31", "0001-01-01", "0 mm", "-5 mm", "1 mm", "1e3 mm", "999999999 km", "0.000000001 mm", "1 to 2",
            "2 mm to 1 mm", "1 mm to 2 g", "0 L", "100000 L", "0 %", "100 % v/v", "0 % v/v", "100 % RH", "0 °C", "-300 °C", "2000 °C",
            "pH 14", "pH 0", "pH -1", "0 min", "1 s", "100000 wk", "0 g", "1 t", "0 + 0", "1 + 0", "1000000 + 1", "0 g/m²", "wash",
            "water", "deionised-water", "overnight", "all", "[a, b]", "{a: b}", "[[[]]]", "2", "3", "1000000", "x".repeat(2000));
    private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");
    private static final List<String> NUMBERS = List.of("0", "-1", "1", "0.000001", "7", "99", "1000000", "1000000000000", "0.5",
            "100", "101", "14", "273.15");

    private final Random random;

    Mutation(Random random) {
        this.random = random;
    }

    /** The file with one to three changes. */
    byte[] of(byte[] file) {
        byte[] changed = file;
        for (int times = 1 + random.nextInt(3); times > 0; times--) {
            changed = once(changed);
        }
        return changed;
    }

    private byte[] once(byte[] file) {
        int kind = random.nextInt(10);
        if (kind < 2) {
            return bytes(file);
        }
        String text = new String(file, StandardCharsets.UTF_8);
        String changed = kind < 4 ? lines(text) : kind < 6 ? numbers(text) : values(text);
        return changed.getBytes(StandardCharsets.UTF_8);
    }

    private byte[] bytes(byte[] file) {
        int at = random.nextInt(file.length + 1);
        int to = Math.min(file.length, at + random.nextInt(40));
        byte[] head = Arrays.copyOf(file, at);
        byte[] tail = Arrays.copyOfRange(file, to, file.length);
        return switch (random.nextInt(5)) {
            case 0 -> joined(head, new byte[] {(byte) random.nextInt(256)}, tail);
            case 1 -> joined(head, tail);
            case 2 -> random.nextInt(4) == 0 ? head : joined(head, Arrays.copyOfRange(file, at, file.length));
            case 3 -> joined(head, Arrays.copyOfRange(file, at, to), Arrays.copyOfRange(file, at, to), tail);
            default -> joined(head, any(SNIPPETS).getBytes(StandardCharsets.UTF_8), Arrays.copyOfRange(file, at, file.length));
        };
    }

    private static byte[] joined(byte[]... parts) {
        int length = Arrays.stream(parts).mapToInt(part -> part.length).sum();
        byte[] whole = new byte[length];
        int at = 0;
        for (byte[] part : parts) {
            System.arraycopy(part, 0, whole, at, part.length);
            at += part.length;
        }
        return whole;
    }

    private String lines(String text) {
        List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
        int one = random.nextInt(lines.size());
        int other = random.nextInt(lines.size());
        switch (random.nextInt(6)) {
            case 0 -> lines.remove(one);
            case 1 -> lines.add(other, lines.get(one));
            case 2 -> Collections.swap(lines, one, other);
            case 3 -> lines.set(one, " ".repeat(random.nextInt(4)) + lines.get(one));
            case 4 -> lines.set(one, lines.get(one).stripLeading());
            default -> lines.set(one, lines.get(one) + lines.get(other));
        }
        return String.join("\n", lines);
    }

    private String numbers(String text) {
        List<int[]> found = new ArrayList<>();
        Matcher number = NUMBER.matcher(text);
        while (number.find()) {
            found.add(new int[] {number.start(), number.end()});
        }
        if (found.isEmpty()) {
            return text;
        }
        int[] place = found.get(random.nextInt(found.size()));
        return text.substring(0, place[0]) + any(NUMBERS) + text.substring(place[1]);
    }

    /** Changes the tree of values: another value, a key more or less, or a value from elsewhere in the file. */
    private String values(String text) {
        int from = text.startsWith("---\n") ? 4 : 0;
        int end = from == 0 ? text.length() : text.indexOf("\n---\n", from) + 1;
        List<int[]> scalars = new ArrayList<>();
        List<int[]> entries = new ArrayList<>();
        try {
            gather(new Yaml(new LoaderOptions()).compose(new StringReader(text.substring(from, Math.max(from, end)))), from,
                    scalars, entries);
        } catch (YAMLException noTree) {
            return lines(text);
        }
        if (scalars.isEmpty() || entries.isEmpty()) {
            return lines(text);
        }
        int[] scalar = scalars.get(random.nextInt(scalars.size()));
        int[] other = scalars.get(random.nextInt(scalars.size()));
        int[] entry = entries.get(random.nextInt(entries.size()));
        return switch (random.nextInt(6)) {
            case 0, 1 -> with(text, scalar, any(VALUES));
            case 2 -> with(text, scalar, text.substring(other[0], other[1]));
            case 3 -> with(text, entry, "");
            case 4 -> with(text, new int[] {entry[0], entry[0] + 1}, "x");
            default -> with(text, entry, text.substring(entry[0], entry[1]) + "\n" + text.substring(entry[0], entry[1]));
        };
    }

    private static String with(String text, int[] place, String instead) {
        int end = Math.min(place[1], text.length());
        return text.substring(0, Math.min(place[0], end)) + instead + text.substring(end);
    }

    private static void gather(Node node, int from, List<int[]> scalars, List<int[]> entries) {
        if (node instanceof MappingNode mapping) {
            for (NodeTuple entry : mapping.getValue()) {
                entries.add(new int[] {from + entry.getKeyNode().getStartMark().getIndex(),
                    from + entry.getValueNode().getEndMark().getIndex()});
                gather(entry.getValueNode(), from, scalars, entries);
            }
        } else if (node instanceof SequenceNode sequence) {
            sequence.getValue().forEach(item -> gather(item, from, scalars, entries));
        } else if (node instanceof ScalarNode) {
            scalars.add(new int[] {from + node.getStartMark().getIndex(), from + node.getEndMark().getIndex()});
        }
    }

    private <T> T any(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }
}
