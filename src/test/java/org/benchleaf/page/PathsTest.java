package org.benchleaf.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Holds the ways between pages against RFC 3986, section 5, as {@link URI#resolve(String)} carries it out. */
class PathsTest {

    @ParameterizedTest
    @CsvSource({
        "index.html, cases/a/index.html",
        "cases/a/index.html, index.html",
        "cases/a/index.html, cases/a/steps.html#step-wash",
        "cases/a/steps.html, cases/b/index.html",
        "cases/a/steps.html, cases/ab/index.html",
        "materials/water.html, glossary.html#term-bath",
        "browse/index.html, browse/index.html#by-damage",
    })
    void a_way_leads_where_it_should_and_never_begins_at_a_root(String from, String to) {
        String way = Paths.way(from, to);
        assertThat(URI.create("site:///" + from).resolve(way)).isEqualTo(URI.create("site:///" + to));
        assertThat(way).doesNotStartWith("/").doesNotContain(":");
    }

    @Test
    void a_slug_has_only_lower_case_letters_digits_and_hyphens() {
        assertThat(Paths.slug("Kozo tissue, 9 g/m²")).isEqualTo("kozo-tissue-9-g-m");
        assertThat(Paths.slug("Élan vital")).isEqualTo("elan-vital");
        assertThat(Paths.slug("紙")).matches("[a-z0-9]+").isNotEqualTo(Paths.slug("水"));
        assertThat(Paths.slug("!")).isEqualTo("x");
    }

    @Test
    void a_file_named_after_many_words_has_a_short_name_of_its_own() {
        String words = "the height of the waves along the left edge after a night under blotters and boards, ";
        assertThat(Paths.fileName(words + "first")).hasSizeLessThanOrEqualTo(48).matches("[a-z0-9-]+")
                .isNotEqualTo(Paths.fileName(words + "second"));
        assertThat(Paths.fileName("Wave height")).isEqualTo("wave-height");
    }
}
