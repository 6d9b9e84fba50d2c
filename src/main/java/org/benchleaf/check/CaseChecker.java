package org.benchleaf.check;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.message.ClassMessages;
import org.benchleaf.message.FormMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Nearest;
import org.benchleaf.message.Place;
import org.benchleaf.model.ClassPapers;
import org.benchleaf.model.CourseClass;
import org.benchleaf.model.Finding;
import org.benchleaf.model.Library;
import org.benchleaf.model.LiquidPh;
import org.benchleaf.model.Permission;
import org.benchleaf.model.TestedContact;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.read.Draft;
import org.benchleaf.read.Node;
import org.benchleaf.read.TestWordsReader;
import org.benchleaf.rule.Review;
import org.benchleaf.rule.TradeRules;

/** Checks the draft of one case and turns it into a sound case, or says what is wrong with it. */
public final class CaseChecker {

    private CaseChecker() {
    }

    /** Loads what the first check would wait for, while something else goes on; never needed. */
    public static void prepare() {
        Form.CASE.load();
    }

    /**
     * The case, and everything there is to say about it; all problems in one run.
     *
     * @param draft as it was read
     * @param library what all cases share
     * @param today the day of the run, against which days are compared
     * @param ph works out the pH that neither the case nor the studio states
     */
    public static Checked check(Draft draft, Library library, LocalDate today, LiquidPh ph) {
        if (draft.root().isEmpty()) {
            return new Checked(Optional.empty(), List.of(), draft.messages(), Optional.empty());
        }
        Messages form = new Messages();
        Gaps gaps = Form.CASE.gaps(draft.root().get(), draft.isUnfinished());
        Form.CASE.check(gaps, form);
        References references = new References(form);
        know(references, library);
        Fields.Soundness soundness = new Fields.Soundness(form);
        boolean retold = gaps.known().get("source").isPresent();
        Context context = new Context(library, today, references, draft.tables(), retold, retold || isPast(gaps.known(), soundness));
        TreatmentCase read = new CaseForm(context, new Fields(gaps.known(), soundness)).read(draft);
        checkClasses(library, read, form);
        references.compare();
        Messages messages = gaps.sorted(form);
        if (!messages.hasErrors() && gaps.isEmpty()) {
            // Never hand on a stand-in: whatever the schema let pass unseen is said here.
            soundness.unsound().ifPresent(place -> messages.add(FormMessages.WRONG_SHAPE.at(place,
                    "found", "something", "wanted", "another value", "example", "see 'Writing a case file'")));
        }
        boolean understood = !messages.hasErrors() && gaps.isEmpty();
        List<Place> spoiled = Stream.concat(soundness.places().stream(), gaps.places().stream()).toList();
        UnsoundParts unsound = UnsoundParts.of(draft.root().get(), messages.all(), spoiled);
        messages.addAll(draft.messages());
        if (!understood) {
            Remainder remainder = new Remainder(read, unsound);
            remainder.review(library, today, ph).forEach(messages::add);
            return new Checked(Optional.empty(), List.of(), messages, Optional.of(remainder));
        }
        // A slip in the story alone does not keep the rules from being asked.
        List<Finding> answered = Stream.concat(ClaimChecks.review(read, library, messages).stream(),
                ChoiceChecks.review(read, library, messages).stream()).toList();
        Review review = TradeRules.review(read, library, today, ph, answered);
        messages.addAll(review.messages());
        PictureChecks.review(read, messages);
        return new Checked(Optional.of(read), review.findings(), messages, Optional.empty());
    }

    /** The contacts of the baths of a sound case, with the tests by which the rules judge how long they may be. */
    public static List<TestedContact> tested(TreatmentCase sound, Library library, LiquidPh ph) {
        return TradeRules.tested(sound, library, ph);
    }

    /** Whether a reason of the case says what became of a rule when it was treated. */
    private static boolean isPast(Node.Mapping written, Fields.Soundness soundness) {
        return written.get("reasons").filter(Node.Sequence.class::isInstance).isPresent()
                && new Fields(written, soundness).groups("reasons").stream().anyMatch(reason -> reason.has("past"));
    }

    private static void know(References references, Library library) {
        references.know(References.Kind.MATERIAL, library.materials().keySet());
        references.alsoCalled(() -> new OtherNames(library));
        references.know(References.Kind.SOURCE, library.sources().keySet());
        references.know(References.Kind.INDICATOR, TestWordsReader.read().indicators());
    }

    private static void checkClasses(Library library, TreatmentCase read, Messages messages) {
        List<String> steps = read.steps().stream().map(step -> step.id()).toList();
        library.classes().stream().filter(course -> course.caseId().equals(read.id())).forEach(course -> {
            ClassForm.steps(course).forEach((id, place) -> {
                if (!steps.contains(id)) {
                    messages.add(FormMessages.UNKNOWN_REFERENCE.at(place, "id", id, "kinds", "step",
                            "remedy", Nearest.to(id, steps).map(near -> "Did you mean '" + near + "'?")
                                    .orElse("Write the id of a step of the case '" + read.id() + "'.")));
                }
            });
            checkObject(course, read, messages);
            checkSheets(course, steps, messages);
        });
    }

    /** Practice sheets go through steps before those of the class. */
    private static void checkSheets(CourseClass course, List<String> steps, Messages messages) {
        String first = course.firstStep().orElse(steps.isEmpty() ? "" : steps.get(0));
        course.papers().making().ifPresent(making -> making.steps().stream().filter(id -> steps.contains(id) && steps.contains(first)
                && steps.indexOf(id) >= steps.indexOf(first)).forEach(id -> messages.add(
                        ClassMessages.SHEETS_GO_THROUGH_THE_CLASS.at(making.place(), "step", id, "first", first))));
    }

    /** An object is taught on only with a permission that names teaching and holds on that day. */
    private static void checkObject(CourseClass course, TreatmentCase read, Messages messages) {
        LocalDate day = course.starts().toLocalDate();
        if (course.papers().sheets() == ClassPapers.Sheets.OBJECT && read.publication().permissions().stream()
                .noneMatch(permission -> permission.inForce(Permission.Use.TEACHING, day))) {
            messages.add(ClassMessages.OBJECT_WITHOUT_PERMISSION.at(course.place(), "case", read.id(), "day", day));
        }
    }
}
