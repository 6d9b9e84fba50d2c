package org.benchleaf.derive.classes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.calculate.Origin;
import org.benchleaf.derive.figure.Bench;
import org.benchleaf.derive.figure.Job;
import org.benchleaf.message.ClassMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.model.CourseClass;
import org.benchleaf.model.Part;
import org.benchleaf.model.Step;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Works out the vapour in the room when the stations of a class mist in the order of their plan, and says where that is too much. */
final class ClassAir {

    private static final String SHARE = "vapour-exposure-limit";

    private final CourseClass course;
    private final Bench bench;
    private final Map<String, Figure> ofCase;
    private final Messages messages;

    /**
     * Prepares for one class.
     *
     * @param ofCase the figures of the case, for one sheet
     */
    ClassAir(CourseClass course, Bench bench, Map<String, Figure> ofCase, Messages messages) {
        this.course = course;
        this.bench = bench;
        this.ofCase = ofCase;
        this.messages = messages;
    }

    /** The air at each step that sprays. */
    List<ClassSupplies.Air> of(List<Step> steps, ScheduleReading reading) {
        List<ClassSupplies.Air> all = new ArrayList<>();
        for (Step step : steps) {
            step.part(Part.Mist.class).ifPresent(mist -> air(step, mist, reading).ifPresent(all::add));
        }
        return all;
    }

    private Optional<ClassSupplies.Air> air(Step step, Part.Mist mist, ScheduleReading reading) {
        List<ScheduleReading.Turn> turns = reading.turns().stream().filter(turn -> turn.step().equals(step.id()))
                .filter(ScheduleReading.Turn::isMainWork).toList();
        Optional<Figure> one = vapour(step, mist, "vapour-ppm");
        Optional<Figure> share = vapour(step, mist, SHARE);
        if (turns.isEmpty() || one.isEmpty() || share.isEmpty() || bench.library().studio().airChanges().isEmpty()) {
            return Optional.of(new ClassSupplies.Air(step.id(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()));
        }
        Optional<Figure> peak = bench.ledger().one(job(one.get(), turns, turns.size())
                .gives("peak", FigureKey.ofClass(course.id(), step.id(), "air"), "vapour in the air, strongest in the class"));
        Optional<Figure> limit = bench.ledger().one(job(share.get(), turns, turns.size())
                .gives("peak", FigureKey.ofClass(course.id(), step.id(), "air-share"), "share of the limit for a working day"));
        limit.ifPresent(figure -> tellTooMuch(step, figure, share.get(), turns));
        Optional<Figure> atOnce = bench.ledger().one(job(one.get(), Collections.nCopies(turns.size(), turns.get(0)), turns.size())
                .gives("peak", FigureKey.ofClass(course.id(), step.id(), "air-at-once"), "vapour in the air, all at the same time"));
        return Optional.of(new ClassSupplies.Air(step.id(), one, peak, limit, atOnce));
    }

    private Optional<Figure> vapour(Step step, Part.Mist mist, String name) {
        return Optional.ofNullable(ofCase.get(FigureKey.ofStep(step, mist, name).id()));
    }

    /** The first stations of the plan, each as often as it has sheets. */
    private Job job(Figure each, List<ScheduleReading.Turn> turns, int stations) {
        List<Quantity> starts = turns.stream().limit(stations).map(turn -> Quantity.of(turn.start(), Unit.MINUTE))
                .flatMap(start -> IntStream.range(0, course.sheetsEach()).mapToObj(any -> start)).toList();
        ScheduleReading.Turn turn = turns.get(0);
        return new Job("room-peak", course.place()).given("each", each).given("starts", starts, Origin.Place.CLASS)
                .given("over", Quantity.of(turn.end() - turn.start(), Unit.MINUTE), Origin.Place.CLASS)
                .given("air-changes", bench.library().studio().airChanges().orElseThrow(), Job.STUDIO);
    }

    private void tellTooMuch(Step step, Figure peak, Figure share, List<ScheduleReading.Turn> turns) {
        double allowed = bench.library().reference().limits().healthInAir().value().in(Unit.PERCENT);
        if (peak.value().highIn(Unit.PERCENT) <= allowed) {
            return;
        }
        int most = IntStream.range(1, turns.size()).filter(count -> bench.ledger().value("room-peak",
                job(share, turns, count).inputs(), "peak").filter(value -> value.highIn(Unit.PERCENT) <= allowed).isPresent())
                .max().orElse(0);
        messages.add(ClassMessages.TOO_MUCH_VAPOUR.at(course.place(), "step", step.id(), "stations", turns.size(),
                "share", Math.round(peak.value().highIn(Unit.PERCENT)), "limit", Math.round(allowed),
                "remedy", most == 0 ? "Not even one station would do in this room; work in a hood, or air the room better."
                        : "In the order of this plan " + most + " would do. Begin them farther apart, or work in a hood."));
    }
}
