package org.benchleaf.pack;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** A folder of files that only their owner may read, outside every site. */
public final class PrivateFolder {

    private PrivateFolder() {
    }

    /** Whether a folder lies within a site or within content, from which a site is made. */
    public static boolean isWhereOthersRead(Path folder) {
        for (Path at = folder.toAbsolutePath().normalize(); at != null; at = at.getParent()) {
            if (Files.exists(at.resolve("edition.json")) || Files.exists(at.resolve("studio.yaml"))) {
                return true;
            }
        }
        return false;
    }

    /**
     * Writes the files, by name, in place of those that are there.
     *
     * @throws UncheckedIOException if the disk fails
     */
    public static void write(Path folder, Map<String, String> files) {
        try {
            Files.createDirectories(folder);
            Disk.ownerOnly(folder);
            for (Map.Entry<String, String> file : files.entrySet()) {
                Path incoming = Files.createTempFile(folder, "", ".part");
                Disk.ownerOnly(incoming);
                Files.writeString(incoming, file.getValue(), StandardCharsets.UTF_8);
                Disk.move(incoming, folder.resolve(file.getKey()), folder);
            }
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
