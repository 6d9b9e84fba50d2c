package org.benchleaf.compose.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.compose.part.BathTimes;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.part.TimeWords;
import org.benchleaf.derive.time.Timeline;
import org.benchleaf.model.Part;
import org.benchleaf.model.StatedTime;
import org.benchleaf.model.StatedValue.Form;
import org.benchleaf.model.Step;
import org.benchleaf.page.BenchTimer;
import org.benchleaf.page.Paths;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Finds what is timed in a step: each bath, each change of blotters, the looks, or the whole step. */
public final class BenchTimers {

    /** Longer than a working day nobody waits beside a timer. */
    private static final double LONGEST_HOURS = 10;

    private final Sheet sheet;
    private final CaseDesk desk;

    public BenchTimers(Sheet sheet, CaseDesk desk) {
        this.sheet = sheet;
        this.desk = desk;
    }

    /** The timers of a step, in the order in which they are started. */
    public List<BenchTimer> of(Step step, Timeline.TimedStep timed) {
        List<BenchTimer> timers = new ArrayList<>(drops(step));
        step.part(Part.Bath.class).ifPresent(bath -> timers.addAll(baths(step, bath, timed)));
        step.part(Part.Blotters.class).ifPresent(blotters -> timers.addAll(changes(step, blotters, timed)));
        step.part(Part.Chamber.class).flatMap(Part.Chamber::lookEvery).ifPresent(every -> timers.add(
                timer(step, BenchTimer.Kind.LOOK, "look", sheet.words().say("bench.timer-look"), every, Optional.empty())));
        step.part(Part.Press.class).flatMap(Part.Press::time).filter(BenchTimers::isShort).ifPresent(time ->
                timers.add(timer(step, BenchTimer.Kind.WEIGHT, "weight", sheet.words().say("bench.timer-weight"), time, Optional.empty())));
        if (timers.isEmpty() && timed.known() && timed.takes().low() > 0 && isShort(timed.takes())) {
            timers.add(timer(step, BenchTimer.Kind.WHOLE, "whole", sheet.words().say("bench.timer-whole"), timed.takes(),
                    Optional.empty()).dueBy(seconds(step.atMost())));
        }
        return chained(timers);
    }

    /** What stands longer than a day at the bench is no less timed: a test in a chamber rings as a drop does. */
    private List<BenchTimer> drops(Step step) {
        List<BenchTimer> timers = new ArrayList<>();
        for (BenchDrops.Drop drop : new BenchDrops(sheet, desk).of(step)) {
            timers.add(timer(step, BenchTimer.Kind.DROP, "drop-" + (timers.size() + 1), sheet.words().more(drop.with(), drop.on()),
                    drop.dwell(), Optional.empty()));
        }
        return timers;
    }

    /** Baths and changes follow each other; a look is followed by the next look. */
    private static List<BenchTimer> chained(List<BenchTimer> timers) {
        List<BenchTimer> chained = new ArrayList<>();
        for (int i = 0; i < timers.size(); i++) {
            BenchTimer timer = timers.get(i);
            boolean follows = i + 1 < timers.size() && timers.get(i + 1).kind() == timer.kind()
                    && timer.kind() != BenchTimer.Kind.DROP
                    && timers.get(i + 1).seconds() > 0;
            chained.add(timer.kind() == BenchTimer.Kind.LOOK ? timer.followedBy(timer.id())
                    : follows ? timer.followedBy(timers.get(i + 1).id()) : timer);
        }
        return chained;
    }

    private static boolean isShort(Quantity time) {
        return time.highIn(Unit.HOUR) <= LONGEST_HOURS;
    }

    private List<BenchTimer> baths(Step step, Part.Bath bath, Timeline.TimedStep timed) {
        List<BenchTimer> timers = new ArrayList<>();
        for (int number = 1; bath.isTimed() && number <= Math.max(bath.baths(), bath.atMost().orElse(0)); number++) {
            String label = sheet.words().say(number > bath.baths() ? "bench.timer-bath-more" : "bench.timer-bath", "n", number);
            StatedTime lying = bath.lasting(number);
            Optional<Quantity> at = due(step, timed, number, bath.baths());
            timers.add(new BenchTimer(id(step, "bath-" + number), label, new TimeWords(sheet).of(lying),
                    Math.round(lying.stated().lowIn(Unit.SECOND)), lying.form() == Form.ONE ? iso(lying.stated()) : "",
                    BenchTimer.Kind.BATH, Optional.empty(), due(at), seconds(at)));
        }
        return timers;
    }

    /** When a planned bath is over, counted with filling and changing; empty where nobody tells how long these take. */
    private Optional<Quantity> due(Step step, Timeline.TimedStep timed, int number, int baths) {
        Optional<Quantity> last = new BathTimes(sheet, desk, step).inAll();
        return last.isEmpty() || number > baths ? Optional.empty() : number == baths ? last : timed.moments().stream()
                .filter(moment -> moment.kind().equals("bath change") && moment.number() == number).map(Timeline.Moment::at)
                .findFirst();
    }

    private List<BenchTimer> changes(Step step, Part.Blotters blotters, Timeline.TimedStep timed) {
        List<BenchTimer> timers = new ArrayList<>();
        List<Timeline.Moment> moments = timed.moments().stream()
                .filter(moment -> moment.kind().equals("blotter change")).toList();
        for (int i = 0; i < blotters.changes().size() && i < moments.size(); i++) {
            Timeline.Moment moment = moments.get(i);
            String label = sheet.words().say("bench.timer-change", "n", moment.number());
            timers.add(blotters.changes().get(i)
                    .map(after -> timer(step, BenchTimer.Kind.CHANGE, "change-" + moment.number(), label, after,
                            moment.number() == 1 ? Optional.empty() : Optional.of(moment.at())))
                    .orElseGet(() -> new BenchTimer(id(step, "change-" + moment.number()), label,
                            sheet.words().say("bench.overnight"), 0, "", BenchTimer.Kind.CHANGE, Optional.empty(), Optional.empty(), 0)));
        }
        return timers;
    }

    /** A timer that is over when so much of the step has passed. */
    private BenchTimer timer(Step step, BenchTimer.Kind kind, String name, String label, Quantity time, Optional<Quantity> at) {
        return new BenchTimer(id(step, name), label, sheet.numbers().duration(time).text(),
                Math.round(time.lowIn(Unit.SECOND)), iso(time), kind, Optional.empty(), due(at), seconds(at));
    }

    private static long seconds(Optional<Quantity> at) {
        return at.map(when -> Math.round(when.lowIn(Unit.SECOND))).orElse(0L);
    }

    private Optional<String> due(Optional<Quantity> at) {
        return at.map(when -> sheet.words().say("bench.timer-due", "time", sheet.numbers().duration(when).text()));
    }

    /** A range has no one length that a program could be told. */
    private String iso(Quantity time) {
        return time.lowIn(Unit.SECOND) == time.highIn(Unit.SECOND) ? sheet.numbers().iso(time.exact()) : "";
    }

    private static String id(Step step, String name) {
        return "timer-" + Paths.slug(step.id()) + "-" + name;
    }
}
