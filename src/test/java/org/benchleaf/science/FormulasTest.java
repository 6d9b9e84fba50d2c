package org.benchleaf.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Checks the formulas that stand behind the named calculations against published values. */
class FormulasTest {

    @ParameterizedTest(name = "{0} {1}")
    @CsvFileSource(resources = "/check-values/formulas.csv", numLinesToSkip = 2)
    void a_formula_agrees_with_the_value_that_others_published(String id, String formula, String arguments,
            double expected, double tolerance, String source, String status) {
        assertThat(value(formula, arguments.split("\\s*;\\s*"))).as("%s, %s [%s]", id, source, status)
                .isCloseTo(expected, within(tolerance));
    }

    private static double value(String formula, String[] a) {
        return switch (formula) {
            case "log-constant" -> log(Equilibrium.valueOf(a[0]), a[1]);
            // Ca(OH)2(s) = Ca2+ + 2 OH-, from dissolving in acid and twice the splitting of water.
            case "lime-product" -> log(Equilibrium.LIME, a[0]) + 2 * log(Equilibrium.WATER, a[0]);
            case "first-dissociation" -> log(Equilibrium.CARBONIC_ACID, a[0]) - log(Equilibrium.BICARBONATE, a[0]);
            case "slope" -> Davies.slope(celsius(a[0])).value();
            case "lime-ph" -> limePh(number(a[0]), number(a[1]));
            case "lime-ph-slope" -> limePh(number(a[0]), number(a[1]) + 0.5) - limePh(number(a[0]), number(a[1]) - 0.5);
            case "lime-ph-halved" -> limePh(number(a[0]) / 2, number(a[1])) - limePh(number(a[0]), number(a[1]));
            case "ethanol-pressure" -> Vapour.ethanolPressure(celsius(a[0])).in(Unit.PASCAL);
            case "ethanol-saturation" -> Vapour.ethanolSaturation(celsius(a[0])).in(Unit.PPM);
            case "by-mass" -> Vapour.byMass(of(a[0], Unit.PPM), of(a[1], Unit.GRAM_PER_MOLE), celsius(a[2]))
                    .in(Unit.MILLIGRAM_PER_CUBIC_METRE);
            case "reserve-of-carbonate" -> AlkalineReserve.ofCarbonate(of(a[0], Unit.PERCENT_BY_MASS))
                    .in(Unit.MOLE_PER_KILOGRAM);
            case "leached" -> Baths.leached(of(a[0], Unit.NONE)).in(Unit.PERCENT);
            case "molar-mass" -> MolarMass.valueOf(a[0]).value().in(Unit.GRAM_PER_MOLE);
            case "lab" -> lab(a);
            case "whiteness" -> whiteness(a);
            case "t-upper" -> StudentT.upperPoint(Quantity.number(0.025), of(a[0], Unit.NONE)).value();
            case "polymerisation" -> Ageing.polymerisation(of(a[0], Unit.NONE), of(a[1], Unit.NONE),
                    of(a[2], Unit.YEAR)).value();
            case "arrhenius" -> multiplier(a[0]) / multiplier(a[1]);
            case "isoperm" -> Ageing.isoperm(celsius(a[0]), of(a[1], Unit.PERCENT_HUMIDITY), celsius(a[2]),
                    of(a[3], Unit.PERCENT_HUMIDITY), of(a[4], Unit.KILOJOULE_PER_MOLE)).value();
            case "preservation-index" -> Ageing.preservationIndex(celsius(a[0]), of(a[1], Unit.PERCENT_HUMIDITY))
                    .in(Unit.YEAR);
            default -> throw new IllegalArgumentException("no formula is called " + formula);
        };
    }

    private static double lab(String[] a) {
        Colour.Tristimulus measured = new Colour.Tristimulus(of(a[0], Unit.NONE), of(a[1], Unit.NONE),
                of(a[2], Unit.NONE));
        double x = number(a[3]);
        double y = number(a[4]);
        Colour colour = Colour.of(measured, new Colour.Tristimulus(Quantity.number(100 * x / y), Quantity.number(100),
                Quantity.number(100 * (1 - x - y) / y)));
        return switch (a[5]) {
            case "L" -> colour.lightness().value();
            case "a" -> colour.red().value();
            default -> colour.yellow().value();
        };
    }

    /** The white is handed in by its chromaticity, with the factor for 2°. */
    private static double whiteness(String[] a) {
        double x = number(a[0]);
        double y = number(a[1]);
        double brightness = number(a[2]);
        Whiteness whiteness = Whiteness.of(new Colour.Tristimulus(Quantity.number(brightness * x / y),
                Quantity.number(brightness), Quantity.number(brightness * (1 - x - y) / y)), of(a[3], Unit.NONE),
                of(a[4], Unit.NONE), Quantity.number(1000));
        assertThat(whiteness.holds()).isFalse();
        return a[5].equals("W") ? whiteness.whiteness().value() : whiteness.tint().value();
    }

    private static double multiplier(String celsius) {
        return Ageing.multiplier(celsius(celsius), Quantity.of(50, Unit.PERCENT_HUMIDITY),
                Quantity.of(100, Unit.KILOJOULE_PER_MOLE)).value();
    }

    private static double limePh(double calcium, double celsius) {
        return LimeWater.ph(Quantity.of(calcium, Unit.MOLE_PER_KILOGRAM), Quantity.of(celsius, Unit.CELSIUS)).value();
    }

    private static double log(Equilibrium reaction, String celsius) {
        return reaction.logConstant(celsius(celsius)).value();
    }

    private static Quantity celsius(String number) {
        return of(number, Unit.CELSIUS);
    }

    private static Quantity of(String number, Unit unit) {
        return Quantity.of(number(number), unit);
    }

    private static double number(String text) {
        return Double.parseDouble(text);
    }
}
