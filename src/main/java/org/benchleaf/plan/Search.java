package org.benchleaf.plan;

import java.util.Arrays;
import java.util.Random;

/**
 * Improves an arrangement: some stations are taken out and put in again, now and then with a part held back, and the
 * outcome is kept if it is no worse than the present or than the one so many moves ago (late acceptance).
 *
 * <p>{@link Random} is specified to the bit, so that a seed gives the same moves on every machine.
 *
 * <p>Source: Burke and Bykov (2017), The late acceptance hill-climbing heuristic, European Journal of Operational
 * Research 258(1), 70-78 (from memory).
 */
final class Search {

    private static final int MEMORY = 50;
    private static final int MOST_OUT = 4;
    private static final int STALE = 2_000;
    private static final int LOOK_EVERY = 250;
    /** A part is held back for an eighth of its station's time at most, or let begin some minutes sooner than it does. */
    private static final int HELD_SHARE = 8;
    private static final int BEFORE = 4;

    private final Arrangement arrangement;
    private final Random random;
    private final int[] heldPart;
    private final int[] heldUntil;
    private final long[] past = new long[MEMORY];
    private Aim aim;
    private long cost;

    /** What a search tries to make small. */
    private interface Aim {

        /** Far above every cost. */
        long OUT_OF_QUESTION = Long.MAX_VALUE / 4;

        long cost();

        /** Done to every station that was put in again. */
        default void settle(int station) {
        }
    }

    /** Takes over an arrangement in which every station is in. */
    Search(Arrangement arrangement, long seed) {
        this.arrangement = arrangement;
        this.random = new Random(seed);
        this.heldPart = new int[arrangement.stations()];
        this.heldUntil = new int[arrangement.stations()];
    }

    /**
     * Looks for an arrangement in which the last station ends sooner, and leaves the best one in the room.
     *
     * @param floor no arrangement can end sooner; the search stops when it is reached
     */
    void shorten(int moves, int floor) {
        arrangement.compact();
        int[][] best = arrangement.copy();
        int bestEnd = arrangement.end();
        int seen = bestEnd;
        int sinceBetter = 0;
        aimAt(target(bestEnd, floor, 8), bestEnd / 16);
        for (int move = 0; move < moves && bestEnd > floor; move++) {
            boolean kept = move(move);
            sinceBetter++;
            int end = arrangement.end();
            if (kept && (end < seen || move % LOOK_EVERY == 0)) {
                seen = Math.min(seen, end);
                int[][] here = arrangement.copy();
                arrangement.compact();
                if (arrangement.end() < bestEnd) {
                    bestEnd = arrangement.end();
                    best = arrangement.copy();
                    sinceBetter = 0;
                }
                arrangement.restore(here);
            }
            if (cost == 0 || sinceBetter > STALE) {
                boolean stale = cost != 0;
                aimAt(target(bestEnd, floor, stale ? 16 : 64), stale ? bestEnd / 4 : bestEnd / 32);
                sinceBetter = 0;
            }
        }
        arrangement.restore(best);
    }

    private static int target(int end, int floor, int share) {
        return Math.max(floor, end - Math.max(1, (end - floor) / share));
    }

    private void aimAt(int target, int lenience) {
        take(() -> {
            long over = 0;
            for (int station = 0; station < arrangement.stations(); station++) {
                over += Math.max(0, arrangement.end(station) - target);
            }
            return over;
        }, lenience);
    }

    private void take(Aim next, long lenience) {
        aim = next;
        cost = aim.cost();
        Arrays.fill(past, cost + lenience);
    }

    /**
     * Looks for an arrangement that ends no later, in which sheets lie wet for less, and then one whose stations end
     * sooner in all; leaves the best one in the room.
     */
    void calm(int moves) {
        int end = arrangement.end();
        for (int station = 0; station < arrangement.stations(); station++) {
            arrangement.shortenWetWaiting(station);
        }
        take(new Aim() {
            @Override
            public long cost() {
                return arrangement.end() > end ? OUT_OF_QUESTION : waitingThenEnds();
            }

            @Override
            public void settle(int station) {
                arrangement.shortenWetWaiting(station);
            }
        }, 0);
        int[][] best = arrangement.copy();
        long least = cost;
        for (int move = 0; move < moves; move++) {
            if (move(move) && cost < least) {
                least = cost;
                best = arrangement.copy();
            }
        }
        arrangement.restore(best);
        releaseWhatGainsNothing();
    }

    /** What was held back on the way begins early again where that makes nothing worse. */
    private void releaseWhatGainsNothing() {
        for (int station = 0; station < arrangement.stations(); station++) {
            int[] old = arrangement.starts(station);
            long before = aim.cost();
            arrangement.remove(station);
            arrangement.insert(station, 0, 0);
            aim.settle(station);
            if (aim.cost() > before) {
                arrangement.remove(station);
                arrangement.put(station, old);
            }
        }
    }

    private long waitingThenEnds() {
        long wet = 0;
        long ends = 0;
        for (int station = 0; station < arrangement.stations(); station++) {
            wet += arrangement.wetWaiting(station);
            ends += arrangement.end(station);
        }
        return (wet << Integer.SIZE) + ends;
    }

    /** Takes some stations out and puts them in again; whether the outcome was kept. */
    private boolean move(int number) {
        int[] out = chosen();
        int[][] old = Arrays.stream(out).mapToObj(arrangement::starts).toArray(int[][]::new);
        int[][] held = Arrays.stream(out).mapToObj(station -> new int[] {heldPart[station], heldUntil[station]})
                .toArray(int[][]::new);
        int in = putInAgain(out);
        long now = in == out.length ? aim.cost() : Aim.OUT_OF_QUESTION;
        int slot = number % MEMORY;
        boolean kept = now < Aim.OUT_OF_QUESTION && (now <= cost || now <= past[slot]);
        if (kept) {
            cost = now;
        } else {
            undo(out, in, old, held);
        }
        past[slot] = Math.min(past[slot], cost);
        return kept;
    }

    private int putInAgain(int[] out) {
        for (int station : out) {
            arrangement.remove(station);
        }
        int in = 0;
        for (int station : out) {
            hold(station);
            if (!arrangement.insert(station, heldPart[station], heldUntil[station])) {
                return in;
            }
            aim.settle(station);
            in++;
        }
        return in;
    }

    /** Holds one part back for a while, sets all free again, or leaves it as it is. */
    private void hold(int station) {
        int chance = random.nextInt(10);
        if (chance < 3) {
            heldPart[station] = random.nextInt(arrangement.parts(station));
            heldUntil[station] = arrangement.starts(station)[heldPart[station]] - BEFORE
                    + random.nextInt(2 + arrangement.end(station) / HELD_SHARE);
        } else if (chance < 6) {
            heldUntil[station] = 0;
        }
    }

    private void undo(int[] out, int in, int[][] old, int[][] held) {
        for (int at = 0; at < in; at++) {
            arrangement.remove(out[at]);
        }
        for (int at = 0; at < out.length; at++) {
            arrangement.put(out[at], old[at]);
            heldPart[out[at]] = held[at][0];
            heldUntil[out[at]] = held[at][1];
        }
    }

    /** One to four stations in the order in which they are put in; often the one that ends last is the first of them. */
    private int[] chosen() {
        int[] chosen = new int[1 + random.nextInt(Math.min(MOST_OUT, arrangement.stations()))];
        for (int count = 0; count < chosen.length; count++) {
            int station = count == 0 && random.nextBoolean() ? lastToEnd() : random.nextInt(arrangement.stations());
            while (contains(chosen, count, station)) {
                station = (station + 1) % arrangement.stations();
            }
            chosen[count] = station;
        }
        return chosen;
    }

    private static boolean contains(int[] chosen, int count, int station) {
        for (int at = 0; at < count; at++) {
            if (chosen[at] == station) {
                return true;
            }
        }
        return false;
    }

    private int lastToEnd() {
        int last = 0;
        for (int station = 1; station < arrangement.stations(); station++) {
            last = arrangement.end(station) > arrangement.end(last) ? station : last;
        }
        return last;
    }
}
