package org.benchleaf.compose.classes;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.compose.part.HazardMaker;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.derive.classes.ClassSupplies;
import org.benchleaf.model.Part;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Step;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** What a class leaves besides liquids and blotters: blades and the like of its cautions, used pieces, off-cuts, gloves. */
record Leftovers(Sheet sheet, ClassDesk desk) {

    /**
     * One kind of it.
     *
     * @param kind in words
     * @param amount how much in all
     * @param in in what it is collected
     * @param atStations whether it is left at the stations too
     */
    private record Left(String kind, String from, String amount, String in, String where, boolean atStations) {
    }

    /** Rows of the table of waste of the class. */
    List<List<RichText>> ofClass() {
        return all().stream().map(left -> Stream.of(left.kind, left.from, left.amount, left.in, left.where).map(RichText::of).toList())
                .toList();
    }

    /** Rows of what is left at one station. */
    List<List<RichText>> ofStation() {
        return all().stream().filter(Left::atStations).map(left ->
                Stream.of(sheet.words().more(left.kind, left.from), left.where).map(RichText::of).toList())
                .toList();
    }

    /** Keys of the cautions for what is laid out and collected again, by the headings under which that stands. */
    Map<String, List<String>> handled() {
        Words words = sheet.words();
        List<String> cautions = kinds().keySet().stream().flatMap(kind -> kind.cautions().stream())
                .filter(key -> desk.plan().steps().stream().anyMatch(step -> cautions(step).contains(key))).distinct().sorted().toList();
        return cautions.isEmpty() ? Map.of()
                : Map.of(words.list(List.of(words.say("prepare.lay-out"), words.say("class.waste"))), cautions);
    }

    private List<Left> all() {
        Words words = sheet.words();
        List<Left> all = new ArrayList<>();
        kinds().forEach((kind, steps) -> all.add(new Left(kind.name(), words.list(steps.stream().map(step -> desk.step(sheet, step.id()))
                .distinct().toList()), words.say("class.not-worked-out"), kind.bottle().orElse(words.say("class.waste-ask")),
                kind.words(), true)));
        used().forEach((id, pieces) -> all.add(of("class.waste-pieces", desk.thing(sheet, id), words.say("class.at-most", "amount",
                sheet.numbers().amount(Quantity.count(pieces)).text()))));
        Set<String> cut = new LinkedHashSet<>();
        cut().forEach(item -> cut.add(desk.thing(sheet, item.id())));
        if (!cut.isEmpty()) {
            all.add(of("class.waste-cuttings", words.list(List.copyOf(cut)), words.say("class.not-worked-out")));
        }
        desk.plan().supplies().beside().stream().map(ClassSupplies.Bought::item).filter(item -> item.kind() == ClassSupplies.Kind.WORN)
                .forEach(item -> all.add(of("class.waste-worn", words.list(Stream.of(desk.thing(sheet, item.id()), item.words())
                        .filter(text -> !text.isEmpty()).toList()), item.all().map(count -> words.say("class.at-most", "amount",
                                sheet.numbers().amount(count).text())).orElse(words.say("class.not-worked-out")),
                        item.station().isPresent())));
        return all;
    }

    private Left of(String key, String from, String amount) {
        return of(key, from, amount, true);
    }

    private Left of(String key, String from, String amount, boolean atStations) {
        Words words = sheet.words();
        return new Left(words.say(key), from, amount, words.say(key + "-in"), words.say(key + "-where"), atStations);
    }

    /** Kinds that come with a caution, whatever is prepared, with the steps that have the caution. */
    private Map<Reference.WasteKind, List<Step>> kinds() {
        Map<Reference.WasteKind, List<Step>> kinds = new LinkedHashMap<>();
        desk.desk().library().reference().waste().values().forEach(kind -> {
            List<Step> steps = desk.plan().steps().stream().filter(step -> !Collections.disjoint(kind.cautions(), cautions(step))).toList();
            if (!steps.isEmpty()) {
                kinds.put(kind, steps);
            }
        });
        return kinds;
    }

    private Collection<String> cautions(Step step) {
        return new HazardMaker(sheet, desk.desk()).cautionsOf(step.id()).stream().map(Reference.Caution::key).toList();
    }

    /** How many pieces of each material lay on a sheet, by its id; blotters between which it dried stand in a row of their own. */
    private Map<String, Integer> used() {
        Set<String> drying = new LinkedHashSet<>();
        Set<String> touching = new LinkedHashSet<>();
        desk.plan().steps().forEach(step -> {
            step.part(Part.Blotters.class).flatMap(Part.Blotters::blotter).ifPresent(drying::add);
            step.part(Part.Support.class).ifPresent(support -> {
                touching.add(support.under());
                support.between().ifPresent(touching::add);
            });
            step.part(Part.Press.class).ifPresent(press -> touching.addAll(press.between()));
        });
        touching.removeAll(drying);
        Map<String, Integer> used = new LinkedHashMap<>();
        cut().filter(item -> touching.contains(item.id())).forEach(item -> used.merge(item.id(),
                (int) item.all().orElseThrow().value(), Integer::sum));
        return used;
    }

    /** What is cut to a size. */
    private Stream<ClassSupplies.LaidOut> cut() {
        return desk.plan().supplies().layOut().stream().filter(item -> item.kind() == ClassSupplies.Kind.MATERIAL
                && item.size().isPresent() && item.all().isPresent());
    }
}
