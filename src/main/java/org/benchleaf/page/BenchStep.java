package org.benchleaf.page;

import java.util.List;
import java.util.Optional;
import org.benchleaf.text.RichText;

/**
 * One step of the strip.
 *
 * @param anchor of the step
 * @param number from 1
 * @param kind the trade's verb
 * @param clock when it can begin, counted from the start of the first step
 * @param takes how long it takes
 * @param hold where the work stops until someone lets it go on; shown before the action
 * @param supervised who must be there, if the step is not for a trainee alone
 * @param cautions what can happen at this step
 * @param care the same with what to wear, in one line
 * @param wear what to wear, in words
 * @param instruction what to do
 * @param amounts worked-out amounts, each opening to its working
 * @param facts amounts and settings as the case states them
 * @param told what to see, to watch, to do if not, when to stop
 * @param reasons why a rule was departed from, where a trainee needs to know
 * @param timers what to time
 * @param checks what to tick off
 * @param behind the figures behind the amounts
 * @param photo what it looks like
 * @param drawings how it is done
 * @param follows ids of the step itself and of the solutions on which it depends: what is changed of them concerns it
 */
public record BenchStep(String anchor, int number, String kind, String clock, String takes, Optional<Hold> hold,
        Optional<Caution> supervised, List<Caution> cautions, String care, List<String> wear, RichText instruction,
        List<Working> amounts, List<Fact> facts, List<Fact> told, List<RichText> reasons, List<BenchTimer> timers,
        List<String> checks, List<Working> behind, Optional<Photo> photo, List<Chart.Drawing> drawings,
        List<String> follows) {

    public BenchStep {
        cautions = List.copyOf(cautions);
        wear = List.copyOf(wear);
        amounts = List.copyOf(amounts);
        facts = List.copyOf(facts);
        told = List.copyOf(told);
        reasons = List.copyOf(reasons);
        timers = List.copyOf(timers);
        checks = List.copyOf(checks);
        behind = List.copyOf(behind);
        follows = List.copyOf(follows);
        drawings = List.copyOf(drawings);
    }

    /**
     * A hold point: what must not begin, who may let it go on in a sentence and in a word, what they look at, what happens
     * to the sheet, how long it may wait, in words and in seconds (0 where nobody says).
     */
    public record Hold(String stop, String released, String who, Optional<String> look, Optional<String> meanwhile,
            Optional<String> atMost, long most) {
    }
}
