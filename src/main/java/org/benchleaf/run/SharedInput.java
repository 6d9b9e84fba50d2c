package org.benchleaf.run;

import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.benchleaf.read.LibraryReader;

/**
 * The files that cases share, as they stood at one moment, and what depends on each: the pages of every case, those of the
 * one case that a class works through, or only the files of the whole site.
 */
final class SharedInput {

    private static final String CLASSES = "classes";
    /** Folders of templates that become files of their own; pages only name these, what is taken away holds them. */
    private static final Set<String> ASSETS = Set.of("style", "script", "drawing");

    private final Path content;
    private final Optional<Path> templates;
    private final SortedMap<Path, String> stood = new TreeMap<>();
    private final SortedMap<Path, String> classes = new TreeMap<>();
    private final String mark;
    private final String assets;

    private SharedInput(Path content, Optional<Path> templates) {
        this.content = content;
        this.templates = templates;
        SortedMap<Path, String> hashes = hashes(content, LibraryReader::reads);
        hashes.forEach((file, hash) -> {
            if (content.relativize(file).startsWith(CLASSES)) {
                classes.put(file, hash);
            }
        });
        hashes.keySet().removeAll(classes.keySet());
        String ofContent = ContentHash.of("", content, hashes);
        SortedMap<Path, String> look = templates.map(folder -> hashes(folder, path -> true)).orElseGet(TreeMap::new);
        this.mark = templates.map(folder -> ContentHash.of(ofContent, folder, only(look, file -> !isAsset(folder, file))))
                .orElse(ofContent);
        this.assets = templates.map(folder -> ContentHash.of("", folder, only(look, file -> isAsset(folder, file)))).orElse("");
    }

    private static boolean isAsset(Path folder, Path file) {
        return ASSETS.contains(folder.relativize(file).getName(0).toString());
    }

    private static SortedMap<Path, String> only(SortedMap<Path, String> hashes, Predicate<Path> wanted) {
        SortedMap<Path, String> some = new TreeMap<>(hashes);
        some.keySet().removeIf(wanted.negate());
        return some;
    }

    /** A file that was written to and put back in between was read as something else, so its time counts too. */
    private SortedMap<Path, String> hashes(Path folder, Predicate<Path> wanted) {
        Map<Path, String> seen = new TreeMap<>();
        SortedMap<Path, String> hashes = ContentHash.hashes(folder, wanted, seen);
        hashes.forEach((file, hash) -> stood.put(file, seen.get(file) + " " + hash));
        return hashes;
    }

    /**
     * Hashes the files as they stand now.
     *
     * @param templates the folder of templates; the program's own, which are part of the program, if empty
     */
    static SharedInput of(Path content, Optional<Path> templates) {
        return new SharedInput(content, templates);
    }

    /** What decides over the pages of every case besides its own files: files of the content, templates, the program. */
    String seed() {
        return ContentHash.of(Runtime.version() + mark, programFolder(), path -> true, new TreeMap<>());
    }

    /** A mark of those of the files of classes that have one of these names. */
    String ofClasses(Set<String> names) {
        return ContentHash.of("", content, only(classes, file -> names.contains(file.getFileName().toString())));
    }

    /** A mark of the files of all classes. */
    String ofClasses() {
        return ContentHash.of("", content, classes);
    }

    /** A mark of the styles, scripts and drawings, on which no page depends, and each file that holds a whole page does. */
    String ofAssets() {
        return assets;
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
