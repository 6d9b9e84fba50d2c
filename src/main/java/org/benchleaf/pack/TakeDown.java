package org.benchleaf.pack;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.message.EditionMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.page.CaseFiles;
import org.benchleaf.publish.TakenFile;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;

/**
 * Takes files out of a site that may not be public any more, and everything in the other pages that leads to them.
 *
 * <p>It works on the last edition as it stands, before anything of a new one is made: it needs no sound content, no
 * template, and no room on the disk. What cannot be rewritten without what was taken down leaves with it.
 */
public final class TakeDown {

    /** Kinds of files that can name another file. */
    private static final Set<String> TELLING = Set.of("html", "js", "json", "csv", "txt", "xml");

    private final Workshop workshop;
    private final Judge judge;
    private final Messages told = new Messages();
    private final SortedMap<String, IOException> refused = new TreeMap<>();
    private final SortedSet<String> removed = new TreeSet<>();
    private final Set<String> titles = new HashSet<>();

    private TakeDown(Workshop workshop, Judge judge) {
        this.workshop = workshop;
        this.judge = judge;
    }

    /** Decides what may stay. */
    public interface Judge {

        /**
         * Tells which files of a case may not stay; asked with paths in the case's folder.
         *
         * @param published the cases that have files in the site
         */
        Predicate<String> goes(String caseId, Set<String> published);
    }

    /**
     * Takes down what may not stay.
     *
     * @return what has left, and what could not be taken out; nothing if all may stay
     * @throws EditionStopped if another run has hold of the site, or its list of files cannot be read
     */
    public static Messages carryOut(Path site, Judge judge) {
        Workshop workshop = Workshop.of(site);
        if (Disk.look(workshop.list()).isEmpty() && Disk.look(workshop.plan()).isEmpty()) {
            return new Messages();
        }
        Optional<RunLock> lock = lock(workshop, site);
        try {
            return new TakeDown(workshop, judge).run();
        } finally {
            lock.ifPresent(RunLock::close);
        }
    }

    /** A disk that takes nothing more gives no lock either; that must not keep pages in the site. */
    private static Optional<RunLock> lock(Workshop workshop, Path site) {
        try {
            Disk.writing(site, () -> Files.createDirectories(workshop.beside()));
            return Optional.of(RunLock.take(workshop.lock(), site));
        } catch (EditionStopped stopped) {
            if (stopped.told().id() == EditionMessages.ANOTHER_RUN) {
                throw stopped;
            }
            return Optional.empty();
        }
    }

    private Messages run() {
        SortedSet<String> known = new TreeSet<>(list().files().keySet());
        plan().ifPresent(plan -> known.addAll(plan.moves()));
        SortedSet<String> gone = gone(known);
        if (gone.isEmpty()) {
            return told;
        }
        // What holds the whole site holds them too, and is made anew by the next edition.
        known.stream().filter(path -> CaseFiles.caseOf(path).isEmpty() && TakenFile.isOne(path)).forEach(gone::add);
        readTitles(gone, known);
        gone.forEach(this::remove);
        if (plan().isPresent()) {
            completeInterrupted();
        }
        SortedMap<String, String> files = new TreeMap<>(list().files());
        gone.addAll(unshown(gone, files.keySet()));
        gone.forEach(this::remove);
        files.keySet().removeIf(path -> gone.contains(path) && !refused.containsKey(path));
        purge(gone, files);
        keep(files);
        remember(gone, files);
        tell(gone);
        return told;
    }

    private EditionList list() {
        return SitePacker.readList(workshop, SitePacker.listBytes(workshop));
    }

    private Optional<Plan> plan() {
        return Disk.look(workshop.plan()).isEmpty() ? Optional.empty()
                : Optional.of(Disk.reading(workshop.plan(), () -> Plan.read(Files.readAllBytes(workshop.plan()))));
    }

    /** A run that was cut off moves the rest of its files in; what it has of the files taken down is gone already. */
    private void completeInterrupted() {
        try {
            SitePacker.completeInterrupted(workshop);
        } catch (EditionStopped blocked) {
            // The next run tells why; until then its files lie where only their owner sees them.
        }
    }

    private SortedSet<String> gone(SortedSet<String> known) {
        Map<String, List<String>> byCase = known.stream().filter(path -> CaseFiles.caseOf(path).isPresent())
                .collect(Collectors.groupingBy(path -> CaseFiles.caseOf(path).get()));
        return byCase.entrySet().parallelStream().flatMap(each -> {
            Predicate<String> goes = judge.goes(each.getKey(), byCase.keySet());
            return each.getValue().stream().filter(path -> goes.test(CaseFiles.inFolder(path)));
        }).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> cases(Collection<String> paths) {
        return paths.stream().map(CaseFiles::caseOf).flatMap(Optional::stream)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** The titles of cases of which nothing stays, read from their own pages while these are still there. */
    private void readTitles(SortedSet<String> gone, SortedSet<String> known) {
        Set<String> whole = cases(gone);
        whole.removeAll(cases(known.stream().filter(path -> !gone.contains(path)).toList()));
        gone.stream().filter(path -> path.endsWith(".html") && whole.contains(CaseFiles.caseOf(path).orElse("")))
                .forEach(path -> text(path).map(text -> Jsoup.parse(text).selectFirst("h1")).map(Element::text)
                        .filter(title -> !title.isBlank()).ifPresent(titles::add));
    }

    /** Pictures that stood on pages taken down, and stand on none of the pages that the case has left. */
    private Set<String> unshown(SortedSet<String> gone, Set<String> files) {
        Set<String> unshown = new TreeSet<>();
        for (String caseId : cases(gone.stream().filter(path -> path.endsWith(".html")).toList())) {
            List<String> left = files.stream().filter(path -> CaseFiles.isOf(caseId, path) && !gone.contains(path))
                    .toList();
            Set<String> shown = left.stream().filter(path -> path.endsWith(".html")).flatMap(this::shown)
                    .collect(Collectors.toSet());
            left.stream().filter(path -> CaseFiles.inFolder(path).startsWith("pictures/") && !shown.contains(path))
                    .forEach(unshown::add);
        }
        return unshown;
    }

    private Stream<String> shown(String page) {
        return text(page).stream().flatMap(text -> PageScan.of(text).links().stream())
                .map(link -> Target.of(page, link).path());
    }

    private Optional<String> text(String path) {
        Path file = workshop.site().resolve(path);
        return Disk.look(file).filter(there -> there.isRegularFile())
                .map(there -> Disk.reading(file, () -> Files.readString(file, StandardCharsets.UTF_8)));
    }

    private void remove(String path) {
        try {
            if (Disk.look(workshop.site().resolve(path)).isPresent()) {
                Mover.remove(workshop.site(), path);
                removed.add(path);
            }
            if (Disk.look(workshop.staged()).isPresent()) {
                Mover.remove(workshop.staged(), path);
            }
            refused.remove(path);
        } catch (IOException stays) {
            refused.put(path, stays);
        }
    }

    /** Takes what leads to the files out of all other files, and out of their list those that had to leave too. */
    private void purge(SortedSet<String> gone, SortedMap<String, String> files) {
        Purge purge = new Purge(gone, titles);
        Set<String> ids = cases(gone);
        for (String path : List.copyOf(files.keySet())) {
            if (gone.contains(path) || path.equals(KeptList.PATH) || !TELLING.contains(path.substring(path.lastIndexOf('.') + 1))) {
                continue;
            }
            Optional<String> before = text(path).filter(text -> ids.contains(CaseFiles.caseOf(path).orElse(""))
                    || ids.stream().anyMatch(id -> text.contains(id + "/"))
                    || gone.stream().anyMatch(other -> CaseFiles.caseOf(other).isEmpty() && text.contains(other)));
            if (before.isPresent()) {
                purge(path, before.get(), purge.of(path, before.get()), files);
            }
        }
    }

    /** Devices that keep the site learn from its list what has left it. */
    private void keep(SortedMap<String, String> files) {
        if (!files.containsKey(KeptList.PATH)) {
            return;
        }
        byte[] list = KeptList.of(list().on().map(LocalDate::toString).orElse(""), files).bytes();
        try {
            replace(workshop.site().resolve(KeptList.PATH), list);
            files.put(KeptList.PATH, Hash.of(list));
        } catch (IOException full) {
            leaveToo(KeptList.PATH, Disk.reason(full), files);
        }
    }

    private void purge(String path, String before, Optional<String> after, SortedMap<String, String> files) {
        if (after.filter(before::equals).isPresent()) {
            return;
        }
        try {
            if (after.isPresent()) {
                byte[] bytes = after.get().getBytes(StandardCharsets.UTF_8);
                replace(workshop.site().resolve(path), bytes);
                files.put(path, Hash.of(bytes));
                return;
            }
            leaveToo(path, "what is left of it would still tell of the case", files);
        } catch (IOException full) {
            leaveToo(path, Disk.reason(full), files);
        }
    }

    private void leaveToo(String path, String reason, SortedMap<String, String> files) {
        remove(path);
        if (!refused.containsKey(path)) {
            files.remove(path);
            told.add(EditionMessages.LEFT_TOO.at(Disk.place(workshop.shown(path)), "path", path, "reason", reason));
        }
    }

    private void replace(Path file, byte[] bytes) throws IOException {
        Path draft = workshop.beside().resolve("rewritten");
        Files.createDirectories(workshop.beside());
        try {
            Files.write(draft, bytes);
            Disk.move(draft, file, workshop.site());
        } finally {
            Files.deleteIfExists(draft);
        }
    }

    /** Leaves of these cases nothing beside the site; the list of the edition comes last, so that a cut repeats all this. */
    private void remember(SortedSet<String> gone, SortedMap<String, String> files) {
        byte[] list = new EditionList(list().on(), files).bytes();
        CaseMemory memory = CaseMemory.read(workshop.memory());
        boolean current = memory.edition().equals(SitePacker.listBytes(workshop).map(Hash::of).orElse("none"));
        SortedMap<String, Remembered> left = new TreeMap<>(memory.cases());
        left.values().removeIf(remembered -> remembered.batch().files().entrySet().stream().anyMatch(file ->
                gone.contains(file.getKey()) || !file.getValue().hash().equals(files.get(file.getKey()))));
        try {
            Files.deleteIfExists(workshop.memory());
            if (current) {
                new CaseMemory(Hash.of(list), left).write(workshop.nextMemory());
                Disk.ownerOnly(workshop.nextMemory());
                Disk.move(workshop.nextMemory(), workshop.memory(), workshop.beside());
            }
            replace(workshop.list(), list);
        } catch (IOException full) {
            // A memory only saves work; a list that names files no longer there is set right by the next edition.
            Disk.look(workshop.nextMemory()).ifPresent(half -> Disk.removeTree(workshop.nextMemory()));
        }
    }

    private void tell(SortedSet<String> gone) {
        for (String caseId : cases(gone)) {
            long left = removed.stream().filter(path -> CaseFiles.isOf(caseId, path)).count();
            if (left > 0) {
                told.add(EditionMessages.TAKEN_DOWN.at(Disk.place(workshop.shown(CaseFiles.FOLDER + caseId)), "number", left,
                        "case", caseId));
                tellForeign(caseId);
            }
        }
        refused.forEach((path, reason) -> told.add(EditionMessages.NOT_TAKEN_DOWN.at(Disk.place(workshop.shown(path)),
                "reason", Disk.reason(reason))));
    }

    /** What somebody else put into the folder of a case stays, and may tell of the case. */
    private void tellForeign(String caseId) {
        Set<String> ours = list().files().keySet();
        Path site = workshop.site();
        Path there = site.resolve(CaseFiles.FOLDER + caseId);
        if (Disk.look(there).isEmpty()) {
            return;
        }
        List<Path> all = Disk.reading(there, () -> {
            try (Stream<Path> walk = Files.walk(there)) {
                return walk.filter(path -> !Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)).sorted().toList();
            }
        });
        all.stream().map(path -> site.relativize(path).toString().replace('\\', '/'))
                .filter(path -> !ours.contains(path) && !refused.containsKey(path))
                .forEach(path -> told.add(EditionMessages.FOREIGN_STAYS.at(Disk.place(workshop.shown(path)), "case", caseId)));
    }
}
