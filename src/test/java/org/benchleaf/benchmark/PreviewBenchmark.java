package org.benchleaf.benchmark;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.command.PreviewClient;

/**
 * Measures how long it takes from saving a file to the changed page, as a browser is told of it and fetches it, and prints the
 * table. Not a test: nothing here passes or fails.
 */
public final class PreviewBenchmark {

    private static final int WARM = 20;
    private static final Pattern VERSION = Pattern.compile("preview\\.js\\?version=(\\d+)");
    private static final String WORD = "glossmark";

    private final ProcessHandle program;
    private final Path content;
    private final String address;
    private final HttpClient client = HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).proxy(HttpClient.Builder.NO_PROXY)
            .build();

    private PreviewBenchmark(ProcessHandle program, Path content, String address) {
        this.program = program;
        this.content = content;
        this.address = address;
    }

    /** Takes a folder to work in, the number of cases, of edits of a case, and of edits of the glossary. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path content = Files.createTempDirectory(Path.of(arguments[0]), "preview-benchmark").resolve("content");
        int cases = Integer.parseInt(arguments[1]);
        SyntheticContent.write(Path.of("content"), content, cases, 0);
        for (int number = 0; number < Math.min(30, cases); number++) {
            Path file = content.resolve("cases").resolve(SyntheticContent.name(number)).resolve("case.md");
            Files.writeString(file, Files.readString(file) + "\nThe " + WORD + " was looked at.\n");
        }
        Process preview = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx512m",
                "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp", System.getProperty("java.class.path"), "org.benchleaf.Main",
                "preview", "--content", content.toString(), "--on", "2026-03-10").redirectError(ProcessBuilder.Redirect.DISCARD).start();
        try {
            String told = preview.inputReader(StandardCharsets.UTF_8).readLine();
            new PreviewBenchmark(preview.toHandle(), content, told.substring(told.indexOf("http"))).print(Integer.parseInt(arguments[2]),
                    Integer.parseInt(arguments[3]));
        } finally {
            preview.destroy();
        }
    }

    private void print(int edits, int words) throws IOException, InterruptedException {
        load("before");
        Path file = content.resolve("cases").resolve(SyntheticContent.name(0)).resolve("case.md");
        String page = "site/cases/" + SyntheticContent.name(0) + "/index.html";
        String text = Files.readString(file);
        row("a case, to its page", measured(edits, page, turn -> Files.writeString(file, text + "\nSentence " + turn + ".\n")));
        Path glossary = content.resolve("glossary.yaml");
        String terms = Files.readString(glossary);
        row("a word of the glossary, to a page that uses it", measured(words, page, turn -> Files.writeString(glossary,
                terms + (turn % 2 == 0 ? "\n" : "\nmark:\n  term: " + WORD + "\n  plain: A word for trial " + turn + ".\n"))));
        load("after");
    }

    /** An edit of a file. */
    @FunctionalInterface
    private interface Edit {
        void save(int turn) throws IOException;
    }

    private long[] measured(int edits, String page, Edit edit) throws IOException, InterruptedException {
        List<Long> took = new ArrayList<>();
        long cpu = 0;
        String before = fetched(page);
        for (int turn = 1; turn <= edits + WARM; turn++) {
            try (PreviewClient.Events events = new PreviewClient(address).events(page, version(before))) {
                events.next("end");
                long started = System.nanoTime();
                edit.save(turn);
                events.next("page");
                String after = fetched(page);
                if (turn > WARM) {
                    took.add((System.nanoTime() - started) / 1_000_000);
                }
                cpu = turn == WARM ? processorTime() : cpu;
                if (version(after).equals(version(before))) {
                    throw new IllegalStateException("the page did not change");
                }
                before = after;
            }
        }
        System.out.printf(Locale.ROOT, "processor time of the program for each, with all that is told beside the page: %d ms%n",
                (processorTime() - cpu) / edits);
        return took.stream().mapToLong(Long::longValue).sorted().toArray();
    }

    private long processorTime() {
        return program.info().totalCpuDuration().orElseThrow().toMillis();
    }

    private String fetched(String page) throws IOException, InterruptedException {
        return client.send(HttpRequest.newBuilder(URI.create(address + page)).build(), HttpResponse.BodyHandlers.ofString()).body();
    }

    private static String version(String page) {
        Matcher version = VERSION.matcher(page);
        if (!version.find()) {
            throw new IllegalStateException(page);
        }
        return version.group(1);
    }

    private static void row(String what, long[] sorted) {
        System.out.printf(Locale.ROOT, "%-50s median %4d ms, 95th %4d ms, longest %4d ms of %d%n", what, sorted[sorted.length / 2],
                sorted[(int) Math.min(sorted.length - 1L, Math.round(sorted.length * 0.95))], Arrays.stream(sorted).max().orElse(0),
                sorted.length);
    }

    private static void load(String when) {
        System.out.printf(Locale.ROOT, "load of the machine %s: %.1f on %d processors%n", when, ManagementFactory
                .getOperatingSystemMXBean().getSystemLoadAverage(), Runtime.getRuntime().availableProcessors());
    }
}
