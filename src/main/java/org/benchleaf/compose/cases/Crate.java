package org.benchleaf.compose.cases;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.CaseReference;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.compose.part.Licences;
import org.benchleaf.json.JsonText;
import org.benchleaf.model.Picture;
import org.benchleaf.page.Paths;
import org.benchleaf.words.Words;

/**
 * Describes a case that was taken away as a folder, for programs: what it is, who made it, under which licence, and what each
 * file in it is (RO-Crate 1.2, attached).
 */
public final class Crate {

    /** Name of the description, at the top of the folder. */
    public static final String FILE = "ro-crate-metadata.json";

    private static final String VERSION = "https://w3id.org/ro/crate/1.2";
    private static final String ROOT = "./";
    private static final String PICTURES = "pictures/";
    private static final Map<String, String> FORMATS = Map.ofEntries(Map.entry("html", "text/html"), Map.entry("csv", "text/csv"),
            Map.entry("json", "application/json"), Map.entry("jpg", "image/jpeg"), Map.entry("svg", "image/svg+xml"),
            Map.entry("bib", "application/x-bibtex"), Map.entry("ris", "application/x-research-info-systems"),
            Map.entry("ics", "text/calendar"));

    private final CaseReference reference;
    private final String description;
    private final LocalDate published;
    private final Optional<String> web;
    private final Map<String, String> names;
    private final Map<String, Picture> pictures;

    private Crate(CaseDesk desk, LocalDate permitted) {
        this.reference = CaseReference.of(desk);
        this.description = desk.treatment().summary();
        this.published = reference.day().orElse(permitted);
        this.web = desk.library().studio().web();
        this.names = names(desk);
        this.pictures = desk.pictures().stream().collect(Collectors.toMap(Picture::id, picture -> picture));
    }

    /**
     * The description of a case; empty if its public text is not permitted, since a description tells of it.
     *
     * @param permitted the day that counts where the case bears none
     */
    public static Optional<Crate> of(CaseDesk desk, LocalDate permitted) {
        return desk.clearance().allows(Clearance.Output.CASE_STUDY) ? Optional.of(new Crate(desk, permitted)) : Optional.empty();
    }

    private static Map<String, String> names(CaseDesk desk) {
        Words words = Words.in(desk.treatment().language());
        Map<String, String> names = new LinkedHashMap<>();
        desk.pages().forEach(page -> names.put(page.file(), words.say("case-page." + page.kind())));
        if (desk.clearance().allows(Clearance.Output.DATA)) {
            new ResultData(desk.sheet(desk.pages().get(0)), desk).tables().forEach(table -> names.put(table.file(), table.caption()));
        }
        return names;
    }

    /**
     * The description as JSON-LD.
     *
     * @param sizes of the files in bytes, by their paths in the folder; what no one would look for alone, such as a style, is left out
     */
    public String describe(SortedMap<String, Long> sizes) {
        List<String> parts = sizes.keySet().stream().filter(path -> FORMATS.containsKey(ending(path))).toList();
        List<Object> graph = new ArrayList<>(List.of(descriptor(), root(parts)));
        parts.forEach(path -> graph.add(file(path, sizes.get(path))));
        licences(parts).forEach(licence -> graph.add(licence(licence)));
        graph.add(publisher());
        authors().forEach(graph::add);
        return JsonText.script(JsonText.object("@context", VERSION + "/context", "@graph", graph)) + "\n";
    }

    private static Object descriptor() {
        return JsonText.object("@id", FILE, "@type", "CreativeWork", "conformsTo", id(VERSION), "about", id(ROOT));
    }

    private Object root(List<String> parts) {
        List<Object> authors = reference.authors().stream().map(author -> id(authorId(author))).toList();
        return JsonText.object("@id", ROOT, "@type", "Dataset", "name", reference.title(), "description", description,
                "datePublished", published.toString(), "license", id(Licences.address(reference.licence())), "version", reference.version(),
                "inLanguage", reference.language(), "author", authors, "publisher", id(publisherId()), "identifier", reference.identifier(),
                "url", reference.address(), "hasPart", parts.stream().map(Crate::id).toList());
    }

    private Object file(String path, long size) {
        Optional<Picture> picture = pictureOf(path);
        return JsonText.object("@id", path, "@type", picture.isPresent() ? List.of("File", "ImageObject") : "File",
                "name", picture.map(Picture::caption).orElse(names.getOrDefault(path, path)),
                "description", picture.map(Picture::alt), "encodingFormat", FORMATS.get(ending(path)), "contentSize", String.valueOf(size),
                "creditText", picture.map(Picture::credit),
                "license", id(Licences.address(picture.map(Picture::licence).orElse(reference.licence()))));
    }

    /** Each size of a picture is a file; its name begins with the picture's. */
    private Optional<Picture> pictureOf(String path) {
        return path.startsWith(PICTURES) ? Optional.ofNullable(pictures.get(path.substring(PICTURES.length(),
                Math.max(PICTURES.length(), path.lastIndexOf('-'))))) : Optional.empty();
    }

    private List<String> licences(List<String> parts) {
        return Stream.concat(Stream.of(reference.licence()), parts.stream().map(this::pictureOf).flatMap(Optional::stream)
                .map(Picture::licence)).distinct().toList();
    }

    private static Object licence(String spdx) {
        return JsonText.object("@id", Licences.address(spdx), "@type", "CreativeWork", "name", spdx);
    }

    private Object publisher() {
        return JsonText.object("@id", publisherId(), "@type", "Organization", "name", reference.publisher(), "url", web);
    }

    private String publisherId() {
        return web.orElse("#studio");
    }

    private List<Object> authors() {
        return reference.authors().stream().filter(author -> !author.equals(reference.publisher())).map(author -> (Object)
                JsonText.object("@id", authorId(author), "@type", CaseReference.isPerson(author) ? "Person" : "Organization",
                        "name", author))
                .toList();
    }

    private String authorId(String author) {
        return author.equals(reference.publisher()) ? publisherId() : "#" + Paths.slug(author);
    }

    private static Object id(String value) {
        return JsonText.object("@id", value);
    }

    private static String ending(String path) {
        return path.substring(path.lastIndexOf('.') + 1);
    }
}
