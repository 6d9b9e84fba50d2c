package org.benchleaf.rule;

import java.util.List;
import org.benchleaf.message.Messages;
import org.benchleaf.model.Finding;

/**
 * What the rules had to say about a case.
 *
 * @param findings what spoke and was answered by a reason, and what is only advice
 * @param messages what the author is told
 */
public record Review(List<Finding> findings, Messages messages) {

    public Review {
        findings = List.copyOf(findings);
    }
}
