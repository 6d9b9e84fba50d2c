package org.benchleaf.read;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.benchleaf.message.EditionMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Place;
import org.benchleaf.message.ReadingMessages;
import org.benchleaf.message.SourceText;

/** The content folder, and the only way to a file in it: nothing outside it is ever opened. */
final class ContentFolder {

    private static final long LARGE_BYTES = 1_000_000;

    private final Path root;
    private final Path realRoot;

    ContentFolder(Path root) {
        this.root = root;
        try {
            this.realRoot = Files.isDirectory(root) ? root.toRealPath() : root.toAbsolutePath();
        } catch (IOException broken) {
            throw new UncheckedIOException("the content folder " + root + " cannot be resolved", broken);
        }
    }

    /** The path of a file as the author knows it. */
    String name(Path file) {
        return file.toString().replace('\\', '/');
    }

    boolean holds(String relative) {
        return Files.exists(root.resolve(relative), LinkOption.NOFOLLOW_LINKS);
    }

    /** The entries of a folder whose names match, sorted by name; empty if there is no such folder. */
    List<Path> list(Path folder, Pattern name) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.filter(entry -> name.matcher(entry.getFileName().toString()).matches())
                    .sorted((a, b) -> a.getFileName().toString().compareTo(b.getFileName().toString()))
                    .toList();
        } catch (IOException broken) {
            throw new UncheckedIOException("the folder " + folder + " cannot be listed", broken);
        }
    }

    Path resolve(String relative) {
        return root.resolve(relative);
    }

    /**
     * Tells of every large file that nothing reads; small ones, such as notes, may lie where they like.
     *
     * @param read which paths below the folder are read
     */
    void tellStrays(Path folder, Predicate<Path> read, Messages messages) {
        if (!Files.isDirectory(folder)) {
            return;
        }
        try (Stream<Path> all = Files.find(folder, Integer.MAX_VALUE, (path, attributes) -> attributes.isRegularFile()
                && attributes.size() > LARGE_BYTES && !read.test(folder.relativize(path)))) {
            all.sorted().forEach(stray -> messages.add(EditionMessages.STRAY_FILE.at(Place.file(name(stray)))));
        } catch (IOException broken) {
            throw new UncheckedIOException("the folder " + folder + " cannot be listed", broken);
        }
    }

    /** The text of a file, or a message why it is not read. */
    Optional<TextFile> read(Path file, long mostBytes, Messages messages) {
        String name = name(file);
        if (!Files.isRegularFile(file)) {
            messages.add(ReadingMessages.NOT_A_FILE.at(Place.file(name)));
            return Optional.empty();
        }
        try {
            if (!file.toRealPath().startsWith(realRoot)) {
                messages.add(ReadingMessages.LINK_OUT_OF_CONTENT.at(Place.file(name)));
                return Optional.empty();
            }
            // Before anything is parsed: a parser's own limits act late.
            if (Files.size(file) > mostBytes) {
                messages.add(ReadingMessages.FILE_TOO_LARGE.at(Place.file(name), "most", mostBytes / 1024));
                return Optional.empty();
            }
            return text(name, Files.readAllBytes(file), messages);
        } catch (IOException broken) {
            throw new UncheckedIOException("the file " + name + " cannot be read", broken);
        }
    }

    /**
     * The beginning of a file as far as it is text: what no text should hold is left out. Empty if there is no such
     * file in the content folder.
     */
    Optional<String> head(Path file, int mostBytes) {
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        try (InputStream in = Files.newInputStream(file)) {
            if (!file.toRealPath().startsWith(realRoot)) {
                return Optional.empty();
            }
            StringBuilder text = new StringBuilder();
            new String(in.readNBytes(mostBytes), StandardCharsets.UTF_8).codePoints()
                    .filter(c -> Character.isSupplementaryCodePoint(c) || mayStand((char) c)).forEach(text::appendCodePoint);
            return Optional.of(text.toString());
        } catch (IOException broken) {
            throw new UncheckedIOException("the file " + name(file) + " cannot be read", broken);
        }
    }

    private static Optional<TextFile> text(String name, byte[] bytes, Messages messages) {
        String text;
        try {
            text = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT).decode(ByteBuffer.wrap(bytes)).toString();
        } catch (CharacterCodingException wrong) {
            messages.add(ReadingMessages.NOT_UTF_8.at(firstWrongByte(name, bytes)));
            return Optional.empty();
        }
        String body = text.startsWith("\uFEFF") ? text.substring(1) : text;
        OptionalInt wrong = forbidden(body);
        if (wrong.isPresent()) {
            int at = wrong.getAsInt();
            messages.add(ReadingMessages.CONTROL_CHARACTER.at(
                    new Lines(new SourceText(name, body), body).place(at, at + 1, ""), "character", number(body, at)));
            return Optional.empty();
        }
        return Optional.of(new TextFile(name, body));
    }

    /** Where the first character stands that no text should hold, half a pair of surrogates included. */
    static OptionalInt forbidden(String text) {
        for (int at = 0; at < text.length(); at++) {
            if (!mayStand(text.charAt(at))) {
                return OptionalInt.of(at);
            }
            if (Character.isSurrogate(text.charAt(at))) {
                if (!Character.isSupplementaryCodePoint(text.codePointAt(at))) {
                    return OptionalInt.of(at);
                }
                at++;
            }
        }
        return OptionalInt.empty();
    }

    /** The character's number, as it is looked up in tables. */
    static String number(String text, int at) {
        return String.format("U+%04X", (int) text.charAt(at));
    }

    /** Letters, signs, tabs and line ends; private-use characters are out because they mark figures in the story. */
    private static boolean mayStand(char c) {
        return c == '\t' || c == '\n' || c == '\r' || c >= 0x20 && c < 0x7F || c >= 0xA0 && c < 0xE000
                && c != '\u2028' && c != '\u2029' || c > 0xF8FF && c < 0xFFFE && c != '\uFEFF';
    }

    private static Place firstWrongByte(String name, byte[] bytes) {
        String lenient = new String(bytes, StandardCharsets.UTF_8);
        int at = Math.max(0, lenient.indexOf('\uFFFD'));
        return new Lines(new SourceText(name, lenient), lenient).place(at, at + 1, "");
    }
}
