package org.benchleaf.compose.classes;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.model.ClassPapers;
import org.benchleaf.model.Reference;
import org.benchleaf.page.Block;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Facts;
import org.benchleaf.page.Note;
import org.benchleaf.page.Section;
import org.benchleaf.page.Table;
import org.benchleaf.quantity.QuantityReader;
import org.benchleaf.quantity.Unit;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** What changed in a class since its papers were handed out, found by comparison and as its author tells it. */
final class ClassChanges {

    private final Sheet sheet;
    private final Words words;
    private final ClassDesk desk;

    ClassChanges(Sheet sheet, ClassDesk desk) {
        this.sheet = sheet;
        this.words = sheet.words();
        this.desk = desk;
    }

    /** The section; empty if the class is not issued. */
    Optional<Section> section() {
        return desk.course().papers().issue().map(issue -> {
            List<Block> blocks = new ArrayList<>();
            List<String> told = desk.course().papers().changes();
            if (!told.isEmpty()) {
                blocks.add(new Facts(told.stream().map(change -> Fact.of(words.say("class.change"), change)).toList()));
            }
            issue.replaces().ifPresent(number -> blocks.add(since(number)));
            desk.issued(issue.number()).filter(then -> !then.mark().equals(desk.plan().papers().mark()))
                    .ifPresent(then -> blocks.add(table(then)));
            return new Section("changes", words.say("class.changes"), Optional.of(words.say(issue.replaces().isEmpty()
                    ? "class.changes-first" : "class.changes-lead")), blocks);
        });
    }

    private Block since(int number) {
        return desk.issued(number).<Block>map(this::table).orElseGet(() -> new Note("care", words.say("class.changes-unknown-name"),
                RichText.of(words.say("class.changes-unknown", "number", number))));
    }

    /** Amounts and cautions of an issue beside those of now; the table says so where none is another. */
    private Table table(ClassPapers.Issued then) {
        List<List<RichText>> rows = new ArrayList<>();
        desk.plan().papers().amountsSince(then).forEach(one -> rows.add(row(desk.thing(sheet, one.of()),
                one.before().map(this::amount), one.now().map(this::amount))));
        desk.plan().papers().cautionsSince(then).forEach(one -> rows.add(row(words.say("class.cautions-of", "step",
                desk.step(sheet, one.of())), one.before().map(this::cautions), one.now().map(this::cautions))));
        if (rows.isEmpty()) {
            rows.add(row(words.say("class.changes-none"), Optional.empty(), Optional.empty()));
        }
        return new Table("changes-since-" + then.number(), words.say("class.changes-caption", "number", then.number(), "on",
                sheet.numbers().weekday(then.on())), words.columns("class.what-changed", "class.then", "class.now"),
                rows, Optional.empty());
    }

    private List<RichText> row(String what, Optional<String> then, Optional<String> now) {
        return Stream.of(what, then.orElse(words.say("class.not-there")), now.orElse(words.say("class.not-there")))
                .map(RichText::of).toList();
    }

    /** As the order list tells it: what was kept has more digits, so that a small change is found. */
    private String amount(ClassPapers.Amount kept) {
        return kept.batches() == 1 ? one(kept.each())
                : words.say("class.made-times", "amount", one(kept.each()), "times", words.times(kept.batches()));
    }

    private String one(String kept) {
        return QuantityReader.read(kept).quantity().filter(quantity -> quantity.unit() != Unit.COUNT && quantity.unit() != Unit.NONE)
                .map(quantity -> sheet.numbers().amount(quantity).text()).orElse(kept);
    }

    private String cautions(List<String> keys) {
        Map<String, Reference.Caution> cautions = desk.desk().library().reference().cautions();
        return keys.stream().map(key -> Optional.ofNullable(cautions.get(key)).flatMap(Reference.Caution::name)
                .orElse(key)).collect(Collectors.joining("; "));
    }
}
