/**
 * A class: amounts for all stations, its plan, its room, what is issued.
 *
 * <p>Start at {@code ClassDeriver}. May see: the other rooms of derive, calculate, plan, model, quantity, message.
 */
package org.benchleaf.derive.classes;
