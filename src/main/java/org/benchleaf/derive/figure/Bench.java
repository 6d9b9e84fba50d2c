package org.benchleaf.derive.figure;

import java.util.Optional;
import org.benchleaf.calculate.Inputs;
import org.benchleaf.message.FigureMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Place;
import org.benchleaf.model.Constant;
import org.benchleaf.model.Library;
import org.benchleaf.model.Material;
import org.benchleaf.model.MissingValue;
import org.benchleaf.model.PaperSupport;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.quantity.Quantity;

/** What lies ready while one case is worked out: the case, the studio, the figures so far, what is used up. */
public record Bench(TreatmentCase source, Library library, Scale scale, Ledger ledger, Uses uses,
        VesselTolerances tolerances, Messages messages) {

    public Optional<Material> material(String id) {
        return Optional.ofNullable(library.materials().get(id));
    }

    PaperSupport paper() {
        return source.object().support();
    }

    public Constant constant(String name) {
        return library.formulary().constant(name);
    }

    /** The density of water at the temperature for which volumes are meant. */
    public Quantity waterDensity() {
        return ledger.value("water-density", Inputs.none().with("temperature", constant("volumes-meant-at").value(),
                Job.USUAL), "density").orElseThrow();
    }

    /** One of the program's own texts in the language of the library, its holes filled. */
    public String say(String english, Object... holes) {
        return library.phrases().say(english, holes);
    }

    /** A text without holes in the language of the library. */
    String say(String english) {
        return library.phrases().ofProgram(english);
    }

    /** Says that a figure needs the size of the sheet, which is not on record. */
    void unsized(String figure, Place place) {
        messages.add(FigureMessages.SIZE_NOT_ON_RECORD.at(place, "figure", figure));
    }

    /** Says that a figure needs a value of which the case says that nobody recorded it, or which its publication does not tell. */
    void notRecorded(String figure, String what, Place place) {
        messages.add(FigureMessages.NOT_ON_RECORD.at(place, "figure", figure, "missing", what));
    }

    /** The same of a value that may only have been forgotten, so that it is asked for, unless the case is retold. */
    void missing(Optional<MissingValue> told, String figure, String what, String where, Place place) {
        if (told.isPresent() || source.sources().retelling().isPresent()) {
            notRecorded(figure, what, place);
        } else {
            missing(figure, what, where, place);
        }
    }

    void missing(String figure, String what, String where, Place place) {
        messages.add(FigureMessages.MISSING_INPUT.at(place, "figure", figure, "missing", what, "where", where));
    }
}
