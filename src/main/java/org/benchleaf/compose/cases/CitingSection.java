package org.benchleaf.compose.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.compose.part.CaseReference;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.model.Citing;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Facts;
import org.benchleaf.page.LinkList;
import org.benchleaf.page.Section;
import org.benchleaf.words.Words;

/** Says how a case is cited, in words and in the files of reference managers, and what changed from version to version. */
final class CitingSection {

    private final Sheet sheet;
    private final CaseReference reference;

    CitingSection(Sheet sheet, CaseReference reference) {
        this.sheet = sheet;
        this.reference = reference;
    }

    Section section(List<Citing.Version> versions) {
        Words words = sheet.words();
        ReferenceFiles files = new ReferenceFiles(reference);
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of(words.say("cite.as"), words.say("cite.text", "authors", String.join("; ", reference.authors()),
                "year", reference.day().map(day -> String.valueOf(day.getYear())).orElseGet(() -> words.say("cite.no-year")),
                "title", reference.title(), "publisher", publisher(), "version", reference.version(),
                "retold", reference.basis().map(basis -> " " + words.say("cite.retold", "publication", basis)).orElse(""),
                "place", files.place().map(place -> " " + place).orElse(""))));
        facts.add(Fact.of(words.say("cite.version"), words.say("cite.version-about", "version", reference.version())));
        facts.add(Fact.of(words.say("cite.licence"), reference.licence()));
        for (Citing.Version version : versions) {
            int edition = versions.indexOf(version) + 1;
            facts.add(Fact.of(words.say("cite.changed"), words.say(
                    edition == versions.size() ? "cite.changed-now" : "cite.changed-on",
                    "n", edition, "day", sheet.numbers().date(version.on()),
                    "version", reference.version(), "changed", version.changed())));
        }
        return new Section("cite", words.say("cite.heading"), Optional.empty(), List.of(new Facts(facts), new LinkList(List.of(
                link("bib", "BibTeX", files), link("ris", "RIS", files), link("csl.json", "CSL-JSON", files)))));
    }

    /** A studio that is the only author is named once. */
    private String publisher() {
        return reference.authors().equals(List.of(reference.publisher())) ? "" : " " + reference.publisher() + ".";
    }

    private LinkList.Entry link(String ending, String form, ReferenceFiles files) {
        return new LinkList.Entry(sheet.link(sheet.words().say("cite.file", "form", form), files.path(ending)), "");
    }
}
