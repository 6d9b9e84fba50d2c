package org.benchleaf.derive.classes;

import java.util.List;
import java.util.function.UnaryOperator;
import org.benchleaf.model.Phrases;
import org.benchleaf.model.StepKind;

/**
 * The words of a plan in one language. The plan itself is told in English words, by which its parts are found again.
 *
 * @param phrases of the language
 * @param step names a step by its id
 * @param kind names a kind of step by its word
 * @param before tells what is not begun before the release of a step, by its id
 */
public record PlanWords(Phrases phrases, UnaryOperator<String> step, UnaryOperator<String> kind, UnaryOperator<String> before) {

    /** As the plan has them. */
    static final PlanWords ENGLISH = new PlanWords(Phrases.ENGLISH, id -> id, word -> word, id -> "");

    /** Stands between how many of a thing are taken and its name. */
    static final String TIMES = " × ";

    private static final List<String> NUMBERED = List.of("bath change {n}", "bath {n}", "look after min {n}",
            "between blotters {n}", "blotter change {n}", "trainee of station {n}", "station {n}");

    /** A piece of the work of a step. */
    String work(String stepId, String work) {
        if (work.startsWith(StationCut.HOLD)) {
            String what = before.apply(stepId);
            return phrases.say("hold before {what}", "what", what.isEmpty() ? work.substring(StationCut.HOLD.length()) : what);
        }
        return List.of(StepKind.values()).stream().anyMatch(one -> one.word().equals(work)) ? kind.apply(work) : numbered(work);
    }

    /** A piece of work with its step; once where both have one name. */
    String part(String stepId, String work) {
        String name = step.apply(stepId);
        String piece = work(stepId, work);
        return name.equalsIgnoreCase(piece) ? name : name + ": " + piece;
    }

    /** A person or thing that is shared, or so many of one, or that many times. */
    String thing(String thing) {
        int times = thing.indexOf(TIMES);
        if (times > 0) {
            return thing.substring(0, times) + TIMES + thing(thing.substring(times + TIMES.length()));
        }
        int blank = thing.indexOf(' ');
        return blank > 0 && thing.substring(0, blank).chars().allMatch(Character::isDigit)
                ? thing.substring(0, blank) + " " + numbered(thing.substring(blank + 1)) : numbered(thing);
    }

    private String numbered(String text) {
        for (String pattern : NUMBERED) {
            String start = pattern.substring(0, pattern.indexOf('{'));
            String number = text.startsWith(start) ? text.substring(start.length()) : "";
            if (!number.isEmpty() && number.chars().allMatch(Character::isDigit)) {
                return phrases.say(pattern, "n", number);
            }
        }
        return phrases.of(text);
    }
}
