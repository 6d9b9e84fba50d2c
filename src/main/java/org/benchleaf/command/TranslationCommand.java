package org.benchleaf.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.benchleaf.check.CaseChecker;
import org.benchleaf.check.Checked;
import org.benchleaf.check.CheckedLibrary;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.check.StudioWords;
import org.benchleaf.derive.Deriver;
import org.benchleaf.message.Message;
import org.benchleaf.message.MessageText;
import org.benchleaf.message.Nearest;
import org.benchleaf.message.Severity;
import org.benchleaf.model.Library;
import org.benchleaf.model.LibraryTexts;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.Draft;
import org.benchleaf.read.LibraryReader;
import org.benchleaf.read.StudioWordsFile;
import org.benchleaf.read.TranslationFile;
import org.benchleaf.run.WholeFile;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Begins the file of a case in another language, or brings it to the words that the case has now. */
@Command(name = "translation", mixinStandardHelpOptions = true,
        description = "Writes every text of a case, or of the studio, into its file for a language, to be translated; run again, it"
                + " brings what is new or changed and keeps every word that is there.",
        footer = {"", "Example: translation tide-table fr",
            "The words stand in cases/tide-table/case.fr.md, those of the case above them in comments.",
            "Example: translation --studio fr",
            "Materials, classes, glossary and studio in words.fr.yaml, each under the studio's own text."})
public final class TranslationCommand implements Callable<Integer> {

    private static final int DONE = 0;
    private static final int CONTENT_HAS_ERRORS = 1;

    @ArgGroup(exclusive = true, multiplicity = "1")
    private Wanted wanted;

    @Option(names = "--content", paramLabel = "DIR", description = "Where the content is (content).")
    private Path content = Path.of("content");

    @Spec
    private CommandSpec spec;

    /** What is translated: a case or what all of them share. */
    private static final class Wanted {

        @Option(names = "--studio", paramLabel = "LANGUAGE",
                description = "The studio's own words instead of a case's: materials, classes, glossary, studio.yaml.")
        private String studio;

        @ArgGroup(exclusive = false, multiplicity = "1")
        private OfCase ofCase;
    }

    /** A case and a language. */
    private static final class OfCase {

        @Parameters(index = "0", paramLabel = "CASE", description = "The case's folder name.")
        private String name;

        @Parameters(index = "1", paramLabel = "LANGUAGE", description = "A language that studio.yaml lists, such as fr.")
        private String language;
    }

    @Override
    public Integer call() {
        Optional<Path> folder = wanted.studio == null ? request().caseFolder(wanted.ofCase.name) : Optional.of(content);
        if (folder.isEmpty() || !request().isThere()) {
            return ContentRequest.REFUSED;
        }
        CheckedLibrary library = LibraryChecker.check(LibraryReader.read(content));
        if (library.messages().hasErrors()) {
            return tell(library.messages().all());
        }
        String language = wanted.studio == null ? wanted.ofCase.language : wanted.studio;
        List<String> listed = library.library().studio().languages();
        Optional<String> tag = listed.stream().filter(language::equalsIgnoreCase).findFirst();
        if (tag.isEmpty()) {
            return request().refuse("the studio does not list the language '" + language + "'; "
                    + Nearest.to(language, listed).map(near -> "did you mean '" + near + "'? If not, ").orElse("")
                    + "add it under 'languages' in studio.yaml first");
        }
        return wanted.studio == null ? update(folder.get(), tag.get(), library) : update(tag.get(), library.library());
    }

    private int update(String tag, Library library) {
        if (tag.equalsIgnoreCase(library.studio().language())) {
            return request().refuse("the studio's own files are written in '" + tag + "'");
        }
        Path file = StudioWordsFile.file(content, tag);
        Optional<StudioWordsFile> before = Files.exists(file) ? StudioWordsFile.read(content, file) : Optional.empty();
        Map<String, String> texts = LibraryTexts.byAddress(library);
        OriginalWords shown = new OriginalWords(library.studio().language());
        List<String> head = before.isPresent() ? List.of() : head(tag);
        write(file, new StudioWordsText(new StudioWordsUpdate(texts, before, shown), shown, head).text());
        LibraryReader.read(content).words().stream().filter(part -> part.name().equals(tag))
                .map(part -> CheckCommand.translated(StudioWords.of(part, texts))).forEach(spec.commandLine().getOut()::println);
        return DONE;
    }

    private static List<String> head(String tag) {
        return List.of(" The studio's own words in '" + tag
                        + "'. Write each behind its key, which is the text as the studio's files say it.",
                " What is left empty is shown as it is. When these files have changed, run 'benchleaf translation --studio " + tag
                        + "' again:",
                " where one says something else by now, the older text stands above it (before:). Bring the words up to date, take that"
                        + " line",
                " away, and run it once more.");
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
            request().refuse("the case '" + wanted.ofCase.name
                    + "' says things that are not yet known; it can be translated when they are");
            return CONTENT_HAS_ERRORS;
        }
        TreatmentCase treatment = checked.treatment().get();
        if (treatment.language().equalsIgnoreCase(tag)) {
            return request().refuse("the case '" + wanted.ofCase.name + "' is written in '" + tag + "'");
        }
        Optional<TranslationFile> before = Files.exists(file) ? CaseReader.translation(content, file) : Optional.empty();
        write(file, new TranslationMaker(treatment, tag).text(before));
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

    private void write(Path file, String text) {
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
