package org.benchleaf.benchmark;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** Runs a main class and, when the program ends, prints what it took: peak memory, peak threads, processor time. */
public final class Measured {

    private Measured() {
    }

    /** Takes the main class and its arguments. */
    public static void main(String[] arguments) throws ReflectiveOperationException {
        Runtime.getRuntime().addShutdownHook(new Thread(Measured::report));
        Method main = Class.forName(arguments[0]).getMethod("main", String[].class);
        main.invoke(null, (Object) Arrays.copyOfRange(arguments, 1, arguments.length));
    }

    private static void report() {
        long cpu = ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
                .getProcessCpuTime();
        int threads = ManagementFactory.getThreadMXBean().getPeakThreadCount();
        System.out.println("measured " + peakKilobytes() + " " + threads + " " + cpu / 1_000_000);
    }

    /** Peak resident memory as Linux tells it; 0 where there is no /proc. */
    private static long peakKilobytes() {
        try {
            return Files.readAllLines(Path.of("/proc/self/status")).stream().filter(line -> line.startsWith("VmHWM:"))
                    .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", ""))).findFirst().orElse(0);
        } catch (IOException notLinux) {
            return 0;
        }
    }
}
