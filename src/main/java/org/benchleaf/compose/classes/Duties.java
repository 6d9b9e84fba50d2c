package org.benchleaf.compose.classes;

import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.compose.part.HazardMaker;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.derive.classes.Duty;
import org.benchleaf.derive.classes.Outlasting;
import org.benchleaf.model.ClassDay;
import org.benchleaf.model.SheetMaking;
import org.benchleaf.page.Table;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** What is done around a class besides preparing, in words. */
record Duties(Sheet sheet, ClassDesk desk) {

    private static final Set<Duty.Kind> OF_SHEETS = Set.of(Duty.Kind.METER_CALIBRATED, Duty.Kind.BATH_FOR_A_TRIAL,
            Duty.Kind.SHEETS_GO_THROUGH, Duty.Kind.SHEETS_MADE);

    /** How practice sheets are made, in the order to begin; empty where nothing is done to them. */
    Optional<Table> ofSheets() {
        Words words = sheet.words();
        List<List<RichText>> rows = desk.plan().duties().stream().filter(duty ->
                OF_SHEETS.contains(duty.kind())).map(duty -> List.of(RichText.of(name(duty)), RichText.of((instruction(duty)
                        + " " + how(duty)).strip()),
                        RichText.of(begin(duty)), RichText.of(hands(duty)), RichText.of(waits(duty)),
                        RichText.of(desk.moment(sheet, duty.needed())), RichText.of(with(duty)))).toList();
        return rows.isEmpty() ? Optional.empty() : Optional.of(new Table("practice-table", words.say("class.sheets-caption"),
                words.columns("class.step", "class.do", "class.begin-by", "class.hands-on", "class.sheets-lie",
                        "class.ready-for", "class.with"), rows, Optional.empty()));
    }

    /** What the steps are called that practice sheets go through before the class, by their ids. */
    Map<String, String> steps() {
        Map<String, String> steps = new LinkedHashMap<>();
        desk.plan().duties().stream().filter(duty -> duty.kind() == Duty.Kind.SHEETS_GO_THROUGH).forEach(duty ->
                steps.put(duty.step().orElseThrow(), name(duty)));
        return steps;
    }

    /** A row of the table of what to begin when. */
    List<RichText> begun(Duty duty) {
        return List.of(RichText.of(name(duty)), RichText.of(begin(duty)), RichText.of(hands(duty)),
                RichText.of(desk.moment(sheet, duty.needed())), RichText.of(with(duty)),
                RichText.of(sheet.words().say(duty.kind() == Duty.Kind.BATH_FOR_A_TRIAL ? "class.trial-bath-in" : "class.calibrate-in")
                        + after(how(duty))));
    }

    /** Another sentence at the end of a cell. */
    static String after(String sentence) {
        return sentence.isEmpty() ? "" : ". " + sentence;
    }

    /** Where it stands how it is done. */
    private String how(Duty duty) {
        return new ClassNotes(sheet, desk).pointer(duty.kind() == Duty.Kind.SHEETS_GO_THROUGH
                ? duty.step().flatMap(desk.desk().treatment()::step).map(step -> step.kind().word()).orElse("") : duty.kind().word());
    }

    /** What it is called. */
    String name(Duty duty) {
        Words words = sheet.words();
        return switch (duty.kind()) {
            case METER_CALIBRATED -> words.say("class.calibrate");
            case BATH_FOR_A_TRIAL -> words.say("class.trial-bath", "what", things(duty));
            case SHEETS_GO_THROUGH -> words.more(words.say("class.practice"), desk.step(sheet, duty.step().orElseThrow()));
            case SHEETS_MADE -> words.say("class.sheets-make");
            case CLEAR_DRAWN_OFF -> words.say("class.draw-off", "what", things(duty));
            case PORTIONS_FILLED -> words.say("class.fill-portions", "what", things(duty));
            case WAX_LAID_AGAIN -> words.say("class.wax-again", "what", things(duty));
            case PIECES_CUT -> words.say("class.cut-pieces", "what", things(duty));
            case LAYING_OUT -> words.say(desk.plan().supplies().layOut().stream().anyMatch(item -> item.mark().isPresent())
                    ? "class.lay-out-stations-trays" : "class.lay-out-stations") + later();
            case SHEETS_WEIGHED -> words.say("class.weigh-between");
            case CLEARING_AWAY -> words.say("class.clear-the-room");
        };
    }

    /** That stations of later groups have no place of their own yet. */
    private String later() {
        ClassDay day = desk.course().day();
        return day.rhythm() == ClassDay.Rhythm.GROUPS && day.groups().filter(groups -> groups.of() < desk.course().stations()).isPresent()
                ? " " + sheet.words().say("class.lay-out-later") : "";
    }

    private String instruction(Duty duty) {
        if (duty.kind() == Duty.Kind.METER_CALIBRATED) {
            return sheet.words().say("class.calibrate-do");
        }
        if (duty.kind() == Duty.Kind.BATH_FOR_A_TRIAL) {
            return sheet.words().say("class.trial-bath-do");
        }
        return duty.step().flatMap(desk.desk().treatment()::step).map(step ->
                        step.instruction() + lasts(duty)
                        + new HazardMaker(sheet, desk.desk()).cautions(step.id()))
                .or(() -> desk.course().papers().making().flatMap(SheetMaking::how)).orElse("");
    }

    /** How long a drop stays where the plan keeps a sheet wet with its liquid for longer than was tested. */
    private String lasts(Duty duty) {
        return duty.touches().isEmpty() ? "" : duty.with().keySet().stream().flatMap(id -> Outlasting.longest(desk.plan().outlasting(), id)
                .map(time -> " " + sheet.words().say("class.trial-lasts", "liquid", desk.thing(sheet, id), "time",
                        sheet.numbers().duration(time).text())).stream()).collect(Collectors.joining());
    }

    /** When to begin, and when to go on after a break, a night or other work. */
    private String begin(Duty duty) {
        LocalDateTime today = desk.desk().clearance().day().atStartOfDay();
        String moment = sheet.words().list(Stream.concat(Stream.of(desk.moment(sheet, duty.begin())), again(duty)).toList());
        return duty.begin().isBefore(today) && !desk.course().starts().isBefore(today)
                ? sheet.words().say("class.too-late", "what", moment) : moment;
    }

    private Stream<String> again(Duty duty) {
        return duty.stretches().stream().skip(1).map(one ->
                one.from().toLocalDate().equals(duty.begin().toLocalDate()) ? sheet.numbers().clock(one.from().toLocalTime())
                        : desk.moment(sheet, one.from()));
    }

    private String hands(Duty duty) {
        String text = sheet.numbers().duration(Quantity.of(duty.minutes(), Unit.MINUTE)).text();
        return duty.count() == 1 ? text : sheet.words().say("class.hands-on-each", "all", text, "n", duty.count(),
                "each", sheet.numbers().duration(duty.each()).text());
    }

    private String waits(Duty duty) {
        return duty.waits().value() == 0 ? sheet.words().say("class.sheets-lie-not") : sheet.numbers().duration(duty.waits()).text();
    }

    private String with(Duty duty) {
        return switch (duty.kind()) {
            case METER_CALIBRATED -> MeterWork.buffers(sheet, desk);
            case BATH_FOR_A_TRIAL -> duty.with().values().stream().flatMap(Optional::stream).map(amount -> sheet.numbers().amount(amount)
                    .text()).findFirst().orElseThrow() + sheet.words().say("bench.ready-times", "times",
                            sheet.words().times(duty.count()));
            default -> amounts(duty);
        };
    }

    private String things(Duty duty) {
        return sheet.words().list(duty.with().keySet().stream().map(id -> desk.thing(sheet, id)).toList());
    }

    private String amounts(Duty duty) {
        Words words = sheet.words();
        List<String> things = duty.with().entrySet().stream().map(one -> one.getValue().map(amount -> words.list(List.of(
                desk.thing(sheet, one.getKey()), sheet.numbers().amount(amount).text())))
                .orElseGet(() -> desk.thing(sheet, one.getKey()))).toList();
        return things.isEmpty() ? words.say("class.with-nothing") : String.join("; ", things);
    }
}
