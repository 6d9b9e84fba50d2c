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
 * @param remainder what can still be told of a case that is not understood; empty if it is, or nothing can
 */
public record Checked(Optional<TreatmentCase> treatment, List<Finding> findings, Messages messages,
        Optional<Remainder> remainder) {
    public Checked {
        findings = List.copyOf(findings);
    }
}
