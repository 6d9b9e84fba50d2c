package org.benchleaf.derive.figure;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.model.ReferenceTable;
import org.benchleaf.model.Studio;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** The tolerances of the glassware table; where two standards name one vessel, the wider tolerance counts. */
public final class StandardVessels implements VesselTolerances {

    private final Map<String, Double> tolerances = new HashMap<>();

    private StandardVessels() {
    }

    public static StandardVessels of(ReferenceTable table) {
        StandardVessels vessels = new StandardVessels();
        for (Map<String, String> row : table.rows()) {
            vessels.tolerances.merge(key(row.get("vessel"), row.get("class"), Double.parseDouble(row.get("capacity"))),
                    Double.parseDouble(row.get("tolerance")), Math::max);
        }
        return vessels;
    }

    private static String key(String vessel, String grade, double capacity) {
        return vessel + " " + grade + " " + Reading.number(capacity);
    }

    @Override
    public Optional<Quantity> of(Studio.Vessel vessel) {
        return Optional.ofNullable(tolerances.get(key(vessel.kind(), vessel.grade(),
                vessel.volume().in(Unit.MILLILITRE)))).map(tolerance -> Quantity.of(tolerance, Unit.MILLILITRE));
    }
}
