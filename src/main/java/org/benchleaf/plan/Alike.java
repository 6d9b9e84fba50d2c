package org.benchleaf.plan;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Which stations do the same with the same things, apart from their own trainees. */
final class Alike {

    private static final int OWN_TRAINEE = -1;

    private Alike() {
    }

    /** Whether all stations have the same parts and limits, whoever helps them. */
    static boolean sameWork(Classroom classroom) {
        Station first = classroom.stations().get(0);
        return classroom.stations().stream().allMatch(other -> sameWork(first, other));
    }

    private static boolean sameWork(Station one, Station other) {
        return one.earliest() == other.earliest() && one.parts().equals(other.parts())
                && one.limits().equals(other.limits());
    }

    /** The starts with alike stations renumbered, so that the one with the lower number begins first. */
    static int[][] inOrder(Classroom classroom, int[][] starts) {
        int[][] ordered = starts.clone();
        int stations = classroom.stations().size();
        for (int first = 0; first < stations; first++) {
            int station = first;
            int[] group = IntStream.range(0, stations).filter(other -> alike(classroom, station, other)).toArray();
            List<int[]> sorted = Arrays.stream(group).mapToObj(other -> starts[other])
                    .sorted(Comparator.comparing((int[] each) -> each, Arrays::compare)).toList();
            for (int at = 0; at < group.length; at++) {
                ordered[group[at]] = sorted.get(at);
            }
        }
        return ordered;
    }

    private static boolean alike(Classroom classroom, int one, int other) {
        Station first = classroom.stations().get(one);
        Station second = classroom.stations().get(other);
        return one == other || sameWork(first, second)
                && !lendsOrBorrows(classroom, one) && !lendsOrBorrows(classroom, other)
                && claims(classroom, one).equals(claims(classroom, other));
    }

    /** Whether a station's trainees help at another one, or others' here: then it has a partner and keeps its number. */
    private static boolean lendsOrBorrows(Classroom classroom, int station) {
        return classroom.stations().get(station).claims().stream().map(Claim::thing).distinct()
                .filter(thing -> isTrainee(classroom, thing))
                .anyMatch(thing -> classroom.stations().stream().filter(other -> other.claims().stream()
                        .anyMatch(claim -> claim.thing() == thing)).count() > 1);
    }

    private static boolean isTrainee(Classroom classroom, int thing) {
        return classroom.things().get(thing).kind() == SharedThing.Kind.TRAINEE;
    }

    private static List<String> claims(Classroom classroom, int station) {
        return classroom.stations().get(station).claims().stream().map(claim -> {
            int thing = isTrainee(classroom, claim.thing()) ? OWN_TRAINEE : claim.thing();
            return thing + " " + claim.amount() + " " + claim.first() + " " + claim.last();
        }).sorted().toList();
    }
}
