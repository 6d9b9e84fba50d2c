package org.benchleaf.science;

import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.Decimal;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * Limewater, saturated and diluted, solved as an equilibrium.
 *
 * <p>Unknown is the pH; calcium is either in balance with the solid or given in all. The charges balance at one pH
 * only, since the negative ones grow with it and the positive ones do not. Activities after Davies are repeated until
 * the ionic strength settles. Dissolved carbon dioxide comes in where a function says so; what would settle out as
 * calcite is taken to stay dissolved.
 */
public final class LimeWater {

    static final String TEMPERATURE_SOURCE = "solubilities compared from 0 to 40 °C";
    /** How far published solubilities lie apart, as a share. */
    private static final double SPREAD = 0.05;
    /** The model against the primary standard of Bates, Bower and Smith (1956). */
    private static final double PH_SPREAD = 0.03;
    private static final double LOWEST_PH = 3;
    private static final double HIGHEST_PH = 16;
    private static final double PH_TOLERANCE = 1e-12;
    /** The last places of a binary number must not make a stock too weak for itself. */
    private static final double NEARLY = 1e-9;

    /**
     * Limewater in balance with its solid.
     *
     * @param calcium calcium in all, per kilogram of water
     * @param strength the dissolved calcium hydroxide
     * @param ph its pH at that temperature
     * @param ionicStrength its ionic strength
     * @param hydroxoShare the share of the calcium that is bound as CaOH⁺
     */
    public record Saturated(Quantity calcium, Quantity strength, Quantity ph, Quantity ionicStrength,
            Quantity hydroxoShare) {
    }

    /**
     * Limewater made weaker.
     *
     * @param ph its pH
     * @param calcium calcium in all, per kilogram of water
     */
    public record Diluted(Quantity ph, Quantity calcium) {
    }

    /**
     * What brings water to a pH.
     *
     * @param calcium the calcium hydroxide needed, per kilogram of the bath
     * @param stockVolume the saturated limewater that holds it
     */
    public record Dose(Quantity calcium, Quantity stockVolume) {
    }

    private LimeWater() {
    }

    /**
     * Works out limewater saturated at a temperature and kept from the air.
     *
     * <p>Formula: 2 [Ca²⁺] + [CaOH⁺] + [H⁺] = [OH⁻] with {Ca²⁺} = K {H⁺}², solved for the pH; Davies activities.
     *
     * <p>Units: °C in; mol per kg of water, g/L, pH and % out, the solubility with ± 5 %.
     *
     * <p>Range: 0 to 40 °C.
     *
     * <p>Source: constants of {@link Equilibrium}; measured: Bates, Bower and Smith (1956), J. Res. NBS 56, 305.
     *
     * @throws OutsideRange if the temperature lies outside the range
     * @throws NoConvergence if the solver finds no pH
     */
    public static Saturated saturated(Quantity temperature) {
        double t = celsius("temperature", temperature);
        Solution solution = Solution.saturated(t);
        double calcium = solution.calcium();
        double strength = calcium * MolarMass.CALCIUM_HYDROXIDE.gramsPerMole() * Water.densityAt(t) / 1000;
        return new Saturated(Quantity.plusMinus(calcium, SPREAD * calcium, Unit.MOLE_PER_KILOGRAM),
                Quantity.plusMinus(strength, SPREAD * strength, Unit.GRAM_PER_LITRE),
                Quantity.plusMinus(solution.ph(), PH_SPREAD, Unit.PH),
                Quantity.of(solution.ionicStrength(), Unit.MOLE_PER_KILOGRAM),
                Quantity.of(100 * solution.hydroxo() / calcium, Unit.PERCENT));
    }

    /**
     * Works out the pH of saturated limewater made up to n times its volume with water free of carbon dioxide.
     *
     * <p>Formula: calcium = saturated calcium / n; the charge balance solved for the pH.
     *
     * <p>Units: "one in n" means one part made up to n parts in all; °C; result pH and mol/kg.
     *
     * <p>Range: n from 1 to a million; both temperatures 0 to 40 °C.
     *
     * <p>Source: constants of {@link Equilibrium}.
     *
     * @throws OutsideRange if a value lies outside its range
     * @throws NoConvergence if the solver finds no pH
     */
    public static Diluted diluted(Quantity oneIn, Quantity madeAt, Quantity temperature) {
        double n = Require.within("one-in", oneIn, 1, 1e6, Unit.NONE,
                "one part made up to n parts in all; beyond a million water itself sets the pH");
        double calcium = Solution.saturated(celsius("made-at", madeAt)).calcium() / n;
        Solution solution = Solution.holding(calcium, celsius("temperature", temperature));
        return new Diluted(Quantity.of(solution.ph(), Unit.PH), Quantity.of(calcium, Unit.MOLE_PER_KILOGRAM));
    }

    /**
     * Works out the pH of calcium hydroxide in water free of carbon dioxide.
     *
     * <p>Formula: the charge balance of {@link #saturated}, calcium given.
     *
     * <p>Units: mol per kg of water and °C in, pH out.
     *
     * <p>Range: 0 to 0.1 mol/kg; 0 to 40 °C. More than the solubility is taken to stay dissolved.
     *
     * <p>Source: constants of {@link Equilibrium}.
     *
     * @throws OutsideRange if a value lies outside its range
     * @throws NoConvergence if the solver finds no pH
     */
    public static Quantity ph(Quantity calcium, Quantity temperature) {
        double amount = Require.within("calcium", calcium, 0, 0.1, Unit.MOLE_PER_KILOGRAM,
                "well above the solubility of lime");
        return Quantity.of(Solution.holding(amount, celsius("temperature", temperature)).ph(), Unit.PH);
    }

    /**
     * Works out how much calcium hydroxide, and how much saturated limewater, brings water to a pH in a closed vessel.
     *
     * <p>Formula: with the pH given, 2 [Ca²⁺] + [CaOH⁺] + [CaHCO₃⁺] + [H⁺] = [OH⁻] + [HCO₃⁻] + 2 [CO₃²⁻] is solved
     * for the calcium; the carbon in all is what the water took up from the air before. Stock = V c / saturated c.
     *
     * <p>Units: pH, volume of the finished bath, °C, carbon dioxide in ppm of air at one atmosphere; result in mol/kg
     * and mL of limewater saturated at the temperature at which it was made.
     *
     * <p>Range: from the pH of the water itself to that of saturated limewater; both temperatures 0 to 40 °C; 0 to 100 000 ppm.
     *
     * <p>Source: constants of {@link Equilibrium}. A starting point: an open bath drifts, so measure.
     *
     * @throws OutsideRange if limewater cannot bring the water to that pH, or a value lies outside its range
     * @throws NoConvergence if the solver finds no dose
     */
    public static Dose dose(Quantity ph, Quantity volume, Quantity madeAt, Quantity temperature, Quantity carbonDioxide) {
        double stock = Solution.saturated(celsius("made-at", madeAt)).calcium();
        double t = celsius("temperature", temperature);
        double ppm = Require.within("carbon-dioxide", carbonDioxide, 0, 100_000, Unit.PPM,
                "air, up to a tenth of it carbon dioxide");
        double whole = Require.aboveZero("volume", volume, Unit.MILLILITRE);
        Solution full = Solution.saturated(t);
        double carbon = ppm == 0 ? 0 : CarbonateWater.carbonFromAir(ppm * 1e-6, t);
        double wanted = ph.in(Unit.PH);
        // Below the pH of the water itself the charges would balance with less than no calcium.
        double calcium = wanted > LOWEST_PH && wanted <= full.ph() ? Solution.calciumFor(wanted, carbon, t) : -1;
        if (calcium < 0) {
            throw new OutsideRange("ph", Clause.value("pH " + wanted),
                    Clause.of("{water} (the water itself) to {lime} (saturated limewater)",
                            "water", "pH " + hundredths(Solution.ph(0, carbon, t)), "lime", "pH " + hundredths(full.ph())),
                    "limewater can only raise the pH of water");
        }
        if (calcium > stock * (1 + NEARLY)) {
            throw new OutsideRange("ph", Clause.value("pH " + wanted), Clause.of("less"),
                    "limewater made at a higher temperature holds less than a bath of that pH");
        }
        return new Dose(Quantity.of(calcium, Unit.MOLE_PER_KILOGRAM), Quantity.of(whole * calcium / stock, Unit.MILLILITRE));
    }

    private static double celsius(String input, Quantity temperature) {
        return Require.within(input, temperature, 0, 40, Unit.CELSIUS, TEMPERATURE_SOURCE);
    }

    private static double hundredths(double number) {
        return Decimal.of(number).rounded(2).value();
    }

    /**
     * One settled solution.
     *
     * @param ph its pH
     * @param calcium calcium in all
     * @param hydroxo calcium bound as CaOH⁺
     * @param ionicStrength its ionic strength
     */
    private record Solution(double ph, double calcium, double hydroxo, double ionicStrength) {

        static Solution saturated(double celsius) {
            double kelvin = celsius + Vapour.KELVIN;
            double lime = Equilibrium.LIME.at(kelvin);
            return settled("saturated limewater", celsius, kelvin, (h, ions) -> lime * h * h / ions.twofold());
        }

        static Solution holding(double calcium, double celsius) {
            double kelvin = celsius + Vapour.KELVIN;
            double hydroxo = Equilibrium.HYDROXO.at(kelvin);
            return settled("limewater of " + calcium + " mol/kg", celsius, kelvin,
                    (h, ions) -> calcium / (1 + hydroxo * ions.twofold() / (h * ions.single())));
        }

        /** Free calcium at an activity of hydrogen ions. */
        private interface FreeCalcium {
            double at(double hydrogen, Davies ions);
        }

        private static Solution settled(String what, double celsius, double kelvin, FreeCalcium free) {
            double hydroxo = Equilibrium.HYDROXO.at(kelvin);
            double water = Equilibrium.WATER.at(kelvin);
            Davies ions = Davies.settled(what, celsius, assumed -> {
                double ph = ph(what, free, hydroxo, water, assumed);
                double h = StrictMath.pow(10, -ph);
                double calcium = free.at(h, assumed);
                double bound = bound(calcium, h, hydroxo, assumed);
                return (4 * calcium + bound + (h + water / h) / assumed.single()) / 2;
            });
            double ph = ph(what, free, hydroxo, water, ions);
            double h = StrictMath.pow(10, -ph);
            double calcium = free.at(h, ions);
            double bound = bound(calcium, h, hydroxo, ions);
            return new Solution(ph, calcium + bound, bound, ions.ionicStrength());
        }

        private static double ph(String what, FreeCalcium free, double hydroxo, double water, Davies ions) {
            return Roots.between("the pH of " + what, ph -> {
                double h = StrictMath.pow(10, -ph);
                double calcium = free.at(h, ions);
                return 2 * calcium + bound(calcium, h, hydroxo, ions) + (h - water / h) / ions.single();
            }, LOWEST_PH, HIGHEST_PH, PH_TOLERANCE);
        }

        private static double bound(double calcium, double h, double hydroxo, Davies ions) {
            return hydroxo * calcium * ions.twofold() / (h * ions.single());
        }

        /** The pH of water that holds calcium hydroxide and carbon dioxide. */
        static double ph(double calcium, double carbon, double celsius) {
            return Roots.between("the pH of the water", ph -> calciumFor(ph, carbon, celsius) - calcium, LOWEST_PH, 10,
                    PH_TOLERANCE);
        }

        /** The calcium in all at which the charges balance; negative where only an acid could reach that pH. */
        static double calciumFor(double ph, double carbon, double celsius) {
            double kelvin = celsius + Vapour.KELVIN;
            double h = StrictMath.pow(10, -ph);
            double water = Equilibrium.WATER.at(kelvin);
            double hydroxo = Equilibrium.HYDROXO.at(kelvin);
            Carbonate carbonate = Carbonate.Constants.at(kelvin).species(h);
            double[] total = new double[1];
            Davies.settled("the dose for pH " + ph, celsius, ions -> {
                double one = ions.single();
                double two = ions.twofold();
                double free = freeCalcium(carbonate, carbon, h, water, hydroxo, ions);
                double active = free * two;
                double carbonateActivity = carbonate.activity(carbon, Math.max(0, active), ions);
                double bicarbonate = carbonate.bicarbonate() * carbonateActivity / one;
                double paired = carbonate.pairedWithBicarbonate() * Math.max(0, active) * carbonateActivity;
                total[0] = free + hydroxo * active / (h * one) + paired / one
                        + carbonate.pairedWithCarbonate() * Math.max(0, active) * carbonateActivity;
                return (4 * Math.abs(free) + Math.abs(hydroxo * active / (h * one)) + (h + water / h) / one
                        + bicarbonate + 4 * carbonateActivity / two + Math.abs(paired / one)) / 2;
            });
            return total[0];
        }

        private static double freeCalcium(Carbonate carbonate, double carbon, double h, double water, double hydroxo,
                Davies ions) {
            double one = ions.single();
            double two = ions.twofold();
            Roots.Function charge = free -> {
                double active = free * two;
                double carbonateActivity = carbonate.activity(carbon, Math.max(0, active), ions);
                double paired = carbonate.pairedWithBicarbonate() * Math.max(0, active) * carbonateActivity;
                return 2 * free + hydroxo * active / (h * one) + paired / one + (h - water / h) / one
                        - carbonate.bicarbonate() * carbonateActivity / one - 2 * carbonateActivity / two;
            };
            return Roots.between("the calcium", charge, -1, 1, 1e-20);
        }
    }
}
