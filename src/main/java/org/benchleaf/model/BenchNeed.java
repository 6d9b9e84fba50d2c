package org.benchleaf.model;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A thing that making a solution or doing a step needs, though no case names it.
 *
 * @param name of the thing, in lower case
 * @param forWork words of the work that needs it: a kind of step, a part by its key, or one of {@link #OWN_WORDS}
 * @param each how many
 * @param per for whom there is one
 * @param words how it is laid out; may be empty
 * @param bought whether it is used up, and so bought for each class
 */
public record BenchNeed(String name, List<String> forWork, int each, Per per, String words, boolean bought) {

    /**
     * For whom there is a thing: each station, each that does the work at one time, each sink or pH meter that is in use at
     * once, or the room.
     */
    public enum Per {
        STATION, PLACE, SINK, METER, ROOM;

        /** The word of the table. */
        public static Per of(String word) {
            return valueOf(word.toUpperCase(Locale.ROOT));
        }
    }

    /** How a solution is made. */
    private static final String COOKED = "cooked";
    private static final String WEIGHED = "weighed";
    private static final String DISSOLVED = "dissolved";
    private static final String DILUTED = "diluted";
    private static final String MIXED = "mixed";
    private static final String SATURATED = "saturated";
    private static final String BROUGHT_TO_PH = "brought to its pH";
    /** How an adhesive is laid. */
    private static final String LAID_WET = "laid wet";
    private static final String WOKEN_BY = "woken by ";
    private static final String TORN_STRIPS = "torn strips";
    private static final String RAKING_LIGHT = "looked at in raking light";
    private static final String RAKING = "raking";
    private static final String WARM_BATH = "bath at a temperature";

    /** Words of the work beside the kinds of step, its parts and the methods of fixing. */
    public static final Set<String> OWN_WORDS = Set.of(COOKED, WEIGHED, DISSOLVED, DILUTED, MIXED, SATURATED, BROUGHT_TO_PH, LAID_WET,
            WOKEN_BY + "heat", WOKEN_BY + "solvent", WOKEN_BY + "water", WOKEN_BY + "pressure", TORN_STRIPS, RAKING_LIGHT, WARM_BATH);

    public BenchNeed {
        forWork = List.copyOf(forWork);
    }

    /** Whether work of these words needs it. */
    public boolean isNeeded(Set<String> work) {
        return forWork.stream().anyMatch(work::contains);
    }

    /** Whether a tool of that name stands in its place. */
    public boolean isReplacedBy(String tool) {
        return tool.toLowerCase(Locale.ROOT).contains(name);
    }

    /** The words of the work of a step. */
    public static Set<String> work(Step step) {
        Set<String> work = new LinkedHashSet<>();
        work.add(step.kind().word());
        step.parts().forEach(part -> work.add(part.word()));
        step.part(Part.Mend.class).ifPresent(mend -> {
            work.add(mend.activation().map(one -> WOKEN_BY + one.by().word()).orElse(LAID_WET));
            if (!mend.ofPatch()) {
                work.add(TORN_STRIPS);
            }
        });
        step.part(Part.Fixing.class).ifPresent(fixing -> work.add(fixing.method()));
        if (step.part(Part.Bath.class).flatMap(Part.Bath::temperature).isPresent()) {
            work.add(WARM_BATH);
        }
        if (isLookedAtInRakingLight(step)) {
            work.add(RAKING_LIGHT);
        }
        return work;
    }

    /** Whether the step, or what releases it, says so in its words. */
    private static boolean isLookedAtInRakingLight(Step step) {
        return Stream.of(Optional.of(step.instruction()), step.see(), step.watch(), step.until(), step.ifNot(),
                step.hold().flatMap(Step.Hold::look)).flatMap(Optional::stream).anyMatch(text -> text.contains(RAKING));
    }

    /** The words of the making of a solution. */
    public static Set<String> work(Recipe recipe) {
        return recipe.ask(new Making());
    }

    private static final class Making implements Recipe.Kinds<Set<String>> {
        @Override
        public Set<String> mix(Recipe.Mix recipe) {
            return Set.of(MIXED);
        }

        @Override
        public Set<String> dissolve(Recipe.Dissolve recipe) {
            return Set.of(DISSOLVED, WEIGHED);
        }

        @Override
        public Set<String> dilute(Recipe.Dilute recipe) {
            return Set.of(DILUTED);
        }

        @Override
        public Set<String> saturate(Recipe.Saturate recipe) {
            return Set.of(SATURATED, WEIGHED);
        }

        @Override
        public Set<String> adjust(Recipe.Adjust recipe) {
            return Set.of(BROUGHT_TO_PH);
        }

        @Override
        public Set<String> parts(Recipe.Parts recipe) {
            Set<String> work = new LinkedHashSet<>(Set.of(recipe.cooked() ? COOKED : MIXED));
            if (recipe.byMass()) {
                work.add(WEIGHED);
            }
            return work;
        }

        @Override
        public Set<String> untold(Recipe.Untold recipe) {
            return Set.of(MIXED);
        }
    }
}
