package org.benchleaf.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.benchleaf.ChangedContent;
import org.benchleaf.message.PortableName;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/**
 * Signs that mean something in addresses (RFC 3986, section 2.2), in replacements of Java and ECMAScript, in templates or in
 * patterns, in the names of files, in titles, terms and addresses: they are kept as they are, and every link arrives.
 */
class OddNamesTest {

    private static final String CASE = "cases/tide/case.md";
    private static final String PICTURE = "raking 50% #2 $1 ${x} &amp; %41.jpg";
    private static final String TABLE = "waves #1 50% $0.csv";
    private static final String TITLE = "A 50% tide #2 for $1 & $& \\1 ${title} <#if> [q] (.*)+";
    private static final String TERM = "ripple #3 at 50% for $2";
    private static final String ADDRESS = "https://example.org/a%20b/50%25?x=$1&y=#page=2";

    @TempDir
    private static Path folder;
    private static final Map<String, Document> PAGES = new TreeMap<>();

    @BeforeAll
    static void publish() throws IOException {
        Path content = folder.resolve("content");
        ChangedContent.copy(Path.of("src/test/resources/sound/base"), content);
        Files.move(content.resolve("cases/tide/pictures/before-raking.jpg"), content.resolve("cases/tide/pictures").resolve(PICTURE));
        Files.move(content.resolve("cases/tide/waves.csv"), content.resolve("cases/tide").resolve(TABLE));
        String sound = Files.readString(content.resolve(CASE));
        Files.writeString(content.resolve(CASE), sound.replace("title: A tide table that had met the tide", "title: " + quoted(TITLE))
                .replace("file: before-raking.jpg", "file: " + quoted(PICTURE)).replace("file: waves.csv", "file: " + quoted(TABLE))
                + "\nThe " + TERM + " of [another studio](" + ADDRESS + ").\n");
        Files.writeString(content.resolve("glossary.yaml"), Files.readString(content.resolve("glossary.yaml"))
                + "ripple:\n  term: " + quoted(TERM) + "\n  plain: " + quoted(TITLE) + "\n");
        StringWriter err = new StringWriter();
        int code = new CommandLine(new PublishCommand()).setOut(new PrintWriter(new StringWriter())).setErr(new PrintWriter(err))
                .execute("--content", content.toString(), "--site", folder.resolve("site").toString(), "--on", "2026-06-01");
        assertThat(code).as(err.toString()).isZero();
        try (Stream<Path> files = Files.walk(folder.resolve("site"))) {
            for (Path file : files.filter(each -> each.toString().endsWith(".html")).toList()) {
                PAGES.put(folder.resolve("site").relativize(file).toString().replace('\\', '/'), Jsoup.parse(Files.readString(file)));
            }
        }
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\") + "\"";
    }

    /** The words are those of Java on Linux in the locale C. */
    @Test
    void a_name_that_the_locale_has_no_letters_for_is_told_with_what_to_do() {
        assertThat(Failure.told(new InvalidPathException("обложка-山.jpg", "Malformed input or input contains unmappable characters")))
                .contains("error SITE-031: 'обложка-山.jpg'", "malformed input", "LC_ALL", "bin/benchleaf").doesNotContain("SITE-019");
    }

    @Test
    void a_name_that_turns_the_direction_of_writing_is_refused() {
        assertThat(PortableName.fault("recto\u202Egpj.exe")).isPresent();
        assertThat(PortableName.fault("обложка-山.jpg")).isEmpty();
    }

    @Test
    void every_link_arrives() {
        List<String> dead = new ArrayList<>();
        PAGES.forEach((path, page) -> {
            for (Element each : page.select("[href], [src]")) {
                String link = each.attr(each.hasAttr("href") ? "href" : "src");
                URI target = URI.create("site:///" + path.replace(" ", "%20")).resolve(link);
                if ("site".equals(target.getScheme()) && !arrives(target)) {
                    dead.add(path + " -> " + link);
                }
            }
        });
        assertThat(PAGES).hasSizeGreaterThan(8);
        assertThat(dead).isEmpty();
    }

    private static boolean arrives(URI target) {
        String path = target.getPath().substring(1);
        return Files.isRegularFile(folder.resolve("site").resolve(path))
                && (target.getFragment() == null || PAGES.get(path).getElementById(target.getFragment()) != null);
    }

    @Test
    void an_address_elsewhere_stays_letter_by_letter() {
        assertThat(page().select("a[href^=https://example.org]").eachAttr("href")).containsOnly(ADDRESS).isNotEmpty();
    }

    @Test
    void titles_and_terms_are_shown_as_they_were_written() {
        assertThat(page().selectFirst("h1").text()).isEqualTo(TITLE);
        assertThat(page().select("a").eachText()).contains(TERM);
        assertThat(PAGES.get("glossary.html").text()).contains(TERM, TITLE);
        assertThat(PAGES.get("index.html").text()).contains(TITLE);
    }

    @Test
    void the_search_looks_through_the_same_words() throws IOException {
        try (Stream<Path> files = Files.walk(folder.resolve("site/assets"))) {
            List<String> index = files.filter(each -> each.toString().endsWith(".js"))
                    .map(each -> new String(bytes(each), StandardCharsets.UTF_8)).filter(each -> each.contains("ripple #3")).toList();
            // One for the English pages, one for the Spanish ones.
            assertThat(index).hasSize(2).anySatisfy(each ->
                    assertThat(each).contains("ripple #3 at 50% for $2", "A 50% tide #2 for $1 "));
        }
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException broken) {
            throw new java.io.UncheckedIOException(broken);
        }
    }

    private static Document page() {
        return PAGES.get("cases/tide/index.html");
    }
}
