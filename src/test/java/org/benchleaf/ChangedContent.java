package org.benchleaf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;

/**
 * Makes a faulty content folder from a sound one and a list of changes.
 *
 * <p>A change is a line: {@code in FILE} followed by lines to take out ({@code - …}) and lines to put there instead
 * ({@code + …}); {@code append FILE} or {@code write FILE} followed by lines ({@code + …}); {@code delete PATH};
 * {@code rename PATH PATH}; {@code link PATH TARGET}; {@code bytes FILE HEX}; {@code repeat FILE TIMES TEXT}, which
 * adds the text to the end of the file so many times.
 */
final class ChangedContent {

    private final Path root;

    private ChangedContent(Path root) {
        this.root = root;
    }

    /** Copies a sound folder and applies the changes of a file. */
    static Path of(Path sound, Path changes, Path into) {
        try {
            copy(sound, into);
            new ChangedContent(into).apply(Files.readAllLines(changes));
            return into;
        } catch (IOException broken) {
            throw new UncheckedIOException(changes.toString(), broken);
        }
    }

    static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path path : all.toList()) {
                Path target = to.resolve(from.relativize(path).toString());
                if (Files.isDirectory(path)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(path, target);
                }
            }
        }
    }

    private void apply(List<String> lines) throws IOException {
        for (int at = 0; at < lines.size();) {
            String[] words = lines.get(at++).split(" ", 2);
            List<String> out = new ArrayList<>();
            List<String> in = new ArrayList<>();
            while (at < lines.size() && (lines.get(at).startsWith("- ") || lines.get(at).startsWith("+ "))) {
                (lines.get(at).startsWith("- ") ? out : in).add(lines.get(at).substring(2));
                at++;
            }
            one(words[0], words[1], out, in);
        }
    }

    private void one(String verb, String rest, List<String> out, List<String> in) throws IOException {
        String[] words = rest.split(" ", 3);
        Path file = root.resolve(words[0]).normalize();
        switch (verb) {
            case "in" -> replace(file, String.join("\n", out) + "\n", in);
            case "append" -> Files.writeString(file, Files.readString(file) + lines(in));
            case "write" -> Files.writeString(file, lines(in));
            case "delete" -> delete(file);
            case "rename" -> Files.move(file, root.resolve(words[1]));
            case "link" -> {
                Files.deleteIfExists(file);
                Files.createSymbolicLink(file, Path.of(words[1]));
            }
            case "bytes" -> Files.write(file, HexFormat.of().parseHex(words[1]));
            case "repeat" -> Files.writeString(file, Files.readString(file)
                    + (words[2] + " ").repeat(Integer.parseInt(words[1])));
            default -> throw new IllegalArgumentException("no such change: " + verb);
        }
    }

    private static void replace(Path file, String out, List<String> in) throws IOException {
        String text = Files.readString(file, StandardCharsets.UTF_8);
        if (!text.contains(out)) {
            throw new IllegalArgumentException(file + " does not hold: " + out);
        }
        int from = text.indexOf(out);
        Files.writeString(file, text.substring(0, from) + lines(in) + text.substring(from + out.length()));
    }

    private static String lines(List<String> lines) {
        return lines.isEmpty() ? "" : String.join("\n", lines) + "\n";
    }

    private static void delete(Path path) throws IOException {
        try (Stream<Path> all = Files.walk(path)) {
            for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(each);
            }
        }
    }
}
