package org.benchleaf.pack;

import java.nio.file.Files;
import java.nio.file.Path;
import org.benchleaf.publish.SiteFile;

/** A file of a case that stands in the site and is taken over as it is; read only when somebody wants to see it. */
public final class KeptFile {

    private final String caseId;
    private final String path;
    private final Path file;

    KeptFile(String caseId, String path, Path file) {
        this.caseId = caseId;
        this.path = path;
        this.file = file;
    }

    /** The case that it belongs to. */
    public String caseId() {
        return caseId;
    }

    /** Where it stands in the site. */
    public String path() {
        return path;
    }

    /**
     * The file with its bytes.
     *
     * @throws EditionStopped if the disk refuses
     */
    public SiteFile read() {
        return new SiteFile(path, Disk.reading(file, () -> Files.readAllBytes(file)));
    }
}
