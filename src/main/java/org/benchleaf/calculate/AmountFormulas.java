package org.benchleaf.calculate;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.science.Batches;
import org.benchleaf.science.Provision;
import org.benchleaf.science.Solutions;
import org.benchleaf.science.SoundLevel;

/** Binds the names of the calculations about amounts used and made to their formulas. */
final class AmountFormulas {

    private AmountFormulas() {
    }

    static void bindTo(Map<String, Function<Args, Answers>> formulas) {
        formulas.put("sum", AmountFormulas::sum);
        formulas.put("batch", AmountFormulas::batch);
        formulas.put("one-in", AmountFormulas::oneIn);
        formulas.put("pieces", args -> new Answers().number("total", Provision.pieces(args.one("each"), args.one("users"),
                args.one("spare"), args.one("extra"))));
        formulas.put("sound-sum", args -> new Answers().number("level", SoundLevel.sum(args.list("levels"), times(args, "levels"))));
        formulas.put("containers", AmountFormulas::containers);
        formulas.put("bench-places", args -> new Answers().number("places",
                Provision.benchPlaces(args.one("there"), args.one("each"))));
        formulas.put("packs", AmountFormulas::packs);
    }

    private static Answers batch(Args args) {
        Optional<Quantity> first = args.optional("needed").or(() -> args.optional("least"));
        for (String key : List.of("least", "step")) {
            args.optional(key).filter(amount -> amount.dimension() != first.orElse(amount).dimension()).ifPresent(other -> {
                throw new NotAllowed(Refusal.notAllowed(key, Written.said(other), Clause.of(
                        "{kind}, as what is needed", "kind", first.get().dimension().clause()), "amounts of one batch are of one kind"));
            });
        }
        return new Answers().number("batch", Batches.batch(args.optional("needed"), args.one("batches"),
                args.one("shrinking"), args.optional("least"), args.optional("step")));
    }

    private static Answers sum(Args args) {
        List<Quantity> amounts = args.list("amounts").stream().map(amount -> asWanted(amount, args)).toList();
        return new Answers().number("total", Batches.sum(amounts, times(args, "amounts")));
    }

    /** How often each counts; once where it is not told. */
    private static List<Quantity> times(Args args, String of) {
        return args.has("times") ? args.list("times") : args.list(of).stream().map(any -> Quantity.number(1)).toList();
    }

    private static Quantity asWanted(Quantity amount, Args args) {
        Dimension dimension = amount.dimension();
        Optional<Dimension> wanted = args.has("as") ? Optional.of(args.word("as").equals("mass") ? Dimension.MASS
                : Dimension.VOLUME) : Optional.empty();
        if (wanted.isEmpty() || wanted.get() == dimension) {
            return amount;
        }
        if (dimension != Dimension.MASS && dimension != Dimension.VOLUME) {
            throw new NotAllowed(Refusal.notAllowed("amounts", Written.said(amount), Clause.of("a mass or a volume"),
                    "an amount is a mass or a volume"));
        }
        Quantity density = args.optional("density").orElseThrow(() -> new NotAllowed(Refusal.missing("density",
                Clause.of("the density that turns {kind} into {other}", "kind", dimension.clause(), "other", wanted.get().clause()),
                "a density that is there")));
        Solutions.MassAndVolume both = Solutions.byDensity(amount, density);
        return wanted.get() == Dimension.MASS ? both.mass() : both.volume();
    }

    private static Answers containers(Args args) {
        Provision.Containers made = Provision.containers(args.one("volume"), args.one("holds"), args.one("full"));
        return new Answers().number("count", made.count()).number("each", made.each());
    }

    private static Answers packs(Args args) {
        Provision.Order order = Provision.order(args.one("needed"), args.one("stock"), args.one("pack"));
        return new Answers().number("missing", order.missing()).number("packs", order.packs()).number("left", order.left());
    }

    private static Answers oneIn(Args args) {
        Batches.OnePart parts = Batches.oneIn(args.one("one-in"), args.one("volume"));
        return new Answers().number("stock-volume", parts.stock()).number("diluent-volume", parts.diluent())
                .number("strength", args.optional("stock").map(stock -> Batches.weakened(stock, args.one("one-in"))),
                        Clause.of("the strength of the stock was not given"));
    }
}
