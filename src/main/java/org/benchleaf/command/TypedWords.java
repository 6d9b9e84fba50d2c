package org.benchleaf.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/**
 * The words of the command line as they were typed.
 *
 * <p>In a locale without °, µ or ³ the platform hands such letters over as replacement characters, and a temperature
 * could not be given at all. Linux keeps the typed bytes, which are read again there, as UTF-8.
 */
public final class TypedWords {

    private static final char LOST = '\uFFFD';
    private static final Path TYPED = Path.of("/proc/self/cmdline");

    private TypedWords() {
    }

    /** The words as typed, or as handed over where nothing was lost or nothing better is known. */
    public static String[] of(String... handedOver) {
        if (Arrays.stream(handedOver).noneMatch(word -> word.indexOf(LOST) >= 0) || !Files.isReadable(TYPED)) {
            return handedOver;
        }
        try {
            return last(handedOver, Files.readAllBytes(TYPED));
        } catch (IOException unreadable) {
            return handedOver;
        }
    }

    /** The last words of a command line whose words each end in a zero byte. */
    static String[] last(String[] handedOver, byte[] commandLine) {
        List<String> typed = Arrays.asList(new String(commandLine, StandardCharsets.UTF_8).split("\0", -1));
        int end = typed.size() - 1;
        return end < handedOver.length ? handedOver
                : typed.subList(end - handedOver.length, end).toArray(String[]::new);
    }
}
