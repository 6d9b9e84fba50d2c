package org.benchleaf.check;

import java.util.Optional;
import java.util.Set;
import org.benchleaf.message.Messages;
import org.benchleaf.model.Publication;
import org.benchleaf.read.Node;
import org.benchleaf.read.PublicationReader;

/** Tells who may see what of a case from these few lines of its file alone. */
public final class PublicationChecker {

    private static final Set<String> CLOSED = Set.of("draft", "withdrawn");

    private PublicationChecker() {
    }

    /**
     * The publication of a case; empty if it cannot be told. A case that says it is a draft or withdrawn is one,
     * whatever is wrong with the rest.
     */
    public static Optional<Publication> check(PublicationReader.Found found) {
        Fields.Soundness decides = new Fields.Soundness(new Messages());
        Publication publication = new PublicationForm(new Fields.Soundness(new Messages()))
                .read(new Fields(found.node(), decides));
        boolean closed = found.node().get("state").filter(node -> node instanceof Node.Scalar scalar
                && CLOSED.contains(scalar.text().strip())).isPresent();
        boolean sound = found.whole() && decides.unsound().isEmpty() && !decides.messages().hasErrors();
        return closed || sound ? Optional.of(publication) : Optional.empty();
    }
}
