package org.benchleaf.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.compose.part.BottleLabel;
import org.benchleaf.derive.hazard.Bottles;
import org.benchleaf.message.MessageText;
import org.benchleaf.message.Messages;
import org.benchleaf.model.Reference;
import org.benchleaf.publish.Pictures;
import org.benchleaf.publish.SitePublisher;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.QuantityReader;
import org.benchleaf.read.LibraryReader;
import org.benchleaf.read.MethodReader;
import org.benchleaf.read.ReferenceReader;
import org.benchleaf.read.TablesDraft;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Answers for any bottle: classes, label, protection, waste, what must not meet, who may use it, and what is not known. */
@Command(name = "hazards", mixinStandardHelpOptions = true,
        description = "Tells what is in a bottle can do, what becomes of it, and what of that is not known.",
        footer = {"", "Example: hazards 'isopropanol 12 %% m/m; acetone 8 %% m/m; rest ethanol'",
            "Substances by key, name, synonym or CAS number; shares in %% m/m, %% v/v, g/L, mol/L or parts.",
            "Ends with 1 where something is not known or must not meet."})
public final class HazardsCommand implements Callable<Integer> {

    private static final Path USUAL = Path.of("content");
    private static final int DONE = 0;
    private static final int CONTENT_HAS_ERRORS = 1;
    private static final int UNKNOWN_OR_INCOMPATIBLE = 1;
    private static final int COMMAND_IS_WRONG = 2;

    /** How the answer is printed. */
    enum Format { text, json }

    @Parameters(arity = "1..*", paramLabel = "BOTTLE", description = "What is in it, parts between semicolons.")
    private List<String> line = List.of();

    @Option(names = "--ph", paramLabel = "PH", description = "The pH as measured; otherwise worked out where that is possible.")
    private String ph;

    @Option(names = "--label", description = "Writes the printable label, a page of its own, instead of the answer.")
    private boolean label;

    @Option(names = "--content", paramLabel = "DIR",
            description = "The content folder, whose own tables and drain window count (content, where there is one).")
    private Path content;

    @Option(names = "--format", paramLabel = "text|json", description = "How to print (text).")
    private Format format = Format.text;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        TablesDraft draft = tables();
        Reference reference = LibraryChecker.tables(draft);
        draft.messages().all().forEach(message -> spec.commandLine().getErr().println(MessageText.of(message)));
        if (draft.messages().hasErrors()) {
            spec.commandLine().getErr()
                    .println("hazards: no answer, since the tables of the studio cannot be read or have errors; put them right first.");
            return CONTENT_HAS_ERRORS;
        }
        Bottles.Answer answer = new Bottles(reference, MethodReader.read()).ask(String.join(" ", line), stated());
        if (answer instanceof Bottles.Refused refused) {
            refused.slips().forEach(slip -> spec.commandLine().getErr().println("hazards: error: " + slip));
            return COMMAND_IS_WRONG;
        }
        Bottles.Told told = (Bottles.Told) answer;
        spec.commandLine().getOut().println(printed(reference, told));
        boolean sound = told.hazards().known() && told.hazards().incompatible().isEmpty()
                && told.hazards().waste().group().isPresent();
        return sound ? DONE : UNKNOWN_OR_INCOMPATIBLE;
    }

    /**
     * Those of the folder that is named, or of the usual one; where nobody named one and there is none, the shipped ones, which is told.
     */
    private TablesDraft tables() {
        Path folder = content == null ? USUAL : content;
        if (content != null || Files.isDirectory(folder)) {
            return LibraryReader.tables(folder);
        }
        spec.commandLine().getErr().println("hazards: there is no content folder here, so no table of a studio is asked and the drain "
                + "window is the usual one; name the folder with --content if there is one.");
        return new TablesDraft(Optional.empty(), ReferenceReader.shipped(), new Messages());
    }

    private String printed(Reference reference, Bottles.Told told) {
        if (label) {
            return SitePublisher.withOwnTemplates(Pictures.none())
                    .publish(BottleLabel.of(String.join(" ", line), told.hazards(), reference));
        }
        HazardsText text = new HazardsText(reference, told);
        return format == Format.json ? text.json() : text.text();
    }

    private Optional<Quantity> stated() {
        if (ph == null) {
            return Optional.empty();
        }
        Optional<Quantity> read = QuantityReader.read(ph, Dimension.ACIDITY).quantity()
                .filter(one -> one.low() >= -1 && one.high() <= 15);
        if (read.isEmpty()) {
            throw new ParameterException(spec.commandLine(), "'" + ph + "' is no pH; write a number such as --ph 12.4");
        }
        return read;
    }
}
