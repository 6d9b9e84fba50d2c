package org.benchleaf.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static tech.units.indriya.unit.Units.CELSIUS;
import static tech.units.indriya.unit.Units.CUBIC_METRE;
import static tech.units.indriya.unit.Units.DAY;
import static tech.units.indriya.unit.Units.GRAM;
import static tech.units.indriya.unit.Units.HOUR;
import static tech.units.indriya.unit.Units.JOULE;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.LITRE;
import static tech.units.indriya.unit.Units.LUX;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.MINUTE;
import static tech.units.indriya.unit.Units.MOLE;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.PERCENT;
import static tech.units.indriya.unit.Units.SECOND;
import static tech.units.indriya.unit.Units.SIEMENS;
import static tech.units.indriya.unit.Units.SQUARE_METRE;
import static tech.units.indriya.unit.Units.WATT;
import static tech.units.indriya.unit.Units.WEEK;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import javax.measure.MetricPrefix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tech.units.indriya.AbstractUnit;

/** Holds the table of units against the reference implementation of JSR 385. */
class UnitTest {

    private static final Map<Unit, javax.measure.Unit<?>> REFERENCE = new EnumMap<>(Unit.class);

    static {
        REFERENCE.put(Unit.MICROMETRE, METRE.prefix(MetricPrefix.MICRO));
        REFERENCE.put(Unit.MILLIMETRE, METRE.prefix(MetricPrefix.MILLI));
        REFERENCE.put(Unit.CENTIMETRE, METRE.prefix(MetricPrefix.CENTI));
        REFERENCE.put(Unit.METRE, METRE);
        REFERENCE.put(Unit.SQUARE_MILLIMETRE, METRE.prefix(MetricPrefix.MILLI).pow(2));
        REFERENCE.put(Unit.SQUARE_CENTIMETRE, METRE.prefix(MetricPrefix.CENTI).pow(2));
        REFERENCE.put(Unit.SQUARE_DECIMETRE, METRE.prefix(MetricPrefix.DECI).pow(2));
        REFERENCE.put(Unit.SQUARE_METRE, SQUARE_METRE);
        REFERENCE.put(Unit.MICROLITRE, LITRE.prefix(MetricPrefix.MICRO));
        REFERENCE.put(Unit.MILLILITRE, LITRE.prefix(MetricPrefix.MILLI));
        REFERENCE.put(Unit.LITRE, LITRE);
        REFERENCE.put(Unit.CUBIC_METRE, CUBIC_METRE);
        REFERENCE.put(Unit.MICROGRAM, GRAM.prefix(MetricPrefix.MICRO));
        REFERENCE.put(Unit.MILLIGRAM, GRAM.prefix(MetricPrefix.MILLI));
        REFERENCE.put(Unit.GRAM, GRAM);
        REFERENCE.put(Unit.KILOGRAM, KILOGRAM);
        REFERENCE.put(Unit.SECOND, SECOND);
        REFERENCE.put(Unit.MINUTE, MINUTE);
        REFERENCE.put(Unit.HOUR, HOUR);
        REFERENCE.put(Unit.DAY, DAY);
        REFERENCE.put(Unit.WEEK, WEEK);
        REFERENCE.put(Unit.GRAM_PER_SQUARE_METRE, GRAM.divide(SQUARE_METRE));
        REFERENCE.put(Unit.GRAM_PER_SQUARE_CENTIMETRE, GRAM.divide(METRE.prefix(MetricPrefix.CENTI).pow(2)));
        REFERENCE.put(Unit.GRAM_PER_LITRE, GRAM.divide(LITRE));
        REFERENCE.put(Unit.MILLIGRAM_PER_LITRE, GRAM.prefix(MetricPrefix.MILLI).divide(LITRE));
        // One per cent by mass and volume is a gram in a decilitre.
        REFERENCE.put(Unit.PERCENT_MASS_BY_VOLUME, GRAM.divide(LITRE.prefix(MetricPrefix.DECI)));
        REFERENCE.put(Unit.MILLIGRAM_PER_CUBIC_METRE, GRAM.prefix(MetricPrefix.MILLI).divide(CUBIC_METRE));
        REFERENCE.put(Unit.GRAM_PER_CUBIC_METRE, GRAM.divide(CUBIC_METRE));
        REFERENCE.put(Unit.KILOGRAM_PER_CUBIC_METRE, KILOGRAM.divide(CUBIC_METRE));
        REFERENCE.put(Unit.MOLE_PER_LITRE, MOLE.divide(LITRE));
        REFERENCE.put(Unit.MILLIMOLE_PER_LITRE, MOLE.prefix(MetricPrefix.MILLI).divide(LITRE));
        REFERENCE.put(Unit.MOLE_PER_KILOGRAM, MOLE.divide(KILOGRAM));
        REFERENCE.put(Unit.MILLIMOLE_PER_KILOGRAM, MOLE.prefix(MetricPrefix.MILLI).divide(KILOGRAM));
        REFERENCE.put(Unit.GRAM_PER_MOLE, GRAM.divide(MOLE));
        REFERENCE.put(Unit.KILOJOULE_PER_MOLE, JOULE.prefix(MetricPrefix.KILO).divide(MOLE));
        REFERENCE.put(Unit.PERCENT_BY_VOLUME, PERCENT);
        REFERENCE.put(Unit.PERCENT_BY_MASS, PERCENT);
        REFERENCE.put(Unit.PERCENT, PERCENT);
        REFERENCE.put(Unit.PERCENT_HUMIDITY, PERCENT);
        REFERENCE.put(Unit.MILLIGRAM_PER_KILOGRAM, GRAM.prefix(MetricPrefix.MILLI).divide(KILOGRAM));
        REFERENCE.put(Unit.GRAM_PER_KILOGRAM, GRAM.divide(KILOGRAM));
        REFERENCE.put(Unit.GRAM_PER_GRAM, GRAM.divide(GRAM));
        REFERENCE.put(Unit.PPM, AbstractUnit.ONE.prefix(MetricPrefix.MICRO));
        REFERENCE.put(Unit.PASCAL, PASCAL);
        REFERENCE.put(Unit.HECTOPASCAL, PASCAL.prefix(MetricPrefix.HECTO));
        REFERENCE.put(Unit.KILOPASCAL, PASCAL.prefix(MetricPrefix.KILO));
        REFERENCE.put(Unit.MEGAPASCAL, PASCAL.prefix(MetricPrefix.MEGA));
        REFERENCE.put(Unit.MICROSIEMENS_PER_CENTIMETRE,
                SIEMENS.prefix(MetricPrefix.MICRO).divide(METRE.prefix(MetricPrefix.CENTI)));
        REFERENCE.put(Unit.MILLISIEMENS_PER_CENTIMETRE,
                SIEMENS.prefix(MetricPrefix.MILLI).divide(METRE.prefix(MetricPrefix.CENTI)));
        REFERENCE.put(Unit.LUX, LUX);
        REFERENCE.put(Unit.KILOLUX, LUX.prefix(MetricPrefix.KILO));
        REFERENCE.put(Unit.LUX_HOUR, LUX.multiply(HOUR));
        REFERENCE.put(Unit.MEGALUX_HOUR, LUX.prefix(MetricPrefix.MEGA).multiply(HOUR));
        REFERENCE.put(Unit.WATT, WATT);
        REFERENCE.put(Unit.KILOWATT, WATT.prefix(MetricPrefix.KILO));
        REFERENCE.put(Unit.LITRE_PER_MINUTE, LITRE.divide(MINUTE));
        REFERENCE.put(Unit.LITRE_PER_HOUR, LITRE.divide(HOUR));
        // A decibel counts itself: levels are added by a calculation of their own.
        REFERENCE.put(Unit.DECIBEL, AbstractUnit.ONE);
        REFERENCE.put(Unit.PER_SECOND, AbstractUnit.ONE.divide(SECOND));
        REFERENCE.put(Unit.PER_MINUTE, AbstractUnit.ONE.divide(MINUTE));
        REFERENCE.put(Unit.PER_HOUR, AbstractUnit.ONE.divide(HOUR));
        REFERENCE.put(Unit.SQUARE_MILLIMETRE_PER_SECOND, METRE.prefix(MetricPrefix.MILLI).pow(2).divide(SECOND));
        REFERENCE.put(Unit.SQUARE_METRE_PER_SECOND, SQUARE_METRE.divide(SECOND));
        REFERENCE.put(Unit.CELSIUS, CELSIUS);
        REFERENCE.put(Unit.PH, AbstractUnit.ONE);
        REFERENCE.put(Unit.COUNT, AbstractUnit.ONE);
        REFERENCE.put(Unit.NONE, AbstractUnit.ONE);
    }

    /** Two units that the reference does not have are checked by their definitions below. */
    private static final Set<Unit> BY_DEFINITION = Set.of(Unit.ATMOSPHERE, Unit.YEAR);

    @ParameterizedTest
    @EnumSource(Unit.class)
    void a_unit_is_as_large_as_the_reference_says(Unit unit) throws Exception {
        if (BY_DEFINITION.contains(unit)) {
            assertThat(REFERENCE).doesNotContainKey(unit);
            return;
        }
        javax.measure.Unit<?> reference = REFERENCE.get(unit);
        assertThat(reference).as("no reference for %s", unit).isNotNull();
        double factor = reference.getConverterToAny(reference.getSystemUnit()).convert(1.0);
        double zero = reference.getConverterToAny(reference.getSystemUnit()).convert(0.0);
        assertThat(unit.factor()).isCloseTo(factor - zero, within(1e-15 * Math.abs(factor - zero) + 1e-24));
    }

    @Test
    void an_atmosphere_and_a_year_are_what_their_definitions_say() {
        // CGPM 1954, 10th meeting, resolution 4; IAU 1976 system of constants: the Julian year of 365.25 days.
        assertThat(Unit.ATMOSPHERE.factor()).isEqualTo(101_325);
        assertThat(Unit.YEAR.factor()).isEqualTo(365.25 * 86_400);
    }

    @Test
    void units_of_one_dimension_in_our_table_are_compatible_in_the_reference() {
        Map<Dimension, javax.measure.Unit<?>> first = new HashMap<>();
        REFERENCE.forEach((unit, reference) -> assertThat(
                first.computeIfAbsent(unit.dimension(), dimension -> reference).getSystemUnit().getDimension())
                .as("%s", unit).isEqualTo(reference.getSystemUnit().getDimension()));
    }

    @Test
    void every_dimension_has_a_usual_unit_of_its_own_kind_and_words() {
        for (Dimension dimension : Dimension.values()) {
            assertThat(Unit.usual(dimension).dimension()).isEqualTo(dimension);
            assertThat(dimension.words()).isNotBlank();
        }
    }

    @Test
    void every_spelling_belongs_to_one_unit_and_every_symbol_is_a_spelling() {
        assertThat(Unit.spellings()).doesNotHaveDuplicates();
        for (Unit unit : Unit.values()) {
            if (unit != Unit.COUNT && unit != Unit.NONE) {
                assertThat(Unit.spelled(unit.symbol())).contains(unit);
            }
        }
        assertThat(Unit.spelled("×")).isEmpty();
        assertThat(Unit.spelled("")).isEmpty();
        assertThat(Unit.spelled("ML")).isEmpty();
    }

    @Test
    void there_and_back_is_the_same_amount() {
        Random random = new Random(385);
        for (Unit from : Unit.values()) {
            for (Unit to : Unit.values()) {
                if (from.dimension() == to.dimension()) {
                    double value = random.nextDouble() * 1000;
                    assertThat(Quantity.of(value, from).to(to).in(from)).isCloseTo(value, within(1e-12 * value));
                }
            }
        }
    }

    @Test
    void shares_that_look_alike_are_not_converted_into_each_other() {
        assertThatThrownBy(() -> Quantity.of(70, Unit.PERCENT_BY_VOLUME).in(Unit.PERCENT_BY_MASS))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("a share by volume");
    }

    @Test
    void a_quantity_whose_ends_are_out_of_order_cannot_be_made() {
        assertThatThrownBy(() -> Quantity.range(3, 2, Unit.GRAM)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Quantity.of(Double.NaN, Unit.GRAM)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void ends_travel_with_the_value_into_another_unit() {
        Quantity time = Quantity.range(90, 120, Unit.MINUTE).to(Unit.HOUR);
        assertThat(time.low()).isEqualTo(1.5);
        assertThat(time.high()).isEqualTo(2);
        assertThat(time.spread()).isEqualTo(Quantity.Spread.RANGE);
        assertThat(Quantity.plusMinus(7.4, 0.1, Unit.PH).halfWidth()).isCloseTo(0.1, within(1e-12));
    }
}
