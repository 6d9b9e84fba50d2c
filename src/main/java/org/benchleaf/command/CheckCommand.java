package org.benchleaf.command;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.benchleaf.check.CaseChecker;
import org.benchleaf.check.Checked;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.check.Remainder;
import org.benchleaf.check.StudioWords;
import org.benchleaf.json.JsonText;
import org.benchleaf.message.Message;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Severity;
import org.benchleaf.model.Confidential;
import org.benchleaf.model.Library;
import org.benchleaf.model.LibraryTexts;
import org.benchleaf.model.Translation;
import org.benchleaf.privacy.PrivateScan;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.Draft;
import org.benchleaf.read.LibraryReader;
import org.benchleaf.run.CaseReview;
import org.benchleaf.run.SharedContent;
import org.benchleaf.run.Told;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reads cases as a careful colleague would and says everything there is to say; publishes nothing. */
@Command(name = "check", mixinStandardHelpOptions = true,
        description = "Checks cases and what they share, and says everything there is to say in one run.",
        footer = {"", "Example: check content/cases/tide-table"})
public final class CheckCommand implements Callable<Integer> {

    private static final int DONE = 0;
    private static final int CONTENT_HAS_ERRORS = 1;

    /** How messages are told. */
    enum Format { text, json, sarif }

    @Parameters(arity = "0..*", paramLabel = "CASE|PATH",
            description = "Names of cases, or their folders or files; all cases if none is given.")
    private List<Path> paths = List.of();

    @Option(names = "--content", paramLabel = "DIR", description = "The content folder (content).")
    private Path content = Path.of("content");

    @Option(names = "--format", paramLabel = "text|json|sarif",
            description = "Text tells messages on the error stream; the others print them as data (text).")
    private Format format = Format.text;

    @Option(names = "--explain", paramLabel = "CODE",
            description = "Tell at length what the code of a message stands for, such as FORM-011, and check nothing.")
    private String code = "";

    @Spec
    private CommandSpec spec;

    private final Clock clock;

    /** Checks against today. */
    public CheckCommand() {
        this(Clock.systemDefaultZone());
    }

    CheckCommand(Clock clock) {
        this.clock = clock;
    }

    @Override
    public Integer call() {
        if (!code.isEmpty()) {
            return explain();
        }
        List<Path> folders = CaseReader.folders(content).stream().filter(asked()).toList();
        Function<Path, Draft> drafts = drafts(folders);
        SharedContent shared = SharedContent.read(content);
        Messages messages = new Messages();
        messages.addAll(shared.messages());
        LocalDate today = LocalDate.now(clock);
        CaseReview review = new CaseReview(shared, today);
        // Gathered in the order of the folders, whichever is done first.
        List<Draft> read = folders.parallelStream().map(drafts).toList();
        Map<String, Confidential> values = read.stream().collect(
                Collectors.toMap(Draft::id, Draft::confidential, (one, same) -> one));
        PrivateScan others = PrivateScan.ofAll(values, shared.studioName());
        PrivateScan inShared = PrivateScan.ofShared(values, shared.studioName());
        shared.draft().texts().forEach(source -> inShared.scanSource(source).forEach(messages::add));
        List<Checked> checked = read.parallelStream()
                .map(draft -> CaseChecker.check(draft, shared.library(), today, shared.deriver()::ph)).toList();
        IntStream.range(0, folders.size()).parallel().mapToObj(at -> review.of(folders.get(at), read.get(at), checked.get(at), others))
                .toList().forEach(messages::addAll);
        List<String> notes = new ArrayList<>(unasked(folders, read, checked, shared));
        notes.addAll(paths.isEmpty() ? ofStudio(shared) : List.of());
        tell(messages.all(), checked, notes);
        return messages.hasErrors() ? CONTENT_HAS_ERRORS : DONE;
    }

    private int explain() {
        Explanation explanation = new Explanation(LibraryChecker.check(LibraryReader.read(content)).library());
        List<String> lines = explanation.of(code).orElseThrow(() -> new ParameterException(spec.commandLine(),
                "no message has the code '" + code + "'" + explanation.near(code).map(near -> "; did you mean '" + near
                        + "'?").orElse("")));
        lines.forEach(spec.commandLine().getOut()::println);
        return DONE;
    }

    /** Reads cases, of which the first is begun at once: mostly one is checked, over and over, and so beside all that is shared. */
    private Function<Path, Draft> drafts(List<Path> folders) {
        if (folders.isEmpty()) {
            return folder -> CaseReader.read(content, folder);
        }
        Path first = folders.get(0);
        ForkJoinTask<Draft> begun = ForkJoinPool.commonPool().submit(() -> CaseReader.read(content, first));
        return folder -> folder.equals(first) ? begun.join() : CaseReader.read(content, folder);
    }

    /** Whether a case is one of those named on the command line, by its folder or a file in it. */
    private Predicate<Path> asked() {
        if (paths.isEmpty()) {
            return folder -> true;
        }
        Set<Path> named = new TreeSet<>();
        List<Path> cases = CaseReader.folders(content);
        Path root = content.toAbsolutePath().normalize();
        for (Path path : paths) {
            Optional<Path> byName = cases.stream().filter(folder -> folder.getFileName().equals(path)).findFirst();
            if (byName.isPresent()) {
                named.add(byName.get());
                continue;
            }
            Path whole = path.toAbsolutePath().normalize();
            if (!Files.exists(whole)) {
                throw new ParameterException(spec.commandLine(), "there is no file or folder '" + path
                        + "', and no case of that name");
            }
            if (!whole.startsWith(root)) {
                throw new ParameterException(spec.commandLine(), "'" + path + "' does not lie in '" + content
                        + "'; name another content folder with --content");
            }
            cases.stream().filter(folder -> touches(folder.toAbsolutePath().normalize(), whole)).forEach(named::add);
        }
        return named::contains;
    }

    private static boolean touches(Path folder, Path path) {
        return path.startsWith(folder) || folder.startsWith(path);
    }

    /** Of each case with errors of form, how much could not be asked of it; a draft is asked little anyway. */
    private static List<String> unasked(List<Path> folders, List<Draft> read, List<Checked> checked, SharedContent shared) {
        List<String> lines = new ArrayList<>(IntStream.range(0, folders.size()).filter(at -> !read.get(at).isUnfinished()).boxed()
                .flatMap(at -> checked.get(at).remainder().stream().map(rest -> unasked(folders.get(at), rest, shared.library()))
                        .flatMap(Optional::stream)).toList());
        if (shared.messages().hasErrors() && !folders.isEmpty()) {
            lines.add("Of no case were figures and hazards worked out, since the files that all cases share have errors.");
        }
        return lines;
    }

    private static Optional<String> unasked(Path folder, Remainder rest, Library library) {
        long rules = rest.unasked(library);
        boolean worked = rest.toWorkOut().isPresent();
        return rules == 0 && worked ? Optional.empty() : Optional.of(folder.getFileName() + ": " + rules + " of " + library.rules().size()
                + " rules were not asked" + (worked ? "" : " and no figure was worked out")
                + ", since the errors above stand in what they rest on. Put these right and check again.");
    }

    private void tell(List<Message> messages, List<Checked> cases, List<String> notes) {
        PrintWriter out = spec.commandLine().getOut();
        switch (format) {
            case json -> out.println(JsonText.of(messages.stream().map(MessageData::of).toList()));
            case sarif -> out.println(JsonText.of(Sarif.log(messages)));
            default -> {
                PrintWriter err = spec.commandLine().getErr();
                Lists lists = Lists.of(messages.stream().map(Told::of).toList());
                lists.single().forEach(message -> err.println(message.text() + "\n"));
                lists.lines().forEach(out::println);
                cases.stream().flatMap(one -> one.treatment().stream()).flatMap(one -> one.translations().stream())
                        .forEach(translation -> out.println(translated(translation)));
                notes.forEach(out::println);
                out.println(summary(messages, cases.size()));
                if (CaseReader.folders(content).isEmpty() && Files.isDirectory(content)) {
                    out.println("There is no case yet: 'benchleaf draft NAME --content " + content + "' begins one.");
                }
            }
        }
    }

    /** How far a translation has come. */
    static String translated(Translation translation) {
        int there = translation.texts().size();
        return translation.place().file() + ": of " + translation.of() + " texts " + (there - translation.outdated().size())
                + " translated, " + (translation.of() - there) + " not yet, " + translation.outdated().size()
                + " changed in the case since.";
    }

    /** How far the studio's own words have come in each language. */
    private static List<String> ofStudio(SharedContent shared) {
        Map<String, String> said = LibraryTexts.byAddress(shared.library());
        return shared.draft().words().stream().map(part -> translated(StudioWords.of(part, said))).toList();
    }

    /** How far the studio's own words have come in a language. */
    static String translated(StudioWords words) {
        int old = words.outdated().size();
        int told = words.words().size();
        return words.place().file() + ": of " + words.of() + " texts of the studio " + told + " translated, " + (words.of() - told - old)
                + " not yet, " + old + " changed since.";
    }

    private static String summary(List<Message> messages, int cases) {
        List<String> counts = new ArrayList<>();
        for (Severity severity : Severity.values()) {
            long count = messages.stream().filter(message -> message.severity() == severity).count();
            boolean plural = count != 1 && severity != Severity.ADVICE;
            counts.add((count == 0 ? "no" : count) + " " + severity.word() + (plural ? "s" : ""));
        }
        return cases + (cases == 1 ? " case" : " cases") + " checked: " + String.join(", ", counts) + ".";
    }
}
