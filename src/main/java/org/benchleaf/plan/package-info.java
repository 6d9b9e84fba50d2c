/**
 * Plans when each station of a class does what: whole minutes in, whole minutes out, the same on every machine.
 *
 * <p>Start at {@link org.benchleaf.plan.Planner}. Sees nothing but Java: no clock, no words for readers, no files. The
 * search is bounded by a number of moves, never by time, and its chance comes from a fixed seed.
 */
package org.benchleaf.plan;
