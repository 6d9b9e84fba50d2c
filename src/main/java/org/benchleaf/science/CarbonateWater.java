package org.benchleaf.science;

import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Water, with or without calcite, in balance with the carbon dioxide of the air or of a cylinder. */
public final class CarbonateWater {

    private static final double LOWEST_PH = 2;
    private static final double HIGHEST_PH = 13;
    private static final double PH_TOLERANCE = 1e-12;

    /**
     * Water in balance.
     *
     * @param ph its pH
     * @param calcium calcium in all, per kilogram of water
     * @param carbon carbon in all, per kilogram of water
     */
    public record InBalance(Quantity ph, Quantity calcium, Quantity carbon) {
    }

    private CarbonateWater() {
    }

    /**
     * Works out water in balance with carbon dioxide and, where asked, with calcite.
     *
     * <p>Formula: the charge balance 2 [Ca²⁺] + [CaOH⁺] + [CaHCO₃⁺] + [H⁺] = [OH⁻] + [HCO₃⁻] + 2 [CO₃²⁻], with
     * {CO₂} = K p and {Ca²⁺}{CO₃²⁻} = K, solved for the pH; Davies activities. No carbon dioxide at all means a
     * closed vessel, in which all carbon comes from the calcite.
     *
     * <p>Units: °C; carbon dioxide as a pressure or as ppm of air at one atmosphere; result in pH and mol/kg.
     *
     * <p>Range: 0 to 50 °C; 0 to 1 atm.
     *
     * <p>Source: constants of {@link Equilibrium}.
     *
     * @throws OutsideRange if a value lies outside its range
     * @throws NoConvergence if the solver finds no pH
     */
    public static InBalance inBalance(Quantity temperature, Quantity carbonDioxide, boolean calcite) {
        double t = Require.within("temperature", temperature, 0, 50, Unit.CELSIUS,
                "range of the solubility measurements behind the constants");
        double pressure = atmospheres(carbonDioxide);
        Settled settled = settled(t, pressure, calcite);
        return new InBalance(Quantity.of(settled.ph(), Unit.PH),
                Quantity.of(settled.calcium(), Unit.MOLE_PER_KILOGRAM),
                Quantity.of(settled.carbon(), Unit.MOLE_PER_KILOGRAM));
    }

    /** The carbon in all that pure water takes up from carbon dioxide of a pressure in atmospheres, in mol/kg. */
    static double carbonFromAir(double pressure, double celsius) {
        return settled(celsius, pressure, false).carbon();
    }

    private static double atmospheres(Quantity carbonDioxide) {
        String source = "the gas constants of the formula hold to about one atmosphere";
        if (carbonDioxide.dimension() == Dimension.PARTS_PER_MILLION) {
            return Require.within("carbon-dioxide", carbonDioxide, 0, 1e6, Unit.PPM, source) * 1e-6;
        }
        return Require.within("carbon-dioxide", carbonDioxide, 0, 1, Unit.ATMOSPHERE, source);
    }

    private static Settled settled(double celsius, double pressure, boolean calcite) {
        Constants constants = Constants.at(celsius + Vapour.KELVIN, pressure, calcite);
        String what = "water at " + celsius + " °C";
        Davies ions = Davies.settled(what, celsius, assumed -> Species.at(constants.ph(what, assumed), constants,
                assumed).ionicStrength());
        double ph = constants.ph(what, ions);
        Species species = Species.at(ph, constants, ions);
        return new Settled(ph, species.calcium(), species.carbon());
    }

    private record Settled(double ph, double calcium, double carbon) {
    }

    /**
     * What stays the same while the pH is sought.
     *
     * @param carbonate the constants of the carbonate species
     * @param dissolvedGas activity of dissolved CO₂, 0 where no gas is present
     * @param calcite solubility product of calcite, 0 where there is none
     * @param water ion product of water
     * @param hydroxo constant of CaOH⁺
     */
    private record Constants(Carbonate.Constants carbonate, double dissolvedGas, double calcite, double water, double hydroxo) {

        static Constants at(double kelvin, double pressure, boolean calcite) {
            return new Constants(Carbonate.Constants.at(kelvin), Equilibrium.CARBON_DIOXIDE.at(kelvin) * pressure,
                    calcite ? Equilibrium.CALCITE.at(kelvin) : 0, Equilibrium.WATER_WITH_CARBONATE.at(kelvin),
                    Equilibrium.HYDROXO.at(kelvin));
        }

        double ph(String what, Davies ions) {
            return Roots.between("the pH of " + what, ph -> Species.at(ph, this, ions).charge(), LOWEST_PH, HIGHEST_PH,
                    PH_TOLERANCE);
        }
    }

    /** What is dissolved at an assumed pH, in mol/kg; the charges balance only at the right one. */
    private record Species(double hydrogen, double hydroxide, double free, double hydroxo, double bicarbonatePair,
            double carbonatePair, double bicarbonate, double carbonate, double gas) {

        static Species at(double ph, Constants constants, Davies ions) {
            double h = StrictMath.pow(10, -ph);
            Carbonate ratios = constants.carbonate().species(h);
            double hydroxo = constants.hydroxo() / h;
            double carbonate = carbonateActivity(constants, ratios, hydroxo, ions);
            double calcium = constants.calcite() == 0 ? 0 : constants.calcite() / carbonate;
            return new Species(h / ions.single(), constants.water() / (h * ions.single()), calcium / ions.twofold(),
                    hydroxo * calcium / ions.single(),
                    ratios.pairedWithBicarbonate() * calcium * carbonate / ions.single(),
                    ratios.pairedWithCarbonate() * calcium * carbonate,
                    ratios.bicarbonate() * carbonate / ions.single(), carbonate / ions.twofold(),
                    ratios.acid() * carbonate);
        }

        /** From the gas where there is any; in a closed vessel from calcite, whose calcium and carbon are equal. */
        private static double carbonateActivity(Constants constants, Carbonate ratios, double hydroxo, Davies ions) {
            if (constants.dissolvedGas() > 0) {
                return constants.dissolvedGas() / ratios.acid();
            }
            double calciumPerActivity = 1 / ions.twofold() + hydroxo / ions.single();
            return Math.sqrt(constants.calcite() * calciumPerActivity / ratios.carbonPerActivity(0, ions));
        }

        double charge() {
            return 2 * free + hydroxo + bicarbonatePair + hydrogen - hydroxide - bicarbonate - 2 * carbonate;
        }

        double ionicStrength() {
            return (4 * free + hydroxo + bicarbonatePair + hydrogen + hydroxide + bicarbonate + 4 * carbonate) / 2;
        }

        double calcium() {
            return free + hydroxo + bicarbonatePair + carbonatePair;
        }

        double carbon() {
            return bicarbonatePair + carbonatePair + bicarbonate + carbonate + gas;
        }
    }
}
