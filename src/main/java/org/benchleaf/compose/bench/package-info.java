/**
 * The view of a step sheet at the bench: one screen a deed, its timers, its notes.
 *
 * <p>Start at {@code BenchViewMaker}. May see: compose.part and what that sees.
 */
package org.benchleaf.compose.bench;
