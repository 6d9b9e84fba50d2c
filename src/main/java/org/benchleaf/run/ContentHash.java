package org.benchleaf.run;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Works out one hash of all files under a folder: their paths and every byte, in the order of their paths. */
final class ContentHash {

    private static final String LINK = "link";
    /** No reader takes a larger file, so what it holds decides nothing. */
    private static final long MOST_BYTES = 200_000_000;

    private ContentHash() {
    }

    /**
     * The hash of a folder, or of a single file.
     *
     * @param seed what else decides over what is made from it
     * @param wanted which paths below the folder count
     * @param seen how the files stood, to be filled in
     */
    static String of(String seed, Path folder, Predicate<Path> wanted, Map<Path, String> seen) {
        return of(seed, folder, hashes(folder, wanted, seen));
    }

    /** One hash of the hashes of files under a folder. */
    static String of(String seed, Path folder, SortedMap<Path, String> hashes) {
        MessageDigest digest = sha256();
        digest.update(seed.getBytes(StandardCharsets.UTF_8));
        hashes.forEach((file, hash) -> {
            String path = folder.relativize(file).toString().replace('\\', '/');
            digest.update(("\0" + path + "\0" + hash).getBytes(StandardCharsets.UTF_8));
            if (hash.equals(LINK)) {
                // What is behind it is not followed, so nothing may be taken for unchanged.
                digest.update(Long.toString(System.nanoTime()).getBytes(StandardCharsets.UTF_8));
            }
        });
        return HexFormat.of().formatHex(digest.digest());
    }

    /** One hash of texts, in their order. */
    static String of(String seed, Stream<String> texts) {
        MessageDigest digest = sha256();
        digest.update(seed.getBytes(StandardCharsets.UTF_8));
        texts.forEach(text -> digest.update(("\0" + text).getBytes(StandardCharsets.UTF_8)));
        return HexFormat.of().formatHex(digest.digest());
    }

    /**
     * The hash of each file by itself; for a link to a folder, that it is one.
     *
     * @param seen how the files stood before they were read, to be filled in
     */
    static SortedMap<Path, String> hashes(Path folder, Predicate<Path> wanted, Map<Path, String> seen) {
        Map<Path, String> found = new TreeMap<>();
        stand(folder, wanted, found);
        seen.putAll(found);
        SortedMap<Path, String> hashes = new TreeMap<>();
        byte[] buffer = new byte[1 << 14];
        try {
            for (Path file : found.keySet()) {
                hashes.put(file, !Files.isRegularFile(file) ? LINK : Files.size(file) > MOST_BYTES ? found.get(file)
                        : hash(file, buffer));
            }
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return hashes;
    }

    private static String hash(Path file, byte[] buffer) throws IOException {
        MessageDigest digest = sha256();
        feed(digest, file, Files.size(file), buffer);
        return HexFormat.of().formatHex(digest.digest());
    }

    /** Reads no more than the file said it has: some files of the system never end. */
    private static void feed(MessageDigest digest, Path file, long size, byte[] buffer) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            long left = size;
            while (left > 0) {
                int read = in.read(buffer, 0, (int) Math.min(buffer.length, left));
                if (read < 0) {
                    return;
                }
                digest.update(buffer, 0, read);
                left -= read;
            }
        }
    }

    /** How every file under a folder stands on the disk: size and time of its last change. */
    static void stand(Path folder, Predicate<Path> wanted, Map<Path, String> seen) {
        Map<Path, String> found = new TreeMap<>();
        try {
            if (!Files.exists(folder)) {
                return;
            }
            Files.walkFileTree(folder, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult preVisitDirectory(Path visited, BasicFileAttributes attributes) {
                    return visited.equals(folder) || wanted.test(folder.relativize(visited))
                            ? FileVisitResult.CONTINUE : FileVisitResult.SKIP_SUBTREE;
                }

                @Override
                public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                    if (wanted.test(folder.relativize(file))) {
                        found.put(file, attributes.size() + " " + attributes.lastModifiedTime());
                    }
                    return FileVisitResult.CONTINUE;
                }
            });
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        seen.putAll(found);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
