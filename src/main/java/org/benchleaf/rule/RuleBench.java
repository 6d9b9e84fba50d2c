package org.benchleaf.rule;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.message.Holes;
import org.benchleaf.message.Message;
import org.benchleaf.message.Severity;
import org.benchleaf.model.Condition;
import org.benchleaf.model.Finding;
import org.benchleaf.model.Picture;
import org.benchleaf.model.Rule;
import org.benchleaf.model.Step;

/** Asks the rules, one by one, of everything they concern. */
final class RuleBench {

    private static final String NOTHING = "-";

    private final CaseFacts facts;
    private final ConditionAnswers answers;
    private final List<Rule> asked;
    private final ReadersNames names;

    RuleBench(CaseFacts facts, ConditionAnswers answers) {
        this.facts = facts;
        this.answers = answers;
        this.names = new ReadersNames(facts.treatment, facts.liquids);
        this.asked = facts.library.rules().stream().filter(rule -> rule.heldBy().isEmpty()).toList();
    }

    Stream<Speaking> rules() {
        return asked.stream().flatMap(rule -> facts.asked(rule.speaksOf()).stream()
                .flatMap(subject -> asked(rule, subject).stream()));
    }

    /**
     * The rules that were asked of something in the case, are kept wherever they were asked, and of which the case tells somewhere
     * what shows it. One that is kept only because nothing speaks against it is left out: nothing was judged.
     */
    Stream<Finding> kept(Set<String> spoke) {
        return asked.stream().filter(rule -> !spoke.contains(rule.id()))
                .filter(rule -> facts.asked(rule.speaksOf()).stream().anyMatch(subject -> isShown(rule, subject)))
                .map(rule -> new Finding(rule.id(), Optional.empty(), rule.statement(), Optional.empty(), false,
                        Finding.Standing.KEPT));
    }

    /** Whether a rule applies to a subject and the case tells something of it that the rule was judged by. */
    private boolean isShown(Rule rule, Asked subject) {
        return answers.answer(rule.where(), subject).isYes() && Stream.of(rule.needs(), rule.forbids()).flatMap(Optional::stream)
                .anyMatch(condition -> answers.answer(condition, subject).judged());
    }

    /** Whether a rule settles what the matrix says of an action, because it is asked of the same thing. */
    boolean answersFor(String action, Asked touch) {
        return asked.stream().filter(rule -> rule.answersFor().contains(action))
                .anyMatch(rule -> Stream.concat(Stream.of(touch), touch.step().stream().flatMap(facts::liquidsOf)
                        .map(touch::with)).anyMatch(subject -> settles(rule, subject)));
    }

    private boolean settles(Rule rule, Asked subject) {
        return answers.answer(rule.where(), subject).isYes()
                && rule.forbids().map(condition -> answers.answer(condition, subject)).orElse(Judgement.YES).isYes();
    }

    /** What a rule has to say of a subject; nothing where it does not apply or is kept. */
    private Optional<Speaking> asked(Rule rule, Asked subject) {
        Judgement where = answers.answer(rule.where(), subject);
        if (where.isNo()) {
            return Optional.empty();
        }
        Judgement needs = rule.needs().map(condition -> answers.answer(condition, subject))
                .orElse(Judgement.of(rule.forbids().isPresent()));
        Judgement forbidden = rule.forbids().map(condition -> answers.answer(condition, subject)).orElse(Judgement.NO);
        if (needs.isYes() && forbidden.isNo()) {
            return Optional.empty();
        }
        if (!where.isYes()) {
            return Optional.of(question(rule, subject, Speaking.Ground.PERHAPS, where.missing()));
        }
        if (needs.isNo() || forbidden.isYes()) {
            return Optional.of(speaking(rule, subject));
        }
        return Optional.of(needs.isYes() ? question(rule, subject, Speaking.Ground.PERHAPS, forbidden.missing())
                : question(rule, subject, Speaking.Ground.NOT_TOLD, needs.missing()));
    }

    private Speaking speaking(Rule rule, Asked subject) {
        Message told = filled(rule, subject, rule.what(), rule.why(), rule.fix());
        List<Condition> because = Stream.concat(Stream.of(rule.where()), rule.forbids().stream()).toList();
        return new Speaking(rule.id(), rule.weight(), rule.forTrainees(), rule.past(), subject.step().map(Step::id),
                Optional.empty(), Speaking.Ground.NOT_KEPT, subject.place(), Optional.empty(),
                Likeness.told(told.what(), "step '" + subject.step().map(Step::id).orElse(NOTHING) + "'", subject, because),
                Likeness.told(read(rule.what(), subject), "it", subject, because),
                told.why(), told.fix());
    }

    /** The rule as a question about the facts that are missing. */
    private Speaking question(Rule rule, Asked subject, Speaking.Ground ground, Set<MissingFact> missing) {
        String fact = MissingFact.told(missing);
        String what = "Whether this rule is kept" + subject.step().map(step -> " at step '" + step.id() + "'").orElse("")
                + subject.layer().map(layer -> " for '" + layer.name() + "'").orElse("") + " cannot be told: "
                + fact + ".";
        String fix = MissingFact.remedies(missing);
        Message told = filled(rule, subject, what, rule.statement() + " " + rule.why(),
                ground == Speaking.Ground.NOT_TOLD ? fix + " " + rule.fix() : fix);
        String read = "It cannot be told whether this rule is kept"
                + subject.layer().map(layer -> " for " + names.of(layer.name())).orElse("") + ": "
                + MissingFact.read(missing, names::of) + ".";
        return new Speaking(rule.id(), rule.weight(), rule.forTrainees(), rule.past(), subject.step().map(Step::id),
                Optional.empty(), ground, subject.place(), Optional.of(fact), told.what(), read, told.why(), told.fix());
    }

    /** What a rule says, to a reader: the step is the one at which it stands, and what else has an id is named. */
    private String read(String what, Asked subject) {
        String named = what.replace("Step '{step}'", "The step").replace("step '{step}'", "the step").replace("'{medium}'", "{medium}")
                .replace("'{liquid}'", "{liquid}").replace("'{picture}'", "{picture}");
        String read = Holes.fill(named, "step", NOTHING, "kind", kind(subject),
                "medium", subject.layer().map(layer -> names.of(layer.name())).orElse(NOTHING),
                "liquid", subject.liquid().map(names::of).orElse(NOTHING),
                "measure", subject.result().map(result -> result.measure().told()).orElse(NOTHING),
                "picture", subject.picture().map(picture -> names.ofPicture(picture.id())).orElse(NOTHING),
                "contact", inAll(subject), "tested", tested(subject));
        return Character.toUpperCase(read.charAt(0)) + read.substring(1);
    }

    private static String kind(Asked subject) {
        return subject.step().map(step -> step.named().map(own -> own + ", nearest to ").orElse("") + step.kind().word()).orElse(NOTHING);
    }

    private Message filled(Rule rule, Asked subject, String what, String why, String fix) {
        return new RuleMessage(rule.id(), Severity.ERROR, what, why, fix, false).at(subject.place(),
                "step", subject.step().map(Step::id).orElse(NOTHING),
                "kind", kind(subject),
                "medium", subject.layer().map(Layer::name).orElse(NOTHING),
                "liquid", subject.liquid().orElse(NOTHING),
                "measure", subject.result().map(result -> result.measure().word()).orElse(NOTHING),
                "picture", subject.picture().map(Picture::id).orElse(NOTHING),
                "contact", contact(subject), "tested", tested(subject));
    }

    /** The whole time that a liquid touches a medium, and how it was added up. */
    private String contact(Asked subject) {
        return touching(subject).map(contact -> inAll(subject) + ": " + contact.words()).orElse(NOTHING);
    }

    private String inAll(Asked subject) {
        return touching(subject).map(contact -> contact.minutes().map(Contact::time).orElse("a time that is not given in full"))
                .orElse(NOTHING);
    }

    private Optional<Contact> touching(Asked subject) {
        return subject.step().flatMap(step -> subject.layer().flatMap(layer -> subject.liquid().map(liquid ->
                Contact.of(facts, step, layer, liquid, false))));
    }

    private String tested(Asked subject) {
        return facts.longestTest(subject).map(Contact::time).orElse("a time that no test gives");
    }
}
