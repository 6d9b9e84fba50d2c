package org.benchleaf.calculate;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.benchleaf.model.ReferenceTable;
import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.Decimal;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.science.EthanolWater;
import org.benchleaf.science.FlashPoint;
import org.benchleaf.science.MolarMass;
import org.benchleaf.science.OutsideRange;
import org.benchleaf.science.RoomAir;
import org.benchleaf.science.Solutions;
import org.benchleaf.science.Vapour;

/** Binds the names of the calculations about ethanol, solutions and vapour to their formulas. */
final class SolutionFormulas {

    private static final Clause SEPARATELY = Clause.of("Each is measured separately, then they are joined; the mixture may come"
            + " to less than the volumes together, and by how much is not known.");

    private final List<FlashPoint> flashPoints;
    private final Vapour.Limits ethanol;

    SolutionFormulas(ReferenceTable flashPoints, ReferenceTable limits) {
        this.flashPoints = flashPoints.rows().stream().map(SolutionFormulas::flashPoint).toList();
        this.ethanol = limits.rows().stream().filter(row -> row.get("liquid").equals("ethanol"))
                .map(SolutionFormulas::limits).findFirst().orElseThrow();
    }

    void bindTo(Map<String, Function<Args, Answers>> formulas) {
        formulas.put("ethanol-mixture", this::mixture);
        formulas.put("ethanol-blend", SolutionFormulas::blend);
        formulas.put("ethanol-density", SolutionFormulas::density);
        formulas.put("ethanol-weakening", SolutionFormulas::weakening);
        formulas.put("vapour", this::vapour);
        formulas.put("gas-in-room", args -> new Answers().number("rise",
                RoomAir.rise(args.one("volume"), args.one("room"))));
        formulas.put("room-peak", args -> new Answers().number("peak", RoomAir.peak(args.one("each"), args.list("starts"),
                args.one("over"), args.one("air-changes"))));
        formulas.put("dissolving", SolutionFormulas::dissolving);
        formulas.put("dilution", SolutionFormulas::dilution);
        formulas.put("parts", SolutionFormulas::parts);
        formulas.put("mixture", SolutionFormulas::shares);
        formulas.put("mass-and-volume", SolutionFormulas::massAndVolume);
    }

    private Answers mixture(Args args) {
        EthanolWater.Mixture mixture = EthanolWater.mixture(args.one("strength"), args.one("volume"),
                args.one("stock"), args.one("temperature"));
        Answers answers = new Answers().number("stock-volume", mixture.stockVolume())
                .number("water-volume", mixture.waterVolume()).number("stock-mass", mixture.stockMass())
                .number("water-mass", mixture.waterMass()).number("mass-fraction", mixture.massFraction())
                .number("density", mixture.density());
        belowFreezing(args.one("temperature"), answers);
        try {
            return answers.number("flash-point", FlashPoint.ofEthanolWater(args.one("strength"), flashPoints));
        } catch (OutsideRange outside) {
            return answers.withhold("flash-point", Clause.of("no flash point is published outside {range}", "range", outside.allowed()));
        }
    }

    private static Answers blend(Args args) {
        EthanolWater.Blend blend = EthanolWater.blend(args.one("first-volume"), args.one("first-strength"),
                args.one("second-volume"), args.one("second-strength"));
        return new Answers().number("volume", blend.volume()).number("strength", blend.strength())
                .number("mass-fraction", blend.massFraction()).number("contraction", blend.contraction());
    }

    private static Answers density(Args args) {
        Optional<Quantity> strength = args.optional("strength");
        Optional<Quantity> byMass = args.optional("mass-fraction");
        if (strength.isPresent() == byMass.isPresent()) {
            throw new NotAllowed(Refusal.missing("strength", Clause.of("either a strength or a mass-fraction, not both"),
                    "OIML R 22 (1975), general formula"));
        }
        Quantity share = byMass.orElseGet(() -> EthanolWater.massFraction(strength.orElseThrow()));
        Answers answers = new Answers().number("density", EthanolWater.density(share, args.one("temperature")))
                .number("mass-fraction", share)
                .number("strength", strength.orElseGet(() -> EthanolWater.strength(share)));
        return belowFreezing(args.one("temperature"), answers);
    }

    private static Answers weakening(Args args) {
        EthanolWater.Weakening weakening = EthanolWater.weakening(args.one("stock"), args.one("stock-volume"),
                args.one("strength"));
        return new Answers().number("water-volume", weakening.waterVolume()).number("volume", weakening.volume());
    }

    private Answers vapour(Args args) {
        Optional<Quantity> changes = args.optional("air-changes");
        Optional<Quantity> over = args.optional("over");
        if (changes.isPresent() != over.isPresent()) {
            throw new NotAllowed(Refusal.missing(changes.isPresent() ? "over" : "air-changes",
                    Clause.of("air changes and the time over which the liquid evaporates, both or neither"),
                    "balance of well-mixed air"));
        }
        Vapour.InRoom vapour = Vapour.ofEthanol(args.one("strength"), args.one("volume"), args.one("room"),
                changes.map(rate -> new Vapour.Airing(rate, over.orElseThrow())), args.one("temperature"), ethanol);
        Answers answers = new Answers().number("mass", vapour.mass())
                .number("concentration", vapour.concentration()).number("parts-per-million", vapour.partsPerMillion())
                .number("share-of-lower-limit", vapour.shareOfLowerLimit())
                .number("share-of-exposure-limit", vapour.shareOfExposureLimit());
        return beyondSaturation(args.one("temperature"), vapour.partsPerMillion(), answers);
    }

    private static Answers beyondSaturation(Quantity temperature, Quantity partsPerMillion, Answers answers) {
        if (temperature.in(Unit.CELSIUS) >= 4) {
            Quantity most = Vapour.ethanolSaturation(temperature);
            if (partsPerMillion.in(Unit.PPM) > most.in(Unit.PPM)) {
                answers.note(Clause.of("More than air can hold above pure ethanol at this temperature, {most}: the liquid would not"
                        + " all evaporate, and the air above it would be in the explosive range.",
                        "most", Math.round(most.value()) + " ppm"));
            }
        }
        return answers;
    }

    private static Answers dissolving(Args args) {
        Dimension kind = args.one("strength").dimension();
        Solutions.Dissolving dissolving = switch (kind) {
            case MASS_FRACTION -> Solutions.byMass(args.one("strength"), asked(args, "mass", "volume", kind));
            case AMOUNT_PER_VOLUME -> Solutions.byAmount(args.one("strength"), asked(args, "volume", "mass", kind),
                    args.optional("molar-mass").orElseThrow(() -> new NotAllowed(Refusal.missing("molar-mass",
                            Clause.of("a molar mass, such as {example}, for a strength in mol/L", "example", "74.09 g/mol"),
                            "definition of the amount of substance"))));
            default -> Solutions.byVolume(args.one("strength"), asked(args, "volume", "mass", kind));
        };
        return new Answers().number("mass", dissolving.mass()).number("solvent-mass", dissolving.solventMass(),
                Clause.of("a strength per volume is made up to its volume; the solvent for that is not weighed"));
    }

    private static Quantity asked(Args args, String needed, String other, Dimension kind) {
        boolean mass = needed.equals("mass");
        Clause need = Clause.of(mass ? "a mass of solution, for a strength that is {kind}"
                : "a volume of solution, for a strength that is {kind}", "kind", kind.clause());
        if (args.optional(other).isPresent()) {
            throw new NotAllowed(Refusal.notAllowed(other, Written.said(args.one(other)), need,
                    mass ? "without the density a volume says nothing about the solid"
                            : "without the density a mass says nothing about the solid"));
        }
        return args.optional(needed).orElseThrow(() -> new NotAllowed(Refusal.missing(needed, need,
                "definition of the strength")));
    }

    private static Answers dilution(Args args) {
        Solutions.Dilution dilution = Solutions.dilution(args.one("stock"), args.one("strength"), args.one("volume"));
        return new Answers().number("stock-volume", dilution.stockVolume()).number("diluent-volume",
                dilution.diluentVolume(), Clause.of("volumes of mixed liquids need not add up: make up to the volume, or use"
                        + " ethanol-mixture for ethanol and water"));
    }

    private static Answers parts(Args args) {
        List<Quantity> parts = args.list("parts");
        Quantity total = args.one("total");
        if (parts.size() < 2) {
            throw new NotAllowed(Refusal.notAllowed("parts", Written.numbers(parts),
                    Clause.of("at least 2 numbers"), "what the formula asks for"));
        }
        Answers answers = new Answers().number("first", Solutions.part(parts, 0, total))
                .number("second", Solutions.part(parts, 1, total))
                .number("part", Solutions.part(parts, which(args, parts), total));
        if (total.dimension() == Dimension.VOLUME) {
            return answers.withhold("mass-fraction", Clause.of("parts by volume say nothing of the mass")).note(SEPARATELY);
        }
        return answers.number("mass-fraction", Solutions.part(parts, 0, Quantity.of(100, Unit.PERCENT_BY_MASS)));
    }

    /** The place of the part that is asked for, from 0. */
    private static int which(Args args, List<Quantity> parts) {
        Quantity part = args.optional("part").orElse(Quantity.number(1));
        double which = part.value();
        if (which != Math.rint(which) || which < 1 || which > parts.size()) {
            throw new NotAllowed(Refusal.notAllowed("part", Written.said(part),
                    Clause.of("a whole number from 1 to {most}, the number of parts", "most", parts.size()), "what the formula asks for"));
        }
        return (int) which - 1;
    }

    private static Answers shares(Args args) {
        List<Quantity> shares = args.list("shares");
        List<Quantity> stocks = args.exactly(shares.size(), "stocks");
        Quantity total = args.one("total");
        Dimension kind = total.dimension() == Dimension.MASS ? Dimension.MASS_FRACTION : Dimension.VOLUME_FRACTION;
        for (Quantity share : Stream.concat(shares.stream(), stocks.stream()).toList()) {
            if (share.dimension() != kind) {
                throw new NotAllowed(Refusal.notAllowed("shares", Written.said(share), Clause.of("{kind}, with a total that is {other}",
                        "kind", kind.clause(), "other", total.dimension().clause()), "definition of the share"));
            }
        }
        Solutions.Mixture mixture = Solutions.mixture(shares, stocks, which(args, shares), total);
        Answers answers = new Answers().number("part", mixture.part()).number("rest", mixture.rest())
                .number("rest-share", mixture.restShare());
        return kind == Dimension.VOLUME_FRACTION ? answers.note(SEPARATELY) : answers;
    }

    private static Answers massAndVolume(Args args) {
        Solutions.MassAndVolume both = Solutions.byDensity(args.one("amount"), args.one("density"));
        return new Answers().number("mass", both.mass()).number("volume", both.volume());
    }

    private static Answers belowFreezing(Quantity temperature, Answers answers) {
        return temperature.lowIn(Unit.CELSIUS) < 0
                ? answers.note(Clause.of("Below 0 °C the formula holds only as long as the mixture stays liquid.")) : answers;
    }

    /** The table's strengths are read by volume here; {@link FlashPoint} also reads them by mass. */
    private static FlashPoint flashPoint(Map<String, String> row) {
        return new FlashPoint(number(row, "strength", Unit.PERCENT_BY_VOLUME), number(row, "flash point", Unit.CELSIUS),
                number(row, "lowest published", Unit.CELSIUS));
    }

    private static Vapour.Limits limits(Map<String, String> row) {
        double usual = Decimal.number(row.get("lower limit"));
        double lowest = Decimal.number(row.get("lowest published lower limit"));
        return new Vapour.Limits(MolarMass.ETHANOL.value(),
                Quantity.between(lowest, usual, usual, Unit.PERCENT_BY_VOLUME), number(row, "exposure limit", Unit.PPM));
    }

    private static Quantity number(Map<String, String> row, String column, Unit unit) {
        return Quantity.of(Decimal.number(row.get(column)), unit);
    }
}
