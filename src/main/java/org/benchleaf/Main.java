package org.benchleaf;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.benchleaf.command.CalculateCommand;
import org.benchleaf.command.CheckCommand;
import org.benchleaf.command.DraftCommand;
import org.benchleaf.command.Failure;
import org.benchleaf.command.FiguresCommand;
import org.benchleaf.command.HazardsCommand;
import org.benchleaf.command.IssueCommand;
import org.benchleaf.command.PlanCommand;
import org.benchleaf.command.PreviewCommand;
import org.benchleaf.command.PublishCommand;
import org.benchleaf.command.RecordsCommand;
import org.benchleaf.command.TranslationCommand;
import org.benchleaf.command.TypedWords;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Runs Benchleaf from the command line. */
@Command(name = "benchleaf", mixinStandardHelpOptions = true, version = "benchleaf 0.1.0",
        description = "One case file per paper-conservation treatment: checked, worked out, published.",
        subcommands = {PublishCommand.class, PreviewCommand.class, CheckCommand.class, DraftCommand.class, TranslationCommand.class,
                FiguresCommand.class, CalculateCommand.class, HazardsCommand.class, PlanCommand.class, IssueCommand.class,
                RecordsCommand.class, CommandLine.HelpCommand.class})
public final class Main implements Runnable {

    private static final int COMMAND_IS_WRONG = 2;
    private static final int PROGRAM_FAILED = 3;

    @Spec
    private CommandSpec spec;

    /** Runs a command and ends the program with its exit code. */
    public static void main(String[] words) {
        OrderedWriter.Pair writers = OrderedWriter.of(writer(FileDescriptor.out), writer(FileDescriptor.err));
        PrintWriter out = new PrintWriter(writers.first());
        PrintWriter err = new PrintWriter(writers.second());
        int code = run(line(out, err), TypedWords.of(words));
        out.flush();
        err.flush();
        System.exit(code);
    }

    /**
     * Runs a command.
     *
     * @param out where results go
     * @param err where messages go
     * @param words the command and what follows it
     * @return 0 done, 1 the content has errors, 2 the command line is wrong, 3 the disk or the program failed
     */
    static int run(PrintWriter out, PrintWriter err, String... words) {
        return run(line(out, err), words);
    }

    /** Runs a command; whatever is thrown, errors of the machine included, ends in one message. */
    static int run(CommandLine line, String... words) {
        try {
            return line.execute(words);
        } catch (Throwable failure) {
            return failed(line, failure);
        }
    }

    static CommandLine line(PrintWriter out, PrintWriter err) {
        CommandLine line = new CommandLine(new Main()).setOut(out).setErr(err).setExpandAtFiles(false)
                .setCaseInsensitiveEnumValuesAllowed(true).registerConverter(Path.class, Main::path);
        line.setParameterExceptionHandler((slip, typed) -> {
            // What a group of arguments lacks is told by the library with this word before it.
            err.println("benchleaf: error: " + slip.getMessage().replaceFirst("^Error: ", ""));
            slip.getCommandLine().usage(err);
            return COMMAND_IS_WRONG;
        });
        line.setExecutionExceptionHandler((failure, command, parsed) -> failed(line, failure));
        return line;
    }

    /** Java names files in the letters of the locale, and fails on others. */
    private static Path path(String typed) {
        try {
            return Path.of(typed);
        } catch (InvalidPathException wrong) {
            throw new CommandLine.TypeConversionException("'" + typed + "' cannot be the name of a file or folder here ("
                    + wrong.getReason() + "). If it is one, this machine's locale lacks its letters: set LC_ALL to"
                    + " C.UTF-8, or start with the script bin/benchleaf, which does.");
        }
    }

    private static int failed(CommandLine line, Throwable failure) {
        line.getErr().println(Failure.told(failure));
        return PROGRAM_FAILED;
    }

    /** Without a command, says which there are. */
    @Override
    public void run() {
        throw new CommandLine.ParameterException(spec.commandLine(), "which command?");
    }

    /** Results hold °, µ and ³ and JSON is UTF-8 by its standard, whatever the terminal's locale. */
    private static Writer writer(FileDescriptor descriptor) {
        return new OutputStreamWriter(new FileOutputStream(descriptor), StandardCharsets.UTF_8);
    }
}
