package org.benchleaf.compose;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.benchleaf.derive.ClassPlan;
import org.benchleaf.derive.ClassSupplies;
import org.benchleaf.derive.Preparation;
import org.benchleaf.model.Part;
import org.benchleaf.model.Reference;
import org.benchleaf.quantity.Quantity;

/** The technician's page of a class: what to make in the order to begin, in what, what to lay out, what is left, the labels. */
final class ClassPreparationPage implements ClassPageMaker {

    private static final ClassPageName NAME = new ClassPageName("class-preparation", "-preparation.html");

    @Override
    public ClassPageName name() {
        return NAME;
    }

    @Override
    public Page make(ClassDesk desk) {
        Sheet sheet = desk.sheet(NAME);
        Words words = sheet.words();
        sheet.add(desk.opening(sheet, NAME));
        sheet.add(new BriefingMaker(sheet, desk.desk()).beforePreparing(desk.plan().preparations(), atHand(desk)));
        sheet.add(new Section("begin", words.say("class.begin"), Optional.of(words.say("class.begin-lead")),
                List.of(begin(sheet, desk))));
        RecipeMaker recipes = new RecipeMaker(sheet, desk.desk());
        sheet.add(new Section("prepare", words.say("prepare.heading"), Optional.of(words.say("class.prepare-lead")),
                List.copyOf(desk.plan().preparations().stream().map(recipes::make).toList())));
        sheet.add(new Section("lay-out", words.say("prepare.lay-out"), Optional.of(words.say("class.lay-out-lead")),
                List.of(layOut(sheet, desk))));
        sheet.add(new Section("waste", words.say("class.waste"), Optional.of(words.say("class.waste-lead")),
                List.of(waste(sheet, desk))));
        sheet.add(desk.papers(sheet));
        sheet.add(new Section("labels", words.say("prepare.labels"), Optional.of(words.say("prepare.labels-lead")),
                List.of(labels(sheet, desk))));
        return desk.finish(sheet, NAME);
    }

    /** All that the class makes, uses up or lays out; what other steps of the case use is not there. */
    private static Set<String> atHand(ClassDesk desk) {
        Set<String> ids = new LinkedHashSet<>(desk.desk().worked().hazards().keySet());
        Set<String> there = new LinkedHashSet<>();
        desk.plan().preparations().forEach(one -> there.add(one.solution()));
        desk.plan().supplies().orders().forEach(order -> there.add(order.material()));
        desk.plan().supplies().layOut().forEach(item -> there.add(item.id()));
        ids.retainAll(there);
        return ids;
    }

    private static Table begin(Sheet sheet, ClassDesk desk) {
        Words words = sheet.words();
        List<List<Html>> rows = new ArrayList<>();
        for (ClassPlan.Start start : desk.plan().starts()) {
            ClassSupplies.Filling filling = filling(desk, start.solution());
            rows.add(List.of(Html.ofText(batch(sheet, desk, start)), Html.ofText(begin(sheet, desk, start)),
                    Html.ofText(start.inTrays() ? words.say("class.by-stations")
                            : sheet.numbers().duration(start.handsOn()).text()),
                    Html.ofText(readyFor(sheet, desk, start)), Html.ofText(amount(sheet, desk, start)),
                    Html.ofText(vessel(sheet, filling, start.batch()))));
        }
        return new Table("begin-table", words.say("class.prepare-caption"), Table.columns(words, "class.what",
                "class.begin-by", "class.hands-on", "class.ready-for", "class.amount", "class.vessel"), rows, Optional.empty());
    }

    /** What is made; of several batches, which, and for which stations. */
    static String batch(Sheet sheet, ClassDesk desk, ClassPlan.Start start) {
        String thing = desk.thing(sheet, start.solution());
        if (!start.batch().isOneOfSeveral()) {
            return thing;
        }
        String batch = sheet.words().say("class.batch", "what", thing, "n", start.batch().number(), "of", start.batch().of());
        return start.batch().stations().isEmpty() ? batch : batch + sheet.words().say("class.batch-stations", "stations",
                sheet.words().list(start.batch().stations().stream().map(String::valueOf).toList()));
    }

    /** When it is needed; of several batches, until when it keeps too. */
    private static String readyFor(Sheet sheet, ClassDesk desk, ClassPlan.Start start) {
        String needed = desk.moment(sheet, start.readyFor());
        return start.batch().freshUntil().filter(any -> start.batch().isOneOfSeveral()).map(until -> sheet.words().say(
                "class.fresh-until", "needed", needed, "until", desk.moment(sheet, until))).orElse(needed);
    }

    /** A time that has gone by before a class that is still to come is told as such. */
    private static String begin(Sheet sheet, ClassDesk desk, ClassPlan.Start start) {
        LocalDateTime today = desk.desk().clearance().day().atStartOfDay();
        String moment = desk.moment(sheet, start.begin());
        return start.begin().isBefore(today) && !desk.course().starts().isBefore(today)
                ? sheet.words().say("class.too-late", "what", moment) : moment;
    }

    private static ClassSupplies.Filling filling(ClassDesk desk, String solution) {
        return desk.plan().supplies().vessels().stream().filter(one -> one.solution().equals(solution)).findFirst().orElseThrow();
    }

    /** How much of it; a batch stands in a row of its own, fillings of trays do not. */
    private static String amount(Sheet sheet, ClassDesk desk, ClassPlan.Start start) {
        Preparation preparation = desk.plan().preparations().stream().filter(one -> one.solution().equals(start.solution()))
                .findFirst().orElseThrow();
        return sheet.numbers().amount(preparation.batch()).text() + (preparation.batches() > start.batch().of()
                ? sheet.words().say("bench.ready-times", "n", preparation.batches()) : "");
    }

    private static String vessel(Sheet sheet, ClassSupplies.Filling filling, ClassPlan.Batch batch) {
        Words words = sheet.words();
        if (filling.place() == ClassSupplies.MadeAt.TRAY) {
            return words.say("class.in-trays", "n", filling.count());
        }
        String made = filling.vessel().map(kind -> words.say("class.in-vessels", "n", filling.count(), "kind", kind,
                "holds", sheet.numbers().written(filling.holds().orElseThrow()).text(),
                "each", filling.each().map(each -> sheet.numbers().amount(each).text()).orElse("")))
                .orElseGet(() -> words.say("class.no-vessel"));
        return made + (filling.stations() > 0 ? " " + words.say("class.handed-out",
                "n", batch.isOneOfSeveral() && !batch.stations().isEmpty() ? batch.stations().size() : filling.stations() / batch.of(),
                "each", filling.inStation().map(each -> sheet.numbers().amount(each).text()).orElse("")) : "");
    }

    private static Table layOut(Sheet sheet, ClassDesk desk) {
        Words words = sheet.words();
        List<List<Html>> rows = desk.plan().supplies().layOut().stream().map(item -> List.of(
                Html.ofText(name(sheet, desk, item)), Html.ofText(item.station().map(one -> count(sheet, desk, item, one))
                        .orElse(words.say("class.in-the-room"))),
                Html.ofText(item.all().map(one -> count(sheet, desk, item, one)).orElse(words.say(
                        item.station().isEmpty() ? "class.for-the-room" : "class.not-worked-out"))),
                Html.ofText(item.steps().isEmpty() ? words.say("class.all-steps") : item.steps().stream()
                        .map(step -> desk.step(sheet, step)).distinct().collect(Collectors.joining(", "))))).toList();
        return new Table("lay-out-table", words.say("class.lay-out-caption"), Table.columns(words, "class.thing",
                "class.at-station", "class.in-all", "class.for"), rows, Optional.empty());
    }

    static String name(Sheet sheet, ClassDesk desk, ClassSupplies.LaidOut item) {
        String name = switch (item.kind()) {
            case SHEET -> sheet.words().say("class.practice");
            case WEIGHT -> weight(sheet, item);
            case MATERIAL, SOLUTION, SHARED, WORN -> desk.thing(sheet, item.id());
            case VESSEL, BENCH, MAKING -> onTheBench(sheet, item);
        };
        if (item.mark().isPresent()) {
            return onTheBench(sheet, item);
        }
        return item.words().isEmpty() ? name : name + ", " + item.words();
    }

    /** A vessel as the studio calls it, another thing of the bench by its word, as an entry of a list begins. */
    static String onTheBench(Sheet sheet, ClassSupplies.LaidOut item) {
        return Words.capital(item.mark().map(mark -> RecipeMaker.mark(sheet.words(), sheet.numbers(), mark))
                .orElseGet(() -> item.kind() == ClassSupplies.Kind.BENCH ? sheet.words().say("lay-out." + item.id()) : item.id()));
    }

    /** A weight by its mass. */
    static String weight(Sheet sheet, ClassSupplies.LaidOut item) {
        return sheet.words().say("prepare.weight", "mass", sheet.numbers().spaced(item.id()));
    }

    /** How much of it; what fills a tray to a mark as a hand fills it. */
    static String count(Sheet sheet, ClassDesk desk, ClassSupplies.LaidOut item, Quantity amount) {
        boolean toAMark = item.steps().stream().flatMap(id -> desk.desk().treatment().step(id).stream())
                .flatMap(step -> step.part(Part.Bath.class).stream()).anyMatch(bath -> bath.of().equals(item.id()));
        return toAMark ? sheet.numbers().told(amount, Digits.TO_A_MARK).text() : count(sheet, amount);
    }

    static String count(Sheet sheet, Quantity amount) {
        return sheet.numbers().amount(amount).text();
    }

    private static Table waste(Sheet sheet, ClassDesk desk) {
        Words words = sheet.words();
        Map<String, Reference.WasteKind> kinds = desk.desk().library().reference().waste();
        List<List<Html>> rows = desk.plan().supplies().waste().stream().map(one -> List.of(
                Html.ofText(one.kind().map(kinds::get).map(Reference.WasteKind::name).orElse(words.say("class.waste-unknown"))),
                Html.ofText(one.solutions().stream().map(id -> desk.thing(sheet, id)).collect(Collectors.joining(", "))),
                Html.ofText(words.say("class.at-most", "amount", sheet.amount(one.volume()).text())),
                Html.ofText(one.cans().map(cans -> words.say("class.cans", "n", (long) cans.value().value(), "can",
                        sheet.numbers().written(one.can().orElseThrow()).text())).orElse(words.say("class.no-can"))),
                Html.ofText(one.kind().map(kinds::get).map(Reference.WasteKind::words)
                        .orElse(words.say("class.waste-ask"))))).toList();
        return new Table("waste-table", words.say("class.waste-caption"), Table.columns(words, "class.kind", "class.from-what",
                "class.in-all", "class.vessel", "class.where"), rows, Optional.empty());
    }

    /** As many labels as vessels, each solution's together. */
    private static LabelSheet labels(Sheet sheet, ClassDesk desk) {
        Map<Preparation, Integer> times = new LinkedHashMap<>();
        desk.plan().preparations().forEach(one -> times.put(one, filling(desk, one.solution()).labels()));
        return new LabelMaker(sheet, desk.desk()).make(times);
    }
}
