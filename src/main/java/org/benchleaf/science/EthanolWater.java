package org.benchleaf.science;

import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * Ethanol and water: density, the two ways of stating strength, and mixing by mass.
 *
 * <p>A share by volume (% v/v) is always meant at 20 °C. Volumes of ethanol and water do not add up, so every mixture
 * is worked out as a balance of masses.
 */
public final class EthanolWater {

    static final String RANGE_SOURCE = "OIML R 22 (1975), general formula";

    private static final double[] A = {
        998.2012300, -192.9769495, 389.1238958, -1668.103923, 13522.15441, -88292.78388, 306287.4042,
        -613838.1234, 747017.2998, -547846.1354, 223446.0334, -39032.85426
    };
    private static final double[] B = {
        -2.0618513e-1, -5.2682542e-3, 3.6130013e-5, -3.8957702e-7, 7.1693540e-9, -9.9739231e-11
    };
    private static final double[][] C = {
        {
            1.693443461530087e-1, -1.046914743455169e1, 7.196353469546523e1, -7.047478054272792e2,
            3.924090430035045e3, -1.210164659068747e4, 2.248646550400788e4, -2.605562982188164e4,
            1.852373922069467e4, -7.420201433430137e3, 1.285617841998974e3
        },
        {
            -1.193013005057010e-2, 2.517399633803461e-1, -2.170575700536993, 1.353034988843029e1,
            -5.029988758547014e1, 1.096355666577570e2, -1.422753946421155e2, 1.080435942856230e2,
            -4.414153236817392e1, 7.442971530188783
        },
        {
            -6.802995733503803e-4, 1.876837790289664e-2, -2.002561813734156e-1, 1.022992966719220,
            -2.895696483903638, 4.810060584300675, -4.672147440794683, 2.458043105903461,
            -5.411227621436812e-1
        },
        {
            4.075376675622027e-6, -8.763058573471110e-6, 6.515031360099368e-6, -1.515784836987210e-6
        },
        {
            -2.788074354782409e-8, 1.345612883493354e-8
        }
    };
    private static final double REFERENCE_TEMPERATURE = 20;
    private static final double PURE_AT_20 = densityAt(1, REFERENCE_TEMPERATURE);

    /**
     * What to put together for a mixture.
     *
     * @param stockVolume the stock to measure
     * @param waterVolume the water to measure, which is more than the rest of the volume
     * @param stockMass the stock to weigh instead
     * @param waterMass the water to weigh instead
     * @param massFraction the strength by mass
     * @param density the density of the mixture at its temperature
     */
    public record Mixture(Quantity stockVolume, Quantity waterVolume, Quantity stockMass, Quantity waterMass,
            Quantity massFraction, Quantity density) {
    }

    /**
     * What comes of pouring two liquids together.
     *
     * @param volume the volume at 20 °C
     * @param strength the strength by volume
     * @param massFraction the strength by mass
     * @param contraction the share of the summed volumes that is lost
     */
    public record Blend(Quantity volume, Quantity strength, Quantity massFraction, Quantity contraction) {
    }

    /**
     * What to add to weaken a stock.
     *
     * @param waterVolume the water to add
     * @param volume the volume that comes of it
     */
    public record Weakening(Quantity waterVolume, Quantity volume) {
    }

    private EthanolWater() {
    }

    /**
     * Works out the density of a mixture of ethanol and water.
     *
     * <p>Formula: ρ(p,t) = A₁ + Σ Aₖ pᵏ⁻¹ + Σ Bₖ (t−20)ᵏ + Σᵢ Σₖ Cᵢₖ pᵏ (t−20)ⁱ, with 12, 6 and 11+10+9+4+2 coefficients.
     *
     * <p>Units: p as % m/m; t in °C; result in kg/m³.
     *
     * <p>Range: 0 ≤ p ≤ 100 % m/m; −20 ≤ t ≤ 40 °C, as long as the mixture is liquid.
     *
     * <p>Source: OIML R 22 (1975), International alcoholometric tables, general formula; Directive 76/766/EEC, annex.
     *
     * @throws OutsideRange if the share or the temperature lies outside the range
     */
    public static Quantity density(Quantity massFraction, Quantity temperature) {
        double p = fraction("mass-fraction", massFraction);
        return Quantity.of(densityAt(p, celsius(temperature)), Unit.KILOGRAM_PER_CUBIC_METRE);
    }

    /**
     * Turns a share by volume into a share by mass.
     *
     * <p>Formula: q = p · ρ₂₀(p) / ρ₂₀(1), solved for p, which grows with q.
     *
     * <p>Units: % v/v at 20 °C in, % m/m out.
     *
     * <p>Range: 0 to 100 %.
     *
     * <p>Source: OIML R 22 (1975), definition of strength by volume.
     *
     * @throws OutsideRange if the share lies outside the range
     */
    public static Quantity massFraction(Quantity strength) {
        return byMass(massShare(strength("strength", strength)));
    }

    /**
     * Turns a share by mass into a share by volume.
     *
     * <p>Formula: q = p · ρ₂₀(p) / ρ₂₀(1).
     *
     * <p>Units: % m/m in, % v/v at 20 °C out.
     *
     * <p>Range: 0 to 100 %.
     *
     * <p>Source: OIML R 22 (1975), definition of strength by volume.
     *
     * @throws OutsideRange if the share lies outside the range
     */
    public static Quantity strength(Quantity massFraction) {
        return byVolume(volumeShare(fraction("mass-fraction", massFraction)));
    }

    /**
     * Works out stock and water for a wanted volume of a wanted strength.
     *
     * <p>Formula: m = V ρ(p,t); stock = m p / pₛ; water = m − stock; volumes by dividing by the densities at t.
     *
     * <p>Units: strengths in % v/v at 20 °C; the volumes are those at the working temperature t.
     *
     * <p>Range: 0 ≤ strength ≤ stock ≤ 100 % v/v and stock &gt; 0; −20 ≤ t ≤ 40 °C.
     *
     * <p>Source: conservation of mass, densities of OIML R 22 (1975).
     *
     * @throws OutsideRange if the mixture would be stronger than its stock, or a value lies outside its range
     */
    public static Mixture mixture(Quantity strength, Quantity volume, Quantity stock, Quantity temperature) {
        double t = celsius(temperature);
        double stockShare = massShare(stockStrength(stock));
        double share = massShare(weakerThan(stock, strength));
        double density = densityAt(share, t);
        double mass = Require.aboveZero("volume", volume, Unit.CUBIC_METRE) * density;
        double stockMass = mass * share / stockShare;
        double waterMass = mass - stockMass;
        return new Mixture(millilitres(stockMass / densityAt(stockShare, t)), millilitres(waterMass / densityAt(0, t)),
                grams(stockMass), grams(waterMass), byMass(share), Quantity.of(density, Unit.KILOGRAM_PER_CUBIC_METRE));
    }

    /**
     * Works out what comes of pouring two mixtures of ethanol and water together at 20 °C.
     *
     * <p>Formula: m = Σ Vᵢ ρ(pᵢ); p = Σ Vᵢ ρ(pᵢ) pᵢ / m; V = m / ρ(p); contraction = 1 − V / Σ Vᵢ.
     *
     * <p>Units: volumes in mL at 20 °C, strengths in % v/v at 20 °C.
     *
     * <p>Range: strengths 0 to 100 % v/v; volumes above 0.
     *
     * <p>Source: conservation of mass, densities of OIML R 22 (1975).
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static Blend blend(Quantity firstVolume, Quantity firstStrength, Quantity secondVolume,
            Quantity secondStrength) {
        double first = Require.aboveZero("first-volume", firstVolume, Unit.CUBIC_METRE);
        double second = Require.aboveZero("second-volume", secondVolume, Unit.CUBIC_METRE);
        double firstShare = massShare(strength("first-strength", firstStrength));
        double secondShare = massShare(strength("second-strength", secondStrength));
        double firstMass = first * densityAt(firstShare, REFERENCE_TEMPERATURE);
        double secondMass = second * densityAt(secondShare, REFERENCE_TEMPERATURE);
        double mass = firstMass + secondMass;
        double share = Math.min(1, (firstMass * firstShare + secondMass * secondShare) / mass);
        double volume = mass / densityAt(share, REFERENCE_TEMPERATURE);
        return new Blend(millilitres(volume), byVolume(volumeShare(share)), byMass(share),
                Quantity.of(100 * (1 - volume / (first + second)), Unit.PERCENT));
    }

    /**
     * Works out how much water weakens a stock to a wanted strength at 20 °C.
     *
     * <p>Formula: water = m (pₛ / p − 1), with m the mass of the stock.
     *
     * <p>Units: volumes in mL at 20 °C, strengths in % v/v at 20 °C.
     *
     * <p>Range: 0 &lt; strength ≤ stock ≤ 100 % v/v.
     *
     * <p>Source: conservation of the ethanol, densities of OIML R 22 (1975).
     *
     * @throws OutsideRange if the wanted strength is 0 or above that of the stock
     */
    public static Weakening weakening(Quantity stock, Quantity stockVolume, Quantity strength) {
        double stockShare = massShare(stockStrength(stock));
        Require.aboveZero("strength", strength, Unit.PERCENT_BY_VOLUME);
        double share = massShare(weakerThan(stock, strength));
        double mass = Require.aboveZero("stock-volume", stockVolume, Unit.CUBIC_METRE)
                * densityAt(stockShare, REFERENCE_TEMPERATURE);
        double water = mass * (stockShare / share - 1);
        return new Weakening(millilitres(water / densityAt(0, REFERENCE_TEMPERATURE)),
                millilitres((mass + water) / densityAt(share, REFERENCE_TEMPERATURE)));
    }

    static double densityAt(double p, double celsius) {
        double t = celsius - REFERENCE_TEMPERATURE;
        double density = polynomial(A, p) + t * polynomial(B, t);
        double power = 1;
        for (double[] row : C) {
            power *= t;
            density += p * polynomial(row, p) * power;
        }
        return density;
    }

    static double massShare(double volumeShare) {
        if (volumeShare == 0 || volumeShare == 1) {
            return volumeShare;
        }
        return Roots.between("the share by mass", p -> volumeShare(p) - volumeShare, 0, 1, 1e-14);
    }

    static double strength(String input, Quantity strength) {
        return Require.within(input, strength, 0, 100, Unit.PERCENT_BY_VOLUME, RANGE_SOURCE) / 100;
    }

    static double celsius(Quantity temperature) {
        return Require.within("temperature", temperature, -20, 40, Unit.CELSIUS, RANGE_SOURCE);
    }

    private static double volumeShare(double massShare) {
        return massShare * densityAt(massShare, REFERENCE_TEMPERATURE) / PURE_AT_20;
    }

    private static double fraction(String input, Quantity massFraction) {
        return Require.within(input, massFraction, 0, 100, Unit.PERCENT_BY_MASS, RANGE_SOURCE) / 100;
    }

    private static double stockStrength(Quantity stock) {
        Require.aboveZero("stock", stock, Unit.PERCENT_BY_VOLUME);
        return strength("stock", stock);
    }

    private static double weakerThan(Quantity stock, Quantity strength) {
        double share = strength("strength", strength);
        if (share > stock.in(Unit.PERCENT_BY_VOLUME) / 100) {
            throw new OutsideRange("strength", Clause.value(strength.in(Unit.PERCENT_BY_VOLUME) + " % v/v"),
                    Clause.of("0 to {most}, the strength of the stock", "most", stock.in(Unit.PERCENT_BY_VOLUME) + " % v/v"),
                    "water can only weaken a stock");
        }
        return share;
    }

    private static double polynomial(double[] coefficients, double x) {
        double sum = 0;
        for (int k = coefficients.length - 1; k >= 0; k--) {
            sum = sum * x + coefficients[k];
        }
        return sum;
    }

    private static Quantity byMass(double share) {
        return Quantity.of(100 * share, Unit.PERCENT_BY_MASS);
    }

    private static Quantity byVolume(double share) {
        return Quantity.of(100 * share, Unit.PERCENT_BY_VOLUME);
    }

    private static Quantity millilitres(double cubicMetres) {
        return Quantity.of(cubicMetres / Unit.MILLILITRE.factor(), Unit.MILLILITRE);
    }

    private static Quantity grams(double kilograms) {
        return Quantity.of(kilograms * 1000, Unit.GRAM);
    }
}
