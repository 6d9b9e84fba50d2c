package org.benchleaf.command;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import org.benchleaf.check.CaseChecker;
import org.benchleaf.check.Checked;
import org.benchleaf.check.CheckedLibrary;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.derive.Derived;
import org.benchleaf.derive.Deriver;
import org.benchleaf.derive.FigureTable;
import org.benchleaf.message.MessageText;
import org.benchleaf.message.Messages;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.Draft;
import org.benchleaf.read.LibraryReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints every figure of one case with its working. */
@Command(name = "figures", mixinStandardHelpOptions = true,
        description = "Works out every figure of one case and prints it with formula, inputs and sources.",
        footer = {"", "Example: figures tide-table --sheets 6"})
public final class FiguresCommand implements Callable<Integer> {

    private static final int DONE = 0;
    private static final int CONTENT_HAS_ERRORS = 1;
    private static final int MOST_SHEETS = 10_000;

    /** How figures are printed. */
    enum Format { text, json }

    @Parameters(index = "0", paramLabel = "CASE", description = "The case's folder name.")
    private String name;

    @Option(names = "--content", paramLabel = "DIR", description = "Where the content is (content).")
    private Path content = Path.of("content");

    @Option(names = "--format", paramLabel = "text|json", description = "How to print (text).")
    private Format format = Format.text;

    @Option(names = "--sheets", paramLabel = "N", description = "For how many sheets (1).")
    private int sheets = 1;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        ContentRequest request = new ContentRequest(spec, content);
        if (sheets < 1 || sheets > MOST_SHEETS) {
            return request.refuse("--sheets must lie between 1 and " + MOST_SHEETS + ", not " + sheets);
        }
        Optional<Path> folder = request.caseFolder(name);
        return folder.isPresent() ? print(folder.get()) : ContentRequest.REFUSED;
    }

    private int print(Path folder) {
        // The case and the library are read at once: someone waits at a terminal, and neither needs the other.
        CompletableFuture<Draft> draft = CompletableFuture.supplyAsync(() -> {
            Draft read = CaseReader.read(content, folder);
            CaseChecker.prepare();
            return read;
        });
        CheckedLibrary library = LibraryChecker.check(LibraryReader.read(content));
        Deriver deriver = new Deriver(library.library());
        Checked checked = CaseChecker.check(draft.join(), library.library(), LocalDate.now(), deriver::ph);
        Messages messages = new Messages();
        messages.addAll(library.messages());
        messages.addAll(checked.messages());
        // What has errors in its form holds stand-ins; nothing is worked out from those.
        Optional<Derived> derived = messages.hasErrors() ? Optional.empty()
                : checked.treatment().map(treatment -> deriver.derive(treatment, checked.findings(), sheets));
        derived.ifPresent(one -> messages.addAll(one.messages()));
        tell(messages);
        derived.ifPresent(one -> print(one, library));
        return messages.hasErrors() ? CONTENT_HAS_ERRORS : DONE;
    }

    /** An error in what was worked out, such as a figure that is cited and is not there, leaves the other figures as they are. */
    private void print(Derived derived, CheckedLibrary library) {
        FigureTable table = new FigureTable(library.library());
        spec.commandLine().getOut().print(format == Format.json
                ? new String(table.json(derived.worked()), StandardCharsets.UTF_8) : table.text(derived.worked()));
        spec.commandLine().getOut().flush();
    }

    private void tell(Messages messages) {
        messages.all().forEach(message -> spec.commandLine().getErr().println(MessageText.of(message)));
    }
}
