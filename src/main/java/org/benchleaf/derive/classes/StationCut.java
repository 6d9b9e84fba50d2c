package org.benchleaf.derive.classes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.derive.time.StepTime;
import org.benchleaf.derive.time.WorkHours;
import org.benchleaf.message.Messages;
import org.benchleaf.model.ClassDay;
import org.benchleaf.model.ClassWork;
import org.benchleaf.model.CourseClass;
import org.benchleaf.model.Formulary;
import org.benchleaf.model.LayOutRow;
import org.benchleaf.model.Library;
import org.benchleaf.model.Part;
import org.benchleaf.model.Solution;
import org.benchleaf.model.Step;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.plan.TimeLimit;
import org.benchleaf.plan.WorkPart;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * Cuts the steps of a class into the parts of one station's work, wherever it changes between hands-on and waiting or takes
 * another shared thing. The slow end of every time counts, in whole minutes, rounded up.
 *
 * <p>What a step takes follows from its parts: mist, a hood; a bath, a tray from lowering to draining, and a sink for making
 * and changing it; a bath brought to its pH, the meter; melted wax, the hot plate; weight, boards and weights until they are
 * taken off, boards only where it bears on the whole sheet; two people, a second pair of hands; a hold, the supervisor; what a
 * trainee does with the supervisor beside them, the supervisor; what its caution has done by turns, the turn.
 */
final class StationCut {

    static final String HOOD = "hood";
    static final String METER = "pH meter";
    static final String SINK = "sink";
    static final String HOT_PLATE = "hot plate";
    static final String TRAY = "tray";
    static final String BOARD = "board";
    static final String WEIGHT = "weight";
    static final String SUPERVISOR = "supervisor";
    static final String MAKE_BATH = "make the bath";
    static final String BATH_CHANGE = "bath change";
    static final String READ_BATH = "read the bath";
    static final String LIFT_OUT = "lift out";
    static final String LAY_IN_AGAIN = "lay in again";
    /** A look at the sheet in its first bath, so many minutes after it was laid in. */
    static final String LOOK = "look after min ";
    /** The first minutes of a sheet in its bath, which nobody leaves. */
    static final String WATCH = "watch the sheet in its bath";
    static final String CLEAR_AWAY = "clear away";
    static final String LOWER = "lower";
    static final String LIFT_AND_DRAIN = "lift and drain";
    static final String DRAIN = "drain";
    static final String LAY_BETWEEN_BLOTTERS = "lay between blotters";
    static final String BLOTTER_CHANGE = "blotter change";
    static final String TAKE_OUT = "take out";
    static final String BALANCE = "balance";
    /** The work of releasing what stands behind it. */
    static final String HOLD = "hold before ";
    /** The station's own trainees. */
    static final String HANDS = "trainee";
    /** A second pair of hands, wherever it comes from. */
    static final String SECOND_HANDS = "second pair of hands";

    /** A wait without a limit: it is kept short, and may be any length. */
    private static final int NO_LIMIT = 1_000_000;
    /** What lies under weight for longer than these minutes is weighed on two days. */
    private static final int A_DAY = 24 * 60;

    private final TreatmentCase source;
    private final ClassDay day;
    /** Minutes for which the meter is rinsed before each use; 0 where nobody else had it. */
    private final int rinsing;
    private final WorkHours hours;
    private final Formulary formulary;
    private final LayOutRow boards;
    private final PlanCare care;
    private final BathAdditions additions;
    private final List<WorkPart> parts = new ArrayList<>();
    private final List<Taking> takings = new ArrayList<>();
    private final List<TimeLimit> limits = new ArrayList<>();
    private final List<Step> untimed = new ArrayList<>();
    /** The part of a step to which a limit before it leads. */
    private final Map<String, Integer> begins = new LinkedHashMap<>();
    private final Map<String, Integer> ends = new LinkedHashMap<>();
    private final Map<String, Integer> bathsMade = new LinkedHashMap<>();
    private final List<Integer> supervised = new ArrayList<>();
    /** Whether the sheet comes out of a bath. */
    private boolean bathed;
    /** What is done to the last bath while the sheet lies. */
    private final List<Due> due = new ArrayList<>();

    /** Work of a step that is done later, while the sheet waits: what it takes, and since which part the tray is in use for it. */
    private record Due(Step step, String name, int minutes, String thing, Optional<Integer> tray) {
    }

    /** So many of a thing, by its name, taken from the begin of one part to the end of another. */
    record Taking(String thing, String step, int first, int last, int amount) {
    }

    StationCut(TreatmentCase source, List<Step> steps, CourseClass course, WorkHours hours, Library library, PlanCare care,
            BathAdditions additions) {
        this.source = source;
        this.day = course.day();
        this.hours = hours;
        this.formulary = library.formulary();
        this.boards = library.reference().layOut().get("board");
        this.care = care;
        this.additions = additions;
        this.rinsing = day.shared().getOrDefault(METER, course.stations()) < course.stations() ? minutesOf(ClassWork.RINSING_THE_METER) : 0;
        Optional<Step> firstWet = steps.stream().filter(StationCut::isWetting).findFirst().filter(wet -> steps.stream().anyMatch(step ->
                isWeighed(step) && steps.indexOf(step) > steps.indexOf(wet)));
        steps.forEach(step -> {
            firstWet.filter(step::equals).ifPresent(wet -> weigh(wet, BesideWork.WEIGH_DRY));
            steps.stream().filter(bath -> madeBefore(bath, steps).equals(step.id())).forEach(this::makeBath);
            cut(step);
        });
        meanwhile(Integer.MAX_VALUE);
        if (!parts.isEmpty()) {
            clearAway(steps.get(steps.size() - 1));
        }
        day.limits().forEach(this::limit);
    }

    List<WorkPart> parts() {
        return parts;
    }

    List<Taking> takings() {
        return takings;
    }

    List<TimeLimit> limits() {
        return limits;
    }

    /** The parts at which the supervisor stands beside whoever does them, releases apart. */
    List<Integer> supervised() {
        return supervised;
    }

    /** What the stations take turns at. */
    Set<String> turns() {
        return care.turns();
    }

    /** Steps that do not say how long they take. */
    List<Step> untimed() {
        return untimed;
    }

    /** A bath stands ready before the first step that has a limit to it; else it is made just before its own. */
    private String madeBefore(Step bath, List<Step> steps) {
        if (bath.part(Part.Bath.class).isEmpty()) {
            return "";
        }
        return steps.stream().map(Step::id).filter(id -> id.equals(bath.id())
                || day.limits().stream().anyMatch(limit -> limit.from().equals(id) && limit.to().equals(bath.id())))
                .findFirst().orElse("");
    }

    private void makeBath(Step step) {
        Part.Bath bath = step.part(Part.Bath.class).orElseThrow();
        boolean metered = source.isBroughtToPh(bath);
        int made = hands(step, MAKE_BATH, ofCase(ClassWork.MAKING_A_BATH, bath.filling()).orElseGet(() -> making(bath))
                + (metered ? rinsing : 0));
        take(SINK, step, made, made);
        if (metered) {
            take(METER, step, made, made);
        }
        bathsMade.put(step.id(), made);
    }

    /** Filling the tray and, unless the class states the time of both, every addition that is to be expected. */
    private int making(Part.Bath bath) {
        return minutesOf(ClassWork.MAKING_A_BATH) + (day.work().containsKey(ClassWork.MAKING_A_BATH) ? 0 : additions.minutes(bath));
    }

    private Optional<Solution> bathLiquid(Step step) {
        return step.part(Part.Bath.class).flatMap(bath -> source.solution(bath.of()));
    }

    /** What the last step has its work done at is free when it is cleared away. */
    private void clearAway(Step last) {
        int cleared = part(last, CLEAR_AWAY, minutesOf(ClassWork.CLEARING_AWAY));
        take(HANDS, last, cleared);
        List<String> things = use(last).map(ClassDay.Use::at).orElse(List.of());
        takings.replaceAll(each -> each.step.equals(last.id()) && things.contains(each.thing)
                ? new Taking(each.thing, each.step, each.first, cleared, each.amount) : each);
    }

    private static boolean isWetting(Step step) {
        return step.part(Part.Mist.class).isPresent() || step.part(Part.Bath.class).isPresent();
    }

    /** Whether the record asks what the sheet weighs. */
    private static boolean isWeighed(Step step) {
        return step.part(Part.Weighing.class).isPresent() || step.part(Part.Blotters.class).isPresent();
    }

    private void weigh(Step step, String name) {
        int weighed = hands(step, name, minutesOf(ClassWork.WEIGHING));
        if (day.shared().containsKey(BALANCE)) {
            take(BALANCE, step, weighed);
        }
    }

    /** A bath that stood ready while other work was done is read again, for an open bath drifts: at the release of the lowering, if any. */
    private void readAgain(Step step, Optional<Integer> hold) {
        Optional<Integer> made = Optional.ofNullable(bathsMade.get(step.id()));
        int before = hold.orElse(parts.size());
        if (made.filter(part -> part < before - 1).isPresent() && source.isBroughtToPh(step.part(Part.Bath.class).orElseThrow())) {
            take(METER, step, hold.orElseGet(() -> hands(step, BesideWork.READ_AGAIN, minutesOf(ClassWork.CHECKING_A_BATH)
                    + rinsing)));
        }
    }

    private void cut(Step step) {
        int first = parts.size();
        if (step.hold().isEmpty()) {
            readAgain(step, Optional.empty());
        }
        Optional<Integer> before = ends.values().stream().filter(end -> end >= 0).max(Comparator.naturalOrder());
        step.hold().ifPresent(hold -> {
            int held = hands(step, HOLD + hold.before(), minutesOf(ClassWork.HOLD));
            take(SUPERVISOR, step, held, held);
            readAgain(step, Optional.of(held));
            // What was released begins at once.
            limits.add(new TimeLimit(held, held + 1, 0, true));
            before.ifPresent(end -> hold.atMost().ifPresent(limit -> limits.add(
                    new TimeLimit(end, held + 1, (int) Math.floor(limit.lowIn(Unit.MINUTE)), true))));
        });
        begins.put(step.id(), parts.size());
        if (bathed) {
            keptShort();
        }
        if (step.part(Part.Bath.class).isPresent()) {
            bath(step, step.part(Part.Bath.class).get());
        } else if (step.part(Part.Blotters.class).isPresent()) {
            blotters(step, step.part(Part.Blotters.class).get());
        } else {
            work(step);
        }
        ends.put(step.id(), parts.size() - 1);
        bathed = step.part(Part.Bath.class).isPresent();
        step.atMost().map(StationCut::minutes).ifPresent(limit -> longest(first, parts.size() - 1, limit));
    }

    /** A step's own limit runs from its begin to its end. */
    private void longest(int first, int last, int limit) {
        if (first < last) {
            limits.add(new TimeLimit(first, last,
                    Math.max(0, limit - parts.get(first).minutes() - parts.get(last).minutes()), true));
        }
    }

    private void bath(Step step, Part.Bath bath) {
        int lowered = hands(step, LOWER, use(step).flatMap(ClassDay.Use::takes).map(StationCut::minutes)
                .orElse(minutesOf(ClassWork.LOWERING)));
        at(step, lowered);
        together(step, lowered);
        if (!bath.isTimed()) {
            untimed.add(step);
            return;
        }
        int made = bathsMade.get(step.id());
        for (int number = 1; number <= bath.baths(); number++) {
            if (number > 1) {
                made = change(step, bath, number - 1);
            }
            int lasting = minutes(bath.lasting(number).span());
            if (number == 1) {
                lookedAt(step, lasting);
            } else {
                waiting(step, "bath " + number, lasting);
            }
            keptShort();
            fresh(step, made);
        }
        drained(step);
        if (source.isBroughtToPh(bath)) {
            due.add(new Due(step, BesideWork.READ_USED, minutesOf(ClassWork.CHECKING_A_BATH) + rinsing, METER, Optional.empty()));
        }
        due.add(new Due(step, BesideWork.EMPTY_TRAY, minutesOf(ClassWork.EMPTYING_A_TRAY), SINK, Optional.of(lowered)));
    }

    /** Does what is due if it fits into a wait, and tells how much of the wait is left. */
    private int meanwhile(int wait) {
        if (due.isEmpty() || wait <= due.stream().mapToInt(Due::minutes).sum()) {
            return wait;
        }
        int left = wait;
        for (Due one : due) {
            keptShort();
            int done = hands(one.step(), one.name(), one.minutes());
            if (!one.thing().equals(BALANCE) || day.shared().containsKey(BALANCE)) {
                take(one.thing(), one.step(), done);
            }
            one.tray().ifPresent(lowered -> take(TRAY, one.step(), lowered, done));
            left -= one.minutes();
        }
        due.clear();
        return left;
    }

    /** The first bath with the looks that the step asks for. */
    private void lookedAt(Step step, int lasting) {
        int lain = 0;
        for (int look : Looks.after(step).stream().filter(minute -> minute < lasting).toList()) {
            if (look > lain) {
                lain(step, look - lain);
            }
            int looked = hands(step, LOOK + look, minutesOf(ClassWork.LOOK));
            limits.add(new TimeLimit(looked - 1, looked, 0, true));
            lain = look + parts.get(looked).minutes();
        }
        if (lasting > lain) {
            waiting(step, "bath 1", lasting - lain);
        }
    }

    /** Nobody leaves a sheet before a look at it that is no farther off than the look itself takes. */
    private void lain(Step step, int minutes) {
        boolean watched = minutes <= minutesOf(ClassWork.LOOK);
        int part = waiting(step, watched ? WATCH : "bath 1", minutes);
        if (watched) {
            take(HANDS, step, part);
        }
    }

    /** Lifted by all whom the step asks for, drained by one; the last part. */
    private int drained(Step step) {
        int minutes = minutesOf(ClassWork.DRAINING);
        int moving = minutesOf(ClassWork.MOVING_A_WET_SHEET);
        if (step.people() == 1 || minutes <= moving) {
            return together(step, hands(step, LIFT_AND_DRAIN, minutes));
        }
        int lifted = together(step, hands(step, LIFT_OUT, moving));
        limits.add(new TimeLimit(lifted, lifted + 1, 0, true));
        return hands(step, DRAIN, minutes - moving);
    }

    /** All whom the step asks for are at a part; the part. */
    private int together(Step step, int part) {
        if (step.people() > 1) {
            take(SECOND_HANDS, step, part);
        }
        return part;
    }

    /** A bath keeps until the next part, in which the sheet is lifted out of it; it is made no sooner than need be. */
    private void fresh(Step step, int made) {
        bathLiquid(step).flatMap(Solution::keeps).ifPresent(keeps -> limits.add(new TimeLimit(made, parts.size(),
                (int) Math.floor(keeps.lowIn(Unit.MINUTE)), true)));
    }

    /**
     * A change as the case tells it has the reading of the meter in it. Where it takes two, lifting out and laying in again are parts of
     * their own. Returns the part in which the tray is filled.
     */
    private int change(Step step, Part.Bath bath, int number) {
        Optional<Integer> told = ofCase(ClassWork.BATH_CHANGE, bath.changing());
        int all = told.orElse(minutesOf(ClassWork.BATH_CHANGE));
        int moving = step.people() > 1 ? Math.min(minutesOf(ClassWork.MOVING_A_WET_SHEET), (all - 1) / 2) : 0;
        int first = parts.size();
        moved(step, LIFT_OUT, moving);
        boolean metered = source.isBroughtToPh(bath);
        int changed = numbered(step, BATH_CHANGE, number, all - 2 * moving + (metered && told.isPresent() ? rinsing : 0));
        take(SINK, step, changed);
        if (metered && told.isPresent()) {
            take(METER, step, changed);
        } else if (metered) {
            take(METER, step, hands(step, READ_BATH, minutesOf(ClassWork.CHECKING_A_BATH)
                    + minutesOf(ClassWork.READING_A_BATH) + rinsing));
        }
        moved(step, LAY_IN_AGAIN, moving);
        // The sheet waits in its bath, not beside it.
        for (int part = first; part < parts.size() - 1; part++) {
            limits.add(new TimeLimit(part, part + 1, 0, false));
        }
        return changed;
    }

    /** The sheet is moved on its carrier by all whom the step asks for. */
    private void moved(Step step, String name, int minutes) {
        if (minutes > 0) {
            together(step, hands(step, name, minutes));
        }
    }

    /** The next part ends a wait with a wet sheet, which is no longer than need be. */
    private void keptShort() {
        limits.add(new TimeLimit(parts.size() - 1, parts.size(), NO_LIMIT, true));
    }

    private void blotters(Step step, Part.Blotters blotters) {
        weigh(step, BesideWork.WEIGH_WET);
        keptShort();
        int laid = hands(step, LAY_BETWEEN_BLOTTERS, minutesOf(ClassWork.LAYING_IN));
        due.add(0, new Due(step, BesideWork.WEIGH_WEB, minutesOf(ClassWork.WEIGHING), BALANCE, Optional.empty()));
        at(step, laid);
        int boarded = laid;
        // What is weighed when it is laid under the boards has been blotted without them.
        if (step.part(Part.Weighing.class).flatMap(Part.Weighing::restrained).isPresent()) {
            keptShort();
            weigh(step, BesideWork.WEIGH_BLOTTED);
            boarded = parts.size();
        }
        int lying = 0;
        for (int number = 1; number <= blotters.changes().size(); number++) {
            int wait = blotters.changes().get(number - 1).map(StationCut::minutes)
                    .orElse((int) Math.ceil(hours.night().low()));
            waiting(step, "between blotters " + number, meanwhile(wait));
            keptShort();
            int change = numbered(step, BLOTTER_CHANGE, number, minutesOf(ClassWork.BLOTTER_CHANGE));
            lying += wait + parts.get(change).minutes();
        }
        pressed(step, laid, boarded, lying);
    }

    /** Under weight for as long as the step says, then taken out. */
    private void pressed(Step step, int laid, int boarded, int already) {
        Optional<Part.Press> press = step.part(Part.Press.class);
        press.flatMap(Part.Press::time).map(StationCut::minutes).filter(time -> time > already)
                .ifPresent(time -> waiting(step, "under weight", time - already));
        if (press.isPresent()) {
            int out = hands(step, TAKE_OUT, minutesOf(ClassWork.TAKING_OUT));
            int free = weighedDried(step, press.get(), out);
            // What the class has the work done at is free when the sheet is taken off it.
            takings.replaceAll(each -> each.first == laid && each.last == laid && use(step).map(ClassDay.Use::at).orElse(List.of())
                    .contains(each.thing) ? new Taking(each.thing, each.step, laid, out, each.amount) : each);
            if (press.get().height().isEmpty()) {
                takings.add(new Taking(BOARD, step.id(), boarded, free, boards.each()));
            }
            takings.add(new Taking(WEIGHT, step.id(), boarded, out, press.get().weights()));
        }
    }

    /** A sheet of which the mass tells when it is dry lies under its board until it is weighed; the part with which its boards are free. */
    private int weighedDried(Step step, Part.Press press, int out) {
        if (step.part(Part.Weighing.class).isEmpty() || press.time().filter(time -> minutes(time) > A_DAY).isEmpty()) {
            return out;
        }
        keptShort();
        weigh(step, BesideWork.WEIGH_DRIED);
        return parts.size() - 1;
    }

    /** A step of one kind of work: the hands first, what is left of its time after. */
    private void work(Step step) {
        StepTime time = StepTime.of(step, Optional.empty(), hours, new Messages());
        Optional<Integer> own = use(step).flatMap(ClassDay.Use::takes).map(StationCut::minutes);
        int takes = own.orElse((int) Math.ceil(time.takes().high()));
        if (takes == 0) {
            untimed.add(step);
            return;
        }
        int hands = own.isPresent() ? takes : (int) Math.ceil(time.handsOn().high());
        int worked = hands > 0 ? hands(step, step.kind().word(), hands) : waiting(step, step.kind().word(), takes);
        at(step, worked);
        byItsParts(step, worked);
        if (hands > 0 && takes > hands) {
            waiting(step, "wait", takes - hands);
        }
        pressed(step, worked, worked, step.takes().isPresent() ? 0 : takes);
    }

    private void byItsParts(Step step, int worked) {
        care.turn(step).ifPresent(turn -> take(turn, step, worked));
        boolean extraction = step.part(Part.Cleaning.class).filter(Part.Cleaning::extraction).isPresent();
        if (step.part(Part.Mist.class).isPresent() || extraction) {
            take(HOOD, step, worked);
        }
        if (step.part(Part.Fixing.class).filter(StationCut::isVolatileWax).isPresent()) {
            take(HOT_PLATE, step, worked);
        }
        together(step, worked);
    }

    /** Whether a wax is melted onto the sheet that leaves it as vapour. */
    static boolean isVolatileWax(Part.Fixing fixing) {
        return fixing.method().equals("volatile wax");
    }

    private Optional<ClassDay.Use> use(Step step) {
        return Optional.ofNullable(day.uses().get(step.id()));
    }

    private void at(Step step, int part) {
        List<String> things = use(step).map(ClassDay.Use::at).orElse(List.of());
        things.stream().distinct().forEach(thing -> takings.add(new Taking(thing, step.id(), part, part,
                Collections.frequency(things, thing))));
    }

    /** Minutes of a kind of work, as the class states it, else as is usual. */
    int minutesOf(ClassWork kind) {
        return minutes(Optional.ofNullable(day.work().get(kind)).orElseGet(() -> formulary.constant(kind.usual()).value()));
    }

    /** What the case tells, where the class does not state its own. */
    private Optional<Integer> ofCase(ClassWork kind, Optional<Quantity> told) {
        return told.filter(any -> !day.work().containsKey(kind)).map(StationCut::minutes);
    }

    /** Work that is done several times, which has a number in its name. */
    private int numbered(Step step, String kind, int number, int minutes) {
        return hands(step, kind + " " + number, kind, minutes);
    }

    private int hands(Step step, String name, int minutes) {
        return hands(step, name, name, minutes);
    }

    private int hands(Step step, String name, String kind, int minutes) {
        int part = part(step, name, kind, minutes);
        take(HANDS, step, part);
        if (care.isSupervised(step) && !name.startsWith(HOLD) && !BesideWork.ALL.contains(name)) {
            take(SUPERVISOR, step, part);
            supervised.add(part);
        }
        return part;
    }

    /** Waiting begins with the end of what went before. */
    private int waiting(Step step, String name, int minutes) {
        int part = part(step, name, minutes);
        if (part > 0) {
            limits.add(new TimeLimit(part - 1, part, 0, false));
        }
        return part;
    }

    private int part(Step step, String name, int minutes) {
        return part(step, name, name, minutes);
    }

    private int part(Step step, String name, String kind, int minutes) {
        parts.add(new WorkPart(step.id() + ": " + name, kind, minutes));
        return parts.size() - 1;
    }

    private void take(String thing, Step step, int part) {
        take(thing, step, part, part);
    }

    private void take(String thing, Step step, int first, int last) {
        // What the class states itself counts before what the kind of the step does.
        if (takings.stream().noneMatch(each -> each.thing.equals(thing) && each.first <= last && first <= each.last)) {
            takings.add(new Taking(thing, step.id(), first, last, 1));
        }
    }

    private void limit(ClassDay.Between limit) {
        Integer from = ends.get(limit.from());
        Integer to = begins.get(limit.to());
        if (from != null && to != null && from < to) {
            limits.add(new TimeLimit(from, to, (int) Math.floor(limit.within().lowIn(Unit.MINUTE)), true));
        }
    }

    /** Whole minutes, the slow end rounded up. */
    static int minutes(Quantity time) {
        return (int) Math.ceil(time.highIn(Unit.MINUTE));
    }
}
