package org.benchleaf.derive;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.benchleaf.message.Holes;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Substance;
import org.benchleaf.quantity.Quantity;

/**
 * Tells what kind of waste a mixture becomes, and why. What has a part of which something is not known has no kind, and
 * the drain is spoken of only where everything is known and the pH shown to lie in the window.
 */
final class WasteChoice {

    /** The narrowest of the published windows for the drain; the others reach from 2 to 12. Local rules decide. */
    private static final double LOWEST_PH = 6;
    private static final double HIGHEST_PH = 9;

    private final Reference reference;

    WasteChoice(Reference reference) {
        this.reference = reference;
    }

    /** The waste that this composition becomes, which has these H codes, if everything about it is known. */
    Hazards.Waste of(Composition composition, List<String> statements, boolean known) {
        List<Substance> parts = composition.substances(reference);
        if (!known || parts.isEmpty() || parts.stream().anyMatch(part -> part.waste().isEmpty())) {
            return new Hazards.Waste(Optional.empty(), say("waste-unknown"), false);
        }
        Set<String> kinds = parts.stream().flatMap(part -> part.waste().stream()).collect(Collectors.toSet());
        return reference.waste().values().stream().filter(kind -> kind.takes(statements, kinds, composition.ph()))
                .findFirst().map(kind -> new Hazards.Waste(Optional.of(kind.key()),
                        why(kind, parts, statements, composition.ph()),
                        kind.drain().isPresent() && isInWindow(composition.ph())))
                .orElseGet(() -> new Hazards.Waste(Optional.empty(), say("waste-unknown"), false));
    }

    private static boolean isInWindow(Optional<Quantity> ph) {
        return ph.filter(one -> one.low() >= LOWEST_PH && one.high() <= HIGHEST_PH).isPresent();
    }

    private String why(Reference.WasteKind kind, List<Substance> parts, List<String> statements, Optional<Quantity> ph) {
        boolean byPh = kind.phBelow().isPresent() || kind.phAbove().isPresent();
        if (byPh && ph.isPresent()) {
            return say("waste-by-ph", "ph", Reading.of(ph.get()));
        }
        String held = parts.stream().filter(part -> part.waste().filter(kind.key()::equals).isPresent())
                .map(part -> part.name().toLowerCase(Locale.ROOT)).collect(Collectors.joining(", "));
        return held.isEmpty() ? say("waste-by-class", "statements", statements.stream()
                .filter(kind.statements()::contains).collect(Collectors.joining(", ")))
                : say("waste-by-parts", "substances", held);
    }

    private String say(String key, Object... pairs) {
        return Optional.ofNullable(reference.wordings().get(key)).map(row -> Holes.fill(row.words(), pairs)).orElse(key);
    }
}
