package org.benchleaf.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.benchleaf.check.RecordChecker;
import org.benchleaf.message.MessageText;
import org.benchleaf.model.BenchRecord;
import org.benchleaf.pack.PrivateFolder;
import org.benchleaf.read.RecordDraft;
import org.benchleaf.read.RecordReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/**
 * Turns records that were made at the bench into lines for the front matter of their case, and gathers those of a class into its
 * results.
 */
@Command(name = "records", mixinStandardHelpOptions = true,
        description = "Turns what was saved in the bench view into lines for the case file, and gathers the records of a class.",
        footer = {"", "Example: records tide-table-record-2026-03-17.json",
            "The lines go under 'steps' of case.md; what the case file has no key for stands in remarks.",
            "Example: records saved-by-the-stations",
            "The results of each class lie in a folder of its name in saved-by-the-stations/results, for its owner's eyes only."})
public final class RecordsCommand implements Callable<Integer> {

    private static final int DONE = 0;
    private static final int RECORD_HAS_ERRORS = 1;

    /** How the records are printed. */
    enum Format { text, json }

    @Parameters(index = "0", paramLabel = "FOLDER|FILE", description = "A saved record, or a folder of them (*.json).")
    private Path path;

    @Option(names = "--format", paramLabel = "text|json", description = "How to print (text).")
    private Format format = Format.text;

    @Option(names = "--results", paramLabel = "DIR", description = "Where the results of a class go (results, beside the records).")
    private Path results;

    @Option(names = "--content", paramLabel = "DIR", description = "Where the content with the class is (content).")
    private Path content = Path.of("content");

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (!Files.exists(path)) {
            return request().refuse("there is no file or folder " + path);
        }
        List<Path> files = RecordReader.files(path);
        if (files.isEmpty()) {
            return request().refuse("no file in " + path + " ends in .json; the bench view saves such files under 'Record'");
        }
        List<BenchRecord> records = new ArrayList<>();
        files.forEach(file -> record(file).ifPresent(records::add));
        List<BenchRecord> ofClasses = records.stream().filter(record -> record.seat().isPresent()).toList();
        RecordText text = new RecordText(format == Format.json ? records
                : records.stream().filter(record -> record.seat().isEmpty()).toList());
        spec.commandLine().getOut().print(format == Format.json ? text.json() : text.text());
        spec.commandLine().getOut().flush();
        int gathered = ofClasses.isEmpty() ? DONE : gather(ofClasses);
        return gathered == DONE && records.size() < files.size() ? RECORD_HAS_ERRORS : gathered;
    }

    /** Writes the results of each class that the records name. */
    private int gather(List<BenchRecord> records) {
        Path folder = results != null ? results : folder().resolve("results");
        if (PrivateFolder.isWhereOthersRead(folder)) {
            return request().refuse("the results would lie in " + folder + ", within a site or the content of one, where others read them; "
                    + "name a folder elsewhere with --results");
        }
        if (!Files.isDirectory(content)) {
            return request().refuse("there is no content folder " + content + "; name the one that holds the class with --content");
        }
        ClassGathering gathering = new ClassGathering(content);
        Map<String, List<BenchRecord>> byClass = records.stream().collect(Collectors.groupingBy(
                record -> record.seat().orElseThrow().course(), TreeMap::new, Collectors.toList()));
        List<String> written = byClass.entrySet().stream().filter(one -> gathering.write(one.getKey(), one.getValue(), folder))
                .map(Map.Entry::getKey).toList();
        gathering.messages().all().forEach(message -> spec.commandLine().getErr().println(MessageText.of(message)));
        written.forEach(name -> spec.commandLine().getErr().println("records: the results of " + name + " are in "
                + folder.resolve(name).resolve("index.html") + "; only you can read them"));
        return written.size() == byClass.size() ? DONE : RECORD_HAS_ERRORS;
    }

    private Path folder() {
        return Files.isDirectory(path) ? path : Optional.ofNullable(path.getParent()).orElse(Path.of("."));
    }

    private Optional<BenchRecord> record(Path file) {
        RecordDraft draft = RecordReader.read(file);
        Optional<BenchRecord> record = RecordChecker.check(draft);
        draft.messages().all().forEach(message -> spec.commandLine().getErr().println(MessageText.of(message)));
        return record;
    }

    private ContentRequest request() {
        return new ContentRequest(spec, content);
    }
}
