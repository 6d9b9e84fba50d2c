package org.benchleaf.compose.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.xml.XMLConstants;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.SchemaFactory;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.SiteComposition;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.WebAddress;
import org.benchleaf.model.AuthorGuide;
import org.benchleaf.page.DataFile;
import org.benchleaf.publish.SiteFile;
import org.jsoup.Jsoup;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;

/** Holds the map of the site against the published schema of the Sitemaps protocol 0.9. */
class SiteMapTest {

    private static final String STUDIO = "https://tarn-quay.example/";

    @Test
    void the_map_is_valid_and_names_every_page_of_the_demo_that_is_not_of_a_class() throws Exception {
        String map = text(DemoSite.made().files(), "sitemap.xml");

        SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI)
                .newSchema(Path.of("src/test/resources/open-data/sitemap-0.9.xsd").toFile()).newValidator()
                .validate(new StreamSource(new StringReader(map)));
        assertThat(addresses(map)).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(
                DemoSite.made().files().stream().map(SiteFile::path).filter(path -> path.endsWith(".html") && !path.contains("/class-"))
                        .map(path -> STUDIO + path).toList());
    }

    /**
     * RFC 9309, 2.2: groups begin with User-agent; the Sitemap line, of the Sitemaps protocol, stands outside them with a whole address.
     */
    @Test
    void programs_that_look_at_the_top_of_the_host_are_told_where_the_map_is() {
        assertThat(text(DemoSite.made().files(), "robots.txt").lines()).first().isEqualTo("User-agent: *");
        assertThat(text(DemoSite.made().files(), "robots.txt").lines()).last().isEqualTo("Sitemap: " + STUDIO + "sitemap.xml");
        assertThat(new WebAddress("https://museum.example/paper/").isWholeHost()).isFalse();
    }

    /** Sitemaps protocol 0.9: at most 50 000 addresses in a file; a longer list is cut, and an index names its parts. */
    @Test
    void a_long_list_is_cut_into_files_that_an_index_names() {
        List<CaseCard> cards = List.of(new CaseCard("many", "Many", "", "en", "foundation", "poster", "", List.of(), List.of(), List.of(),
                List.of(), "", "", List.of(), List.of(), IntStream.range(0, 50_001).mapToObj(n -> "cases/many/" + n + ".html").toList(),
                List.of(), "", List.of(), List.of(), CaseCard.LastChange.NONE, List.of(), ""));

        List<DataFile> files = new SiteComposition(DemoSite.made().library(), cards, List.of(), AuthorGuide.EMPTY, Audience.EVERYBODY)
                .map(List.of());

        assertThat(files).extracting(DataFile::path).containsExactly("sitemap-1.xml", "sitemap-2.xml", "sitemap.xml", "robots.txt");
        assertThat(addresses(files.get(2).text())).containsExactly(STUDIO + "sitemap-1.xml", STUDIO + "sitemap-2.xml");
        List<String> all = new ArrayList<>(addresses(files.get(0).text()));
        assertThat(all).hasSize(50_000);
        all.addAll(addresses(files.get(1).text()));
        assertThat(all).hasSize(50_001).doesNotHaveDuplicates();
    }

    @Test
    void a_site_for_trainees_alone_has_no_map() {
        assertThat(new SiteComposition(DemoSite.made().library(), List.of(), List.of(), AuthorGuide.EMPTY, Audience.TRAINEES)
                .map(List.of())).isEmpty();
    }

    private static List<String> addresses(String map) {
        return Jsoup.parse(map, "", Parser.xmlParser()).select("loc").eachText();
    }

    private static String text(List<SiteFile> files, String path) {
        return files.stream().filter(file -> file.path().equals(path)).map(SiteFile::text).collect(Collectors.joining());
    }
}
