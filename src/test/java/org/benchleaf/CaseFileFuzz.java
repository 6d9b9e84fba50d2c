package org.benchleaf;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.benchleaf.check.CheckedLibrary;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.read.LibraryReader;

/**
 * Case files made by Jazzer, which watches which branches each one reaches: a sound one with bytes put in the place of
 * others. In {@code mvn verify} the kept inputs alone are tried again; {@code mvn test -Pfuzz} looks for new ones.
 */
class CaseFileFuzz {

    private static final int LONGEST = 400;
    private static final Path SOUND = Path.of("src/test/resources/sound/base");
    private static final byte[] CASE = sound();
    private static final Path CONTENT = content();
    private static final CheckedLibrary LIBRARY = LibraryChecker.check(LibraryReader.read(CONTENT));

    @FuzzTest(maxDuration = "10m")
    void any_case_file_is_understood_or_refused_with_a_place(FuzzedDataProvider data) throws IOException {
        int from = data.consumeInt(0, CASE.length);
        int to = Math.min(CASE.length, from + data.consumeInt(0, LONGEST));
        byte[] instead = data.consumeRemainingAsBytes();
        Path folder = CONTENT.resolve("cases/tide");
        Files.write(folder.resolve("case.md"), joined(from, instead, to));
        List<String> faults = WholeLine.faults(WholeLine.checked(CONTENT, folder, LIBRARY));
        if (!faults.isEmpty()) {
            throw new AssertionError(String.join("\n", faults));
        }
    }

    private static byte[] joined(int from, byte[] instead, int to) {
        byte[] whole = new byte[from + instead.length + CASE.length - to];
        System.arraycopy(CASE, 0, whole, 0, from);
        System.arraycopy(instead, 0, whole, from, instead.length);
        System.arraycopy(CASE, to, whole, from + instead.length, CASE.length - to);
        return whole;
    }

    private static byte[] sound() {
        try {
            return Files.readAllBytes(SOUND.resolve("cases/tide/case.md"));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static Path content() {
        try {
            Path content = Files.createTempDirectory("fuzz").resolve("content");
            ChangedContent.copy(SOUND, content);
            return content;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
