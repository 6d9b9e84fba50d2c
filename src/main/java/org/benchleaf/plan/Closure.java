package org.benchleaf.plan;

/**
 * Minutes in which a thing or person is not there.
 *
 * @param thing its place in the list of things
 * @param from first minute
 * @param to the minute after the last
 */
public record Closure(int thing, int from, int to) {
}
