package org.benchleaf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.stream.Stream;

/**
 * Makes a faulty content folder from a sound one and a list of changes.
 *
 * <p>A change is a line: {@code in FILE} followed by lines to take out ({@code - …}) and lines to put there instead
 * ({@code + …}); {@code append FILE} or {@code write FILE} followed by lines ({@code + …}); {@code delete PATH};
 * {@code rename PATH PATH}; {@code copy PATH PATH}; {@code folder PATH}; {@code link PATH TARGET}; {@code pipe PATH},
 * which gives a file that has no end; {@code bytes FILE HEX}; {@code add FILE HEX}; {@code cut FILE BYTES};
 * {@code encode FILE CHARSET}; {@code repeat FILE TIMES TEXT}, which adds the text and a blank to the end of the file so
 * many times; {@code fill FILE TIMES TEXT}, which adds it without a blank, {@code \\n} being a line end and {@code %d}
 * the number of the turn; {@code stretch FILE TIMES TEXT}, which puts it so many times where {@code <long>} stands;
 * {@code picture FILE KIND}, one of {@link OddPicture}.
 */
public final class ChangedContent {

    private final Path root;

    private ChangedContent(Path root) {
        this.root = root;
    }

    /** Copies a sound folder and applies the changes of a file. */
    public static Path of(Path sound, Path changes, Path into) {
        try {
            copy(sound, into);
            new ChangedContent(into).apply(Files.readAllLines(changes));
            return into;
        } catch (IOException broken) {
            throw new UncheckedIOException(changes.toString(), broken);
        }
    }

    /** Copies a folder with everything in it. */
    public static void copy(Path from, Path to) throws IOException {
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
            case "copy" -> Files.copy(file, root.resolve(words[1]));
            case "folder" -> Files.createDirectories(file);
            case "pipe" -> pipe(file);
            case "bytes" -> Files.write(file, HexFormat.of().parseHex(words[1]));
            case "add" -> Files.write(file, HexFormat.of().parseHex(words[1]), StandardOpenOption.APPEND);
            case "cut" -> Files.write(file, Arrays.copyOf(Files.readAllBytes(file), Integer.parseInt(words[1])));
            case "encode" -> Files.write(file, Files.readString(file).getBytes(Charset.forName(words[1])));
            case "fill" -> fill(file, Integer.parseInt(words[1]), words[2].replace("\\n", "\n"));
            case "stretch" -> Files.writeString(file, Files.readString(file)
                    .replaceFirst("<long>", Matcher.quoteReplacement(words[2].repeat(Integer.parseInt(words[1])))));
            case "picture" -> Files.write(file, OddPicture.valueOf(words[1].toUpperCase(Locale.ROOT)).bytes());
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

    private static void fill(Path file, int times, String text) throws IOException {
        StringBuilder more = new StringBuilder();
        for (int turn = 1; turn <= times; turn++) {
            more.append(text.replace("%d", String.valueOf(turn)));
        }
        Files.writeString(file, more, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    }

    private static void pipe(Path file) throws IOException {
        Files.deleteIfExists(file);
        try {
            int code = new ProcessBuilder("mkfifo", file.toString()).start().waitFor();
            if (code != 0) {
                throw new IOException("mkfifo ended with " + code);
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted", interrupted);
        }
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
