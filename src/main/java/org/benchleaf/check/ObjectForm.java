package org.benchleaf.check;

import static org.benchleaf.check.References.Kind.ITEM;
import static org.benchleaf.check.References.Kind.MEDIUM;
import static org.benchleaf.quantity.Dimension.LENGTH;
import static org.benchleaf.quantity.Dimension.MASS_PER_AREA;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.benchleaf.model.Medium;
import org.benchleaf.model.MissingValue;
import org.benchleaf.model.PaperSupport;
import org.benchleaf.model.PrintObject;

/** Reads what was treated. */
final class ObjectForm {

    private final Context context;

    ObjectForm(Context context) {
        this.context = context;
    }

    PrintObject read(Fields object) {
        Optional<Fields> made = object.group("made");
        Optional<Fields> size = sides(object);
        Optional<PrintObject.OneSide> oneSide = size.flatMap(ObjectForm::oneSide);
        List<Medium> media = object.groups("media").stream().map(this::medium).toList();
        return new PrintObject(object.needText("kind"), object.needText("technique"),
                made.flatMap(group -> group.text("when")), made.flatMap(group -> group.text("evidence")),
                made.map(group -> group.yes("opinion", false)).orElse(false), support(object.needGroup("support")),
                oneSide.isPresent() ? Optional.empty() : size.map(ObjectForm::size),
                object.missingOnly("size").or(() -> object.group("size").flatMap(ObjectForm::missingSide)), oneSide,
                object.texts("features"),
                object.texts("afterwards"),
                object.groups("consultation").stream().map(ObjectForm::consultation).toList(), media,
                object.groups("items").stream().map(this::item).toList(), object.place());
    }

    /** The private fields that hold something; their values were taken out by the reader. */
    Set<String> privateFields(Fields object) {
        Set<String> filled = new TreeSet<>();
        object.group("private").ifPresent(fields -> fields.keys().stream()
                .filter(key -> !fields.isScalar(key) || fields.text(key).isPresent()).forEach(filled::add));
        return filled;
    }

    /** The two sides; empty where the size, or each of its sides, is said not to be known. */
    private static Optional<Fields> sides(Fields object) {
        return object.missingOnly("size").isPresent() ? Optional.empty() : Optional.of(object.needGroup("size"))
                .filter(sides -> sides.missing("height").isEmpty() || sides.missing("width").isEmpty());
    }

    private static PrintObject.SheetSize size(Fields sides) {
        return new PrintObject.SheetSize(sides.needReading("height", LENGTH), sides.needReading("width", LENGTH));
    }

    /** The side that is given where the other is said not to be known; empty if both or none are given. */
    private static Optional<PrintObject.OneSide> oneSide(Fields sides) {
        boolean height = sides.missing("width").isPresent() && sides.missing("height").isEmpty();
        boolean width = sides.missing("height").isPresent() && sides.missing("width").isEmpty();
        return height || width ? Optional.of(new PrintObject.OneSide(height, sides.needReading(height ? "height" : "width", LENGTH)))
                : Optional.empty();
    }

    private static Optional<MissingValue> missingSide(Fields sides) {
        return sides.missing("width").or(() -> sides.missing("height"));
    }

    private PrintObject.Item item(Fields item) {
        String id = item.needText("id");
        context.references().declare(ITEM, id, item.place("id"));
        return new PrintObject.Item(id, item.needText("is"), item.has("size") ? sides(item).map(ObjectForm::size) : Optional.empty(),
                item.text("condition"), item.text("decision"));
    }

    private static PaperSupport support(Fields support) {
        return new PaperSupport(support.needText("paper"), support.texts("features"),
                support.reading("grammage", MASS_PER_AREA), support.missing("grammage"), support.reading("thickness", LENGTH),
                support.text("grain"), support.text("sizing"), support.texts("state"), support.place());
    }

    private Medium medium(Fields medium) {
        String id = medium.needText("id");
        context.references().declare(MEDIUM, id, medium.place("id"));
        medium.scalars("of").forEach(item -> context.references().use(item, ITEM));
        return new Medium(id, medium.needText("is"), medium.text("colour"), medium.text("where"),
                medium.texts("state"), medium.text("grade"), medium.texts("of"), medium.place("id"));
    }

    private static PrintObject.Consultation consultation(Fields consultation) {
        return new PrintObject.Consultation(consultation.needText("matter"), consultation.text("outcome"));
    }
}
