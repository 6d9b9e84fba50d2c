package org.benchleaf.rule;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.message.Message;
import org.benchleaf.model.Picture;
import org.benchleaf.model.Result;
import org.benchleaf.model.Rule;
import org.benchleaf.model.Step;

/** Asks the rules, one by one, of everything they concern. */
final class RuleBench {

    private static final String NOTHING = "-";

    private final CaseFacts facts;
    private final Answers answers;
    private final List<Rule> asked;

    RuleBench(CaseFacts facts, Answers answers) {
        this.facts = facts;
        this.answers = answers;
        this.asked = facts.library.rules().stream().filter(rule -> rule.heldBy().isEmpty()).toList();
    }

    Stream<Speaking> rules() {
        return asked.stream().flatMap(rule -> facts.asked(rule.speaksOf()).stream()
                .filter(subject -> speaks(rule, subject)).map(subject -> speaking(rule, subject)));
    }

    /** Whether a rule settles what the matrix says of an action, because it is asked of the same thing. */
    boolean answersFor(String action, Asked touch) {
        return asked.stream().filter(rule -> rule.answersFor().contains(action))
                .anyMatch(rule -> Stream.concat(Stream.of(touch), touch.step().stream().flatMap(facts::liquidsOf)
                        .map(touch::with)).anyMatch(subject -> answers.holds(rule.where(), subject)));
    }

    private boolean speaks(Rule rule, Asked subject) {
        return answers.holds(rule.where(), subject)
                && rule.needs().map(needs -> !answers.holds(needs, subject)).orElse(true);
    }

    private Speaking speaking(Rule rule, Asked subject) {
        Message told = new RuleMessage(rule.id(), rule.weight(), rule.what(), rule.why(), rule.fix()).at(subject.place(),
                "step", subject.step().map(Step::id).orElse(NOTHING),
                "kind", subject.step().map(step -> step.kind().word()).orElse(NOTHING),
                "medium", subject.layer().map(Layer::name).orElse(NOTHING),
                "liquid", subject.liquid().orElse(NOTHING),
                "measure", subject.result().map(Result::measure).orElse(NOTHING),
                "picture", subject.picture().map(Picture::id).orElse(NOTHING),
                "contact", contact(subject), "tested", tested(subject));
        return new Speaking(rule.id(), rule.weight(), rule.forTrainees(), subject.step().map(Step::id), Optional.empty(),
                subject.place(), told.what(), told.why(), told.fix());
    }

    /** The whole time that a liquid touches a medium, and how it was added up. */
    private String contact(Asked subject) {
        return subject.step().flatMap(step -> subject.layer().flatMap(layer -> subject.liquid().map(liquid ->
                Contact.of(facts, step, layer, liquid, false)))).map(contact -> contact.minutes().map(Contact::time)
                .orElse("a time that is not given in full") + ": " + contact.words()).orElse(NOTHING);
    }

    private String tested(Asked subject) {
        return facts.longestTest(subject).map(Contact::time).orElse("a time that no test gives");
    }
}
