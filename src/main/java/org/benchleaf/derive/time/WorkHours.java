package org.benchleaf.derive.time;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Collection;
import java.util.EnumSet;
import java.util.Set;
import org.benchleaf.derive.figure.Minutes;
import org.benchleaf.model.Studio;

/**
 * When somebody is in the studio.
 *
 * @param days on which the studio works, at least one
 * @param opens when work begins
 * @param closes when work ends, later than {@code opens}
 * @param closed single days on which nobody works
 */
public record WorkHours(Set<DayOfWeek> days, LocalTime opens, LocalTime closes, Set<LocalDate> closed) {

    private static final double DAY = 24 * 60;

    public WorkHours {
        if (days.isEmpty() || !closes.isAfter(opens)) {
            throw new IllegalArgumentException("no working time: " + days + " from " + opens + " to " + closes);
        }
    }

    WorkHours(Set<DayOfWeek> days, LocalTime opens, LocalTime closes) {
        this(days, opens, closes, Set.of());
    }

    /** The same hours without those days. */
    public WorkHours without(Collection<LocalDate> more) {
        return new WorkHours(days, opens, closes, Set.copyOf(more));
    }

    /** Whether anybody works on that day. */
    public boolean isWorked(LocalDate day) {
        return days.contains(day.getDayOfWeek()) && !closed.contains(day);
    }

    /** The working day that lies so many working days before a day. */
    public LocalDate before(LocalDate day, int workingDays) {
        LocalDate found = day;
        for (int left = workingDays; left > 0; left--) {
            do {
                found = found.minusDays(1);
            } while (!isWorked(found));
        }
        return found;
    }

    /** The hours of a studio; a studio that states none that make sense is taken to be always open. */
    public static WorkHours of(Studio studio) {
        if (studio.days().isEmpty() || !studio.closes().isAfter(studio.opens())) {
            return new WorkHours(EnumSet.allOf(DayOfWeek.class), LocalTime.MIN, LocalTime.of(23, 59));
        }
        return new WorkHours(studio.days(), studio.opens(), studio.closes());
    }

    /** How long one working day is, in minutes. */
    double dayLength() {
        return Duration.between(opens, closes).toMinutes();
    }

    /** How long "overnight" is: from closing to opening at least, and a whole day at most. */
    public Minutes night() {
        return Minutes.between(DAY - dayLength(), DAY);
    }

    public boolean isOpen(LocalDateTime time) {
        return isWorked(time.toLocalDate()) && !time.toLocalTime().isBefore(opens)
                && time.toLocalTime().isBefore(closes);
    }

    /** That time, or the next opening if nobody is there. */
    LocalDateTime atWork(LocalDateTime time) {
        return isOpen(time) ? time : nextOpening(time);
    }

    /** The first opening at or after that time. */
    LocalDateTime nextOpening(LocalDateTime time) {
        LocalDate day = time.toLocalTime().isAfter(opens) ? time.toLocalDate().plusDays(1) : time.toLocalDate();
        while (!isWorked(day)) {
            day = day.plusDays(1);
        }
        return day.atTime(opens);
    }

    /** That time if the work fits in before closing, else the next opening. */
    LocalDateTime startFor(LocalDateTime time, double minutes) {
        LocalDateTime begin = atWork(time);
        return plus(begin, minutes).isAfter(begin.toLocalDate().atTime(closes))
                ? nextOpening(begin.toLocalDate().atTime(closes)) : begin;
    }

    /** When work of that length ends that goes on in working hours only. */
    LocalDateTime workedThrough(LocalDateTime begin, double minutes) {
        // Whole weeks are all alike but for closed days; only what is left goes day by day.
        long weeks = !closed.isEmpty() ? 0 : Math.max(0, (long) (minutes / (days.size() * dayLength())) - 1);
        LocalDateTime time = atWork(begin).plusWeeks(weeks);
        double left = minutes - weeks * days.size() * dayLength();
        while (plus(time, left).isAfter(time.toLocalDate().atTime(closes))) {
            LocalDateTime evening = time.toLocalDate().atTime(closes);
            left -= Duration.between(time, evening).toSeconds() / 60.0;
            time = nextOpening(evening);
        }
        return plus(time, left);
    }

    /** The latest time at or before a limit at which work of that length can begin and be finished in working hours. */
    public LocalDateTime latestStart(LocalDateTime limit, double minutes) {
        double length = Math.min(minutes, dayLength());
        LocalDate day = limit.toLocalDate();
        while (true) {
            LocalDateTime latest = plus(day.atTime(closes), -length);
            LocalDateTime begin = latest.isBefore(limit) ? latest : limit;
            if (isWorked(day) && !begin.isBefore(day.atTime(opens))) {
                return begin;
            }
            day = day.minusDays(1);
        }
    }

    /** So many minutes before a time. */
    public static LocalDateTime minus(LocalDateTime time, double minutes) {
        return time.minusSeconds(Math.round(minutes * 60));
    }

    public static LocalDateTime plus(LocalDateTime time, double minutes) {
        return time.plusSeconds(Math.round(minutes * 60));
    }
}
