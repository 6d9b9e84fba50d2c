package org.benchleaf.plan;

import java.util.List;

/**
 * One station's work: its parts follow one another in their order, with gaps where something is to be waited for.
 *
 * @param name as a reader sees it
 * @param earliest the minute before which it does not begin
 * @param parts at least one, in the order of the work
 * @param claims what it takes; two claims on the same thing never overlap
 * @param limits what must not lie too far apart
 */
public record Station(String name, int earliest, List<WorkPart> parts, List<Claim> claims, List<TimeLimit> limits) {

    public Station {
        parts = List.copyOf(parts);
        claims = List.copyOf(claims);
        limits = List.copyOf(limits);
        if (parts.isEmpty() || earliest < 0) {
            throw new IllegalArgumentException(name + " has no parts, or begins before the class");
        }
        int last = parts.size() - 1;
        if (claims.stream().anyMatch(claim -> claim.last() > last) || limits.stream().anyMatch(limit -> limit.to() > last)) {
            throw new IllegalArgumentException(name + " names a part that it does not have");
        }
        for (int one = 0; one < claims.size(); one++) {
            for (int other = one + 1; other < claims.size(); other++) {
                if (claims.get(one).overlaps(claims.get(other))) {
                    throw new IllegalArgumentException(name + " takes the same thing twice at once");
                }
            }
        }
    }

    /** Minutes of the parts from one to another, both included; 0 if there is none between. */
    int minutes(int first, int last) {
        int sum = 0;
        for (int part = first; part <= last; part++) {
            sum += parts.get(part).minutes();
        }
        return sum;
    }
}
