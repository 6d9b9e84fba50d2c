/**
 * The pages of one class and the files beside them.
 *
 * <p>Start at {@code ClassDesk}. May see: compose.part, compose.chart, compose.bench and what those see.
 */
package org.benchleaf.compose.classes;
