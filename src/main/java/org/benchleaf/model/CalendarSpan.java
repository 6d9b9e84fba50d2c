package org.benchleaf.model;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.time.Year;
import java.time.YearMonth;
import java.util.Optional;

/**
 * A month or a year in which something was done, where the day is not known.
 *
 * @param year such as 2012
 * @param month empty where only the year is known
 */
public record CalendarSpan(int year, Optional<Month> month) {

    private static final String YEAR = "\\d{4}";
    private static final String MONTH = "\\d{4}-\\d{2}";

    /** The span of a text such as {@code 2012-06} or {@code 2012}, as ISO 8601 writes them; empty if it is none. */
    public static Optional<CalendarSpan> read(String text) {
        String written = text.strip();
        try {
            if (written.matches(YEAR)) {
                return Optional.of(new CalendarSpan(Year.parse(written).getValue(), Optional.empty()));
            }
            return written.matches(MONTH) ? Optional.of(YearMonth.parse(written))
                    .map(read -> new CalendarSpan(read.getYear(), Optional.of(read.getMonth()))) : Optional.empty();
        } catch (DateTimeException wrong) {
            return Optional.empty();
        }
    }

    /** Whether a day lies in it. */
    public boolean holds(LocalDate day) {
        return !day.isBefore(first()) && !day.isAfter(last());
    }

    /** Its first day. */
    public LocalDate first() {
        return LocalDate.of(year, month.orElse(Month.JANUARY), 1);
    }

    /** Its last day. */
    public LocalDate last() {
        return YearMonth.of(year, month.orElse(Month.DECEMBER)).atEndOfMonth();
    }
}
