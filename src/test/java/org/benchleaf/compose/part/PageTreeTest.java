package org.benchleaf.compose.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.cases.TranslatedPages;
import org.benchleaf.model.Phrases;
import org.benchleaf.page.Page;
import org.benchleaf.publish.Pictures;
import org.benchleaf.publish.SitePublisher;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

/** The tree from which a page was written stands for the page; the page as it is read again is the measure. */
class PageTreeTest {

    @Test
    void the_tree_of_every_marked_page_of_the_demo_gives_what_reading_the_page_gives() {
        SitePublisher publisher = SitePublisher.with(Path.of("templates"), Pictures.none());
        Map<String, Page> originals = DemoSite.made().cases().stream().flatMap(one -> one.pages().stream())
                .collect(Collectors.toMap(Page::path, page -> page));
        List<TranslatedPages> translated = DemoSite.made().cases().stream().flatMap(one -> one.translated().stream()).toList();
        assertThat(translated).isNotEmpty();
        translated.forEach(there -> there.pages().forEach(page -> {
            Page original = originals.get(there.originalOf(page));
            same(page, there.marked(publisher.publish(page).text(),
                    ForeignWords.Original.of(PageTree.of(publisher.publish(original).text()))));
        }));
    }

    private static void same(Page page, ForeignWords.Marked marked) {
        Document read = Jsoup.parse(marked.html());
        read.outputSettings().prettyPrint(false);
        assertThat(marked.tree().copy().outerHtml()).as(page.path()).isEqualTo(read.outerHtml());
        assertThat(PageSearch.of(page, marked.tree()).sentences()).as(page.path())
                .isEqualTo(PageSearch.of(page, PageTree.of(marked.html())).sentences());
    }

    @Test
    void a_copy_may_be_changed_and_the_tree_stays() {
        PageTree tree = new ForeignWords("fr", "en", Phrases.ENGLISH).marked("<p>Sortez la feuille.</p>",
                ForeignWords.Original.of(PageTree.of("<p>Lift the sheet.</p>"))).tree();
        tree.copy().select("p").remove();
        assertThat(tree.copy().select("p").text()).isEqualTo("Sortez la feuille.");
    }
}
