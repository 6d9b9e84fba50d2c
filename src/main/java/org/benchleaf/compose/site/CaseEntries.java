package org.benchleaf.compose.site;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.model.CourseClass;
import org.benchleaf.page.Block;
import org.benchleaf.page.CaseLines;
import org.benchleaf.page.CaseList;
import org.benchleaf.page.Fact;
import org.benchleaf.page.LinkList;
import org.benchleaf.page.Paths;
import org.benchleaf.page.Photo;
import org.benchleaf.words.Words;

/** Lists cases: so many as a page shows at ease with all that tells them apart, more by a line each, very many on several pages. */
final class CaseEntries {

    /** Each with its picture and facts, on one page. */
    static final int IN_FULL = 60;
    private static final int LINES_A_PAGE = 400;
    private static final int IN_FIRST_VIEW = 2;

    private CaseEntries() {
    }

    /** The cases of each page on which so many are listed; one page without any if there are none. */
    static List<List<CaseCard>> pages(List<CaseCard> cards, int most) {
        List<List<CaseCard>> pages = new ArrayList<>();
        for (int from = 0; from < Math.max(1, cards.size()); from += most) {
            pages.add(cards.subList(from, Math.min(cards.size(), from + most)));
        }
        return pages;
    }

    /** The cases of each page of a list that may be of any length. */
    static List<List<CaseCard>> pages(List<CaseCard> cards) {
        return pages(cards, cards.size() <= IN_FULL ? IN_FULL : LINES_A_PAGE);
    }

    /**
     * One page of such a list, with the ways to the others.
     *
     * @param number of the page, from 1
     * @param pathOf the path of a page by its number
     */
    static List<Block> page(Sheet sheet, List<List<CaseCard>> pages, int number, IntFunction<String> pathOf) {
        List<CaseCard> cards = pages.get(number - 1);
        List<Block> blocks = new ArrayList<>();
        if (!cards.isEmpty()) {
            blocks.add(pages.size() == 1 && cards.size() <= IN_FULL ? of(sheet, cards) : lines(sheet, cards));
        }
        others(sheet, pages.size(), number, pathOf).ifPresent(blocks::add);
        return blocks;
    }

    private static CaseLines lines(Sheet sheet, List<CaseCard> cards) {
        return new CaseLines(cards.stream().map(card -> new CaseLines.Entry(sheet.link(card.title(), card.start()),
                card.language(), object(card) + (card.level().isEmpty() ? ""
                        : " · " + sheet.words().term("level", card.level())))).toList());
    }

    /** Links to the other pages of a list, if there are any. */
    static Optional<LinkList> others(Sheet sheet, int count, int number, IntFunction<String> pathOf) {
        return count == 1 ? Optional.empty() : Optional.of(new LinkList(IntStream.rangeClosed(1, count)
                .filter(page -> page != number).mapToObj(page -> new LinkList.Entry(sheet.link(
                        sheet.words().say("library.page-heading", "page", page, "pages", count), pathOf.apply(page)), ""))
                .toList()));
    }

    /** The heading of one page of a list, which tells its number if there are several. */
    static String numbered(Sheet sheet, String heading, int number, int count) {
        return count == 1 ? heading : sheet.words().say("case-list.part", "heading", heading, "page", number, "pages", count);
    }

    private static String object(CaseCard card) {
        return card.technique().isEmpty() ? card.kind() : Words.in(card.language()).list(List.of(card.kind(), card.technique()));
    }

    /** When a case was new or changed; the last day on record of one whose author states no edition. */
    private static Optional<Fact> changed(Sheet sheet, CaseCard.LastChange change) {
        Words words = sheet.words();
        return Optional.of(change.on()).filter(day -> !day.isEmpty()).map(LocalDate::parse).map(sheet.numbers()::date).map(day ->
                change.edition() == 0 ? Fact.of(words.say("fact.last-day"), day)
                        : change.edition() == 1 ? Fact.of(words.say("fact.new"), day)
                        : Fact.of(words.say("fact.changed"), change.what().isEmpty() ? day
                                : words.say("fact.changed-on", "day", day, "changed", change.what())));
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
        facts.add(Fact.of(words.say("fact.object"), object(card)));
        if (!card.damages().isEmpty()) {
            facts.add(Fact.of(words.say("fact.damage"), Words.in(card.language()).list(card.damages())));
        }
        if (!card.level().isEmpty()) {
            facts.add(Fact.of(words.say("fact.level"), words.term("level", card.level())));
        }
        changed(sheet, card.lastChange()).ifPresent(facts::add);
        Optional<Photo> picture = card.picture().isEmpty() ? Optional.empty()
                : Optional.of(new Photo(card.id(), card.picture(), card.pictureAlt(), "", "", "", Optional.empty(),
                        first));
        List<CaseList.OtherPage> sheets = new ArrayList<>();
        sheet.names().ofCase().forEach(page -> {
            String path = Paths.inCase(card.id(), page.file());
            if (!path.equals(card.path()) && card.pages().contains(path)) {
                String kind = words.say("case-page." + page.kind());
                sheets.add(new CaseList.OtherPage(sheet.link(
                        words.say("case-list.sheet", "page", kind, "title", card.title()), path), kind));
            }
        });
        classes(sheet, card).forEach(course -> {
            String title = words.more(words.say("class-page.class"), sheet.library().phrases().of(course.title()));
            sheets.add(new CaseList.OtherPage(sheet.link(title, Paths.inCase(card.id(), Paths.OF_CLASS + Paths.fileName(course.id())
                    + ".html")), title));
        });
        return new CaseList.Entry(sheet.link(card.title(), card.start()), card.language(), card.summary(), facts, picture,
                sheets);
    }

    /** The classes of a case that have pages: those that say so themselves, where both sheets of the case are there. */
    private static List<CourseClass> classes(Sheet sheet, CaseCard card) {
        return !card.pages().containsAll(List.of(Paths.stepSheet(card.id()), Paths.preparation(card.id()))) ? List.of()
                : sheet.library().classes().stream().filter(course -> course.caseId().equals(card.id()) && course.isPlanned()
                        && course.papers().published()).toList();
    }
}
