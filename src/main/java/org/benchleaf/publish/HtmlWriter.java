package org.benchleaf.publish;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.page.Hazard;
import org.benchleaf.text.Inline;
import org.benchleaf.text.TextBlock;
import org.benchleaf.words.UnitSpaces;

/** Writes running text as HTML: the only place where a tree of text becomes elements, and where its letters are escaped. */
final class HtmlWriter implements Inline.Kinds<StringBuilder>, TextBlock.Kinds<StringBuilder> {

    private static final Pattern LABEL = Pattern.compile(" aria-label=\"[^\"]*+\"");

    private final StringBuilder html = new StringBuilder();

    private HtmlWriter() {
    }

    /** Pieces of running text as HTML that may stand in a paragraph. */
    static String of(List<Inline> parts) {
        return new HtmlWriter().all(parts).toString();
    }

    /** A block of running text as an HTML element, or as bare words where it is a line. */
    static String of(TextBlock block) {
        return block.ask(new HtmlWriter()).toString();
    }

    /** A drawing named for readers who do not see it, in the place of the name that its table has. */
    static String of(Hazard.Drawing drawing) {
        HtmlWriter label = new HtmlWriter();
        label.attribute("aria-label", drawing.label());
        return LABEL.matcher(drawing.svg()).replaceFirst(Matcher.quoteReplacement(label.html.toString()));
    }

    private StringBuilder all(List<Inline> parts) {
        parts.forEach(part -> part.ask(this));
        return html;
    }

    private StringBuilder element(String name, List<Inline> parts) {
        html.append('<').append(name).append('>');
        return all(parts).append("</").append(name).append('>');
    }

    /** Words to be read, each unit set to its number. */
    private StringBuilder words(String text) {
        return escaped(UnitSpaces.in(text));
    }

    /** In an element's text the quotation marks need no escape; browsers read the same page, and it is shorter. */
    private StringBuilder escaped(String text) {
        return escaped(text, "\"");
    }

    private StringBuilder escaped(String text, String quote) {
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            switch (letter) {
                case '&' -> html.append("&amp;");
                case '<' -> html.append("&lt;");
                case '>' -> html.append("&gt;");
                case '"' -> html.append(quote);
                default -> html.append(letter);
            }
        }
        return html;
    }

    private StringBuilder attribute(String name, String value) {
        html.append(' ').append(name).append("=\"");
        return escaped(value, "&quot;").append('"');
    }

    @Override
    public StringBuilder text(Inline.Text text) {
        return words(text.text());
    }

    @Override
    public StringBuilder emphasis(Inline.Emphasis emphasis) {
        return element("em", emphasis.parts());
    }

    @Override
    public StringBuilder strong(Inline.Strong strong) {
        return element("strong", strong.parts());
    }

    @Override
    public StringBuilder code(Inline.Code code) {
        html.append("<code>");
        return escaped(code.text()).append("</code>");
    }

    @Override
    public StringBuilder lineBreak(Inline.LineBreak lineBreak) {
        return html.append("<br>");
    }

    @Override
    public StringBuilder quotation(Inline.Quotation quotation) {
        html.append("<q>");
        return words(quotation.words()).append("</q>");
    }

    @Override
    public StringBuilder hyperlink(Inline.Hyperlink hyperlink) {
        html.append("<a");
        attribute("href", hyperlink.href());
        hyperlink.title().ifPresent(title -> attribute("title", title));
        hyperlink.language().ifPresent(language -> attribute("lang", language));
        html.append('>');
        return all(hyperlink.parts()).append("</a>");
    }

    @Override
    public StringBuilder anchor(Inline.Anchor anchor) {
        html.append("<span");
        attribute("id", anchor.id()).append('>');
        return all(anchor.parts()).append("</span>");
    }

    /** A page has numbers in the place of what its story cites. */
    @Override
    public StringBuilder citedFigure(Inline.CitedFigure figure) {
        throw new IllegalStateException("the number of " + figure.figure() + " was not put into the text");
    }

    @Override
    public StringBuilder workedNumber(Inline.WorkedNumber number) {
        html.append("<a class=\"number\"");
        attribute("href", "#" + number.anchor()).append("><bdi>");
        return words(number.text()).append("</bdi></a>");
    }

    @Override
    public StringBuilder markedFigure(Inline.MarkedFigure figure) {
        html.append("<span");
        attribute("data-figure", figure.figure()).append('>');
        return all(figure.parts()).append("</span>");
    }

    @Override
    public StringBuilder termLink(Inline.TermLink term) {
        html.append("<a class=\"term\"");
        attribute("href", term.href()).append('>');
        return words(term.term()).append("</a>");
    }

    @Override
    public StringBuilder paragraph(TextBlock.Paragraph paragraph) {
        return element("p", paragraph.parts());
    }

    @Override
    public StringBuilder line(TextBlock.Line line) {
        return all(line.parts());
    }

    @Override
    public StringBuilder subheading(TextBlock.Subheading subheading) {
        return element("h" + subheading.level(), subheading.parts());
    }

    @Override
    public StringBuilder itemList(TextBlock.ItemList list) {
        html.append(list.numbered() ? "<ol" : "<ul");
        if (list.numbered() && list.first() != 1) {
            attribute("start", String.valueOf(list.first()));
        }
        html.append(">\n");
        list.items().forEach(this::item);
        return html.append(list.numbered() ? "</ol>" : "</ul>");
    }

    /** A line stands beside its bullet; every other block of an item has lines of its own. */
    private void item(List<TextBlock> blocks) {
        html.append("<li>");
        boolean first = true;
        for (TextBlock block : blocks) {
            if (!(first && block instanceof TextBlock.Line)) {
                html.append('\n');
            }
            block.ask(this);
            first = false;
        }
        html.append(blocks.isEmpty() || blocks.size() == 1 && blocks.get(0) instanceof TextBlock.Line ? "</li>\n" : "\n</li>\n");
    }

    @Override
    public StringBuilder blockQuote(TextBlock.BlockQuote quote) {
        html.append("<blockquote>\n");
        quote.blocks().forEach(block -> block.ask(this).append('\n'));
        return html.append("</blockquote>");
    }

    @Override
    public StringBuilder codeBlock(TextBlock.CodeBlock code) {
        html.append("<pre><code>");
        return escaped(code.lines()).append("</code></pre>");
    }

    @Override
    public StringBuilder thematicBreak(TextBlock.ThematicBreak thematicBreak) {
        return html.append("<hr>");
    }

    @Override
    public StringBuilder textTable(TextBlock.TextTable table) {
        html.append("<table>\n");
        rows("thead", "th", table.head());
        rows("tbody", "td", table.body());
        return html.append("</table>");
    }

    private void rows(String group, String cell, List<List<TextBlock.Cell>> rows) {
        if (rows.isEmpty()) {
            return;
        }
        html.append('<').append(group).append(">\n");
        for (List<TextBlock.Cell> row : rows) {
            html.append("<tr>");
            row.forEach(one -> element(cell, one.parts()));
            html.append("</tr>\n");
        }
        html.append("</").append(group).append(">\n");
    }

    /** A wide formula scrolls by itself, so it takes the keyboard's focus and has a name. */
    @Override
    public StringBuilder formula(TextBlock.Formula formula) {
        html.append("<div class=\"formula\" role=\"region\" tabindex=\"0\"");
        attribute("aria-label", formula.label()).append("><math display=\"block\">");
        return html.append(formula.mathml()).append("</math></div>");
    }
}
