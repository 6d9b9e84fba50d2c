/**
 * Works out every number that an author did not write: volumes, mixtures, times, colour change.
 *
 * <p>Start at {@code Deriver}; {@code Calculations} runs one named calculation. May see: check, science, model,
 * quantity, message. Never rounds and never words a sentence; that is the work of compose.
 */
package org.benchleaf.derive;
