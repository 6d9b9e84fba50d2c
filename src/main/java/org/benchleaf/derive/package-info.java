/**
 * Works out every number that an author did not write: volumes, mixtures, times, colour change.
 *
 * <p>Start at {@code Deriver}. May see: its rooms, json, calculate, science, model, quantity, message. Never rounds and
 * never words a sentence; that is the work of compose.
 */
package org.benchleaf.derive;
