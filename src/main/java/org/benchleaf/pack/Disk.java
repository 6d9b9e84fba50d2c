package org.benchleaf.pack;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Locale;
import java.util.Optional;
import org.benchleaf.message.EditionMessages;
import org.benchleaf.message.Message;
import org.benchleaf.message.Place;

/** Reads, writes and moves files, and puts what the disk refuses into words. */
final class Disk {

    private static final String INCOMING = ".benchleaf-incoming";

    private Disk() {
    }

    /** One step of work with the disk. */
    interface Work<R> {
        R run() throws IOException;
    }

    /** Does work that writes; a refusal stops the edition. */
    static <R> R writing(Path where, Work<R> work) {
        try {
            return work.run();
        } catch (IOException refused) {
            throw new EditionStopped(EditionMessages.CANNOT_WRITE.at(place(where), "reason", reason(refused),
                    "remedy", remedy(refused)), refused);
        }
    }

    /** Does work that reads; a refusal stops the edition. */
    static <R> R reading(Path where, Work<R> work) {
        try {
            return work.run();
        } catch (IOException refused) {
            throw new EditionStopped(EditionMessages.CANNOT_READ.at(place(where), "reason", reason(refused)), refused);
        }
    }

    static Place place(Path path) {
        return Place.file(path.toString().replace('\\', '/'));
    }

    /** Why the disk refused, in words. */
    static String reason(IOException refused) {
        if (refused instanceof AccessDeniedException) {
            return "it is not permitted";
        }
        if (refused instanceof NoSuchFileException) {
            return "there is no such file or folder";
        }
        if (refused instanceof FileAlreadyExistsException || refused instanceof DirectoryNotEmptyException) {
            return "something else is in its place";
        }
        String said = refused instanceof FileSystemException onFile ? onFile.getReason() : refused.getMessage();
        return said == null || said.isBlank() ? "the disk refused" : said.replaceAll("\\.$", "");
    }

    /** What to do about a refusal to write. */
    static String remedy(IOException refused) {
        String reason = reason(refused).toLowerCase(Locale.ROOT);
        if (reason.contains("space") || reason.contains("quota")) {
            return "Make room on the disk, then publish again.";
        }
        if (reason.contains("read-only")) {
            return "Make the disk writable, or name a folder on another disk with --site.";
        }
        if (refused instanceof AccessDeniedException) {
            return "Publish as the owner of the folder, let them give you the right to write there, or name a folder of"
                    + " your own with --site.";
        }
        if (refused instanceof FileAlreadyExistsException || refused instanceof DirectoryNotEmptyException) {
            return "Move what stands there to another place, then publish again.";
        }
        return "Look whether the disk is still connected and the folder may be written to, then publish again.";
    }

    static void write(Path file, byte[] bytes) {
        writing(file, () -> Files.write(file, bytes));
    }

    /** Writes a small file so that it is on the disk, whole, before anything relies on it. */
    static void writeFirmly(Path file, byte[] bytes) {
        Path draft = file.resolveSibling(file.getFileName() + ".new");
        writing(file, () -> {
            try (FileChannel channel = FileChannel.open(draft, StandardOpenOption.CREATE, StandardOpenOption.WRITE,
                    StandardOpenOption.TRUNCATE_EXISTING)) {
                java.nio.ByteBuffer rest = java.nio.ByteBuffer.wrap(bytes);
                while (rest.hasRemaining()) {
                    channel.write(rest);
                }
                channel.force(true);
            }
            return Files.move(draft, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        });
    }

    /**
     * Moves a file to its place in one stroke, so that a reader sees the old file or the new one, never half of it.
     *
     * @param root of the site; a file from another file system is first copied into it under a name of its own
     */
    static void move(Path from, Path to, Path root) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException otherFileSystem) {
            Path incoming = root.resolve(INCOMING);
            Files.copy(from, incoming, StandardCopyOption.REPLACE_EXISTING);
            Files.move(incoming, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            Files.delete(from);
        }
    }

    /** Lets only its owner read and change a file or folder, where the file system knows owners. */
    static void ownerOnly(Path path) {
        PosixFileAttributeView rights = Files.getFileAttributeView(path, PosixFileAttributeView.class);
        if (rights == null) {
            return;
        }
        try {
            rights.setPermissions(PosixFilePermissions.fromString(Files.isDirectory(path) ? "rwx------" : "rw-------"));
        } catch (IOException another) {
            // Only its owner may set the rights of a file; another's folder has the rights that they chose.
        }
    }

    /** What is at a path, without following a link; empty if nothing is. */
    static Optional<BasicFileAttributes> look(Path path) {
        try {
            return Optional.of(Files.readAttributes(path, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS));
        } catch (IOException nothing) {
            return Optional.empty();
        }
    }

    /** Removes a folder with all that is in it; a refusal stops the edition. */
    static void removeTree(Path folder) {
        writing(folder, () -> {
            deleteTree(folder);
            return true;
        });
    }

    /** Removes a folder with all that is in it. */
    static void deleteTree(Path folder) throws IOException {
        if (look(folder).isEmpty()) {
            return;
        }
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                Files.delete(file);
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path visited, IOException failure) throws IOException {
                Files.delete(visited);
                return FileVisitResult.CONTINUE;
            }
        });
    }

    static EditionStopped stop(Message message) {
        return new EditionStopped(message);
    }
}
