package org.benchleaf.pack;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.benchleaf.message.PortableName;

/** Says whether a path of the site can be held by every file system, archive and host. */
final class PathRule {

    private static final int LONGEST = 119;
    private static final Pattern SEGMENT = Pattern.compile("[a-z0-9-]([a-z0-9.-]*[a-z0-9-])?");

    /** Names at the root that a published format fixes: the Citation File Format. */
    private static final Set<String> FIXED = Set.of("CITATION.cff");

    private PathRule() {
    }

    /** What is the matter with a path; empty if nothing is. */
    static Optional<String> fault(String path) {
        if (FIXED.contains(path)) {
            return Optional.empty();
        }
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
            if (PortableName.isDevice(segment)) {
                return Optional.of("'" + segment + "' is a device's name on Windows");
            }
        }
        return Optional.empty();
    }
}
