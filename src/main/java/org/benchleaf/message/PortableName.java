package org.benchleaf.message;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Whether the name of a file or folder can be held by every file system. What Windows keeps for itself: Microsoft, "Naming
 * Files, Paths, and Namespaces". The longest name leaves room for the folders above it in the 260 characters of a path there.
 */
public final class PortableName {

    /** The longest name, in characters. */
    public static final int LONGEST = 100;
    private static final Pattern SIGN = Pattern.compile("[<>:\"/\\\\|?*\\p{Cntrl}]");
    /** The signs that turn the direction of what follows (Unicode Standard Annex 9, table 4 and the marks of 2.6). */
    private static final Pattern DIRECTION = Pattern.compile("[\\u061C\\u200E\\u200F\\u202A-\\u202E\\u2066-\\u2069]");
    private static final Set<String> DEVICES = Set.of("con", "prn", "aux", "nul", "conin$", "conout$",
            "com0", "com1", "com2", "com3", "com4", "com5", "com6", "com7", "com8", "com9", "com¹", "com²", "com³",
            "lpt0", "lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9", "lpt¹", "lpt²", "lpt³");

    private PortableName() {
    }

    /** What is the matter with a name, as the end of a sentence about it; empty if nothing is. */
    public static Optional<String> fault(String name) {
        return fault(name, LONGEST);
    }

    /** The same for a name that may have fewer characters. */
    public static Optional<String> fault(String name, int longest) {
        if (name.length() > longest) {
            return Optional.of("it has " + name.length() + " characters, more than " + longest);
        }
        if (isDevice(name)) {
            return Optional.of("Windows keeps it for a device");
        }
        if (SIGN.matcher(name).find()) {
            return Optional.of("it holds a sign that Windows keeps for itself");
        }
        if (DIRECTION.matcher(name).find()) {
            return Optional.of("it holds a sign that turns the direction of writing, so that it is not what it looks like");
        }
        return name.endsWith(".") || name.endsWith(" ") || name.startsWith(" ")
                ? Optional.of("a full stop at its end, or a blank at either end, gets lost on Windows") : Optional.empty();
    }

    /** What is the matter with a name beside another, empty if they are not taken for one where capitals do not count. */
    public static Optional<String> fault(String name, String other) {
        return !name.equals(other) && folded(name).equals(folded(other))
                ? Optional.of("it differs from '" + other + "' in capitals or in how its letters are stored alone")
                : Optional.empty();
    }

    /** Whether Windows keeps a name for a device, with or without an ending. */
    public static boolean isDevice(String name) {
        return DEVICES.contains(name.split("\\.", 2)[0].stripTrailing().toLowerCase(Locale.ROOT));
    }

    /** What two names have in common that cannot stand beside each other where capitals or composed letters do not count. */
    public static String folded(String name) {
        return Normalizer.normalize(Normalizer.normalize(name, Normalizer.Form.NFC).toUpperCase(Locale.ROOT)
                .toLowerCase(Locale.ROOT), Normalizer.Form.NFC);
    }
}
