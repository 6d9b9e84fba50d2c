/**
 * The words of the interface in each language, and how numbers, days and lists are written in it.
 *
 * <p>Start at {@code Words}. May see: page, calculate, model, quantity.
 */
package org.benchleaf.words;
