package org.benchleaf.compose.classes;

import java.util.ArrayList;
import java.util.List;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.model.ClassStores;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Facts;
import org.benchleaf.words.Words;

/** What a class has over and above, by the kind of thing, and what that serves. */
final class SpareFacts {

    private SpareFacts() {
    }

    /** One line a kind: sheets, liquids and pieces, fillings of trays. */
    static Facts of(Sheet sheet, ClassDesk desk) {
        Words words = sheet.words();
        ClassStores.Spare spare = desk.course().stores().spare();
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of(words.say("class.spare-sheets"), words.say("class.spare-sheets-take", "n", spare.sheets())));
        facts.add(Fact.of(words.say("class.spare-shares"), words.say("class.spare-shares-of",
                "liquids", sheet.numbers().written(spare.liquids()).text(), "pieces", sheet.numbers().written(spare.pieces()).text())));
        desk.plan().supplies().furtherBaths().forEach(one -> facts.add(Fact.of(words.say("class.spare-baths", "step",
                desk.step(sheet, one.step())), words.say("class.spare-baths-serve", "n", one.fillings(), "most", one.most(),
                        "served", one.stations(), "stations", desk.course().stations(), "left", one.besideSpareSheets()))));
        return new Facts(facts);
    }
}
