package org.benchleaf.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.benchleaf.ChangedContent;
import picocli.CommandLine;

/**
 * Publishes hostile contents one after the other and prints, for each, how that ended and the most memory that its objects
 * took, whether in use or not yet cleared, in MiB: a program of its own, so that the limit of its memory counts.
 */
public final class HostileRun {

    private static final int BYTES_IN_MIB = 1024 * 1024;

    private HostileRun() {
    }

    /**
     * Runs them.
     *
     * @param arguments a folder to work in, then the folders with the changes
     */
    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments[0]);
        for (String each : List.of(arguments).subList(1, arguments.length)) {
            Path own = folder.resolve(Path.of(each).getFileName());
            String content = ChangedContent.of(Path.of("src/test/resources/sound/base"), Path.of(each, "change.txt"),
                    Files.createDirectories(own).resolve("content")).toString();
            heap().forEach(MemoryPoolMXBean::resetPeakUsage);
            int code = code(new PublishCommand(), "--content", content, "--site", own.resolve("site").toString(),
                    "--on", "2026-06-01");
            System.out.println(Path.of(each).getFileName() + "," + code + "," + heap().stream()
                    .mapToLong(pool -> pool.getPeakUsage().getUsed()).sum() / BYTES_IN_MIB);
        }
    }

    private static List<MemoryPoolMXBean> heap() {
        return ManagementFactory.getMemoryPoolMXBeans().stream().filter(pool -> pool.getType() == MemoryType.HEAP).toList();
    }

    private static int code(Object command, String... arguments) {
        return new CommandLine(command).setOut(new PrintWriter(new StringWriter())).setErr(new PrintWriter(new StringWriter()))
                .execute(arguments);
    }
}
