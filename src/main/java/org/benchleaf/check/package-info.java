/**
 * Reads a draft as a careful colleague would: its shape against the schema, its references, the trade's rules; what
 * is sound becomes a {@link org.benchleaf.model.TreatmentCase}.
 *
 * <p>Start at {@code CaseChecker}. May see: json, text, read, rule, model, quantity, message.
 */
package org.benchleaf.check;
