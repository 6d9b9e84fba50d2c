package org.benchleaf.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.benchleaf.DemoSite;
import org.benchleaf.calculate.Figure;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.model.Library;
import org.benchleaf.quantity.Unit;
import org.benchleaf.read.LibraryReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds the drawn mends of the demo against the figures that its pages print. */
class DrawnMendsTest {
    private static final Library LIBRARY = LibraryChecker.check(LibraryReader.read(Path.of("content"))).library();

    static Stream<Arguments> mends() {
        View small = View.of(0, 0, 40, 30, 40);
        return Stream.of(Arguments.of("tide-table", "mend", TideTable.sheet(Moment.BEFORE, small).tears(), TideTable.mends()),
                Arguments.of("lock-plan", "mend", LockPlan.sheet(Moment.BEFORE, small).tears(), LockPlan.mends()),
                Arguments.of("parish-map", "join", ParishMap.sheet(Moment.BEFORE, small).tears(), ParishMap.mends()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("mends")
    void as_many_pieces_are_drawn_as_the_case_tells(String folder, String step, List<Tear> tears, List<Tissue.Strip> strips) {
        Figure figure = figure(folder, step + ".pieces");
        assertThat(strips).hasSize((int) figure.value().value());
        double piece = given(figure, "piece").get(0);
        assertThat(strips).allSatisfy(strip -> assertThat(strip.length()).isLessThanOrEqualTo(piece + 1));
        assertThat(strips).extracting(Tissue.Strip::width).containsOnly(given(figure, "width").get(0));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("mends")
    void a_tear_is_drawn_as_long_as_the_case_tells_and_lies_under_its_pieces(String folder, String step, List<Tear> tears,
            List<Tissue.Strip> strips) {
        List<Double> told = given(figure(folder, step + ".pieces"), "tears");
        assertThat(tears).hasSize(told.size());
        for (int i = 0; i < told.size(); i++) {
            assertThat(tears.get(i).extent()).as("tear %s", i).isCloseTo(told.get(i), within(3.0));
            for (double share = 0.1; share <= 1; share += 0.05) {
                double[] point = tears.get(i).point(share);
                assertThat(strips).as("tear %s at %s", i, share).anySatisfy(strip ->
                        assertThat(beside(strip, point)).isLessThan(strip.width() / 2));
            }
        }
    }

    /** The piece over the crack lies behind heavy ink and does not show from the front: one of two is drawn. */
    @Test
    void of_the_letter_the_piece_over_the_tear_is_drawn() {
        assertThat(FerryLetter.mends()).hasSize((int) figure("ferry-letter", "mend.pieces").value().value() - 1);
    }

    /** A circle of the area that the condition of the map tells, 1.5 cm²: 150 mm² = π · 6.9² mm². */
    @Test
    void the_loss_of_the_map_is_drawn_as_large_as_the_case_tells() {
        assertThat(Math.PI * ParishMap.LOST.radius() * ParishMap.LOST.radius()).isCloseTo(150, within(2.0));
    }

    private static double beside(Tissue.Strip strip, double[] point) {
        double wide = strip.x2() - strip.x1();
        double high = strip.y2() - strip.y1();
        double along = Curve.hold(((point[0] - strip.x1()) * wide + (point[1] - strip.y1()) * high)
                / (strip.length() * strip.length()));
        return StrictMath.hypot(point[0] - strip.x1() - along * wide, point[1] - strip.y1() - along * high);
    }

    private static Figure figure(String folder, String id) {
        return DemoSite.worked(folder, LIBRARY).figures().get(id);
    }

    private static List<Double> given(Figure figure, String key) {
        return figure.inputs().stream().filter(given -> given.key().equals(key))
                .flatMap(given -> given.values().stream()).map(value -> value.in(Unit.MILLIMETRE)).toList();
    }
}
