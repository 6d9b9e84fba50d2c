package org.benchleaf.derive;

import java.util.Optional;
import org.benchleaf.model.Material;
import org.benchleaf.model.Recipe;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** How strong a solution or material is, where that can be said without working anything out. */
final class Strengths implements Recipe.Kinds<Optional<Quantity>> {

    private final Bench bench;

    Strengths(Bench bench) {
        this.bench = bench;
    }

    Optional<Quantity> of(String id) {
        return bench.source().solution(id).map(solution -> solution.recipe().ask(this))
                .orElseGet(() -> bench.material(id).flatMap(Material::strength));
    }

    /** Whether a stock is ethanol and water, for which volumes must be worked out by mass. */
    boolean isEthanol(String id) {
        boolean bought = bench.material(id).flatMap(Material::substance).filter("ethanol"::equals).isPresent();
        return bought || bench.source().solution(id).filter(solution -> solution.recipe() instanceof Recipe.Mix)
                .map(solution -> isEthanol(((Recipe.Mix) solution.recipe()).from())).orElse(false);
    }

    @Override
    public Optional<Quantity> mix(Recipe.Mix recipe) {
        return Optional.of(recipe.strength());
    }

    @Override
    public Optional<Quantity> dissolve(Recipe.Dissolve recipe) {
        return Optional.of(recipe.strength());
    }

    @Override
    public Optional<Quantity> dilute(Recipe.Dilute recipe) {
        return recipe.strength().or(() -> recipe.oneIn().flatMap(parts -> of(recipe.stock())
                .map(stock -> Amounts.times(stock, 1 / parts.value()))));
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
    public Optional<Quantity> parts(Recipe.Parts recipe) {
        double share = 100 * recipe.firstParts() / (recipe.firstParts() + recipe.secondParts());
        return recipe.byMass() ? Optional.of(Quantity.of(share, Unit.PERCENT_BY_MASS)) : Optional.empty();
    }
}
