package org.benchleaf.rule;

import java.util.List;
import org.benchleaf.model.BuildingBlock;
import org.benchleaf.model.Condition;
import org.benchleaf.model.Step;

/** How it is told what is asked of a step of its own kind only because of the kind that it is nearest to: as no fact of the step. */
final class Likeness {

    private Likeness() {
    }

    /**
     * The sentence, told as what is asked of the nearest kind where that is why it is asked.
     *
     * @param of what is asked, such as {@code step 'foam'}
     * @param because conditions of which one may hold by the kind of the step
     */
    static String told(String sentence, String of, Asked asked, List<Condition> because) {
        return asked.step().flatMap(Step::named).isEmpty() || because.stream().noneMatch(one -> one.mayHoldBy(BuildingBlock.KIND))
                ? sentence
                : "Asked of " + of + " as of " + asked.step().orElseThrow().kind().word() + ", to which it is nearest: "
                + Character.toLowerCase(sentence.charAt(0)) + sentence.substring(1);
    }
}
