package org.benchleaf.model;

import java.util.List;
import java.util.Optional;
import org.benchleaf.quantity.Quantity;

/**
 * One row of the table of substances: what it is, how it is classified and what limits apply to it.
 *
 * @param key how materials refer to it, such as {@code calcium-hydroxide}
 * @param name in words
 * @param cas registry number; empty for things that are no single substance
 * @param form {@code liquid}, {@code solid} or {@code solution}
 * @param molarMass mass of one mole
 * @param density of the liquid at 20 °C
 * @param classes how the substance is classified
 * @param fire what is known of its fire; empty if it does not burn as a liquid or vapour
 * @param exposure limits for the air of a workplace
 * @param saturated its saturated solution in water
 * @param note what the reader must know beside it
 * @param source where the row comes from
 * @param edition of that source
 */
public record Substance(String key, String name, Optional<String> cas, String form, Optional<Quantity> molarMass,
        Optional<Quantity> density, List<HazardClass> classes, Optional<Fire> fire, List<ExposureLimit> exposure,
        Optional<Saturated> saturated, Optional<String> note, String source, String edition) {

    public Substance {
        classes = List.copyOf(classes);
        exposure = List.copyOf(exposure);
    }

    /**
     * One class of hazard.
     *
     * @param name such as {@code Skin Irrit. 2}
     * @param statement its H code
     * @param from the share by mass from which a mixture is in the class; empty if the general limits apply
     * @param below the share by mass from which another class takes over
     * @param source where the class comes from
     */
    public record HazardClass(String name, String statement, Optional<Quantity> from, Optional<Quantity> below,
            String source) {
    }

    /**
     * Fire.
     *
     * @param flashPoint of the pure liquid, the lowest published
     * @param boilingPoint of the pure liquid
     * @param lowerLimit of flammability in air; a range where published values differ
     * @param upperLimit of flammability in air
     * @param source where they come from
     */
    public record Fire(Quantity flashPoint, Quantity boilingPoint, Quantity lowerLimit, Quantity upperLimit,
            String source) {
    }

    /**
     * A limit for the air of a workplace.
     *
     * @param kind such as {@code 8 h average}
     * @param limit in ppm or mg/m³
     * @param where the country and list it belongs to
     * @param source where it was read
     */
    public record ExposureLimit(String kind, Quantity limit, String where, String source) {
    }

    /** The saturated solution in water: how much is dissolved by mass, and its pH. */
    public record Saturated(Quantity share, Quantity ph, String source) {
    }
}
