package org.benchleaf.derive;

import java.time.LocalDateTime;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.model.CourseClass;

/**
 * What a class needs, and when to begin preparing it.
 *
 * @param source the class as written
 * @param caseTitle title of the case that it works through
 * @param sheets how many sheets are worked on, without the spare
 * @param figures figures for the whole class, by id
 * @param timeline the steps of the class, from its start
 * @param preparations what to make for all stations, in the order in which to begin
 * @param starts when to begin each, in the same order
 * @param schedule when each station does what; empty if the class is not planned or cannot be
 */
public record ClassPlan(CourseClass source, String caseTitle, int sheets, Map<String, Figure> figures,
        Timeline timeline, List<Preparation> preparations, List<Start> starts,
        Optional<ClassSchedule> schedule) {

    public ClassPlan {
        figures = Collections.unmodifiableMap(new LinkedHashMap<>(figures));
        preparations = List.copyOf(preparations);
        starts = List.copyOf(starts);
    }

    /**
     * When to begin a preparation.
     *
     * @param solution id
     * @param begin the latest time, within working hours, at which it can be begun
     * @param readyFor when it is first needed
     */
    public record Start(String solution, LocalDateTime begin, LocalDateTime readyFor) {
    }
}
