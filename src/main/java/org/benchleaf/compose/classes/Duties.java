package org.benchleaf.compose.classes;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.derive.classes.Duty;
import org.benchleaf.model.SheetMaking;
import org.benchleaf.model.Step;
import org.benchleaf.page.Table;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** What is done around a class besides preparing, in words. */
record Duties(Sheet sheet, ClassDesk desk) {

    /** How practice sheets are made, in the order to begin; empty where nothing is done to them. */
    Optional<Table> ofSheets() {
        Words words = sheet.words();
        List<List<RichText>> rows = desk.plan().duties().stream().filter(duty -> duty.kind() == Duty.Kind.SHEETS_GO_THROUGH
                || duty.kind() == Duty.Kind.SHEETS_MADE).map(duty -> List.of(RichText.of(name(duty)), RichText.of(instruction(duty)),
                        RichText.of(begin(duty)), RichText.of(hands(duty)), RichText.of(waits(duty)),
                        RichText.of(desk.moment(sheet, duty.needed())), RichText.of(with(duty)))).toList();
        return rows.isEmpty() ? Optional.empty() : Optional.of(new Table("practice-table", words.say("class.sheets-caption"),
                words.columns("class.step", "class.do", "class.begin-by", "class.hands-on", "class.sheets-lie",
                        "class.ready-for", "class.with"), rows, Optional.empty()));
    }

    /** A row of the table of what to begin when. */
    List<RichText> begun(Duty duty) {
        return List.of(RichText.of(name(duty)), RichText.of(begin(duty)), RichText.of(hands(duty)),
                RichText.of(desk.moment(sheet, duty.needed())), RichText.of(with(duty)),
                RichText.of(sheet.words().say("class.calibrate-in")));
    }

    /** What it is called. */
    String name(Duty duty) {
        Words words = sheet.words();
        return switch (duty.kind()) {
            case SHEETS_GO_THROUGH -> words.more(words.say("class.practice"), desk.step(sheet, duty.step().orElseThrow()));
            case SHEETS_MADE -> words.say("class.sheets-make");
            case LAYING_OUT -> words.say("class.lay-out-stations");
            case CLEARING_AWAY -> words.say("class.clear-the-room");
        };
    }

    private String instruction(Duty duty) {
        return duty.step().flatMap(desk.desk().treatment()::step).map(Step::instruction)
                .or(() -> desk.course().papers().making().flatMap(SheetMaking::how)).orElse("");
    }

    private String begin(Duty duty) {
        LocalDateTime today = desk.desk().clearance().day().atStartOfDay();
        String moment = desk.moment(sheet, duty.begin());
        return duty.begin().isBefore(today) && !desk.course().starts().isBefore(today)
                ? sheet.words().say("class.too-late", "what", moment) : moment;
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
        Words words = sheet.words();
        List<String> things = duty.with().entrySet().stream().map(one -> one.getValue().map(amount -> words.list(List.of(
                desk.thing(sheet, one.getKey()), sheet.numbers().amount(amount).text())))
                .orElseGet(() -> desk.thing(sheet, one.getKey()))).toList();
        return things.isEmpty() ? words.say("class.sheets-lie-not") : String.join("; ", things);
    }
}
