package org.benchleaf.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.benchleaf.check.CaseChecker;
import org.benchleaf.check.Checked;
import org.benchleaf.check.CheckedLibrary;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.derive.Deriver;
import org.benchleaf.message.Message;
import org.benchleaf.message.MessageText;
import org.benchleaf.message.Nearest;
import org.benchleaf.message.Severity;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.Draft;
import org.benchleaf.read.LibraryReader;
import org.benchleaf.read.TranslationFile;
import org.benchleaf.run.WholeFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Begins the file of a case in another language, or brings it to the words that the case has now. */
@Command(name = "translation", mixinStandardHelpOptions = true,
        description = "Writes every text of a case into its file for a language, to be translated; run again, it brings what is"
                + " new or changed in the case and keeps every word that is there.",
        footer = {"", "Example: translation tide-table fr",
            "The words stand in cases/tide-table/case.fr.md, those of the case above them in comments."})
public final class TranslationCommand implements Callable<Integer> {

    private static final int DONE = 0;
    private static final int CONTENT_HAS_ERRORS = 1;

    @Parameters(index = "0", paramLabel = "CASE", description = "The case's folder name.")
    private String name;

    @Parameters(index = "1", paramLabel = "LANGUAGE", description = "A language that studio.yaml lists, such as fr.")
    private String language;

    @Option(names = "--content", paramLabel = "DIR", description = "Where the content is (content).")
    private Path content = Path.of("content");

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Optional<Path> folder = request().caseFolder(name);
        if (folder.isEmpty()) {
            return ContentRequest.REFUSED;
        }
        CheckedLibrary library = LibraryChecker.check(LibraryReader.read(content));
        if (library.messages().hasErrors()) {
            return tell(library.messages().all());
        }
        List<String> listed = library.library().studio().languages();
        Optional<String> tag = listed.stream().filter(language::equalsIgnoreCase).findFirst();
        return tag.isPresent() ? update(folder.get(), tag.get(), library) : request().refuse("the studio does not list the language '"
                + language + "'; " + Nearest.to(language, listed).map(near -> "did you mean '" + near + "'? If not, ").orElse("")
                + "add it under 'languages' in studio.yaml first");
    }

    private int update(Path folder, String tag, CheckedLibrary library) {
        Path file = CaseReader.translationFile(folder, tag);
        Draft draft = CaseReader.read(content, folder);
        // What only its translations have wrong keeps no case from being translated: it may be what the update mends.
        Checked checked = check(draft.inItsOwnLanguage(), library);
        List<Message> errors = checked.messages().all().stream().filter(message -> message.severity() == Severity.ERROR)
                .filter(message -> concerns(message, file)).toList();
        if (!errors.isEmpty()) {
            return tell(errors);
        }
        if (checked.treatment().isEmpty()) {
            request().refuse("the case '" + name
                    + "' says things that are not yet known; it can be translated when they are");
            return CONTENT_HAS_ERRORS;
        }
        TreatmentCase treatment = checked.treatment().get();
        if (treatment.language().equalsIgnoreCase(tag)) {
            return request().refuse("the case '" + name + "' is written in '" + tag + "'");
        }
        write(file, treatment, tag);
        check(CaseReader.read(content, folder), library).treatment().stream().flatMap(one -> one.translations().stream())
                .filter(one -> one.language().equals(tag)).map(CheckCommand::translated).forEach(spec.commandLine().getOut()::println);
        return DONE;
    }

    private Checked check(Draft draft, CheckedLibrary library) {
        return CaseChecker.check(draft, library.library(), LocalDate.now(), new Deriver(library.library())::ph);
    }

    /** The other translations are not looked at. */
    private static boolean concerns(Message message, Path file) {
        String told = message.place().file();
        return !CaseReader.isTranslation(told) || told.equals(file.toString().replace('\\', '/'));
    }

    private void write(Path file, TreatmentCase treatment, String tag) {
        Optional<TranslationFile> before = Files.exists(file) ? CaseReader.translation(content, file) : Optional.empty();
        String text = new TranslationMaker(treatment, tag).text(before);
        boolean same = Files.exists(file) && WholeFile.read(file).equals(text);
        if (!same) {
            WholeFile.write(file, text);
        }
        spec.commandLine().getOut().println((same ? "Up to date: " : "Written: ") + file);
    }

    private int tell(List<Message> messages) {
        messages.forEach(message -> spec.commandLine().getErr().println(MessageText.of(message)));
        return CONTENT_HAS_ERRORS;
    }

    private ContentRequest request() {
        return new ContentRequest(spec, content);
    }
}
