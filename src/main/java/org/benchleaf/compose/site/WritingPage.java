package org.benchleaf.compose.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.part.SiteDesk;
import org.benchleaf.compose.part.SitePageMaker;
import org.benchleaf.compose.part.SitePageName;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.KeyList;
import org.benchleaf.page.Link;
import org.benchleaf.page.LinkGroups;
import org.benchleaf.page.LinkList;
import org.benchleaf.page.Opening;
import org.benchleaf.page.Page;
import org.benchleaf.page.Paths;
import org.benchleaf.page.Prose;
import org.benchleaf.page.Section;
import org.benchleaf.words.Words;

/** How to write the files, made from the schemas that check them, so that it cannot fall behind. */
public final class WritingPage implements SitePageMaker {

    private static final SitePageName NAME = new SitePageName("writing", Paths.WRITING, false);

    @Override
    public SitePageName name() {
        return NAME;
    }

    @Override
    public List<Page> make(SiteDesk desk) {
        List<FormatSchema> schemas = FormatSchema.NAMES.stream().map(FormatSchema::named).toList();
        List<Page> pages = new ArrayList<>();
        pages.add(index(desk, schemas));
        pages.addAll(new AuthorGuidePages(desk).make());
        schemas.forEach(schema -> pages.add(page(desk, schema)));
        return pages;
    }

    /** The schemas themselves, for editors that complete keys. */
    public static List<DataFile> files() {
        return FormatSchema.NAMES.stream().map(FormatSchema::named).map(FormatSchema::file).toList();
    }

    private Page index(SiteDesk desk, List<FormatSchema> schemas) {
        Sheet sheet = desk.sheet(NAME);
        Words words = sheet.words();
        String title = words.say("way.writing");
        sheet.add(Opening.plain(title, words.say("writing.lead")));
        sheet.add(new Section("how", words.say("writing.how"), Optional.empty(), List.of(new Prose(
                words.group("writing-rule").values().stream().map(sheet.numbers()::spaced).map(Prose.Passage::paragraph)
                        .toList()))));
        sheet.add(new Section("begin", words.say("writing.begin"), Optional.empty(), List.of(
                new LinkList(AuthorGuidePages.entries(sheet)))));
        sheet.add(new Section("files", words.say("writing.files"), Optional.empty(), List.of(new LinkList(
                schemas.stream().map(schema ->
                        new LinkList.Entry(sheet.link(words.say("writing.link", "file", schema.title()), pathOf(schema)),
                        schema.description())).toList()))));
        return sheet.page(title, words.say("writing.lead"));
    }

    private static Page page(SiteDesk desk, FormatSchema schema) {
        Sheet sheet = desk.sheet(pathOf(schema), "writing-file");
        Words words = sheet.words();
        sheet.add(new Opening(Optional.of(words.say(schema.isOfCase() ? "way.writing" : "writing.of-studio")), schema.title(),
                Optional.of(schema.description()), List.of(), Optional.empty()));
        if (schema.groups().size() > 1) {
            sheet.add(new LinkGroups(List.of(new LinkGroups.Group("on-this-page", "", schema.groups().entrySet()
                    .stream().map(group -> new LinkGroups.Entry(Link.to(group.getKey(), "#" + anchor(group.getKey())),
                            words.count("writing.keys", group.getValue().size()))).toList()))));
        }
        if (!schema.plainKeys().isEmpty()) {
            sheet.add(section(words, words.say("writing.head"), schema.plainKeys()));
        }
        schema.groups().forEach((title, entries) -> sheet.add(section(words, title, entries)));
        sheet.add(new LinkList(List.of(new LinkList.Entry(sheet.link(
                words.say("writing.schema", "file", schema.title()), schema.path()), words.say("writing.schema-about")))));
        return sheet.page(words.say("writing.title", "file", schema.title()), schema.description());
    }

    private static Section section(Words words, String title, List<KeyList.Entry> entries) {
        return new Section(anchor(title), title, Optional.empty(),
                List.of(new KeyList(entries, words.group("key-list"))));
    }

    private static String anchor(String title) {
        return "key-" + Paths.slug(title);
    }

    /** The ways to the pages about each kind of file. */
    static LinkGroups.Group group(Sheet sheet) {
        return new LinkGroups.Group("writing", sheet.words().say("way.writing"), FormatSchema.NAMES.stream()
                .map(FormatSchema::named).map(schema -> new LinkGroups.Entry(
                        sheet.link(sheet.words().say("writing.link", "file",
                                sheet.library().phrases().of(schema.title())), pathOf(schema)), "")).toList());
    }

    private static String pathOf(FormatSchema schema) {
        return "writing-" + Paths.slug(schema.title()) + ".html";
    }
}
