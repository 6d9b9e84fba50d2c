package org.benchleaf.benchmark;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.benchleaf.check.CaseChecker;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.derive.Derived;
import org.benchleaf.derive.Deriver;
import org.benchleaf.model.Library;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.LibraryReader;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Measures how long it takes to work out everything of one case once the program is warm. Nothing passes or fails. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class FiguresBenchmark {

    /** The demo's cases. */
    @Param({"tide-table", "parish-map", "lock-plan", "ferry-letter", "flood-poster"})
    public String name;

    private Deriver deriver;
    private TreatmentCase treatment;

    /** Reads the case; reading is not measured. */
    @Setup
    public void read() {
        Path content = Path.of("content");
        Library library = LibraryChecker.check(LibraryReader.read(content)).library();
        treatment = CaseChecker.check(CaseReader.read(content, content.resolve("cases").resolve(name)), library,
                LocalDate.of(2026, 6, 1), new Deriver(library)::ph).treatment().orElseThrow();
        deriver = new Deriver(library);
    }

    /** Every figure, time, preparation and result of the case. */
    @Benchmark
    public Derived everything() {
        return deriver.derive(treatment, List.of());
    }

    /** Runs the benchmark in this same program: a class path of Maven's cannot be handed to another one. */
    public static void main(String[] arguments) throws RunnerException {
        new Runner(new OptionsBuilder().include(FiguresBenchmark.class.getName()).forks(0).warmupIterations(10)
                .warmupTime(org.openjdk.jmh.runner.options.TimeValue.seconds(2)).measurementIterations(5)
                .measurementTime(org.openjdk.jmh.runner.options.TimeValue.seconds(1)).build()).run();
    }
}
