package org.benchleaf.compose.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchleaf.compose.chart.MaterialDrawing;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.part.SiteDesk;
import org.benchleaf.compose.part.SitePageMaker;
import org.benchleaf.compose.part.SitePageName;
import org.benchleaf.compose.part.SubstanceMaker;
import org.benchleaf.model.Library;
import org.benchleaf.model.Material;
import org.benchleaf.page.CaseLines;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Facts;
import org.benchleaf.page.LinkList;
import org.benchleaf.page.Opening;
import org.benchleaf.page.Page;
import org.benchleaf.page.Paths;
import org.benchleaf.page.Section;
import org.benchleaf.text.RichText;
import org.benchleaf.words.NumberText;
import org.benchleaf.words.Words;

/** The index of materials by kind, and a page for each. */
public final class MaterialPages implements SitePageMaker {

    private static final SitePageName NAME = new SitePageName("materials", Paths.MATERIALS, true);

    /** So many cases show how it is used; the list of all cases leads to the others (common practice, no source). */
    private static final int MOST_MADE = 12;

    @Override
    public SitePageName name() {
        return NAME;
    }

    @Override
    public Stream<String> paths(Library library, List<CaseCard> cards) {
        return Stream.of(Stream.of(NAME.path()), ComparedPage.paths(library), library.materials().keySet().stream().flatMap(id -> {
            List<CaseCard> uses = cards.stream().filter(card -> card.materials().contains(id)).toList();
            return IntStream.rangeClosed(1, CaseEntries.pages(uses).size()).mapToObj(number -> pathOf(id, number));
        })).flatMap(each -> each);
    }

    private static String pathOf(String id, int number) {
        return number == 1 ? Paths.material(id) : Paths.numbered(Paths.material(id), number);
    }

    @Override
    public List<Page> make(SiteDesk desk) {
        List<Page> pages = new ArrayList<>();
        pages.add(index(desk));
        Map<String, List<CaseCard>> uses = Facets.MATERIAL.sorted(desk);
        pages.addAll(ComparedPage.all(desk, uses));
        desk.library().materials().values().forEach(material -> {
            List<List<CaseCard>> parts = CaseEntries.pages(uses.getOrDefault(material.id(), List.of()));
            pages.add(page(desk, material, parts));
            for (int number = 2; number <= parts.size(); number++) {
                pages.add(further(desk, material, parts, number));
            }
        });
        return pages;
    }

    private Page index(SiteDesk desk) {
        Sheet sheet = desk.sheet(NAME);
        Words words = sheet.words();
        String title = words.say("way.materials");
        sheet.add(Opening.plain(title, words.say("materials.lead")));
        List<LinkList.Entry> compared = ComparedPage.links(sheet, desk);
        if (!compared.isEmpty()) {
            sheet.add(new Section("compared", words.say("compared.heading"), Optional.of(words.say("compared.about")),
                    List.of(new LinkList(compared))));
        }
        Map<String, List<LinkList.Entry>> byKind = new LinkedHashMap<>();
        desk.library().materials().values().forEach(material ->
                byKind.computeIfAbsent(material.kind(), any -> new ArrayList<>()).add(new LinkList.Entry(
                        sheet.link(told(sheet, material.name()), Paths.material(material.id())), told(sheet, material.plain()))));
        byKind.forEach((kind, entries) -> sheet.add(new Section("kind-" + Paths.slug(kind),
                words.term("material-kind", kind), Optional.empty(), List.of(new LinkList(entries)))));
        return sheet.page(title, words.say("materials.lead"));
    }

    /** A text of the studio's own in the language of a page. */
    private static String told(Sheet sheet, String text) {
        return sheet.library().phrases().of(text);
    }

    private static Page page(SiteDesk desk, Material material, List<List<CaseCard>> parts) {
        Sheet sheet = desk.sheet(Paths.material(material.id()), "material");
        Words words = sheet.words();
        sheet.add(new Opening(Optional.of(words.term("material-kind", material.kind())), told(sheet, material.name()),
                Optional.of(told(sheet, material.plain())), List.of(), Optional.empty()));
        new MaterialDrawing(sheet).make(material).ifPresent(sheet::add);
        sheet.add(new Section("properties", words.say("materials.properties"), Optional.empty(),
                List.of(new Facts(facts(sheet, material)))));
        new SubstanceMaker(sheet).section(material).ifPresent(sheet::add);
        List<LinkList.Entry> compared = ComparedPage.links(sheet, desk, material);
        if (!compared.isEmpty()) {
            sheet.add(new Section("compared", words.say("compared.said"), Optional.empty(),
                    List.of(new Facts(ComparedPage.facts(sheet, desk, material)), new LinkList(compared))));
        }
        sheet.add(cases(sheet, material, parts, 1));
        made(sheet, desk, material, parts.get(0)).ifPresent(sheet::add);
        return sheet.page(told(sheet, material.name()), told(sheet, material.plain()));
    }

    /** Where the list of cases goes on. */
    private static Page further(SiteDesk desk, Material material, List<List<CaseCard>> parts, int number) {
        Sheet sheet = desk.sheet(pathOf(material.id(), number), "material");
        String heading = CaseEntries.numbered(sheet, told(sheet, material.name()), number, parts.size());
        sheet.add(Opening.plain(heading, told(sheet, material.plain())));
        sheet.add(cases(sheet, material, parts, number));
        made(sheet, desk, material, parts.get(number - 1)).ifPresent(sheet::add);
        return sheet.page(heading, told(sheet, material.plain()));
    }

    private static Section cases(Sheet sheet, Material material, List<List<CaseCard>> parts, int number) {
        int uses = parts.stream().mapToInt(List::size).sum();
        return new Section("cases", sheet.words().count("materials.used-in", uses), Optional.empty(), CaseEntries.page(sheet, parts, number,
                page -> pathOf(material.id(), page)));
    }

    /** What these cases make of it, with its strength; in another language only those told in it, for others are worded in theirs. */
    private static Optional<Section> made(Sheet sheet, SiteDesk desk, Material material, List<CaseCard> cards) {
        List<CaseLines.Entry> made = cards.stream().filter(card -> desk.folder().language().isEmpty()
                || card.language().equals(desk.language())).flatMap(card -> card.made().stream()
                .filter(one -> one.material().equals(material.id())).map(one -> new CaseLines.Entry(
                        sheet.link(card.title(), card.start()), card.language(), one.strength()))).toList();
        return made.isEmpty() ? Optional.empty() : Optional.of(new Section("made", sheet.words().say("materials.made"),
                made.size() > MOST_MADE ? Optional.of(sheet.words().say("materials.made-first", "n", MOST_MADE)) : Optional.empty(),
                List.of(new CaseLines(made.subList(0, Math.min(made.size(), MOST_MADE))))));
    }

    private static List<Fact> facts(Sheet sheet, Material material) {
        Words words = sheet.words();
        NumberText numbers = sheet.numbers();
        List<Fact> facts = new ArrayList<>();
        material.strength().ifPresent(value -> facts.add(fact(words, "strength", numbers.written(value).text())));
        material.ph().ifPresent(value -> facts.add(fact(words, "ph", numbers.written(value).text())));
        material.grammage().ifPresent(value -> facts.add(fact(words, "grammage", numbers.written(value).text())));
        if (material.height().isPresent() && material.width().isPresent()) {
            facts.add(fact(words, "sheet", words.say("size", "height", numbers.written(material.height().get()).text(),
                    "width", numbers.written(material.width().get()).text())));
        }
        material.uptake().ifPresent(value -> facts.add(fact(words, "uptake", numbers.written(value).text())));
        facts.add(fact(words,
                "keeps", material.keeps().map(value -> words.say("materials.keeps-stated", "time", numbers.written(value).text()))
                .orElseGet(() -> words.say("compared.not-known"))));
        material.kept().ifPresent(value -> facts.add(fact(words, "kept", told(sheet, value))));
        if (!material.traits().isEmpty()) {
            facts.add(fact(words, "traits", words.list(material.traits().stream().sorted().map(trait -> told(sheet, trait)).toList())));
        }
        material.source().flatMap(sheet::cite).ifPresent(citation -> facts.add(new Fact(
                words.say("materials.source"), RichText.of(citation.link()))));
        return facts;
    }

    private static Fact fact(Words words, String key, String value) {
        return Fact.of(words.say("materials." + key), value);
    }
}
