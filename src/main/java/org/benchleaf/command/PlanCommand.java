package org.benchleaf.command;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.benchleaf.check.CaseChecker;
import org.benchleaf.check.Checked;
import org.benchleaf.check.CheckedLibrary;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.derive.Deriver;
import org.benchleaf.derive.classes.ClassSchedule;
import org.benchleaf.derive.classes.ClassScheduler;
import org.benchleaf.message.MessageText;
import org.benchleaf.message.Messages;
import org.benchleaf.model.CourseClass;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.LibraryReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plans when each station of a class does what. */
@Command(name = "plan", mixinStandardHelpOptions = true,
        description = "Plans when each station of a class does what, tells why one waits and what one more of a thing would give.",
        footer = {"", "Example: plan spring-course"})
public final class PlanCommand implements Callable<Integer> {

    private static final int DONE = 0;
    private static final int CONTENT_HAS_ERRORS = 1;

    /** How the plan is printed. */
    enum Format { text, json }

    @Parameters(index = "0", paramLabel = "CLASS", description = "The name of the class's file, without its ending.")
    private String name;

    @Option(names = "--content", paramLabel = "DIR", description = "Where the content is (content).")
    private Path content = Path.of("content");

    @Option(names = "--format", paramLabel = "text|json", description = "How to print (text).")
    private Format format = Format.text;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        ContentRequest request = new ContentRequest(spec, content);
        if (!request.isThere()) {
            return ContentRequest.REFUSED;
        }
        CheckedLibrary library = LibraryChecker.check(LibraryReader.read(content));
        Optional<CourseClass> course = request.course(name, library.library().classes());
        return course.isPresent() ? print(course.get(), library) : ContentRequest.REFUSED;
    }

    private int print(CourseClass course, CheckedLibrary library) {
        Messages messages = new Messages();
        messages.addAll(library.messages());
        Optional<ClassSchedule> schedule = messages.hasErrors() ? Optional.empty()
                : schedule(course, library, messages);
        messages.all().forEach(message -> spec.commandLine().getErr().println(MessageText.of(message)));
        if (schedule.isEmpty()) {
            return CONTENT_HAS_ERRORS;
        }
        PlanText text = new PlanText(schedule.get());
        spec.commandLine().getOut().print(format == Format.json ? text.json() : text.text());
        spec.commandLine().getOut().flush();
        return DONE;
    }

    private Optional<ClassSchedule> schedule(CourseClass course, CheckedLibrary library, Messages messages) {
        Path folder = content.resolve("cases").resolve(course.caseId());
        Deriver deriver = new Deriver(library.library());
        Checked checked = CaseChecker.check(CaseReader.read(content, folder), library.library(), LocalDate.now(), deriver::ph);
        messages.addAll(checked.messages());
        if (messages.hasErrors() || checked.treatment().isEmpty()) {
            return Optional.empty();
        }
        ClassScheduler scheduler = deriver.scheduler(course, checked.treatment().get());
        Optional<ClassSchedule> schedule = scheduler.schedule();
        messages.addAll(scheduler.messages());
        return schedule;
    }
}
