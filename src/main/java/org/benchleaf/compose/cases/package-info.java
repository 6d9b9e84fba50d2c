/**
 * The pages of one case and the files beside them.
 *
 * <p>Start at {@code CaseStudyPage} and {@code StepSheetPage}. May see: compose.part, compose.chart, compose.bench,
 * compose.classes, compose.site and what those see.
 */
package org.benchleaf.compose.cases;
