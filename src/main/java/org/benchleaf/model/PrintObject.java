package org.benchleaf.model;

import java.util.List;
import java.util.Optional;
import org.benchleaf.message.Place;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

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
 * @param oneSide the side that is on record where the other is not
 * @param features what must not be crushed or wetted, such as {@code plate mark}, {@code seal}
 * @param afterwards what the sheet has to bear after treatment, in the words of the schema, such as {@code must stay flexible}
 * @param consultation matters that need others to be heard first, such as {@code sacred}, with what came of it
 * @param media what is on the sheet
 * @param items leaves, inserts or further objects treated with it, each with a condition, a decision and results of its own
 */
public record PrintObject(String kind, String technique, Optional<String> made, Optional<String> madeEvidence,
        boolean opinion, PaperSupport support, Optional<SheetSize> size, Optional<MissingValue> sizeMissing, Optional<OneSide> oneSide,
        List<String> features,
        List<String> afterwards, List<Consultation> consultation, List<Medium> media,
        List<Item> items, Place place) {

    public PrintObject {
        features = List.copyOf(features);
        afterwards = List.copyOf(afterwards);
        consultation = List.copyOf(consultation);
        media = List.copyOf(media);
        items = List.copyOf(items);
    }

    /**
     * How large a sheet is.
     *
     * @param height along the left edge
     * @param width along the lower edge
     */
    public record SheetSize(Quantity height, Quantity width) {

        /** The smallest size in which this one and another lie, both upright. */
        SheetSize covering(SheetSize other) {
            return new SheetSize(longer(height, other.height), longer(width, other.width));
        }

        private static Quantity longer(Quantity one, Quantity other) {
            return one.in(Unit.MILLIMETRE) >= other.in(Unit.MILLIMETRE) ? one : other;
        }
    }

    /**
     * One side of a sheet whose other side nobody recorded.
     *
     * @param isHeight whether it is the height
     */
    public record OneSide(boolean isHeight, Quantity length) {
    }

    /**
     * A matter in which others have to be heard.
     *
     * @param matter such as {@code sacred}, {@code excavated}, {@code human remains}, {@code protected species}
     * @param outcome what was agreed; empty while the consultation is open
     */
    public record Consultation(String matter, Optional<String> outcome) {
    }

    /**
     * One of several things treated together.
     *
     * @param id how the file refers to it
     * @param is what it is, in words
     * @param size before treatment; empty if it is not on record
     * @param condition in words
     * @param decision what was decided for it, in words
     */
    public record Item(String id, String is, Optional<SheetSize> size, Optional<String> condition,
            Optional<String> decision) {
    }

    /** The item of that id. */
    public Optional<Item> item(String id) {
        return items.stream().filter(item -> item.id().equals(id)).findFirst();
    }

    /**
     * The size for which a step on some items is made ready: the greatest height and width among them, or the size of the
     * object for a step on none; empty if one of them is not on record.
     */
    public Optional<SheetSize> sizeOf(List<String> of) {
        List<Optional<SheetSize>> sizes = of.stream().map(id -> item(id).flatMap(Item::size)).toList();
        return sizes.isEmpty() ? size : sizes.stream().reduce((one, other) ->
                one.flatMap(first -> other.map(second -> first.covering(second)))).orElseThrow();
    }
}
