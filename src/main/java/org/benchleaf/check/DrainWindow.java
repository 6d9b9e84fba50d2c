package org.benchleaf.check;

import java.util.Optional;
import org.benchleaf.message.HazardMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.model.HazardLimits;
import org.benchleaf.model.Reference;
import org.benchleaf.quantity.Quantity;

/** Puts the studio's own window of pH for the drain into the tables: it may be stricter than the usual one, never wider. */
final class DrainWindow {

    private static final String KEY = "drain window";

    private final Reference reference;
    private final Messages messages;

    DrainWindow(Reference reference, Messages messages) {
        this.reference = reference;
        this.messages = messages;
    }

    /** The tables with the window that the studio states, if it states one that may stand. */
    Reference of(Fields studio) {
        Optional<Quantity> window = studio.ph(KEY);
        if (window.filter(one -> !reference.limits().isForDrain(one)).isPresent()) {
            Quantity widest = reference.limits().drain().value();
            messages.add(HazardMessages.DRAIN_WINDOW.at(studio.place(KEY), "found", studio.text(KEY).orElse(""),
                    "widest", "pH " + (int) widest.low() + " to " + (int) widest.high()));
            return reference;
        }
        return window.map(one -> reference.draining(new HazardLimits.Limit(one, "studio.yaml"))).orElse(reference);
    }
}
