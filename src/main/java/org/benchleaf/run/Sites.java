package org.benchleaf.run;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.message.Messages;
import org.benchleaf.pack.Edition;
import org.benchleaf.pack.SitePacker;

/** The sites of one edition, held together: all are ready before any of them is changed. */
final class Sites implements AutoCloseable {

    private final Map<Audience, SitePacker> packers = new EnumMap<>(Audience.class);

    private Sites() {
    }

    /**
     * Takes hold of the folders of the sites.
     *
     * @throws org.benchleaf.pack.EditionStopped if another run has hold of one, or the disk refuses
     */
    static Sites open(Map<Audience, Path> folders) {
        Sites sites = new Sites();
        try {
            folders.forEach((audience, folder) -> sites.packers.put(audience, SitePacker.open(folder)));
            return sites;
        } catch (RuntimeException stopped) {
            sites.close();
            throw stopped;
        }
    }

    Collection<SitePacker> packers() {
        return packers.values();
    }

    Map<Audience, SitePacker> byAudience() {
        return packers;
    }

    /** What was left with a case whose files, made from content of that key, are all still in their sites and whole. */
    Optional<CaseNote> remembered(String caseId, String key) {
        Map<Audience, String> notes = new EnumMap<>(Audience.class);
        packers.forEach((audience, packer) -> packer.remembered(caseId, key).ifPresent(note -> notes.put(audience, note)));
        return notes.values().stream().findFirst().flatMap(CaseNote::read)
                .filter(note -> notes.keySet().containsAll(note.sites()));
    }

    /** Takes a case's files over from the last edition as they are. */
    Messages keep(String caseId, CaseNote note) {
        Messages messages = new Messages();
        note.sites().forEach(audience -> messages.addAll(packers.get(audience).keep(caseId, note.text())));
        return messages;
    }

    /** Makes a case's files ready in each site. */
    Messages stage(String caseId, String key, CaseNote note, Map<Audience, Stages.Part> parts) {
        Messages messages = new Messages();
        parts.forEach((audience, part) -> messages.addAll(
                packers.get(audience).stage(caseId, key, note.text(), part.files())));
        return messages;
    }

    /** How many files {@link #apply} will move in. */
    int ready() {
        return packers.values().stream().collect(Collectors.summingInt(SitePacker::ready));
    }

    /** Moves the edition in, site by site; a run that is cut off is completed by the next. */
    List<Edition> apply(LocalDate on, Progress progress) {
        packers.values().forEach(packer -> packer.settle(on));
        List<Edition> editions = new ArrayList<>();
        packers.values().forEach(packer -> editions.add(packer.apply(count -> progress.step())));
        return editions;
    }

    @Override
    public void close() {
        packers.values().forEach(SitePacker::close);
    }
}
