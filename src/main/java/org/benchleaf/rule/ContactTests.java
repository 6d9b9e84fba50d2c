package org.benchleaf.rule;

import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.model.Part;
import org.benchleaf.model.Rule;
import org.benchleaf.model.TestedContact;

/** The contacts of the media of a case with its baths, each with the longest test that passed, by which rules judge how long it may be. */
final class ContactTests {

    private final CaseFacts facts;

    ContactTests(CaseFacts facts) {
        this.facts = facts;
    }

    /** In the order of the steps; none of a medium that no passed test of a known length is of. */
    Stream<TestedContact> found() {
        return facts.asked(Rule.Subject.CONTACT).stream().flatMap(asked -> found(asked).stream()).distinct();
    }

    private Optional<TestedContact> found(Asked asked) {
        return asked.step().filter(step -> step.part(Part.Bath.class).isPresent()).flatMap(step -> asked.layer().flatMap(layer ->
                asked.liquid().filter(liquid -> facts.liquids.alike(step.part(Part.Bath.class).get().of(), liquid))
                        .flatMap(liquid -> facts.longest(asked).map(test -> Contact.tested(facts, step, layer, liquid, test)))));
    }
}
