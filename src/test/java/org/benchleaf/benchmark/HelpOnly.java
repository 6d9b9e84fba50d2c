package org.benchleaf.benchmark;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** A program that prints the help of its command line and does nothing else: the floor for starting one. */
@Command(name = "help-only", mixinStandardHelpOptions = true, description = "Prints this help.")
public final class HelpOnly {

    private HelpOnly() {
    }

    /** Prints the help. */
    public static void main(String[] arguments) {
        CommandLine.usage(new HelpOnly(), System.out);
    }
}
