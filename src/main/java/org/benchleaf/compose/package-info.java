/**
 * Cuts a worked case into pages of blocks and puts every word and number into its final, rounded form.
 *
 * <p>Start at {@code PageComposer} for the pages of one case and {@code SiteComposer} for those of the whole site.
 * May see: its rooms, derive, words, page, model, quantity.
 */
package org.benchleaf.compose;
