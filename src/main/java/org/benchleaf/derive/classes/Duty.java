package org.benchleaf.derive.classes;

import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.model.ClassDay;
import org.benchleaf.quantity.Quantity;

/**
 * Work around a class that no station does.
 *
 * @param kind of work
 * @param step id of the step of the case that is done, or for which something is made ready; empty for other work
 * @param by who does it
 * @param stretches when hands are at it, in order; at least one
 * @param each hands-on time for one sheet, station or beaker
 * @param count of how many sheets, stations or beakers
 * @param waits for how long each sheet lies after that
 * @param needed when it must be done
 * @param with what it takes, by the id of the material or solution; without an amount where none is worked out
 * @param touches when a hand is at each sheet of a trial, sheet by sheet; none for other work
 */
public record Duty(Kind kind, Optional<String> step, ClassDay.Doer by, List<Stretch> stretches, Quantity each, int count, Quantity waits,
        LocalDateTime needed, Map<String, Optional<Quantity>> with, List<List<LocalDateTime>> touches) {

    public Duty {
        stretches = List.copyOf(stretches);
        with = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(with));
        touches = List.copyOf(touches);
    }

    /** Other work than a trial. */
    Duty(Kind kind, Optional<String> step, ClassDay.Doer by, List<Stretch> stretches, Quantity each, int count, Quantity waits,
            LocalDateTime needed, Map<String, Optional<Quantity>> with) {
        this(kind, step, by, stretches, each, count, waits, needed, with, List.of());
    }

    /** What is done. */
    public enum Kind {
        METER_CALIBRATED, BATH_FOR_A_TRIAL, SHEETS_GO_THROUGH, SHEETS_MADE, CLEAR_DRAWN_OFF, PORTIONS_FILLED, PIECES_CUT,
        WAX_LAID_AGAIN, LAYING_OUT, SHEETS_WEIGHED, CLEARING_AWAY;

        /** Its word in the table of notes. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }

    /** Time without a break. */
    public record Stretch(LocalDateTime from, LocalDateTime to) {

        boolean overlaps(Stretch other) {
            return from.isBefore(other.to) && other.from.isBefore(to);
        }
    }

    /** Hands-on time in all, in minutes. */
    public long minutes() {
        return stretches.stream().mapToLong(stretch -> ChronoUnit.MINUTES.between(stretch.from(), stretch.to())).sum();
    }

    /** When to begin. */
    public LocalDateTime begin() {
        return stretches.get(0).from();
    }
}
