package org.benchleaf.derive;

import java.util.List;
import org.benchleaf.model.Recipe;

/** The ids of what a recipe is made from, in the order of making. */
final class Ingredients implements Recipe.Kinds<List<String>> {

    static List<String> of(Recipe recipe) {
        return recipe.ask(new Ingredients());
    }

    @Override
    public List<String> mix(Recipe.Mix recipe) {
        return List.of(recipe.from(), recipe.rest());
    }

    @Override
    public List<String> dissolve(Recipe.Dissolve recipe) {
        return List.of(recipe.solid(), recipe.in());
    }

    @Override
    public List<String> dilute(Recipe.Dilute recipe) {
        return List.of(recipe.stock(), recipe.with());
    }

    @Override
    public List<String> saturate(Recipe.Saturate recipe) {
        return List.of(recipe.solid(), recipe.in());
    }

    @Override
    public List<String> adjust(Recipe.Adjust recipe) {
        return List.of(recipe.liquid(), recipe.with());
    }

    @Override
    public List<String> parts(Recipe.Parts recipe) {
        return List.of(recipe.first(), recipe.second());
    }
}
