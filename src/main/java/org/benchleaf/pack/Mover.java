package org.benchleaf.pack;

import java.io.IOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import java.util.function.IntConsumer;
import org.benchleaf.message.EditionMessages;

/** Carries out a plan: takes stale files away, moves staged ones in, each step so that it can be done again. */
final class Mover {

    private final Workshop workshop;
    private final Set<Path> folders = new HashSet<>();

    Mover(Workshop workshop) {
        this.workshop = workshop;
    }

    /**
     * Carries a plan out from wherever it was left, the edition's list last.
     *
     * @param moved is told after each file how many are in
     * @throws EditionStopped if the disk refuses; the plan stays, and carrying it out again completes it
     */
    void carryOut(Plan plan, IntConsumer moved) {
        try {
            for (String path : plan.removals()) {
                remove(workshop.site(), path);
            }
            int count = 0;
            for (String path : plan.moves()) {
                moveIn(path);
                moved.accept(++count);
            }
            finish();
        } catch (IOException refused) {
            throw new EditionStopped(EditionMessages.HALF_MOVED.at(Disk.place(workshop.shown()), "reason",
                    Disk.reason(refused)), refused);
        }
    }

    private void moveIn(String path) throws IOException {
        Path from = workshop.staged().resolve(path);
        if (Disk.look(from).isEmpty()) {
            return;
        }
        Path to = workshop.site().resolve(path);
        if (folders.add(to.getParent())) {
            Files.createDirectories(to.getParent());
        }
        Disk.move(from, to, workshop.site());
    }

    /** Takes a file away, and the folders that are empty then. */
    static void remove(Path root, String path) throws IOException {
        Path file = root.resolve(path);
        if (Disk.look(file).filter(there -> !there.isDirectory()).isPresent()) {
            Files.deleteIfExists(file);
        }
        for (Path folder = file.getParent(); !folder.equals(root); folder = folder.getParent()) {
            if (!isEmptied(folder)) {
                return;
            }
        }
    }

    /** Takes a folder away if nothing is in it; what is no folder may be a file of the new edition and stays. */
    private static boolean isEmptied(Path folder) throws IOException {
        var there = Disk.look(folder);
        if (there.isEmpty()) {
            return true;
        }
        try {
            return there.get().isDirectory() && Files.deleteIfExists(folder);
        } catch (DirectoryNotEmptyException stillUsed) {
            return false;
        }
    }

    private void finish() throws IOException {
        Path list = workshop.staged().resolve(EditionList.PATH);
        if (Disk.look(list).isPresent()) {
            Files.createDirectories(workshop.site());
            Disk.move(list, workshop.list(), workshop.site());
        }
        if (Disk.look(workshop.nextMemory()).isPresent()) {
            Disk.move(workshop.nextMemory(), workshop.memory(), workshop.beside());
        }
        Files.deleteIfExists(workshop.plan());
        try {
            Disk.deleteTree(workshop.staged());
        } catch (IOException stays) {
            // The edition is in; the next run throws away what is left of its folder.
        }
    }
}
