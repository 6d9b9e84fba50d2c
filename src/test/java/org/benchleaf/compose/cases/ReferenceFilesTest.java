package org.benchleaf.compose.cases;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.undercouch.citeproc.csl.CSLItemData;
import de.undercouch.citeproc.csl.CSLType;
import de.undercouch.citeproc.ris.RISParser;
import de.undercouch.citeproc.ris.RISReference;
import de.undercouch.citeproc.ris.RISType;
import java.io.StringReader;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.SiteComposition;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.CaseReference;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.model.AuthorGuide;
import org.benchleaf.model.Source;
import org.benchleaf.page.DataFile;
import org.benchleaf.publish.SiteFile;
import org.jbibtex.BibTeXEntry;
import org.jbibtex.BibTeXParser;
import org.jbibtex.Key;
import org.jbibtex.LaTeXParser;
import org.jbibtex.LaTeXPrinter;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** Reads the references with the parsers of others: jbibtex for BibTeX, citeproc-java for RIS and CSL-JSON. */
class ReferenceFilesTest {

    private static final CaseReference REFERENCE = new CaseReference("tide-table", "Salt & water: 100 % of {it} #1",
            List.of("Quill, Ada", "Tarn Quay Paper Studio"), "Tarn Quay Paper Studio", Optional.of(LocalDate.of(2026, 5, 18)),
            "3f9a2c01", Optional.of("https://tarn-quay.example/cases/tide-table/index.html"),
            Optional.of("doi:10.5555/12345678"), "en", "CC-BY-4.0", Optional.empty());
    private static final CaseReference RETOLD = new CaseReference("cuttings", "Cuttings", List.of("Tarn Quay Paper Studio"),
            "Tarn Quay Paper Studio", Optional.empty(), "3f9a2c01", Optional.empty(), Optional.empty(), "en", "CC-BY-4.0",
            Optional.of(new Source("quill-1998", "Quill & Reed", "1998", "Acid cuttings", "J. of Paper 3, 1-9", Optional.empty(), "read",
                    true)));
    private static final String BASIS = "Retold from: Quill & Reed 1998: Acid cuttings. J. of Paper 3, 1-9";
    private static final String NOTE = "Licence: CC-BY-4.0. " + BASIS;
    private static final ReferenceFiles FILES = new ReferenceFiles(REFERENCE);

    @Test
    void bibtex_gives_back_what_went_in() throws Exception {
        BibTeXEntry entry = new BibTeXParser().parseFully(new StringReader(FILES.bibtex())).getEntries().get(new Key("tide-table"));

        assertThat(text(entry, BibTeXEntry.KEY_TITLE)).isEqualTo(REFERENCE.title());
        assertThat(text(entry, BibTeXEntry.KEY_AUTHOR)).isEqualTo("Quill, Ada and Tarn Quay Paper Studio");
        assertThat(text(entry, BibTeXEntry.KEY_YEAR)).isEqualTo("2026");
        assertThat(text(entry, BibTeXEntry.KEY_NOTE)).isEqualTo("Version 3f9a2c01. Licence: CC-BY-4.0");
        assertThat(text(entry, BibTeXEntry.KEY_DOI)).isEqualTo("10.5555/12345678");
        assertThat(text(entry, BibTeXEntry.KEY_URL)).isEqualTo("https://tarn-quay.example/cases/tide-table/index.html");
    }

    private static String text(BibTeXEntry entry, Key key) throws Exception {
        return new LaTeXPrinter().print(new LaTeXParser().parse(new StringReader(entry.getField(key).toUserString())));
    }

    @Test
    void ris_gives_back_what_went_in() throws Exception {
        RISReference read = new RISParser().parse(new StringReader(FILES.ris())).getReferences().get(0);

        assertThat(read.getType()).isEqualTo(RISType.GEN);
        assertThat(read.getTitle()).isEqualTo(REFERENCE.title());
        assertThat(read.getAuthors()).containsExactly("Quill, Ada", "Tarn Quay Paper Studio");
        assertThat(read.getYear()).isEqualTo("2026");
        assertThat(read.getEdition()).isEqualTo("3f9a2c01");
        assertThat(read.getDOI()).isEqualTo("10.5555/12345678");
    }

    /** The notes of the forms: {@code note} of BibTeX and CSL, N1 of RIS (RIS: "Notes"); none has a field for a licence. */
    @Test
    void a_reference_to_a_retold_case_names_the_publication() throws Exception {
        ReferenceFiles files = new ReferenceFiles(RETOLD);
        BibTeXEntry entry = new BibTeXParser().parseFully(new StringReader(files.bibtex())).getEntries().get(new Key("cuttings"));
        assertThat(text(entry, BibTeXEntry.KEY_NOTE)).isEqualTo("Version 3f9a2c01. " + NOTE);
        assertThat(new RISParser().parse(new StringReader(files.ris())).getReferences().get(0).getNotes()).containsExactly(NOTE);
        List<Map<String, Object>> items = new ObjectMapper().readValue(files.csl(), new TypeReference<>() { });
        assertThat(CSLItemData.fromJson(items.get(0)).getNote()).isEqualTo(NOTE);
        assertThat(FILES.bibtex() + FILES.ris() + FILES.csl()).doesNotContain("Retold");
    }

    /** RIS Format Specifications: six characters a tag (two letters, two spaces, a dash, a space), lines that end with CR LF. */
    @Test
    void each_line_of_ris_has_the_published_form() {
        assertThat(FILES.ris()).endsWith("\r\n").startsWith("TY  - ");
        assertThat(List.of(FILES.ris().split("\r\n"))).allMatch(line -> line.matches("[A-Z][A-Z0-9]  - [^\r\n]*")).last()
                .isEqualTo("ER  - ");
    }

    @Test
    void csl_json_gives_back_what_went_in() throws Exception {
        List<Map<String, Object>> items = new ObjectMapper().readValue(FILES.csl(), new TypeReference<>() { });
        CSLItemData item = CSLItemData.fromJson(items.get(0));

        assertThat(item.getType()).isEqualTo(CSLType.DOCUMENT);
        assertThat(item.getTitle()).isEqualTo(REFERENCE.title());
        assertThat(item.getAuthor()[0].getFamily()).isEqualTo("Quill");
        assertThat(item.getAuthor()[1].getLiteral()).isEqualTo("Tarn Quay Paper Studio");
        assertThat(item.getIssued().getDateParts()).isDeepEqualTo(new int[][] {{2026, 5, 18}});
        assertThat(item.getVersion()).isEqualTo("3f9a2c01");
        assertThat(item.getDOI()).isEqualTo("10.5555/12345678");
    }

    /** Citation File Format 1.2.0: these keys are required, and the type is software or dataset (from memory of its guide). */
    @Test
    void the_site_has_a_citation_file_with_the_keys_that_its_format_requires() {
        String text = DemoSite.made().files().stream().filter(file -> file.path().equals("CITATION.cff")).findFirst()
                .map(SiteFile::text).orElseThrow();
        Map<String, Object> read = new Yaml(new SafeConstructor(new LoaderOptions())).load(text);

        assertThat(read).containsKeys("authors", "message", "title").containsEntry("cff-version", "1.2.0").containsEntry("type", "dataset");
        assertThat(read.get("authors")).isEqualTo(List.of(Map.of("name", "Tarn Quay Paper Studio")));
    }

    /** Citation File Format 1.2.0: of a reference, type, authors and title are required (from memory of its guide). */
    @Test
    void the_citation_file_names_the_publications_that_are_retold() {
        Source source = DemoSite.made().library().sources().values().stream().filter(one -> one.year().matches("\\d{4}")).findFirst()
                .orElseThrow();
        CaseCard card = new CaseCard("cuttings", "Cuttings", "", "en", "foundation", "poster", "", List.of(), List.of(), List.of(),
                List.of(), "", "", List.of(), List.of(), List.of(), List.of(), "", List.of(), List.of(), CaseCard.LastChange.NONE,
                List.of(), source.key());
        String text = new SiteComposition(DemoSite.made().library(), List.of(card), List.of(), AuthorGuide.EMPTY, Audience.EVERYBODY)
                .files().stream().filter(file -> file.path().equals("CITATION.cff")).findFirst().map(DataFile::text).orElseThrow();
        Map<String, Object> read = new Yaml(new SafeConstructor(new LoaderOptions())).load(text);

        assertThat(read.get("references")).asInstanceOf(InstanceOfAssertFactories.list(Map.class)).singleElement().satisfies(reference -> {
            assertThat(reference.get("type")).isEqualTo("generic");
            assertThat(reference.get("title")).isEqualTo(source.title());
            assertThat(reference.get("authors")).isEqualTo(List.of(Map.of("name", source.author())));
            assertThat(reference.get("year")).isEqualTo(Integer.valueOf(source.year()));
            assertThat((String) reference.get("notes")).endsWith("Retold in: Cuttings");
        });
    }

    @Test
    void the_version_is_of_the_numbers_and_each_case_has_its_own() {
        List<String> versions = DemoSite.made().files().stream().filter(file -> file.path().endsWith("/reference.ris"))
                .flatMap(file -> file.text().lines()).filter(line -> line.startsWith("ET  - ")).toList();

        assertThat(versions).hasSize(5).doesNotHaveDuplicates().allMatch(line -> line.matches("ET {2}- [0-9a-f]{8}"));
    }

    @Test
    void the_reference_files_stand_and_leave_with_the_case_study() {
        Clearance sheets = new Clearance(DemoSite.DAY, Audience.EVERYBODY, java.util.Set.of(Clearance.Output.STEP_SHEET),
                java.util.Set.of(), true, List.of());
        assertThat(sheets.allowsFile("reference.bib")).isFalse();
        assertThat(sheets.allowsFile("reference.csl.json")).isFalse();
    }
}
