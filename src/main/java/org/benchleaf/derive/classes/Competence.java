package org.benchleaf.derive.classes;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.model.BenchRecord;
import org.benchleaf.model.ClassPapers;
import org.benchleaf.model.CourseClass;
import org.benchleaf.model.Practice;

/** Tells from the records of a class which trainee is practised in which step. */
public final class Competence {

    private final CourseClass course;
    private final List<BenchRecord.Mark> marks;

    /** Reads the marks of these records. */
    public Competence(CourseClass course, List<BenchRecord> records) {
        this.course = course;
        this.marks = records.stream().flatMap(record -> record.marks().stream()).toList();
    }

    /** What the records say. */
    public enum Standing {
        /** Every must was met, often enough and with little enough help. */
        PRACTISED,
        /** A must is still open. */
        NOT_YET,
        /** Nothing was marked, or the class states no must for the step. */
        NOT_TOLD
    }

    /**
     * How a trainee stands at a step.
     *
     * @param step id
     * @param open the musts that are still open, as the class words them
     */
    public record Answer(String trainee, String step, Standing standing, List<String> open) {
        public Answer {
            open = List.copyOf(open);
        }
    }

    /** An answer for each trainee of the class or of a mark, and each step with outcomes; trainees in the order of the class. */
    public List<Answer> answers() {
        Set<String> trainees = new LinkedHashSet<>(course.papers().trainees());
        marks.forEach(mark -> mark.trainee().ifPresent(trainees::add));
        List<String> steps = course.papers().outcomes().stream().map(ClassPapers.Outcome::at).distinct().toList();
        List<Answer> answers = new ArrayList<>();
        trainees.forEach(trainee -> steps.forEach(step -> answers.add(answer(trainee, step))));
        return answers;
    }

    private Answer answer(String trainee, String step) {
        List<String> musts = course.papers().outcomes().stream().filter(one -> one.must() && one.at().equals(step))
                .map(ClassPapers.Outcome::will).toList();
        List<BenchRecord.Mark> mine = marks.stream().filter(mark -> mark.step().equals(step)
                && mark.trainee().filter(trainee::equals).isPresent() && musts.contains(mark.will())).toList();
        if (mine.isEmpty()) {
            return new Answer(trainee, step, Standing.NOT_TOLD, musts);
        }
        List<String> open = musts.stream().filter(will -> mine.stream().filter(mark -> mark.will().equals(will))
                .filter(this::counts).count() < course.papers().practice().times()).toList();
        return new Answer(trainee, step, open.isEmpty() ? Standing.PRACTISED : Standing.NOT_YET, open);
    }

    /** Nobody assesses their own work, and what was not marked does not count. */
    private boolean counts(BenchRecord.Mark mark) {
        Practice practice = course.papers().practice();
        Optional<String> another = mark.assessor().filter(who -> mark.trainee().filter(who::equalsIgnoreCase).isEmpty());
        return another.isPresent() && mark.met().orElse(false)
                && mark.helpNext().filter(help -> help >= practice.help()).isPresent();
    }
}
