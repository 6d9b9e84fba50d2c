/**
 * Turns pages of blocks into the files of a site: HTML, styles, scripts, pictures.
 *
 * <p>Start at {@code SitePublisher}. Owns the template engine and the image reader. May see: compose, model,
 * quantity, message.
 */
package org.benchleaf.publish;
