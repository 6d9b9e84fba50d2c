package org.benchleaf.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.message.EditionMessages;
import org.benchleaf.message.Message;
import org.benchleaf.message.MessageText;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Place;
import org.benchleaf.message.Severity;
import org.benchleaf.pack.EditionStopped;
import org.benchleaf.pack.SitePacker;
import org.benchleaf.publish.TemplateStop;
import org.benchleaf.run.ContentStages;
import org.benchleaf.run.Progress;
import org.benchleaf.run.Publishing;
import org.benchleaf.run.Withdrawals;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Publishes the content as a site. */
@Command(name = "publish", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Checks the content, works out its figures and publishes it as a site.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:the site is published", "1:the content has errors; nothing was published but withdrawals",
            "2:the command line is wrong", "3:the disk or the program failed"})
public final class PublishCommand implements Callable<Integer> {

    private static final int DONE = 0;
    private static final int CONTENT_HAS_ERRORS = 1;
    private static final int FAILED = 3;

    @Option(names = "--content", paramLabel = "DIR", defaultValue = "content",
            description = "Where the cases are (default: ${DEFAULT-VALUE}).")
    private Path content;

    @Option(names = "--templates", paramLabel = "DIR",
            description = "How pages look (default: the folder templates beside the content, or the program's own). "
                    + "Templates make pages of what they are given; they cannot open files, reach a network or run Java.")
    private Optional<Path> templates = Optional.empty();

    @Option(names = "--site", paramLabel = "DIR", defaultValue = "site",
            description = "Where the site for the public goes (default: ${DEFAULT-VALUE}).")
    private Path site;

    @Option(names = "--training-site", paramLabel = "DIR",
            description = "Where the training site of a studio goes that publishes apart"
                    + " (default: beside the site, its name and '-training').")
    private Optional<Path> trainingSite = Optional.empty();

    @Option(names = "--on", paramLabel = "DATE",
            description = "The day of publishing, by which permissions are judged, as 2026-03-02 (default: today).")
    private Optional<LocalDate> on = Optional.empty();

    @Option(names = "--earlier-day",
            description = "Publishes though the day lies before that of the last edition; without it, such a run only "
                    + "takes down, by the later day, and asks.")
    private boolean earlierDay;

    @Option(names = "--only-withdrawals",
            description = "Only takes down what may not be public any more; makes nothing anew and needs no sound content.")
    private boolean onlyWithdrawals;

    @Option(names = "--threads", paramLabel = "N", hidden = true,
            description = "How many cases are worked on at once (default: one a processor).")
    private int threads = Runtime.getRuntime().availableProcessors();

    @Spec
    private CommandSpec spec;

    private final Clock clock;

    /** The command, by the clock of this machine. */
    public PublishCommand() {
        this(Clock.systemDefaultZone());
    }

    PublishCommand(Clock clock) {
        this.clock = clock;
    }

    @Override
    public Integer call() {
        refuseWrongFolders();
        PrintWriter err = spec.commandLine().getErr();
        try {
            return run(on.orElseGet(() -> LocalDate.now(clock)), err);
        } catch (TemplateStop wrong) {
            err.println(MessageText.of(wrong.told()));
            return CONTENT_HAS_ERRORS;
        } catch (EditionStopped stopped) {
            err.println(MessageText.of(stopped.told()));
            return stopped.told().id() == EditionMessages.NO_CASE ? CONTENT_HAS_ERRORS : FAILED;
        } catch (UncheckedIOException broken) {
            err.println(MessageText.of(Publishing.unreadable(content, broken).told()));
            return FAILED;
        } catch (RuntimeException fault) {
            err.println(MessageText.of(Publishing.fault(content, fault)));
            return FAILED;
        }
    }

    /** What must go goes before anything is read that could stop the run. */
    private int run(LocalDate day, PrintWriter err) {
        PrintWriter out = spec.commandLine().getOut();
        long started = System.nanoTime();
        List<Message> takenDown = new ArrayList<>(
                Withdrawals.carryOut(content, judgedOn(day, site), site, Audience.EVERYBODY));
        takenDown.addAll(Withdrawals.carryOut(content, judgedOn(day, training()), training(), Audience.TRAINEES));
        takenDown.forEach(told -> err.println(MessageText.of(told)));
        err.flush();
        if (onlyWithdrawals) {
            Summary.ofWithdrawals(takenDown).forEach(out::println);
            return takenDown.stream().anyMatch(PublishCommand::isLeftOpen) ? CONTENT_HAS_ERRORS : DONE;
        }
        ContentStages stages = stages(day);
        List<Path> folders = stages.audiences().stream().map(this::folder).toList();
        Publishing.Outcome outcome = publish(stages, day);
        Lists lists = Lists.of(outcome.told());
        lists.single().forEach(told -> err.println(told.text()));
        lists.lines().forEach(out::println);
        err.flush();
        if (outcome.isNew() && !folders.contains(training()) && SitePacker.clear(training(), day)) {
            err.println(MessageText.of(EditionMessages.TRAINING_SITE_ENDED.at(Place.file(name(training())))));
        }
        Summary.of(outcome, folders, TemplateChoice.of(content, templates), System.nanoTime() - started).forEach(out::println);
        return code(outcome);
    }

    /** Whether it may be that what should have left is still there. */
    private static boolean isLeftOpen(Message told) {
        return told.severity() == Severity.ERROR || told.id() == EditionMessages.CASES_MISSING;
    }

    /** A clock that was set back must not let a permission count again that has run out. */
    private LocalDate judgedOn(LocalDate day, Path folder) {
        return setBack(day, folder).orElse(day);
    }

    /** The day of the last edition if it lies after that of this run, unless the author has said that it was wrong. */
    private Optional<LocalDate> setBack(LocalDate day, Path folder) {
        return earlierDay ? Optional.empty() : SitePacker.lastDay(folder).filter(day::isBefore);
    }

    private static int code(Publishing.Outcome outcome) {
        if (outcome.isNew()) {
            return DONE;
        }
        boolean program = outcome.told().stream()
                .anyMatch(told -> told.code().equals(EditionMessages.PROGRAM_FAILED.code()));
        return program ? FAILED : CONTENT_HAS_ERRORS;
    }

    private void refuseWrongFolders() {
        if (!Files.isDirectory(content)) {
            throw new ParameterException(spec.commandLine(), ContentRequest.missing(content) + ".");
        }
        TemplateChoice.refusal(templates).ifPresent(why -> {
            throw new ParameterException(spec.commandLine(), why);
        });
        if (threads < 1) {
            throw new ParameterException(spec.commandLine(), "--threads: at least 1.");
        }
        refuseNested("--site", site, content, "the content");
        refuseNested("--training-site", training(), content, "the content");
        refuseNested("--training-site", training(), site, "the site for the public");
    }

    private void refuseNested(String option, Path folder, Path other, String what) {
        Path one = real(folder);
        Path two = real(other);
        if (one.startsWith(two) || two.startsWith(one)) {
            throw new ParameterException(spec.commandLine(),
                    option + ": '" + folder + "' and " + what + " '" + other + "' lie in each other.");
        }
    }

    /** Where a folder truly lies, which need not be there yet: links lead on. */
    private static Path real(Path folder) {
        Path whole = folder.toAbsolutePath().normalize();
        for (Path there = whole; there != null; there = there.getParent()) {
            try {
                return there.toRealPath().resolve(there.relativize(whole)).normalize();
            } catch (IOException notThere) {
                // Its parent may be.
            }
        }
        return whole;
    }

    private Path folder(Audience audience) {
        return audience.isPublic() ? site : training();
    }

    private Path training() {
        Path whole = site.toAbsolutePath().normalize();
        Path named = site.endsWith(String.valueOf(whole.getFileName())) ? site : whole;
        return trainingSite.orElseGet(() -> named.resolveSibling(whole.getFileName() + "-training"));
    }

    private static String name(Path path) {
        return path.toString().replace('\\', '/');
    }

    private ContentStages stages(LocalDate day) {
        ContentStages stages = ContentStages.open(content, TemplateChoice.of(content, templates), day);
        if (stages.cases().isEmpty()) {
            throw new EditionStopped(EditionMessages.NO_CASE.at(Place.file(name(content))));
        }
        return stages;
    }

    private Publishing.Outcome publish(ContentStages stages, LocalDate day) {
        Map<Audience, Path> folders = new EnumMap<>(Audience.class);
        stages.audiences().forEach(audience -> folders.put(audience, folder(audience)));
        Messages asked = new Messages();
        folders.values().forEach(folder -> setBack(day, folder).ifPresent(last -> asked.add(
                EditionMessages.EARLIER_DAY.at(Place.file(name(folder)), "day", day, "last", last))));
        return new Publishing(stages, day, threads, Progress.Shown.here(System.err))
                .run(folders, stages.messages(), asked);
    }
}
