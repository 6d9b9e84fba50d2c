package org.benchleaf.publish;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.benchleaf.message.EditionMessages;
import org.benchleaf.message.Place;
import org.benchleaf.message.SourceText;

/** Reads the templates, styles and scripts once: from a folder, or from the program where there is none. */
final class TemplateFolder {

    private static final String OWN = "templates";
    private static final Set<String> KINDS = Set.of("ftl", "css", "js", "svg");
    private static final long MOST_BYTES = 1_000_000;

    private final String shown;
    private final Map<String, String> texts;

    private TemplateFolder(String shown, Map<String, String> texts) {
        this.shown = shown;
        this.texts = texts;
    }

    /**
     * The files of a folder on disk.
     *
     * @throws TemplateStop if one of them lies elsewhere or is no text
     */
    static TemplateFolder at(Path folder) {
        try {
            return new TemplateFolder(folder.toString().replace('\\', '/'), read(folder));
        } catch (IOException broken) {
            throw new UncheckedIOException("the templates in " + folder + " cannot be read", broken);
        }
    }

    /** The files packed into the program. */
    static TemplateFolder packed() {
        try {
            URI place = TemplateFolder.class.getResource("/templates/page.ftl").toURI();
            if (!place.getScheme().equals("jar")) {
                return new TemplateFolder(OWN, read(Path.of(place).getParent()));
            }
            try (FileSystem jar = FileSystems.newFileSystem(place, Map.of())) {
                return new TemplateFolder(OWN, read(jar.getPath("/templates")));
            }
        } catch (URISyntaxException | IOException broken) {
            throw new IllegalStateException("the program's own templates cannot be read", broken);
        }
    }

    private static Map<String, String> read(Path folder) throws IOException {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : (Iterable<Path>) files.filter(TemplateFolder::isOfAKind)::iterator) {
                texts.put(folder.relativize(file).toString().replace('\\', '/'), text(folder, file));
            }
        }
        return texts;
    }

    private static boolean isOfAKind(Path file) {
        String name = file.getFileName() == null ? "" : file.getFileName().toString();
        return !name.startsWith(".") && KINDS.contains(name.substring(name.lastIndexOf('.') + 1)) && !Files.isDirectory(file);
    }

    private static String text(Path folder, Path file) throws IOException {
        if (!Files.isRegularFile(file) || !file.toRealPath().startsWith(folder.toRealPath())) {
            throw stop(file, "it leads out of the folder of templates, or is no file");
        }
        if (Files.size(file) > MOST_BYTES) {
            throw stop(file, "it has more than " + MOST_BYTES / 1000 + " kB");
        }
        try {
            return Files.readString(file, StandardCharsets.UTF_8).replace("\r\n", "\n");
        } catch (CharacterCodingException wrong) {
            throw stop(file, "it is not written in UTF-8");
        }
    }

    private static TemplateStop stop(Path file, String problem) {
        return new TemplateStop(EditionMessages.TEMPLATE_UNUSABLE.at(Place.file(file.toString().replace('\\', '/')),
                "problem", problem));
    }

    /** Every file's text by its name below the folder, in order of names. */
    Map<String, String> texts() {
        return texts;
    }

    /** The text of one file. */
    String text(String name) {
        String text = texts.get(name);
        if (text == null) {
            throw new TemplateStop(EditionMessages.TEMPLATE_UNUSABLE.at(Place.file(shown + "/" + name), "problem",
                    "it is missing"));
        }
        return text;
    }

    /** A place in one of the files; without line or column if the file is not known. */
    Place place(String name, int line, int column) {
        String text = texts.get(name);
        return text == null || line < 1 ? Place.file(shown + "/" + name)
                : Place.at(new SourceText(shown + "/" + name, text), line, Math.max(1, column));
    }
}
