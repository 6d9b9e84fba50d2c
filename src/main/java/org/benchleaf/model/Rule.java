package org.benchleaf.model;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.benchleaf.message.Place;

/**
 * One rule of the trade, as data.
 *
 * @param id stable, in the trade's words, such as {@code surface-clean-before-moisture}
 * @param theme the heading it stands under on the page of rules
 * @param statement the rule in one sentence
 * @param weight what follows when it speaks
 * @param forTrainees whether trainees must read the reason that answers it
 * @param past whether a case whose treatment is done may tell that its record does not answer the rule, though the rule stops others
 * @param speaksOf what it is asked of, one by one
 * @param answersFor ids of actions of the matrix whose verdict it settles wherever it is asked
 * @param where of which of these it is asked at all
 * @param needs what must hold
 * @param forbids what must not hold; with neither of the two, it speaks wherever it is asked
 * @param heldBy the stage that keeps it, where it can only be seen in what is produced; empty if it is asked of the case
 * @param what what is the matter, with holes
 * @param why why it matters
 * @param fix what to do about it
 * @param backing where it comes from
 * @param ofStudio whether the studio added it
 * @param change what the studio changed in it, if anything
 * @param place where it is written
 */
public record Rule(String id, String theme, String statement, Weight weight, boolean forTrainees, boolean past,
        Subject speaksOf, List<String> answersFor, Condition where, Optional<Condition> needs, Optional<Condition> forbids,
        Optional<HeldBy> heldBy, String what, String why, String fix, Backing backing, boolean ofStudio, Optional<Change> change,
        Place place) {

    /** What follows when a rule speaks. */
    public enum Weight {
        /** The case is not published. */
        STOP("stop"),
        /** The case is published only with a recorded reason. */
        REASON("reason"),
        /** Said to the author, who decides. */
        ADVICE("advice");

        private final String word;

        Weight(String word) {
            this.word = word;
        }

        /** The word as written in a rule file. */
        public String word() {
            return word;
        }

        /** The weight written with that word. */
        public static Optional<Weight> of(String word) {
            return Stream.of(values()).filter(weight -> weight.word.equals(word)).findFirst();
        }
    }

    /** What a rule is asked of, one by one. */
    public enum Subject {
        CASE("case", "the case as a whole"),
        STEP("step", "every step"),
        MEDIUM("medium", "every medium"),
        TOUCH("touch", "every medium, and the support, at every step that touches it"),
        CONTACT("contact", "every medium at every step with every liquid that reaches it"),
        RESULT("result", "every result"),
        PICTURE("picture", "every picture");

        private final String word;
        private final String words;

        Subject(String word, String words) {
            this.word = word;
            this.words = words;
        }

        /** The word as written in a rule file. */
        public String word() {
            return word;
        }

        /** In words, for the page of rules. */
        public String words() {
            return words;
        }

        /** The subject written with that word. */
        public static Optional<Subject> of(String word) {
            return Stream.of(values()).filter(subject -> subject.word.equals(word)).findFirst();
        }
    }

    /**
     * The stage that keeps a rule, and how.
     *
     * @param stage the stage's name
     * @param how in one sentence
     */
    public record HeldBy(String stage, String how) {
    }

    /**
     * Where a rule or a verdict comes from.
     *
     * @param sources keys of published sources; empty for common practice without one
     * @param status how well it is known
     * @param note what of it is read and what is practice, if both
     */
    public record Backing(List<String> sources, Status status, Optional<String> note) {

        /** How well something is known. */
        public enum Status {
            /** Seen in a published source. */
            READ("read in a published source"),
            /** Usual in the trade. */
            PRACTICE("common practice"),
            /** Recalled; to be checked before it is relied on. */
            MEMORY("from memory, to be checked");

            private final String words;

            Status(String words) {
                this.words = words;
            }

            /** In words, for a page. */
            public String words() {
                return words;
            }

            /** The status written with that word, in small letters. */
            public static Optional<Status> of(String word) {
                return Stream.of(values()).filter(status -> status.name().toLowerCase(Locale.ROOT).equals(word))
                        .findFirst();
            }
        }

        /** Written where there is no published source. */
        public static final String NO_SOURCE = "common practice, no source";

        public Backing {
            sources = List.copyOf(sources);
        }
    }

    /**
     * What a studio changed in a rule of the program.
     *
     * @param changed the keys that it changed, such as {@code severity}
     * @param reason why
     */
    public record Change(List<String> changed, String reason, Place place) {
        public Change {
            changed = List.copyOf(changed);
        }
    }

    public Rule {
        answersFor = List.copyOf(answersFor);
    }

    /**
     * The facts that it rests on, in words; empty where a later stage keeps it.
     *
     * @param named how a field of the case file is named
     */
    public Set<String> restsOn(Function<CaseField, String> named) {
        Set<String> facts = new LinkedHashSet<>(where.facts(named));
        Stream.of(needs, forbids).flatMap(Optional::stream).map(condition -> condition.facts(named)).forEach(facts::addAll);
        return facts;
    }

    /** The same rule as a studio changed it. */
    public Rule changed(Change by, String newStatement, Weight newWeight, Condition newWhere,
            Optional<Condition> newNeeds, Optional<Condition> newForbids) {
        return new Rule(id, theme, newStatement, newWeight, forTrainees, past, speaksOf, answersFor, newWhere,
                newNeeds, newForbids, heldBy, what, why, fix, backing, ofStudio, Optional.of(by), place);
    }
}
