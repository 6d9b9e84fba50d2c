package org.benchleaf.check;

import java.util.List;
import java.util.Optional;
import org.benchleaf.message.Messages;
import org.benchleaf.model.Finding;
import org.benchleaf.model.TreatmentCase;

/**
 * What came of checking a case.
 *
 * @param treatment the case; empty if it has errors that keep it from being understood
 * @param findings what the trade's rules found
 * @param messages everything said, reading included
 */
public record Checked(Optional<TreatmentCase> treatment, List<Finding> findings, Messages messages) {
    public Checked {
        findings = List.copyOf(findings);
    }
}
