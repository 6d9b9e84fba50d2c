/**
 * What substances, mixtures and bottles can do to people and things, as the regulation on classification counts it.
 *
 * <p>Start at {@code HazardAssessor} and {@code Bottles}. What is not known stays unknown. May see: derive.figure,
 * derive.time, calculate, science, model, quantity, message.
 */
package org.benchleaf.derive.hazard;
