package org.benchleaf.compose.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.part.SiteDesk;
import org.benchleaf.compose.part.SubstanceMaker;
import org.benchleaf.model.ComparedKind;
import org.benchleaf.model.ComparedMaterial;
import org.benchleaf.model.Library;
import org.benchleaf.model.Material;
import org.benchleaf.page.Citation;
import org.benchleaf.page.Fact;
import org.benchleaf.page.LinkList;
import org.benchleaf.page.Opening;
import org.benchleaf.page.Page;
import org.benchleaf.page.Paths;
import org.benchleaf.page.Section;
import org.benchleaf.page.Table;
import org.benchleaf.text.Inline;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** Materials of one kind beside each other, property by property, each cell with where it was read. */
final class ComparedPage {

    private ComparedPage() {
    }

    /** The paths of {@link #all}. */
    static Stream<String> paths(Library library) {
        return kinds(library).stream().map(kind -> Paths.compared(kind.word()));
    }

    /** A page for each kind of which more than one material is compared. */
    static List<Page> all(SiteDesk desk, Map<String, List<CaseCard>> uses) {
        return kinds(desk.library()).stream().map(kind -> page(desk, kind, uses)).toList();
    }

    /** A link to the page of each kind. */
    static List<LinkList.Entry> links(Sheet sheet, SiteDesk desk) {
        return kinds(desk.library()).stream().map(kind -> link(sheet, kind)).toList();
    }

    /** The links to the pages on which a material of the studio stands beside others: one for each kind that it is of. */
    static List<LinkList.Entry> links(Sheet sheet, SiteDesk desk, Material material) {
        return kinds(desk.library()).stream().filter(kind -> rows(desk.library(), kind).stream().anyMatch(row -> row.isOf(material)))
                .map(kind -> link(sheet, kind)).toList();
    }

    /** What sources say of a material of the studio, by every property of the kinds that it is of; "not known" where none does. */
    static List<Fact> facts(Sheet sheet, SiteDesk desk, Material material) {
        return desk.library().reference().compared().stream().filter(row -> row.isOf(material)).flatMap(row -> row.kind().groups().stream()
                .flatMap(List::stream).map(property -> new Fact(sheet.words().say("compared-property." + property),
                        cell(sheet, row.of(property))))).toList();
    }

    private static LinkList.Entry link(Sheet sheet, ComparedKind kind) {
        return new LinkList.Entry(sheet.link(title(sheet.words(), kind), Paths.compared(kind.word())), "");
    }

    private static String title(Words words, ComparedKind kind) {
        return words.say("compared.title", "kind", words.term("compared-kind", kind.word()));
    }

    private static List<ComparedKind> kinds(Library library) {
        return Stream.of(ComparedKind.values()).filter(kind -> rows(library, kind).size() > 1).toList();
    }

    private static List<ComparedMaterial> rows(Library library, ComparedKind kind) {
        return library.reference().compared().stream().filter(row -> row.kind() == kind).toList();
    }

    private static Page page(SiteDesk desk, ComparedKind kind, Map<String, List<CaseCard>> uses) {
        List<ComparedMaterial> rows = rows(desk.library(), kind);
        Sheet sheet = desk.sheet(Paths.compared(kind.word()), "compared");
        Words words = sheet.words();
        String title = title(words, kind);
        sheet.add(new Opening(Optional.of(words.say("way.materials")), title, Optional.of(words.say("compared.lead")), List.of(),
                Optional.of(new Opening.Notice(words.say("notice.word"), words.say("compared.notice")))));
        if (kind == ComparedKind.SOLVENT) {
            sheet.add(new Section("compared-fire-section", words.say("compared.fire"), Optional.of(words.say("compared.fire-lead")),
                    List.of(fire(sheet, title, rows))));
        }
        kind.groups().forEach(group -> table(sheet, rows, title, group).ifPresent(table -> sheet.add(new Section(table.id() + "-section",
                words.say("compared-group." + group.get(0)), Optional.empty(), List.of(table)))));
        sheet.add(new Section("used", words.say("compared.used"), Optional.of(words.say("compared.used-lead")),
                List.of(used(sheet, desk, title, rows, uses))));
        return sheet.page(title, words.say("compared.lead"));
    }

    /** What the table of substances has of each: how easily it burns and evaporates. */
    private static Table fire(Sheet sheet, String title, List<ComparedMaterial> rows) {
        Words words = sheet.words();
        SubstanceMaker maker = new SubstanceMaker(sheet);
        return new Table("compared-fire", words.say("compared.caption", "title", title, "what", words.say("compared.fire")),
                words.columns("compared.material", "substance.flash", "substance.boiling", "substance.vapour-pressure"),
                rows.stream().flatMap(row -> row.substances().stream().sorted().map(sheet.library().reference().substances()::get)
                        .filter(Objects::nonNull).map(substance -> Stream.concat(Stream.of(RichText.of(row.name())),
                                maker.volatility(substance).stream().map(cell -> cell.orElseGet(() ->
                                        RichText.of(words.say("compared.not-known"))))).toList())).toList(), Optional.empty());
    }

    /** The properties of a group of which a source tells at least of one material. */
    private static Optional<Table> table(Sheet sheet, List<ComparedMaterial> rows, String title, List<String> group) {
        Words words = sheet.words();
        List<String> told = group.stream().filter(property -> rows.stream().anyMatch(row -> row.of(property).isPresent())).toList();
        if (told.isEmpty()) {
            return Optional.empty();
        }
        List<Table.Column> columns = new ArrayList<>(List.of(new Table.Column(words.say("compared.material"), false)));
        told.forEach(property -> columns.add(new Table.Column(words.say("compared-property." + property), false)));
        return Optional.of(new Table("compared-" + group.get(0), words.say("compared.caption", "title", title,
                "what", words.say("compared-group." + group.get(0))), columns,
                rows.stream().map(row -> Stream.concat(Stream.of(RichText.of(row.name())),
                        told.stream().map(property -> cell(sheet, row.of(property)))).toList()).toList(), Optional.empty()));
    }

    private static RichText cell(Sheet sheet, Optional<ComparedMaterial.Cell> cell) {
        return cell.map(one -> RichText.of(sheet.numbers().spaced(one.says()) + " ").then(sheet.cite(one.source())
                .map(Citation::link).orElseGet(() -> new Inline.Text("(" + sheet.library().phrases().of(one.source()) + ")"))))
                .orElseGet(() -> RichText.of(sheet.words().say("compared.not-known")));
    }

    /** Which of them the studio has, with the way to what it keeps of each: hazards, strength, storage, cases. */
    private static Table used(Sheet sheet, SiteDesk desk, String title, List<ComparedMaterial> rows, Map<String, List<CaseCard>> uses) {
        Words words = sheet.words();
        return new Table("compared-used", words.say("compared.caption", "title", title, "what", words.say("compared.used")),
                words.columns("compared.material", "compared.studio"),
                rows.stream().map(row -> List.of(RichText.of(row.name()), own(sheet, desk, row, uses))).toList(), Optional.empty());
    }

    private static RichText own(Sheet sheet, SiteDesk desk, ComparedMaterial row, Map<String, List<CaseCard>> uses) {
        List<RichText> links = desk.library().materials().values().stream().filter(row::isOf).map(material -> RichText.of(
                sheet.hyperlink(desk.library().phrases().of(material.name()), Paths.material(material.id()))).then(" ("
                + sheet.words().count("browse.cases", uses.getOrDefault(material.id(), List.of()).size()) + ")")).toList();
        return links.isEmpty() ? RichText.of(sheet.words().say("compared.not-listed")) : RichText.joined("; ", links);
    }
}
