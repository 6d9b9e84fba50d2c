package org.benchleaf.publish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.benchleaf.page.Hazard;
import org.benchleaf.text.Inline;
import org.benchleaf.text.TextBlock;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Elements and their meaning: the HTML Living Standard, 4.5; which letters an attribute in quotation marks cannot hold: 13.1.2.3. */
class HtmlWriterTest {

    private static final List<Inline> WORDS = List.of(new Inline.Text("words"));

    @Test
    void each_kind_of_piece_is_its_own_element() {
        assertThat(HtmlWriter.of(List.of(new Inline.Emphasis(WORDS), new Inline.Strong(WORDS), new Inline.Code("words"),
                new Inline.LineBreak(), new Inline.Quotation("words"))))
                .isEqualTo("<em>words</em><strong>words</strong><code>words</code><br><q>words</q>");
        assertThat(HtmlWriter.of(List.of(new Inline.Hyperlink("a.html", Optional.of("title"), Optional.of("fr"), WORDS),
                new Inline.Anchor("here", WORDS), new Inline.WorkedNumber("working-a", "5 L"),
                new Inline.MarkedFigure("a.b", WORDS), new Inline.TermLink("g.html#t", "words"))))
                .isEqualTo("<a href=\"a.html\" title=\"title\" lang=\"fr\">words</a><span id=\"here\">words</span>"
                        + "<a class=\"number\" href=\"#working-a\"><bdi>5\u202fL</bdi></a><span data-figure=\"a.b\">words</span>"
                        + "<a class=\"term\" href=\"g.html#t\">words</a>");
    }

    @ParameterizedTest
    @ValueSource(strings = {"<script>x</script>", "a & b &amp; c", "\"><b onclick=\"x\">", "' onclick='x", "&lt;", "a\u00a0b"})
    void whatever_is_told_comes_back_as_it_was_written(String told) {
        String html = HtmlWriter.of(List.of(new Inline.Text(told), new Inline.Code(told), new Inline.Quotation(told),
                new Inline.Hyperlink(told, Optional.of(told), Optional.of(told), List.of(new Inline.Text(told))),
                new Inline.Anchor(told, List.of()), new Inline.WorkedNumber(told, told), new Inline.MarkedFigure(told, List.of()),
                new Inline.TermLink(told, told)));
        Element body = Jsoup.parseBodyFragment(html).body();
        assertThat(body.wholeText()).isEqualTo(told.repeat(6));
        assertThat(body.select("a, span").eachAttr("href")).containsExactly(told, "#" + told, told);
        assertThat(List.of(body.select("a").attr("title"), body.select("a").attr("lang"), body.select("[id]").attr("id"),
                body.select("[data-figure]").attr("data-figure"))).containsOnly(told);
        assertThat(body.getAllElements()).extracting(Element::normalName).containsExactly("body", "code", "q", "a", "span", "a", "bdi",
                "span", "a");
    }

    @Test
    void blocks_stand_on_lines_of_their_own() {
        TextBlock.Line line = new TextBlock.Line(WORDS);
        assertThat(WrittenText.of(List.of(new TextBlock.Paragraph(WORDS), new TextBlock.Subheading(3, WORDS), new TextBlock.ThematicBreak(),
                new TextBlock.CodeBlock("a\n  b\n"), new TextBlock.BlockQuote(List.of(new TextBlock.Paragraph(WORDS))))))
                .isEqualTo("<p>words</p>\n<h3>words</h3>\n<hr>\n<pre><code>a\n  b\n</code></pre>\n"
                        + "<blockquote>\n<p>words</p>\n</blockquote>");
        assertThat(HtmlWriter.of(new TextBlock.ItemList(true, 3, List.of(List.of(line, TextBlock.ItemList.of(List.of(line))),
                List.of(new TextBlock.Paragraph(WORDS)), List.of()))))
                .isEqualTo("<ol start=\"3\">\n<li>words\n<ul>\n<li>words</li>\n</ul>\n</li>\n<li>\n<p>words</p>\n</li>\n<li></li>\n</ol>");
        TextBlock.Cell cell = new TextBlock.Cell(WORDS);
        assertThat(HtmlWriter.of(new TextBlock.TextTable(List.of(List.of(cell)), List.of(List.of(cell), List.of(cell)))))
                .isEqualTo("<table>\n<thead>\n<tr><th>words</th></tr>\n</thead>\n<tbody>\n<tr><td>words</td></tr>\n"
                        + "<tr><td>words</td></tr>\n</tbody>\n</table>");
        assertThat(HtmlWriter.of(new TextBlock.TextTable(List.of(), List.of()))).isEqualTo("<table>\n</table>");
    }

    @Test
    void a_formula_and_a_drawing_stand_as_their_tables_have_them_with_a_name() {
        assertThat(HtmlWriter.of(new TextBlock.Formula("<mi>V</mi>", "Formula of \"a < b\"")))
                .isEqualTo("<div class=\"formula\" role=\"region\" tabindex=\"0\" aria-label=\"Formula of &quot;a &lt; b&quot;\">"
                        + "<math display=\"block\"><mi>V</mi></math></div>");
        assertThat(HtmlWriter.of(new Hazard.Drawing("<svg role=\"img\" aria-label=\"flame\"><path d=\"M0 0\"/></svg>", "flamme $1, GHS02")))
                .isEqualTo("<svg role=\"img\" aria-label=\"flamme $1, GHS02\"><path d=\"M0 0\"/></svg>");
    }

    /** SI brochure, 5.4.3: a space between number and unit, at which a line does not break. */
    @Test
    void a_unit_is_set_to_its_number_in_words_alone() {
        assertThat(HtmlWriter.of(List.of(new Inline.Text("5 mL "), new Inline.Strong(List.of(new Inline.Text("5 mL"))),
                new Inline.Quotation("5 mL"), new Inline.WorkedNumber("working-a", "5 mL"), new Inline.TermLink("g.html", "5 mL"),
                new Inline.Code("5 mL"), Inline.Hyperlink.to("5 mL", "5 mL"))))
                .isEqualTo("5~mL <strong>5~mL</strong><q>5~mL</q><a class=\"number\" href=\"#working-a\"><bdi>5~mL</bdi></a>"
                        .concat("<a class=\"term\" href=\"g.html\">5~mL</a><code>5 mL</code><a href=\"5 mL\">5~mL</a>")
                        .replace('~', '\u202f'));
        assertThat(HtmlWriter.of(new TextBlock.CodeBlock("5 mL"))).isEqualTo("<pre><code>5 mL</code></pre>");
    }

    @Test
    void a_figure_that_was_not_put_in_is_never_left_out_in_silence() {
        assertThatThrownBy(() -> HtmlWriter.of(List.of(new Inline.CitedFigure("wash.volume"))))
                .isInstanceOf(IllegalStateException.class).hasMessageContaining("wash.volume");
    }
}
