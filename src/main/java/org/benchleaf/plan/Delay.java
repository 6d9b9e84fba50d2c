package org.benchleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Time in which a station waits although its next part could follow at once.
 *
 * @param station its place in the class
 * @param part the part before which it waits
 * @param minutes how long
 * @param cause why
 */
public record Delay(int station, int part, int minutes, Cause cause) {

    /** Why a part does not begin a minute earlier. */
    public sealed interface Cause {
    }

    /**
     * Too few of a thing are free until then.
     *
     * @param holders who has it in the minute before
     */
    public record Taken(int thing, List<Holder> holders, int until) implements Cause {
        public Taken {
            holders = List.copyOf(holders);
        }
    }

    /** Nobody is there until then. */
    public record Away(int thing, int until) implements Cause {
    }

    /** It must not, or need not, end long before a later part, and that one is what waits. */
    public record HeldBack(int laterPart, Cause cause) implements Cause {
    }

    /** Nothing is in its way: beginning sooner would make the class no shorter. */
    public record NoHurry() implements Cause {
    }

    /** A part of a station that has a thing. */
    public record Holder(int station, int part) {
    }

    /** Every wait of a timetable, by station and part. */
    public static List<Delay> of(Timetable timetable) {
        List<Delay> delays = new ArrayList<>();
        for (int station = 0; station < timetable.starts().size(); station++) {
            int free = timetable.classroom().stations().get(station).earliest();
            for (int part = 0; part < timetable.starts().get(station).size(); part++) {
                int waited = timetable.start(station, part) - free;
                if (waited > 0) {
                    delays.add(new Delay(station, part, waited, new Causes(timetable, station).of(part)));
                }
                free = timetable.end(station, part);
            }
        }
        return delays;
    }

    /** Looks at one station's parts a minute before they begin. */
    private record Causes(Timetable timetable, int at) {

        Cause of(int part) {
            Optional<Cause> direct = inTheWay(part);
            if (direct.isPresent()) {
                return direct.get();
            }
            return station().limits().stream().filter(limit -> limit.from() <= part && part < limit.to())
                    .flatMap(limit -> laterCause(part, limit).stream()).findFirst().orElseGet(NoHurry::new);
        }

        private Station station() {
            return timetable.classroom().stations().get(at);
        }

        private Optional<Cause> laterCause(int part, TimeLimit limit) {
            for (int later = limit.to(); later > part; later--) {
                int held = later;
                Optional<Cause> cause = inTheWay(later).map(direct -> new HeldBack(held, direct));
                if (cause.isPresent()) {
                    return cause;
                }
            }
            return Optional.empty();
        }

        /** What is missing in the minute before a part, of all that the part takes. */
        private Optional<Cause> inTheWay(int part) {
            int minute = timetable.start(at, part) - 1;
            for (Claim claim : station().claims()) {
                if (claim.first() == part && minute >= 0) {
                    if (isAway(claim.thing(), minute)) {
                        return Optional.of(new Away(claim.thing(), minute + 1));
                    }
                    if (isShort(claim, minute)) {
                        return Optional.of(new Taken(claim.thing(), holders(claim.thing(), minute), minute + 1));
                    }
                }
            }
            return Optional.empty();
        }

        private boolean isAway(int thing, int minute) {
            return timetable.classroom().closures().stream().anyMatch(closure -> closure.thing() == thing
                    && closure.from() <= minute && minute < closure.to());
        }

        private boolean isShort(Claim wanted, int minute) {
            int taken = 0;
            for (int other = 0; other < timetable.starts().size(); other++) {
                for (Claim claim : timetable.classroom().stations().get(other).claims()) {
                    taken += other != at && covers(other, claim, wanted.thing(), minute) ? claim.amount() : 0;
                }
            }
            return taken + wanted.amount() > timetable.classroom().things().get(wanted.thing()).count();
        }

        private List<Holder> holders(int thing, int minute) {
            List<Holder> holders = new ArrayList<>();
            for (int other = 0; other < timetable.starts().size(); other++) {
                for (Claim claim : timetable.classroom().stations().get(other).claims()) {
                    if (other != at && covers(other, claim, thing, minute)) {
                        holders.add(new Holder(other, claim.first()));
                    }
                }
            }
            return holders;
        }

        private boolean covers(int other, Claim claim, int thing, int minute) {
            return claim.thing() == thing && timetable.start(other, claim.first()) <= minute
                    && minute < timetable.end(other, claim.last());
        }
    }
}
