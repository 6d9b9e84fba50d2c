package org.benchleaf.plan;

import java.util.Arrays;
import java.util.List;

/**
 * When every part of every station begins.
 *
 * @param classroom the class that is planned
 * @param starts minute of each part, by station and part, counted from the start of the class
 */
public record Timetable(Classroom classroom, List<List<Integer>> starts) {

    public Timetable {
        starts = starts.stream().map(List::copyOf).toList();
    }

    static Timetable of(Classroom classroom, int[][] starts) {
        return new Timetable(classroom, Arrays.stream(starts)
                .map(each -> Arrays.stream(each).boxed().toList()).toList());
    }

    /** The minute at which a part begins. */
    public int start(int station, int part) {
        return starts.get(station).get(part);
    }

    /** The minute at which a part is over. */
    public int end(int station, int part) {
        return start(station, part) + classroom.stations().get(station).parts().get(part).minutes();
    }

    /** The minute at which a station is done. */
    int end(int station) {
        return end(station, starts.get(station).size() - 1);
    }

    /** The minute at which the last station is done. */
    public int end() {
        int end = 0;
        for (int station = 0; station < starts.size(); station++) {
            end = Math.max(end, end(station));
        }
        return end;
    }

    int[][] copyOfStarts() {
        return starts.stream().map(each -> each.stream().mapToInt(Integer::intValue).toArray()).toArray(int[][]::new);
    }
}
