package org.benchleaf.model;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A day, or the month or year in which it lies where no more is known.
 *
 * @param first the first day that it can be
 * @param last the last day that it can be
 * @param span the month or year; empty where the day is known
 */
public record StatedDay(LocalDate first, LocalDate last, Optional<CalendarSpan> span) {

    public static StatedDay of(LocalDate day) {
        return new StatedDay(day, day, Optional.empty());
    }

    public static StatedDay of(CalendarSpan span) {
        return new StatedDay(span.first(), span.last(), Optional.of(span));
    }
}
