package org.benchleaf.derive.classes;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.derive.classes.Duty.Stretch;
import org.benchleaf.derive.time.WorkHours;
import org.benchleaf.model.ClassDay;

/** One pair of hands before a class: working hours without the breaks of the class and what is done already. */
final class FreeTime {

    private final WorkHours hours;
    private final List<ClassDay.Break> breaks;
    private final List<Stretch> taken = new ArrayList<>();

    FreeTime(WorkHours hours, List<ClassDay.Break> breaks) {
        this.hours = hours;
        this.breaks = breaks;
    }

    /**
     * The latest begin of work by hand in working hours and outside the breaks of a class.
     *
     * @param until when what is made must be ready
     * @param ready minutes until it is
     * @param hands minutes by hand
     */
    static LocalDateTime latestBegin(WorkHours hours, List<ClassDay.Break> breaks, LocalDateTime until, double ready, double hands) {
        LocalDateTime begin = hours.latestStart(WorkHours.minus(until, ready), hands);
        for (ClassDay.Break one : breaks) {
            LocalDateTime from = begin.toLocalDate().atTime(one.from());
            boolean ends = !WorkHours.plus(begin, hands).isAfter(from);
            if (!ends && begin.isBefore(begin.toLocalDate().atTime(one.to()))) {
                begin = hours.latestStart(WorkHours.minus(from, hands), hands);
            }
        }
        return begin;
    }

    void take(Stretch stretch) {
        taken.add(stretch);
    }

    /**
     * Takes the latest stretch of work that ends early enough.
     *
     * @param until when its waiting must be over
     * @param hands minutes of work
     * @param waits minutes of waiting after it, to whose end somebody comes on the same day if a day is long enough
     */
    Stretch latest(LocalDateTime until, int hands, int waits) {
        return latest(until, hands, waits, 0);
    }

    /**
     * The same, with so many minutes between opening and its begin in which something is made ready for it.
     *
     * @param ready minutes
     */
    Stretch latest(LocalDateTime until, int hands, int waits, int ready) {
        LocalDateTime limit = until.minusMinutes(hands + waits);
        while (true) {
            LocalDateTime begin = hours.latestStart(limit.minusMinutes(ready), ready + hands + waits).plusMinutes(ready);
            Stretch found = new Stretch(begin, begin.plusMinutes(hands));
            Optional<Stretch> inTheWay = inTheWay(found);
            if (inTheWay.isEmpty()) {
                taken.add(found);
                return found;
            }
            limit = inTheWay.get().from().minusMinutes(hands);
        }
    }

    /**
     * Takes the latest time for work that lies apart, on one day if it fits into one; only its first piece is kept free where in a month
     * there is no time for all of them.
     *
     * @param until when all must be over
     * @param pieces so many minutes from the begin, each so many minutes long; in order, the first at 0
     * @param ready minutes between opening and the begin in which something is made ready for it
     */
    List<Stretch> latest(LocalDateTime until, List<Piece> pieces, int ready) {
        int last = pieces.stream().mapToInt(Piece::end).max().orElse(0);
        for (int kept : new int[] {pieces.size(), 1}) {
            for (boolean sameDay : new boolean[] {true, false}) {
                LocalDateTime limit = until.minusMinutes(last);
                for (LocalDateTime begin = limit; begin.isAfter(limit.minusMonths(1)); begin = begin.minusMinutes(1)) {
                    LocalDateTime from = begin;
                    List<Stretch> found = pieces.stream().map(piece -> piece.from(from)).toList();
                    boolean together = !sameDay || begin.minusMinutes(ready).toLocalDate().equals(begin.plusMinutes(last).toLocalDate());
                    if (together && hours.isOpen(begin.minusMinutes(ready)) && found.stream().limit(kept).allMatch(this::isFree)) {
                        taken.addAll(found);
                        return found;
                    }
                }
            }
        }
        throw new IllegalStateException("nobody works in the month before " + until);
    }

    /** Some minutes of work that begin so many minutes after its first. */
    record Piece(int after, int minutes) {

        int end() {
            return after + minutes;
        }

        Stretch from(LocalDateTime begin) {
            return new Stretch(begin.plusMinutes(after), begin.plusMinutes(end()));
        }
    }

    private boolean isFree(Stretch wanted) {
        long minutes = Duration.between(wanted.from(), wanted.to()).toMinutes();
        return hours.latestStart(wanted.from(), minutes).equals(wanted.from()) && inTheWay(wanted).isEmpty();
    }

    private Optional<Stretch> inTheWay(Stretch wanted) {
        List<Stretch> all = new ArrayList<>(taken);
        breaks.forEach(one -> all.add(new Stretch(wanted.from().toLocalDate().atTime(one.from()),
                wanted.from().toLocalDate().atTime(one.to()))));
        return all.stream().filter(wanted::overlaps).findFirst();
    }
}
