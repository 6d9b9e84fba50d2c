package org.benchleaf.compose.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.benchleaf.publish.WrittenText;
import org.benchleaf.text.Inline;
import org.benchleaf.text.RichText;
import org.benchleaf.text.TextBlock;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Checks which words become links to the glossary, by hand. */
class GlossaryLinksTest {

    private static final GlossaryTerms TERMS = new GlossaryTerms(
            Pattern.compile("(?<![\\p{L}\\p{M}\\p{N}-])(?:wheat starch paste|pastes|paste|pH)(?![\\p{L}\\p{M}\\p{N}-])",
                    Pattern.CASE_INSENSITIVE),
            Map.of("wheat starch paste", "wheat-paste", "paste", "paste", "pastes", "paste", "ph", "ph"));

    private final GlossaryLinks links = new GlossaryLinks(TERMS, "glossary.html");

    private String linked(String words) {
        return WrittenText.of(links.link(RichText.of(words)));
    }

    @Test
    void a_term_is_linked_where_it_is_used_first_and_only_there() {
        assertThat(linked("Paste, then more paste and pastes.")).isEqualTo(
                "<a class=\"term\" href=\"glossary.html#term-paste\">Paste</a>, then more paste and pastes.");
        assertThat(linked("paste")).isEqualTo("paste");
    }

    @Test
    void the_longest_term_wins() {
        assertThat(linked("wheat starch paste")).contains("#term-wheat-paste").doesNotContain("#term-paste\"");
    }

    @Test
    void a_part_of_a_word_is_not_a_term() {
        assertThat(linked("toothpaste, paste-up")).doesNotContain("<a");
    }

    @ParameterizedTest
    @MethodSource("closed")
    void what_leads_elsewhere_names_or_quotes_is_left_alone(TextBlock block) {
        assertThat(links.link(block)).isEqualTo(block);
        assertThat(linked("paste, pH")).contains("#term-paste", "#term-ph");
    }

    static List<TextBlock> closed() {
        List<Inline> words = List.of(new Inline.Text("Paste"));
        return List.of(new TextBlock.Subheading(3, words), new TextBlock.CodeBlock("paste"),
                new TextBlock.TextTable(List.of(List.of(new TextBlock.Cell(words))), List.of()),
                new TextBlock.Paragraph(List.of(Inline.Hyperlink.to("x", "paste"), new Inline.Code("pH"),
                        new Inline.Quotation("paste"), new Inline.WorkedNumber("working-a", "pH 7"))));
    }

    @Test
    void a_term_is_found_in_stressed_words_lists_quotes_and_the_body_of_a_table() {
        List<Inline> words = List.of(new Inline.Emphasis(List.of(new Inline.Text("thick paste"))), new Inline.Text(", pH"));
        List<Inline> told = List.of(new Inline.Emphasis(List.of(new Inline.Text("thick "),
                new Inline.TermLink("glossary.html#term-paste", "paste"))), new Inline.Text(", "),
                new Inline.TermLink("glossary.html#term-ph", "pH"));
        assertThat(fresh().link(TextBlock.ItemList.of(List.of(new TextBlock.Line(words)))))
                .isEqualTo(TextBlock.ItemList.of(List.of(new TextBlock.Line(told))));
        assertThat(fresh().link(new TextBlock.BlockQuote(List.of(new TextBlock.Paragraph(words)))))
                .isEqualTo(new TextBlock.BlockQuote(List.of(new TextBlock.Paragraph(told))));
        assertThat(fresh().link(new TextBlock.TextTable(List.of(), List.of(List.of(new TextBlock.Cell(words))))))
                .isEqualTo(new TextBlock.TextTable(List.of(), List.of(List.of(new TextBlock.Cell(told)))));
    }

    private static GlossaryLinks fresh() {
        return new GlossaryLinks(TERMS, "glossary.html");
    }

    @Test
    void special_characters_stay_escaped() {
        assertThat(linked("a <b> paste & c")).isEqualTo(
                "a &lt;b&gt; <a class=\"term\" href=\"glossary.html#term-paste\">paste</a> &amp; c");
    }
}
