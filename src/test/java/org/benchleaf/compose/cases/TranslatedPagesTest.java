package org.benchleaf.compose.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.part.LanguageFolder;
import org.benchleaf.compose.part.PageNames;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.model.Phrases;
import org.benchleaf.page.Page;
import org.junit.jupiter.api.Test;

/** The pages of a language are made when they are asked for. */
class TranslatedPagesTest {

    @Test
    void to_show_one_page_no_other_is_made() {
        List<String> made = new ArrayList<>();
        TranslatedPages pages = new TranslatedPages("en", "", new LanguageFolder("fr", Set.of("a.html", "b.html"), List.of("en", "fr")),
                Phrases.ENGLISH, List.of(group("fr/a.html", made), group("fr/b.html", made)), Optional.empty());
        assertThat(pages.page("fr/b.html")).map(Page::path).contains("fr/b.html");
        assertThat(made).containsExactly("fr/b.html");
        assertThat(pages.page("fr/c.html")).isEmpty();
        assertThat(pages.pages()).extracting(Page::path).containsExactly("fr/a.html", "fr/b.html");
    }

    private static TranslatedPages.PageGroup group(String path, List<String> made) {
        return new TranslatedPages.PageGroup(List.of(path), () -> {
            made.add(path);
            return List.of(new Sheet(path, "glossary", "fr", DemoSite.made().library(), Map.of(),
                    new PageNames(List.of(), List.of(), List.of())).page("A", "b"));
        });
    }
}
