package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.benchleaf.calculate.Figure;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.model.Library;
import org.benchleaf.quantity.Unit;
import org.benchleaf.read.LibraryReader;
import org.junit.jupiter.api.Test;

/**
 * Every amount of the class "spring-course" worked out again by hand: from what {@code cases/tide-table/case.md},
 * {@code classes/spring-course.yaml} and {@code studio.yaml} state, and from published constants, with the sum beside each.
 *
 * <p>Published: densities at 20 °C of ethanol 40 % v/v 0.94805, 96 % v/v 0.80742, 100 % 0.78924 g/mL and of water 0.99820 g/mL
 * (OIML R 22); pH 12.627 of saturated limewater at 20 °C (Bates, Bower and Smith 1956); 1.60 g/L at 20 °C
 * (a handbook of chemistry, from memory); at 25 °C pK of carbon dioxide 1.468, 6.352 and 10.329 (Plummer and Busenberg 1982); water
 * 1.008e-14; flash point 26 °C of ethanol 40 % v/v (table cited by the page); 43 and 63 % solids (Sugarman and Vitale 1992).
 * Usual minutes, two pairs of gloves, 0.5 g/g of blotter and 90 % of a can: common practice, no source.
 */
class SpringCourseByHandTest {

    /** Carbonate in water is rounded at each step of a sum by hand, and published solubilities of lime lie up to 5 % apart. */
    private static final double OF_LIME = 0.05;
    /** What was rounded on the way. */
    private static final double ROUNDED = 0.001;

    /** What is no amount and is held elsewhere: the air by the plan, in {@code DemoClassesTest} and {@code check-values}. */
    private static final Set<String> HELD_ELSEWHERE = Set.of("class.spring-course.relax.air",
            "class.spring-course.relax.air-share", "class.spring-course.relax.air-at-once");

    /** A figure by hand: what comes out, how near the sum is, and the sum. */
    private record Sum(String figure, double value, Unit unit, double nearness, String sum) {
    }

    private static Sum exact(String figure, double value, Unit unit, String sum) {
        return new Sum(figure, value, unit, 1e-9, sum);
    }

    private static Sum rounded(String figure, double value, Unit unit, String sum) {
        return new Sum(figure, value, unit, ROUNDED, sum);
    }

    private static Sum ofLime(String figure, double value, Unit unit, String sum) {
        return new Sum(figure, value, unit, OF_LIME, sum);
    }

    private static final List<Sum> MIST = List.of(
            exact("relax.amount", 15, Unit.MILLILITRE, "as stated for one sheet"),
            exact("relax.left-in-bottle", 3, Unit.MILLILITRE, "as the class states"),
            exact("relax.carrier-height", 472, Unit.MILLIMETRE, "412 + 2 · 30"),
            exact("relax.carrier-width", 358, Unit.MILLIMETRE, "298 + 2 · 30"),
            exact("mist.needed", 130, Unit.MILLILITRE, "7 · 15 + 6 · 3 + 7 · 1 for trials; 6 · 1.10 sheets would not serve the spare one"),
            exact("mist.batch", 130, Unit.MILLILITRE, "two figures"),
            exact("class.spring-course.mist.for-a-trial", 1, Unit.MILLILITRE, "as is usual: common practice, no source"),
            rounded("mist.stock-volume", 54.167, Unit.MILLILITRE, "130 · 40 / 96"),
            rounded("mist.stock-mass", 43.735, Unit.GRAM, "54.167 · 0.80742"),
            rounded("mist.water-mass", 79.511, Unit.GRAM, "130 · 0.94805 − 43.735 = 123.246 − 43.735"),
            rounded("mist.water-volume", 79.654, Unit.MILLILITRE, "79.511 / 0.99820"),
            rounded("mist.mass-fraction", 33.30, Unit.PERCENT_BY_MASS, "100 · 0.40 · 0.78924 / 0.94805"),
            rounded("mist.density", 948.05, Unit.KILOGRAM_PER_CUBIC_METRE, "the table of OIML R 22"),
            exact("mist.flash-point", 26, Unit.CELSIUS, "the published table, at 40 % v/v"),
            exact("class.spring-course.mist.at-the-stations", 108, Unit.MILLILITRE, "6 · 15 + 6 · 3; the spare stays with the technician"),
            exact("class.spring-course.mist.for-one-station", 18, Unit.MILLILITRE, "108 / 6"),
            exact("class.spring-course.mist.vessels", 1, Unit.COUNT, "130 mL into bottles of 250 mL"),
            exact("class.spring-course.mist.in-each", 130, Unit.MILLILITRE, "130 / 1"));

    private static final List<Sum> BATH = List.of(
            exact("wash.volume", 5.0944, Unit.LITRE, "(412 + 100) · (298 + 100) · 25 mm = 512 · 398 · 25 = 5 094 400 mm³"),
            exact("wash.total", 91.6992, Unit.LITRE, "5.0944 · 3 baths · 6 stations"),
            exact("wash.tray-volume", 5.775, Unit.LITRE, "550 · 420 · 25 mm"),
            exact("wash.tray-total", 103.95, Unit.LITRE, "5.775 · 3 · 6"),
            exact("wash.sheet-mass", 9.6, Unit.GRAM, "as weighed"),
            rounded("wash.liquor", 600.48, Unit.GRAM_PER_GRAM, "5775 · 0.99820 / 9.6"),
            rounded("wash.held", 12.726, Unit.GRAM, "9.6 / 0.43 − 9.6"),
            new Sum("wash.left", 1.069e-6, Unit.PERCENT, 0.005, "12.726 g are 12.749 mL; 100 · (12.749 / 5787.75)³"),
            exact("wash.filling-time", 4.5, Unit.MINUTE, "the middle of 3 to 6"),
            exact("wash.change-time", 6.5, Unit.MINUTE, "4 + 2.5 for the meter"),
            exact("wash.wet-time", 73, Unit.MINUTE, "3 · 20 + 2 · 6.5"),
            exact("wash.bath-time", 77.5, Unit.MINUTE, "4.5 + 73"),
            exact("wash.carrier-height", 472, Unit.MILLIMETRE, "412 + 2 · 30"),
            exact("wash.carrier-width", 358, Unit.MILLIMETRE, "298 + 2 · 30"),
            exact("bath.needed", 138.6, Unit.LITRE, "(3 · 6 + 6) · 5.775: six fillings to spare, more than the three of the spare sheet"),
            exact("bath.batch", 5.8, Unit.LITRE, "5.775 up to two figures"),
            exact("bath.liquid-volume", 5800, Unit.MILLILITRE, "the batch"),
            ofLime("bath.calcium", 2.069e-5, Unit.MOLE_PER_KILOGRAM, "1000 ppm: CO₂ 3.40e-5, HCO₃⁻ √(4.45e-7 · 3.40e-5) = 3.89e-6,"
                    + " in all 3.79e-5; at pH 8.5 · 1.0076 = 3.82e-5, OH⁻ 3.19e-6; half of 4.14e-5"),
            ofLime("bath.dose-ceiling", 5.56, Unit.MILLILITRE, "2.069e-5 · 5.8 / 0.0216 = 5.556e-3 L, the stock made at 20 °C"),
            ofLime("bath.dose", 0.428, Unit.MILLILITRE, "without carbon dioxide OH⁻ alone: 3.185e-6 / 2 · 5.8 / 0.0216 = 4.28e-4 L"));

    private static final List<Sum> LIME = List.of(
            ofLime("lime-water.needed", 135.4, Unit.MILLILITRE, "24 · 5.56 + 2 for the beakers of the trials"),
            exact("class.spring-course.lime-water.for-a-trial", 1, Unit.MILLILITRE, "as is usual: common practice, no source"),
            exact("lime-water.batch", 250, Unit.MILLILITRE, "136 is less than the least, 250"),
            exact("lime-water.liquid-volume", 250, Unit.MILLILITRE, "the batch"),
            ofLime("lime-water.strength", 1.60, Unit.GRAM_PER_LITRE, "published"),
            new Sum("lime-water.ph", 12.627, Unit.PH, 0.04 / 12.627, "published; within 0.04"),
            ofLime("lime-water.calcium", 0.0216, Unit.MOLE_PER_KILOGRAM, "1.60 / 74.09"),
            ofLime("lime-water.dissolves", 0.400, Unit.GRAM, "1.60 · 0.250"),
            ofLime("lime-water.mass", 0.800, Unit.GRAM, "2 · 0.400, so that some stays undissolved"),
            exact("class.spring-course.lime-water.vessels", 1, Unit.COUNT, "250 mL into bottles of 500 mL, with room to shake"),
            exact("class.spring-course.lime-water.in-each", 250, Unit.MILLILITRE, "250 / 1"),
            exact("class.spring-course.lime-water.clear-vessels", 2, Unit.COUNT, "136.4 / 100, a whole one"),
            exact("class.spring-course.lime-water.clear", 200, Unit.MILLILITRE, "2 · 100, of 250 that are made"));

    private static final List<Sum> DRYING = List.of(
            exact("dry.dry-mass", 9.6, Unit.GRAM, "as weighed"),
            exact("dry.wet-mass", 24.4, Unit.GRAM, "as weighed"),
            exact("dry.blotter-mass", 86.4, Unit.GRAM, "0.600 · 0.480 · 300"),
            exact("dry.for-water", 1, Unit.COUNT, "(24.4 − 9.6) / (86.4 · 0.5) = 14.8 / 43.2, a whole one"),
            exact("dry.cover", 2, Unit.COUNT, "one covers 412 by 298 mm; two faces"),
            exact("dry.per-change", 2, Unit.COUNT, "the larger of 1 and 2"),
            exact("dry.total", 12, Unit.COUNT, "2 · (5 changes + 1)"),
            exact("dry.class-total", 84, Unit.COUNT, "12 · 7: the spare sheet is more than 12 · 6 · 1.10 = 79.2"),
            rounded("dry.wet-solids", 39.344, Unit.PERCENT, "100 · 9.6 / 24.4"),
            exact("dry.water", 14.8, Unit.GRAM, "24.4 − 9.6"),
            rounded("dry.restraint-mass", 15.238, Unit.GRAM, "9.6 / 0.63"),
            rounded("dry.restrained-solids", 60.759, Unit.PERCENT, "100 · 9.6 / 15.8"),
            rounded("dry.rate", 0.0870, Unit.PER_MINUTE, "ln((24.4 − 9.6) / (15.8 − 9.6)) / 10 = ln 2.3871 / 10"),
            rounded("dry.pressure", 0.3195, Unit.KILOPASCAL, "4 · 9.80665 / (0.412 · 0.298) = 39.227 / 0.12278 = 319.5 Pa"));

    private static final List<Sum> TO_BUY_AND_LAY_OUT = List.of(
            exact("total.blotter-300", 84, Unit.COUNT, "as above"),
            rounded("total.ethanol-96", 54.167, Unit.MILLILITRE, "as above"),
            rounded("total.deionised-water", 145.73, Unit.LITRE, "24 · 5.8 + 24 · 0.25 to rinse + 0.25 + 0.0797 + 2 · 0.1"),
            exact("class.spring-course.cyclic-wax.for-a-sheet", 2, Unit.GRAM, "the middle of 1 to 3 g: common practice, no source"),
            exact("class.spring-course.cyclic-wax.for-thin-places", 1, Unit.GRAM,
                    "the middle of 0.5 to 1.5 g: common practice, no source"),
            exact("total.cyclic-wax", 21, Unit.GRAM, "7 sheets · (2 + 1)"),
            exact("class.spring-course.cyclic-wax.missing", 31.5, Unit.GRAM,
                    "7 · (3 + 1.5), the most that they may take: none is on the shelf"),
            exact("class.spring-course.conductivity-standard.packs", 1, Unit.COUNT, "one, in packs of one"),
            exact("class.spring-course.conductivity-standard.left", 0, Unit.COUNT, "1 − 1"),
            exact("class.spring-course.cyclic-wax.packs", 1, Unit.COUNT, "31.5 / 50, a whole one"),
            exact("class.spring-course.cyclic-wax.left", 18.5, Unit.GRAM, "50 − 31.5: what is left at least"),
            exact("class.spring-course.mist.for-the-trials", 7, Unit.MILLILITRE, "7 sheets · 1 mL"),
            exact("class.spring-course.lime-water.for-the-trials", 2, Unit.MILLILITRE, "two beakers · 1 mL"),
            rounded("class.spring-course.lime-water.in-each-tray", 18, Unit.MILLILITRE, "6 · 3, in the middle of 2.9 to 3.1"),
            rounded("class.spring-course.lime-water.in-all-fillings", 72, Unit.MILLILITRE, "24 · 3"),
            exact("class.spring-course.deionised-water.to-rinse-a-tray", 250, Unit.MILLILITRE, "as is usual: common practice, no source"),
            exact("class.spring-course.deionised-water.for-a-trial", 100, Unit.MILLILITRE, "as is usual: common practice, no source"),
            ofLime("total.calcium-hydroxide", 0.800, Unit.GRAM, "as above"),
            exact("class.spring-course.blotter-300.missing", 80, Unit.COUNT, "84 − 4"),
            exact("class.spring-course.blotter-300.packs", 4, Unit.COUNT, "80 / 25 = 3.2, a whole one"),
            exact("class.spring-course.blotter-300.left", 20, Unit.COUNT, "4 + 4 · 25 − 84"),
            new Sum("class.spring-course.ethanol-96.missing", 24.17, Unit.MILLILITRE, 0.02,
                    "54.17 − 30; the ± 0.3 of the stock counts as needed"),
            exact("class.spring-course.ethanol-96.packs", 1, Unit.COUNT, "24.2 / 500, a whole one"),
            rounded("class.spring-course.ethanol-96.left", 475.83, Unit.MILLILITRE, "30 + 500 − 54.17"),
            exact("class.spring-course.calcium-hydroxide.missing", 0, Unit.GRAM, "100 g stand there"),
            ofLime("class.spring-course.calcium-hydroxide.left", 99.2, Unit.GRAM, "100 − 0.8"),
            exact("class.spring-course.blotter-300.area", 24.192, Unit.SQUARE_METRE, "84 · 0.600 · 0.480"),
            exact("class.spring-course.polyester-film.area", 1.182832, Unit.SQUARE_METRE, "7 · 0.472 · 0.358"),
            exact("class.spring-course.polyester-web.area", 6.397664, Unit.SQUARE_METRE,
                    "14 · (0.472 · 0.358 + 0.600 · 0.480) = 14 · 0.456976"),
            exact("class.spring-course.felt.area", 4.032, Unit.SQUARE_METRE, "14 · 0.600 · 0.480"),
            new Sum("class.spring-course.polyester-film.missing", 1.182832, Unit.SQUARE_METRE, 0.005,
                    "none is on the shelf; what a rule cannot tell is bought too"),
            exact("class.spring-course.polyester-film.packs", 1, Unit.COUNT, "1.18 / 10, a whole one"),
            new Sum("class.spring-course.polyester-film.left", 8.817168, Unit.SQUARE_METRE, 0.005, "10 − 1.182832"),
            new Sum("class.spring-course.polyester-web.missing", 6.397664, Unit.SQUARE_METRE, 0.005,
                    "none is on the shelf; what a rule cannot tell is bought too"),
            exact("class.spring-course.polyester-web.packs", 1, Unit.COUNT, "6.40 / 10, a whole one"),
            new Sum("class.spring-course.polyester-web.left", 3.602336, Unit.SQUARE_METRE, 0.005, "10 − 6.397664"),
            new Sum("class.spring-course.felt.missing", 4.032, Unit.SQUARE_METRE, 0.005,
                    "none is on the shelf; what a rule cannot tell is bought too"),
            exact("class.spring-course.felt.packs", 1, Unit.COUNT, "4.03 / 10, a whole one"),
            new Sum("class.spring-course.felt.left", 5.968, Unit.SQUARE_METRE, 0.005, "10 − 4.032"),
            exact("class.spring-course.buffers.packs", 1, Unit.COUNT, "3 calibrations · 50 mL of each buffer at most, of 250 mL"),
            exact("class.spring-course.buffers.left", 100, Unit.MILLILITRE, "250 − 3 · 50, of each"),
            exact("class.spring-course.sheet-of-clear-film.packs", 1, Unit.COUNT, "one, in packs of one"),
            exact("class.spring-course.sheet-of-clear-film.left", 0, Unit.COUNT, "1 − 1"),
            exact("class.spring-course.GLV.packs", 1, Unit.COUNT, "18 of 50: 16 and 2 for the practice sheets"),
            exact("class.spring-course.GLV.left", 32, Unit.COUNT, "50 − 18"),
            exact("class.spring-course.RSP.packs", 1, Unit.COUNT, "1 / 1"),
            exact("class.spring-course.RSP.left", 0, Unit.COUNT, "1 − 1"),
            rounded("class.spring-course.deionised-water.missing", 145.83, Unit.LITRE, "none is on the shelf"),
            exact("class.spring-course.deionised-water.packs", 15, Unit.COUNT, "145.83 / 10, a whole one"),
            new Sum("class.spring-course.deionised-water.left", 4.27, Unit.LITRE, 0.002, "150 − 145.73"),
            exact("class.spring-course.waste-alkaline-water.volume", 250, Unit.MILLILITRE, "all of the limewater, as if no bath took any"),
            exact("class.spring-course.waste-alkaline-water.cans", 1, Unit.COUNT, "250 / (0.90 · 500), a whole one"),
            exact("class.spring-course.sheet.sheets", 7, Unit.COUNT, "6 + 1"),
            exact("class.spring-course.sprayer.laid-out", 6, Unit.COUNT, "one at each station"),
            exact("class.spring-course.polyester-film.laid-out", 7, Unit.COUNT, "6 and one for the spare sheet"),
            exact("class.spring-course.polyester-web.laid-out", 14, Unit.COUNT, "2 · 7 at the wet sheet, more than 2 · 6 · 1.10 = 13.2"),
            exact("class.spring-course.polyester-web.laid-out-2", 14, Unit.COUNT, "2 · 7 in the press, of another size"),
            exact("class.spring-course.felt.laid-out", 14, Unit.COUNT, "2 · 7, more than 2 · 6 · 1.10 = 13.2"),
            exact("class.spring-course.weight-4-kg.laid-out", 6, Unit.COUNT, "one on each sheet"),
            exact("class.spring-course.pipette.laid-out", 6, Unit.COUNT, "one at each station"),
            exact("class.spring-course.eye.worn", 8, Unit.COUNT, "6 trainees, 1 supervisor and the technician who prepares"),
            exact("class.spring-course.glv.worn", 16, Unit.COUNT, "2 pairs for each of 6 + 1 + 1"),
            exact("class.spring-course.coat.worn", 8, Unit.COUNT, "6 + 1 + 1"),
            exact("class.spring-course.rsp.worn", 1, Unit.COUNT, "the technician, at the powder of lime"),
            exact("class.spring-course.draining-board.laid-out", 6, Unit.COUNT, "one at each station"),
            exact("class.spring-course.waste-flammable-solvents.volume", 130, Unit.MILLILITRE, "all of the mist"),
            exact("class.spring-course.waste-flammable-solvents.cans", 1, Unit.COUNT, "130 / (0.90 · 1000), a whole one"),
            exact("class.spring-course.waste-neutral-water.volume", 145.4, Unit.LITRE, "24 · 5.8 + 24 · 0.25 to rinse + 2 · 0.1 of trials"),
            exact("class.spring-course.waste-neutral-water.cans", 7, Unit.COUNT, "145.5 / (0.90 · 25) = 6.5, a whole one"),
            exact("class.spring-course.bench.places", 6, Unit.COUNT, "12 / 1.8 = 6.67"),
            exact("class.spring-course.room.power", 400, Unit.WATT, "one sprays at a time: 1 hood · 400"),
            rounded("class.spring-course.room.noise", 62, Unit.DECIBEL, "one hood at a time"),
            rounded("timeline.total", 73.417, Unit.HOUR, "7.5 + 77.5 min and 3 d: 4405 min"),
            exact("timeline.hands-on", 94.625, Unit.MINUTE, "7.5 + 0.35 · 77.5 + 60"),
            exact("timeline.people", 2, Unit.COUNT, "two lower the carrier"));

    private static final List<Sum> ALL = java.util.stream.Stream.of(MIST, BATH, LIME, DRYING, TO_BUY_AND_LAY_OUT).flatMap(List::stream)
            .toList();

    private static Map<String, Figure> figures() {
        Library library = LibraryChecker.check(LibraryReader.read(Path.of("content"))).library();
        return DemoSite.worked("tide-table", library).classes().stream().filter(plan -> plan.source().id().equals("spring-course"))
                .findFirst().orElseThrow().figures();
    }

    @Test
    void every_amount_of_the_class_is_what_it_comes_to_by_hand() {
        Map<String, Figure> figures = figures();
        assertThat(ALL).allSatisfy(sum -> assertThat(figures.get(sum.figure()).value().in(sum.unit())).as(sum.figure() + ": " + sum.sum())
                .isCloseTo(sum.value(), within(Math.max(1e-12, Math.abs(sum.value()) * sum.nearness()))));
    }

    @Test
    void no_amount_is_left_out() {
        Set<String> byHand = ALL.stream().map(Sum::figure).collect(Collectors.toCollection(TreeSet::new));
        byHand.addAll(HELD_ELSEWHERE);
        assertThat(byHand).containsExactlyInAnyOrderElementsOf(figures().keySet());
    }
}
