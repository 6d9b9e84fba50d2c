package org.benchleaf.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * Plans a class: the last station ends as early as can be found; then sheets lie wet no longer than needed; then the
 * stations end early in all. The same class gives the same plan on every machine.
 *
 * <p>The numbers of tries and moves are the only bound of the search and belong to the edition: with other numbers a
 * class may get another plan.
 */
public final class Planner {

    private static final int TRIES = 8;
    private static final int MOVES = 10_000;
    private static final int CALM_MOVES = 1_000;

    private Planner() {
    }

    /**
     * What one more of a thing would give.
     *
     * @param thing its place in the list of things
     * @param end when the class would end, never later than without it
     */
    public record Gain(int thing, int end) {
    }

    /**
     * The plan of a class; empty if none was found that ends before the horizon.
     *
     * @param floor what {@link Floor#of} gives for the class
     * @throws IllegalArgumentException if there is an {@link Obstacle}
     */
    public static Optional<Timetable> plan(Classroom classroom, Floor floor) {
        if (!Obstacle.of(classroom).isEmpty()) {
            throw new IllegalArgumentException("the class cannot be planned: " + Obstacle.of(classroom));
        }
        Optional<int[][]> best = SameCard.of(classroom).map(card -> card.timetable().copyOfStarts());
        int end = best.map(starts -> Timetable.of(classroom, starts).end()).orElse(Integer.MAX_VALUE);
        for (int attempt = 0; attempt < TRIES && end > floor.minutes(); attempt++) {
            Arrangement arrangement = new Arrangement(classroom);
            if (allIn(arrangement, order(classroom.stations().size(), attempt))) {
                new Search(arrangement, attempt).shorten(MOVES, floor.minutes());
                if (arrangement.end() < end) {
                    end = arrangement.end();
                    best = Optional.of(arrangement.copy());
                }
            }
        }
        return best.map(starts -> calm(classroom, starts));
    }

    /** The order in which stations are put into the empty room: as they stand at first, shuffled after. */
    private static List<Integer> order(int stations, int attempt) {
        List<Integer> order = new ArrayList<>();
        for (int station = 0; station < stations; station++) {
            order.add(station);
        }
        if (attempt > 0) {
            Collections.shuffle(order, new Random(attempt));
        }
        return order;
    }

    private static boolean allIn(Arrangement arrangement, List<Integer> order) {
        return order.stream().allMatch(station -> arrangement.insert(station, 0, 0));
    }

    private static Timetable calm(Classroom classroom, int[][] starts) {
        Arrangement arrangement = of(classroom, starts);
        new Search(arrangement, TRIES).calm(CALM_MOVES);
        return Timetable.of(classroom, Alike.inOrder(classroom, arrangement.copy()));
    }

    private static Arrangement of(Classroom classroom, int[][] starts) {
        Arrangement arrangement = new Arrangement(classroom);
        for (int station = 0; station < starts.length; station++) {
            arrangement.put(station, starts[station]);
        }
        return arrangement;
    }

    /**
     * What one more of each thing and of the staff would give, planned again from a plan in hand; only of those that
     * run out at some minute of that plan.
     */
    public static List<Gain> gains(Timetable timetable) {
        Classroom classroom = timetable.classroom();
        List<Gain> gains = new ArrayList<>();
        for (int thing = 0; thing < classroom.things().size(); thing++) {
            if (classroom.things().get(thing).kind().canBeLent() && runsOut(timetable, thing)) {
                Classroom more = classroom.withOneMore(thing);
                Arrangement arrangement = of(more, timetable.copyOfStarts());
                new Search(arrangement, thing).shorten(MOVES, Floor.of(more).minutes());
                gains.add(new Gain(thing, Math.min(timetable.end(), arrangement.end())));
            }
        }
        return gains;
    }

    private static boolean runsOut(Timetable timetable, int thing) {
        int[] taken = new int[timetable.end()];
        List<Station> stations = timetable.classroom().stations();
        for (int station = 0; station < stations.size(); station++) {
            for (Claim claim : stations.get(station).claims()) {
                for (int minute = timetable.start(station, claim.first()); claim.thing() == thing
                        && minute < timetable.end(station, claim.last()); minute++) {
                    taken[minute] += claim.amount();
                }
            }
        }
        return Arrays.stream(taken).max().orElse(0) >= timetable.classroom().things().get(thing).count();
    }
}
