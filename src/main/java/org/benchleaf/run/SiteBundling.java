package org.benchleaf.run;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.message.Messages;
import org.benchleaf.pack.KeptFile;
import org.benchleaf.pack.SitePacker;
import org.benchleaf.publish.SiteFile;
import org.benchleaf.publish.TakenFile;
import org.benchleaf.publish.TakenFiles;

/** Adds to an edition the files that hold a whole site, made anew only where a file inside is another one. */
final class SiteBundling {

    /** More than that nobody takes along, and it would have to be held in memory. */
    private static final long MOST_BYTES = 200_000_000;

    private final SitePacker packer;
    private final Stages.Bundles bundles;

    SiteBundling(SitePacker packer, Stages.Bundles bundles) {
        this.packer = packer;
        this.bundles = bundles;
    }

    /**
     * Adds them.
     *
     * @param shared files of the whole site, its first page the first
     * @param said is told what is the matter
     * @return the same files, the first page offering what was made; as they were if the site is too big for it
     */
    List<SiteFile> with(List<SiteFile> shared, Consumer<Messages> said) {
        if (packer.bytesOfCases() > MOST_BYTES) {
            return shared;
        }
        String mark = packer.mark(bundles.key(), shared);
        Optional<TakenFiles> kept = packer.rememberedTaken(mark).map(note -> kept(note, said));
        List<SiteFile> files = new ArrayList<>(shared);
        files.set(0, bundles.offered(kept.orElseGet(() -> made(mark, shared, said))));
        return files;
    }

    private TakenFiles kept(String note, Consumer<Messages> said) {
        said.accept(packer.keepTaken(note));
        Map<String, TakenFile> offered = new LinkedHashMap<>();
        note.lines().map(line -> line.split("\t")).forEach(part -> offered.put(part[0], new TakenFile(part[1], part[2])));
        return TakenFiles.kept(offered);
    }

    private TakenFiles made(String mark, List<SiteFile> shared, Consumer<Messages> said) {
        Messages messages = new Messages();
        TakenFiles taken = bundles.make(Stream.concat(packer.ofCases().stream().map(KeptFile::read)
                .filter(file -> !TakenFile.isOne(file.path())), shared.stream()).toList(), messages);
        said.accept(messages);
        String note = taken.offered().entrySet().stream().map(each -> each.getKey() + "\t" + each.getValue().path() + "\t"
                + each.getValue().size()).collect(Collectors.joining("\n"));
        said.accept(packer.stageTaken(mark, note, taken.files()));
        return taken;
    }
}
