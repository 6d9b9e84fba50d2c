package org.benchleaf.compose.bench;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import org.benchleaf.compose.part.CareLine;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.derive.hazard.StepCare;
import org.benchleaf.derive.time.Timeline;
import org.benchleaf.model.Part;
import org.benchleaf.model.Step;
import org.benchleaf.page.BenchScreen;
import org.benchleaf.page.BenchStep;
import org.benchleaf.page.BenchView;
import org.benchleaf.page.Caution;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Paths;
import org.benchleaf.quantity.Unit;
import org.benchleaf.text.Inline;
import org.benchleaf.text.RichText;
import org.benchleaf.text.TextMapping;
import org.benchleaf.words.WholeSentence;

/** Makes the screens of the bench view from the steps as the sheet tells them. */
public final class BenchViewMaker {

    private final Sheet sheet;
    private final CaseDesk desk;
    private final List<BenchStep> strip;

    public BenchViewMaker(Sheet sheet, CaseDesk desk, List<BenchStep> strip) {
        this.sheet = sheet;
        this.desk = desk;
        this.strip = List.copyOf(strip);
    }

    /** The screens of every step, in order. */
    public BenchView make() {
        List<BenchView.Stage> stages = new ArrayList<>();
        List<BenchScreen> screens = new ArrayList<>();
        for (int i = 0; i < strip.size(); i++) {
            Step step = desk.treatment().steps().get(i);
            stages.add(stage(step, strip.get(i), desk.worked().timeline().steps().get(i)));
            screens.addAll(screens(step, strip.get(i)));
        }
        return new BenchView(fingerprint(screens), desk.treatment().id(), desk.library().studio().closes().toString(),
                stages, screens, sheet.words().group("bench-view"));
    }

    private static BenchView.Stage stage(Step step, BenchStep told, Timeline.TimedStep time) {
        return new BenchView.Stage(told.anchor(), step.id(), name(told), Math.round(time.takes().lowIn(Unit.SECOND)),
                step.after().stream().map(Paths::step).toList(), step.waiting().flatMap(Step.Wait::time).filter(wait -> !wait.isOpen())
                        .map(wait -> Math.round(wait.span().lowIn(Unit.SECOND))).orElse(0L));
    }

    /** Short, and the same for the same words on every machine. */
    public static String fingerprint(List<?> parts) {
        CRC32 sum = new CRC32();
        sum.update(parts.toString().getBytes(StandardCharsets.UTF_8));
        return Long.toHexString(sum.getValue());
    }

    private static String name(BenchStep step) {
        return step.number() + ". " + step.kind();
    }

    private List<BenchScreen> screens(Step step, BenchStep told) {
        List<BenchScreen> screens = new ArrayList<>();
        told.hold().ifPresent(hold -> screens.add(new BenchScreen(told.anchor(), name(told),
                Optional.of(sheet.words().say("bench-view.hold")), Optional.of(hold), "", Optional.empty(), Optional.empty(),
                List.of(), Optional.empty(), Optional.empty(), List.of(), List.of(), "", List.of(), List.of(), false, List.of(),
                false, false)));
        List<BenchHands.Hand> hands = new BenchHands(sheet, desk, step, told).all();
        int shown = Math.max(0, hands.indexOf(hands.stream().filter(hand -> hand.see().isPresent()).findFirst().orElse(null)));
        for (int i = 0; i < hands.size(); i++) {
            screens.add(screen(step, told, hands.get(i), i == shown, i == 0, i == hands.size() - 1,
                    i < hands.size() - 1 && enough(step, hands, i)));
        }
        return screens;
    }

    /** Whether the last bath that is planned ends here: what follows is done only if it is still needed. */
    private static boolean enough(Step step, List<BenchHands.Hand> hands, int i) {
        return step.part(Part.Bath.class).filter(Part.Bath::isTimed).filter(bath -> hands.get(i + 1).bath() == bath.baths() + 1)
                .isPresent();
    }

    /** One screen; the drawings stand with what one should see. */
    private BenchScreen screen(Step step, BenchStep told, BenchHands.Hand hand, boolean drawn, boolean first, boolean last,
            boolean enough) {
        Optional<StepCare> care = Optional.ofNullable(desk.worked().care().get(step.id()));
        List<Caution> cautions = Stream.concat(told.supervised().stream(), told.cautions().stream())
                .map(BenchViewMaker::plain).toList();
        boolean timed = told.timers().stream().anyMatch(timer -> timer.seconds() > 0);
        List<Fact> watch = step.watch().filter(any -> !hand.clocks().isEmpty() || hand.action().isEmpty() && !timed)
                .map(watched -> Fact.of(sheet.words().say("bench.told-watch"), WholeSentence.of(watched))).stream().toList();
        List<Fact> limits = hand.clocks().isEmpty() ? List.of()
                : named(told, Stream.of("bench-fact.avoid", "bench.told-at-most"));
        Optional<Fact> otherwise = hand.clocks().isEmpty() || !wets(step, hand) ? Optional.empty()
                : named(told, Stream.of("bench.told-if-not")).stream().findFirst();
        // After the last change of blotters the sheet goes back under its weight: the step ends with what it is to come to, not there.
        boolean back = last && !hand.action().isEmpty() && step.part(Part.Blotters.class).isPresent();
        Optional<Fact> until = step.until().filter(end -> back || hand.action().isEmpty()
                && BenchHands.fits(step.see().orElse(""), end))
                .map(end -> Fact.of(sheet.words().say("bench.told-until"), WholeSentence.of(end)));
        return new BenchScreen(told.anchor(), name(told), hand.name(), Optional.empty(), hand.action(), hand.amount(),
                hand.see(), Stream.of(watch.stream(), looks(step, hand), limits.stream()).flatMap(facts -> facts).toList(),
                until, otherwise, hand.clocks(), cautions,
                new CareLine(sheet, desk).shortened(cautions, care), told.wear(),
                told(told, Stream.of(hand.see().stream(), watch.stream(), limits.stream(), until.stream(), otherwise.stream())
                        .flatMap(facts -> facts.map(Fact::name)).toList()),
                drawn && !told.drawings().isEmpty(),
                new BenchNotes(sheet).of(step, hand.bath(), first, last).stream()
                        .map(note -> note.within(new ReadingRange(sheet, desk).of(step, note))
                                .against(ReadingRange.sight(step, note))).toList(),
                last, enough);
    }

    /** Where a sheet is wet, what to do when colour moves must not be looked for. */
    private static boolean wets(Step step, BenchHands.Hand hand) {
        return hand.bath() > 0 || step.part(Part.Mist.class).isPresent();
    }

    /** For what one looks while a clock runs, and when, as the step ticks it off. */
    private Stream<Fact> looks(Step step, BenchHands.Hand hand) {
        return hand.clocks().isEmpty() ? Stream.empty()
                : step.checks().stream().map(check -> Fact.of(sheet.words().say("bench-hand.look"), check));
    }

    /** What the step says under these names. */
    private List<Fact> named(BenchStep told, Stream<String> keys) {
        List<String> names = keys.map(key -> sheet.words().say(key)).toList();
        return told.told().stream().filter(fact -> names.contains(fact.name()))
                .map(fact -> new Fact(fact.name(), plain(fact.value()))).toList();
    }

    /** What else the step says, but for what the screen tells at once. */
    private List<Fact> told(BenchStep told, List<String> atOnce) {
        return told.told().stream().filter(fact -> !atOnce.contains(fact.name()))
                .map(fact -> new Fact(fact.name(), plain(fact.value()))).toList();
    }

    private static Caution plain(Caution caution) {
        return new Caution(caution.level(), caution.word(), caution.name(), plain(caution.text()), plain(caution.first()));
    }

    /** Without links: a wet glove must not leave the bench by a slip, and the sheet links each term once. */
    private static RichText plain(RichText text) {
        return new RichText(new Unlinked().all(text.parts()));
    }

    private static final class Unlinked extends TextMapping {
        @Override
        public List<Inline> hyperlink(Inline.Hyperlink hyperlink) {
            return all(hyperlink.parts());
        }

        @Override
        public List<Inline> termLink(Inline.TermLink term) {
            return List.of(new Inline.Text(term.term()));
        }

        @Override
        public List<Inline> workedNumber(Inline.WorkedNumber number) {
            return List.of(new Inline.Text(number.text()));
        }
    }
}
