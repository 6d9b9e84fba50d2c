package org.benchleaf.derive.classes;

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

    private Optional<Stretch> inTheWay(Stretch wanted) {
        List<Stretch> all = new ArrayList<>(taken);
        breaks.forEach(one -> all.add(new Stretch(wanted.from().toLocalDate().atTime(one.from()),
                wanted.from().toLocalDate().atTime(one.to()))));
        return all.stream().filter(wanted::overlaps).findFirst();
    }
}
