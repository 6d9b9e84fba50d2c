package org.benchleaf.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.benchleaf.preview.PreviewServer;
import org.benchleaf.run.StudioPreview;
import org.benchleaf.run.WarmStudio;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Shows the site in a browser of this machine while its content is written. */
@Command(name = "preview", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Shows the site in a browser on this machine while the content is written, and publishes nothing. "
                + "A page that is open follows each file that is saved; what 'check' tells of it stands below the page. "
                + "Ctrl-C ends it.")
public final class PreviewCommand implements Callable<Integer> {

    private static final int DONE = 0;
    private static final int LARGEST_PORT = 65_535;

    @Option(names = "--content", paramLabel = "DIR", defaultValue = "content",
            description = "Where the cases are (default: ${DEFAULT-VALUE}).")
    private Path content;

    @Option(names = "--templates", paramLabel = "DIR",
            description = "How pages look (default: the folder templates beside the content, or the program's own).")
    private Optional<Path> templates = Optional.empty();

    @Option(names = "--on", paramLabel = "DATE",
            description = "The day by which permissions are judged, as 2026-03-02 (default: today).")
    private Optional<LocalDate> on = Optional.empty();

    @Option(names = "--port", paramLabel = "N", defaultValue = "0",
            description = "The port of the address (default: one that is free).")
    private int port;

    @Spec
    private CommandSpec spec;

    private final Clock clock;

    /** The command, by the clock of this machine. */
    public PreviewCommand() {
        this(Clock.systemDefaultZone());
    }

    PreviewCommand(Clock clock) {
        this.clock = clock;
    }

    @Override
    public Integer call() {
        refuse(Files.isDirectory(content) ? Optional.empty() : Optional.of(ContentRequest.missing(content) + "."));
        refuse(TemplateChoice.refusal(templates));
        refuse(port >= 0 && port <= LARGEST_PORT ? Optional.empty() : Optional.of("--port: from 0 to " + LARGEST_PORT + "."));
        WarmStudio studio = new WarmStudio(content, TemplateChoice.of(content, templates),
                () -> on.orElseGet(() -> LocalDate.now(clock)));
        try (PreviewServer server = started(new StudioPreview(content, studio, clock))) {
            PrintWriter out = spec.commandLine().getOut();
            out.println("The preview is at " + server.address());
            out.println("Only this machine reaches it, with this address. Ctrl-C ends it; nothing is published.");
            out.flush();
            server.await();
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
        return DONE;
    }

    private PreviewServer started(StudioPreview preview) {
        try {
            return PreviewServer.start(preview, port);
        } catch (IOException taken) {
            throw new ParameterException(spec.commandLine(), "--port: " + port + " cannot be used here ("
                    + taken.getMessage() + "). Name another, or leave it out and one is chosen.");
        }
    }

    private void refuse(Optional<String> why) {
        why.ifPresent(sentence -> {
            throw new ParameterException(spec.commandLine(), sentence);
        });
    }
}
