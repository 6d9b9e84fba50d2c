/**
 * One calculation by its name: what is put in and read as it was given, the formula, the spread that is carried
 * through, and the digits that are printed.
 *
 * <p>Start at {@code Calculations}. The build compiles this package, with {@code science} and {@code quantity}, to the
 * script that pages load, so that it uses nothing that differs in a browser. May see: science, model, quantity,
 * message.
 */
package org.benchleaf.calculate;
