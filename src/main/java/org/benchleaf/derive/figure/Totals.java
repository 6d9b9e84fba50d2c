package org.benchleaf.derive.figure;

import java.util.List;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.model.Material;
import org.benchleaf.quantity.Dimension;

/** Adds up what leaves the shelf: one total for each bought material that the case uses up. */
public final class Totals {

    private Totals() {
    }

    public static void work(Bench bench) {
        bench.uses().ids().stream().filter(id -> bench.source().solution(id).isEmpty())
                .forEach(id -> total(bench, id));
    }

    private static void total(Bench bench, String id) {
        List<Uses.Use> uses = bench.uses().of(id);
        boolean water = bench.material(id).flatMap(Material::substance).filter("water"::equals).isPresent();
        List<Dimension> kinds = uses.stream().map(use -> use.figure().value().dimension()).distinct().toList();
        if (kinds.size() > 1 && water) {
            put(bench, FigureKey.ofTotal(id, ""), uses, true);
            return;
        }
        for (int i = 0; i < kinds.size(); i++) {
            Dimension kind = kinds.get(i);
            FigureKey key = FigureKey.ofTotal(id, i == 0 ? "" : kind == Dimension.MASS ? "mass" : "volume");
            put(bench, key, uses.stream().filter(use -> use.figure().value().dimension() == kind).toList(), false);
        }
    }

    private static void put(Bench bench, FigureKey key, List<Uses.Use> uses, boolean asVolume) {
        String label = bench.say("{what}, in all", "what", bench.material(key.of()).map(Material::name).map(bench::say).orElse(key.of()));
        Job job = Uses.sum(uses, bench.source().place()).gives("total", key, label).readable();
        if (asVolume) {
            job.word("as", "volume", Job.USUAL).given("density", bench.waterDensity(), Job.USUAL);
        }
        bench.ledger().work(job);
    }
}
