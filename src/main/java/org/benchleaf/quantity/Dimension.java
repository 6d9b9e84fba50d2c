package org.benchleaf.quantity;

/**
 * What kind of thing a quantity measures; only quantities of one dimension can be compared or converted.
 *
 * <p>Shares that look alike on paper are kept apart here, because in this trade each means something else:
 * 70 % v/v is not 70 % m/m, and neither is a humidity.
 */
public enum Dimension {
    LENGTH("a length", Unit.MILLIMETRE),
    AREA("an area", Unit.SQUARE_CENTIMETRE),
    VOLUME("a volume", Unit.MILLILITRE),
    MASS("a mass", Unit.GRAM),
    TIME("a time", Unit.MINUTE),
    TEMPERATURE("a temperature", Unit.CELSIUS),
    MASS_PER_AREA("a mass per area", Unit.GRAM_PER_SQUARE_METRE),
    MASS_PER_VOLUME("a mass per volume", Unit.GRAM_PER_LITRE),
    AMOUNT_PER_VOLUME("an amount per volume", Unit.MOLE_PER_LITRE),
    AMOUNT_PER_MASS("an amount per mass", Unit.MOLE_PER_KILOGRAM),
    MASS_PER_AMOUNT("a molar mass", Unit.GRAM_PER_MOLE),
    ENERGY_PER_AMOUNT("an energy per amount", Unit.KILOJOULE_PER_MOLE),
    VOLUME_FRACTION("a share by volume", Unit.PERCENT_BY_VOLUME),
    MASS_FRACTION("a share by mass", Unit.PERCENT_BY_MASS),
    SHARE("a share", Unit.PERCENT),
    HUMIDITY("a relative humidity", Unit.PERCENT_HUMIDITY),
    MASS_PER_MASS("a mass per mass", Unit.GRAM_PER_GRAM),
    PARTS_PER_MILLION("parts per million by volume", Unit.PPM),
    PRESSURE("a pressure", Unit.KILOPASCAL),
    CONDUCTIVITY("a conductivity", Unit.MICROSIEMENS_PER_CENTIMETRE),
    RATE("a rate", Unit.PER_HOUR),
    DIFFUSIVITY("a diffusion coefficient", Unit.SQUARE_METRE_PER_SECOND),
    ACIDITY("a pH", Unit.PH),
    COUNT("a count", Unit.COUNT),
    NUMBER("a plain number", Unit.NONE);

    private final String words;
    private final Unit usual;

    Dimension(String words, Unit usual) {
        this.words = words;
        this.usual = usual;
    }

    /** The dimension in words, for a sentence: "a length". */
    public String words() {
        return words;
    }

    /** The unit in which the trade usually writes this dimension. */
    public Unit usual() {
        return usual;
    }
}
