package org.benchleaf.derive.classes;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.derive.classes.ClassDraws.Draw;
import org.benchleaf.derive.figure.BatchPlan;
import org.benchleaf.derive.figure.Bench;
import org.benchleaf.derive.figure.Reading;
import org.benchleaf.derive.figure.Uses;
import org.benchleaf.derive.time.WorkHours;
import org.benchleaf.message.ClassMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.model.CourseClass;
import org.benchleaf.model.Solution;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * When a class makes each solution, worked backwards from when it is drawn: once if it keeps so long, else in as few batches
 * as are fresh until they have been used. What a solution is needed for is known before the solution itself.
 */
final class ClassBatches implements BatchPlan.Planner {

    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ENGLISH);

    private final CourseClass course;
    private final Bench bench;
    private final ClassDraws draws;
    private final WorkHours hours;
    private final Messages messages;
    private final Map<String, List<ClassPlan.Start>> starts = new LinkedHashMap<>();

    /**
     * Makes ready to plan.
     *
     * @param bench holds what the steps use
     * @param hours without the days on which the class is closed
     * @param messages for what cannot be fresh when it is used
     */
    ClassBatches(CourseClass course, Bench bench, ClassDraws draws, WorkHours hours, Messages messages) {
        this.course = course;
        this.bench = bench;
        this.draws = draws;
        this.hours = hours;
        this.messages = messages;
    }

    /** When each batch of what has been asked for is begun, the earliest first. */
    List<ClassPlan.Start> starts() {
        return starts.values().stream().flatMap(List::stream).sorted(Comparator.comparing(ClassPlan.Start::begin)).toList();
    }

    @Override
    public Optional<BatchPlan> of(Solution solution) {
        Map<Uses.Use, List<Draw>> drawn = new LinkedHashMap<>();
        bench.uses().of(solution.id()).forEach(use -> drawn.put(use, by(use)));
        List<Draw> all = drawn.values().stream().flatMap(List::stream).distinct()
                .sorted(Comparator.comparing(Draw::from).thenComparing(Draw::station)).toList();
        if (all.isEmpty()) {
            return Optional.empty();
        }
        Making making = new Making(solution);
        boolean inTrays = ClassProvider.isMadeInTrays(bench, solution.id(), bench.source().steps());
        List<List<Draw>> batches = inTrays ? List.of(all) : making.batches(all);
        List<ClassPlan.Start> begun = new ArrayList<>();
        for (List<Draw> batch : batches) {
            begun.add(making.start(batch, begun.size() + 1, batches.size(), inTrays));
        }
        starts.put(solution.id(), begun);
        return inTrays ? Optional.empty() : Optional.of(new BatchPlan(batches.stream()
                .map(batch -> drawnFrom(batch, drawn)).toList()));
    }

    private List<Draw> by(Uses.Use use) {
        if (use.step()) {
            return bench.source().step(use.by()).map(step -> draws.of(step, use.of())).orElse(List.of());
        }
        if (ClassProvider.isMadeInTrays(bench, use.by(), bench.source().steps())) {
            return bench.uses().of(use.by()).stream().flatMap(tray -> by(tray).stream()).distinct().toList();
        }
        return starts.getOrDefault(use.by(), List.of()).stream()
                .map(start -> new Draw(use.by(), ClassDraws.ALL, start.begin(), start.begin())).toList();
    }

    /** What one batch serves of each use. */
    private static List<Uses.Use> drawnFrom(List<Draw> batch, Map<Uses.Use, List<Draw>> drawn) {
        List<Uses.Use> served = new ArrayList<>();
        drawn.forEach((use, times) -> {
            long here = batch.stream().filter(times::contains).count();
            if (here > 0) {
                served.add(use.part((double) here / times.size()));
            }
        });
        return served;
    }

    /** How one solution is made: what goes before its use, and how long it keeps after. */
    private final class Making {

        private final Solution solution;
        private final Quantity handsOn;
        private final double ready;

        Making(Solution solution) {
            this.solution = solution;
            this.handsOn = solution.handsOn().orElse(bench.constant("making-time").value());
            this.ready = solution.readyIn().orElse(handsOn).highIn(Unit.MINUTE);
        }

        /** The fewest batches, and of those the ones of which the largest is smallest. */
        List<List<Draw>> batches(List<Draw> all) {
            List<List<Draw>> fewest = grouped(all, all.size());
            return Stream.iterate((all.size() + fewest.size() - 1) / fewest.size(), most -> most < all.size(), most -> most + 1)
                    .map(most -> grouped(all, most)).filter(groups -> groups.size() == fewest.size()).findFirst().orElse(fewest);
        }

        private List<List<Draw>> grouped(List<Draw> all, int most) {
            List<List<Draw>> groups = new ArrayList<>();
            List<Draw> group = List.of();
            for (Draw draw : all) {
                if (group.isEmpty() || group.size() == most || !isFresh(draw, group.get(0))) {
                    group = new ArrayList<>();
                    groups.add(group);
                }
                group.add(draw);
            }
            return groups;
        }

        private boolean isFresh(Draw draw, Draw first) {
            return freshUntil(begin(first)).filter(draw.until()::isAfter).isEmpty();
        }

        private LocalDateTime begin(Draw first) {
            return FreeTime.latestBegin(hours, course.day().breaks(), first.from(), ready, handsOn.highIn(Unit.MINUTE));
        }

        private LocalDateTime made(LocalDateTime begin) {
            return WorkHours.plus(begin, ready);
        }

        private Optional<LocalDateTime> freshUntil(LocalDateTime begin) {
            return solution.keeps().map(keeps -> WorkHours.plus(made(begin), keeps.lowIn(Unit.MINUTE)));
        }

        ClassPlan.Start start(List<Draw> batch, int number, int of, boolean inTrays) {
            Draw first = batch.get(0);
            // What a station makes in its tray is made when the plan says so.
            LocalDateTime begin = inTrays ? first.from() : begin(first);
            if (!inTrays && !isFresh(first, first)) {
                messages.add(ClassMessages.NOT_FRESH.at(course.place(), "solution", solution.id(), "made", MOMENT.format(made(begin)),
                        "keeps", Reading.of(solution.keeps().orElseThrow()), "until", MOMENT.format(first.until())));
            }
            return new ClassPlan.Start(solution.id(), new ClassPlan.Batch(number, of, batch.stream().map(Draw::station)
                    .filter(station -> station != ClassDraws.ALL).distinct().sorted().toList(), freshUntil(begin)), begin, handsOn,
                    first.from(), inTrays);
        }
    }
}
