package org.benchleaf.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * One station's work, laid out for the search: minutes, limits and claims in plain arrays by part, with only those
 * claims that can ever run short.
 */
final class StationWork {

    final Station station;
    final int[] minutes;
    /** Claims that begin and end with the part. */
    final Claim[][] during;
    /** Claims over several parts, by the part with which they end. */
    final Claim[][] until;
    /** Limits, by the part before which they end. */
    final TimeLimit[][] before;
    /** Limits in which a sheet lies wet, those that end latest first. */
    final List<TimeLimit> wet;

    StationWork(Station station, Room room) {
        this.station = station;
        minutes = station.parts().stream().mapToInt(WorkPart::minutes).toArray();
        during = claims(room, false);
        until = claims(room, true);
        before = new TimeLimit[minutes.length][];
        for (int part = 0; part < minutes.length; part++) {
            int to = part;
            before[part] = station.limits().stream().filter(limit -> limit.to() == to).toArray(TimeLimit[]::new);
        }
        wet = station.limits().stream().filter(TimeLimit::wet)
                .sorted(Comparator.comparingInt(TimeLimit::to).reversed()).toList();
    }

    private Claim[][] claims(Room room, boolean overSeveral) {
        List<List<Claim>> byPart = new ArrayList<>();
        for (int part = 0; part < minutes.length; part++) {
            byPart.add(new ArrayList<>());
        }
        station.claims().stream().filter(claim -> room.keeps(claim.thing()))
                .filter(claim -> claim.first() < claim.last() == overSeveral)
                .forEach(claim -> byPart.get(claim.last()).add(claim));
        return byPart.stream().map(list -> list.toArray(Claim[]::new)).toArray(Claim[][]::new);
    }

    int parts() {
        return minutes.length;
    }

    int end(int[] starts) {
        return starts[starts.length - 1] + minutes[minutes.length - 1];
    }

    /** Books what the station takes. */
    void take(Room room, int[] starts) {
        book(room, starts, 1);
    }

    /** Gives back what the station took. */
    void giveBack(Room room, int[] starts) {
        book(room, starts, -1);
    }

    private void book(Room room, int[] starts, int sign) {
        for (int part = 0; part < minutes.length; part++) {
            int end = starts[part] + minutes[part];
            for (Claim claim : during[part]) {
                room.take(claim.thing(), sign * claim.amount(), starts[part], end);
            }
            for (Claim claim : until[part]) {
                room.take(claim.thing(), sign * claim.amount(), starts[claim.first()], end);
            }
        }
    }

    /** How much of its wet limits a station uses, in minutes. */
    int wetWaiting(int[] starts) {
        int sum = 0;
        for (TimeLimit limit : wet) {
            sum += starts[limit.to()] - starts[limit.from()] - minutes[limit.from()];
        }
        return sum;
    }
}
