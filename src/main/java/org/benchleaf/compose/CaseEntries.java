package org.benchleaf.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lists cases on a page. */
final class CaseEntries {

    private static final int IN_FIRST_VIEW = 2;

    private CaseEntries() {
    }

    static CaseList of(Sheet sheet, List<CaseCard> cards) {
        List<CaseList.Entry> entries = new ArrayList<>();
        for (CaseCard card : cards) {
            entries.add(entry(sheet, card, entries.size() < IN_FIRST_VIEW));
        }
        return new CaseList(entries, sheet.words().group("case-list"));
    }

    private static CaseList.Entry entry(Sheet sheet, CaseCard card, boolean first) {
        Words words = sheet.words();
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of(words.say("fact.object"), card.technique().isEmpty() ? card.kind()
                : card.kind() + ", " + card.technique()));
        if (!card.damages().isEmpty()) {
            facts.add(Fact.of(words.say("fact.damage"), String.join(", ", card.damages())));
        }
        facts.add(Fact.of(words.say("fact.level"), words.term("level", card.level())));
        Optional<Photo> picture = card.picture().isEmpty() ? Optional.empty()
                : Optional.of(new Photo(card.id(), card.picture(), card.pictureAlt(), "", "", "", Optional.empty(),
                        first));
        List<Link> sheets = new ArrayList<>();
        PageMakers.CASE.forEach(maker -> {
            String path = Paths.inCase(card.id(), maker.file());
            if (!path.equals(card.path()) && card.pages().contains(path)) {
                sheets.add(sheet.link(words.say("case-list.sheet", "page",
                        words.say("case-page." + maker.kind()), "title", card.title()), path));
            }
        });
        return new CaseList.Entry(sheet.link(card.title(), card.start()), card.language(), card.summary(), facts, picture,
                sheets);
    }
}
