package org.benchleaf.compose;

/** A case with one of its results. */
record EvidenceRow(CaseCard card, Evidence evidence) {
}
