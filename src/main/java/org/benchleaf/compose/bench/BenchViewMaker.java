package org.benchleaf.compose.bench;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
import org.benchleaf.page.BenchTimer;
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

    /** What these clocks asked for is done once they run. */
    private static final Set<BenchTimer.Kind> PAST = EnumSet.of(BenchTimer.Kind.BATH, BenchTimer.Kind.CHANGE, BenchTimer.Kind.DROP,
            BenchTimer.Kind.WEIGHT);

    /** Words of the ways, of a clock before it runs, and of what opens. */
    private static final int BUTTONS = 11;

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
                Optional.of(sheet.words().say("bench-view.hold")), Optional.of(hold), "", false, Optional.empty(), Optional.empty(),
                List.of(), List.of(), Optional.empty(), Optional.empty(), List.of(), List.of(), "", List.of(), List.of(), false, List.of(),
                false, false)));
        BenchHands cut = new BenchHands(sheet, desk, step, told);
        List<BenchHands.Hand> whole = cut.all();
        List<BenchHands.Hand> hands = whole.stream().flatMap(hand -> (hand.see().isPresent() && !hand.action().isEmpty()
                && running(screen(step, told, hand, false, false, hand.equals(whole.get(whole.size() - 1)), false), true)
                > BenchHands.MOST_ON_SCREEN ? cut.inTwo(hand) : List.of(hand)).stream()).toList();
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
        Optional<Fact> otherwise = hand.clocks().isEmpty() || !wets(step, hand) ? Optional.empty()
                : named(told, Stream.of("bench.told-if-not")).stream().findFirst();
        // After the last change of blotters the sheet goes back under its weight: the step ends with what it is to come to, not there.
        boolean back = last && !hand.action().isEmpty() && step.part(Part.Blotters.class).isPresent();
        Optional<Fact> until = step.until().filter(end -> back || hand.action().isEmpty()
                && BenchHands.fits(step.see().orElse(""), end))
                .map(end -> Fact.of(sheet.words().say("bench.told-until"), WholeSentence.of(end)))
                .or(() -> dropped(hand)).or(() -> avoided(step, told, hand, last));
        List<Fact> limits = hand.clocks().isEmpty() ? List.of() : named(told, Stream.of("bench-fact.avoid", "bench.told-at-most"))
                .stream().filter(fact -> !until.equals(Optional.of(fact))).toList();
        BenchScreen screen = new BenchScreen(told.anchor(), name(told), hand.name(), Optional.empty(), hand.action(), false, hand.amount(),
                hand.see(), Stream.of(watch.stream(), looks(step, hand), limits.stream()).flatMap(facts -> facts).toList(),
                timedLooks(step, hand), until, otherwise, hand.clocks(), cautions,
                new CareLine(sheet, desk).shortened(cautions, care), told.wear(),
                told(told, Stream.of(hand.see().stream(), watch.stream(), limits.stream(), until.stream(), otherwise.stream())
                        .flatMap(facts -> facts.map(Fact::name)).toList()),
                drawn && !told.drawings().isEmpty(),
                notes(step, hand, first, last), last, enough);
        return running(screen, false) > BenchHands.MOST_ON_SCREEN && !isPast(screen) ? folded(screen) : screen;
    }

    /** What is written down, between what it should lie; what is added to a bath by the name of its stock. */
    private List<BenchScreen.Note> notes(Step step, BenchHands.Hand hand, boolean first, boolean last) {
        BenchNotes notes = new BenchNotes(sheet);
        ReadingRange ranges = new ReadingRange(sheet, desk);
        Stream<BenchScreen.Note> dry = Stream.of(step).filter(any -> first)
                .flatMap(any -> notes.dryBefore(step, desk.treatment().steps()).stream());
        return Stream.of(notes.ofTests(hand.clocks()).stream(), dry, notes.of(step, hand.bath(), first, last).stream()).flatMap(all -> all)
                .map(note -> note.named(ranges.added(step, note).orElse(note.label())).within(ranges.of(step, note))
                        .against(ReadingRange.sight(step, note))).toList();
    }

    private static BenchScreen folded(BenchScreen screen) {
        return new BenchScreen(screen.anchor(), screen.name(), screen.hand(), screen.hold(), screen.action(), true, screen.amount(),
                screen.see(), screen.watch(), screen.looks(), screen.until(), screen.otherwise(), screen.clocks(), screen.cautions(),
                screen.care(), screen.wear(), screen.told(), screen.drawn(), screen.notes(), screen.last(), screen.enough());
    }

    /** From what to keep away, where a screen has the room to tell it before its clock runs. */
    private Optional<Fact> avoided(Step step, BenchStep told, BenchHands.Hand hand, boolean last) {
        Optional<StepCare> care = Optional.ofNullable(desk.worked().care().get(step.id()));
        int others = Stream.of(Stream.of(name(told), hand.name().orElse(""), hand.action(), new CareLine(sheet, desk).shortened(
                        Stream.concat(told.supervised().stream(), told.cautions().stream()).map(BenchViewMaker::plain).toList(), care)),
                Stream.of(hand.amount(), hand.see()).flatMap(Optional::stream).map(BenchViewMaker::text),
                hand.clocks().stream().flatMap(clock -> clock.label().stream())).flatMap(texts -> texts)
                .mapToInt(BenchHands::read).sum();
        return hand.clocks().isEmpty() ? Optional.empty() : named(told, Stream.of("bench-fact.avoid")).stream().findFirst()
                .filter(avoid -> others + BenchHands.read(text(avoid)) + BUTTONS + (last ? 4 : 2) <= BenchHands.MOST_ON_SCREEN);
    }

    /** When a drop comes off, beside its clock. */
    private Optional<Fact> dropped(BenchHands.Hand hand) {
        return hand.clocks().stream().anyMatch(clock -> clock.kind() == BenchTimer.Kind.DROP)
                ? Optional.of(Fact.of(sheet.words().say("bench-hand.take-off"), sheet.words().say("bench-hand.off-when")))
                : Optional.empty();
    }

    /** What such a clock asked for is done once it runs; the screen tells it no longer. */
    private static boolean isPast(BenchScreen screen) {
        return screen.clocks().stream().map(BenchScreen.Clock::kind).anyMatch(PAST::contains);
    }

    /** How many words can be read while the clock of a screen runs; without its action where that is opened by a touch. */
    private int running(BenchScreen screen, boolean folded) {
        if (screen.clocks().isEmpty()) {
            return 0;
        }
        boolean whole = screen.clocks().get(0).kind() == BenchTimer.Kind.WHOLE;
        Stream<String> read = Stream.of(
                Stream.of(screen.name(), screen.hand().orElse(""), screen.care(), isPast(screen) ? "" : folded
                        ? sheet.words().say("bench-view.do") : screen.action()),
                Stream.of(screen.amount(), screen.see(), screen.until()).flatMap(Optional::stream).map(BenchViewMaker::text),
                screen.watch().stream().map(BenchViewMaker::text), screen.looks().stream().limit(1).map(look -> text(look.what())),
                screen.otherwise().map(Fact::name).stream(),
                screen.clocks().stream().flatMap(clock -> clock.label().stream()).filter(any -> !whole)).flatMap(texts -> texts);
        int buttons = 4 + screen.clocks().size() * (isPast(screen) ? 4 : 7) + (screen.last() ? 4 : screen.notes().isEmpty() ? 0 : 2);
        // The first clock that is started tells in a line how it rings.
        int ring = screen.name().equals(name(strip.get(0))) ? 5 : 0;
        int opened = ring + (screen.drawn() ? 1 : 0) + (screen.told().isEmpty() ? 0 : 1) + (screen.looks().isEmpty() ? 0 : 1);
        return read.mapToInt(BenchHands::read).sum() + buttons + opened;
    }

    private static String text(Fact fact) {
        return fact.name() + " " + fact.value().plain();
    }

    /** Where a sheet is wet, what to do when colour moves must not be looked for. */
    private static boolean wets(Step step, BenchHands.Hand hand) {
        return hand.bath() > 0 || step.part(Part.Mist.class).isPresent();
    }

    /** For what one looks while a clock runs, at no time that is told. */
    private Stream<Fact> looks(Step step, BenchHands.Hand hand) {
        List<String> open = step.checks().stream().filter(check -> !rings(hand) || Step.lookTime(check).isEmpty()).toList();
        return hand.clocks().isEmpty() || open.isEmpty() ? Stream.empty()
                : Stream.of(Fact.of(sheet.words().say("bench-hand.look"), String.join("; ", open)));
    }

    /** For what one looks, and when, so long after the sheet was laid in as the step tells: at each the clock rings. */
    private List<BenchScreen.Look> timedLooks(Step step, BenchHands.Hand hand) {
        return !rings(hand) ? List.of() : step.checks().stream().flatMap(check -> Step.lookTime(check).stream()
                .map(at -> new BenchScreen.Look(Fact.of(sheet.words().say("bench-hand.look"), check), Math.round(at.lowIn(Unit.SECOND)))))
                .sorted(Comparator.comparingLong(BenchScreen.Look::at)).toList();
    }

    /** Looks are counted from where a bath, or the whole step, begins. */
    private static boolean rings(BenchHands.Hand hand) {
        return hand.clocks().stream().map(BenchScreen.Clock::kind)
                .anyMatch(kind -> kind == BenchTimer.Kind.BATH || kind == BenchTimer.Kind.WHOLE);
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
