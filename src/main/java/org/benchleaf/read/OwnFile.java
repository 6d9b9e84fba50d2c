package org.benchleaf.read;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** A file that is part of the program; that it is missing is our own mistake. */
final class OwnFile {

    private OwnFile() {
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
