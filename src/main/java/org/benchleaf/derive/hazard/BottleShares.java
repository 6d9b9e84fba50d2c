package org.benchleaf.derive.hazard;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Substance;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.science.EthanolWater;

/**
 * Turns what was written about a bottle into shares by mass, the smallest and the largest that each part can have. Shares by volume take
 * densities and are added up as if nothing shrank, but for ethanol and water, which have their table.
 */
final class BottleShares {

    /** The lightest liquid of the trade, g/mL: with it a share by mass comes out on the large side. */
    private static final double LIGHTEST = 0.626;
    private static final double WHOLE = 100;
    private static final String ETHANOL = "ethanol";
    private static final String WATER = "water";

    private final List<BottleLine.Item> items;
    private final List<Optional<Substance>> rows;
    private final Reference reference;
    private final UnknownWords words;
    private final Map<String, MassShare> shares = new LinkedHashMap<>();
    private final List<Hazards.Unknown> unknown = new ArrayList<>();
    private Optional<Composition.Spirit> spirit = Optional.empty();

    BottleShares(Reference reference, List<BottleLine.Item> items) {
        this.items = items;
        this.reference = reference;
        this.words = new UnknownWords(reference);
        this.rows = items.stream().map(item -> reference.substanceCalled(item.name())).toList();
        if (items.size() == 1 && items.get(0).kind() != BottleLine.Kind.MASS) {
            alone(items.get(0));
        } else if (items.stream().allMatch(item -> item.kind().name().startsWith("PARTS"))) {
            parts();
        } else if (isEthanolWater()) {
            ethanolWater();
        } else {
            mixed();
        }
    }

    /** Shares by mass, by the key of the substance or the name as written where the table has none. */
    Map<String, MassShare> shares() {
        return shares;
    }

    List<Hazards.Unknown> unknown() {
        return unknown;
    }

    /** The strength by volume of ethanol in water, where it was written so. */
    Optional<Composition.Spirit> spirit() {
        return spirit;
    }

    private void put(int i, MassShare share) {
        shares.merge(rows.get(i).map(Substance::key).orElse(items.get(i).name()), share, MassShare::plus);
    }

    private void alone(BottleLine.Item item) {
        put(0, MassShare.WHOLE);
        boolean stated = item.kind() == BottleLine.Kind.PURE || item.kind() == BottleLine.Kind.REST;
        if (!stated) {
            unknown.add(words.of("composition", "rest-unknown", "share", "the rest"));
        } else if (rows.get(0).filter(Substance::suppliedInWater).isPresent()) {
            unknown.add(words.of("composition", "strength-unknown", "part", item.name()));
        }
    }

    private void parts() {
        double[] byMass = fractions(i -> items.get(i).high());
        double[] byVolume = fractions(i -> items.get(i).high() * density(i).orElse(1.0));
        for (int i = 0; i < items.size(); i++) {
            switch (items.get(i).kind()) {
                case PARTS_BY_MASS -> put(i, MassShare.of(byMass[i]));
                case PARTS_BY_VOLUME -> put(i, MassShare.of(byVolume[i]));
                // Nobody said parts of what: the larger share counts.
                default -> put(i, new MassShare(Math.min(byMass[i], byVolume[i]), Math.max(byMass[i], byVolume[i])));
            }
            if (items.get(i).kind() != BottleLine.Kind.PARTS_BY_MASS) {
                tellDensity(i);
            }
        }
    }

    private double[] fractions(ToDoubleFunction<Integer> amount) {
        double[] amounts = new double[items.size()];
        double sum = 0;
        for (int i = 0; i < amounts.length; i++) {
            amounts[i] = amount.applyAsDouble(i);
            sum += amounts[i];
        }
        for (int i = 0; i < amounts.length; i++) {
            amounts[i] = sum > 0 ? amounts[i] / sum : 0;
        }
        return amounts;
    }

    private boolean isEthanolWater() {
        return items.size() == 2 && items.get(0).kind() == BottleLine.Kind.VOLUME && is(0, ETHANOL) && is(1, WATER)
                && (items.get(1).kind() == BottleLine.Kind.REST || items.get(1).kind() == BottleLine.Kind.VOLUME
                && items.get(0).high() + items.get(1).high() >= WHOLE);
    }

    private boolean is(int i, String key) {
        return rows.get(i).map(Substance::key).filter(key::equals).isPresent();
    }

    private void ethanolWater() {
        MassShare ethanol = new MassShare(ethanolByMass(items.get(0).low()), ethanolByMass(items.get(0).high()));
        put(0, ethanol);
        put(1, ethanol.rest());
        spirit = Optional.of(new Composition.Spirit(ETHANOL,
                Quantity.of(Math.min(WHOLE, items.get(0).high()), Unit.PERCENT_BY_VOLUME)));
    }

    private static double ethanolByMass(double percent) {
        return EthanolWater.massFraction(Quantity.of(Math.min(WHOLE, percent), Unit.PERCENT_BY_VOLUME))
                .in(Unit.PERCENT_BY_MASS) / WHOLE;
    }

    private void mixed() {
        MassShare named = MassShare.NONE;
        int rest = -1;
        for (int i = 0; i < items.size(); i++) {
            if (items.get(i).kind() == BottleLine.Kind.REST) {
                rest = i;
            } else {
                MassShare share = new MassShare(share(i, items.get(i).low(), true), share(i, items.get(i).high(), false));
                named = named.plus(share);
                put(i, share);
            }
        }
        if (rest >= 0) {
            put(rest, named.rest());
        } else if (mostOfAll() < 1 - 1e-6) {
            unknown.add(words.of("composition", "rest-unknown", "share", MassShare.of(1 - mostOfAll()).words(reference)));
        }
    }

    private double mostOfAll() {
        return shares.values().stream().mapToDouble(MassShare::most).sum();
    }

    /** The share of a part of this amount; the least of it where the others are taken at their most. */
    private double share(int i, double amount, boolean least) {
        return switch (items.get(i).kind()) {
            case VOLUME -> {
                tellDensity(i);
                double heavy = density(i).orElse(1.0) * amount;
                yield heavy == 0 ? 0 : heavy / (heavy + others(i, amount, least));
            }
            case PER_VOLUME -> amount / 1000 / mixtureDensity(i);
            case AMOUNT_PER_VOLUME -> amount * molarMass(i) / 1000 / mixtureDensity(i);
            default -> amount / WHOLE;
        };
    }

    /** What fills the rest of a hundred volumes, by mass: the other parts where they are by volume, and the rest. */
    private double others(int i, double amount, boolean most) {
        double mass = 0;
        double left = WHOLE - amount;
        for (int other = 0; other < items.size(); other++) {
            if (other != i && items.get(other).kind() == BottleLine.Kind.VOLUME) {
                double volume = Math.min(left, most ? items.get(other).high() : items.get(other).low());
                mass += volume * density(other).orElse(1.0);
                left -= volume;
            }
        }
        return mass + Math.max(0, left) * restDensity();
    }

    private double restDensity() {
        for (int i = 0; i < items.size(); i++) {
            if (items.get(i).kind() == BottleLine.Kind.REST) {
                return density(i).orElse(LIGHTEST);
            }
        }
        return LIGHTEST;
    }

    /** A litre of the mixture weighs about what a litre of its rest weighs; little else is dissolved in it. */
    private double mixtureDensity(int i) {
        tellRestDensity(i);
        return restDensity();
    }

    private double molarMass(int i) {
        Optional<Quantity> mass = rows.get(i).flatMap(Substance::molarMass);
        if (mass.isEmpty()) {
            unknown.add(words.of("composition", "molar-mass-unknown", "part", items.get(i).name()));
        }
        return mass.map(one -> one.in(Unit.GRAM_PER_MOLE)).orElse(1000.0);
    }

    /** g/mL. */
    private Optional<Double> density(int i) {
        return rows.get(i).flatMap(Substance::density)
                .map(one -> one.value().in(Unit.KILOGRAM_PER_CUBIC_METRE) / 1000);
    }

    private void tellDensity(int i) {
        if (rows.get(i).isPresent() && density(i).isEmpty()) {
            lack("density-unknown", items.get(i).name());
        }
    }

    private void tellRestDensity(int i) {
        for (int rest = 0; rest < items.size(); rest++) {
            if (items.get(rest).kind() == BottleLine.Kind.REST) {
                tellDensity(rest);
                return;
            }
        }
        lack("mixture-density-unknown", items.get(i).name());
    }

    private void lack(String key, String part) {
        Hazards.Unknown lacking = words.of("composition", key, "part", part);
        if (!unknown.contains(lacking)) {
            unknown.add(lacking);
        }
    }
}
