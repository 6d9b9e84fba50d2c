package org.benchleaf.read;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.benchleaf.message.Messages;

/** A file that is part of the program; that it is missing is our own mistake. */
final class OwnFile {

    /** Read once in the life of the program: they do not change while it runs. */
    private static final Map<String, Node.Mapping> TREES = new ConcurrentHashMap<>();

    private OwnFile() {
    }

    /** The keys and values of a YAML file. */
    static Node.Mapping tree(String path) {
        return TREES.computeIfAbsent(path, OwnFile::readTree);
    }

    private static Node.Mapping readTree(String path) {
        Messages messages = new Messages();
        TextFile file = new TextFile(path, text(path));
        Optional<Node.Mapping> root = YamlFile.read(file, 0, file.text().length(), messages).root();
        if (root.isEmpty() || !messages.isEmpty()) {
            throw new IllegalStateException(path + " cannot be read: " + messages.all());
        }
        return root.get();
    }

    /** Whether the program has such a file. */
    static boolean isThere(String path) {
        return OwnFile.class.getResource(path) != null;
    }

    static String text(String path) {
        try (InputStream stream = OwnFile.class.getResourceAsStream(path)) {
            if (stream == null) {
                throw new IllegalStateException(path + " is missing from the program");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(path + " cannot be read", broken);
        }
    }
}
