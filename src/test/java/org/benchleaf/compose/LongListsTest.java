package org.benchleaf.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.page.Block;
import org.benchleaf.page.CaseLines;
import org.benchleaf.page.CaseList;
import org.benchleaf.page.LinkList;
import org.benchleaf.page.Page;
import org.benchleaf.page.Section;
import org.benchleaf.read.AuthorGuideReader;
import org.junit.jupiter.api.Test;

/** Lists of many cases: a studio of thirty years has thousands, and no page may grow with them. */
class LongListsTest {

    @Test
    void few_cases_are_listed_with_all_that_tells_them_apart() {
        List<Page> pages = pages(60, "browse/object-poster");

        assertThat(pages).extracting(Page::path).containsExactly("browse/object-poster.html");
        assertThat(blocks(pages.get(0))).singleElement().isInstanceOfSatisfying(CaseList.class,
                list -> assertThat(list.entries()).hasSize(60));
    }

    @Test
    void many_cases_have_a_line_each() {
        List<Page> pages = pages(61, "browse/object-poster");

        assertThat(pages).hasSize(1);
        assertThat(lines(pages.get(0))).hasSize(61).first().satisfies(line -> {
            assertThat(line.title().href()).isEqualTo("../cases/case-0/index.html");
            assertThat(line.language()).isEqualTo("en");
            assertThat(line.about()).isEqualTo("poster, lithography · Foundation");
        });
    }

    @Test
    void very_many_cases_go_on_on_further_pages_each_once() {
        for (String list : List.of("browse/object-poster", "materials/kozo-5")) {
            List<Page> pages = pages(850, list);

            assertThat(pages).extracting(Page::path).containsExactly(list + ".html", list + "--2.html", list + "--3.html");
            assertThat(pages.stream().flatMap(page -> lines(page).stream()).map(line -> line.title().text()))
                    .hasSize(850).doesNotHaveDuplicates();
            assertThat(pages).extracting(Page::title).doesNotHaveDuplicates();
            assertThat(ways(pages.get(1))).containsExactlyInAnyOrder(file(list) + ".html", file(list) + "--3.html");
        }
    }

    @Test
    void the_library_shows_sixty_cases_a_page() {
        List<Page> pages = composed(121).stream().filter(page -> page.kind().equals("library")).toList();

        assertThat(pages).extracting(Page::path).containsExactly("index.html", "library-2.html", "library-3.html");
    }

    private static String file(String path) {
        return path.substring(path.indexOf('/') + 1);
    }

    private static List<Page> pages(int cases, String list) {
        return composed(cases).stream().filter(page -> page.path().matches(list + "(--\\d+)?\\.html")).toList();
    }

    private static List<Page> composed(int cases) {
        return SiteComposer.compose(DemoSite.made().library(), IntStream.range(0, cases).mapToObj(LongListsTest::card).toList(),
                List.of(), AuthorGuideReader.read(), Audience.EVERYBODY).pages();
    }

    private static CaseCard card(int number) {
        String id = "case-" + number;
        return new CaseCard(id, "Poster " + number, "", "en", "foundation", "poster", "lithography", List.of(),
                List.of("kozo-5"), List.of(), List.of(), "", "", List.of(), List.of(), List.of("cases/" + id + "/index.html"), List.of(),
                "", List.of(), List.of(), CaseCard.LastChange.NONE, List.of(), "");
    }

    private static List<Block> blocks(Page page) {
        return page.blocks().stream().flatMap(block -> block instanceof Section section && section.id().equals("cases")
                ? section.blocks().stream() : Stream.of()).toList();
    }

    private static List<CaseLines.Entry> lines(Page page) {
        return ((CaseLines) blocks(page).get(0)).entries();
    }

    private static List<String> ways(Page page) {
        return ((LinkList) blocks(page).get(1)).entries().stream().map(way -> way.link().href()).toList();
    }
}
