package org.benchleaf.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.benchleaf.message.Message;
import org.benchleaf.message.Messages;
import org.benchleaf.model.Story;
import org.benchleaf.publish.WrittenText;
import org.benchleaf.text.Inline;
import org.benchleaf.text.TextBlock;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class StoryReaderTest {

    private final Messages messages = new Messages();

    @Test
    void headings_cut_a_story_into_sections_and_an_id_ties_one_to_a_step() {
        Story story = read("Before.\n\n## Into the *water* {#wash}\n\nOne.\n\n### Small\n\nTwo.\n\n## Dry\n\nThree.\n");
        assertThat(story.sections()).extracting(Story.Section::id).containsExactly("", "wash", "story-dry");
        assertThat(story.sections()).extracting(Story.Section::heading).containsExactly("", "Into the water", "Dry");
        assertThat(story.sections().get(1).text()).containsExactly(TextBlock.Paragraph.of("One."),
                new TextBlock.Subheading(3, List.of(new Inline.Text("Small"))), TextBlock.Paragraph.of("Two."));
        assertThat(messages.isEmpty()).isTrue();
    }

    @Test
    void a_cited_figure_is_marked_and_knows_its_place() {
        Story story = read("## A\n\nIt held **{wash.volume}**,\nnot \\{wash.total} or { x }.\n");
        Story.Section section = story.sections().get(0);
        assertThat(section.text()).containsExactly(new TextBlock.Paragraph(List.of(new Inline.Text("It held "),
                new Inline.Strong(List.of(new Inline.CitedFigure("wash.volume"))),
                new Inline.Text(",\nnot {wash.total} or { x }."))));
        assertThat(section.citations()).hasSize(1);
        assertThat(section.citations().get(0).place()).extracting("line", "column", "length")
                .containsExactly(3, 11, 13);
    }

    @Test
    void tables_lists_and_quotes_come_through() {
        assertThat(text("| a | b |\n|---|--:|\n| 1 | 2 |\n\n> said\n\n3. three\n")).containsExactly(
                new TextBlock.TextTable(List.of(List.of(cell("a"), cell("b"))), List.of(List.of(cell("1"), cell("2")))),
                new TextBlock.BlockQuote(List.of(TextBlock.Paragraph.of("said"))),
                new TextBlock.ItemList(true, 3, List.of(List.of(new TextBlock.Line(List.of(new Inline.Text("three")))))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"https://example.org/a?b=c:d", "http://example.org", "mailto:a@example.org",
        "../../glossary.html#tide", "page.html", "#wash", "a/b:c"})
    void a_link_to_a_page_or_an_address_is_kept(String address) {
        assertThat(text("[x](" + address + ")")).containsExactly(
                new TextBlock.Paragraph(List.of(Inline.Hyperlink.to(address, "x"))));
        assertThat(messages.isEmpty()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"javascript:alert(1)", "JaVaScRiPt:alert(1)", "data:text/html,x", "vbscript:x", "file:///etc/passwd",
        "java&#115;cript:alert(1)", "javascript&colon;alert(1)", "&#106;avascript:x", "//example.org/x", "/root.html", "\\\\host\\share",
        "java%0ascript:x", "ftp://example.org"})
    void a_link_of_another_kind_is_an_error_and_unlinked(String address) {
        Story story = read("[x](<" + address + ">)\n\n<" + address + ">\n\n[y]\n\n[y]: <" + address + ">\n");
        assertThat(messages.all()).extracting(Message::code).contains("READ-024");
        assertThat(links(story)).noneMatch(href -> !href.matches("(?i)(https?|mailto):.*|[^:/\\\\]*"));
    }

    /** Inputs from the OWASP Cross Site Scripting filter evasion list, from memory. */
    @ParameterizedTest
    @ValueSource(strings = {"<script>alert(1)</script>", "<img src=x onerror=alert(1)>", "a <b onmouseover=alert(1)>b</b>",
        "<svg/onload=alert(1)>", "<!-- <img src=x onerror=alert(1)> -->", "<iframe src=javascript:alert(1)>",
        "<a href='javascript:alert(1)'>x</a>", "<style>@import'x'</style>", "`<script>`",
        "<math><mtext></form><form><mglyph><style></math><img src onerror=alert(1)>",
        "[x](https://a\"onmouseover=\"alert(1))", "| <script>x</script> |\n|---|\n| <b onclick=x>y</b> |"})
    void html_is_shown_as_text(String written) {
        for (Story.Section section : read(written + "\n\nText " + written).sections()) {
            for (Element element : Jsoup.parseBodyFragment(WrittenText.of(section.text())).body().getAllElements()) {
                assertThat(element.normalName()).isIn("body", "p", "a", "code", "table", "thead", "tbody", "tr", "th", "td",
                        "em", "strong");
                assertThat(element.attributes().asList()).allMatch(attribute -> attribute.getKey().equals("href")
                        || attribute.getKey().equals("title"));
            }
        }
    }

    /** Where a comment ends is told by CommonMark 0.31.2, sections 4.6 and 6.6. */
    @ParameterizedTest
    @ValueSource(strings = {"<!-- secret -->", "Before <!-- secret --> after.", "<!-- secret\n\nsecret -->", "> <!-- secret -->",
        "- one\n  <!-- secret -->", "<!-- secret --> shown on the same line", "<div><!-- secret --></div>",
        "<!-- a --> b <!-- secret --> c"})
    void a_comment_stays_with_the_author(String written) {
        Story story = read(written + "\n\nText.");
        assertThat(messages.isEmpty()).isTrue();
        assertThat(WrittenText.of(story.sections().get(0).text())).doesNotContain("secret", "--").contains("<p>Text.</p>");
    }

    @Test
    void what_stands_beside_a_comment_is_kept() {
        assertThat(text("<!-- x --> shown & kept\n\nBefore <!-- y -->after."))
                .containsExactly(TextBlock.Paragraph.of("shown & kept"), TextBlock.Paragraph.of("Before after."));
    }

    @Test
    void a_comment_that_is_never_closed_is_an_error() {
        read("Text.\n\n<!-- secret\n\nMore text.");
        assertThat(messages.all()).extracting(Message::code).containsExactly("READ-031");
    }

    @ParameterizedTest
    @MethodSource("hostile")
    void hostile_input_ends_in_a_message_or_a_story(String name, String body, boolean refused) {
        Story story = read(body);
        assertThat(messages.hasErrors()).as(name).isEqualTo(refused);
        assertThat(story.sections().isEmpty()).as(name).isEqualTo(refused);
    }

    static Stream<Arguments> hostile() {
        return Stream.of(
                Arguments.of("5,000 nested quotes", ">".repeat(5_000) + " x", true),
                Arguments.of("nested quotes with blanks", "> ".repeat(2_000) + "x", true),
                Arguments.of("nested lists in one line", "- ".repeat(500) + "x", true),
                Arguments.of("numbered lists in one line", "1. ".repeat(500) + "x", true),
                Arguments.of("lists nested by blanks", lists(200), true),
                Arguments.of("open links", "[a](".repeat(20_000), true),
                Arguments.of("open brackets", "[".repeat(80_000), true),
                Arguments.of("open images", "![".repeat(40_000), true),
                Arguments.of("mixed backticks", backticks(480), true),
                Arguments.of("open angles", "<a ".repeat(40_000), true),
                Arguments.of("definitions of links", definitions(20_000), true),
                Arguments.of("marks of emphasis", "*a **b ".repeat(20_000), true),
                Arguments.of("unfinished figures", "{a.b ".repeat(50_000), true),
                Arguments.of("many figures", "{a.b} ".repeat(30_000), true),
                Arguments.of("cells in a row", "|a".repeat(60_000) + "\n" + "|-".repeat(60_000), true),
                Arguments.of("one long word", "a".repeat(250_000), false),
                Arguments.of("entities", "&amp;".repeat(50_000), true),
                Arguments.of("escapes", "\\*".repeat(100_000), true),
                Arguments.of("blank lines", "a\n\n".repeat(80_000), false),
                Arguments.of("rows of a table", "|a|b|\n|-|-|\n" + "|1|2|\n".repeat(30_000), true),
                Arguments.of("open comments", "a <!-- ".repeat(30_000), true),
                Arguments.of("lines of an item", "- a\n".repeat(50_000), true),
                Arguments.of("closing brackets", "]".repeat(200_000), true),
                Arguments.of("closed brackets", "[]".repeat(100_000), true),
                Arguments.of("underscores", "_".repeat(200_000) + "a", true),
                Arguments.of("too long", "a ".repeat(140_000), true));
    }

    private static String lists(int deep) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < deep; i++) {
            text.append("  ".repeat(i)).append("- x\n");
        }
        return text.toString();
    }

    private static String backticks(int longest) {
        StringBuilder text = new StringBuilder();
        for (int i = 1; i <= longest; i++) {
            text.append("`".repeat(i)).append(" a ");
        }
        return text.toString();
    }

    private static String definitions(int count) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < count; i++) {
            text.append('[').append(i).append("]: a\n");
        }
        return text.toString();
    }

    private static List<String> links(Story story) {
        return story.sections().stream().flatMap(section -> Jsoup.parseBodyFragment(WrittenText.of(section.text())).select("a").stream())
                .map(link -> link.attr("href")).toList();
    }

    /** A letter of private use that an author writes by its number is a letter, not the mark of a figure. */
    @Test
    void a_letter_that_marks_figures_inside_the_program_cites_none() {
        assertThat(text("&#xE000;wash.volume&#xE001; and {mist.volume}")).containsExactly(new TextBlock.Paragraph(List.of(
                new Inline.Text("\uE000wash.volume\uE001 and "), new Inline.CitedFigure("mist.volume"))));
    }

    @Test
    void a_list_keeps_its_lines_apart_from_its_paragraphs() {
        TextBlock.Line inner = new TextBlock.Line(List.of(new Inline.Text("inner")));
        assertThat(text("- one\n  - inner\n- `two`  \n  three\n")).containsExactly(new TextBlock.ItemList(false, 1, List.of(
                List.of(new TextBlock.Line(List.of(new Inline.Text("one"))), TextBlock.ItemList.of(List.of(inner))),
                List.of(new TextBlock.Line(List.of(new Inline.Code("two"), new Inline.LineBreak(), new Inline.Text("\nthree")))))));
        assertThat(text("- one\n\n- two\n")).containsExactly(new TextBlock.ItemList(false, 1, List.of(
                List.of(TextBlock.Paragraph.of("one")), List.of(TextBlock.Paragraph.of("two")))));
    }

    /** Claims and private names are looked for in these words, so that stress inside a word must not hide it. */
    @Test
    void the_words_of_a_story_are_those_that_are_read() {
        assertThat(TextBlock.plain(text("A s*af*e **bath** of {wash.volume}, [see](a.html) `pH`.\n\n"
                + "- one\n- two\n\n> said\n\n| a | b |\n|---|---|\n| c | d |\n")))
                .isEqualTo("A safe bath of , see pH. one two said a b c d");
    }

    private static TextBlock.Cell cell(String words) {
        return new TextBlock.Cell(List.of(new Inline.Text(words)));
    }

    private List<TextBlock> text(String body) {
        return read(body).sections().get(0).text();
    }

    private Story read(String body) {
        TextFile file = new TextFile("case.md", body);
        return StoryReader.read(file.lines(), body, 0, messages);
    }
}
