package org.benchleaf.derive;

import java.util.List;
import java.util.Optional;
import org.benchleaf.model.Material;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Adds up what leaves the shelf: one total for each bought material that the case uses up. */
final class Totals {

    private Totals() {
    }

    static void work(Bench bench) {
        bench.uses().ids().stream().filter(id -> bench.source().solution(id).isEmpty())
                .forEach(id -> total(bench, id));
    }

    private static void total(Bench bench, String id) {
        List<Uses.Use> uses = bench.uses().of(id);
        boolean water = bench.material(id).flatMap(Material::substance).filter("water"::equals).isPresent();
        boolean mixed = uses.stream().map(use -> use.figure().value().dimension()).distinct().count() > 1;
        if (mixed && water) {
            put(bench, "total." + id, id, uses, Optional.of(Dimension.VOLUME),
                    "One gram of water is taken as one millilitre.");
            return;
        }
        List<Dimension> kinds = uses.stream().map(use -> use.figure().value().dimension()).distinct().toList();
        for (int i = 0; i < kinds.size(); i++) {
            Dimension kind = kinds.get(i);
            String name = "total." + id + (i == 0 ? "" : kind == Dimension.MASS ? "-mass" : "-volume");
            put(bench, name, id, uses.stream().filter(use -> use.figure().value().dimension() == kind).toList(),
                    Optional.empty());
        }
    }

    private static void put(Bench bench, String name, String id, List<Uses.Use> uses, Optional<Dimension> as,
            String... notes) {
        List<Quantity> amounts = uses.stream().map(use -> Amounts.times(
                as.isPresent() ? millilitres(use.figure().value()) : use.figure().value(), use.times())).toList();
        Quantity sum = Amounts.sum(amounts);
        if (sum.dimension() == Dimension.COUNT) {
            sum = Quantity.count((long) Math.ceil(sum.high() - 1e-9));
        }
        String label = bench.material(id).map(Material::name).orElse(id) + ", in all";
        bench.ledger().put(name, label, Amounts.readable(sum), "sum",
                uses.stream().map(Preparations::given).toList(), notes);
    }

    private static Quantity millilitres(Quantity amount) {
        if (amount.dimension() == Dimension.VOLUME) {
            return amount.to(Unit.MILLILITRE);
        }
        Quantity grams = amount.to(Unit.GRAM);
        return new Quantity(grams.value(), grams.low(), grams.high(), Unit.MILLILITRE, grams.spread());
    }
}
