/**
 * The pages of the whole site: front page, lists, evidence, materials, glossary, rules, sources, search.
 *
 * <p>Start at {@code LibraryPage}. May see: compose.part, compose.chart and what those see.
 */
package org.benchleaf.compose.site;
