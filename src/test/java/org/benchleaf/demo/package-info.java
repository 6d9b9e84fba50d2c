/**
 * Draws the pictures of the demo: five invented sheets, before, during and after treatment.
 *
 * <p>Start at {@link org.benchleaf.demo.DrawDemoPictures}; one class per case ({@code TideTable}, {@code FerryLetter},
 * {@code LockPlan}, {@code ParishMap}, {@code FloodPoster}) says what lies on its sheet. Lengths are millimetres on
 * the sheet, so that an overview and a detail are two views of the same thing. Everything that looks like chance comes
 * from seeded noise. Lives among the tests because the drawings are content, not part of the tool.
 */
package org.benchleaf.demo;
