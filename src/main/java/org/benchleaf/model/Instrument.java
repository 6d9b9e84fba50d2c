package org.benchleaf.model;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.benchleaf.message.Place;
import org.benchleaf.quantity.Quantity;

/**
 * What was measured with.
 *
 * @param id how the file refers to it
 * @param is what it is, such as {@code pH meter, flat electrode}
 * @param resolution the smallest step it shows
 * @param calibrated the days on which it was calibrated
 * @param buffers the pH of the buffers used for it
 */
public record Instrument(String id, String is, Optional<Quantity> resolution, List<LocalDate> calibrated,
        List<Quantity> buffers, Place place) {

    public Instrument {
        calibrated = List.copyOf(calibrated);
        buffers = List.copyOf(buffers);
    }
}
