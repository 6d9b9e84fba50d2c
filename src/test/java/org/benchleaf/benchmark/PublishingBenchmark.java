package org.benchleaf.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Measures how long publishing takes beside what it cannot be quicker than, each in a program of its own, and prints
 * the table. Not a test: nothing here passes or fails.
 */
public final class PublishingBenchmark {

    private static final String HEAP = "-Xmx512m";
    private static final String MAIN = "org.benchleaf.Main";
    private static final String JAVA = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    private static final int STARTS = 7;

    private final Path target;
    private final Path folder;
    private final int threads = Runtime.getRuntime().availableProcessors();

    private PublishingBenchmark(Path target, Path folder) {
        this.target = target;
        this.folder = folder;
    }

    /** Takes the folder of the jar, in which it works too, and the numbers of cases; makes and removes several GB. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path target = Path.of(arguments[0]);
        Path folder = Files.createTempDirectory(target, "benchleaf-benchmark");
        PublishingBenchmark benchmark = new PublishingBenchmark(target, folder);
        try {
            benchmark.print(Stream.of(arguments).skip(1).flatMap(counts -> Stream.of(counts.split(" ")))
                    .map(Integer::parseInt).toList());
        } finally {
            remove(folder);
        }
    }

    /** What one run took. */
    private record Run(double seconds, double cpu, long megabytes, int threads) {
    }

    private void print(List<Integer> counts) throws IOException, InterruptedException {
        System.out.println("Java " + System.getProperty("java.version") + ", " + threads + " processors, " + HEAP
                + ", " + System.getProperty("os.name") + ", " + processor());
        System.out.printf("%-8s %-9s %-40s %9s %9s %8s %8s%n", "cases", "pictures", "what", "wall s", "cpu s", "peak MB",
                "threads");
        List<Double> fulls = new ArrayList<>();
        for (int count : counts) {
            fulls.add(set(count, 0));
        }
        for (int at = 1; at < counts.size(); at++) {
            System.out.printf(Locale.ROOT, "time(%d) / time(%d) = %.2f%n", counts.get(at), counts.get(at - 1),
                    fulls.get(at) / fulls.get(at - 1));
        }
        set(Math.min(100, counts.get(0)), 2);
        starts();
    }

    private double set(int count, int pictures) throws IOException, InterruptedException {
        Path content = folder.resolve("content-" + count + "-" + pictures);
        SyntheticContent.write(Path.of("content"), content, count, pictures);
        Path site = folder.resolve("site");
        String[] publish = {MAIN, "publish", "--content", content.toString(), "--site", site.toString(), "--on",
            "2026-03-10"};
        Run full = run(publish);
        int[] sizes = sizes(site, count);
        String what = "files " + sizes.length + ", " + Stream.of(sizes).flatMapToInt(java.util.Arrays::stream).sum() / 1000
                + " kB a case";
        Run bytes = run(loop("bytes", content, sizes));
        Run bare = run(loop("bare", content, sizes));
        row(count, pictures, "bytes only (" + what + ")", bytes);
        row(count, pictures, "bare loop", bare);
        row(count, pictures, "full", full);
        Run nothing = run(publish);
        row(count, pictures, "nothing changed", nothing);
        Files.writeString(content.resolve("cases").resolve(SyntheticContent.name(count / 2)).resolve("case.md"),
                "\nOne more line of text.\n", StandardOpenOption.APPEND);
        Run edit = run(publish);
        row(count, pictures, "after one edit", edit);
        SyntheticContent.add(content, count, pictures);
        Run added = run(publish);
        row(count, pictures, "after one case was added", added);
        System.out.printf(Locale.ROOT, "full / bare = %.2f; of a full edition: nothing changed %.1f %%, one edit %.1f %%, "
                + "one added %.1f %%%n", full.seconds() / bare.seconds(), 100 * nothing.seconds() / full.seconds(),
                100 * edit.seconds() / full.seconds(), 100 * added.seconds() / full.seconds());
        remove(site);
        remove(folder.resolve(".site.edition"));
        remove(content);
        return full.seconds();
    }

    private String[] loop(String kind, Path content, int[] sizes) throws IOException {
        Path out = folder.resolve(kind);
        remove(out);
        List<String> command = new ArrayList<>(List.of(BareLoop.class.getName(), kind, content.toString(),
                out.toString(), String.valueOf(threads)));
        for (int size : sizes) {
            command.add(String.valueOf(size));
        }
        return command.toArray(String[]::new);
    }

    /** The sizes of the files of one case in the middle. */
    private static int[] sizes(Path site, int count) throws IOException {
        Path folder = site.resolve("cases").resolve(SyntheticContent.name(count / 2));
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).mapToInt(file -> (int) file.toFile().length()).toArray();
        }
    }

    /** How long a check of one case takes from the start of the program, beside a program that only prints its help. */
    private void starts() throws IOException, InterruptedException {
        Path content = folder.resolve("content-one");
        SyntheticContent.write(Path.of("content"), content, 1, 0);
        String[] check = {"-jar", target.resolve("benchleaf/lib/benchleaf.jar").toString(), "check", "--content", content.toString()};
        List<Double> help = new ArrayList<>();
        List<Double> plain = new ArrayList<>();
        List<Double> archive = new ArrayList<>();
        for (int start = 0; start < STARTS; start++) {
            help.add(started("-cp", System.getProperty("java.class.path"), HelpOnly.class.getName()));
            plain.add(started(check));
            archive.add(started(Stream.concat(Stream.of("-XX:SharedArchiveFile=" + target.resolve("benchleaf/lib/benchleaf.jsa"),
                    "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"), Stream.of(check)).toArray(String[]::new)));
        }
        double floor = median(help);
        System.out.printf(Locale.ROOT, "cold start, median of %d: help %.2f s; check of one case %.2f s, ratio %.2f; "
                + "with the class archive %.2f s, ratio %.2f%n", STARTS, floor, median(plain), median(plain) / floor,
                median(archive), median(archive) / floor);
    }

    private double started(String... command) throws IOException, InterruptedException {
        List<String> whole = new ArrayList<>(List.of(JAVA));
        whole.addAll(List.of(command));
        Path output = folder.resolve("output.txt");
        long started = System.nanoTime();
        int code = new ProcessBuilder(whole).redirectErrorStream(true).redirectOutput(output.toFile()).start().waitFor();
        double seconds = (System.nanoTime() - started) / 1e9;
        if (code != 0) {
            throw new IllegalStateException(Files.readString(output));
        }
        return seconds;
    }

    private static double median(List<Double> values) {
        return values.stream().sorted().skip(values.size() / 2).findFirst().orElseThrow();
    }

    private static void row(int count, int pictures, String what, Run run) {
        System.out.printf(Locale.ROOT, "%-8d %-9d %-40s %9.2f %9.2f %8d %8d%n", count, pictures, what, run.seconds(),
                run.cpu(), run.megabytes(), run.threads());
    }

    private Run run(String... command) throws IOException, InterruptedException {
        List<String> whole = new ArrayList<>(List.of(JAVA,
                HEAP, "-cp", System.getProperty("java.class.path"), Measured.class.getName()));
        whole.addAll(List.of(command));
        Path output = folder.resolve("output.txt");
        long started = System.nanoTime();
        Process process = new ProcessBuilder(whole).redirectErrorStream(true).redirectOutput(output.toFile()).start();
        int code = process.waitFor();
        double seconds = (System.nanoTime() - started) / 1e9;
        List<String> lines = Files.readAllLines(output);
        if (code != 0) {
            lines.stream().limit(40).forEach(System.out::println);
            throw new IllegalStateException("exit code " + code + " of " + String.join(" ", command));
        }
        String[] measured = lines.stream().filter(line -> line.startsWith("measured ")).findFirst().orElseThrow().split(" ");
        return new Run(seconds, Long.parseLong(measured[3]) / 1e3, Long.parseLong(measured[1]) / 1024,
                Integer.parseInt(measured[2]));
    }

    private static String processor() {
        try (Stream<String> lines = Files.lines(Path.of("/proc/cpuinfo"))) {
            return lines.filter(line -> line.startsWith("model name")).findFirst().map(line -> line.replaceAll(".*: ", ""))
                    .orElse("processor unknown");
        } catch (IOException notLinux) {
            return "processor unknown";
        }
    }

    private static void remove(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }
}
