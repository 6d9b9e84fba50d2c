package org.benchleaf.pack;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.IntConsumer;
import java.util.stream.Stream;
import org.benchleaf.message.EditionMessages;
import org.benchleaf.message.Message;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Place;
import org.benchleaf.publish.SiteFile;

/**
 * Brings a new edition into the site's folder: makes it ready beside the site, verifies it whole, and moves it in file
 * by file. Until {@link #apply} nothing in the site changes, and what Benchleaf did not write never does.
 *
 * <p>{@link #stage} and {@link #keep} may be called by several threads at once.
 */
public final class SitePacker implements AutoCloseable {

    /** What a phone can still show; the pages of the demo stay far below. */
    private static final int MOST_PAGE_BYTES = 2_000_000;

    private final Workshop workshop;
    private final RunLock lock;
    private final EditionList last;
    private final CaseMemory memory;
    private final boolean completed;
    private final Map<String, Remembered> now = new ConcurrentHashMap<>();
    private final Map<String, String> owners = new ConcurrentHashMap<>();
    private final Map<String, String> names = new ConcurrentHashMap<>();
    private final Set<Path> folders = ConcurrentHashMap.newKeySet();
    /** The paths of the files that lie ready beside the site. */
    private final Set<String> staged = ConcurrentHashMap.newKeySet();
    private Optional<Plan> plan = Optional.empty();

    private SitePacker(Workshop workshop, RunLock lock) {
        this.workshop = workshop;
        this.lock = lock;
        this.completed = completeInterrupted(workshop);
        Optional<byte[]> list = listBytes(workshop);
        this.last = readList(workshop, list);
        CaseMemory found = CaseMemory.read(workshop.memory());
        this.memory = found.edition().equals(list.map(Hash::of).orElse("none")) ? found : CaseMemory.none();
    }

    /**
     * Takes hold of a site's folder, which need not be there yet, and completes the run before if it was cut off.
     *
     * @throws EditionStopped if another run has hold of it, or the disk refuses
     */
    public static SitePacker open(Path site) {
        Workshop workshop = workshop(site);
        RunLock lock = RunLock.take(workshop.lock(), site);
        try {
            return new SitePacker(workshop, lock);
        } catch (RuntimeException stopped) {
            lock.close();
            throw stopped;
        }
    }

    /**
     * Takes every file of the last edition out of a site that is published no more.
     *
     * @param on the day of publishing
     * @return whether there was one
     * @throws EditionStopped if another run has hold of it, or the disk refuses
     */
    public static boolean clear(Path site, LocalDate on) {
        if (Disk.look(Workshop.of(site).list()).isEmpty()) {
            return false;
        }
        try (SitePacker packer = open(site)) {
            if (packer.last.files().isEmpty()) {
                return false;
            }
            packer.settle(on);
            packer.apply(count -> { });
            return true;
        }
    }

    /**
     * The day of the last edition in a site, be it moved in whole or not; empty if there is none that tells.
     *
     * @throws EditionStopped if its list cannot be read
     */
    public static Optional<LocalDate> lastDay(Path site) {
        Workshop workshop = Workshop.of(site);
        Path staged = workshop.staged().resolve(EditionList.PATH);
        Optional<byte[]> cutOff = Disk.look(workshop.plan()).isEmpty() || Disk.look(staged).isEmpty() ? Optional.empty()
                : Optional.of(Disk.reading(staged, () -> Files.readAllBytes(staged)));
        return Stream.of(listBytes(workshop), cutOff).flatMap(bytes -> readList(workshop, bytes).on().stream())
                .max(Comparator.naturalOrder());
    }

    private static Workshop workshop(Path site) {
        Path whole = site.toAbsolutePath().normalize();
        if (whole.getFileName() == null) {
            throw Disk.stop(EditionMessages.NOT_A_FOLDER.at(Disk.place(site), "reason", "it is a whole disk"));
        }
        if (Files.exists(whole) && !Files.isDirectory(whole)) {
            throw Disk.stop(EditionMessages.NOT_A_FOLDER.at(Disk.place(site), "reason", "it is a file"));
        }
        Workshop workshop = Workshop.of(site);
        Disk.writing(site, () -> Files.createDirectories(workshop.beside()));
        Disk.ownerOnly(workshop.beside());
        return workshop;
    }

    /** Completes the run before if it was cut off while it moved its files; tells whether it was. */
    static boolean completeInterrupted(Workshop workshop) {
        if (Disk.look(workshop.plan()).isEmpty()) {
            Disk.removeTree(workshop.staged());
            Disk.removeTree(workshop.nextMemory());
            return false;
        }
        Plan plan = Disk.reading(workshop.plan(), () -> Plan.read(Files.readAllBytes(workshop.plan())));
        Clash clash = new Clash(workshop, readList(workshop, listBytes(workshop)));
        Messages clashes = new Messages();
        for (String path : plan.moves()) {
            Path staged = workshop.staged().resolve(path);
            if (Disk.look(staged).isPresent()) {
                String hash = Disk.reading(staged, () -> Hash.of(Files.readAllBytes(staged)));
                clash.find(path, hash).ifPresent(clashes::add);
            }
        }
        if (clashes.hasErrors()) {
            throw Disk.stop(clashes.all().get(0));
        }
        new Mover(workshop).carryOut(plan, count -> { });
        return true;
    }

    static Optional<byte[]> listBytes(Workshop workshop) {
        return Disk.look(workshop.list()).isEmpty() ? Optional.empty()
                : Optional.of(Disk.reading(workshop.shown(EditionList.PATH),
                        () -> Files.readAllBytes(workshop.list())));
    }

    static EditionList readList(Workshop workshop, Optional<byte[]> bytes) {
        try {
            return bytes.isPresent() ? EditionList.read(bytes.get()) : EditionList.none();
        } catch (IOException damaged) {
            throw new EditionStopped(
                    EditionMessages.LIST_UNREADABLE.at(Disk.place(workshop.shown(EditionList.PATH))), damaged);
        }
    }

    /** What the run found to tell on opening. */
    public Messages told() {
        Messages told = new Messages();
        if (completed) {
            told.add(EditionMessages.RUN_COMPLETED.at(Disk.place(workshop.shown())));
        }
        return told;
    }

    /** The note left with a case whose files were made from content of that key and are all still there and whole. */
    public Optional<String> remembered(String caseId, String key) {
        return Optional.ofNullable(memory.cases().get(caseId))
                .filter(remembered -> remembered.key().equals(key))
                .filter(remembered -> remembered.batch().files().entrySet().stream()
                        .allMatch(file -> whole(file.getKey(), file.getValue())))
                .map(Remembered::note);
    }

    /**
     * Takes a case's files over from the last edition as they are.
     *
     * @param note to leave with the case for the next run
     */
    public Messages keep(String caseId, String note) {
        Remembered kept = memory.cases().get(caseId);
        Messages messages = new Messages();
        kept.batch().files().forEach((path, written) -> {
            claim(path, caseId, messages);
            weigh(path, written.size()).ifPresent(messages::add);
        });
        now.put(caseId, new Remembered(kept.key(), note, kept.batch()));
        return messages;
    }

    /**
     * Makes a case's files ready.
     *
     * @param key tells the content from which they were made
     * @param note to leave with the case for the next run
     * @return what is the matter with their paths and links
     */
    public Messages stage(String caseId, String key, String note, List<SiteFile> files) {
        Messages messages = new Messages();
        Map<String, Batch.Written> written = new TreeMap<>();
        Map<String, PageScan> pages = new LinkedHashMap<>();
        Map<String, List<PageScan.Link>> styles = new LinkedHashMap<>();
        for (SiteFile file : files) {
            if (!claim(file.path(), caseId, messages)) {
                continue;
            }
            written.put(file.path(), write(caseId, file));
            if (file.isPage()) {
                weigh(file.path(), file.bytes().length).ifPresent(messages::add);
                pages.put(file.path(), PageScan.of(new String(file.bytes(), StandardCharsets.UTF_8)));
            } else if (file.path().endsWith(".css")) {
                styles.put(file.path(), StyleScan.of(new String(file.bytes(), StandardCharsets.UTF_8)));
            }
        }
        Batch.Scanned scanned = Batch.scan(written, pages, styles, this::oneCopy);
        scanned.faults().forEach(fault -> messages.add(told(fault)));
        if (!written.isEmpty()) {
            // Of a case that has nothing in the site, nothing may stay beside it.
            now.put(caseId, new Remembered(key, note, scanned.batch()));
        }
        return messages;
    }

    /** The note left with a group whose files were made under that mark, and are all still there and whole. */
    public Optional<String> remembered(SiteGroup group, String mark) {
        return remembered(group.batch(), mark);
    }

    /**
     * Takes a group over from the last edition as it is.
     *
     * @param note to leave with it for the next run
     */
    public Messages keep(SiteGroup group, String note) {
        return keep(group.batch(), note);
    }

    /**
     * Makes the files of a group ready.
     *
     * @param mark of what they were made from
     * @param note to leave with them for the next run
     * @return what is the matter with their paths and links
     */
    public Messages stage(SiteGroup group, String mark, String note, List<SiteFile> files) {
        return stage(group.batch(), mark, note, files);
    }

    /** The note that the last edition left with a group; empty if there is none. */
    public String note(SiteGroup group) {
        return Optional.ofNullable(memory.cases().get(group.batch())).map(Remembered::note).orElse("");
    }

    /** The files that were taken over from the last edition so far. */
    public List<KeptFile> kept() {
        return now.entrySet().stream().filter(each -> memory.cases().containsKey(each.getKey()))
                .filter(each -> memory.cases().get(each.getKey()).batch() == each.getValue().batch())
                .flatMap(each -> each.getValue().batch().files().keySet().stream()
                        .map(path -> new KeptFile(each.getKey(), path, workshop.site().resolve(path))))
                .toList();
    }

    /** All files so far, made ready or taken over. */
    public List<KeptFile> soFar() {
        return new TreeMap<>(now).entrySet().stream().flatMap(each -> each.getValue().batch().files().keySet().stream()
                .map(path -> new KeptFile(each.getKey(), path,
                        (staged.contains(path) ? workshop.staged() : workshop.site()).resolve(path)))).toList();
    }

    /** How many bytes the files of all cases have. */
    public long bytesOfCases() {
        return now.entrySet().stream().filter(each -> !SiteGroup.isOne(each.getKey()))
                .flatMap(each -> each.getValue().batch().files().values().stream()).mapToLong(Batch.Written::size).sum();
    }

    /** A mark of all files so far: two editions with the same mark have the same files. */
    public String mark(String key) {
        StringBuilder mark = new StringBuilder(key);
        new TreeMap<>(now).values().forEach(each -> each.batch().files().forEach((path, written) ->
                mark.append('\n').append(path).append(' ').append(written.hash())));
        return Hash.of(mark.toString().getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Makes the list ready by which devices keep this edition, once all its other files are; only where it has what reads it.
     *
     * @param on the day of the edition
     */
    public Messages stageKept(LocalDate on) {
        SortedMap<String, String> files = hashes();
        return KeptList.isWanted(files) ? stage(SiteGroup.KEPT, "", "", List.of(KeptList.of(on.toString(), files))) : new Messages();
    }

    private SortedMap<String, String> hashes() {
        SortedMap<String, String> files = new TreeMap<>();
        now.values().forEach(each -> each.batch().files().forEach((path, written) -> files.put(path, written.hash())));
        return files;
    }

    private String oneCopy(String path) {
        String before = names.putIfAbsent(path, path);
        return before == null ? path : before;
    }

    private Optional<Message> weigh(String path, long size) {
        return size <= MOST_PAGE_BYTES || !path.endsWith(".html") ? Optional.empty()
                : Optional.of(EditionMessages.PAGE_TOO_HEAVY.at(place(path), "page", path,
                        "size", String.format(Locale.ROOT, "%.1f", size / 1e6), "most", MOST_PAGE_BYTES / 1_000_000));
    }

    private boolean claim(String path, String caseId, Messages messages) {
        Optional<String> fault = path.equals(EditionList.PATH)
                ? Optional.of("the edition's own list stands there") : PathRule.fault(path);
        if (fault.isPresent()) {
            messages.add(EditionMessages.PATH_NOT_PORTABLE.at(place(path), "path", path, "reason", fault.get()));
            return false;
        }
        if (owners.putIfAbsent(path, caseId) != null) {
            messages.add(EditionMessages.PATH_TAKEN_TWICE.at(place(path), "path", path));
            return false;
        }
        return true;
    }

    private Batch.Written write(String caseId, SiteFile file) {
        String hash = Hash.of(file.bytes());
        Optional<Batch.Written> same = unchanged(caseId, file.path(), hash, file.bytes().length);
        if (same.isPresent()) {
            return same.get();
        }
        Path to = workshop.staged().resolve(file.path());
        if (folders.add(to.getParent())) {
            Disk.writing(to, () -> Files.createDirectories(to.getParent()));
        }
        Disk.write(to, file.bytes());
        staged.add(file.path());
        return new Batch.Written(hash, file.bytes().length, time(to));
    }

    /** The file as it stands in the site, if it is one of the last edition's and holds the very same bytes. */
    private Optional<Batch.Written> unchanged(String caseId, String path, String hash, long size) {
        if (!hash.equals(last.files().get(path))) {
            return Optional.empty();
        }
        Batch.Written known = Optional.ofNullable(memory.cases().get(caseId))
                .map(remembered -> remembered.batch().files().get(path))
                .orElse(new Batch.Written(hash, size, -1));
        return whole(path, known)
                ? Optional.of(new Batch.Written(hash, size, time(workshop.site().resolve(path)))) : Optional.empty();
    }

    private static long time(Path file) {
        return Disk.look(file).map(there -> there.lastModifiedTime().toMillis()).orElse(-1L);
    }

    private boolean whole(String path, Batch.Written written) {
        Path file = workshop.site().resolve(path);
        return Disk.look(file).filter(BasicFileAttributes::isRegularFile)
                .filter(there -> there.size() == written.size())
                .filter(there -> there.lastModifiedTime().toMillis() == written.time()
                        || wholeByHash(file, written.hash()))
                .isPresent();
    }

    private static boolean wholeByHash(Path file, String hash) {
        return Disk.reading(file, () -> Hash.of(Files.readAllBytes(file))).equals(hash);
    }

    private Message told(Batch.Fault fault) {
        Place place = place(fault.page());
        return switch (fault.kind()) {
            case REFUSED -> EditionMessages.LINK_NOT_RELATIVE.at(place, "link", fault.link(), "reason", fault.reason());
            case LOADED_FROM_OUTSIDE -> EditionMessages.FROM_ANOTHER_HOST.at(place, "link", fault.link());
            default -> EditionMessages.ANCHOR_MISSING.at(place, "link", fault.link());
        };
    }

    private Place place(String path) {
        return Disk.place(workshop.shown(path));
    }

    /**
     * Verifies the edition as a whole: links between cases, orphan pages, files of others in the way.
     *
     * @param unmade cases whose pages are not there yet because of their errors: what leads to them is not told
     */
    public Messages verify(Set<String> unmade) {
        Messages messages = new WholeCheck(workshop, now, owners.keySet(), unmade).faults();
        Clash clash = new Clash(workshop, last);
        new TreeMap<>(now).values().forEach(remembered -> remembered.batch().files().forEach((path, written) ->
                clash.find(path, written.hash()).ifPresent(messages::add)));
        if (Disk.look(workshop.list()).filter(there -> !there.isRegularFile()).isPresent()) {
            messages.add(EditionMessages.LIST_UNREADABLE.at(place(EditionList.PATH)));
        }
        return messages;
    }

    /** What was changed by hand since the last edition and will be written anew or removed; to be asked before {@link #apply}. */
    public Messages changedByHand() {
        Messages messages = new Messages();
        Map<String, Batch.Written> known = new TreeMap<>();
        memory.cases().values().forEach(remembered -> known.putAll(remembered.batch().files()));
        last.files().forEach((path, hash) -> {
            Path file = workshop.site().resolve(path);
            Optional<BasicFileAttributes> there = Disk.look(file).filter(BasicFileAttributes::isRegularFile);
            boolean goes = !owners.containsKey(path);
            if (there.isEmpty() || !goes && !staged.contains(path)) {
                return;
            }
            Batch.Written written = known.get(path);
            boolean untouched = written != null && written.size() == there.get().size()
                    && written.time() == there.get().lastModifiedTime().toMillis();
            if (!untouched && !wholeByHash(file, hash)) {
                messages.add(EditionMessages.CHANGED_BY_HAND.at(place(path), "path", path, "done",
                        goes ? "removed, since this edition no longer has it" : "written anew"));
            }
        });
        return messages;
    }

    /** How many files {@link #apply} will move in. */
    public int ready() {
        return staged.size();
    }

    /**
     * Writes down what is to be done, so that the next run does it if this one is cut off: for several sites of one
     * edition before any of them is changed.
     *
     * @param on the day of the edition
     * @throws EditionStopped if the disk refuses
     */
    public void settle(LocalDate on) {
        SortedMap<String, String> files = hashes();
        List<String> removals = new ArrayList<>(new TreeSet<>(last.files().keySet()));
        removals.removeAll(files.keySet());

        byte[] list = new EditionList(Optional.of(on), files).bytes();
        Disk.writing(workshop.staged(), () -> Files.createDirectories(workshop.staged()));
        Disk.writeFirmly(workshop.staged().resolve(EditionList.PATH), list);
        Disk.writing(workshop.nextMemory(), () -> {
            new CaseMemory(Hash.of(list), new TreeMap<>(now)).write(workshop.nextMemory());
            Disk.ownerOnly(workshop.nextMemory());
            return true;
        });
        Plan next = new Plan(List.copyOf(new TreeSet<>(staged)), removals);
        Disk.writeFirmly(workshop.plan(), next.bytes());
        plan = Optional.of(next);
    }

    /**
     * Moves the settled edition in.
     *
     * @param moved is told after each file how many are in
     * @throws EditionStopped if the disk refuses
     */
    public Edition apply(IntConsumer moved) {
        Plan settled = plan.orElseThrow();
        new Mover(workshop).carryOut(settled, moved);
        return summary(new TreeMap<>(now), settled.moves().size(), settled.removals().size());
    }

    private static Edition summary(SortedMap<String, Remembered> all, int written, int removed) {
        int pages = 0;
        int files = 0;
        long bytes = 0;
        String heaviest = "";
        long weight = 0;
        for (Remembered each : all.values()) {
            Batch batch = each.batch();
            pages += batch.reach().size();
            files += batch.files().size();
            bytes += batch.files().values().stream().mapToLong(Batch.Written::size).sum();
            if (batch.weight() > weight) {
                weight = batch.weight();
                heaviest = batch.heaviest();
            }
        }
        return new Edition(pages, files, bytes, written, removed, heaviest, weight);
    }

    /** Lets go of the site; what was made ready and not moved in is thrown away. */
    @Override
    public void close() {
        try {
            if (plan.isEmpty()) {
                Disk.removeTree(workshop.staged());
                Disk.writing(workshop.beside(), () -> Files.deleteIfExists(workshop.nextMemory()));
            }
        } finally {
            lock.close();
        }
    }
}
