/**
 * Quantities as people at the bench write them: a number, how far it may lie off, and a unit.
 *
 * <p>Start at {@link org.benchleaf.quantity.Quantity}; {@link org.benchleaf.quantity.QuantityReader} reads the
 * written form. May see: nothing.
 */
package org.benchleaf.quantity;
