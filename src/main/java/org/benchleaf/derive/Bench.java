package org.benchleaf.derive;

import java.util.Optional;
import org.benchleaf.message.FigureMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Place;
import org.benchleaf.model.Library;
import org.benchleaf.model.Material;
import org.benchleaf.model.PaperSupport;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** What lies ready while one case is worked out: the case, the studio, the figures so far, what is used up. */
record Bench(TreatmentCase source, Library library, Scale scale, Ledger ledger, Uses uses,
        VesselTolerances tolerances, Messages messages) {

    /** Solids of a fully wet sheet. Source: Sugarman and Vitale (1992), JAIC 31(2): 43 ± 9 %. */
    static final Quantity WET_SOLIDS = Quantity.of(43, Unit.PERCENT);
    /** Solids of a sheet that took up vapour alone. Source: Sugarman and Vitale (1992), JAIC 31(2): 81 ± 5 %. */
    static final Quantity DAMP_SOLIDS = Quantity.of(81, Unit.PERCENT);

    Optional<Material> material(String id) {
        return Optional.ofNullable(library.materials().get(id));
    }

    Quantity height() {
        return source.object().height();
    }

    Quantity width() {
        return source.object().width();
    }

    PaperSupport paper() {
        return source.object().support();
    }

    void missing(String figure, String what, String where, Place place) {
        messages.add(FigureMessages.MISSING_INPUT.at(place, "figure", figure, "missing", what, "where", where));
    }
}
