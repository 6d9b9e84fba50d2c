package org.benchleaf.rule;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.message.Message;
import org.benchleaf.message.RuleMessages;
import org.benchleaf.model.SpotTest;
import org.benchleaf.model.Step;
import org.benchleaf.model.StepKind;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Tells of holds that cannot be kept: nobody else looks, or what is asked for takes longer than the sheet may wait. */
final class HoldCheck {

    /**
     * A time that bears on a hold.
     *
     * @param what what lasts so long, or sets the limit, in words
     * @param minutes the shortest time of what is asked for; the longest of a limit
     */
    private record Span(String what, double minutes) {
    }

    private final CaseFacts facts;

    HoldCheck(CaseFacts facts) {
        this.facts = facts;
    }

    /** What there is to tell, in the order of the steps. */
    Stream<Message> told() {
        return facts.order.all().stream().flatMap(step -> step.hold().stream()
                .flatMap(hold -> Stream.concat(alone(step, hold), late(step, hold))));
    }

    /** One person cannot release what the same person does; two of a role can look at each other's work. */
    private static Stream<Message> alone(Step step, Step.Hold hold) {
        return hold.releasedBy().strip().equalsIgnoreCase(step.by().strip()) && step.people() < 2
                ? Stream.of(RuleMessages.HOLD_BY_THE_SAME.at(step.place(), "step", step.id(), "role", hold.releasedBy()))
                : Stream.empty();
    }

    private Stream<Message> late(Step step, Step.Hold hold) {
        Optional<Span> asked = asked(step, hold).max(Comparator.comparingDouble(Span::minutes));
        Optional<Span> limit = limits(step, hold).min(Comparator.comparingDouble(Span::minutes));
        return asked.isPresent() && limit.isPresent() && asked.get().minutes() > limit.get().minutes()
                ? Stream.of(RuleMessages.HOLD_TOO_LONG.at(step.place(), "step", step.id(), "asked", asked.get().what(),
                        "takes", Contact.time(asked.get().minutes()), "limit", Contact.time(limit.get().minutes()),
                        "key", limit.get().what())) : Stream.empty();
    }

    /** What has to be done while the work stops: the look itself, and tests after the step before with what comes next. */
    private Stream<Span> asked(Step step, Step.Hold hold) {
        Stream<Span> look = hold.takes().stream().map(takes -> new Span("looking and releasing", takes.lowIn(Unit.MINUTE)));
        List<Step> before = facts.order.before(step);
        Stream<SpotTest> tests = before.isEmpty() || before.get(before.size() - 1).kind() == StepKind.TESTING
                ? Stream.empty() : facts.treatment.tests().stream().filter(test -> test.after()
                        .filter(before.get(before.size() - 1).id()::equals).isPresent()
                        && facts.liquidsOf(step).anyMatch(liquid -> facts.liquids.alike(liquid, test.with())));
        return Stream.concat(look, tests.flatMap(test -> test.dwell().stream().map(dwell -> new Span(
                "the test of '" + test.medium() + "' with '" + test.with() + "'", dwell.lowIn(Unit.MINUTE)))));
    }

    /** How long the sheet may wait: as the hold says, as the step allows, and as the step allows that left it damp. */
    private Stream<Span> limits(Step step, Step.Hold hold) {
        Stream<Span> own = Stream.concat(limit(hold.atMost(), "'at most:' under 'hold:' of step '" + step.id() + "'"),
                limit(step.atMost(), "'at most:' of step '" + step.id() + "'"));
        return Stream.concat(own, facts.order.sinceDrying(step).stream().filter(facts::dampens).flatMap(wet ->
                limit(wet.atMost(), "'at most:' of step '" + wet.id() + "', which left it damp")));
    }

    private static Stream<Span> limit(Optional<Quantity> atMost, String what) {
        return atMost.stream().map(most -> new Span(what, most.highIn(Unit.MINUTE)));
    }
}
