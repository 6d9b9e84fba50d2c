package org.benchleaf.run;

import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.benchleaf.check.PublicationChecker;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.message.EditionMessages;
import org.benchleaf.message.Message;
import org.benchleaf.message.Place;
import org.benchleaf.model.Publication;
import org.benchleaf.pack.EditionStopped;
import org.benchleaf.pack.TakeDown;
import org.benchleaf.read.PublicationReader;

/**
 * The first part of every publishing: what may not be public any more leaves the site. It reads nothing of the content
 * but the few lines of each case's publication, so that no other slip can hold it up.
 */
public final class Withdrawals implements TakeDown.Judge {

    private final Path content;
    private final LocalDate day;
    private final Audience audience;
    private final Queue<Message> unknown = new ConcurrentLinkedQueue<>();

    private Withdrawals(Path content, LocalDate day, Audience audience) {
        this.content = content;
        this.day = day;
        this.audience = audience;
    }

    /**
     * Takes down what may not stand in a site on a day.
     *
     * @param audience for whom the site is; whether the studio has another one, its files need not tell
     * @return what has left the site, what could not be taken out, and of which cases it could not be told
     * @throws EditionStopped if another run has hold of the site, or its list of files cannot be read
     */
    public static List<Message> carryOut(Path content, LocalDate day, Path site, Audience audience) {
        Withdrawals withdrawals = new Withdrawals(content, day, audience);
        List<Message> told = TakeDown.carryOut(site, withdrawals).all();
        return Stream.concat(told.stream(), withdrawals.unknown.stream().sorted(
                java.util.Comparator.comparing((Message message) -> message.place().file()))).distinct().toList();
    }

    @Override
    public Predicate<String> goes(String caseId, Set<String> published) {
        Path folder = content.resolve("cases").resolve(caseId);
        if (isDeleted(caseId)) {
            return deleted(caseId, published);
        }
        Optional<Publication> publication = publication(folder);
        if (publication.isEmpty()) {
            unknown.add(EditionMessages.STANDING_UNKNOWN.at(caseFile(caseId)));
            return file -> false;
        }
        Clearance clearance = Clearance.on(day, publication.get(), audience);
        return file -> !clearance.allowsFile(file);
    }

    /** Only what is surely not there counts: a folder that may not be looked into tells nothing. */
    private boolean isDeleted(String caseId) {
        return Files.notExists(content.resolve("cases").resolve(caseId).resolve("case.md"));
    }

    /** Deleting a case withdraws it; but where none of them is there, the wrong folder was named, or a disk is missing. */
    private Predicate<String> deleted(String caseId, Set<String> published) {
        if (published.stream().allMatch(this::isDeleted)) {
            unknown.add(EditionMessages.CASES_MISSING.at(caseFile(caseId), "case", caseId));
            return file -> false;
        }
        return file -> true;
    }

    private Place caseFile(String caseId) {
        return Place.file(content.resolve("cases").resolve(caseId).resolve("case.md").toString().replace('\\', '/'));
    }

    private Optional<Publication> publication(Path folder) {
        try {
            return PublicationReader.find(content, folder).flatMap(PublicationChecker::check);
        } catch (UncheckedIOException unreadable) {
            return Optional.empty();
        }
    }
}
