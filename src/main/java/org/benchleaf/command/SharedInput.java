package org.benchleaf.command;

import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The files that the pages of all cases share, as they stood at one moment: those of the content besides its cases, and
 * the templates.
 */
final class SharedInput {

    private final Path content;
    private final Optional<Path> templates;
    private final SortedMap<Path, String> stood = new TreeMap<>();
    private final String mark;

    private SharedInput(Path content, Optional<Path> templates) {
        this.content = content;
        this.templates = templates;
        String ofContent = mark("", content, path -> !path.startsWith("cases"));
        this.mark = templates.map(folder -> mark(ofContent, folder, path -> true)).orElse(ofContent);
    }

    /** A file that was written to and put back in between was read as something else, so its time counts too. */
    private String mark(String seed, Path folder, Predicate<Path> wanted) {
        Map<Path, String> seen = new TreeMap<>();
        SortedMap<Path, String> hashes = ContentHash.hashes(folder, wanted, seen);
        hashes.forEach((file, hash) -> stood.put(file, seen.get(file) + " " + hash));
        return ContentHash.of(seed, folder, hashes);
    }

    /**
     * Hashes the files as they stand now.
     *
     * @param templates the folder of templates; the program's own, which are part of the program, if empty
     */
    static SharedInput of(Path content, Optional<Path> templates) {
        return new SharedInput(content, templates);
    }

    /** Everything besides a case's own files that decides over its pages: these files and the program. */
    String seed() {
        return ContentHash.of(Runtime.version() + mark, programFolder(), path -> true, new TreeMap<>());
    }

    /** A file that is another one now, or was in between; empty if there is none. */
    Optional<Path> changed() {
        SharedInput now = of(content, templates);
        return Stream.concat(now.stood.keySet().stream(), stood.keySet().stream())
                .filter(file -> !Objects.equals(now.stood.get(file), stood.get(file))).findFirst();
    }

    /** The folder of the program's classes, or of its one file. */
    private static Path programFolder() {
        try {
            return Path.of(SharedInput.class.getProtectionDomain().getCodeSource().getLocation().toURI());
        } catch (URISyntaxException impossible) {
            throw new IllegalStateException("the program does not know where it is", impossible);
        }
    }
}
