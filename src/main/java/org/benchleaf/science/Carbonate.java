package org.benchleaf.science;

/**
 * The carbonate species at one temperature and pH, each as a multiple of the activity of carbonate.
 *
 * @param bicarbonate activity of HCO₃⁻
 * @param acid activity of dissolved CO₂
 * @param pairedWithBicarbonate activity of CaHCO₃⁺ for an activity of Ca²⁺ of one
 * @param pairedWithCarbonate activity of dissolved CaCO₃ for an activity of Ca²⁺ of one
 */
record Carbonate(double bicarbonate, double acid, double pairedWithBicarbonate, double pairedWithCarbonate) {

    /** The four constants at one temperature, worked out once for the many pH that a solver tries. */
    record Constants(double bicarbonate, double acid, double pairedWithBicarbonate, double pairedWithCarbonate) {

        static Constants at(double kelvin) {
            return new Constants(Equilibrium.BICARBONATE.at(kelvin), Equilibrium.CARBONIC_ACID.at(kelvin),
                    Equilibrium.CALCIUM_BICARBONATE.at(kelvin), Equilibrium.CALCIUM_CARBONATE.at(kelvin));
        }

        Carbonate species(double hydrogen) {
            return new Carbonate(bicarbonate * hydrogen, acid * hydrogen * hydrogen,
                    pairedWithBicarbonate * bicarbonate * hydrogen, pairedWithCarbonate);
        }
    }

    /** The activity of carbonate in a solution that holds this much carbon in all. */
    double activity(double carbon, double calciumActivity, Davies ions) {
        return carbon / carbonPerActivity(calciumActivity, ions);
    }

    /** The carbon in all for an activity of carbonate of one. */
    double carbonPerActivity(double calciumActivity, Davies ions) {
        return 1 / ions.twofold() + bicarbonate / ions.single() + acid
                + calciumActivity * pairs(ions);
    }

    /** Carbon bound to calcium for activities of calcium and carbonate of one. */
    double pairs(Davies ions) {
        return pairedWithBicarbonate / ions.single() + pairedWithCarbonate;
    }
}
