package org.benchleaf.quantity;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The trade's units: a closed table, so that a slip is answered with a question and never guessed.
 *
 * <p>Each unit gives its symbol as printed, other spellings that are accepted, its dimension, and the factor to
 * the coherent SI unit of that dimension. Temperature is kept in °C, the only scale in the table.
 *
 * <p>Source of the factors: BIPM, The International System of Units, 9th edition (2019), tables 2 to 8; the
 * Julian year of 365.25 d is the IAU's. Checked in tests against the JSR 385 reference implementation.
 */
public enum Unit {
    MICROMETRE("µm", Dimension.LENGTH, 1e-6, "um"),
    MILLIMETRE("mm", Dimension.LENGTH, 1e-3),
    CENTIMETRE("cm", Dimension.LENGTH, 1e-2),
    METRE("m", Dimension.LENGTH, 1.0),
    SQUARE_MILLIMETRE("mm²", Dimension.AREA, 1e-6, "mm2"),
    SQUARE_CENTIMETRE("cm²", Dimension.AREA, 1e-4, "cm2"),
    SQUARE_DECIMETRE("dm²", Dimension.AREA, 1e-2, "dm2"),
    SQUARE_METRE("m²", Dimension.AREA, 1.0, "m2"),
    MICROLITRE("µL", Dimension.VOLUME, 1e-9, "uL", "µl", "ul"),
    MILLILITRE("mL", Dimension.VOLUME, 1e-6, "ml"),
    LITRE("L", Dimension.VOLUME, 1e-3, "l"),
    CUBIC_METRE("m³", Dimension.VOLUME, 1.0, "m3"),
    MICROGRAM("µg", Dimension.MASS, 1e-9, "ug"),
    MILLIGRAM("mg", Dimension.MASS, 1e-6),
    GRAM("g", Dimension.MASS, 1e-3),
    KILOGRAM("kg", Dimension.MASS, 1.0),
    SECOND("s", Dimension.TIME, 1.0, "sec"),
    MINUTE("min", Dimension.TIME, 60.0),
    HOUR("h", Dimension.TIME, 3600.0, "hr", "hour", "hours"),
    DAY("d", Dimension.TIME, 86400.0, "day", "days"),
    WEEK("wk", Dimension.TIME, 604800.0, "week", "weeks"),
    YEAR("a", Dimension.TIME, 31557600.0, "year", "years"),
    CELSIUS("°C", Dimension.TEMPERATURE, 1.0, "C", "degC"),
    GRAM_PER_SQUARE_METRE("g/m²", Dimension.MASS_PER_AREA, 1e-3, "g/m2", "gsm"),
    GRAM_PER_SQUARE_CENTIMETRE("g/cm²", Dimension.MASS_PER_AREA, 10.0, "g/cm2"),
    GRAM_PER_LITRE("g/L", Dimension.MASS_PER_VOLUME, 1.0, "g/l"),
    MILLIGRAM_PER_LITRE("mg/L", Dimension.MASS_PER_VOLUME, 1e-3, "mg/l"),
    PERCENT_MASS_BY_VOLUME("% m/v", Dimension.MASS_PER_VOLUME, 10.0, "% w/v"),
    MILLIGRAM_PER_CUBIC_METRE("mg/m³", Dimension.MASS_PER_VOLUME, 1e-6, "mg/m3"),
    GRAM_PER_CUBIC_METRE("g/m³", Dimension.MASS_PER_VOLUME, 1e-3, "g/m3"),
    KILOGRAM_PER_CUBIC_METRE("kg/m³", Dimension.MASS_PER_VOLUME, 1.0, "kg/m3"),
    MOLE_PER_LITRE("mol/L", Dimension.AMOUNT_PER_VOLUME, 1e3, "mol/l", "M"),
    MILLIMOLE_PER_LITRE("mmol/L", Dimension.AMOUNT_PER_VOLUME, 1.0, "mmol/l", "mM"),
    MOLE_PER_KILOGRAM("mol/kg", Dimension.AMOUNT_PER_MASS, 1.0),
    MILLIMOLE_PER_KILOGRAM("mmol/kg", Dimension.AMOUNT_PER_MASS, 1e-3),
    GRAM_PER_MOLE("g/mol", Dimension.MASS_PER_AMOUNT, 1e-3),
    KILOJOULE_PER_MOLE("kJ/mol", Dimension.ENERGY_PER_AMOUNT, 1e3),
    PERCENT_BY_VOLUME("% v/v", Dimension.VOLUME_FRACTION, 0.01),
    PERCENT_BY_MASS("% m/m", Dimension.MASS_FRACTION, 0.01, "% w/w"),
    GRAM_PER_KILOGRAM("g/kg", Dimension.MASS_FRACTION, 1e-3),
    MILLIGRAM_PER_KILOGRAM("mg/kg", Dimension.MASS_FRACTION, 1e-6),
    PERCENT("%", Dimension.SHARE, 0.01),
    PERCENT_HUMIDITY("% RH", Dimension.HUMIDITY, 0.01, "%RH"),
    GRAM_PER_GRAM("g/g", Dimension.MASS_PER_MASS, 1.0),
    PPM("ppm", Dimension.PARTS_PER_MILLION, 1e-6),
    PASCAL("Pa", Dimension.PRESSURE, 1.0),
    HECTOPASCAL("hPa", Dimension.PRESSURE, 100.0),
    KILOPASCAL("kPa", Dimension.PRESSURE, 1e3),
    MEGAPASCAL("MPa", Dimension.PRESSURE, 1e6, "N/mm²"),
    ATMOSPHERE("atm", Dimension.PRESSURE, 101325.0),
    MICROSIEMENS_PER_CENTIMETRE("µS/cm", Dimension.CONDUCTIVITY, 1e-4, "uS/cm"),
    MILLISIEMENS_PER_CENTIMETRE("mS/cm", Dimension.CONDUCTIVITY, 0.1),
    LUX("lx", Dimension.ILLUMINANCE, 1.0, "lux"),
    KILOLUX("klx", Dimension.ILLUMINANCE, 1e3),
    LUX_HOUR("lx·h", Dimension.LIGHT_EXPOSURE, 3600.0, "lx h"),
    MEGALUX_HOUR("Mlx·h", Dimension.LIGHT_EXPOSURE, 3.6e9, "Mlx h"),
    PER_SECOND("1/s", Dimension.RATE, 1.0, "/s"),
    PER_MINUTE("1/min", Dimension.RATE, 1.0 / 60.0, "/min"),
    PER_HOUR("1/h", Dimension.RATE, 1.0 / 3600.0, "/h"),
    SQUARE_METRE_PER_SECOND("m²/s", Dimension.DIFFUSIVITY, 1.0, "m2/s"),
    SQUARE_MILLIMETRE_PER_SECOND("mm²/s", Dimension.DIFFUSIVITY, 1e-6, "mm2/s"),
    WATT("W", Dimension.POWER, 1.0),
    KILOWATT("kW", Dimension.POWER, 1e3),
    LITRE_PER_MINUTE("L/min", Dimension.FLOW, 1e-3 / 60, "l/min"),
    LITRE_PER_HOUR("L/h", Dimension.FLOW, 1e-3 / 3600, "l/h"),
    DECIBEL("dB", Dimension.SOUND, 1.0),
    PH("pH", Dimension.ACIDITY, 1.0),
    COUNT("×", Dimension.COUNT, 1.0),
    NONE("", Dimension.NUMBER, 1.0);

    /** The Greek letter and the sign for micro look alike; keyboards write either. */
    private static final char GREEK_MU = 0x3BC;
    private static final char MICRO_SIGN = 0xB5;
    private static final Map<String, Unit> BY_SPELLING = new HashMap<>();

    static {
        for (Unit unit : values()) {
            BY_SPELLING.put(unit.symbol, unit);
            for (String spelling : unit.otherSpellings) {
                BY_SPELLING.put(spelling, unit);
            }
        }
        // A count is written bare ("3"), never with its sign; plain numbers have no spelling at all.
        BY_SPELLING.remove(COUNT.symbol);
        BY_SPELLING.remove(NONE.symbol);
    }

    private final String symbol;
    private final Dimension dimension;
    private final double factor;
    private final List<String> otherSpellings;

    Unit(String symbol, Dimension dimension, double factor, String... otherSpellings) {
        this.symbol = symbol;
        this.dimension = dimension;
        this.factor = factor;
        this.otherSpellings = List.of(otherSpellings);
    }

    /** The symbol as it is printed, such as {@code % v/v}; empty for a plain number. */
    public String symbol() {
        return symbol;
    }

    /** What the unit measures. */
    public Dimension dimension() {
        return dimension;
    }

    /** How many coherent SI units one of this unit is; 1 for °C, pH, counts and plain numbers. */
    public double factor() {
        return factor;
    }

    /** The unit in which the trade usually writes a dimension. */
    public static Unit usual(Dimension dimension) {
        return switch (dimension) {
            case LENGTH -> MILLIMETRE;
            case AREA -> SQUARE_CENTIMETRE;
            case VOLUME -> MILLILITRE;
            case MASS -> GRAM;
            case TIME -> MINUTE;
            case TEMPERATURE -> CELSIUS;
            case MASS_PER_AREA -> GRAM_PER_SQUARE_METRE;
            case MASS_PER_VOLUME -> GRAM_PER_LITRE;
            case AMOUNT_PER_VOLUME -> MOLE_PER_LITRE;
            case AMOUNT_PER_MASS -> MOLE_PER_KILOGRAM;
            case MASS_PER_AMOUNT -> GRAM_PER_MOLE;
            case ENERGY_PER_AMOUNT -> KILOJOULE_PER_MOLE;
            case VOLUME_FRACTION -> PERCENT_BY_VOLUME;
            case MASS_FRACTION -> PERCENT_BY_MASS;
            case SHARE -> PERCENT;
            case HUMIDITY -> PERCENT_HUMIDITY;
            case MASS_PER_MASS -> GRAM_PER_GRAM;
            case PARTS_PER_MILLION -> PPM;
            case PRESSURE -> KILOPASCAL;
            case CONDUCTIVITY -> MICROSIEMENS_PER_CENTIMETRE;
            case ILLUMINANCE -> LUX;
            case LIGHT_EXPOSURE -> LUX_HOUR;
            case RATE -> PER_HOUR;
            case DIFFUSIVITY -> SQUARE_METRE_PER_SECOND;
            case POWER -> WATT;
            case FLOW -> LITRE_PER_MINUTE;
            case SOUND -> DECIBEL;
            case ACIDITY -> PH;
            case COUNT -> COUNT;
            case NUMBER -> NONE;
        };
    }

    /** The unit written this way, if the table has it; letter case matters, since mL and ML differ. */
    public static Optional<Unit> spelled(String spelling) {
        return Optional.ofNullable(BY_SPELLING.get(spelling.replace(GREEK_MU, MICRO_SIGN)));
    }

    /** Every accepted spelling, in no order. */
    public static List<String> spellings() {
        return List.copyOf(BY_SPELLING.keySet());
    }
}
