/**
 * What is made, fetched and laid out before a treatment begins.
 *
 * <p>Start at {@code Groundwork}. May see: derive.figure, derive.time, derive.hazard, calculate, science, model,
 * quantity, message.
 */
package org.benchleaf.derive.preparation;
