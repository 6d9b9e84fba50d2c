package org.benchleaf.derive.figure;

import java.util.Optional;
import org.benchleaf.calculate.Inputs;
import org.benchleaf.model.Material;
import org.benchleaf.model.Recipe;
import org.benchleaf.model.Solution;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** How strong a solution or material is, where that follows from the recipe alone. */
public final class Strengths implements Recipe.Kinds<Optional<Quantity>> {

    private final Bench bench;

    public Strengths(Bench bench) {
        this.bench = bench;
    }

    public Optional<Quantity> of(String id) {
        return bench.source().solution(id).map(solution -> solution.recipe().ask(this))
                .orElseGet(() -> bench.material(id).flatMap(Material::strength));
    }

    /** How much of a liquid is in a stock; the strength of the stock where it has only one. */
    public Optional<Quantity> of(String id, String liquid) {
        return bench.source().solution(id).map(Solution::recipe).filter(Recipe.Mix.class::isInstance)
                .flatMap(mix -> ((Recipe.Mix) mix).shares().stream().filter(share -> share.liquid().equals(liquid))
                        .findFirst().map(Recipe.Share::strength)).or(() -> of(id));
    }

    /** The same for an amount to measure out: what stands on a bottle is known to its last digit. */
    Optional<Quantity> asRead(String id, String liquid) {
        boolean made = bench.source().solution(id).isPresent();
        return of(id, liquid).map(strength -> made ? strength : strength.asRead());
    }

    /** Whether a stock is ethanol and water, for which volumes must be worked out by mass. */
    boolean isEthanol(String id) {
        boolean bought = bench.material(id).flatMap(Material::substance).filter("ethanol"::equals).isPresent();
        return bought || bench.source().solution(id).map(Solution::recipe).filter(Recipe.Mix.class::isInstance)
                .map(mix -> isEthanolAndWater((Recipe.Mix) mix)).orElse(false);
    }

    /** Whether a mixture is of ethanol and water alone. */
    public boolean isEthanolAndWater(Recipe.Mix mix) {
        return mix.shares().size() == 1 && !mix.shares().get(0).asItIs() && isWater(mix.rest())
                && isEthanol(mix.shares().get(0).from());
    }

    boolean isWater(String id) {
        return bench.material(id).flatMap(Material::substance).filter("water"::equals).isPresent();
    }

    /** Whether ethanol, or ethanol and water, is thinned with water. */
    public boolean isEthanolInWater(Recipe.Dilute dilute) {
        return isWater(dilute.with()) && isEthanol(dilute.stock());
    }

    /** Whether liquids are measured by volume one by one and joined, so that less than their sum may come out. */
    public boolean mayShrink(Recipe recipe) {
        return recipe instanceof Recipe.Mix mix && !mix.byMass() && !isEthanolAndWater(mix)
                || recipe instanceof Recipe.Parts parts && !parts.byMass()
                || recipe instanceof Recipe.Dilute dilute && !isEthanolInWater(dilute)
                        && dilute.strength().filter(one -> one.dimension() == Dimension.VOLUME_FRACTION).isPresent();
    }

    @Override
    public Optional<Quantity> mix(Recipe.Mix recipe) {
        return recipe.shares().size() == 1 ? Optional.of(recipe.shares().get(0).strength()) : Optional.empty();
    }

    @Override
    public Optional<Quantity> dissolve(Recipe.Dissolve recipe) {
        return Optional.of(recipe.strength());
    }

    @Override
    public Optional<Quantity> dilute(Recipe.Dilute recipe) {
        return recipe.strength().or(() -> recipe.oneIn().flatMap(parts -> of(recipe.stock())
                .flatMap(stock -> bench.ledger().value("one-in", Inputs.none().with("one-in", parts, Job.CASE_FILE)
                        .with("volume", Quantity.of(1, Unit.LITRE), Job.USUAL).with("stock", stock, Job.MATERIAL),
                        "strength"))));
    }

    @Override
    public Optional<Quantity> saturate(Recipe.Saturate recipe) {
        return Optional.empty();
    }

    @Override
    public Optional<Quantity> adjust(Recipe.Adjust recipe) {
        return Optional.empty();
    }

    @Override
    public Optional<Quantity> untold(Recipe.Untold recipe) {
        return Optional.empty();
    }

    @Override
    public Optional<Quantity> parts(Recipe.Parts recipe) {
        return recipe.byMass() && recipe.portions().size() == 2
                ? bench.ledger().value("parts", Inputs.none().with("parts", recipe.portions().stream()
                        .map(portion -> Quantity.number(portion.parts())).toList(), Job.CASE_FILE)
                        .with("total", Quantity.of(1, Unit.GRAM), Job.USUAL), "mass-fraction") : Optional.empty();
    }
}
