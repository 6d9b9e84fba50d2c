package org.benchleaf;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Kills publishing at random moments, alternating between two contents, and looks after each kill whether every file of
 * the site is whole and whether the next run ends with the full new edition. Ends with exit code 1 if one is not.
 *
 * <p>The program is killed as a system does it that has run out of memory: it gets no chance to tidy up. About
 * every second kill is aimed at the moments in which files are moved into the site, which are few.
 */
public final class KilledRuns {

    private static final Path SOUND = Path.of("src/test/resources/sound/base");
    private static final Path FOREIGN = Path.of("cases/notes of mine.txt");
    private static final long STEP_NANOS = TimeUnit.MICROSECONDS.toNanos(200);

    private final Path folder;
    private final Random random;
    private final Path templates;
    private final Path site;
    private final Path plan;
    private final List<Edition> editions = new ArrayList<>();
    private final Map<Moment, Integer> moments = new TreeMap<>();
    private final List<String> faults = new ArrayList<>();
    private long wholeNanos;
    private long movingNanos;

    private KilledRuns(Path folder, long seed) {
        this.folder = folder;
        this.random = new Random(seed);
        this.templates = folder.resolve("templates");
        this.site = folder.resolve("site");
        this.plan = folder.resolve(".site.edition/plan.json");
    }

    /** Content and what publishing it into an empty folder gives. */
    private record Edition(Path content, Map<Path, byte[]> files) {
    }

    /** When a kill came. */
    private enum Moment {
        BEFORE_ANY_FILE_WAS_MOVED, WHILE_FILES_WERE_MOVED, AFTER_THE_END
    }

    /** Takes how many kills, and a seed; without a seed, one of the moment. */
    public static void main(String[] words) throws IOException, InterruptedException {
        int kills = words.length > 0 ? Integer.parseInt(words[0]) : 200;
        long seed = words.length > 1 ? Long.parseLong(words[1]) : System.nanoTime();
        System.out.println(kills + " kills, seed " + seed);
        Path folder = Files.createTempDirectory("benchleaf-killed");
        KilledRuns runs = new KilledRuns(folder, seed);
        runs.prepare();
        for (int kill = 1; kill <= kills; kill++) {
            runs.killOne(kill);
        }
        System.out.println(runs.moments + ", faults: " + runs.faults.size());
        remove(folder);
        if (!runs.faults.isEmpty()) {
            System.exit(1);
        }
    }

    /** Two editions of which each has cases that the other has not, and no page in common. */
    private void prepare() throws IOException, InterruptedException {
        // A copy: whoever works on the templates meanwhile must not change what is compared.
        ChangedContent.copy(Path.of("templates"), templates);
        for (String name : List.of("ebb", "neap")) {
            Path content = folder.resolve("content-" + name);
            ChangedContent.copy(SOUND, content);
            ChangedContent.copy(SOUND.resolve("cases/tide"), content.resolve("cases").resolve(name));
            Path studio = content.resolve("studio.yaml");
            Files.writeString(studio, Files.readString(studio).replaceFirst("name: [^\n]*", "name: Studio " + name));
            Path alone = folder.resolve("alone-" + name).resolve("site");
            publishWhole(content, alone);
            editions.add(new Edition(content, files(alone)));
        }
        publishWhole(editions.get(1).content(), site);
        measureMoving(editions.get(0).content());
        Files.writeString(site.resolve(FOREIGN), "mine");
    }

    private void killOne(int kill) throws IOException, InterruptedException {
        Edition last = editions.get((kill + 1) % 2);
        Edition next = editions.get(kill % 2);
        Process run = start(next.content(), site);
        if (random.nextBoolean()) {
            aimAtMoving(run);
        } else {
            run.waitFor((long) (random.nextDouble() * wholeNanos), TimeUnit.NANOSECONDS);
        }
        boolean over = !run.isAlive();
        run.destroyForcibly().waitFor();
        Moment moment = Files.exists(plan) ? Moment.WHILE_FILES_WERE_MOVED
                : over || same(site, next) ? Moment.AFTER_THE_END : Moment.BEFORE_ANY_FILE_WAS_MOVED;
        moments.merge(moment, 1, Integer::sum);
        int found = faults.size();
        eachFileIsWhole(last, next);
        publishWhole(next.content(), site);
        if (!same(site, next)) {
            faults.add("the next run did not bring the new edition");
        }
        System.out.println(kill + " " + moment + " " + faults.subList(found, faults.size()));
    }

    /** Waits until files begin to be moved, and then for as long as that may take at most. */
    private void aimAtMoving(Process run) throws InterruptedException {
        for (boolean ended = false; !ended && !Files.exists(plan);) {
            ended = run.waitFor(STEP_NANOS, TimeUnit.NANOSECONDS);
        }
        run.waitFor((long) (random.nextDouble() * movingNanos), TimeUnit.NANOSECONDS);
    }

    private void eachFileIsWhole(Edition last, Edition next) throws IOException {
        if (!Files.readString(site.resolve(FOREIGN)).equals("mine")) {
            faults.add("a file of somebody else was changed");
        }
        Map<Path, byte[]> files = files(site);
        last.files().keySet().stream().filter(next.files()::containsKey).filter(path -> !files.containsKey(path))
                .forEach(path -> faults.add("missing, though both editions have it: " + path));
        files.forEach((path, bytes) -> {
            if (!Arrays.equals(bytes, last.files().get(path)) && !Arrays.equals(bytes, next.files().get(path))) {
                faults.add("neither old nor new: " + path);
            }
        });
    }

    private static boolean same(Path site, Edition edition) throws IOException {
        Map<Path, byte[]> files = files(site);
        return files.keySet().equals(edition.files().keySet()) && files.entrySet().stream()
                .allMatch(file -> Arrays.equals(file.getValue(), edition.files().get(file.getKey())));
    }

    /** All files of a site but the one that somebody else put there. */
    private static Map<Path, byte[]> files(Path site) throws IOException {
        Map<Path, byte[]> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(site)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                files.put(site.relativize(file), Files.readAllBytes(file));
            }
        }
        files.remove(FOREIGN);
        return files;
    }

    private void publishWhole(Path content, Path into) throws IOException, InterruptedException {
        long started = System.nanoTime();
        if (start(content, into).waitFor() != 0) {
            throw new IllegalStateException(Files.readString(folder.resolve("output.txt")));
        }
        wholeNanos = System.nanoTime() - started;
    }

    /** How long files are moved when nobody kills the program. */
    private void measureMoving(Path content) throws IOException, InterruptedException {
        Process run = start(content, site);
        long began = 0;
        while (!run.waitFor(STEP_NANOS, TimeUnit.NANOSECONDS)) {
            boolean moving = Files.exists(plan);
            if (moving && began == 0) {
                began = System.nanoTime();
            } else if (moving) {
                movingNanos = System.nanoTime() - began;
            }
        }
        System.out.printf(Locale.ROOT, "a run takes about %.1f s, of which moving files %.0f ms%n", wholeNanos / 1e9,
                movingNanos / 1e6);
    }

    private Process start(Path content, Path into) throws IOException {
        return new ProcessBuilder(OwnJava.command(List.of(),
                "publish", "--content", content.toString(), "--templates", templates.toString(),
                "--site", into.toString(), "--on", "2026-06-01"))
                .redirectErrorStream(true).redirectOutput(folder.resolve("output.txt").toFile()).start();
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
