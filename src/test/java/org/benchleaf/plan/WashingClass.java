package org.benchleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A class of twelve steps that wash a brittle sheet, in twenty-two parts a station: hood 2, meter 1, sinks 2, hot plate 1,
 * mist to bath in 15 min, water at most 60 min old, three baths, three hold points. Its minutes are those of the worked
 * sums in {@link FloorTest}.
 */
public final class WashingClass {

    private static final int HOOD = 0;
    private static final int METER = 1;
    private static final int SINK = 2;
    private static final int PLATE = 3;
    private static final int SUPERVISOR = 4;
    private static final int TRAINEES = 5;
    private static final int HORIZON = 1440;

    private WashingClass() {
    }

    /** The class with so many stations and supervisors, and one hot plate. */
    public static Classroom of(int stations, int supervisors) {
        return of(stations, supervisors, 1, List.of());
    }

    static Classroom of(int stations, int supervisors, int plates, List<Closure> closures) {
        List<SharedThing> things = new ArrayList<>(List.of(thing("hood", 2), thing("pH meter", 1), thing("sink", 2),
                thing("hot plate", plates), new SharedThing("supervisor", supervisors, SharedThing.Kind.STAFF)));
        for (int station = 1; station <= stations; station++) {
            things.add(new SharedThing("trainee of station " + station, 1, SharedThing.Kind.TRAINEE));
        }
        return new Classroom(things, IntStream.range(0, stations).mapToObj(WashingClass::station).toList(), closures,
                HORIZON);
    }

    private static SharedThing thing(String name, int count) {
        return new SharedThing(name, count, SharedThing.Kind.THING);
    }

    private static Station station(int number) {
        Parts parts = new Parts(TRAINEES + number);
        parts.work("look", 20).work("clean", 15, HOOD).work("mark the places", 25).work("wax", 8, PLATE)
                .waiting("let the wax set", 5).waiting("test again", 25).work("read the tests", 4)
                .work("HOLD look at tests", 3, SUPERVISOR).work("make the bath", 6, METER, SINK)
                .work("mist", 8, HOOD).work("HOLD lowering", 3, SUPERVISOR).work("lower", 4).waiting("first bath", 20)
                .work("change the water", 5, SINK).work("adjust it", 3, METER).waiting("second bath", 20)
                .work("change the water again", 5, SINK).work("adjust it again", 3, METER).waiting("third bath", 20)
                .work("drain", 10).work("HOLD first blotter", 2, SUPERVISOR).work("clear up", 10, SINK);
        List<TimeLimit> limits = List.of(new TimeLimit(8, 11, 60, false), new TimeLimit(9, 11, 15, true),
                new TimeLimit(12, 13, 10, true), new TimeLimit(15, 16, 10, true), new TimeLimit(18, 19, 10, true));
        return new Station("station " + (number + 1), 0, parts.parts, parts.claims, limits);
    }

    /** Parts in the order of the work, with what they take. */
    private static final class Parts {
        private final List<WorkPart> parts = new ArrayList<>();
        private final List<Claim> claims = new ArrayList<>();
        private final int trainee;

        Parts(int trainee) {
            this.trainee = trainee;
        }

        Parts waiting(String name, int minutes) {
            parts.add(new WorkPart(name, minutes));
            return this;
        }

        Parts work(String name, int minutes, int... things) {
            claims.add(SmallClass.during(parts.size(), trainee, 1));
            for (int thing : things) {
                claims.add(SmallClass.during(parts.size(), thing, 1));
            }
            return waiting(name, minutes);
        }
    }
}
