package org.benchleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** A small class made by chance from a seed: 2 to 5 stations, 5 to 9 parts, three things, limits and hours. */
final class SmallClass {

    private static final int SHARED = 3;
    private static final int HORIZON = 600;

    private final Random random;

    /** A claim of something that is taken during one part only. */
    static Claim during(int part, int thing, int amount) {
        return new Claim(thing, amount, part, part);
    }

    private SmallClass(long seed) {
        random = new Random(seed);
    }

    static Classroom of(long seed) {
        return new SmallClass(seed).classroom();
    }

    private Classroom classroom() {
        List<SharedThing> things = new ArrayList<>();
        for (int thing = 0; thing < SHARED; thing++) {
            things.add(new SharedThing("thing " + thing, 1 + random.nextInt(2),
                    thing == 0 ? SharedThing.Kind.STAFF : SharedThing.Kind.THING));
        }
        int count = 2 + random.nextInt(4);
        boolean alike = random.nextBoolean();
        long card = random.nextLong();
        List<Station> stations = new ArrayList<>();
        for (int station = 0; station < count; station++) {
            things.add(new SharedThing("trainee " + station, 1, SharedThing.Kind.TRAINEE));
            stations.add(new SmallClass(alike ? card : random.nextLong()).station(station, things));
        }
        return new Classroom(things, stations, random.nextInt(3) == 0 ? hours(things) : List.of(), HORIZON);
    }

    /** A break in which no person is there. */
    private List<Closure> hours(List<SharedThing> things) {
        int from = 20 + random.nextInt(40);
        List<Closure> closures = new ArrayList<>();
        for (int thing = 0; thing < things.size(); thing++) {
            if (things.get(thing).kind() != SharedThing.Kind.THING) {
                closures.add(new Closure(thing, from, from + 15));
            }
        }
        return closures;
    }

    private Station station(int number, List<SharedThing> things) {
        int count = 5 + random.nextInt(5);
        List<WorkPart> parts = new ArrayList<>();
        List<Claim> claims = new ArrayList<>();
        for (int part = 0; part < count; part++) {
            parts.add(new WorkPart("part " + part, 1 + random.nextInt(12)));
            if (random.nextInt(3) > 0) {
                claims.add(during(part, SHARED + number, 1));
            }
            int thing = random.nextInt(SHARED + 1);
            if (thing < SHARED - 1) {
                claims.add(during(part, thing, 1 + random.nextInt(things.get(thing).count())));
            }
        }
        int first = random.nextInt(count - 2);
        claims.add(new Claim(SHARED - 1, 1, first, first + 1 + random.nextInt(2)));
        return new Station("station " + number, 0, parts, claims, limits(parts));
    }

    /** A third of the joints has a limit; some reach over a part between. */
    private List<TimeLimit> limits(List<WorkPart> parts) {
        List<TimeLimit> limits = new ArrayList<>();
        for (int part = 0; part + 2 < parts.size(); part++) {
            if (random.nextInt(3) == 0) {
                boolean over = random.nextInt(3) == 0;
                limits.add(new TimeLimit(part, part + (over ? 2 : 1),
                        random.nextInt(6) + (over ? parts.get(part + 1).minutes() : 0), true));
            }
        }
        return limits;
    }
}
