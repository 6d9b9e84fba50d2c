/**
 * When what is done: working time, waiting and nights, laid along a clock.
 *
 * <p>Start at {@code TimelineMaker}. May see: derive.figure, model, quantity, message.
 */
package org.benchleaf.derive.time;
