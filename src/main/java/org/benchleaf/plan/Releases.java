package org.benchleaf.plan;

/**
 * How many stations a few supervisors can release in time, by counting alone.
 *
 * @param supervisors how many there are
 * @param within minutes that may pass before a station is released and goes on
 * @param each minutes that one release takes
 */
public record Releases(int supervisors, int within, int each) {

    public Releases {
        if (supervisors < 1 || within < 0 || each < 1) {
            throw new IllegalArgumentException(supervisors + " supervisors, " + within + " min, " + each + " min each");
        }
    }

    /** The most stations that may come to the release at once. */
    public int atOnce() {
        return supervisors * (within / each);
    }

    /**
     * The least minutes between groups of stations that come to the release one group after another.
     *
     * @param size stations in a group, at least 1
     * @param groups how many groups come
     */
    public int apart(int size, int groups) {
        int apart = 0;
        for (int later = 1; later < groups; later++) {
            // The last of this group is released when all so far have been, one supervisor taking every so-manieth.
            int released = (((later + 1) * size + supervisors - 1) / supervisors) * each;
            apart = Math.max(apart, Math.max(0, released - within + later - 1) / later);
        }
        return apart;
    }
}
