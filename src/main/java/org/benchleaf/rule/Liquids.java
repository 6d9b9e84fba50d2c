package org.benchleaf.rule;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.model.Library;
import org.benchleaf.model.Material;
import org.benchleaf.model.MaterialKind;
import org.benchleaf.model.Recipe;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Solution;
import org.benchleaf.model.Substance;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.model.Waterless;
import org.benchleaf.quantity.Quantity;

/** What is in the liquids of a case: solutions are followed down to the materials they are made of. */
final class Liquids {

    private static final String LIQUID = "liquid";
    private static final Set<String> LIQUID_FORMS = Set.of(LIQUID, "solution");
    private static final String WATER = "water";

    /** The word for a liquid that is shown to be of solvents without water. */
    private static final String WATERLESS = "waterless";

    private final TreatmentCase treatment;
    private final Map<String, Solution> solutions;
    private final Map<String, Material> materials;
    private final Reference reference;
    private final Waterless waterless;
    private final Function<String, Optional<Quantity>> workedPh;
    private final Map<String, String> compositions = new HashMap<>();
    private final Map<String, Judgement> answered = new HashMap<>();

    Liquids(TreatmentCase treatment, Library library, Function<String, Optional<Quantity>> workedPh) {
        this.treatment = treatment;
        this.solutions = treatment.solutions().stream()
                .collect(Collectors.toMap(Solution::id, Function.identity(), (first, second) -> first));
        this.materials = library.materials();
        this.reference = library.reference();
        this.waterless = new Waterless(treatment, library);
        this.workedPh = workedPh;
    }

    Optional<Solution> solution(String id) {
        return Optional.ofNullable(solutions.get(id));
    }

    Optional<Material> material(String id) {
        return Optional.ofNullable(materials.get(id));
    }

    /** The materials that an id stands for: itself, or what a solution is made of. */
    Stream<Material> materialsIn(String id) {
        return treatment.matter(id).map(materials::get).filter(Objects::nonNull);
    }

    /** Whether the id names something wet: a solution of the case, or a material that is a liquid by its kind or by what it is made of. */
    boolean isLiquid(String id) {
        return solutions.containsKey(id)
                || material(id).filter(material -> isOfKind(material, MaterialKind::isWet) || isLiquidByContents(material)).isPresent();
    }

    /** Whether the id names a material that is water and nothing else. */
    boolean isPlainWater(String id) {
        return material(id).flatMap(Material::substance).filter(WATER::equals).isPresent();
    }

    /** Whether the id names a chemical that is no liquid, such as a powder. */
    boolean isDryChemical(String id) {
        return !isLiquid(id) && material(id).filter(Material::isChemical).isPresent();
    }

    /**
     * Whatever its kind is called, such as "solvent" or "wipe": its substance is a liquid, or it is sold as a solution with a strength or a
     * pH.
     */
    private boolean isLiquidByContents(Material material) {
        boolean liquid = material.substance().map(reference.substances()::get).map(Substance::form)
                .filter(LIQUID_FORMS::contains).isPresent();
        return material.isChemical() && !isOfKind(material, MaterialKind::isDry)
                && (liquid || material.strength().isPresent() || material.ph().isPresent());
    }

    private static boolean isOfKind(Material material, Predicate<MaterialKind> nature) {
        return MaterialKind.of(material.kind()).filter(nature).isPresent();
    }

    /** Whether something in the liquid answers to one of the words; it cannot be told where a part of it is not known. */
    Judgement answers(String id, List<String> words) {
        return Judgement.any(words.stream(), word -> answered.computeIfAbsent(id + "\n" + word, unknown -> answer(id, word)));
    }

    private Judgement answer(String id, String word) {
        if (word.equals(WATERLESS)) {
            return Judgement.of(isWaterless(id));
        }
        boolean fits = isBase(word) ? base(id).equals(word) : treatment.matter(id).anyMatch(leaf -> nameFits(leaf, word));
        Optional<String> unknown = treatment.matter(id).filter(leaf -> !isDescribed(leaf)).findFirst();
        return fits || unknown.isEmpty() ? Judgement.of(fits) : Judgement.cannotTell(MissingFact.contents(unknown.get()));
    }

    /** Whether the studio says what a material is made of, or what it does. */
    private boolean isDescribed(String id) {
        return material(id).filter(material -> material.substance().isPresent() || !material.traits().isEmpty()).isPresent();
    }

    /** Whether it is shown to be of solvents without water. */
    boolean isWaterless(String id) {
        return waterless.is(id);
    }

    /** Whether it has a pH: unless every part of it is known to be neither water, nor acid, nor base. */
    boolean hasPh(String id) {
        return treatment.matter(id).anyMatch(leaf -> nameFits(leaf, WATER) || !isNeutral(leaf));
    }

    private boolean isNeutral(String id) {
        return material(id).flatMap(Material::substance).map(reference.substances()::get).flatMap(Substance::acidity)
                .filter(acidity -> acidity.is() == Substance.Acidity.Kind.NEUTRAL).isPresent();
    }

    /** Whether a material answers to a word by its id, substance, kind or traits; an unknown one by its id alone. */
    boolean nameFits(String id, String word) {
        return WordComparison.holds(id, word) || material(id).stream()
                .flatMap(material -> Stream.of(material.substance().stream(), Stream.of(material.kind()),
                        material.traits().stream()).flatMap(words -> words))
                .anyMatch(text -> WordComparison.holds(text, word));
    }

    /** Whether two ids name the same composition, whatever they are called. */
    boolean alike(String one, String other) {
        return one.equals(other) || composition(one).equals(composition(other));
    }

    /** The pH that a recipe aims at, or that a material is bought with. */
    Optional<Quantity> ph(String id) {
        return solution(id).map(Solution::recipe).map(recipe -> recipe.ask(new Ph()))
                .orElseGet(() -> material(id).flatMap(Material::ph));
    }

    /** The pH by the equilibrium of what it is made of; empty where that is not known in full, or holds no water. */
    Optional<Quantity> workedPh(String id) {
        return hasPh(id) ? workedPh.apply(id) : Optional.empty();
    }

    private static boolean isBase(String word) {
        return word.endsWith("-based");
    }

    /** What carries it: {@code water-based} or {@code other-based}. */
    private String base(String id) {
        return carrier(id, new HashSet<>()) ? "water-based" : "other-based";
    }

    private boolean carrier(String id, Set<String> seen) {
        if (!seen.add(id)) {
            return false;
        }
        return solution(id).map(solution -> solution.recipe().ask(new Carrier(seen)))
                .orElseGet(() -> nameFits(id, WATER) || nameFits(id, "water-based"));
    }

    private String composition(String id) {
        return compositions.computeIfAbsent(id, unknown -> composition(unknown, new HashSet<>()));
    }

    private String composition(String id, Set<String> seen) {
        if (!seen.add(id)) {
            return id;
        }
        String text = solution(id).filter(solution -> isTold(solution.recipe())).map(solution -> amounts(solution.recipe())
                + solution.recipe().ingredients().stream()
                .map(ingredient -> composition(ingredient, seen)).collect(Collectors.joining(", ", "(", ")")))
                .orElse(id);
        seen.remove(id);
        return text;
    }

    /** Whether it is told what it is made of and how; one of which it is not, is known to be alike to itself alone. */
    private static boolean isTold(Recipe recipe) {
        return !recipe.isOpen() && !(recipe instanceof Recipe.Saturate made && made.at().isEmpty());
    }

    private static String amounts(Recipe recipe) {
        return recipe.ask(new Amounts());
    }

    private static double fraction(Quantity share) {
        return share.value() * share.unit().factor();
    }

    private static String number(Quantity quantity) {
        return String.format(Locale.ROOT, "%.6g..%.6g %s", quantity.low() * quantity.unit().factor(),
                quantity.high() * quantity.unit().factor(), quantity.dimension());
    }

    private static final class Amounts implements Recipe.Kinds<String> {
        @Override
        public String mix(Recipe.Mix recipe) {
            return "mix " + recipe.shares().stream().map(share -> share.liquid() + " " + number(share.strength()))
                    .collect(Collectors.joining(" "));
        }

        @Override
        public String dissolve(Recipe.Dissolve recipe) {
            return "dissolve " + number(recipe.strength());
        }

        @Override
        public String dilute(Recipe.Dilute recipe) {
            return "dilute " + recipe.strength().or(recipe::oneIn).map(Liquids::number).orElse("");
        }

        @Override
        public String saturate(Recipe.Saturate recipe) {
            return "saturate " + recipe.at().map(Liquids::number).orElse("");
        }

        @Override
        public String adjust(Recipe.Adjust recipe) {
            return "adjust " + recipe.to().form() + " " + number(recipe.to().value());
        }

        @Override
        public String parts(Recipe.Parts recipe) {
            return "parts " + recipe.portions().stream().map(one -> String.valueOf(one.parts() / recipe.all()))
                    .collect(Collectors.joining(" + ")) + (recipe.byMass() ? " mass" : " volume");
        }

        @Override
        public String untold(Recipe.Untold recipe) {
            return "untold " + recipe.id();
        }
    }

    private final class Carrier implements Recipe.Kinds<Boolean> {
        private final Set<String> seen;

        Carrier(Set<String> seen) {
            this.seen = seen;
        }

        @Override
        public Boolean mix(Recipe.Mix recipe) {
            double rest = 1 - recipe.shares().stream().mapToDouble(share -> fraction(share.strength())).sum();
            return carrier(recipe.shares().stream().filter(share -> fraction(share.strength()) >= rest)
                    .max(Comparator.comparingDouble(share -> fraction(share.strength())))
                    .map(Recipe.Share::from).orElse(recipe.rest()), seen);
        }

        @Override
        public Boolean dissolve(Recipe.Dissolve recipe) {
            return carrier(recipe.in(), seen);
        }

        @Override
        public Boolean dilute(Recipe.Dilute recipe) {
            return carrier(recipe.with(), seen) || carrier(recipe.stock(), seen);
        }

        @Override
        public Boolean saturate(Recipe.Saturate recipe) {
            return carrier(recipe.in(), seen);
        }

        @Override
        public Boolean adjust(Recipe.Adjust recipe) {
            return carrier(recipe.liquid(), seen);
        }

        @Override
        public Boolean parts(Recipe.Parts recipe) {
            return recipe.portions().stream().anyMatch(one -> carrier(one.of(), seen));
        }

        @Override
        public Boolean untold(Recipe.Untold recipe) {
            return recipe.ingredients().stream().anyMatch(one -> carrier(one, seen));
        }
    }

    private final class Ph implements Recipe.Kinds<Optional<Quantity>> {
        @Override
        public Optional<Quantity> mix(Recipe.Mix recipe) {
            return Optional.empty();
        }

        @Override
        public Optional<Quantity> dissolve(Recipe.Dissolve recipe) {
            return Optional.empty();
        }

        @Override
        public Optional<Quantity> dilute(Recipe.Dilute recipe) {
            return Optional.empty();
        }

        @Override
        public Optional<Quantity> saturate(Recipe.Saturate recipe) {
            return Optional.empty();
        }

        @Override
        public Optional<Quantity> adjust(Recipe.Adjust recipe) {
            return recipe.to().forSums();
        }

        @Override
        public Optional<Quantity> parts(Recipe.Parts recipe) {
            return Optional.empty();
        }

        @Override
        public Optional<Quantity> untold(Recipe.Untold recipe) {
            return Optional.empty();
        }
    }
}
