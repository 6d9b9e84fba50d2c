package org.benchleaf.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.model.Library;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.FirstStepsReader;
import org.benchleaf.read.LibraryReader;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Begins a case: writes its file from the answers to a dozen questions, and checks it as a draft. */
@Command(name = "draft", mixinStandardHelpOptions = true,
        description = "Writes the file of a new case from a dozen answers, with 'not yet known' where nothing was said.",
        footer = {"", "Example: draft harbour-bill --ask"})
public final class DraftCommand implements Callable<Integer> {

    @Parameters(index = "0", paramLabel = "CASE",
            description = "The case's folder name: small letters, digits and hyphens.")
    private String name;

    @Option(names = "--content", paramLabel = "DIR", description = "Where the content is (content).")
    private Path content = Path.of("content");

    @Option(names = "--ask", description = "Ask in the terminal for what no option says.")
    private boolean ask;

    @Mixin
    private FirstAnswers answers = new FirstAnswers();

    @Spec
    private CommandSpec spec;

    private final Clock clock;
    private final BufferedReader in;

    /** Asks at the terminal, and checks against today. */
    public DraftCommand() {
        this(Clock.systemDefaultZone(), new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8)));
    }

    DraftCommand(Clock clock, BufferedReader in) {
        this.clock = clock;
        this.in = in;
    }

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        if (!request().isThere()) {
            return ContentRequest.REFUSED;
        }
        if (!CaseReader.isCaseName(name)) {
            return request().refuse("'" + name + "' cannot be the name of a case: use small letters, digits and hyphens, such as"
                    + " harbour-bill");
        }
        // Before anything is asked, so that nothing that is typed is lost.
        if (Files.exists(file())) {
            return request().refuse(isThere());
        }
        Optional<String> noKind = FirstAnswers.noKind(answers.steps());
        if (noKind.isPresent()) {
            return request().refuse(noKind.get());
        }
        if (ask) {
            answers.ask(in, out);
        }
        Optional<String> stray = answers.stray();
        return stray.isPresent() ? request().refuse(stray.get()) : written(out);
    }

    private int written(PrintWriter out) {
        Path file = file();
        Library library = LibraryChecker.check(LibraryReader.read(content)).library();
        FirstCase first = new FirstCase(answers, library.materials().keySet(), library.sources().keySet(), FirstStepsReader.read());
        String text = first.write(library.studio().languages().stream().findFirst().orElse("en"));
        try {
            Files.createDirectories(file.getParent());
            Files.writeString(file, text, StandardOpenOption.CREATE_NEW);
        } catch (FileAlreadyExistsException there) {
            return request().refuse(isThere());
        } catch (IOException broken) {
            throw new UncheckedIOException(file + " cannot be written", broken);
        }
        out.println("Written: " + file);
        first.toEnter().forEach(out::println);
        if (!ask) {
            answers.source().ofLicence().ifPresent(out::println);
        }
        return new CommandLine(new CheckCommand(clock)).setOut(out).setErr(spec.commandLine().getErr())
                .execute("--content", content.toString(), file.getParent().toString());
    }

    private Path file() {
        return content.resolve("cases").resolve(name).resolve("case.md");
    }

    private String isThere() {
        return "there is a case '" + name + "' already; nothing was written";
    }

    private ContentRequest request() {
        return new ContentRequest(spec, content);
    }
}
