/**
 * What Benchleaf says to an author: one catalogue of messages, each with what, why and what to do, and the place
 * in the file it speaks of.
 *
 * <p>Start at {@link org.benchleaf.message.Messages}. May see: nothing.
 */
package org.benchleaf.message;
