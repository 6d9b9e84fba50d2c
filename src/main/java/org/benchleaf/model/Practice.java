package org.benchleaf.model;

/**
 * When a trainee counts as practised in a step.
 *
 * @param times how often each outcome that is a must was met
 * @param help the least level allowed for next time at each of these, from 1 to 5
 */
public record Practice(int times, int help) {
}
