package org.benchleaf.derive.hazard;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.derive.figure.Reading;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Substance;
import org.benchleaf.model.Substance.Acidity.Kind;
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
    /** So far a meter and the equilibrium may lie apart. Common practice, no source. */
    private static final double NEAR = 1;
    /** With more parts of uncertain share than this, the ends are too many to try. */
    private static final int MOST_RANGES = 6;
    private static final Set<Kind> SILENT = Set.of(Kind.NEUTRAL, Kind.NOT_EXTREME);
    private static final Quantity ROOM = Quantity.of(25, Unit.CELSIUS);

    private final Reference reference;

    MixturePh(Reference reference) {
        this.reference = reference;
    }

    /** The composition with its pH, where that is not stated and can be worked out. */
    Composition told(Composition composition) {
        if (composition.ph().isPresent() || composition.most(WATER) < LEAST_WATER) {
            return composition;
        }
        List<Substance> parts = composition.substances(reference).stream()
                .filter(part -> !part.key().equals(WATER)).toList();
        Optional<Substance> lacking = parts.stream().filter(MixturePh::isLacking).findFirst();
        if (lacking.isPresent()) {
            return composition.lacking(new UnknownWords(reference).of("ph", "ph-unknown", "substance",
                    lacking.get().within()));
        }
        List<Substance> acting = parts.stream().filter(part -> !SILENT.contains(kind(part))).toList();
        Optional<Quantity> ph = acting.isEmpty() ? Optional.of(Quantity.of(NEUTRAL, Unit.PH)) : solved(composition, acting);
        if (ph.isEmpty()) {
            return composition.lacking(new UnknownWords(reference).of("ph", "ph-beyond", "substance",
                    acting.get(0).within()));
        }
        boolean whole = composition.unknown().isEmpty() && parts.stream().noneMatch(part -> kind(part) == Kind.NOT_EXTREME);
        return composition.with(ph.filter(one -> whole || reference.limits().isExtreme(one)), composition.spirit());
    }

    /**
     * The same where a pH is stated that what is in it cannot have: then neither is known, and the class goes by the ends of both.
     * What a meter reads and the equilibrium tells may lie a unit apart.
     */
    Composition compared(Composition stated) {
        Optional<Quantity> worked = stated.ph().flatMap(any -> told(stated.with(Optional.empty(), stated.spirit())).ph());
        if (worked.isEmpty() || agree(stated.ph().orElseThrow(), worked.get())) {
            return stated;
        }
        return stated.with(Optional.of(joined(stated.ph().orElseThrow(), worked.get())), stated.spirit())
                .lacking(new UnknownWords(reference).of("ph", "ph-disagrees", "stated", Reading.of(stated.ph().orElseThrow()),
                        "worked", Reading.of(worked.get())));
    }

    private boolean agree(Quantity stated, Quantity worked) {
        boolean alike = reference.limits().isExtreme(stated) == reference.limits().isExtreme(worked)
                && (reference.limits().isForDrain(worked) || !reference.limits().isForDrain(stated));
        return alike || stated.high() >= worked.low() - NEAR && stated.low() <= worked.high() + NEAR;
    }

    /**
     * The pH that an acid or alkali would have in as much water, where it stands in another liquid: there no pH is defined, and it
     * bites all the same. Empty in water, for solids, and for what is not known.
     */
    Optional<Quantity> asInWater(Composition dry) {
        boolean liquid = dry.substances(reference).stream().anyMatch(part -> part.form().equals("liquid")
                && dry.most(part.key()) >= LEAST_WATER);
        List<Substance> acting = dry.substances(reference).stream().filter(part -> !SILENT.contains(kind(part))).toList();
        if (dry.most(WATER) >= LEAST_WATER || !liquid || acting.isEmpty() || acting.stream().anyMatch(MixturePh::isLacking)) {
            return Optional.empty();
        }
        Map<String, MassShare> shares = new LinkedHashMap<>();
        acting.forEach(part -> shares.put(part.key(), dry.shares().get(part.key())));
        shares.put(WATER, shares.values().stream().reduce(MassShare.NONE, MassShare::plus).rest());
        return solved(new Composition(shares, Optional.empty(), Optional.empty(), List.of()), acting);
    }

    private static Kind kind(Substance part) {
        return part.acidity().map(Substance.Acidity::is).orElse(Kind.NOT_KNOWN);
    }

    /** Nothing is known of what it does to the pH, or it does something and its molar mass is not known. */
    private static boolean isLacking(Substance part) {
        return kind(part) == Kind.NOT_KNOWN || !SILENT.contains(kind(part)) && part.molarMass().isEmpty();
    }

    /** The pH between the ends that the shares leave open; empty where the equilibrium has no answer. */
    private Optional<Quantity> solved(Composition composition, List<Substance> acting) {
        Optional<Quantity> between = Optional.empty();
        if (acting.stream().filter(part -> composition.shares().get(part.key()).isRange()).count() > MOST_RANGES) {
            return between;
        }
        try {
            for (Map<String, Double> shares : ends(composition, acting)) {
                Quantity end = solved(shares, acting);
                between = Optional.of(between.map(one -> joined(one, end)).orElse(end));
            }
            return between;
        } catch (OutsideRange | NoConvergence beyond) {
            return Optional.empty();
        }
    }

    private static Quantity joined(Quantity one, Quantity other) {
        return Quantity.range(Math.min(one.low(), other.low()), Math.max(one.high(), other.high()), Unit.PH);
    }

    /** Every choice of the least and the most of each part and of the water. */
    private static List<Map<String, Double>> ends(Composition composition, List<Substance> acting) {
        List<String> keys = new ArrayList<>(acting.stream().map(Substance::key).toList());
        keys.add(WATER);
        List<Map<String, Double>> ends = new ArrayList<>(List.of(Map.of()));
        for (String key : keys) {
            boolean range = composition.shares().get(key).isRange();
            List<Map<String, Double>> more = new ArrayList<>();
            for (Map<String, Double> end : ends) {
                more.add(with(end, key, composition.most(key)));
                if (range) {
                    more.add(with(end, key, composition.least(key)));
                }
            }
            ends = more;
        }
        return ends;
    }

    private static Map<String, Double> with(Map<String, Double> shares, String key, double share) {
        Map<String, Double> more = new LinkedHashMap<>(shares);
        more.put(key, share);
        return more;
    }

    private static Quantity solved(Map<String, Double> shares, List<Substance> acting) {
        double water = Math.max(LEAST_WATER, shares.get(WATER));
        if (acting.size() == 1 && acting.get(0).key().equals(LIME)) {
            return lime(acting.get(0), shares.get(LIME), water);
        }
        return AcidBase.ph(acting.stream().flatMap(part -> dissolved(part, shares.get(part.key()), water).stream()).toList());
    }

    /** Limewater has an equilibrium of its own; what does not dissolve leaves it saturated. */
    private static Quantity lime(Substance lime, double share, double water) {
        Quantity full = LimeWater.saturated(ROOM).calcium();
        double amount = molality(lime, share, water);
        return amount >= full.low() ? lime.saturated().map(Substance.Saturated::ph)
                .orElseGet(() -> LimeWater.saturated(ROOM).ph())
                : LimeWater.ph(Quantity.of(amount, Unit.MOLE_PER_KILOGRAM), ROOM);
    }

    private static List<AcidBase.Dissolved> dissolved(Substance part, double share, double water) {
        Substance.Acidity acidity = part.acidity().orElseThrow();
        double dissolving = part.saturated().map(full -> Math.min(share,
                full.share().highIn(Unit.PERCENT_BY_MASS) / 100)).orElse(share);
        double amount = molality(part, dissolving, water);
        int protons = acidity.constants().size();
        AcidBase.Dissolved acid = new AcidBase.Dissolved(amount * acidity.acids(), 0, acidity.constants(), -protons);
        return switch (acidity.is()) {
            case STRONG_BASE -> List.of(new AcidBase.Dissolved(amount, acidity.per(), List.of(), 0));
            case STRONG_ACID -> List.of(new AcidBase.Dissolved(amount, -acidity.per(), List.of(), 0));
            case WEAK_BASE -> List.of(new AcidBase.Dissolved(amount, 0, acidity.constants(), 0));
            case SALT -> acidity.acids() == 1
                    ? List.of(new AcidBase.Dissolved(amount, acidity.per(), acidity.constants(), -protons))
                    : List.of(acid, new AcidBase.Dissolved(amount, acidity.per(), List.of(), 0));
            // In water an ammonium salt is the same as its acid with so much ammonia.
            case AMMONIUM_SALT -> List.of(acid, new AcidBase.Dissolved(amount * acidity.per(), 0, acidity.base(), 0));
            case WEAK_ACID -> List.of(acid);
            case NEUTRAL, NOT_EXTREME, NOT_KNOWN -> List.of();
        };
    }

    private static double molality(Substance part, double share, double water) {
        return share * 1000 / part.molarMass().orElseThrow().in(Unit.GRAM_PER_MOLE) / water;
    }
}
