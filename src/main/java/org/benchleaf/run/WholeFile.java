package org.benchleaf.run;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Files of an author's that the program writes: each is there whole, the old or the new, whatever happens meanwhile. */
public final class WholeFile {

    private WholeFile() {
    }

    public static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException broken) {
            throw new UncheckedIOException(file + " cannot be read", broken);
        }
    }

    /** Puts a text in the place of what is there; one that is half written takes the place of none. */
    public static void write(Path file, String text) {
        try {
            Path incoming = file.resolveSibling(file.getFileName() + ".part");
            Files.writeString(incoming, text);
            Files.move(incoming, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException broken) {
            throw new UncheckedIOException(file + " cannot be written", broken);
        }
    }
}
