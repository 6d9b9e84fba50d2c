package org.benchleaf.compose.cases;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.benchleaf.compose.part.CaseReference;
import org.benchleaf.json.JsonText;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.Paths;

/**
 * A reference to a case in the forms that reference managers read: BibTeX, RIS (tags of two letters, two spaces, a hyphen and a
 * space, lines that end with CR LF) and CSL-JSON (schema csl-data of the Citation Style Language, 1.0.2).
 */
final class ReferenceFiles {

    private static final String LICENCE = "Licence: ";
    private static final String LINE = "\r\n";
    private static final Map<Character, String> IN_BIBTEX = Map.of('\\', "\\textbackslash{}", '{', "\\{", '}', "\\}", '%', "\\%",
            '&', "\\&", '$', "\\$", '#', "\\#", '_', "\\_", '~', "\\textasciitilde{}", '^', "\\textasciicircum{}");

    private final CaseReference reference;

    ReferenceFiles(CaseReference reference) {
        this.reference = reference;
    }

    /** The three files beside the case study. */
    List<DataFile> all() {
        return List.of(new DataFile(path("bib"), bibtex()), new DataFile(path("ris"), ris()), new DataFile(path("csl.json"), csl()));
    }

    String path(String ending) {
        return Paths.inCase(reference.id(), Paths.REFERENCE + ending);
    }

    String bibtex() {
        List<String> fields = new ArrayList<>();
        field(fields, "author", reference.authors().stream().map(author -> CaseReference.isPerson(author) ? escaped(author)
                : "{" + escaped(author) + "}").collect(Collectors.joining(" and ")));
        field(fields, "title", "{" + escaped(reference.title()) + "}");
        field(fields, "howpublished", "{" + escaped(reference.publisher()) + "}");
        reference.day().ifPresent(day -> field(fields, "year", String.valueOf(day.getYear())));
        field(fields, "note", "Version " + reference.version() + ". " + LICENCE + escaped(reference.licence())
                + reference.basis().map(basis -> ". Retold from: " + escaped(basis)).orElse(""));
        reference.doi().ifPresent(doi -> field(fields, "doi", doi));
        reference.address().ifPresent(address -> field(fields, "url", address));
        return "@misc{" + reference.id() + ",\n" + String.join(",\n", fields) + "\n}\n";
    }

    private static void field(List<String> fields, String name, String value) {
        fields.add("  " + name + " = {" + value + "}");
    }

    private static String escaped(String text) {
        return text.chars().mapToObj(c -> IN_BIBTEX.getOrDefault((char) c, String.valueOf((char) c))).collect(Collectors.joining());
    }

    String ris() {
        StringBuilder lines = new StringBuilder("TY  - GEN").append(LINE);
        reference.authors().forEach(author -> tag(lines, "AU", author.replace("*", "")));
        tag(lines, "TI", reference.title());
        tag(lines, "PB", reference.publisher());
        reference.day().map(LocalDate::getYear).ifPresent(year -> tag(lines, "PY", String.valueOf(year)));
        reference.day().ifPresent(day -> tag(lines, "DA", day.toString().replace('-', '/')));
        tag(lines, "ET", reference.version());
        tag(lines, "LA", reference.language());
        reference.doi().ifPresent(doi -> tag(lines, "DO", doi));
        reference.address().ifPresent(address -> tag(lines, "UR", address));
        tag(lines, "N1", note());
        return lines.append("ER  - ").append(LINE).toString();
    }

    private String note() {
        return LICENCE + reference.licence() + reference.basis().map(basis -> ". Retold from: " + basis).orElse("");
    }

    private static void tag(StringBuilder lines, String tag, String value) {
        lines.append(tag).append("  - ").append(value).append(LINE);
    }

    String csl() {
        return JsonText.script(List.of(JsonText.object("id", reference.id(), "type", "document", "title", reference.title(),
                "author", reference.authors().stream().map(ReferenceFiles::name).toList(), "publisher", reference.publisher(),
                "issued", reference.day().map(day -> JsonText.object("date-parts",
                        List.of(List.of(day.getYear(), day.getMonthValue(), day.getDayOfMonth())))),
                "version", reference.version(), "language", reference.language(), "DOI", reference.doi(),
                "URL", reference.address(), "note", note()))) + "\n";
    }

    private static Map<String, Object> name(String author) {
        int comma = author.indexOf(", ");
        return comma < 0 ? JsonText.object("literal", author)
                : JsonText.object("family", author.substring(0, comma), "given", author.substring(comma + 2));
    }

    /** Where the case is found for good: the persistent identifier, else its address; empty if it has neither. */
    Optional<String> place() {
        return reference.doi().map(doi -> "https://doi.org/" + doi).or(reference::identifier).or(reference::address);
    }
}
