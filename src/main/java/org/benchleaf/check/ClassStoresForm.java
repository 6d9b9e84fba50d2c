package org.benchleaf.check;

import static org.benchleaf.quantity.Dimension.AREA;
import static org.benchleaf.quantity.Dimension.COUNT;
import static org.benchleaf.quantity.Dimension.LENGTH;
import static org.benchleaf.quantity.Dimension.MASS;
import static org.benchleaf.quantity.Dimension.SHARE;
import static org.benchleaf.quantity.Dimension.VOLUME;

import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.message.FormMessages;
import org.benchleaf.message.Nearest;
import org.benchleaf.message.Place;
import org.benchleaf.model.ClassStores;
import org.benchleaf.model.Reference;
import org.benchleaf.model.RoomLoad;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Reads what a class has in hand. */
final class ClassStoresForm {

    private static final Quantity NOTHING = Quantity.of(0, Unit.PERCENT);

    private final Fields fields;
    private final Collection<String> materials;
    private final Reference reference;

    ClassStoresForm(Fields fields, Collection<String> materials, Reference reference) {
        this.fields = fields;
        this.materials = materials;
        this.reference = reference;
    }

    ClassStores read() {
        Map<String, ClassStores.Can> cans = new LinkedHashMap<>();
        fields.groups("waste").forEach(each -> cans.put(wasteKind(each.needText("kind")),
                new ClassStores.Can(each.needPositive("can", VOLUME), each.text("stands"))));
        return new ClassStores(spare(), fields.groups("vessels").stream().map(each -> new ClassStores.Vessel(
                each.needText("kind"), each.needPositive("holds", VOLUME), each.whole("count").orElse(1))).toList(),
                cans, stock(), supplies(), fields.dates("closed"), fields.group("bench").map(bench -> new ClassStores.BenchSpace(
                        bench.needPositive("in all", LENGTH), bench.needPositive("each station", LENGTH), bench.place("in all"))),
                room());
    }

    /** The class names its cans as the sheets name the kind; the word itself where none has that name. */
    private String wasteKind(String name) {
        return reference.waste().values().stream().filter(kind -> kind.name().equals(name)).map(Reference.WasteKind::key).findFirst()
                .orElse(name);
    }

    private ClassStores.Room room() {
        Map<String, Map<RoomLoad, Quantity>> draws = new LinkedHashMap<>();
        fields.groups("shared").forEach(thing -> thing.group("draws").ifPresent(group ->
                draws.put(thing.needText("thing"), loads(group))));
        Optional<Fields> room = fields.group("room");
        return new ClassStores.Room(room.map(ClassStoresForm::loads).orElse(Map.of()), draws,
                room.map(Fields::place).orElseGet(fields::place));
    }

    private static Map<RoomLoad, Quantity> loads(Fields group) {
        Map<RoomLoad, Quantity> loads = new EnumMap<>(RoomLoad.class);
        for (RoomLoad load : RoomLoad.values()) {
            group.positive(load.word(), load.dimension()).ifPresent(amount -> loads.put(load, amount));
        }
        return loads;
    }

    private ClassStores.Spare spare() {
        Optional<Fields> kinds = fields.group("spare of");
        return new ClassStores.Spare(fields.within("spare", 0, 1000, SHARE).orElse(NOTHING),
                kinds.flatMap(group -> group.positive("left in each bottle", VOLUME)),
                kinds.flatMap(group -> group.within("pieces", 0, 1000, SHARE)).orElse(NOTHING),
                kinds.flatMap(group -> group.whole("sheets")).orElse(0),
                kinds.flatMap(group -> group.whole("baths")).orElse(0));
    }

    private Map<String, ClassStores.Stock> stock() {
        Map<String, ClassStores.Stock> stock = new LinkedHashMap<>();
        fields.group("stock").ifPresent(group -> group.keys().forEach(id -> {
            known(group, id);
            group.quantity(id, VOLUME, MASS, COUNT, AREA).ifPresent(amount ->
                    stock.put(id, new ClassStores.Stock(amount, group.keyPlace(id))));
        }));
        return stock;
    }

    private Map<String, ClassStores.Supply> supplies() {
        Map<String, ClassStores.Supply> supplies = new LinkedHashMap<>();
        fields.group("supplies").ifPresent(group -> group.named().forEach((id, each) -> {
            Optional<String> worn = worn(id);
            if (!ClassStores.BUFFERS.equals(id) && worn.isEmpty() && reference.needs().stream().noneMatch(need ->
                    need.bought() && need.name().equals(id))) {
                known(group, id);
            }
            supplies.put(worn.orElse(id), new ClassStores.Supply(each.needPositive("pack", VOLUME, MASS, COUNT, AREA),
                    each.need(each.whole("delivery days"), "delivery days", 1), group.keyPlace(id)));
        }));
        return supplies;
    }

    /** The code of what is worn, which the class names by its word. */
    private Optional<String> worn(String word) {
        return reference.equipment().values().stream().filter(worn -> worn.name().equals(word)).map(Reference.Equipment::code).findFirst();
    }

    private void known(Fields group, String id) {
        if (!materials.contains(id)) {
            Place place = group.keyPlace(id);
            fields.messages().add(FormMessages.UNKNOWN_REFERENCE.at(place, "id", id, "kinds", "material",
                    "remedy", Nearest.to(id, materials).map(near -> "Did you mean '" + near + "'?")
                            .orElse("Add it to the materials, or take it out here.")));
        }
    }
}
