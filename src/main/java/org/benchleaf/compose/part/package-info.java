/**
 * What several kinds of page are made of: the sheet that is written on, frames, tables, recipes, hazards, workings.
 *
 * <p>Start at {@code Sheet} and {@code CaseDesk}. May see: json, derive, words, page, calculate, model, quantity, message.
 */
package org.benchleaf.compose.part;
