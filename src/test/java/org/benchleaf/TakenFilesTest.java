package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Books and folders made of pages: whole, of the same words as the pages, and gone with what they hold. */
class TakenFilesTest {

    private static final String CASE = "cases/tide/";
    /** The folder of the other language of the case. */
    private static final String THERE = "es/";
    private static final String BOOK = CASE + "taken-study-steps-preparation-results-pictures.epub";
    private static final String FOLDER = CASE + "taken-study-steps-preparation-results-figures-pictures-data.zip";
    private static final String READER = "course-reader.epub";
    private static final String SITE = "whole-site.zip";
    /** What a page says: headings, what is in tables, formulas, the words of drawings. */
    private static final String SAID = "h1, h2, h3, h4, caption, th, td, dt, dd, math, figcaption, svg desc";

    @TempDir
    private static Path folder;
    private static Path site;

    @BeforeAll
    static void publish() throws IOException {
        ChangedContent.copy(Path.of("src/test/resources/sound/base"), folder.resolve("content"));
        change("studio.yaml", "demo: yes", "demo: yes\ntake along: [epub, zip]");
        site = folder.resolve("site");
        publish(site);
    }

    private static void change(String file, String from, String to) throws IOException {
        Path path = folder.resolve("content").resolve(file);
        String text = Files.readString(path);
        assertThat(text).contains(from);
        Files.writeString(path, text.replace(from, to));
    }

    private static String publish(Path site, String... more) {
        return Published.from(folder.resolve("content"), site, "2026-06-01", more);
    }

    /** Held against EPUBCheck, the W3C's checker of EPUB 3.3. */
    @ParameterizedTest
    @ValueSource(strings = {BOOK, THERE + BOOK, READER})
    void a_book_is_sound_for_the_checker_of_its_standard(String book) {
        assertThat(EpubChecker.of(site.resolve(book))).matches(EpubChecker.Verdict::isSound, "sound");
    }

    @Test
    void the_checker_tells_of_a_book_that_is_not_sound() throws IOException {
        byte[] bytes = Files.readAllBytes(site.resolve(BOOK));
        byte[] type = "application/epub+zip".getBytes(StandardCharsets.US_ASCII);
        bytes[38 + type.length - 1] = 'q';
        Path broken = Files.write(folder.resolve("broken.epub"), bytes);
        assertThat(EpubChecker.of(broken).errors()).isPositive();
    }

    @ParameterizedTest
    @ValueSource(strings = {"index", "steps", "preparation", "results"})
    void a_chapter_says_what_its_page_says_in_the_same_order(String name) throws IOException {
        Document page = Jsoup.parse(site.resolve(CASE + name + ".html"));
        page.select("#take-along, [hidden], script").remove();
        for (String book : List.of(BOOK, READER)) {
            Document chapter = xml(entries(site.resolve(book)).get("EPUB/" + CASE + name + ".xhtml"));
            assertThat(said(chapter.selectFirst("section.content"))).isEqualTo(said(page.selectFirst("main"))).hasSizeGreaterThan(20);
            assertThat(chapter.select("img").eachAttr("alt")).isEqualTo(page.select("main img").eachAttr("alt"));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"index", "steps", "preparation", "results"})
    void a_chapter_in_the_other_language_says_what_its_page_says_there(String name) throws IOException {
        Document page = Jsoup.parse(site.resolve(THERE + CASE + name + ".html"));
        page.select("#take-along, [hidden], script").remove();
        Map<String, byte[]> entries = entries(site.resolve(THERE + BOOK));
        Document chapter = xml(entries.get("EPUB/" + THERE + CASE + name + ".xhtml"));
        assertThat(said(chapter.selectFirst("section.content"))).isEqualTo(said(page.selectFirst("main"))).hasSizeGreaterThan(20);
        assertThat(chapter.selectFirst("html").attr("lang")).isEqualTo("es");
        assertThat(xml(entries.get("EPUB/book.opf")).select("metadata > *").eachText()).contains("es")
                .doesNotContain(xml(entries(site.resolve(BOOK)).get("EPUB/book.opf")).selectFirst("[id=book]").text());
        assertThat(entries.keySet()).noneMatch(path -> path.startsWith("EPUB/" + CASE) && path.endsWith(".xhtml"));
    }

    private static List<String> said(Element part) {
        return part.select(SAID).stream().map(element -> element.normalName() + ": " + (element.normalName().equals("td")
                ? element.ownText() : element.text()).replaceAll("[_\u2610\\s]+", " ").strip()).toList();
    }

    @Test
    void the_course_reader_has_the_cases_the_glossary_and_the_sources_and_leads_to_them() throws IOException {
        Map<String, byte[]> entries = entries(site.resolve(READER));
        assertThat(entries).containsKeys("EPUB/glossary.xhtml", "EPUB/sources.xhtml");
        assertThat(xml(entries.get("EPUB/" + CASE + "steps.xhtml")).select("a").eachAttr("href"))
                .anyMatch(way -> way.startsWith("../../glossary.xhtml#"));
        assertThat(xml(entries.get("EPUB/contents.xhtml")).select("nav > ol > li > span").eachText()).hasSize(2);
    }

    /** The features that EPUB Accessibility 1.1 asks to be stated, each held against what the chapters hold. */
    @Test
    void what_a_book_says_of_its_accessibility_is_what_it_holds() throws IOException {
        Map<String, byte[]> entries = entries(site.resolve(BOOK));
        List<Document> chapters = entries.keySet().stream().filter(path -> path.startsWith("EPUB/cases/") && path.endsWith(".xhtml"))
                .map(path -> xml(entries.get(path))).toList();
        List<String> features = xml(entries.get("EPUB/book.opf")).select("meta[property=schema:accessibilityFeature]").eachText();
        assertThat(features.contains("MathML")).isEqualTo(chapters.stream().anyMatch(one -> !one.select("math").isEmpty()));
        assertThat(chapters).allSatisfy(one -> {
            assertThat(one.select("img:not([alt])")).isEmpty();
            assertThat(one.select("svg:not([aria-label]):not([aria-labelledby]):not([aria-hidden=true])")
                    .not(".comparison__room")).isEmpty();
            assertThat(one.select("script, video, audio, marquee, [style*=animation]")).isEmpty();
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {FOLDER, THERE + FOLDER, SITE})
    void a_folder_opens_by_its_index_and_every_way_in_it_leads_to_a_file_in_it(String archive) throws IOException {
        Map<String, byte[]> entries = entries(site.resolve(archive));
        String top = entries.keySet().iterator().next().replaceFirst("/.*", "/");
        assertThat(entries).containsKey(top + "index.html");
        assertThat(entries.keySet()).allMatch(path -> path.startsWith(top));
        int ways = 0;
        for (String path : entries.keySet().stream().filter(path -> path.endsWith(".html")).toList()) {
            for (String address : addresses(Jsoup.parse(new String(entries.get(path), StandardCharsets.UTF_8)))) {
                if (!address.matches("#.*|(https?|mailto|tel|data):.*")) {
                    assertThat(entries).as(path + " names " + address).containsKey(URI.create(path).resolve(address).getPath());
                    ways++;
                }
            }
        }
        assertThat(ways).isGreaterThan(50);
    }

    /** RO-Crate 1.2, "Attached RO-Crate Package": the description stands at the top, and local paths lead to files from there. */
    @Test
    void a_folder_says_for_programs_which_files_are_in_it() throws IOException {
        Map<String, byte[]> entries = entries(site.resolve(FOLDER));
        JsonNode graph = new ObjectMapper().readTree(entries.get("tide/ro-crate-metadata.json")).get("@graph");
        List<String> parts = new ArrayList<>();
        graph.get(1).get("hasPart").forEach(part -> parts.add(part.get("@id").asText()));
        assertThat(parts).contains("index.html", "figures.json").anyMatch(part -> part.endsWith(".jpg"))
                .allSatisfy(part -> assertThat(entries).containsKey("tide/" + part));
    }

    private static List<String> addresses(Document page) {
        List<String> found = new ArrayList<>();
        page.select("[href]").eachAttr("href").stream().filter(way -> !way.isEmpty()).forEach(found::add);
        found.addAll(page.select("[src]").eachAttr("src"));
        page.select("[srcset]").eachAttr("srcset").forEach(sizes -> Stream.of(sizes.split(",")).map(size ->
                size.strip().split(" ")[0]).forEach(found::add));
        return found;
    }

    /** The licence of the fonts asks to stand wherever they do (SIL Open Font License 1.1, section 2). */
    @Test
    void fonts_lie_in_the_site_with_their_licence_and_are_named_in_nothing_taken_away_without_them() throws IOException {
        assertThat(Jsoup.parse(site.resolve("index.html")).select("link[rel=stylesheet]").eachAttr("href"))
                .containsExactly("assets/site.css", "assets/fonts.css");
        List<String> named = Pattern.compile("url\\(([^)]*)\\)").matcher(Files.readString(site.resolve("assets/fonts.css"))).results()
                .map(found -> "assets/" + found.group(1)).toList();
        assertThat(named).hasSize(5).allSatisfy(font -> assertThat(site.resolve(font)).isNotEmptyFile());
        assertThat(site.resolve("assets/fonts-licence.txt")).content().contains("SIL OPEN FONT LICENSE Version 1.1");
        Map<String, byte[]> whole = entries(site.resolve(SITE));
        assertThat(named).allMatch(font -> whole.keySet().stream().anyMatch(path -> path.endsWith(font)));
        assertThat(entries(site.resolve(FOLDER))).allSatisfy((path, bytes) ->
                assertThat(new String(bytes, StandardCharsets.ISO_8859_1)).doesNotContain("fonts.css"));
    }

    @Test
    void the_pages_offer_them_with_their_sizes() throws IOException {
        assertThat(Jsoup.parse(site.resolve("index.html")).select("#take-along a").eachAttr("href")).containsExactly(READER, SITE);
        Document study = Jsoup.parse(site.resolve(CASE + "index.html"));
        assertThat(study.select("#take-along a").eachAttr("href")).containsExactly("../../" + BOOK, "../../" + FOLDER);
        long kilo = (Files.size(site.resolve(BOOK)) + 999) / 1000;
        assertThat(study.select("#take-along .take-along__size").get(0).text().replaceAll("\\s", " ")).isEqualTo(kilo + " kB");
    }

    @Test
    void a_folder_in_another_language_opens_in_it_with_the_pictures_and_data_that_all_languages_share() throws IOException {
        Map<String, byte[]> own = entries(site.resolve(FOLDER));
        Map<String, byte[]> there = entries(site.resolve(THERE + FOLDER));
        Document index = Jsoup.parse(new String(there.get("tide/index.html"), StandardCharsets.UTF_8));
        assertThat(index.selectFirst("html").attr("lang")).isEqualTo("es");
        assertThat(there.keySet()).filteredOn(path -> path.matches(".*\\.(jpg|csv|json)")).contains("tide/figures.json")
                .anyMatch(path -> path.endsWith(".jpg"))
                .allSatisfy(path -> assertThat(there.get(path)).isEqualTo(own.get(path)));
        assertThat(index.select("img")).isNotEmpty();
        // What says for programs which files there are tells it in the language of the case.
        assertThat(there).doesNotContainKey("tide/ro-crate-metadata.json");
    }

    @Test
    void the_pages_in_the_other_language_offer_the_book_and_the_folder_in_theirs() throws IOException {
        Document study = Jsoup.parse(site.resolve(THERE + CASE + "index.html"));
        assertThat(study.select("#take-along a").eachAttr("href"))
                .containsExactly("../../../" + THERE + BOOK, "../../../" + THERE + FOLDER);
    }

    @Test
    void the_same_content_gives_the_same_files_and_an_unchanged_site_is_not_packed_again() throws IOException {
        Path other = folder.resolve("other");
        publish(other);
        for (String file : List.of(BOOK, THERE + BOOK, READER, FOLDER, THERE + FOLDER, SITE)) {
            assertThat(other.resolve(file)).hasSameBinaryContentAs(site.resolve(file));
        }
        assertThat(publish(other)).contains("written   0");
    }

    @Test
    void what_holds_a_picture_leaves_with_the_permission_for_pictures() throws IOException {
        Path other = folder.resolve("narrowed");
        publish(other);
        String permission = "{for: [teaching, text, pictures], from: owner, on: 2026-03-09}";
        change(CASE + "case.md", permission, permission.replace(", pictures", ""));
        try {
            publish(other, "--only-withdrawals");
            assertThat(taken(other)).isEmpty();
            assertThat(Files.readString(other.resolve("index.html"))).doesNotContain(READER, SITE);
            publish(other);
            assertThat(taken(other)).containsExactly(CASE + "taken-study-steps-preparation-results-figures-data.zip",
                    CASE + "taken-study-steps-preparation-results.epub", READER,
                    THERE + CASE + "taken-study-steps-preparation-results-figures-data.zip",
                    THERE + CASE + "taken-study-steps-preparation-results.epub", SITE);
            for (String file : taken(other)) {
                assertThat(entries(other.resolve(file)).keySet()).noneMatch(path -> path.endsWith(".jpg"));
            }
        } finally {
            change(CASE + "case.md", permission.replace(", pictures", ""), permission);
        }
    }

    @Test
    void what_holds_a_case_leaves_with_the_case() throws IOException {
        Path other = folder.resolve("withdrawn");
        publish(other);
        change(CASE + "case.md", "state: cleared", "state: withdrawn");
        try {
            publish(other, "--only-withdrawals");
            assertThat(taken(other)).isEmpty();
            publish(other);
            assertThat(entries(other.resolve(SITE)).keySet()).noneMatch(path -> path.contains("cases/"));
        } finally {
            change(CASE + "case.md", "state: withdrawn", "state: cleared");
        }
    }

    private static List<String> taken(Path site) throws IOException {
        try (Stream<Path> files = Files.walk(site)) {
            return files.map(file -> site.relativize(file).toString().replace('\\', '/'))
                    .filter(path -> path.matches(".*\\.(epub|zip)")).sorted().toList();
        }
    }

    private static Map<String, byte[]> entries(Path archive) throws IOException {
        Map<String, byte[]> entries = new TreeMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(Files.readAllBytes(archive)))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                entries.put(entry.getName(), zip.readAllBytes());
            }
        }
        return entries;
    }

    private static Document xml(byte[] text) {
        return Jsoup.parse(new String(text, StandardCharsets.UTF_8), "", Parser.xmlParser());
    }
}
