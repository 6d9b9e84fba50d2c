package org.benchleaf.derive.preparation;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.calculate.Calculations;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.calculate.Origin;
import org.benchleaf.derive.figure.BatchPlan;
import org.benchleaf.derive.figure.Bench;
import org.benchleaf.derive.figure.Job;
import org.benchleaf.derive.figure.Ledger;
import org.benchleaf.derive.figure.PartFigures;
import org.benchleaf.derive.figure.Preparation;
import org.benchleaf.derive.figure.Scale;
import org.benchleaf.derive.figure.StandardVessels;
import org.benchleaf.derive.figure.Totals;
import org.benchleaf.derive.figure.Uses;
import org.benchleaf.derive.figure.VesselTolerances;
import org.benchleaf.derive.time.Timeline;
import org.benchleaf.derive.time.TimelineMaker;
import org.benchleaf.derive.time.WorkHours;
import org.benchleaf.message.Messages;
import org.benchleaf.model.Library;
import org.benchleaf.model.Part;
import org.benchleaf.model.Step;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * What is worked out of steps before their days and their results: quantities, lengths and preparations.
 *
 * @param preparations users before what they use
 */
public record Groundwork(Bench bench, TimelineMaker maker, Preparations planner, List<Preparation> preparations) {

    /** Puts the figures of a timeline among the others. */
    public void tell(Timeline timeline, List<Step> steps) {
        List<Figure.Given> critical = timeline.steps().stream().filter(Timeline.TimedStep::critical).filter(Timeline.TimedStep::known)
                .map(step -> Ledger.given(step.step(), "step on the longest path", step.takes(), origin(step))).toList();
        List<Figure.Given> hands = timeline.steps().stream().filter(Timeline.TimedStep::known)
                .map(this::hands).toList();
        Ledger ledger = bench.ledger();
        if (!critical.isEmpty()) {
            ledger.put(FigureKey.ofTimeline("total"), least("from the first start to the last end, without time off between steps",
                    timeline), hoursOf(timeline.total()), "critical-path", critical);
            ledger.put(FigureKey.ofTimeline("hands-on"), least("time that needs a person", timeline),
                    hoursOf(timeline.handsOn()), "sum", hands);
        }
        int people = steps.stream().mapToInt(Step::people).max().orElse(1);
        ledger.put(FigureKey.ofTimeline("people"), "people needed at once", Quantity.count(people), "largest",
                steps.stream().map(step -> Ledger.given(step.id(), "people", Quantity.count(step.people()),
                        Job.CASE_FILE)).toList());
    }

    /** What of a step needs a person; nobody gave it where the case states none, and the whole step is taken. */
    private Figure.Given hands(Timeline.TimedStep timed) {
        boolean stated = bench.source().step(timed.step()).flatMap(Step::handsOn).isPresent();
        return stated ? Ledger.given(timed.step(), "hands-on time", timed.handsOn(), Job.CASE_FILE)
                : Ledger.given(timed.step(), "whole time of the step, as no hands-on time is given", timed.handsOn(), Job.USUAL);
    }

    /** The figure of which the time of a step is the value, where its baths make it; else the case file. */
    private Origin origin(Timeline.TimedStep timed) {
        return bench.source().step(timed.step()).flatMap(step -> step.part(Part.Bath.class).flatMap(bath ->
                        bench.ledger().figure(FigureKey.ofStep(step, bath, "bath-time").id())))
                .filter(figure -> figure.value().lowIn(Unit.MINUTE) == timed.takes().lowIn(Unit.MINUTE)
                        && figure.value().highIn(Unit.MINUTE) == timed.takes().highIn(Unit.MINUTE))
                .<Origin>map(figure -> new Origin.OfFigure(figure.key())).orElse(Job.CASE_FILE);
    }

    private String least(String label, Timeline timeline) {
        return timeline.complete() ? label : bench.say("{time}, at least: not every step has its time on record", "time", bench.say(label));
    }

    private static Quantity hoursOf(Quantity time) {
        return time.highIn(Unit.HOUR) >= 2 ? time.to(Unit.HOUR) : time;
    }

    /** The preparations in the order in which they are begun. */
    public List<Preparation> inOrder(Timeline timeline) {
        Map<String, Double> starts = new HashMap<>();
        timeline.steps().forEach(step -> starts.put(step.step(), step.start().lowIn(Unit.MINUTE)));
        Optional<LocalDateTime> origin = timeline.days().stream().map(Timeline.ClockedStep::earliestStart)
                .min(Comparator.naturalOrder());
        origin.ifPresent(zero -> timeline.days().forEach(day -> starts.put(day.step(),
                (double) Duration.between(zero, day.earliestStart()).toMinutes())));
        return Preparations.inOrderOfBeginning(preparations, planner.begins(preparations, starts));
    }

    /** Does it for the cases and classes of one studio; keeps nothing of any. */
    public static final class Maker {

        private final Library library;
        private final Calculations calculations;
        private final WorkHours hours;
        private final VesselTolerances tolerances;

        public Maker(Library library) {
            this.library = library;
            this.calculations = new Calculations(library.formulary());
            this.hours = WorkHours.of(library.studio());
            this.tolerances = StandardVessels.of(library.formulary().table("glassware"));
        }

        public WorkHours hours() {
            return hours;
        }

        public Library library() {
            return library;
        }

        public Groundwork make(TreatmentCase source, List<Step> steps, Scale scale, Messages messages) {
            Bench bench = used(source, steps, scale, messages);
            return make(bench, timeline(bench, steps), BatchPlan.Planner.NONE);
        }

        /** What the steps use, before anything is made of it. */
        public Bench used(TreatmentCase source, List<Step> steps, Scale scale, Messages messages) {
            Bench bench = bench(source, scale, messages);
            steps.forEach(step -> new PartFigures(bench, step).work());
            return bench;
        }

        /** The times of steps whose uses are known. */
        public TimelineMaker timeline(Bench bench, List<Step> steps) {
            return new TimelineMaker(steps, bench.ledger(), hours, bench.messages());
        }

        /** What is made of it, in as many batches as are planned. */
        public Groundwork make(Bench bench, TimelineMaker maker, BatchPlan.Planner batches) {
            Preparations planner = new Preparations(bench, maker.lengths(), batches);
            List<Preparation> preparations = planner.make();
            Totals.work(bench);
            return new Groundwork(bench, maker, planner, preparations);
        }

        /** An empty bench. */
        public Bench bench(TreatmentCase source, Scale scale, Messages messages) {
            return new Bench(source, library, scale, new Ledger(calculations, library.methods(), library.phrases(), messages), new Uses(),
                    tolerances, messages);
        }
    }
}
