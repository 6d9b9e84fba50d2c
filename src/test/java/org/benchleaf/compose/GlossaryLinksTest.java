package org.benchleaf.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Checks which words become links to the glossary, by hand. */
class GlossaryLinksTest {

    private static final GlossaryTerms TERMS = new GlossaryTerms(
            Pattern.compile("(?<![\\p{L}\\p{N}-])(?:wheat starch paste|pastes|paste|pH)(?![\\p{L}\\p{N}-])",
                    Pattern.CASE_INSENSITIVE),
            Map.of("wheat starch paste", "wheat-paste", "paste", "paste", "pastes", "paste", "ph", "ph"));

    private final GlossaryLinks links = new GlossaryLinks(TERMS, "glossary.html");

    private String linked(String html) {
        return links.link(new Html(html)).markup();
    }

    @Test
    void a_term_is_linked_where_it_is_used_first_and_only_there() {
        assertThat(linked("<p>Paste, then more paste and pastes.</p>")).isEqualTo(
                "<p><a class=\"term\" href=\"glossary.html#term-paste\">Paste</a>, then more paste and pastes.</p>");
        assertThat(linked("<p>paste</p>")).isEqualTo("<p>paste</p>");
    }

    @Test
    void the_longest_term_wins() {
        assertThat(linked("wheat starch paste")).contains("#term-wheat-paste").doesNotContain("#term-paste\"");
    }

    @Test
    void a_part_of_a_word_is_not_a_term() {
        assertThat(linked("toothpaste, paste-up")).doesNotContain("<a");
    }

    @Test
    void links_headings_and_code_are_left_alone() {
        String html = "<h2>Paste</h2><p><a href=\"x\">paste</a> <code>pH</code></p>";
        assertThat(linked(html)).isEqualTo(html);
    }

    @Test
    void special_characters_stay_escaped() {
        assertThat(linked("a &lt;b&gt; paste &amp; c")).isEqualTo(
                "a &lt;b&gt; <a class=\"term\" href=\"glossary.html#term-paste\">paste</a> &amp; c");
    }
}
