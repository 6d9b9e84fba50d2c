package org.benchleaf.model;

import java.util.Optional;
import java.util.Set;
import org.benchleaf.message.Place;
import org.benchleaf.quantity.Quantity;

/**
 * Something the studio uses.
 *
 * @param id how files refer to it
 * @param name what the label says
 * @param kind of {@link MaterialKind}, or a word of the studio's own
 * @param plain one sentence for the public
 * @param substance key of the table of substances, for hazards and molar mass
 * @param strength as bought, for a stock
 * @param rest key of the substance that the rest of it is, where it is not pure
 * @param ph as bought, for a liquid or a board
 * @param grammage of a tissue, blotter or carrier
 * @param grammageMissing why there is none, where the materials say so
 * @param height of a sheet as bought
 * @param width of a sheet as bought
 * @param uptake water held per mass, for an absorbent
 * @param keeps once opened
 * @param kept storage, in words
 * @param traits what rules ask about, such as {@code water-based}, {@code volatile}, {@code ionic fixative}, {@code buffered}
 * @param source key of the source of its figures
 */
public record Material(String id, String name, String kind, String plain, Optional<String> substance,
        Optional<Quantity> strength, Optional<String> rest, Optional<Quantity> ph, Optional<Quantity> grammage,
        Optional<MissingValue> grammageMissing, Optional<Quantity> height,
        Optional<Quantity> width, Optional<Quantity> uptake, Optional<Quantity> keeps, Optional<String> kept,
        Set<String> traits, Optional<String> source, Place place) {

    public Material {
        traits = Set.copyOf(traits);
    }

    /** Whether it is asked what it can do: whatever is of no kind that is known to be a thing, or is made of a named substance. */
    public boolean isChemical() {
        return substance.isPresent() || MaterialKind.of(kind).filter(MaterialKind::isThing).isEmpty();
    }
}
