package org.benchleaf.benchmark;

import java.util.concurrent.TimeUnit;
import org.benchleaf.plan.Classroom;
import org.benchleaf.plan.Floor;
import org.benchleaf.plan.Planner;
import org.benchleaf.plan.Timetable;
import org.benchleaf.plan.WashingClass;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/** Measures how long it takes to plan a class of twelve steps, and tells how far from the floor the plan ends. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class PlanBenchmark {

    private static final double PER_CENT = 100.0;

    /** Stations with one supervisor. */
    @Param({"6", "12", "24"})
    public int stations;

    private Classroom classroom;

    /** Describes the class; that is not measured. */
    @Setup
    public void describe() {
        classroom = WashingClass.of(stations, 1);
    }

    /** Floor and plan. */
    @Benchmark
    public Timetable plan() {
        return Planner.plan(classroom, Floor.of(classroom)).orElseThrow();
    }

    /** Tells how far from the floor the plan ends. */
    @TearDown
    public void tell() {
        int floor = Floor.of(classroom).minutes();
        int end = plan().end();
        System.out.printf("%d stations: floor %d min, plan %d min, %.1f %% above it%n", stations, floor, end,
                PER_CENT * (end - floor) / floor);
    }

    /** Runs the benchmark in this same program: a class path of Maven's cannot be handed to another one. */
    public static void main(String[] arguments) throws RunnerException {
        new Runner(new OptionsBuilder().include(PlanBenchmark.class.getName()).forks(0).warmupIterations(3)
                .warmupTime(TimeValue.seconds(2)).measurementIterations(5).measurementTime(TimeValue.seconds(2))
                .build()).run();
    }
}
