package org.benchleaf.pack;

import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The places that a run works with.
 *
 * @param shown the site's folder as the author named it
 * @param site the site's folder itself
 * @param beside the folder beside it, where an edition is made ready and what was learnt is kept
 */
record Workshop(Path shown, Path site, Path beside) {

    /** The places of a site, which need not be there yet. */
    static Workshop of(Path site) {
        Path whole = site.toAbsolutePath().normalize();
        Path real = Files.exists(whole) ? Disk.reading(site, whole::toRealPath) : whole;
        return new Workshop(site, real, real.resolveSibling("." + real.getFileName() + ".edition"));
    }

    Path staged() {
        return beside.resolve("staged");
    }

    Path plan() {
        return beside.resolve("plan.json");
    }

    Path memory() {
        return beside.resolve("memory.json");
    }

    Path nextMemory() {
        return beside.resolve("memory-next.json");
    }

    Path lock() {
        return beside.resolve("lock");
    }

    Path list() {
        return site.resolve(EditionList.PATH);
    }

    Path shown(String path) {
        return shown.resolve(path);
    }
}
