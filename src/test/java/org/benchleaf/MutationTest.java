package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchleaf.check.CheckedLibrary;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.read.LibraryReader;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Sound files, changed by chance: whatever comes of it, the program ends with pages or with messages that have a place.
 *
 * <p>{@code mvn test -Pmutations} tries {@code -Dbenchleaf.seeds=N} seeds from {@code -Dbenchleaf.first.seed=N} on.
 */
class MutationTest {

    private static final int FEW_SEEDS = 4;
    private static final int MUTATIONS_EACH = 40;
    /** Where files that all cases share are changed, every case is made anew, which takes longer: of few cases only. */
    private static final int ONE_SHARED_IN = 4;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @MethodSource("seeds")
    void a_changed_file_becomes_pages_or_messages_with_a_place(int seed) throws IOException {
        Random random = new Random(seed);
        Path content = folder.resolve("content");
        boolean isDemo = seed % 2 == 0;
        ChangedContent.copy(isDemo ? Path.of("content") : Path.of("src/test/resources/sound/base"), content);
        CheckedLibrary library = LibraryChecker.check(LibraryReader.read(content));
        List<Path> ofCases = files(content.resolve("cases"), ".*\\.(md|csv)");
        List<Path> shared = files(content, ".*\\.yaml");
        for (int turn = 0; turn < MUTATIONS_EACH; turn++) {
            boolean isShared = !isDemo && random.nextInt(ONE_SHARED_IN) == 0;
            List<Path> files = isShared ? shared : ofCases;
            Path file = files.get(random.nextInt(files.size()));
            byte[] sound = Files.readAllBytes(file);
            byte[] changed = new Mutation(random).of(sound);
            Files.write(file, changed);
            assertThat(faults(content, file, isShared, library)).as(() -> told(seed, file, changed)).isEmpty();
            Files.write(file, sound);
        }
    }

    static IntStream seeds() {
        int first = Integer.getInteger("benchleaf.first.seed", 1);
        return IntStream.range(first, first + Integer.getInteger("benchleaf.seeds", FEW_SEEDS));
    }

    private static List<String> faults(Path content, Path file, boolean isShared, CheckedLibrary library) {
        try {
            return isShared ? WholeLine.faults(content)
                    : WholeLine.faults(content, file.getParent(), library, new ArrayList<>());
        } catch (RuntimeException | StackOverflowError fault) {
            List<String> trace = new ArrayList<>(List.of(fault.toString()));
            Stream.of(fault.getStackTrace()).limit(12).map(String::valueOf).forEach(trace::add);
            return trace;
        }
    }

    /** Keeps the file, so that what went wrong can be tried again. */
    private static String told(int seed, Path file, byte[] changed) {
        try {
            Path kept = Files.createDirectories(Path.of("target/mutations")).resolve(seed + "-" + file.getFileName());
            Files.write(kept, changed);
            return "seed " + seed + ", " + file + ", kept as " + kept;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static List<Path> files(Path folder, String names) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(path -> path.getFileName().toString().matches(names)).sorted().toList();
        }
    }
}
