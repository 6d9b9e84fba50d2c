package org.benchleaf.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

/** A page that is whole in one file: what it draws on stands in it, and nothing in it leads to a file that is not there. */
class WholePagesTest {

    private static final String STYLE = "p { color: red; }\n";
    private static final String SCRIPT = "document.title = 'x';\n";
    private static final SiteFile PAGE = SiteFile.text("cases/tide/steps.html", """
            <!DOCTYPE html><html lang="en"><head>
            <meta http-equiv="Content-Security-Policy" content="script-src 'self'">
            <link rel="icon" href="../../assets/icon.svg"><link rel="stylesheet" href="../../assets/site.css">
            <script defer src="../../assets/bench.js"></script><script type="application/ld+json">{"a":1}</script></head>
            <body><nav class="ways"><a href="../../index.html">Cases</a></nav><p id="here">Words</p>
            <p><a href="#here">Up</a> <a href="../../glossary.html#sizing">sizing</a> <a href="https://example.org/x">Source</a></p>
            <img src="pictures/a-1600.jpg" alt="A sheet" \
            srcset="pictures/a-480.jpg 480w, pictures/a-960.jpg 960w, pictures/a-1600.jpg 1600w">
            <section id="take-along"><a href="steps-whole.html">Step sheet</a></section></body></html>
            """);

    /** The hashes were made with {@code printf … | openssl dgst -sha256 -binary | base64}. */
    @Test
    void what_a_page_draws_on_stands_inside_under_a_policy_that_names_it() {
        Document page = page(whole(100));
        assertThat(page.select("link[rel=stylesheet], script[src], nav, #take-along, [srcset]")).isEmpty();
        assertThat(page.select("style").outerHtml()).contains(STYLE);
        assertThat(page.body().children().last().outerHtml()).isEqualTo("<script>" + SCRIPT + "</script>");
        assertThat(page.select("meta[http-equiv]").attr("content")).isEqualTo("default-src 'none'; "
                + "style-src 'sha256-48sSy1L+0pGBMr3XQog56zBcXid1hhmpAwenUuKoe5w='; "
                + "script-src 'sha256-Z+8xv2LG0I+dA7MJx2i03MYri+FljN5TZyJNk0iychg='; img-src data:; base-uri 'none'; form-action 'none'");
        assertThat(Base64.getDecoder().decode(page.select("img").attr("src").replace("data:image/jpeg;base64,", "")))
                .isEqualTo(picture(960, 100).bytes());
        assertThat(page.select("link[rel=icon]").attr("href")).startsWith("data:image/svg+xml;base64,");
    }

    @Test
    void a_link_to_what_is_not_there_becomes_words() {
        Document page = page(whole(100));
        assertThat(page.select("a").eachAttr("href")).containsExactly("#here", "https://example.org/x");
        assertThat(page.text()).contains("Up sizing Source");
    }

    @Test
    void its_name_says_whether_pictures_stand_in_it() {
        assertThat(whole(100).path()).isEqualTo("cases/tide/steps-whole-with-pictures.html");
        SiteFile words = SiteFile.text("cases/tide/results.html", "<p>Words</p>");
        assertThat(WholePages.of(List.of(words), List.of(), FinishedPage::new).values()).singleElement().extracting(SiteFile::path)
                .isEqualTo("cases/tide/results-whole.html");
    }

    @Test
    void a_page_that_would_be_too_heavy_for_a_mail_holds_narrower_pictures_or_their_words() {
        assertThat(page(whole(1_200_000)).select("img").attr("src")).hasSizeLessThan(1000);
        SiteFile heavy = WholePages.of(List.of(PAGE), others(2_000_000, 2_000_000), FinishedPage::new).get(PAGE.path());
        assertThat(heavy.path()).isEqualTo("cases/tide/steps-whole.html");
        assertThat(heavy.bytes().length).isLessThan(WholePages.HEAVIEST);
        assertThat(page(heavy).select("img")).isEmpty();
        assertThat(page(heavy).text()).contains("A sheet");
    }

    private static SiteFile whole(int weight) {
        return WholePages.of(List.of(PAGE), others(weight, 100), FinishedPage::new).get(PAGE.path());
    }

    private static List<SiteFile> others(int wide, int narrow) {
        return Stream.of(SiteFile.text("assets/site.css", STYLE), SiteFile.text("assets/bench.js", SCRIPT),
                SiteFile.text("assets/icon.svg", "<svg/>"), picture(480, narrow), picture(960, wide), picture(1600, wide)).toList();
    }

    private static SiteFile picture(int width, int weight) {
        byte[] bytes = new byte[weight];
        Arrays.fill(bytes, (byte) (width % 100));
        return new SiteFile("cases/tide/pictures/a-" + width + ".jpg", bytes);
    }

    private static Document page(SiteFile file) {
        return Jsoup.parse(new String(file.bytes(), StandardCharsets.UTF_8));
    }
}
