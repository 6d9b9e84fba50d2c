package org.benchleaf.compose.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchleaf.compose.part.BenchAmount;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.model.Part;
import org.benchleaf.model.Step;
import org.benchleaf.page.BenchScreen;
import org.benchleaf.page.BenchStep;
import org.benchleaf.page.BenchTimer;
import org.benchleaf.page.Fact;
import org.benchleaf.words.WholeSentence;

/** Cuts a step into what a hand does one after the other: the action, each bath, each change of blotters, the weight. */
final class BenchHands {

    /**
     * Most words of action, amount, timer and what one should see on one screen. With the names, the timer and the line of
     * danger it stays at 60, which is read at arm's length; what one should see comes on the next screen otherwise.
     */
    private static final int MOST_WORDS = 26;
    /** Most words on a whole screen, at rest and while its clock runs. */
    static final int MOST_ON_SCREEN = 60;

    private final Sheet sheet;
    private final Step step;
    private final List<BenchTimer> timers;
    private final BenchAmount amount;
    private final List<BenchDrops.Drop> drops;

    BenchHands(Sheet sheet, CaseDesk desk, Step step, BenchStep told) {
        this.sheet = sheet;
        this.step = step;
        this.timers = told.timers();
        this.amount = new BenchAmount(sheet, desk, step);
        this.drops = new BenchDrops(sheet, desk).of(step);
    }

    /**
     * One thing that a hand does within a step.
     *
     * @param name which bath or change; empty if the step is one action
     * @param action what to do; empty where there is only to look
     * @param amount the one amount that it needs
     * @param see what one should see
     * @param clocks the timers that are started with it
     * @param bath number of the bath; 0 if it is none
     */
    record Hand(Optional<String> name, String action, Optional<Fact> amount, Optional<Fact> see,
            List<BenchScreen.Clock> clocks, int bath) {

        Hand(Optional<String> name, String action, Optional<Fact> amount, Optional<Fact> see, Optional<BenchScreen.Clock> clock,
                int bath) {
            this(name, action, amount, see, clock.stream().toList(), bath);
        }
    }

    /** What a hand does in the step, in order. */
    List<Hand> all() {
        List<Hand> hands = new ArrayList<>(drops.isEmpty() ? List.of(action()) : dropped());
        for (int i = 0; i < timers.size(); i++) {
            hands.addAll(timed(i).map(timers.get(i).kind() == BenchTimer.Kind.CHANGE ? this::changed : List::of).orElse(List.of()));
        }
        return hands.stream().flatMap(hand -> fitting(hand).stream()).toList();
    }

    /** What is told of the whole step, then each liquid with the time of each of its drops, then what should be seen. */
    private List<Hand> dropped() {
        List<Hand> hands = new ArrayList<>(List.of(
                new Hand(Optional.empty(), step.instruction(), amount.first(), Optional.empty(), Optional.empty(), 0)));
        drops.stream().map(BenchDrops.Drop::with).distinct().forEach(with -> hands.add(new Hand(Optional.of(with),
                sheet.words().say("bench-hand.drop"), Optional.empty(), Optional.empty(), IntStream.range(0, drops.size())
                        .filter(i -> drops.get(i).with().equals(with))
                        .mapToObj(i -> new BenchScreen.Clock(timers.get(i).id(), BenchTimer.Kind.DROP, i + 1,
                                Optional.of(drops.get(i).on()))).toList(), 0)));
        step.see().ifPresent(see -> hands.add(new Hand(Optional.of(sheet.words().say("bench-hand.look")), "", Optional.empty(), see(),
                Optional.empty(), 0)));
        return hands;
    }

    private Hand action() {
        boolean baths = step.part(Part.Bath.class).filter(Part.Bath::isTimed).isPresent();
        Optional<String> name = baths ? Optional.of(timers.get(0).label()) : Optional.empty();
        Optional<BenchScreen.Clock> clock = timers.stream().findFirst()
                .filter(timer -> timer.kind() != BenchTimer.Kind.WEIGHT).flatMap(timer -> clock(timer, name));
        return new Hand(name, step.instruction(), amount.betweenChanges("weight-now").or(amount::first), see(), clock, baths ? 1 : 0);
    }

    /** A bath and a weight are timed by their own timer; after a change of blotters the time to the next one begins. */
    private Optional<Hand> timed(int i) {
        BenchTimer timer = timers.get(i);
        Optional<String> name = Optional.of(timer.label());
        return switch (timer.kind()) {
            case BATH -> i == 0 ? Optional.empty() : Optional.of(new Hand(name, sheet.words().say("bench-hand.bath"),
                    amount.first(), see(), clock(timer, name), i + 1));
            case CHANGE -> Optional.of(new Hand(name, change(timer) + overnight(i),
                    isLastChange(i) ? Optional.empty() : amount.betweenChanges("weight-again"),
                    isLastChange(i) ? see() : Optional.empty(),
                    i + 1 < timers.size() ? clock(timers.get(i + 1), name) : Optional.empty(), 0));
            case WEIGHT -> i > 0 && timers.get(i - 1).kind() == BenchTimer.Kind.CHANGE ? Optional.empty()
                    : Optional.of(new Hand(name, sheet.words().say("bench-hand.weight"), amount.weight(),
                            Optional.empty(), clock(timer, name), 0));
            case LOOK, WHOLE, DROP -> Optional.empty();
        };
    }

    /** After the last change of blotters the day is told on which the step ends: there is looked on a screen of its own. */
    private List<Hand> changed(Hand hand) {
        return hand.see().isEmpty() ? List.of(hand) : inTwo(hand);
    }

    private boolean isLastChange(int i) {
        return i + 1 == timers.size() || timers.get(i + 1).kind() != BenchTimer.Kind.CHANGE;
    }

    private Optional<Fact> see() {
        return step.see().map(see -> Fact.of(sheet.words().say("bench.told-see"), WholeSentence.of(see)));
    }

    /** The timer, named where the screen does not name it already, with its length where that is a range; none where no length is known. */
    private Optional<BenchScreen.Clock> clock(BenchTimer timer, Optional<String> hand) {
        boolean named = timer.kind() == BenchTimer.Kind.WHOLE || hand.filter(timer.label()::equals).isPresent();
        Optional<String> range = Optional.of(timer.length()).filter(any -> timer.iso().isEmpty());
        String label = timer.kind() == BenchTimer.Kind.CHANGE ? sheet.words().say("bench-hand.next-change") : timer.label();
        return timer.seconds() == 0 ? Optional.empty() : Optional.of(new BenchScreen.Clock(timer.id(), timer.kind(), 0,
                named ? range : Optional.of(range.map(length -> sheet.words().more(label, length)).orElse(label))));
    }

    /** What follows a change that has no timer after it, because nobody waits for the next one. */
    private String overnight(int i) {
        return i + 1 < timers.size() && timers.get(i + 1).kind() == BenchTimer.Kind.CHANGE && timers.get(i + 1).seconds() == 0
                ? " " + sheet.words().say("bench-hand.overnight") : "";
    }

    private String change(BenchTimer timer) {
        String how = sheet.words().count("bench-hand.change",
                step.part(Part.Blotters.class).map(Part.Blotters::layers).orElse(1));
        return timer.seconds() > 0 ? how : sheet.words().say("bench-hand.next-morning") + " " + how;
    }

    /** The hand itself; in two, to do and to look, where it has too many words for one screen. */
    private List<Hand> fitting(Hand hand) {
        int words = words(hand.action()) + hand.amount().map(fact -> words(fact.name()) + 1).orElse(0)
                + hand.clocks().stream().flatMap(clock -> clock.label().stream()).mapToInt(BenchHands::words).sum()
                + step.see().filter(see -> hand.see().isPresent()).map(BenchHands::words).orElse(0);
        return hand.see().isEmpty() || hand.action().isEmpty() || words <= MOST_WORDS ? List.of(hand) : inTwo(hand);
    }

    /** To do, and then to look. */
    List<Hand> inTwo(Hand hand) {
        return List.of(new Hand(hand.name(), hand.action(), hand.amount(), Optional.empty(), hand.clocks(), hand.bath()),
                new Hand(Optional.of(hand.name().map(name -> sheet.words().say("bench-hand.look-at", "what", name))
                        .orElse(sheet.words().say("bench-hand.look"))), "", Optional.empty(), hand.see(), Optional.empty(), 0));
    }

    /** Whether both can be told on one screen. */
    static boolean fits(String one, String other) {
        return words(one + " " + other) <= MOST_WORDS;
    }

    private static int words(String text) {
        return text.strip().split("[\\s\\h]+").length;
    }

    /** As a reader counts them: what has a letter or a digit. */
    static int read(String text) {
        return (int) Stream.of(text.split("[\\s\\h]+")).filter(word -> word.codePoints().anyMatch(Character::isLetterOrDigit)).count();
    }
}
