/**
 * Charts and drawings, made from the figures of a case.
 *
 * <p>Start at {@code StepDrawings}. May see: compose.part and what that sees.
 */
package org.benchleaf.compose.chart;
