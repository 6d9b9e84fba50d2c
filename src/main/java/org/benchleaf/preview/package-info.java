/**
 * Shows a site to its author while it is written: serves pages on the loopback address and brings changed ones to an open browser.
 * Start at {@link org.benchleaf.preview.PreviewServer}. Owns the HTTP server of the JDK; may see: publish, message.
 */
package org.benchleaf.preview;
