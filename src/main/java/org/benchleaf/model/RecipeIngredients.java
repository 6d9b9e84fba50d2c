package org.benchleaf.model;

import java.util.List;
import java.util.stream.Stream;

/** The ids of what a recipe is made from, in the order of making. */
final class RecipeIngredients implements Recipe.Kinds<List<String>> {

    @Override
    public List<String> mix(Recipe.Mix recipe) {
        return Stream.concat(recipe.shares().stream().map(Recipe.Share::from), Stream.of(recipe.rest())).toList();
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
        return recipe.portions().stream().map(Recipe.Portion::of).toList();
    }
}
