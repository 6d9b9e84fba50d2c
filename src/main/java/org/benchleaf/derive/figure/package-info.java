/**
 * The figures of the steps, solutions and results of a case, each with its key, its calculation and where its inputs
 * come from.
 *
 * <p>Start at {@code Bench} and {@code Ledger}. May see: calculate, science, model, quantity, message.
 */
package org.benchleaf.derive.figure;
