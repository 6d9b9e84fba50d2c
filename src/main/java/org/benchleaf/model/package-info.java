/**
 * A treatment as a sound case file states it, and the studio's own knowledge: plain records, nothing worked out.
 *
 * <p>Start at {@link org.benchleaf.model.TreatmentCase} and {@link org.benchleaf.model.Library}. May see: quantity,
 * message.
 */
package org.benchleaf.model;
