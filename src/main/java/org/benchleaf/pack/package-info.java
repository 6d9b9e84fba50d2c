/**
 * Stages a whole edition beside the site, verifies it, and applies it file by file.
 *
 * <p>Start at {@link org.benchleaf.pack.SitePacker}. May see: json, publish, model, quantity, message.
 */
package org.benchleaf.pack;
