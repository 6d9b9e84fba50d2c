package org.benchleaf.quantity;

/**
 * What kind of thing a quantity measures; only quantities of one dimension can be compared or converted.
 *
 * <p>Shares that look alike on paper are kept apart here, because in this trade each means something else:
 * 70 % v/v is not 70 % m/m, and neither is a humidity.
 *
 * <p>Each has the smallest and the largest amount that is still taken for one, in its usual unit. These limits are far
 * outside what a studio meets, so that only a slip lies beyond them (common practice, no source).
 */
public enum Dimension {
    LENGTH("a length", 1e-6, 1e6,
            "a nanometre is a few molecules, and a kilometre is longer than any way in a studio"),
    AREA("an area", 1e-10, 1e10,
            "the limits are a fibre's cross-section far below sight and a square kilometre"),
    VOLUME("a volume", 1e-6, 1e11,
            "no pipette of a studio gives a nanolitre, and no room of one holds a hundred thousand cubic metres"),
    MASS("a mass", 1e-9, 1e8,
            "no balance of a studio shows a nanogram, and nothing in a studio weighs a hundred tonnes"),
    TIME("a time", 1e-5, 6e10,
            "no hand keeps to less than a millisecond, and no paper is a hundred thousand years old"),
    TEMPERATURE("a temperature", 1e-6, 1e4,
            "nothing is colder than absolute zero, nothing is read to a millionth of a degree, and no tool of a studio is hotter"
                    + " than the sun's surface"),
    MASS_PER_AREA("a mass per area", 1e-6, 1e7,
            "the limits are a coating of less than a molecule and a steel plate a metre thick"),
    MASS_PER_VOLUME("a mass per volume", 1e-12, 3e4,
            "no limit for air is lower than a nanogram per cubic metre, and no substance is denser than osmium"),
    AMOUNT_PER_VOLUME("an amount per volume", 1e-16, 1e3,
            "even strong alkali leaves more acid than the lower limit, and no liquid holds a thousand moles in a litre"),
    AMOUNT_PER_MASS("an amount per mass", 1e-16, 1e4,
            "no titration finds less, and no substance but hydrogen holds a thousand moles in a kilogram"),
    MASS_PER_AMOUNT("a molar mass", 0.1, 1e9,
            "hydrogen, the lightest atom, has 1 g/mol, and no polymer has a thousand tonnes in a mole"),
    ENERGY_PER_AMOUNT("an energy per amount", 1e-6, 1e6,
            "no chemical bond has more than some thousand kilojoules in a mole"),
    VOLUME_FRACTION("a share by volume", 1e-9, 1e6,
            "no vessel measures the lower limit, and more than a hundred per cent is no share"),
    MASS_FRACTION("a share by mass", 1e-9, 1e6,
            "no balance shows the lower limit, and more than a hundred per cent is no share"),
    SHARE("a share", 1e-9, 1e6,
            "nothing at the bench is told to so little or so many times the whole"),
    HUMIDITY("a relative humidity", 1e-6, 1e4,
            "no air is so dry, and air holds no more than some hundred per cent"),
    MASS_PER_MASS("a mass per mass", 1e-9, 1e6,
            "no balance compares masses so far apart"),
    PARTS_PER_MILLION("parts per million by volume", 1e-9, 1e7,
            "no instrument finds so little in air, and a million parts are the whole"),
    PRESSURE("a pressure", 1e-15, 1e7,
            "the limits are the vapour of salts and what crushes steel"),
    CONDUCTIVITY("a conductivity", 1e-6, 1e9,
            "the purest water has 0.055 µS/cm, and no solution conducts like a metal"),
    ILLUMINANCE("an illuminance", 1e-6, 1e9,
            "a moonless night has a ten-thousandth of a lux, and no sun gives a million"),
    LIGHT_EXPOSURE("an exposure to light", 1e-6, 1e15,
            "no meter counts so little, and no museum lights a sheet for ever"),
    RATE("a rate", 1e-9, 1e9,
            "the limits are one change of air in a hundred thousand years and many in a millisecond"),
    DIFFUSIVITY("a diffusion coefficient", 1e-30, 1e4,
            "the limits are solid rock and a storm"),
    POWER("a power", 1e-6, 1e7,
            "no tool of a studio draws a microwatt alone, and no house has ten megawatts"),
    FLOW("a flow", 1e-9, 1e6,
            "the limits are a drop in a year and a river"),
    SOUND("a sound level", 1e-3, 200,
            "nobody tells a thousandth of a decibel, and no sound in air is louder than about 194 dB"),
    ACIDITY("a pH", 1e-6, 1e4,
            "a pH is read to a hundredth, and lies between about 0 and 14"),
    COUNT("a count", 1e-3, 1e9,
            "things are counted whole, and nobody counts a thousand million"),
    NUMBER("a plain number", 1e-30, 1e30,
            "no factor or constant of the trade lies beyond");

    private static final double ABSOLUTE_ZERO = -273.15;

    private final String words;
    private final double least;
    private final double most;
    private final String reason;

    Dimension(String words, double least, double most, String reason) {
        this.words = words;
        this.least = least;
        this.most = most;
        this.reason = reason;
    }

    /** The dimension in words, for a sentence: "a length". */
    public String words() {
        return words;
    }

    /** The dimension as part of a sentence. */
    public Clause clause() {
        return Clause.of(words);
    }

    /** The smallest amount above nothing that is taken for one, whatever its sign, in {@link Unit#usual its usual unit}. */
    public double least() {
        return least;
    }

    /** The largest amount that is taken for one, whatever its sign, in {@link Unit#usual its usual unit}. */
    public double most() {
        return most;
    }

    /**
     * The lowest amount that there can be, in {@link Unit#usual its usual unit}: of a temperature absolute zero, -273.15 °C
     * (SI Brochure, 9th edition, 2.3.1), of everything else the largest amount below nothing.
     */
    public double lowest() {
        return this == TEMPERATURE ? ABSOLUTE_ZERO : -most;
    }

    /** Why the limits lie where they do, as part of a sentence. */
    public String reason() {
        return reason;
    }
}
