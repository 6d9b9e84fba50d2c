package org.benchleaf.compose.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.model.Damage;
import org.benchleaf.model.Picture;
import org.benchleaf.model.PrintObject;
import org.benchleaf.page.ConditionMap;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.words.Words;

/** Puts the condition report on the sheet: the same numbers in the drawing and in the list. */
final class ConditionMapMaker {

    private static final double UNITS_A_MILLIMETRE = 10;

    private final Sheet sheet;
    private final CaseDesk desk;

    ConditionMapMaker(Sheet sheet, CaseDesk desk) {
        this.sheet = sheet;
        this.desk = desk;
    }

    /** The map; empty if nothing was found. */
    Optional<ConditionMap> make() {
        List<Damage> damages = Stream.concat(
                desk.treatment().condition().stream().filter(damage -> damage.at().isPresent()),
                desk.treatment().condition().stream().filter(damage -> damage.at().isEmpty())).toList();
        if (damages.isEmpty()) {
            return Optional.empty();
        }
        Optional<PrintObject.SheetSize> size = desk.treatment().object().size();
        List<ConditionMap.Mark> marks = new ArrayList<>();
        List<ConditionMap.Entry> entries = new ArrayList<>();
        for (Damage damage : damages) {
            int number = entries.size() + 1;
            size.filter(known -> damage.of().isEmpty()).flatMap(known -> damage.at())
                    .ifPresent(spot -> marks.add(new ConditionMap.Mark(number,
                    units(spot.fromLeft().in(Unit.MILLIMETRE)), units(spot.fromTop().in(Unit.MILLIMETRE)))));
            entries.add(entry(number, damage));
        }
        Words words = sheet.words();
        return Optional.of(new ConditionMap(marks.isEmpty() ? Optional.empty() : size.flatMap(this::underlay),
                words.say("condition-map.title"),
                description(damages), side(size.map(PrintObject.SheetSize::width)),
                side(size.map(PrintObject.SheetSize::height)), marks, entries, words.group("condition-map")));
    }

    /** The first picture of the whole face before treatment that tells where the sheet lies in it. */
    private Optional<ConditionMap.Underlay> underlay(PrintObject.SheetSize size) {
        return desk.pictures().stream()
                .filter(picture -> picture.moment().equals("before") && picture.side().equals("recto")
                        && picture.sheet().isPresent())
                .findFirst().map(picture -> underlay(picture.id(), picture.sheet().get(), size));
    }

    private ConditionMap.Underlay underlay(String id, Picture.Extent sheetInPicture, PrintObject.SheetSize size) {
        double width = size.width().in(Unit.MILLIMETRE) / (sheetInPicture.width().in(Unit.PERCENT) / 100);
        double height = size.height().in(Unit.MILLIMETRE) / (sheetInPicture.height().in(Unit.PERCENT) / 100);
        return new ConditionMap.Underlay(desk.treatment().id(), id,
                units(-width * sheetInPicture.left().in(Unit.PERCENT) / 100),
                units(-height * sheetInPicture.top().in(Unit.PERCENT) / 100), units(width), units(height));
    }

    /** Without a size there are no marks, and nothing is drawn. */
    private static int side(Optional<Quantity> length) {
        return length.map(known -> units(known.in(Unit.MILLIMETRE))).orElse(0);
    }

    private static int units(double millimetres) {
        return (int) Math.round(millimetres * UNITS_A_MILLIMETRE);
    }

    private ConditionMap.Entry entry(int number, Damage damage) {
        Words words = sheet.words();
        List<String> how = new ArrayList<>();
        damage.degree().ifPresent(degree -> how.add(words.term("degree", degree)));
        damage.extent().ifPresent(extent -> how.add(extent(damage, sheet.numbers().written(extent).text())));
        damage.active().filter("yes"::equals).ifPresent(active -> how.add(words.say("condition-map.active")));
        damage.note().ifPresent(how::add);
        Optional<String> place = damage.where().filter(told -> !damage.side().equals(Optional.of(told)));
        String where = words.list(Stream.of(damage.of().flatMap(desk.treatment().object()::item).map(PrintObject.Item::is), place,
                        damage.side().map(side -> words.term("side", side)))
                .flatMap(Optional::stream).toList());
        return new ConditionMap.Entry(number, sheet.linked(damage.what()), where, words.list(how),
                damage.at().isPresent() && damage.of().isEmpty());
    }

    /** A length, an area or a share with its unit, a count with what was counted. */
    private String extent(Damage damage, String told) {
        boolean count = damage.extent().filter(extent -> extent.unit() == Unit.COUNT).isPresent();
        return damage.counted().map(things -> told + " " + things)
                .orElseGet(() -> count ? sheet.words().say("condition-map.count", "n", told) : told);
    }

    private String description(List<Damage> damages) {
        List<String> marks = new ArrayList<>();
        for (int i = 0; i < damages.size() && damages.get(i).at().isPresent(); i++) {
            marks.add((i + 1) + " " + damages.get(i).what()
                    + damages.get(i).where().map(where -> ", " + where).orElse(""));
        }
        return sheet.words().say("condition-map.description", "marks", String.join("; ", marks));
    }
}
