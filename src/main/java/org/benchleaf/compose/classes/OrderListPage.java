package org.benchleaf.compose.classes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.calculate.Figure;
import org.benchleaf.compose.part.ClassPageName;
import org.benchleaf.compose.part.RecipeMaker;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.part.WorkingMaker;
import org.benchleaf.derive.classes.ClassSupplies;
import org.benchleaf.derive.classes.Pieces;
import org.benchleaf.model.Reference;
import org.benchleaf.model.SheetMaking;
import org.benchleaf.page.Block;
import org.benchleaf.page.Page;
import org.benchleaf.page.Section;
import org.benchleaf.page.Table;
import org.benchleaf.quantity.Amount;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** The buyer's page of a class: what is needed, what the shelf has, what to order by when, what is left. */
public final class OrderListPage implements ClassPageMaker {

    private static final ClassPageName NAME = new ClassPageName("class-orders", "-orders.html", true);

    /** The kind of what is worn on them, by the table of equipment. */
    private static final String HANDS = "hands";

    @Override
    public ClassPageName name() {
        return NAME;
    }

    @Override
    public Page make(ClassDesk desk) {
        Sheet sheet = desk.sheet(NAME);
        Words words = sheet.words();
        List<ClassSupplies.Order> orders = desk.plan().supplies().orders();
        sheet.add(desk.opening(sheet, NAME));
        sheet.add(new Section("orders", words.say("class.orders"), Optional.of(words.say("class.orders-lead")), List.of(
                new Table("orders-table", words.say("class.orders-caption"), words.columns("class.thing",
                        "class.needed", "class.on-shelf", "class.to-buy", "class.order-by", "class.in-house", "class.left"),
                        Stream.concat(beside(sheet, desk), orders.stream().map(order -> row(sheet, desk, order))).toList(),
                        Optional.empty()))));
        List<Block> workings = new ArrayList<>();
        orders.stream().flatMap(order -> Stream.concat(Stream.of(order.needed()), order.packs().stream()))
                .map((Figure figure) -> new WorkingMaker(sheet).make(figure)).forEach(workings::add);
        sheet.add(new Section("workings", words.say("class.workings"), Optional.empty(), workings));
        sheet.add(desk.papers(sheet));
        return desk.finish(sheet, NAME);
    }

    /** What no recipe takes: sheets to work on, where somebody makes or buys them, the buffers of the meter, what is worn out. */
    private static Stream<List<RichText>> beside(Sheet sheet, ClassDesk desk) {
        return desk.plan().supplies().beside().stream().map(bought -> row(sheet, desk, bought));
    }

    /** As it is bought: sheets before anything is done to them, what is worn with what it has to be and for what. */
    private static String name(Sheet sheet, ClassDesk desk, ClassSupplies.Bought bought) {
        Words words = sheet.words();
        ClassSupplies.LaidOut item = bought.item();
        String name = ClassPreparationPage.name(sheet, desk, item);
        if (item.kind() == ClassSupplies.Kind.WORN) {
            Reference.Equipment equipment = desk.desk().library().reference().equipment().get(item.id());
            String worn = words.more(name, equipment.words()) + (equipment.kind().equals(HANDS) ? " " + words.say("class.worn-sizes") : "");
            List<String> making = bought.toMake().stream().map(id -> desk.thing(sheet, id)).toList();
            return making.isEmpty() || item.station().isPresent() ? worn : worn + " " + words.say("class.worn-to-make", "what",
                    String.join("; ", making));
        }
        if (item.kind() != ClassSupplies.Kind.SHEET) {
            return name;
        }
        Optional<SheetMaking> making = desk.course().papers().making();
        String like = desk.course().papers().like().orElse("");
        return words.more(name, making.flatMap(SheetMaking::from).orElseGet(() -> making.filter(one -> !one.bought()).isEmpty() ? like
                : words.say("class.bought-as-unknown", "like", like)));
    }

    private static List<RichText> row(Sheet sheet, ClassDesk desk, ClassSupplies.Bought bought) {
        Words words = sheet.words();
        String all = bought.item().all().map(count -> ClassPreparationPage.count(sheet, count)).orElse(words.say("class.not-worked-out"));
        return List.of(RichText.of(name(sheet, desk, bought)), RichText.of(all), RichText.of(words.say("class.shelf-unknown")),
                RichText.of(bought.packs().map(packs -> inPacks(sheet, packs.count().value(), packs.each()))
                        .orElse(words.say("class.missing", "amount", all))),
                RichText.of(bought.orderBy().map(day -> orderBy(sheet, desk, day))
                        .orElse(words.say("class.delivery-unknown"))), RichText.of(sheet.numbers().weekday(bought.inHouse())),
                RichText.of(bought.packs().map(packs -> sheet.amount(packs.left()).text()).orElse(words.say("class.not-worked-out"))));
    }

    private static String inPacks(Sheet sheet, Quantity count, Quantity pack) {
        return pack.equals(Quantity.count(1)) ? ClassPreparationPage.count(sheet, count)
                : sheet.words().say(pack.dimension() == Dimension.COUNT ? "class.packs-of" : "class.packs",
                        "n", (long) count.value(), "pack", sheet.numbers().written(pack).text());
    }

    /** What is needed; of a solid of which more is taken than dissolves, as it is weighed. */
    private static String needed(Sheet sheet, ClassDesk desk, ClassSupplies.Order order) {
        return desk.plan().preparations().stream().flatMap(one -> one.measures().stream()
                        .filter(measure -> measure.excess() && measure.of().equals(order.material()))
                        .map(measure -> new RecipeMaker(sheet, desk.desk()).amount(one, measure)))
                .findFirst().orElseGet(() -> sheet.amount(order.needed()).text());
    }

    private static List<RichText> row(Sheet sheet, ClassDesk desk, ClassSupplies.Order order) {
        Words words = sheet.words();
        return List.of(RichText.of(name(sheet, desk, order)), RichText.of(needed(sheet, desk, order)),
                RichText.of(order.stock().map(stock -> sheet.numbers().written(stock).text())
                        .orElse(words.say("class.shelf-unknown"))),
                RichText.of(buy(sheet, order)), RichText.of(order.orderBy().map(day -> orderBy(sheet, desk, day))
                        .orElse(words.say(order.isThere() ? "class.nothing-to-order" : "class.delivery-unknown"))),
                RichText.of(sheet.numbers().weekday(order.inHouse())),
                RichText.of(order.left().map(left -> sheet.amount(left).text()).orElse(words.say("class.not-worked-out"))));
    }

    /** What is counted in sheets is told with their size. */
    private static String name(Sheet sheet, ClassDesk desk, ClassSupplies.Order order) {
        String name = desk.thing(sheet, order.material());
        return Optional.ofNullable(desk.desk().library().materials().get(order.material()))
                .filter(any -> order.needed().value().dimension() == Dimension.COUNT).flatMap(Pieces::asBought)
                .map(size -> sheet.words().say("class.sheets-of", "what", name, "size", ClassPreparationPage.size(sheet, size)))
                .orElse(name);
    }

    private static String buy(Sheet sheet, ClassSupplies.Order order) {
        Words words = sheet.words();
        if (order.isThere()) {
            return words.say("class.nothing-to-buy");
        }
        return order.packs().map(packs -> inPacks(sheet, packs.value(), order.pack().orElseThrow()))
                .orElseGet(() -> words.say("class.missing", "amount", order.missing().map(sheet::amount).map(Amount::text)
                        .orElseGet(() -> sheet.amount(order.needed()).text())));
    }

    private static String orderBy(Sheet sheet, ClassDesk desk, LocalDate day) {
        LocalDate today = desk.desk().clearance().day();
        String written = sheet.numbers().weekday(day);
        return day.isBefore(today) && !desk.course().starts().toLocalDate().isBefore(today)
                ? sheet.words().say("class.too-late", "what", written) : written;
    }
}
