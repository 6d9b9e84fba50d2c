package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.verapdf.core.VeraPDFException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** Sheets laid out on paper: sound by their standards, of the words of their pages, at true size, the same every time. */
class PrintedSheetsTest {

    private static final String CASE = "cases/tide/";
    private static final String STEPS = CASE + "steps";
    private static final String PREPARATION = CASE + "preparation";
    private static final String STATIONS = CASE + "class-spring-stations";
    private static final String LABELS = CASE + "class-spring-labels";
    /** Ten dots a millimetre. */
    private static final float DOTS_PER_INCH = 254;
    private static final int DARK = 128;
    /** What only a browser can use, and formulas, which the line below them says in words. */
    private static final String OF_SCREENS =
            "script, style, nav, [hidden], button, select, .skip, .masthead__name, .bench-desk, .formula, .not-printed";
    private static final String WORDS = "h1, h2, h3, h4, p, dt, dd, th, td, caption, legend, summary, figcaption";

    @TempDir
    private static Path folder;
    private static Path site;

    @BeforeAll
    static void publish() throws IOException {
        VeraGreenfieldFoundryProvider.initialise();
        ChangedContent.copy(Path.of("src/test/resources/sound/base"), folder.resolve("content"));
        Path studio = folder.resolve("content/studio.yaml");
        Files.writeString(studio, Files.readString(studio).replace("demo: yes", "demo: yes\nfonts: of the device\ntake along: [pdf]"));
        Path course = folder.resolve("content/classes/spring.yaml");
        Files.writeString(course, Files.readString(course) + "publish: yes\npeople: {supervisors: 2}\nshared:\n"
                + Stream.of("board", "hood", "pH meter", "sink", "tray", "weight").map(thing ->
                        "  - {thing: " + thing + ", count: 6}\n").collect(Collectors.joining()));
        site = folder.resolve("site");
        Published.from(folder.resolve("content"), site, "2026-06-01");
    }

    @Test
    void a_site_in_the_letters_of_the_device_brings_none() throws IOException {
        assertThat(Jsoup.parse(site.resolve("index.html")).select("link[rel=stylesheet]").eachAttr("href"))
                .containsExactly("assets/site.css");
        try (Stream<Path> assets = Files.list(site.resolve("assets"))) {
            assertThat(assets).noneMatch(file -> file.toString().matches(".*(?:woff2|fonts.*)"));
        }
    }

    private static Path sheet(Path site, String page) {
        return Stream.of("-sheet.pdf", "-sheet-with-pictures.pdf").map(ending -> site.resolve(page + ending))
                .filter(Files::exists).findFirst().orElseThrow();
    }

    private static boolean isSound(byte[] file, PDFAFlavour standard) {
        try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(file), standard)) {
            return Foundries.defaultInstance().createValidator(standard, false).validate(parser).isCompliant();
        } catch (VeraPDFException | IOException broken) {
            throw new IllegalStateException(broken);
        }
    }

    /** Held against veraPDF, the checker of the PDF Association, for ISO 14289-1 and ISO 19005-2. */
    @ParameterizedTest
    @ValueSource(strings = {STEPS, PREPARATION, STATIONS, LABELS})
    void a_sheet_is_sound_for_the_checker_of_its_standards(String page) throws IOException {
        byte[] file = Files.readAllBytes(sheet(site, page));
        assertThat(isSound(file, PDFAFlavour.PDFUA_1)).as("PDF/UA-1").isTrue();
        assertThat(isSound(file, PDFAFlavour.PDFA_2_A)).as("PDF/A-2a").isTrue();
    }

    @Test
    void the_checker_tells_of_a_file_that_is_not_sound() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (PDDocument bare = new PDDocument()) {
            bare.addPage(new PDPage());
            bare.save(bytes);
        }
        assertThat(isSound(bytes.toByteArray(), PDFAFlavour.PDFUA_1)).isFalse();
        assertThat(isSound(bytes.toByteArray(), PDFAFlavour.PDFA_2_A)).isFalse();
    }

    private static String bare(String text) {
        return text.replaceAll("[\\s\u00a0\u202f\u2009_\u00ad\u2060\u200b\u2066-\u2069]+", "");
    }

    private static String read(Path file) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            StringBuilder text = new StringBuilder();
            int pages = pdf.getNumberOfPages();
            for (int page = 1; page <= pages; page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                text.append(stripper.getText(pdf).replaceFirst("(?m)^" + page + " / " + pages + "\\s*$", ""));
            }
            return bare(text.toString());
        }
    }

    private static List<String> said(Path page) throws IOException {
        Document read = Jsoup.parse(page);
        read.select(OF_SCREENS).remove();
        read.select("svg").remove();
        List<String> said = new ArrayList<>();
        for (Element part : read.select(WORDS)) {
            if (part.select(WORDS).size() == 1 && part.parents().stream().noneMatch(above -> above.is(WORDS))) {
                said.add(bare(part.text()));
            }
        }
        return said.stream().filter(words -> !words.isEmpty()).toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {STEPS, PREPARATION, STATIONS, LABELS})
    void a_sheet_says_what_its_page_says(String page) throws IOException {
        String text = read(sheet(site, page));
        List<String> said = said(site.resolve(page + ".html"));
        assertThat(said).hasSizeGreaterThan(30).allMatch(text::contains);
        assertThat(text).doesNotContain("#").contains(said.get(0), said.get(said.size() - 1));
    }

    @Test
    void bookmarks_lead_to_the_sections_of_the_page() throws IOException {
        List<String> marks = new ArrayList<>();
        try (PDDocument pdf = Loader.loadPDF(sheet(site, STEPS).toFile())) {
            pdf.getDocumentCatalog().getDocumentOutline().children().forEach((PDOutlineItem mark) -> marks.add(mark.getTitle()));
        }
        Document page = Jsoup.parse(site.resolve(STEPS + ".html"));
        page.select("[hidden], .bench-desk, #take-along").remove();
        assertThat(marks).isEqualTo(page.select("main > section[id]:has(h2)").stream().map(one -> one.selectFirst("h2").text()).toList())
                .hasSizeGreaterThan(2);
    }

    /** Laid out at ten dots a millimetre: the ruler is 500 dots long, a label of 74 mm 740. */
    @Test
    void labels_stand_at_true_size() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(sheet(site, PREPARATION).toFile())) {
            PDFRenderer paper = new PDFRenderer(pdf);
            List<Integer> lengths = new ArrayList<>();
            for (int page = 0; page < pdf.getNumberOfPages(); page++) {
                if (text(pdf, page).contains("true size")) {
                    lengths.addAll(lines(paper.renderImageWithDPI(page, DOTS_PER_INCH, ImageType.GRAY)));
                }
            }
            assertThat(lengths).anySatisfy(length -> assertThat(length).isBetween(495, 505));
            assertThat(lengths).anySatisfy(length -> assertThat(length).isBetween(737, 743));
        }
    }

    private static String text(PDDocument pdf, int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page + 1);
        stripper.setEndPage(page + 1);
        return stripper.getText(pdf);
    }

    /** The lengths of all dark runs along the rows of dots. */
    private static List<Integer> lines(BufferedImage page) {
        List<Integer> lengths = new ArrayList<>();
        for (int y = 0; y < page.getHeight(); y++) {
            int run = 0;
            for (int x = 0; x < page.getWidth(); x++) {
                boolean dark = (page.getRGB(x, y) & 0xff) < DARK;
                if (!dark && run > 0) {
                    lengths.add(run);
                }
                run = dark ? run + 1 : 0;
            }
        }
        return lengths;
    }

    @Test
    void the_case_study_offers_each_sheet_with_its_size() throws IOException {
        for (String page : List.of(STEPS, PREPARATION, STATIONS)) {
            Path sheet = sheet(site, page);
            Element way = Jsoup.parse(site.resolve(CASE + "index.html"))
                    .selectFirst("#take-along a[href$=" + sheet.getFileName() + "]");
            assertThat(way.select(".take-along__size").text().replaceAll("\\s", " ")).isEqualTo((Files.size(sheet) + 999) / 1000 + " kB");
        }
    }

    @Test
    void the_same_case_gives_the_same_files_on_another_day_and_an_unchanged_one_is_not_laid_out_again() {
        Path other = folder.resolve("other");
        Published.from(folder.resolve("content"), other, "2026-06-02");
        for (String page : List.of(STEPS, PREPARATION)) {
            assertThat(sheet(other, page)).hasSameBinaryContentAs(sheet(site, page));
        }
        assertThat(Published.from(folder.resolve("content"), other, "2026-06-02")).contains("written   0");
    }

    @Test
    void what_holds_a_case_leaves_with_the_case() throws IOException {
        Path content = folder.resolve("withdrawn-content");
        ChangedContent.copy(folder.resolve("content"), content);
        Path other = folder.resolve("withdrawn");
        Published.from(content, other, "2026-06-01");
        assertThat(sheets(other)).isNotEmpty();
        Path file = content.resolve(CASE + "case.md");
        Files.writeString(file, Files.readString(file).replace("state: cleared", "state: withdrawn"));
        Published.from(content, other, "2026-06-01", "--only-withdrawals");
        assertThat(sheets(other)).isEmpty();
    }

    @Test
    void what_holds_a_picture_leaves_with_the_permission_for_pictures() throws IOException {
        Path content = folder.resolve("narrowed-content");
        ChangedContent.copy(folder.resolve("content"), content);
        Path other = folder.resolve("narrowed");
        Published.from(content, other, "2026-06-01");
        Path file = content.resolve(CASE + "case.md");
        String permission = "{for: [teaching, text, pictures], from: owner, on: 2026-03-09}";
        String before = Files.readString(file);
        assertThat(before).contains(permission);
        Files.writeString(file, before.replace(permission, permission.replace(", pictures", "")));
        Published.from(content, other, "2026-06-01", "--only-withdrawals");
        assertThat(other.resolve(STEPS + "-sheet-with-pictures.pdf")).doesNotExist();
        assertThat(other.resolve(PREPARATION + "-sheet.pdf")).exists();
        Published.from(content, other, "2026-06-01");
        assertThat(sheet(other, STEPS).getFileName()).hasToString("steps-sheet.pdf");
    }

    private static List<Path> sheets(Path site) {
        try (Stream<Path> files = Files.walk(site)) {
            return files.filter(file -> file.toString().endsWith(".pdf")).toList();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
