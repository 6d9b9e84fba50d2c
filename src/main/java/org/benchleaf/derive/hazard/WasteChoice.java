package org.benchleaf.derive.hazard;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.benchleaf.derive.figure.Reading;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Substance;
import org.benchleaf.quantity.Quantity;

/**
 * Tells what kind of waste a mixture becomes, and why. What has a part of which something is not known has no kind, and
 * the drain is spoken of only where everything is known, nothing is classified, it is weak and its pH lies in the window.
 */
final class WasteChoice {

    private static final String WATER = "water";

    private final Reference reference;

    WasteChoice(Reference reference) {
        this.reference = reference;
    }

    /** The waste that this composition becomes, which has these H codes, if everything about it is known. */
    Hazards.Waste of(Composition composition, List<String> statements, boolean known) {
        List<Substance> parts = composition.substances(reference);
        if (!known || parts.isEmpty() || parts.stream().anyMatch(part -> part.waste().isEmpty())) {
            return new Hazards.Waste(Optional.empty(), reference.sentence("waste-unknown"), false);
        }
        Set<String> kinds = parts.stream().flatMap(part -> part.waste().stream()).collect(Collectors.toSet());
        List<Reference.WasteKind> fitting = reference.waste().values().stream()
                .filter(kind -> kind.takes(statements, kinds, composition.ph())).toList();
        if (fitting.isEmpty()) {
            return new Hazards.Waste(Optional.empty(), reference.sentence("waste-unknown"), false);
        }
        Reference.WasteKind first = fitting.get(0);
        List<Reference.WasteKind> ofParts = fitting.stream().filter(kind -> kinds.contains(kind.key()) && kind.drain().isEmpty()).toList();
        if (ofParts.stream().anyMatch(kind -> ofParts.stream().anyMatch(other -> kind.neverWith().contains(other.key())))) {
            return new Hazards.Waste(Optional.empty(), reference.sentence("waste-torn", "kinds", names(ofParts)), false);
        }
        List<Reference.WasteKind> others = ofParts.stream().filter(kind -> !kind.key().equals(first.key())).toList();
        return new Hazards.Waste(Optional.of(first.key()), why(first, parts, statements, composition.ph())
                + (others.isEmpty() ? "" : " " + reference.sentence("waste-also", "kinds", names(others))),
                first.drain().isPresent() && isForDrain(composition, statements));
    }

    private static String names(List<Reference.WasteKind> kinds) {
        return kinds.stream().map(Reference.WasteKind::name).collect(Collectors.joining(", "));
    }

    /** Weak, nearly neutral and without any class: only this is shown to go to the drain, where local rules permit. */
    private boolean isForDrain(Composition composition, List<String> statements) {
        return statements.isEmpty() && composition.ph().filter(reference.limits()::isForDrain).isPresent()
                && 1 - composition.least(WATER) <= MixturePart.fraction(reference.limits().weak().value());
    }

    private String why(Reference.WasteKind kind, List<Substance> parts, List<String> statements, Optional<Quantity> ph) {
        boolean byPh = kind.phBelow().isPresent() || kind.phAbove().isPresent();
        if (byPh && ph.isPresent()) {
            return reference.sentence("waste-by-ph", "ph", Reading.of(ph.get()));
        }
        String held = parts.stream().filter(part -> part.waste().filter(kind.key()::equals).isPresent())
                .map(Substance::within).collect(Collectors.joining(", "));
        return held.isEmpty() ? reference.sentence("waste-by-class", "statements", statements.stream()
                .filter(kind.statements()::contains).collect(Collectors.joining(", ")))
                : reference.sentence("waste-by-parts", "substances", held);
    }
}
