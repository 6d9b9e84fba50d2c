package org.benchleaf.run;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.message.EditionMessages;
import org.benchleaf.message.Message;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Place;
import org.benchleaf.message.PortableName;
import org.benchleaf.pack.Edition;
import org.benchleaf.pack.EditionStopped;
import org.benchleaf.pack.SitePacker;
import org.benchleaf.publish.TemplateStop;
import org.benchleaf.read.CaseReader;

/**
 * One run of publishing: sends every case through the stages, several at once and each only if something about it has
 * changed, and brings the edition into its sites if nothing is the matter with any of them.
 */
public final class Publishing {

    private static final String PROGRAM = "org.benchleaf.";

    private final Stages stages;
    private final LocalDate on;
    private final int threads;
    private final Progress.Shown shown;

    private final Queue<Told> told = new ConcurrentLinkedQueue<>();
    private final Map<Audience, Map<String, CaseCard>> cards = new EnumMap<>(Audience.class);
    private final Map<Path, Stood> stood = new ConcurrentSkipListMap<>();
    private final AtomicInteger kept = new AtomicInteger();
    private final AtomicReference<RuntimeException> stopped = new AtomicReference<>();
    /** Cases of which no pages were made, so that what leads to them is no fault of another page. */
    private final Set<String> unmade = new ConcurrentSkipListSet<>();
    private volatile boolean errors;
    /** Whether what all cases share is sound, so that pages can be made with it. */
    private boolean shared;

    /**
     * Prepares a run.
     *
     * @param on the day of publishing
     * @param threads how many cases are worked on at once
     */
    public Publishing(Stages stages, LocalDate on, int threads, Progress.Shown shown) {
        this.stages = stages;
        this.on = on;
        this.threads = threads;
        this.shown = shown;
        stages.audiences().forEach(audience -> cards.put(audience, new ConcurrentSkipListMap<>()));
    }

    /**
     * How the files of a case stood when the run came to it.
     *
     * @param stand hash of their sizes and times
     * @param hashes hash of what each holds
     * @param isMade whether pages were made of them
     */
    private record Stood(int stand, int hashes, boolean isMade) {
    }

    /**
     * What a run came to.
     *
     * @param told everything said, in reading order
     * @param editions the edition in each site, that for the public first; none if there is no new one
     * @param cases how many cases there are
     * @param published how many of them have pages
     * @param kept how many were unchanged
     */
    public record Outcome(List<Told> told, List<Edition> editions, int cases, int published, int kept) {

        public Outcome {
            told = List.copyOf(told);
            editions = List.copyOf(editions);
        }

        public boolean isNew() {
            return !editions.isEmpty();
        }
    }

    /**
     * Runs.
     *
     * @param folders of the sites
     * @param library what was said about what all cases share
     * @param asked what keeps the sites as they are until the author has answered
     * @throws EditionStopped if the disk, another run or a file in the way stops it
     */
    public Outcome run(Map<Audience, Path> folders, Messages library, Messages asked) {
        tell(library);
        tell(asked);
        shared = !library.hasErrors();
        try (Sites sites = Sites.open(folders)) {
            sites.packers().forEach(packer -> tell(packer.told()));
            List<Path> cases = stages.cases();
            all(cases, sites);
            if (shared) {
                sites.byAudience().forEach(this::complete);
                stillTheSame();
            }
            List<Edition> editions = errors ? List.of() : apply(sites);
            long published = cards.values().stream().flatMap(site -> site.keySet().stream()).distinct().count();
            return new Outcome(told.stream().sorted(Told.READING_ORDER).distinct().toList(), editions, cases.size(),
                    (int) published, kept.get());
        }
    }

    /** An edition is of one moment: what changed since it was read, shared or of a case, is told, and nothing is applied. */
    private void stillTheSame() {
        stages.changed().ifPresent(this::tellChanged);
        stood.entrySet().parallelStream().filter(each -> isOther(each.getKey(), each.getValue())).map(Map.Entry::getKey)
                .toList().forEach(this::tellChanged);
    }

    /** The files of a made case are hashed once more; those of a kept one were only hashed, so that their times will do. */
    private boolean isOther(Path folder, Stood before) {
        Map<Path, String> now = new TreeMap<>();
        if (!before.isMade()) {
            ContentHash.stand(folder, CaseReader::reads, now);
            return now.hashCode() != before.stand();
        }
        int hashes = ContentHash.hashes(folder, CaseReader::reads, now).hashCode();
        return now.hashCode() != before.stand() || hashes != before.hashes();
    }

    private void tellChanged(Path file) {
        tell(EditionMessages.CHANGED_WHILE_READ.at(Place.file(name(file))));
    }

    /** Makes the pages of a whole site and verifies it. */
    private void complete(Audience audience, SitePacker packer) {
        WholeSite site = stages.whole(audience, List.copyOf(cards.get(audience).values()));
        SiteStaging staging = new SiteStaging(stages, site, packer, this::tell);
        staging.pages(shown);
        staging.first(!errors);
        tell(packer.stageKept(on));
        tell(packer.verify(unmade));
    }

    private List<Edition> apply(Sites sites) {
        sites.packers().forEach(packer -> tell(packer.changedByHand()));
        try (Progress progress = shown.of("Files", sites.ready())) {
            return sites.apply(on, progress);
        }
    }

    /** Each thread takes the next case when it is done with one, so that only as many are in memory as there are threads. */
    private void all(List<Path> cases, Sites sites) {
        AtomicInteger next = new AtomicInteger();
        ExecutorService pool = Executors.newFixedThreadPool(Math.max(1, Math.min(threads, cases.size())));
        try (Progress progress = shown.of("Cases", cases.size())) {
            List<Future<?>> workers = new ArrayList<>();
            for (int worker = 0; worker < threads; worker++) {
                workers.add(pool.submit(() -> {
                    for (int at = next.getAndIncrement(); at < cases.size() && stopped.get() == null;
                            at = next.getAndIncrement()) {
                        guarded(cases.get(at), sites);
                        progress.step();
                    }
                }));
            }
            for (Future<?> worker : workers) {
                worker.get();
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while publishing", interrupted);
        } catch (java.util.concurrent.ExecutionException failed) {
            throw new IllegalStateException(failed.getCause());
        } finally {
            pool.shutdownNow();
        }
        if (stopped.get() != null) {
            throw stopped.get();
        }
    }

    private void guarded(Path folder, Sites sites) {
        try {
            one(folder, sites);
        } catch (EditionStopped | TemplateStop stop) {
            stopped.compareAndSet(null, stop);
        } catch (UncheckedIOException broken) {
            stopped.compareAndSet(null, unreadable(folder, broken));
        } catch (RuntimeException | StackOverflowError fault) {
            tell(fault(folder.resolve("case.md"), fault));
        } catch (OutOfMemoryError full) {
            stopped.compareAndSet(null, new EditionStopped(EditionMessages.PROGRAM_FAILED.at(
                    Place.file(name(folder.resolve("case.md"))), "failure", "there is not enough memory"), full));
        }
    }

    private static String name(Path file) {
        return file.toString().replace('\\', '/');
    }

    /**
     * What to tell of a failure that is the program's own, or that of a name the locale lacks letters for; its trace is for those who ask
     * for it.
     */
    public static Message fault(Path place, Throwable fault) {
        if (System.getProperty("benchleaf.trace") != null) {
            fault.printStackTrace();
        }
        return fault instanceof InvalidPathException wrong
                ? EditionMessages.NAME_NOT_HERE.at(Place.file(name(place)), "name", wrong.getInput(), "reason", lowered(wrong.getReason()))
                : EditionMessages.PROGRAM_FAILED.at(Place.file(name(place)), "failure", failure(fault));
    }

    private static String lowered(String sentence) {
        return sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
    }

    /** The kind of failure and where, in a library and in the program itself; never its words: they might quote the case. */
    private static String failure(Throwable fault) {
        Stream<StackTraceElement> ends = Stream.concat(Arrays.stream(fault.getStackTrace()).limit(1),
                Arrays.stream(fault.getStackTrace()).filter(call -> call.getClassName().startsWith(PROGRAM)).limit(1));
        String where = ends.distinct().map(call -> call.getFileName() + ":" + call.getLineNumber()).collect(Collectors.joining(", "));
        return fault.getClass().getSimpleName() + (where.isEmpty() ? "" : " at " + where);
    }

    public static EditionStopped unreadable(Path place, UncheckedIOException broken) {
        IOException cause = broken.getCause();
        String file = cause instanceof java.nio.file.FileSystemException named && named.getFile() != null
                ? named.getFile() : place.toString();
        String reason = cause instanceof AccessDeniedException ? "it is not permitted"
                : cause instanceof NoSuchFileException ? "it is gone" : "the disk refused";
        return new EditionStopped(EditionMessages.CANNOT_READ.at(Place.file(file.replace('\\', '/')), "reason", reason),
                broken);
    }

    private void one(Path folder, Sites sites) {
        String id = folder.getFileName().toString();
        Map<Path, String> before = new TreeMap<>();
        SortedMap<Path, String> hashes = ContentHash.hashes(folder, CaseReader::reads, before);
        String key = ContentHash.of(stages.seed(id), folder, hashes);
        stood.put(folder, new Stood(before.hashCode(), hashes.hashCode(), false));
        Optional<CaseNote> note = sites.remembered(id, key);
        if (note.filter(same -> same.on().equals(on.toString())).isPresent()) {
            keep(id, note.get(), sites);
            return;
        }
        Stages.Checked checked = stages.check(folder);
        if (note.filter(same -> same.standing().equals(checked.standing())).isPresent()) {
            keep(id, new CaseNote(on.toString(), checked.standing(), note.get().cards(), note.get().told()), sites);
            return;
        }
        tell(checked.messages());
        stood.put(folder, new Stood(before.hashCode(), hashes.hashCode(), true));
        Stages.Made made = shared ? checked.make() : new Stages.Made(Map.of(), new Messages());
        tell(made.messages());
        unchanged(folder, before);
        // The name of a case is told once, where it is read, and not again for each of its files.
        if (made.parts().isEmpty() || PortableName.fault(id).isPresent()) {
            if (checked.messages().hasErrors() || made.messages().hasErrors() || !shared) {
                unmade.add(id);
            }
            return;
        }
        CaseNote left = note(checked, made);
        shelve(id, left);
        Messages staged = sites.stage(id, key, left, made.parts());
        tell(staged);
        if (staged.hasErrors()) {
            unmade.add(id);
        }
    }

    private CaseNote note(Stages.Checked checked, Stages.Made made) {
        Messages all = new Messages();
        all.addAll(checked.messages());
        all.addAll(made.messages());
        Map<Audience, CaseCard> madeCards = new EnumMap<>(Audience.class);
        made.parts().forEach((audience, part) -> madeCards.put(audience, part.card()));
        return new CaseNote(on.toString(), checked.standing(), madeCards, all.all().stream().map(Told::of).toList());
    }

    private void keep(String id, CaseNote note, Sites sites) {
        note.told().forEach(this::tell);
        shelve(id, note);
        kept.incrementAndGet();
        tell(sites.keep(id, note));
    }

    private void shelve(String id, CaseNote note) {
        note.sites().forEach(audience -> cards.get(audience).put(id, note.cards().get(audience)));
    }

    private void unchanged(Path folder, Map<Path, String> before) {
        Map<Path, String> after = new TreeMap<>();
        ContentHash.stand(folder, CaseReader::reads, after);
        if (!after.equals(before)) {
            Path changed = after.keySet().stream().filter(file -> !after.get(file).equals(before.get(file))).findFirst()
                    .orElse(folder);
            tellChanged(changed);
            stood.remove(folder);
        }
    }

    private void tell(Messages messages) {
        messages.all().forEach(this::tell);
    }

    private void tell(Message message) {
        tell(Told.of(message));
    }

    private void tell(Told message) {
        if (message.isError()) {
            // Set and never put back: "errors |= false" by one thread could undo what another has just said.
            errors = true;
        }
        told.add(message);
    }
}
