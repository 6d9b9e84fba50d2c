package org.benchleaf.compose;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32;
import org.benchleaf.derive.Figure;
import org.benchleaf.derive.FigureKey;
import org.benchleaf.derive.StepCare;
import org.benchleaf.derive.Timeline;
import org.benchleaf.model.Part;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Step;
import org.benchleaf.quantity.Unit;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;

/** Makes the screens of the bench view from the steps as the sheet tells them. */
final class BenchViewMaker {

    private final Sheet sheet;
    private final CaseDesk desk;
    private final List<BenchStep> strip;

    BenchViewMaker(Sheet sheet, CaseDesk desk, List<BenchStep> strip) {
        this.sheet = sheet;
        this.desk = desk;
        this.strip = List.copyOf(strip);
    }

    /** The screens of every step, in order. */
    BenchView make() {
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
                step.after().stream().map(Paths::step).toList());
    }

    /** Short, and the same for the same words on every machine. */
    private static String fingerprint(List<BenchScreen> screens) {
        CRC32 sum = new CRC32();
        sum.update(screens.toString().getBytes(StandardCharsets.UTF_8));
        return Long.toHexString(sum.getValue());
    }

    private static String name(BenchStep step) {
        return step.number() + ". " + step.kind();
    }

    private List<BenchScreen> screens(Step step, BenchStep told) {
        List<BenchScreen> screens = new ArrayList<>();
        told.hold().ifPresent(hold -> screens.add(new BenchScreen(told.anchor(), name(told),
                Optional.of(sheet.words().say("bench-view.hold")), Optional.of(hold), "", Optional.empty(),
                Optional.empty(), Optional.empty(), List.of(), "", List.of(), List.of(), List.of(), false)));
        List<Hand> hands = hands(step, told);
        for (int i = 0; i < hands.size(); i++) {
            screens.add(screen(step, told, hands.get(i), i == 0, i == hands.size() - 1));
        }
        return screens;
    }

    /** One thing that a hand does within a step. */
    private record Hand(Optional<String> name, String action, Optional<String> timer, int bath) {
    }

    private List<Hand> hands(Step step, BenchStep told) {
        List<Hand> hands = new ArrayList<>();
        boolean baths = step.part(Part.Bath.class).flatMap(Part.Bath::each).isPresent();
        List<BenchTimer> timers = told.timers();
        hands.add(new Hand(baths ? Optional.of(timers.get(0).label()) : Optional.empty(), step.instruction(),
                timers.stream().findFirst().filter(timer -> timer.seconds() > 0).map(BenchTimer::id), baths ? 1 : 0));
        for (int i = 0; i < timers.size(); i++) {
            hand(step, timers, i).ifPresent(hands::add);
        }
        return hands;
    }

    /** A bath is timed by its own timer; after a change of blotters the time to the next one begins. */
    private Optional<Hand> hand(Step step, List<BenchTimer> timers, int i) {
        BenchTimer timer = timers.get(i);
        Optional<String> own = Optional.of(timer.id()).filter(id -> timer.seconds() > 0);
        return switch (timer.kind()) {
            case BATH -> i == 0 ? Optional.empty() : Optional.of(new Hand(Optional.of(timer.label()),
                    sheet.words().say("bench-hand.bath", "liquid", liquid(step)), own, i + 1));
            case CHANGE -> Optional.of(new Hand(Optional.of(timer.label()), change(step, timer),
                    i + 1 < timers.size() ? Optional.of(timers.get(i + 1)).filter(next -> next.seconds() > 0)
                            .map(BenchTimer::id) : Optional.empty(), 0));
            case WEIGHT -> i == 0 || timers.get(i - 1).kind() == BenchTimer.Kind.CHANGE ? Optional.empty()
                    : Optional.of(new Hand(Optional.of(timer.label()), sheet.words().say("bench-hand.weight"), own, 0));
            case LOOK, WHOLE -> Optional.empty();
        };
    }

    private String liquid(Step step) {
        return step.part(Part.Bath.class).map(bath -> new HazardMaker(sheet, desk).name(bath.of())).orElse("");
    }

    private String change(Step step, BenchTimer timer) {
        String how = sheet.words().count("bench-hand.change",
                step.part(Part.Blotters.class).map(Part.Blotters::layers).orElse(1));
        return timer.seconds() > 0 ? how : sheet.words().say("bench-hand.next-morning") + " " + how;
    }

    private BenchScreen screen(Step step, BenchStep told, Hand hand, boolean first, boolean last) {
        Optional<StepCare> care = Optional.ofNullable(desk.worked().care().get(step.id()));
        return new BenchScreen(told.anchor(), name(told), hand.name(), Optional.empty(), hand.action(),
                first || hand.bath() > 0 ? amount(step) : Optional.empty(),
                step.see().map(see -> Fact.of(sheet.words().say("bench.told-see"), CaseStudyPage.sentence(see))),
                hand.timer(), told.cautions().stream().map(BenchViewMaker::plain).toList(), careLine(told, care), told.wear(),
                told.told().stream().filter(fact -> !fact.name().equals(sheet.words().say("bench.told-see")))
                        .map(fact -> new Fact(fact.name(), plain(fact.value()))).toList(),
                new BenchNotes(sheet).of(step, hand.bath(), last), last);
    }

    private static Caution plain(Caution caution) {
        return new Caution(caution.level(), caution.word(), caution.name(), plain(caution.text()), plain(caution.first()));
    }

    /** Without links: a wet glove must not leave the bench by a slip, and the sheet links each term once. */
    private static Html plain(Html html) {
        Document document = Jsoup.parseBodyFragment(html.markup());
        document.select("a").unwrap();
        return new Html(document.body().html());
    }

    private Optional<Fact> amount(Step step) {
        return desk.worked().figures().values().stream()
                .filter(figure -> figure.key().owner() == FigureKey.Owner.STEP && figure.key().of().equals(step.id())
                        && figure.key().role() == FigureKey.Role.AT_HAND).findFirst()
                .map((Figure figure) -> Fact.of(figure.label(), sheet.amount(figure).text()));
    }

    /** The gravest level, its first two names and what to put on; every word of it stands in what opens below. */
    private String careLine(BenchStep told, Optional<StepCare> care) {
        List<String> parts = new ArrayList<>();
        if (!told.cautions().isEmpty()) {
            Caution worst = told.cautions().get(0);
            parts.add(worst.word() + ": " + worst.name());
        }
        care.map(StepCare::wear).orElse(List.of()).stream().map(desk.library().reference().equipment()::get)
                .map(Reference.Equipment::name).forEach(parts::add);
        return parts.isEmpty() ? sheet.words().say("bench-view.care-none") : String.join(" · ", parts);
    }
}
