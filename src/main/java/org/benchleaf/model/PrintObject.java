package org.benchleaf.model;

import java.util.List;
import java.util.Optional;
import org.benchleaf.message.Place;
import org.benchleaf.quantity.Quantity;

/**
 * What was treated.
 *
 * @param kind what it is, such as {@code broadside}
 * @param technique how it was made, such as {@code letterpress}
 * @param made when, in words, as the page shows it
 * @param madeEvidence what the dating rests on; empty if none is given
 * @param opinion whether the dating is marked as an opinion
 * @param support what it is made on
 * @param size of the sheet before treatment; empty if it is not on record
 * @param sizeMissing why there is none, where there is none
 * @param features what must not be crushed or wetted, such as {@code plate mark}, {@code seal}
 * @param consultation matters that need others to be heard first, such as {@code sacred}, with what came of it
 * @param media what is on the sheet
 */
public record PrintObject(String kind, String technique, Optional<String> made, Optional<String> madeEvidence,
        boolean opinion, PaperSupport support, Optional<SheetSize> size, Optional<MissingValue> sizeMissing, List<String> features,
        List<Consultation> consultation, List<Medium> media, Place place) {

    public PrintObject {
        features = List.copyOf(features);
        consultation = List.copyOf(consultation);
        media = List.copyOf(media);
    }

    /**
     * How large a sheet is.
     *
     * @param height along the left edge
     * @param width along the lower edge
     */
    public record SheetSize(Quantity height, Quantity width) {
    }

    /**
     * A matter in which others have to be heard.
     *
     * @param matter such as {@code sacred}, {@code excavated}, {@code human remains}, {@code protected species}
     * @param outcome what was agreed; empty while the consultation is open
     */
    public record Consultation(String matter, Optional<String> outcome) {
    }
}
