package org.benchleaf.pack;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.message.EditionMessages;
import org.benchleaf.message.Message;

/** Finds what Benchleaf did not write where a file of the edition belongs. */
final class Clash {

    private final Workshop workshop;
    private final EditionList last;
    private final Map<String, Optional<String>> folders = new HashMap<>();

    Clash(Workshop workshop, EditionList last) {
        this.workshop = workshop;
        this.last = last;
    }

    /**
     * What stands in the way of a file; empty if nothing does, or a file of the last edition, or a file with the very
     * same bytes, which may stay.
     */
    Optional<Message> find(String path, String hash) {
        Optional<String> above = folder(path.substring(0, Math.max(0, path.lastIndexOf('/'))));
        if (above.isPresent()) {
            return Optional.of(told(above.get(), path));
        }
        return Disk.look(workshop.site().resolve(path)).filter(there -> !mayStay(path, hash, there))
                .map(there -> told(path, path));
    }

    /** The topmost folder of a way that is something else, such as a file or a link out of the site. */
    private Optional<String> folder(String folder) {
        if (folder.isEmpty()) {
            return Optional.empty();
        }
        Optional<String> known = folders.get(folder);
        if (known == null) {
            known = folder(folder.substring(0, Math.max(0, folder.lastIndexOf('/'))));
            if (known.isEmpty()) {
                known = Disk.look(workshop.site().resolve(folder))
                        .filter(there -> !there.isDirectory() && !last.files().containsKey(folder))
                        .map(there -> folder);
            }
            folders.put(folder, known);
        }
        return known;
    }

    private boolean mayStay(String path, String hash, BasicFileAttributes there) {
        Path target = workshop.site().resolve(path);
        if (there.isDirectory()) {
            return onlyOurs(target, path);
        }
        return there.isRegularFile() && (last.files().containsKey(path)
                || Disk.reading(target, () -> Hash.of(Files.readAllBytes(target))).equals(hash));
    }

    /** A folder of stale files goes away with them. */
    private boolean onlyOurs(Path folder, String path) {
        return Disk.reading(folder, () -> {
            try (var all = Files.walk(folder)) {
                return all.filter(file -> !Files.isDirectory(file)).allMatch(file -> last.files()
                        .containsKey(path + "/" + folder.relativize(file).toString().replace('\\', '/')));
            }
        });
    }

    private Message told(String standing, String path) {
        String thing = Disk.look(workshop.site().resolve(standing))
                .map(there -> there.isDirectory() ? "folder" : there.isSymbolicLink() ? "link" : "file").orElse("file");
        return EditionMessages.FOREIGN_FILE.at(Disk.place(workshop.shown(standing)), "thing", thing, "path", path);
    }
}
