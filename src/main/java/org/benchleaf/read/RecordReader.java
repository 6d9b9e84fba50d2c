package org.benchleaf.read;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.benchleaf.message.Messages;

/** Reads bench records. They are JSON, each text of which is YAML as well, so places are told as for every other file. */
public final class RecordReader {

    private static final Pattern JSON = Pattern.compile("^[^.].*\\.json");

    private RecordReader() {
    }

    /** The files to read: the file itself, or those of a folder whose names end in {@code .json}, sorted by name. */
    public static List<Path> files(Path path) {
        return Files.isDirectory(path) ? new ContentFolder(path).list(path, JSON) : List.of(path);
    }

    /**
     * One record.
     *
     * @throws java.io.UncheckedIOException if the disk fails
     */
    public static RecordDraft read(Path file) {
        Messages messages = new Messages();
        Path folder = Optional.ofNullable(file.toAbsolutePath().getParent()).orElse(file);
        Optional<TextFile> text = new ContentFolder(folder).read(file, FrontMatter.MOST_BYTES, messages);
        return new RecordDraft(text.flatMap(found -> YamlFile.read(found, 0, found.text().length(), messages).root()), messages);
    }
}
