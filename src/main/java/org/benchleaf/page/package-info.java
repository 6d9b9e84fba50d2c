/**
 * A page as a list of blocks, each a record that a maker of outputs writes in its own form.
 *
 * <p>Start at {@code Page} and {@code Block}. Knows nothing of cases, studios or words; may see quantity, for numbers
 * that are ready to be read.
 */
package org.benchleaf.page;
