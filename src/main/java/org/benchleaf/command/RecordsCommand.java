package org.benchleaf.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.benchleaf.check.RecordChecker;
import org.benchleaf.message.MessageText;
import org.benchleaf.model.BenchRecord;
import org.benchleaf.read.RecordDraft;
import org.benchleaf.read.RecordReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Turns records that were made at the bench into lines for the front matter of their case. */
@Command(name = "records", mixinStandardHelpOptions = true,
        description = "Turns what was written down in the bench view and saved into lines for the case file.",
        footer = {"", "Example: records tide-table-record-2026-03-17.json",
            "The lines go under 'steps' of case.md; what the case file has no key for stands in remarks."})
public final class RecordsCommand implements Callable<Integer> {

    private static final int DONE = 0;
    private static final int RECORD_HAS_ERRORS = 1;
    private static final int COMMAND_IS_WRONG = 2;

    /** How the records are printed. */
    enum Format { text, json }

    @Parameters(index = "0", paramLabel = "FOLDER|FILE", description = "A saved record, or a folder of them (*.json).")
    private Path path;

    @Option(names = "--format", paramLabel = "text|json", description = "How to print (text).")
    private Format format = Format.text;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (!Files.exists(path)) {
            return complain("there is no file or folder " + path);
        }
        List<Path> files = RecordReader.files(path);
        if (files.isEmpty()) {
            return complain("no file in " + path + " ends in .json; the bench view saves such files under 'Record'");
        }
        List<BenchRecord> records = new ArrayList<>();
        files.forEach(file -> record(file).ifPresent(records::add));
        RecordText text = new RecordText(records);
        spec.commandLine().getOut().print(format == Format.json ? text.json() : text.text());
        spec.commandLine().getOut().flush();
        return records.size() == files.size() ? DONE : RECORD_HAS_ERRORS;
    }

    private Optional<BenchRecord> record(Path file) {
        RecordDraft draft = RecordReader.read(file);
        Optional<BenchRecord> record = RecordChecker.check(draft);
        draft.messages().all().forEach(message -> spec.commandLine().getErr().println(MessageText.of(message)));
        return record;
    }

    private int complain(String sentence) {
        spec.commandLine().getErr().println("records: error: " + sentence);
        return COMMAND_IS_WRONG;
    }
}
