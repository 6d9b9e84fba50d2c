package org.benchleaf.model;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.message.Place;
import org.benchleaf.quantity.Quantity;

/**
 * How a class is run: people, things that are shared, times and limits.
 *
 * @param endsBy when everybody must be done
 * @param breaks in which nobody works; waiting runs on
 * @param rhythm in which order stations begin
 * @param groups how many begin at once and how long after one another; for the rhythm of that name
 * @param traineesEach at each station
 * @param supervisors how many; unknown if empty
 * @param mostTraineesEach the most trainees whom the studio gives to one supervisor; unknown if empty
 * @param shared how many there are of each thing, by its word
 * @param uses what single steps take otherwise than their kind does, by the step's id
 * @param limits what may pass at most between steps
 * @param work how long kinds of bench work take, where the class states it
 */
public record ClassDay(Optional<LocalDateTime> endsBy, List<Break> breaks, Rhythm rhythm, Optional<Groups> groups,
        int traineesEach, Optional<Integer> supervisors, Optional<Integer> mostTraineesEach,
        Map<String, Integer> shared, Map<String, Use> uses, List<Between> limits, Map<ClassWork, Quantity> work) {

    public ClassDay {
        breaks = List.copyOf(breaks);
        limits = List.copyOf(limits);
    }

    /** In which order stations begin. */
    public enum Rhythm {
        SHORTEST("shortest"), TOGETHER("together"), GROUPS("groups"), SAME_CARD("same card");

        private final String word;

        Rhythm(String word) {
            this.word = word;
        }

        /** The rhythm written with that word. */
        public static Optional<Rhythm> of(String word) {
            return List.of(values()).stream().filter(rhythm -> rhythm.word.equals(word)).findFirst();
        }
    }

    /** Who does a step in a class. */
    public enum Doer {
        TRAINEE("trainee"), PAIR("pair"), TECHNICIAN("technician"), SUPERVISOR("supervisor"), CONSERVATOR("conservator");

        private final String word;

        Doer(String word) {
            this.word = word;
        }

        /** The word as written in a class's file. */
        public String word() {
            return word;
        }

        /** Who is written with that word. */
        public static Optional<Doer> of(String word) {
            return List.of(values()).stream().filter(doer -> doer.word.equals(word)).findFirst();
        }
    }

    /** A time of day in which nobody works. */
    public record Break(LocalTime from, LocalTime to) {
    }

    /** So many stations begin at once, and as many after so long a time. */
    public record Groups(int of, Quantity every) {
    }

    /**
     * How a class does a step otherwise than its kind is done.
     *
     * @param at shared things besides those of its kind
     * @param takes how long its main work is
     * @param by who does it
     * @param look what whoever releases it looks at, in the place of what the case says
     */
    public record Use(List<String> at, Optional<Quantity> takes, Optional<Doer> by, Optional<String> look, Place place) {
        public Use {
            at = List.copyOf(at);
        }
    }

    /** What may pass at most from the end of one step to the begin of another. */
    public record Between(String from, String to, Quantity within, Place place) {
    }
}
