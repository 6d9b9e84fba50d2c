/**
 * The formulas of the trade and of the chemistry behind it: pure functions over quantities, each with its source.
 *
 * <p>One class a subject; every public function states formula, units, range, source and what it throws. No state,
 * no rounding, no clock, no locale, no reflection; {@link java.lang.StrictMath} for powers and logarithms, so that
 * every machine makes the same bytes. May see: quantity.
 */
package org.benchleaf.science;
