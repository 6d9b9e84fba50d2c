package org.benchleaf.derive.classes;

import java.time.LocalDateTime;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.calculate.Figure;
import org.benchleaf.derive.figure.Preparation;
import org.benchleaf.derive.time.Timeline;
import org.benchleaf.model.CourseClass;
import org.benchleaf.model.Step;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.quantity.Quantity;

/**
 * What a class needs, and when to begin preparing it.
 *
 * @param source the class as written
 * @param caseTitle title of the case that it works through
 * @param sheets how many sheets are worked on, without the spare
 * @param steps of the case, those that the class works through
 * @param figures figures for the whole class, by id
 * @param timeline the steps of the class, from its start
 * @param preparations what to make for all stations, in the order in which to begin
 * @param starts when to begin each batch, in the order of beginning
 * @param duties what else is done around it and by whom, in the order of beginning
 * @param supplies what is bought, bottled, laid out and thrown away
 * @param schedule when each station does what; empty if the class is not planned or cannot be
 * @param papers what its papers state, for a later issue to be compared with
 * @param outlasting where a bath touches a colour for longer by it than was tested
 */
public record ClassPlan(CourseClass source, String caseTitle, int sheets, List<Step> steps, Map<String, Figure> figures,
        Timeline timeline, List<Preparation> preparations, List<Start> starts, List<Duty> duties,
        ClassSupplies supplies, Optional<ClassSchedule> schedule, IssuedPapers papers,
        List<Outlasting> outlasting) {

    public ClassPlan {
        figures = Collections.unmodifiableMap(new LinkedHashMap<>(figures));
        steps = List.copyOf(steps);
        preparations = List.copyOf(preparations);
        starts = List.copyOf(starts);
        duties = List.copyOf(duties);
        outlasting = List.copyOf(outlasting);
    }

    /** The same with what its papers state. */
    ClassPlan stating(IssuedPapers stated) {
        return with(source, caseTitle, steps, stated);
    }

    /** The same in the words of a case and a class in another language. */
    ClassPlan in(TreatmentCase told, CourseClass course) {
        return with(course, told.title(), course.steps(told), papers);
    }

    private ClassPlan with(CourseClass course, String title, List<Step> worded, IssuedPapers stated) {
        return new ClassPlan(course, title, sheets, worded, figures, timeline, preparations, starts, duties, supplies, schedule, stated,
                outlasting);
    }

    /**
     * When to begin a batch of a preparation.
     *
     * @param solution id
     * @param batch which of its batches
     * @param begin the latest time, within working hours, at which it can be begun
     * @param handsOn how much of that needs a person
     * @param readyFor when it is first needed
     * @param inTrays whether each station makes it in its own tray, by the plan
     */
    public record Start(String solution, Batch batch, LocalDateTime begin, Quantity handsOn, LocalDateTime readyFor,
            boolean inTrays) {

        /**
         * Until when whoever makes it is bound to it: as long as it takes by hand; where it is ready on the same day, until then, since no
         * recipe tells when in its waiting the hands are needed.
         */
        public LocalDateTime boundUntil() {
            LocalDateTime byHand = begin.plusMinutes(StationCut.minutes(handsOn));
            return readyFor.toLocalDate().equals(begin.toLocalDate()) && readyFor.isAfter(byHand) ? readyFor : byHand;
        }
    }

    /**
     * Which batch of a preparation it is.
     *
     * @param number from 1
     * @param of how many there are
     * @param stations numbers of the stations that draw from it; empty where no plan tells them apart
     * @param freshUntil until when it keeps; empty if nobody says how long
     */
    public record Batch(int number, int of, List<Integer> stations, Optional<LocalDateTime> freshUntil) {
        public Batch {
            stations = List.copyOf(stations);
        }

        /** Whether there is another. */
        public boolean isOneOfSeveral() {
            return of > 1;
        }
    }
}
