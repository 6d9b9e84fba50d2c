package org.benchleaf.compose.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchleaf.compose.chart.EvidenceRow;
import org.benchleaf.compose.chart.EvidenceSeries;
import org.benchleaf.compose.chart.EvidenceStrip;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.Evidence;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.part.SiteDesk;
import org.benchleaf.compose.part.SitePageMaker;
import org.benchleaf.compose.part.SitePageName;
import org.benchleaf.page.Block;
import org.benchleaf.page.CaseLines;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.EvidencePlot;
import org.benchleaf.page.Findings;
import org.benchleaf.page.LinkGroups;
import org.benchleaf.page.LinkList;
import org.benchleaf.page.Opening;
import org.benchleaf.page.Page;
import org.benchleaf.page.Paths;
import org.benchleaf.page.Section;
import org.benchleaf.page.Table;
import org.benchleaf.words.Words;

/** The index of what was measured, and for each measure what all cases tell of it, as far as it may be compared. */
public final class EvidencePages implements SitePageMaker {

    private static final SitePageName NAME = new SitePageName("evidence", Paths.EVIDENCE, true);
    /** So many rows, each with its drawing, weigh no more than a long list of cases (common practice, no source). */
    static final int ROWS_A_PAGE = 50;
    /** More names than this are passed over (common practice, no source). */
    private static final int MOST_NAMED = 12;

    @Override
    public SitePageName name() {
        return NAME;
    }

    @Override
    public List<Page> make(SiteDesk desk) {
        List<EvidenceMeasure> measures = EvidenceMeasure.all(desk.cards());
        List<Page> pages = new ArrayList<>(List.of(index(desk, measures)));
        measures.forEach(measure -> {
            List<EvidenceMeasure> parts = measure.pages(ROWS_A_PAGE);
            IntStream.rangeClosed(1, parts.size()).forEach(number -> pages.add(page(desk, measure, parts, number)));
        });
        return pages;
    }

    /** The numbers of each measure as a file, with what it holds for programs. */
    public static List<DataFile> files(SiteDesk desk) {
        EvidenceTables tables = new EvidenceTables(desk.sheet(NAME));
        Words words = Words.in(desk.language());
        return EvidenceMeasure.all(desk.cards()).stream().flatMap(measure -> tables.file(measure, name(words, measure)).stream())
                .flatMap(table -> Stream.of(new DataFile(Paths.evidence(table.file()), table.csv()),
                        new DataFile(Paths.evidence(table.file() + "-metadata.json"),
                                table.metadata(desk.language(), words.say("evidence.file-about"),
                                Optional.empty(), Optional.empty())))).toList();
    }

    /** A link to each measure, with how many cases have a number of it. */
    static List<LinkGroups.Entry> entries(Sheet sheet, SiteDesk desk) {
        return EvidenceMeasure.all(desk.cards()).stream().map(measure -> new LinkGroups.Entry(
                sheet.link(name(sheet.words(), measure), path(measure)),
                sheet.words().count("browse.cases", measure.measured().size()))).toList();
    }

    private static Page index(SiteDesk desk, List<EvidenceMeasure> measures) {
        Sheet sheet = desk.sheet(NAME);
        Words words = sheet.words();
        String title = words.say("way.evidence");
        sheet.add(Opening.plain(title, words.say("evidence.lead")));
        sheet.add(new Section("measures", measures.isEmpty() ? words.say("evidence.none") : words.say("evidence.measures"),
                Optional.empty(), List.of(new LinkGroups(List.of(new LinkGroups.Group("measures-list", "", entries(sheet, desk)))))));
        return sheet.page(title, words.say("evidence.lead"));
    }

    private static String name(Words words, EvidenceMeasure measure) {
        return Words.capital(words.term("measure", measure.name()));
    }

    private static String path(EvidenceMeasure measure) {
        return Paths.evidenceOf(measure.name());
    }

    private static Page page(SiteDesk desk, EvidenceMeasure whole, List<EvidenceMeasure> parts, int number) {
        EvidenceMeasure part = parts.get(number - 1);
        Sheet sheet = desk.sheet(Paths.numbered(path(whole), number), NAME.kind()).script("evidence.js");
        Words words = sheet.words();
        String title = words.say("evidence.title", "measure", name(words, whole));
        String heading = CaseEntries.numbered(sheet, title, number, parts.size());
        sheet.add(new Opening(Optional.of(words.say("way.evidence")), heading, Optional.of(lead(words, whole)), List.of(),
                Optional.empty()));
        new EvidenceChoices(words).filter(part.series().stream().flatMap(one -> one.rows().stream()).map(EvidenceRow::card)
                .distinct().toList()).ifPresent(sheet::add);
        part.series().forEach(series -> sheet.add(section(sheet, series, name(words, whole))));
        if (!part.apart().isEmpty()) {
            sheet.add(new Section("apart", words.say("evidence.apart"), Optional.of(words.say("evidence.apart-lead")),
                    List.of(new EvidenceTables(sheet).apart(part.apart()))));
        }
        if (number == parts.size()) {
            silent(sheet, desk, whole).ifPresent(sheet::add);
        }
        ways(sheet, whole, parts, number).ifPresent(sheet::add);
        return sheet.page(heading, lead(words, whole));
    }

    private static String lead(Words words, EvidenceMeasure measure) {
        int measured = measure.measured().size();
        int without = measure.cases().size() - measured;
        return words.count("evidence.told-by", measured) + " " + (without == 0 ? "" : words.count("evidence.told-without", without) + " ")
                + words.say("evidence.method-lead");
    }

    /** The cases whose results stand on this site and say nothing of the measure; many of them are only counted. */
    private static Optional<Section> silent(Sheet sheet, SiteDesk desk, EvidenceMeasure measure) {
        Set<String> telling = measure.cases().stream().map(CaseCard::id).collect(Collectors.toSet());
        EvidenceChoices choices = new EvidenceChoices(sheet.words());
        List<CaseLines.Entry> silent = desk.cards().stream().filter(card -> !telling.contains(card.id())
                && card.pages().contains(Paths.results(card.id()))).map(card -> new CaseLines.Entry(
                        sheet.link(card.title(), Paths.results(card.id())), card.language(), choices.about(card))).toList();
        String told = sheet.words().count("evidence.silent-lead", silent.size());
        return silent.isEmpty() ? Optional.empty() : Optional.of(new Section("silent", sheet.words().say("evidence.silent"),
                Optional.of(told), silent.size() > MOST_NAMED ? List.of() : List.of(new CaseLines(silent))));
    }

    private static Section section(Sheet sheet, EvidenceSeries series, String name) {
        Words words = sheet.words();
        // A scale is for comparing: of a single case the numbers say all.
        Optional<EvidenceStrip> strip = Optional.of(series).filter(any -> any.cases() > 1).map(any -> new EvidenceStrip(sheet, any));
        EvidenceChoices choices = new EvidenceChoices(words);
        String kind = series.first().kind();
        Table table = new EvidenceTables(sheet).of(series, kind.equals("method")
                ? words.say("evidence.caption", "measure", name, "like", like(words, series)) : Words.capital(like(words, series)));
        List<EvidencePlot.Row> rows = IntStream.range(0, series.rows().size()).mapToObj(i -> {
            EvidenceRow row = series.rows().get(i);
            return new EvidencePlot.Row(sheet.link(row.card().title(), row.evidence().address()), row.card().language(),
                    choices.about(row.card()), choices.keys(row.card()),
                    strip.map(drawn -> drawn.row(row, series.anchor() + "-" + (i + 1))));
        }).toList();
        String told = words.count("evidence.cases", series.cases(), "readings", words.count(
                kind.equals("ph") || kind.equals("method") ? "evidence.readings" : "evidence.values", series.readings()));
        return new Section(series.anchor(), Words.capital(like(words, series)),
                Optional.of(series.cases() == 1 ? told + " " + words.say("evidence.alone") : told),
                List.of(new EvidencePlot(strip.map(any -> words.say("evidence.key-" + kind)).orElse(""),
                        strip.map(drawn -> drawn.axis(name)), rows, table)));
    }

    /** What the results of a series have in common, in words; what authors wrote stays as it is. */
    private static String like(Words words, EvidenceSeries series) {
        Evidence one = series.first();
        return switch (one.kind()) {
            case "ph" -> words.term("evidence-ph", one.like().replace(", ", "-"));
            case "reserve" -> words.say("evidence-reserve." + one.like());
            case "colour" -> words.say("evidence.colour-by", "conditions", one.like());
            case "size" -> words.say("evidence.size-by", "method", one.like());
            default -> one.unit().isEmpty() ? one.like() : words.say("evidence.in-unit", "method", one.like(), "unit", one.unit());
        };
    }

    private static Optional<Section> ways(Sheet sheet, EvidenceMeasure whole, List<EvidenceMeasure> parts, int number) {
        Words words = sheet.words();
        List<Block> blocks = new ArrayList<>();
        EvidenceTables tables = new EvidenceTables(sheet);
        tables.file(whole, name(words, whole)).ifPresent(table -> {
            blocks.add(new LinkList(List.of(new LinkList.Entry(sheet.link(words.say("results.file", "what", table.caption()),
                    Paths.evidence(table.file())), words.say("evidence.file-about")))));
            blocks.add(new Findings(List.of(), words.say("evidence.file-columns"), List.of(tables.about(table))));
        });
        CaseEntries.others(sheet, parts.size(), number, page -> Paths.numbered(path(whole), page)).ifPresent(blocks::add);
        return blocks.isEmpty() ? Optional.empty()
                : Optional.of(new Section("more", words.say("evidence.more"), Optional.empty(), blocks));
    }
}
