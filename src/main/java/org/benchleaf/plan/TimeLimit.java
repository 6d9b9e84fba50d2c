package org.benchleaf.plan;

/**
 * The most that may pass between the end of one part and the begin of a later one of the same station.
 *
 * @param from the earlier part
 * @param to the later part
 * @param minutes at most; 0 for "at once"
 * @param wet whether the sheet lies wet or its bath stands open in between, so that the less of it is used the better
 */
public record TimeLimit(int from, int to, int minutes, boolean wet) {

    public TimeLimit {
        if (from < 0 || to <= from || minutes < 0) {
            throw new IllegalArgumentException("limit of " + minutes + " min from part " + from + " to part " + to);
        }
    }
}
