package org.benchleaf.publish;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import org.benchleaf.compose.cases.Book;
import org.benchleaf.compose.part.TakenName;
import org.jsoup.nodes.Entities;

/** A book in EPUB 3.3 (W3C Recommendation, 2023) of finished pages, each a chapter at its own path. */
final class EpubBook {

    static final String XML = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
    private static final String FOLDER = "EPUB/";
    private static final String STYLE = "book.css";
    private static final String CONTENTS = "contents.xhtml";
    private static final SiteFile MARK = SiteFile.text("mimetype", "application/epub+zip");
    private static final String CONTAINER = XML + "<container version=\"1.0\" xmlns=\"urn:oasis:names:tc:opendocument:xmlns:container\">"
            + "<rootfiles><rootfile full-path=\"" + FOLDER
            + "book.opf\" media-type=\"application/oebps-package+xml\"/></rootfiles></container>\n";

    private final Book book;
    private final String style;
    private final Map<String, SiteFile> drawnOn = new LinkedHashMap<>();
    private final Map<String, SiteFile> pages = new LinkedHashMap<>();
    private final Function<SiteFile, FinishedPage> read;
    private final Map<String, BookChapter.Finished> chapters = new LinkedHashMap<>();
    /** The anchors of the chapters that are made, or that a link names. */
    private final Map<String, Set<String>> anchors = new HashMap<>();

    /**
     * A book in the making.
     *
     * @param pages finished; those of the book and any others
     * @param others what they draw on
     * @param style of its chapters
     * @param read reads a page
     */
    EpubBook(Book book, List<SiteFile> pages, List<SiteFile> others, String style, Function<SiteFile, FinishedPage> read) {
        this.book = book;
        this.style = style;
        others.forEach(file -> drawnOn.put(file.path(), file));
        this.read = read;
        Map<String, SiteFile> byPath = new HashMap<>();
        pages.forEach(page -> byPath.put(page.path(), page));
        book.parts().stream().flatMap(part -> part.pages().stream()).forEach(path -> this.pages.put(path, byPath.get(path)));
        book.parts().forEach(this::add);
    }

    /** Part by part, since the trees of all pages of a site would fill the memory. */
    private void add(Book.Part part) {
        List<BookChapter> made = part.pages().stream().map(this::chapter).toList();
        for (int at = 0; at < made.size(); at++) {
            anchors.put(part.pages().get(at), made.get(at).ids());
        }
        for (int at = 0; at < made.size(); at++) {
            chapters.put(part.pages().get(at), made.get(at).finished(this::anchors, STYLE));
        }
    }

    private BookChapter chapter(String path) {
        return new BookChapter(path, read.apply(pages.get(path)), drawnOn::containsKey);
    }

    private Optional<Set<String>> anchors(String path) {
        if (!pages.containsKey(path)) {
            return Optional.empty();
        }
        Set<String> known = anchors.get(path);
        if (known == null) {
            known = chapter(path).ids();
            anchors.put(path, known);
        }
        return Optional.of(known);
    }

    /** The file of a case's book, called after what is inside. */
    SiteFile ofCase() {
        List<String> inside = new ArrayList<>(chapters.keySet());
        inside.addAll(pictures().stream().filter(path -> path.startsWith("cases/")).toList());
        return new SiteFile(TakenName.bundle(inside, ".epub"), bytes());
    }

    /** The file of the book of all cases. */
    SiteFile ofSite() {
        return new SiteFile(TakenName.reader(), bytes());
    }

    private Set<String> pictures() {
        Set<String> pictures = new LinkedHashSet<>();
        chapters.values().forEach(chapter -> pictures.addAll(chapter.drawnOn()));
        return pictures;
    }

    private byte[] bytes() {
        List<SiteFile> files = new ArrayList<>();
        files.add(SiteFile.text("META-INF/container.xml", CONTAINER));
        files.add(SiteFile.text(FOLDER + "book.opf", packageDocument()));
        files.add(SiteFile.text(FOLDER + CONTENTS, contents()));
        files.add(SiteFile.text(FOLDER + STYLE, style));
        pictures().forEach(path -> files.add(new SiteFile(FOLDER + path, drawnOn.get(path).bytes())));
        chapters.values().forEach(chapter -> files.add(new SiteFile(FOLDER + chapter.path(), chapter.file().bytes())));
        return Archive.of(MARK, files);
    }

    private String packageDocument() {
        StringBuilder items = new StringBuilder();
        StringBuilder spine = new StringBuilder("<itemref idref=\"contents\"/>\n");
        items.append("<item id=\"contents\" href=\"" + CONTENTS + "\" media-type=\"application/xhtml+xml\" properties=\"nav\"/>\n");
        items.append("<item id=\"style\" href=\"" + STYLE + "\" media-type=\"text/css\"/>\n");
        int number = 0;
        for (BookChapter.Finished chapter : chapters.values()) {
            String id = "chapter-" + ++number;
            String properties = chapter.properties();
            items.append("<item id=\"").append(id).append("\" href=\"").append(chapter.path())
                    .append("\" media-type=\"application/xhtml+xml\"")
                    .append(properties.isEmpty() ? "" : " properties=\"" + properties + "\"").append("/>\n");
            spine.append("<itemref idref=\"").append(id).append("\"/>\n");
        }
        for (String picture : pictures()) {
            items.append("<item id=\"picture-").append(++number).append("\" href=\"").append(picture)
                    .append("\" media-type=\"").append(drawnOn.get(picture).pictureType()).append("\"/>\n");
        }
        return XML + "<package xmlns=\"http://www.idpf.org/2007/opf\" version=\"3.0\" unique-identifier=\"book\" xml:lang=\""
                + book.language() + "\" dir=\"" + book.direction() + "\">\n" + metadata() + "<manifest>\n" + items
                + "</manifest>\n<spine page-progression-direction=\"" + book.direction() + "\">\n" + spine + "</spine>\n</package>\n";
    }

    /** What is said of its use by those who do not see is read off the chapters (EPUB Accessibility 1.1, section 2). */
    private String metadata() {
        boolean visual = chapters.values().stream().anyMatch(BookChapter.Finished::isVisual);
        StringBuilder metadata = new StringBuilder("<metadata xmlns:dc=\"http://purl.org/dc/elements/1.1/\">\n");
        element(metadata, "dc:identifier id=\"book\"",
                "urn:uuid:" + UUID.nameUUIDFromBytes(book.identifier().getBytes(StandardCharsets.UTF_8)));
        element(metadata, "dc:title", book.title());
        element(metadata, "dc:creator", book.creator());
        element(metadata, "dc:language", book.language());
        if (!book.rights().isEmpty()) {
            element(metadata, "dc:rights", book.rights());
        }
        meta(metadata, "dcterms:modified", book.modified() + "T00:00:00Z");
        meta(metadata, "schema:accessMode", "textual");
        if (visual) {
            meta(metadata, "schema:accessMode", "visual");
        }
        // Every picture, chart and formula has its words, so that nobody has to see one.
        meta(metadata, "schema:accessModeSufficient", "textual");
        for (String feature : List.of("structuralNavigation", "tableOfContents", "readingOrder")) {
            meta(metadata, "schema:accessibilityFeature", feature);
        }
        if (visual) {
            meta(metadata, "schema:accessibilityFeature", "alternativeText");
        }
        if (chapters.values().stream().anyMatch(BookChapter.Finished::hasFormulas)) {
            meta(metadata, "schema:accessibilityFeature", "MathML");
        }
        // Nothing in it moves, flashes or sounds.
        meta(metadata, "schema:accessibilityHazard", "none");
        meta(metadata, "schema:accessibilitySummary", book.words().get("summary"));
        return metadata.append("</metadata>\n").toString();
    }

    private static void meta(StringBuilder metadata, String property, String value) {
        element(metadata, "meta property=\"" + property + "\"", value);
    }

    private static void element(StringBuilder metadata, String tag, String value) {
        metadata.append('<').append(tag).append('>').append(Entities.escape(value)).append("</")
                .append(tag.replaceFirst(" .*+", "")).append(">\n");
    }

    /** The contents open the book and are what a reading program lists. */
    private String contents() {
        String language = book.language();
        StringBuilder list = new StringBuilder("<ol>\n");
        boolean several = book.parts().size() > 1;
        for (Book.Part part : book.parts()) {
            if (several) {
                list.append("<li><span>").append(Entities.escape(part.title())).append("</span>\n<ol>\n");
            }
            part.pages().forEach(page -> entry(chapters.get(page), list));
            list.append(several ? "</ol></li>\n" : "");
        }
        return XML + "<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" xmlns:epub=\"http://www.idpf.org/2007/ops\" lang=\""
                + language + "\" xml:lang=\"" + language + "\" dir=\"" + book.direction() + "\">\n<head><meta charset=\"utf-8\"/><title>"
                + Entities.escape(book.title()) + "</title><link rel=\"stylesheet\" type=\"text/css\" href=\"" + STYLE + "\"/></head>\n"
                + "<body>\n<h1>" + Entities.escape(book.title()) + "</h1>\n<p>" + Entities.escape(book.creator()) + "</p>\n"
                + "<nav epub:type=\"toc\" role=\"doc-toc\" aria-labelledby=\"contents\">\n<h2 id=\"contents\">"
                + Entities.escape(book.words().get("contents")) + "</h2>\n" + list.append("</ol>\n") + "</nav>\n</body>\n</html>\n";
    }

    private static void entry(BookChapter.Finished chapter, StringBuilder list) {
        list.append("<li><a href=\"").append(chapter.path()).append("\">").append(Entities.escape(chapter.title())).append("</a>");
        List<BookChapter.Section> sections = chapter.sections();
        if (!sections.isEmpty()) {
            list.append("\n<ol>\n");
            sections.forEach(section -> list.append("<li><a href=\"").append(chapter.path()).append('#').append(section.anchor())
                    .append("\">").append(Entities.escape(section.heading())).append("</a></li>\n"));
            list.append("</ol>");
        }
        list.append("</li>\n");
    }
}
