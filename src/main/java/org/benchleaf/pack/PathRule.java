package org.benchleaf.pack;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Says whether a path of the site can be held by every file system, archive and host. */
final class PathRule {

    private static final int LONGEST = 119;
    private static final Pattern SEGMENT = Pattern.compile("[a-z0-9-]([a-z0-9.-]*[a-z0-9-])?");
    /** Names that Windows keeps for devices, with or without an extension. */
    private static final Set<String> RESERVED = Set.of("con", "prn", "aux", "nul",
            "com0", "com1", "com2", "com3", "com4", "com5", "com6", "com7", "com8", "com9",
            "lpt0", "lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9");

    private PathRule() {
    }

    /** What is the matter with a path; empty if nothing is. */
    static Optional<String> fault(String path) {
        if (path.length() > LONGEST) {
            return Optional.of("it has " + path.length() + " characters, more than " + LONGEST);
        }
        for (String segment : path.split("/", -1)) {
            if (segment.isEmpty()) {
                return Optional.of("a name in it is empty");
            }
            if (!SEGMENT.matcher(segment).matches()) {
                return Optional.of("'" + segment + "' has other characters than a-z, 0-9, '-' and '.' inside");
            }
            if (RESERVED.contains(segment.split("\\.", 2)[0])) {
                return Optional.of("'" + segment + "' is a device's name on Windows");
            }
        }
        return Optional.empty();
    }
}
