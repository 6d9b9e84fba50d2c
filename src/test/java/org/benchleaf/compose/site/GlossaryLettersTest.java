package org.benchleaf.compose.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.SiteComposition;
import org.benchleaf.compose.cases.CasePages;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.model.AuthorGuide;
import org.benchleaf.page.Glossary;
import org.benchleaf.page.Link;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A letter of the row leads to the first term that begins with it; the terms were looked up in the glossary file. */
class GlossaryLettersTest {

    private static final SiteComposition SITE = new SiteComposition(DemoSite.made().library(),
            DemoSite.made().cases().stream().map(CasePages::card).toList(), List.of(), AuthorGuide.EMPTY, Audience.EVERYBODY);

    @ParameterizedTest
    @CsvSource({"glossary.html, K, #term-kozo", "glossary.html, T, #term-tear", "glossary.html, W, #term-washing",
            "fr/glossary.html, E, #term-limewater"})
    void a_letter_leads_to_its_first_term(String page, String letter, String term) {
        Glossary glossary = SITE.page(page).orElseThrow().blocks().stream().filter(Glossary.class::isInstance).map(Glossary.class::cast)
                .findFirst().orElseThrow();
        assertThat(glossary.letters()).filteredOn(link -> link.text().equals(letter)).extracting(Link::href)
                .containsExactly(term);
        assertThat(glossary.letters()).extracting(Link::text).doesNotHaveDuplicates();
    }
}
