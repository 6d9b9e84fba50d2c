package org.benchleaf.compose.chart;

import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.Evidence;

/** A case with one of its results. */
public record EvidenceRow(CaseCard card, Evidence evidence) {
}
