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
import org.benchleaf.derive.Derived;
import org.benchleaf.derive.Deriver;
import org.benchleaf.derive.classes.ClassPlan;
import org.benchleaf.derive.classes.IssuedPapers;
import org.benchleaf.message.MessageText;
import org.benchleaf.message.Messages;
import org.benchleaf.model.ClassPapers;
import org.benchleaf.model.CourseClass;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.LibraryReader;
import org.benchleaf.run.WholeFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Keeps what the papers of a class state on the day on which they are handed out. */
@Command(name = "issue", mixinStandardHelpOptions = true,
        description = "Keeps the amounts and cautions of a class as they are handed out, so that a later issue can tell what changed.",
        footer = {"", "Example: issue spring-course",
            "They are kept in classes/spring-course.issues.yaml, under the number that stands under 'issue:' in the class."})
public final class IssueCommand implements Callable<Integer> {

    private static final int DONE = 0;
    private static final int CONTENT_HAS_ERRORS = 1;

    @Parameters(index = "0", paramLabel = "CLASS", description = "The name of the class's file, without its ending.")
    private String name;

    @Option(names = "--content", paramLabel = "DIR", description = "Where the content is (content).")
    private Path content = Path.of("content");

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (!request().isThere()) {
            return ContentRequest.REFUSED;
        }
        CheckedLibrary library = LibraryChecker.check(LibraryReader.read(content));
        Optional<CourseClass> course = request().course(name, library.library().classes());
        if (course.isEmpty()) {
            return ContentRequest.REFUSED;
        }
        Optional<ClassPapers.Issue> issue = course.get().papers().issue();
        if (issue.isEmpty() || issue.get().isDraft()) {
            return request().refuse("the class '" + name
                    + "' is not ready to be handed out; state 'issue: {number: …, on: …, approved by: …}' in its file");
        }
        return plan(course.get(), library).map(plan -> keep(course.get(), issue.get(), plan.papers())).orElse(CONTENT_HAS_ERRORS);
    }

    private Optional<ClassPlan> plan(CourseClass course, CheckedLibrary library) {
        Messages messages = new Messages();
        messages.addAll(library.messages());
        Deriver deriver = new Deriver(library.library());
        Checked checked = CaseChecker.check(CaseReader.read(content, content.resolve("cases").resolve(course.caseId())),
                library.library(), LocalDate.now(), deriver::ph);
        messages.addAll(checked.messages());
        Optional<ClassPlan> plan = Optional.empty();
        if (!messages.hasErrors() && checked.treatment().isPresent()) {
            Derived derived = deriver.derive(checked.treatment().get(), checked.findings());
            messages.addAll(derived.messages());
            plan = derived.worked().classes().stream().filter(one -> one.source().id().equals(name)).findFirst();
        }
        messages.all().forEach(message -> spec.commandLine().getErr().println(MessageText.of(message)));
        return messages.hasErrors() ? Optional.empty() : plan;
    }

    private int keep(CourseClass course, ClassPapers.Issue issue, IssuedPapers papers) {
        List<ClassPapers.Issued> issued = course.papers().issued();
        Optional<ClassPapers.Issued> same = issued.stream().filter(one -> one.number() == issue.number()).findFirst();
        if (same.isPresent()) {
            boolean unchanged = same.get().mark().equals(papers.mark());
            return unchanged ? tell("issue " + issue.number() + " is kept already, as the class is now")
                    : request().refuse("issue " + issue.number() + " was handed out on " + same.get().on()
                            + " and the class has changed since; give it a higher number, and say that it replaces "
                            + issue.number());
        }
        Path file = content.resolve("classes").resolve(name + ".issues.yaml");
        boolean first = !Files.exists(file);
        WholeFile.write(file, (first ? IssueText.HEAD : WholeFile.read(file).stripTrailing() + "\n") + IssueText.of(issue, papers));
        return tell("issue " + issue.number() + " is kept in " + file + ", mark " + papers.mark());
    }

    private int tell(String sentence) {
        spec.commandLine().getOut().println(sentence);
        return DONE;
    }

    private ContentRequest request() {
        return new ContentRequest(spec, content);
    }
}
