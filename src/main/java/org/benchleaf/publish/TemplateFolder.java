package org.benchleaf.publish;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Reads the templates, styles and scripts once: from a folder, or from the program where there is none. */
final class TemplateFolder {

    private final Map<String, String> texts;

    private TemplateFolder(Map<String, String> texts) {
        this.texts = texts;
    }

    /** The files of a folder on disk. */
    static TemplateFolder at(Path folder) {
        try {
            return new TemplateFolder(read(folder));
        } catch (IOException broken) {
            throw new UncheckedIOException("the templates in " + folder + " cannot be read", broken);
        }
    }

    /** The files packed into the program. */
    static TemplateFolder packed() {
        try {
            URI place = TemplateFolder.class.getResource("/templates/page.ftl").toURI();
            if (!place.getScheme().equals("jar")) {
                return at(Path.of(place).getParent());
            }
            try (FileSystem jar = FileSystems.newFileSystem(place, Map.of())) {
                return new TemplateFolder(read(jar.getPath("/templates")));
            }
        } catch (URISyntaxException | IOException broken) {
            throw new IllegalStateException("the program's own templates cannot be read", broken);
        }
    }

    private static Map<String, String> read(Path folder) throws IOException {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : (Iterable<Path>) files.filter(Files::isRegularFile)::iterator) {
                String name = folder.relativize(file).toString().replace('\\', '/');
                texts.put(name, Files.readString(file, StandardCharsets.UTF_8).replace("\r\n", "\n"));
            }
        }
        return texts;
    }

    /** Every file's text by its name below the folder, in order of names. */
    Map<String, String> texts() {
        return texts;
    }

    /** The text of one file. */
    String text(String name) {
        String text = texts.get(name);
        if (text == null) {
            throw new IllegalStateException("the templates lack " + name);
        }
        return text;
    }
}
