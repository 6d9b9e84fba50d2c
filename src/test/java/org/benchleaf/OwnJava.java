package org.benchleaf;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The command line of the program in a Java of its own, with settings that make a short run short. */
public final class OwnJava {

    /** The second compiler pays only where code runs for minutes; one collector takes no processor from the tests beside it. */
    private static final List<String> SHORT_RUN = List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC");

    private OwnJava() {
    }

    /**
     * The command line.
     *
     * @param options of Java beside those, such as {@code -Xmx1g}
     * @param words what the program is told: a command and its options
     */
    public static List<String> command(List<String> options, String... words) {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        command.addAll(SHORT_RUN);
        command.addAll(options);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), "org.benchleaf.Main"));
        command.addAll(List.of(words));
        return command;
    }
}
