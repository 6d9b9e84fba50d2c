package org.benchleaf.model;

import java.time.LocalDateTime;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.message.Place;

/**
 * What was written down at the bench.
 *
 * @param caseId folder of the case
 * @param sheet issue of the step sheet that was worked from
 * @param seat at which station of which class; empty if it was no class
 * @param steps those at which something was written down
 * @param marks what an assessor marked
 */
public record BenchRecord(String caseId, Optional<String> sheet, Optional<Seat> seat, List<Entry> steps, List<Mark> marks) {

    public BenchRecord {
        steps = List.copyOf(steps);
        marks = List.copyOf(marks);
    }

    /**
     * A station of a class.
     *
     * @param course id of the class
     * @param issue number of the issue that was worked from; empty if it had none
     * @param station its number, from 1
     * @param trainees who worked there, as they wrote it
     * @param place of the station's number in the file
     */
    public record Seat(String course, Optional<Integer> issue, int station, Optional<String> trainees, Place place) {
    }

    /**
     * What an assessor marked of one outcome; a value that was not marked is empty.
     *
     * @param step id of the step at which it was looked for
     * @param will the deed, as the class words it
     * @param met whether the criterion was met
     * @param helpToday how much help it took, from 1 to 5
     * @param helpNext how much help it may be done with next time, from 1 to 5
     */
    public record Mark(String step, String will, Optional<String> trainee, Optional<Boolean> met, Optional<Integer> helpToday,
            Optional<Integer> helpNext, Optional<String> assessor, Optional<String> remark, Place place) {
    }

    /**
     * A step in the words of who did it; what was not written is empty.
     *
     * @param doneBy who did it
     * @param noticed what was done and seen
     * @param deviation what was done otherwise than the sheet says
     * @param initials of who wrote it down
     */
    public record Account(Optional<String> doneBy, Optional<String> noticed, Optional<String> deviation,
            Optional<String> initials) {
    }

    /**
     * What was written down at one step; times are those of the place.
     *
     * @param step id
     * @param seen whether it showed what it should, in the words of the record
     * @param because what was seen instead
     * @param pictures names of photographs
     * @param readings what was read, bath by bath, as written, by keys of the case file
     * @param parts what else was written down, as written, by keys of the case file
     * @param account what a trainee of a class wrote
     * @param place of the step in the file
     */
    public record Entry(String step, Optional<LocalDateTime> began, Optional<LocalDateTime> ended,
            Optional<Release> released, Optional<String> seen, Optional<String> because, Optional<String> pictures,
            List<Map<String, String>> readings, Map<Noted, Map<String, String>> parts, Account account,
            Place place) {
        public Entry {
            readings = List.copyOf(readings);
            parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
        }
    }

    /**
     * What was written down of a step besides its baths: of one thing, or of one among several of a kind.
     *
     * @param kind what it is
     * @param number which of several, from 1; 0 if there is one
     */
    public record Noted(Kind kind, int number) {

        /** Weighing and misting are parts of the case file; looks and the masses of days are not. */
        public enum Kind { WEIGHING, MIST, TEST, CHANGE, LOOK, DAY }

        /** As a record names it. */
        public String name() {
            return kind.name().toLowerCase(Locale.ROOT) + (number > 0 ? " " + number : "");
        }
    }

    /** The release of a hold point: by whom, in which role, and when. */
    public record Release(String by, Optional<String> role, Optional<LocalDateTime> at) {
    }
}
