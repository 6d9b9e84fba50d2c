package org.benchleaf.model;

import java.util.List;
import java.util.Optional;
import org.benchleaf.quantity.Quantity;

/**
 * One way in for acute toxicity: the categories with their upper bounds and the estimates taken where only the category
 * is known.
 *
 * @param way as classes name it in brackets, such as {@code mouth} or {@code vapour}
 * @param group the way as a statement means it: {@code mouth}, {@code skin} or {@code breath}
 * @param categories the gravest first
 * @param source where they were read
 */
public record AcuteRoute(String way, String group, List<Category> categories, String source) {

    public AcuteRoute {
        categories = List.copyOf(categories);
    }

    /**
     * One category.
     *
     * @param hazardClass such as {@code Acute Tox. 3}
     * @param upTo the greatest estimate that belongs to it
     * @param takenAs the estimate taken where only the category is known
     * @param statement its H code
     */
    public record Category(String hazardClass, Quantity upTo, Quantity takenAs, String statement) {
    }

    /** The category that an estimate falls into, in the unit of the bounds; empty if it is above all of them. */
    public Optional<Category> of(double estimate) {
        return categories.stream().filter(one -> estimate <= one.upTo().value()).findFirst();
    }
}
