package org.benchleaf.derive.hazard;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.benchleaf.derive.figure.ThingName;
import org.benchleaf.model.Material;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Substance;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.science.EthanolWater;
import org.benchleaf.science.OutsideRange;

/** Works out what the studio's materials are made of as they are sold. */
final class BoughtMaterials {

    /** The lightest liquid that the trade dissolves solids in, g/mL: a share by mass worked out with it is on the large side. */
    static final double LIGHTEST = 0.785;
    private static final String WATER = "water";

    /** What is sold at this share counts as the pure substance: the rest is no part on its own; common practice. */
    private static final double PURE = 0.98;

    /** Shorter names, such as SDS, stand for other things too. */
    private static final int LEAST_NAME = 4;
    /** Shorter names are parts of others, such as the ether of a cellulose ether. */
    private static final int LEAST_OTHER_NAME = 6;
    private static final Pattern BETWEEN_WORDS = Pattern.compile("[^\\p{L}\\p{N}]++");

    private final Reference reference;
    private final UnknownWords unknown;

    BoughtMaterials(Reference reference) {
        this.reference = reference;
        this.unknown = new UnknownWords(reference);
    }

    /** What a material is made of, by its substance and its strength as it is sold. */
    Composition of(Material material) {
        Optional<Substance> row = material.substance().map(reference.substances()::get);
        Optional<Hazards.Unknown> held = heldBy(material);
        if (held.isPresent()) {
            return Composition.unknown(held.get());
        }
        if (row.isEmpty()) {
            return Composition.unknown(material.substance().map(key -> unknown.substance(material.name(), key))
                    .orElseGet(() -> unknown.part(material.name()))).with(material.ph(), Optional.empty());
        }
        // A solution sold without its strength is taken as the table has it, which is the strongest.
        MassShare share = material.strength().map(strength -> share(row.get(), strength)).orElse(MassShare.WHOLE);
        Map<String, MassShare> shares = new LinkedHashMap<>();
        shares.put(row.get().key(), share);
        Optional<String> rest = restOf(material, row.get());
        if (share.least() < 1) {
            rest.ifPresent(key -> shares.merge(key, share.rest(), MassShare::plus));
        }
        Optional<Composition.Spirit> spirit = spirit(row.get(), byVolumeOrPure(material.strength()));
        Composition bought = otherThan(material, shares.keySet())
                .map(other -> unknown.named(material.name(), other.within()))
                .map(new Composition(shares, material.ph(), spirit, List.of())::lacking)
                .orElse(new Composition(shares, material.ph(), spirit, List.of()));
        if (rest.filter(key -> !reference.substances().containsKey(key)).isPresent()) {
            return bought.lacking(unknown.substance(material.name(), rest.get()));
        }
        return share.least() < PURE && rest.isEmpty() ? bought.lacking(unknown.restOf(material.name(), row.get().name())) : bought;
    }

    /** The rest of what is sold impure: as the author says, else water for what is usually sold in water. */
    private static Optional<String> restOf(Material material, Substance substance) {
        return material.rest().or(() -> substance.suppliedInWater() || substance.key().equals("ethanol")
                ? Optional.of(WATER) : Optional.empty());
    }

    /** Whether it is asked what a material can do: it is no thing, or a thing whose name speaks of a substance. */
    boolean isAsked(Material material) {
        return material.isChemical() || heldBy(material).isPresent();
    }

    /** What a thing may hold by its name, though its kind says that it holds nothing. */
    private Optional<Hazards.Unknown> heldBy(Material material) {
        return namedFor(material).map(named -> unknown.thing(material.name(), named.within()))
                .or(() -> material.isChemical() ? Optional.empty() : heldBy(material, new ThingName(material, reference.things())));
    }

    private Optional<Hazards.Unknown> heldBy(Material material, ThingName name) {
        Optional<Hazards.Unknown> holding = name.holding().map(word -> unknown.soaked(material.name(), word));
        return holding.isEmpty() && name.isUnfamiliar() ? Optional.of(unknown.unfamiliar(material.name())) : holding;
    }

    /** The substance with a hazard that a thing is named for, such as a swab of acetone: its kind says that it holds none. */
    private Optional<Substance> namedFor(Material material) {
        String name = plain(material.id() + " " + material.name());
        return material.isChemical() ? Optional.empty() : reference.substances().values().stream()
                .filter(row -> row.hazards() != Substance.Answer.NONE
                        && names(row).anyMatch(word -> word.length() >= LEAST_NAME && name.contains(plain(word))))
                .findFirst();
    }

    /** The substance with a hazard that a name speaks of, though the material is made of others. */
    private Optional<Substance> otherThan(Material material, Set<String> made) {
        String name = made.stream().map(reference.substances()::get).filter(Objects::nonNull).flatMap(BoughtMaterials::names)
                .map(BoughtMaterials::plain).sorted(Comparator.comparing(String::length).reversed())
                .reduce(plain(material.id() + " " + material.name()), (left, own) -> left.replace(own, " ; "));
        return reference.substances().values().stream().filter(row -> row.hazards() != Substance.Answer.NONE && !made.contains(row.key()))
                .filter(row -> names(row).filter(word -> word.length() >= LEAST_OTHER_NAME).map(BoughtMaterials::plain)
                        .anyMatch(word -> name.contains(word) && !name.contains("yl" + word))).findFirst();
    }

    private static Stream<String> names(Substance row) {
        return Stream.concat(Stream.of(row.key(), row.name()), row.synonyms().stream());
    }

    /** The words of a name, each with a space before and after it. */
    private static String plain(String name) {
        return " " + BETWEEN_WORDS.matcher(name.toLowerCase(Locale.ROOT)).replaceAll(" ").strip() + " ";
    }

    /** Vapour that burns comes from what has a flash point or is classified by one. */
    static Optional<Composition.Spirit> spirit(Substance substance, Quantity strength) {
        boolean burns = substance.fire().isPresent()
                || substance.classes().stream().anyMatch(one -> one.name().startsWith("Flam. Liq."));
        return burns ? Optional.of(new Composition.Spirit(substance.key(), strength)) : Optional.empty();
    }

    /** A strength stated in another way counts as the pure liquid, which is the careful side. */
    static Quantity byVolumeOrPure(Optional<Quantity> strength) {
        return strength.filter(one -> one.dimension() == Dimension.VOLUME_FRACTION)
                .orElse(Quantity.of(100, Unit.PERCENT_BY_VOLUME));
    }

    /** The share by mass that a strength means; of a bare per cent, whose kind is not known, all that it can mean. */
    static MassShare share(Substance substance, Quantity strength) {
        if (strength.dimension() == Dimension.SHARE) {
            List<MassShare> meant = Stream.of(Unit.PERCENT_BY_MASS, Unit.PERCENT_BY_VOLUME, Unit.PERCENT_MASS_BY_VOLUME)
                    .map(unit -> share(substance, Quantity.range(strength.low() * strength.unit().factor() * 100,
                            strength.high() * strength.unit().factor() * 100, unit))).toList();
            return new MassShare(meant.stream().mapToDouble(MassShare::least).min().orElseThrow(),
                    meant.stream().mapToDouble(MassShare::most).max().orElseThrow());
        }
        Quantity usual = strength.to(Unit.usual(strength.dimension()));
        return new MassShare(share(substance, strength.dimension(), usual.low()),
                share(substance, strength.dimension(), usual.high()));
    }

    private static double share(Substance substance, Dimension counted, double strength) {
        Quantity one = Quantity.of(strength, Unit.usual(counted));
        return switch (counted) {
            case MASS_FRACTION -> one.in(Unit.PERCENT_BY_MASS) / 100;
            case MASS_PER_VOLUME -> one.in(Unit.GRAM_PER_LITRE) / 1000 / LIGHTEST;
            case AMOUNT_PER_VOLUME -> substance.molarMass().map(mass -> one.in(Unit.MOLE_PER_LITRE)
                    * mass.in(Unit.GRAM_PER_MOLE) / 1000 / LIGHTEST).orElse(1.0);
            case VOLUME_FRACTION -> byVolume(substance, one);
            default -> 1;
        };
    }

    private static double byVolume(Substance substance, Quantity strength) {
        if (substance.key().equals("ethanol")) {
            try {
                return EthanolWater.massFraction(strength).in(Unit.PERCENT_BY_MASS) / 100;
            } catch (OutsideRange impossible) {
                return 1;
            }
        }
        return strength.in(Unit.PERCENT_BY_VOLUME) / 100;
    }
}
