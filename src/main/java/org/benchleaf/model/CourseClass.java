package org.benchleaf.model;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.benchleaf.message.Place;

/**
 * A class that works through a case.
 *
 * @param id the file's name
 * @param title of the class
 * @param caseId the case it follows
 * @param starts when the class begins
 * @param stations how many work at once
 * @param sheetsEach how many practice sheets at each station
 * @param firstStep id of the step with which the class begins
 * @param lastStep id of the step with which it ends
 * @param day how it is run
 * @param papers what it is for and how its papers are issued
 * @param stores what it has in hand
 */
public record CourseClass(String id, String title, String caseId, LocalDateTime starts, int stations, int sheetsEach,
        Optional<String> firstStep, Optional<String> lastStep, ClassDay day, ClassPapers papers, ClassStores stores,
        Place place) {

    /**
     * The steps of its case that it works through.
     *
     * @throws IllegalArgumentException if the case has no step of a name with which the class begins or ends
     */
    public List<Step> steps(TreatmentCase source) {
        List<String> ids = source.steps().stream().map(Step::id).toList();
        int first = firstStep.map(ids::indexOf).orElse(0);
        int last = lastStep.map(ids::indexOf).orElse(ids.size() - 1);
        if (first < 0 || last < 0) {
            throw new IllegalArgumentException("the case " + source.id() + " has no step "
                    + (first < 0 ? firstStep : lastStep).orElseThrow());
        }
        return source.steps().subList(first, Math.max(first, last) + 1);
    }

    /**
     * Who does a step: as the class says; else, on practice sheets, a trainee, or two where the step takes two; on the object
     * whoever does it in the case.
     */
    public ClassDay.Doer doer(Step step) {
        return Optional.ofNullable(day.uses().get(step.id())).flatMap(ClassDay.Use::by).orElseGet(() ->
                papers.sheets() == ClassPapers.Sheets.OBJECT ? ClassDay.Doer.of(step.by()).orElse(ClassDay.Doer.CONSERVATOR)
                        : step.people() > 1 ? ClassDay.Doer.PAIR : ClassDay.Doer.TRAINEE);
    }

    /** What whoever releases a step looks at: as the class says, else as the case does; empty if nobody says. */
    public Optional<String> look(Step step) {
        return Optional.ofNullable(day.uses().get(step.id())).flatMap(ClassDay.Use::look).or(() -> step.hold().flatMap(Step.Hold::look));
    }

    /** Whether there is enough of it to plan: it counts what is shared, or its pages are asked for. */
    public boolean isPlanned() {
        return papers.published() || !day.shared().isEmpty();
    }
}
