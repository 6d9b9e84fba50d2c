package org.benchleaf.run;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.benchleaf.model.Confidential;
import org.benchleaf.privacy.PrivateMarks;
import org.benchleaf.privacy.PrivateScan;
import org.benchleaf.read.CaseReader;

/**
 * The private values of all cases of one edition, read when they are first asked for, so that a run in which nothing has changed
 * reads no case.
 */
final class PrivateValues {

    private final Path content;
    private final List<Path> cases;
    private final String studioName;
    private Map<String, Confidential> values;
    private volatile PrivateScan scan;

    /**
     * Prepares.
     *
     * @param cases their folders
     * @param studioName which stands on every page by the studio's own will
     */
    PrivateValues(Path content, List<Path> cases, String studioName) {
        this.content = content;
        this.cases = List.copyOf(cases);
        this.studioName = studioName;
    }

    /** Looks for the values of all cases in what belongs to another case or to none. */
    synchronized PrivateScan scan() {
        if (scan == null) {
            Map<String, Confidential> all = new ConcurrentHashMap<>();
            cases.parallelStream().forEach(folder -> all.put(folder.getFileName().toString(),
                    CaseReader.confidential(content, folder)));
            values = all;
            scan = PrivateScan.ofAll(all, studioName);
        }
        return scan;
    }

    /** Looks for them in the files of the content that all cases share. */
    PrivateScan inShared() {
        scan();
        return PrivateScan.ofShared(values, studioName);
    }

    /** Whether anything asked for them; if nothing did, no case was made, and none of them can be new. */
    boolean areRead() {
        return scan != null;
    }

    /** A mark of them, which tells whether they are the same and not what they are; empty if they were not read. */
    Optional<String> marks() {
        return areRead() ? Optional.of(PrivateMarks.of(values)) : Optional.empty();
    }

    /**
     * Looks for those that have come since an earlier edition.
     *
     * @param before the mark that was left by it
     */
    PrivateScan newSince(String before) {
        scan();
        return PrivateScan.ofAll(PrivateMarks.newSince(before, values), studioName);
    }
}
