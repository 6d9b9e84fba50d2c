package org.benchleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/**
 * Holds a timetable against its class, minute by minute and with nothing of the planner's own.
 */
public final class TimetableCheck {

    private final Timetable timetable;
    private final List<String> faults = new ArrayList<>();

    private TimetableCheck(Timetable timetable) {
        this.timetable = timetable;
    }

    /** Everything in which a timetable breaks the order, a limit, a count, the hours or the horizon; empty if nothing. */
    public static List<String> faults(Timetable timetable) {
        TimetableCheck check = new TimetableCheck(timetable);
        check.orderAndLimits();
        check.counts();
        return List.copyOf(check.faults);
    }

    private void orderAndLimits() {
        List<Station> stations = timetable.classroom().stations();
        if (timetable.starts().size() != stations.size()) {
            faults.add("a timetable of " + timetable.starts().size() + " stations for " + stations.size());
            return;
        }
        for (int at = 0; at < stations.size(); at++) {
            Station station = stations.get(at);
            int free = station.earliest();
            for (int part = 0; part < station.parts().size(); part++) {
                tell(timetable.start(at, part) < free, station, part, "begins before it may");
                free = timetable.end(at, part);
            }
            tell(free > timetable.classroom().horizon(), station, station.parts().size() - 1, "ends after the horizon");
            for (TimeLimit limit : station.limits()) {
                tell(timetable.start(at, limit.to()) > timetable.end(at, limit.from()) + limit.minutes(), station,
                        limit.to(), "begins later than its limit allows");
            }
        }
    }

    private void tell(boolean wrong, Station station, int part, String what) {
        if (wrong) {
            faults.add(station.name() + ", " + station.parts().get(part).name() + ": " + what);
        }
    }

    /** Sweeps over the moments at which a thing is taken or given back. */
    private void counts() {
        for (int thing = 0; thing < timetable.classroom().things().size(); thing++) {
            TreeMap<Integer, Integer> changes = new TreeMap<>();
            TreeMap<Integer, Integer> absences = new TreeMap<>();
            takings(thing, changes);
            for (Closure closure : timetable.classroom().closures()) {
                if (closure.thing() == thing) {
                    change(absences, closure.from(), closure.to(), 1);
                }
            }
            sweep(timetable.classroom().things().get(thing), changes, absences);
        }
    }

    private void takings(int thing, TreeMap<Integer, Integer> changes) {
        List<Station> stations = timetable.classroom().stations();
        for (int at = 0; at < stations.size(); at++) {
            for (Claim claim : stations.get(at).claims()) {
                if (claim.thing() == thing) {
                    change(changes, timetable.start(at, claim.first()), timetable.end(at, claim.last()), claim.amount());
                }
            }
        }
    }

    private static void change(TreeMap<Integer, Integer> changes, int from, int to, int amount) {
        changes.merge(from, amount, Integer::sum);
        changes.merge(to, -amount, Integer::sum);
    }

    private void sweep(SharedThing thing, TreeMap<Integer, Integer> changes, TreeMap<Integer, Integer> absences) {
        TreeMap<Integer, Integer> moments = new TreeMap<>(changes);
        moments.putAll(absences);
        int taken = 0;
        int absent = 0;
        for (int moment : moments.keySet()) {
            taken += changes.getOrDefault(moment, 0);
            absent += absences.getOrDefault(moment, 0);
            if (taken > (absent > 0 ? 0 : thing.count())) {
                faults.add(thing.name() + ": " + taken + " taken at minute " + moment
                        + (absent > 0 ? ", when it is not there" : " of " + thing.count()));
            }
        }
    }
}
