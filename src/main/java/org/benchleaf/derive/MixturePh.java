package org.benchleaf.derive;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Substance;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.science.AcidBase;
import org.benchleaf.science.LimeWater;
import org.benchleaf.science.NoConvergence;
import org.benchleaf.science.OutsideRange;

/**
 * Asks the equilibrium for the pH of what holds water and whose acids and bases are all known. Where one of them is not
 * known, the pH is not known, and nothing may be said that rests on it.
 */
final class MixturePh {

    private static final String WATER = "water";
    private static final String LIME = "calcium hydroxide";
    /** Less water than this is damp, not a solution. */
    private static final double LEAST_WATER = 0.01;
    private static final double NEUTRAL = 7;
    private static final double CAUSTIC = 11.5;
    private static final double ACID = 2;
    private static final Set<String> TELLING = Set.of("acid", "alkali");
    private static final Quantity ROOM = Quantity.of(25, Unit.CELSIUS);

    private final Reference reference;

    MixturePh(Reference reference) {
        this.reference = reference;
    }

    /** The composition with its pH, where that is not stated and can be worked out. */
    Composition told(Composition composition) {
        double water = composition.shares().getOrDefault(WATER, 0.0);
        if (composition.ph().isPresent() || water < LEAST_WATER) {
            return composition;
        }
        List<Substance> parts = composition.substances(reference).stream()
                .filter(part -> !part.key().equals(WATER)).toList();
        List<Substance> acting = parts.stream().filter(part -> part.acidity()
                .filter(one -> !one.is().equals("neutral")).isPresent()).toList();
        List<Substance> silent = parts.stream().filter(part -> part.acidity().isEmpty()).toList();
        Optional<Substance> lacking = silent.stream().filter(part -> part.reactsAs().stream().anyMatch(TELLING::contains))
                .findFirst().or(() -> acting.stream().filter(part -> part.molarMass().isEmpty()).findFirst());
        if (lacking.isPresent()) {
            return composition.lacking(new UnknownWords(reference).of("ph", "ph-unknown", "substance",
                    lacking.get().name().toLowerCase(Locale.ROOT)));
        }
        Optional<Quantity> ph = acting.isEmpty() ? Optional.of(Quantity.of(NEUTRAL, Unit.PH))
                : solved(composition, acting, water);
        boolean whole = silent.isEmpty() && composition.unknown().isEmpty();
        return composition.with(ph.filter(one -> whole || isExtreme(one)), composition.spirit());
    }

    /** An extreme pH is told even where a part is there of which it is not known what it does to the pH. */
    private static boolean isExtreme(Quantity ph) {
        return ph.high() >= CAUSTIC || ph.low() <= ACID;
    }

    private Optional<Quantity> solved(Composition composition, List<Substance> acting, double water) {
        try {
            if (acting.size() == 1 && acting.get(0).key().equals(LIME)) {
                return Optional.of(lime(acting.get(0), composition.shares().get(LIME), water));
            }
            List<AcidBase.Dissolved> dissolved = new ArrayList<>();
            acting.forEach(part -> dissolved.add(dissolved(part, composition.shares().get(part.key()), water)));
            return Optional.of(AcidBase.ph(dissolved));
        } catch (OutsideRange | NoConvergence beyond) {
            return Optional.empty();
        }
    }

    /** Limewater has an equilibrium of its own; what does not dissolve leaves it saturated. */
    private static Quantity lime(Substance lime, double share, double water) {
        Quantity full = LimeWater.saturated(ROOM).calcium();
        double amount = molality(lime, share, water);
        return amount >= full.low() ? lime.saturated().map(Substance.Saturated::ph)
                .orElseGet(() -> LimeWater.saturated(ROOM).ph())
                : LimeWater.ph(Quantity.of(amount, Unit.MOLE_PER_KILOGRAM), ROOM);
    }

    private static AcidBase.Dissolved dissolved(Substance part, double share, double water) {
        Substance.Acidity acidity = part.acidity().orElseThrow();
        double dissolving = part.saturated().map(full -> Math.min(share,
                full.share().highIn(Unit.PERCENT_BY_MASS) / 100)).orElse(share);
        double amount = molality(part, dissolving, water);
        int protons = acidity.constants().size();
        return switch (acidity.is()) {
            case "strong base" -> new AcidBase.Dissolved(amount, acidity.per(), List.of(), 0);
            case "strong acid" -> new AcidBase.Dissolved(amount, -acidity.per(), List.of(), 0);
            case "weak base" -> new AcidBase.Dissolved(amount, 0, acidity.constants(), 0);
            case "salt" -> new AcidBase.Dissolved(amount, acidity.per(), acidity.constants(), -protons);
            default -> new AcidBase.Dissolved(amount, 0, acidity.constants(), -protons);
        };
    }

    private static double molality(Substance part, double share, double water) {
        return share * 1000 / part.molarMass().orElseThrow().in(Unit.GRAM_PER_MOLE) / water;
    }
}
