package org.benchleaf.calculate;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.benchleaf.benchmark.SyntheticContent;
import org.benchleaf.check.CaseChecker;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.derive.Deriver;
import org.benchleaf.derive.figure.Job;
import org.benchleaf.model.Library;
import org.benchleaf.model.Method;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Quantity.Spread;
import org.benchleaf.quantity.Unit;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.LibraryReader;
import org.benchleaf.read.MethodReader;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The law of spread, over the demo and cases made by a program: a figure that depends on a number is never exact where that
 * number is not. What is chosen to suffice for the high end is exact, and so is what follows from it alone.
 *
 * <p>Source: JCGM 100:2008 (GUM), 5.1.2: every input contributes to the uncertainty of what depends on it.
 */
class SpreadLawTest {

    private static final Path CONTENT = Path.of("content");
    private static final Calculations CALCULATIONS = new Calculations(MethodReader.read());
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    @TempDir
    static Path folder;

    /** A case with the library that it is worked out with. */
    record Sample(TreatmentCase source, Library library, Deriver deriver) {

        Map<String, Figure> figures() {
            return deriver.derive(source, List.of()).worked().figures();
        }

        Map<String, Figure> figures(int number, UnaryOperator<Quantity> change) {
            return new Sample((TreatmentCase) new Walk(number, change).copy(source), library, deriver).figures();
        }

        @Override
        public String toString() {
            return source.id();
        }
    }

    /** A walk through the records of a case that changes one of its quantities and counts them all. */
    private static final class Walk {

        private final int number;
        private final UnaryOperator<Quantity> change;
        private int met;

        Walk(int number, UnaryOperator<Quantity> change) {
            this.number = number;
            this.change = change;
        }

        Object copy(Object value) {
            if (value instanceof Quantity quantity) {
                return met++ == number ? change.apply(quantity) : quantity;
            }
            if (value instanceof Optional<?> optional) {
                return optional.map(this::copy);
            }
            if (value instanceof List<?> list) {
                List<Object> copies = new ArrayList<>();
                list.forEach(each -> copies.add(copy(each)));
                return copies;
            }
            return value instanceof Record record ? copyOf(record) : value;
        }

        private Record copyOf(Record record) {
            try {
                RecordComponent[] components = record.getClass().getRecordComponents();
                Object[] values = new Object[components.length];
                for (int k = 0; k < values.length; k++) {
                    var accessor = components[k].getAccessor();
                    accessor.setAccessible(true);
                    values[k] = copy(accessor.invoke(record));
                }
                var constructor = record.getClass().getDeclaredConstructor(
                        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
                constructor.setAccessible(true);
                return (Record) constructor.newInstance(values);
            } catch (IllegalAccessException | InvocationTargetException | NoSuchMethodException
                    | InstantiationException e) {
                throw new IllegalStateException(record.getClass().getName(), e);
            }
        }
    }

    @BeforeAll
    static void write() throws IOException {
        SyntheticContent.write(CONTENT, folder, 2, 0);
    }

    static Stream<Sample> everyCase() {
        return Stream.of(CONTENT, folder).flatMap(SpreadLawTest::cases);
    }

    private static Stream<Sample> cases(Path content) {
        Library library = withoutClasses(LibraryChecker.check(LibraryReader.read(content)).library());
        Deriver deriver = new Deriver(library);
        return CaseReader.folders(content).stream().map(each -> new Sample(CaseChecker.check(
                CaseReader.read(content, each), library, DAY, deriver::ph).treatment().orElseThrow(), library, deriver));
    }

    /** The plan of a class is laid in whole minutes, with no spread, and looking for it takes long. */
    private static Library withoutClasses(Library whole) {
        return new Library(whole.studio(), whole.materials(), whole.glossary(), whole.sources(), whole.methods(), List.of(),
                whole.reference(), whole.rules(), whole.matrix(), whole.formulary(), whole.translations(), whole.phrases());
    }

    private static int quantities(Sample sample) {
        Walk walk = new Walk(-1, UnaryOperator.identity());
        walk.copy(sample.source());
        return walk.met;
    }

    @ParameterizedTest
    @MethodSource("everyCase")
    void widening_an_input_leaves_no_figure_exact_that_depends_on_it(Sample sample) {
        Map<String, Figure> before = sample.figures();
        List<String> exact = new ArrayList<>();
        int depending = 0;
        for (int number = 0; number < quantities(sample); number++) {
            Map<String, Figure> moved = sample.figures(number, SpreadLawTest::moved);
            Map<String, Figure> widened = sample.figures(number, SpreadLawTest::widened);
            for (Figure figure : before.values()) {
                if (moved.containsKey(figure.id()) && differs(figure, moved.get(figure.id()).value())) {
                    depending++;
                    Figure wide = widened.get(figure.id());
                    if (wide != null && wide.value().spread() == Spread.NONE && !isExcused(wide, widened, sample.library())) {
                        exact.add(figure.id() + " by " + figure.method() + ", quantity " + number);
                    }
                }
            }
        }
        assertThat(exact).isEmpty();
        assertThat(depending).isGreaterThan(10);
    }

    private static Quantity moved(Quantity quantity) {
        double more = quantity.value() * 1.01 + (quantity.value() == 0 ? 0.01 : 0);
        return Quantity.of(more, quantity.unit());
    }

    private static Quantity widened(Quantity quantity) {
        double more = moved(quantity).value();
        double less = 2 * quantity.value() - more;
        return Quantity.between(Math.min(less, more), quantity.value(), Math.max(less, more), quantity.unit());
    }

    /** Whether two values of a figure lie apart; in another unit, as from grams to kilograms, the amounts are compared. */
    private static boolean differs(Figure figure, Quantity other) {
        return other.dimension() != figure.value().dimension() || figure.value().unit() != Unit.COUNT
                && Math.abs(figure.value().value() - other.in(figure.value().unit())) > 1e-9 * Math.abs(figure.value().value());
    }

    /** Chosen to suffice, or following from exact numbers alone of which one was chosen. */
    private static boolean isExcused(Figure figure, Map<String, Figure> all, Library library) {
        if (library.formulary().method(figure.method()).map(Method::ownEnds).orElse(false)) {
            return true;
        }
        return figure.inputs().stream().flatMap(given -> given.values().stream()).allMatch(SpreadLawTest::isExact)
                && figure.inputs().stream().map(given -> all.get(given.from().text())).filter(one -> one != null)
                        .anyMatch(one -> isExcused(one, all, library));
    }

    private static boolean isExact(Quantity quantity) {
        return quantity.spread() == Spread.NONE;
    }

    @ParameterizedTest
    @MethodSource("everyCase")
    void a_figure_is_exact_only_where_everything_that_went_in_is(Sample sample) {
        Map<String, List<String>> wrong = new LinkedHashMap<>();
        for (Figure figure : sample.figures().values()) {
            boolean own = sample.library().formulary().method(figure.method()).map(Method::ownEnds).orElse(false);
            if (isExact(figure.value()) && figure.value().unit() != Unit.COUNT && !own) {
                List<String> spread = figure.inputs().stream().filter(given -> !given.values().stream()
                        .allMatch(SpreadLawTest::isExact)).filter(given -> matters(given, figure))
                        .map(given -> given.key() + " " + given.text()).toList();
                if (!spread.isEmpty()) {
                    wrong.put(figure.id() + " by " + figure.method(), spread);
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    /** Whether a figure changes with one of its inputs; the density of a mixture does not with the strength of its stock. */
    private static boolean matters(Figure.Given moved, Figure figure) {
        Inputs inputs = Inputs.none();
        for (Figure.Given given : figure.inputs()) {
            List<Quantity> values = given.values().stream().map(value ->
                    given == moved ? Quantity.of(value.high(), value.unit()) : value.exact()).toList();
            inputs = given.values().isEmpty() ? inputs.withWord(given.key(), given.text(), Job.USUAL)
                    : inputs.with(given.key(), values, Job.USUAL);
        }
        return !(CALCULATIONS.run(figure.method(), inputs) instanceof Outcome.Worked worked)
                || worked.numbers().values().stream().noneMatch(number -> !differs(figure, number));
    }

    @Test
    void a_figure_that_dropped_the_spread_would_be_noticed() {
        Figure.Given wide = new Figure.Given("a", "a", List.of(Quantity.range(1, 2, Unit.GRAM)), "1 to 2 g", Job.CASE_FILE);
        Figure dropped = new Figure(FigureKey.ofSolution("x", "a"), "a", Quantity.of(1.5, Unit.GRAM), "as-given", List.of(wide),
                List.of(), List.of());
        Library library = LibraryChecker.check(LibraryReader.read(CONTENT)).library();
        assertThat(isExcused(dropped, Map.of(), library)).isFalse();
    }
}
