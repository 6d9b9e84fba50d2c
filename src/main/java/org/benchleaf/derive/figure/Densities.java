package org.benchleaf.derive.figure;

import java.util.List;
import java.util.Optional;
import org.benchleaf.calculate.Inputs;
import org.benchleaf.calculate.Outcome;
import org.benchleaf.model.Material;
import org.benchleaf.model.Substance;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Densities of what is poured, at 20 °C: from the table of substances, and for ethanol with water from its formula. */
public final class Densities {

    private final Bench bench;
    private final Strengths strengths;

    /**
     * A density, or why there is none.
     *
     * @param value empty where it is not known
     * @param source key of its source, or of that of the row it stands in
     * @param why there is none, as the end of a sentence; empty where there is one
     */
    public record Density(Optional<Quantity> value, Optional<String> source, String why) {

        static Density none(String why) {
            return new Density(Optional.empty(), Optional.empty(), why);
        }
    }

    public Densities(Bench bench, Strengths strengths) {
        this.bench = bench;
        this.strengths = strengths;
    }

    /** The density of a material or solution. */
    public Density of(String id) {
        if (strengths.isEthanol(id)) {
            return ofEthanol(id);
        }
        if (bench.source().solution(id).isPresent()) {
            return none("the density of a solution made here, '{id}', is in no table", "id", id);
        }
        return bench.material(id).map(this::ofMaterial)
                .orElseGet(() -> none("nothing is known of '{id}'", "id", id));
    }

    private Density ofEthanol(String id) {
        Optional<Quantity> strength = strengths.of(id);
        if (strength.isEmpty()) {
            return none("the strength of '{id}' is not written", "id", id);
        }
        String key = strength.get().dimension() == Dimension.MASS_FRACTION ? "mass-fraction" : "strength";
        Outcome outcome = bench.ledger().outcome("ethanol-density", Inputs.none()
                .with(key, strength.get(), Job.MATERIAL).with("temperature", bench.constant("volumes-meant-at").value(), Job.USUAL));
        return outcome instanceof Outcome.Worked worked
                ? new Density(Optional.of(worked.numbers().get("density")), Optional.of("oiml-r22"), "")
                : none("the formula of ethanol and water does not reach the strength of '{id}'", "id", id);
    }

    private Density ofMaterial(Material material) {
        Optional<Substance> row = material.substance()
                .map(bench.library().reference().substances()::get);
        if (row.isEmpty()) {
            return none("'{id}' names no row of the table of substances", "id", material.id());
        }
        if (material.strength().filter(one -> !isPure(one)).isPresent()) {
            return none("the table of substances has the density of pure {substance}, and not of '{id}'",
                    "substance", row.get().name(), "id", material.id());
        }
        return row.get().density().map(density -> new Density(Optional.of(density.value()), Optional.of(density.source()), ""))
                .orElseGet(() -> none("the table of substances has no density of {substance}", "substance", row.get().name()));
    }

    private Density none(String why, Object... holes) {
        return Density.none(bench.say(why, holes));
    }

    private boolean isPure(Quantity strength) {
        double share = bench.constant("pure-liquid").value().in(Unit.PERCENT);
        return strength.dimension() == Dimension.MASS_FRACTION && strength.lowIn(Unit.PERCENT_BY_MASS) >= share
                || strength.dimension() == Dimension.VOLUME_FRACTION && strength.lowIn(Unit.PERCENT_BY_VOLUME) >= share;
    }

    /** The density of the heaviest of several; with the reason why not where one is not known. */
    public Density ofHeaviest(List<String> ids) {
        Density heaviest = none("nothing is mixed");
        for (String id : ids) {
            Density next = of(id);
            if (next.value().isEmpty()) {
                return next;
            }
            boolean heavier = heaviest.value().map(one -> next.value().get().highIn(Unit.KILOGRAM_PER_CUBIC_METRE)
                    > one.highIn(Unit.KILOGRAM_PER_CUBIC_METRE)).orElse(true);
            heaviest = heavier ? next : heaviest;
        }
        return heaviest;
    }
}
