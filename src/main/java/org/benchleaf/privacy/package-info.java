/**
 * Breaks private values into names and facts, and finds them in sources and finished files.
 *
 * <p>Start at {@link org.benchleaf.privacy.PrivateScan}. May see: publish, model, message.
 */
package org.benchleaf.privacy;
