package org.benchleaf.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Settings;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.IntVar;
import org.chocosolver.solver.variables.Task;

/** The shortest end of a class, proved by a public constraint solver (Choco, with lazy clauses) from the same model. */
final class Oracle {

    private final Classroom classroom;
    private final int fails;
    private final Model model = new Model("class", Settings.init().setLCG(true));
    private final List<IntVar[]> starts = new ArrayList<>();

    private Oracle(Classroom classroom, int fails) {
        this.classroom = classroom;
        this.fails = fails;
    }

    /**
     * The shortest end; empty if it was not proved within a number of fails.
     *
     * @param most no end above it is looked for
     */
    static OptionalInt shortest(Classroom classroom, int most, int fails) {
        return new Oracle(classroom, fails).shortest(most);
    }

    private OptionalInt shortest(int most) {
        IntVar end = model.intVar("end", 0, most);
        classroom.stations().forEach(station -> order(station, most, end));
        for (int thing = 0; thing < classroom.things().size(); thing++) {
            count(thing, most);
        }
        model.setObjective(Model.MINIMIZE, end);
        Solver solver = model.getSolver();
        solver.limitFail(fails);
        solver.setSearch(Search.domOverWDegSearch(starts.stream().flatMap(Arrays::stream)
                .toArray(IntVar[]::new)), Search.inputOrderLBSearch(end));
        OptionalInt best = OptionalInt.empty();
        while (solver.solve()) {
            best = OptionalInt.of(end.getValue());
        }
        return solver.isStopCriterionMet() ? OptionalInt.empty() : best;
    }

    private void order(Station station, int most, IntVar end) {
        int parts = station.parts().size();
        IntVar[] own = model.intVarArray(station.name(), parts, station.earliest(), most);
        for (int part = 0; part + 1 < parts; part++) {
            own[part].add(station.parts().get(part).minutes()).le(own[part + 1]).post();
        }
        own[parts - 1].add(station.parts().get(parts - 1).minutes()).le(end).post();
        for (TimeLimit limit : station.limits()) {
            own[limit.to()].le(own[limit.from()].add(station.parts().get(limit.from()).minutes() + limit.minutes()))
                    .post();
        }
        starts.add(own);
    }

    private void count(int thing, int most) {
        List<Task> tasks = new ArrayList<>();
        List<IntVar> heights = new ArrayList<>();
        for (int at = 0; at < classroom.stations().size(); at++) {
            Station station = classroom.stations().get(at);
            for (Claim claim : station.claims()) {
                if (claim.thing() == thing) {
                    tasks.add(task(starts.get(at), station, claim, most));
                    heights.add(model.intVar(claim.amount()));
                }
            }
        }
        for (Closure closure : classroom.closures()) {
            if (closure.thing() == thing && closure.from() < most) {
                tasks.add(new Task(model.intVar(closure.from()), model.intVar(closure.to() - closure.from()),
                        model.intVar(closure.to())));
                heights.add(model.intVar(classroom.things().get(thing).count()));
            }
        }
        if (!tasks.isEmpty()) {
            model.cumulative(tasks.toArray(Task[]::new), heights.toArray(IntVar[]::new),
                    model.intVar(classroom.things().get(thing).count())).post();
        }
    }

    private Task task(IntVar[] own, Station station, Claim claim, int most) {
        int last = station.parts().get(claim.last()).minutes();
        IntVar end = model.intVar(0, most);
        own[claim.last()].add(last).eq(end).post();
        IntVar length = claim.first() == claim.last() ? model.intVar(last) : model.intVar(1, most);
        return new Task(own[claim.first()], length, end);
    }
}
