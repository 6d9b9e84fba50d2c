package org.benchleaf.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The scan of a page, compared with the tree that jsoup, an HTML parser of the WHATWG standard, makes of it. */
class PageScanTest {

    private static final List<String> PIECES = List.of(
            "<a href=\"x.html\">x</a>", "<a href='y.html#z'>y</a>", "<a href=z.html>z</a>", "<p id=one>", "<p id=\"t'wo\">",
            "<img src=\"p.png\" alt=\"a > b\">", "<a title='x' href = \"sp.html\" >", "<!-- <a href=\"no.html\"> -->",
            "<script>if (a < b) { '<a href=\"no2.html\">' }</script>", "<style>a > b { }</style>", "text & < more",
            "<a href=\"q.html?a=1&amp;b=2\">", "<br/>", "<svg><a href=\"svg.html\"></a><path id=\"p\"/></svg>",
            "<textarea><a href=\"no3.html\"></textarea>", "<A HREF=\"UP.html\">", "<div id=\"\u00e9t\u00e9\">", "</p>",
            "<input disabled id=in>", "<a data-href=\"no4.html\" href=\"d.html\">", "<source srcset=\"a.png 1x, b.png 2x\">",
            "<a href=\"java&#115;cript:x\">", "<title>a <a href=\"no5.html\"></title>", "<link rel=icon href=i.png>");

    static Stream<String> pages() {
        Random random = new Random(20260302);
        return Stream.generate(() -> random.ints(12, 0, PIECES.size()).mapToObj(PIECES::get)
                .collect(Collectors.joining(random.nextBoolean() ? "\n" : ""))).limit(300);
    }

    @ParameterizedTest
    @MethodSource("pages")
    void ids_and_addresses_are_those_that_a_parser_of_the_standard_finds(String body) {
        Document parsed = Jsoup.parse("<!doctype html><body>" + body);
        PageScan scan = PageScan.of("<!doctype html><body>" + body);
        assertThat(scan.ids()).isEqualTo(parsed.select("[id]").eachAttr("id").stream().collect(Collectors.toSet()));
        Set<String> addresses = scan.links().stream().filter(link -> !link.alternative())
                .map(PageScan.Link::value).collect(Collectors.toSet());
        assertThat(addresses).isEqualTo(Stream.concat(parsed.select("[href]").eachAttr("href").stream(),
                parsed.select("[src]").eachAttr("src").stream()).collect(Collectors.toSet()));
    }
}
