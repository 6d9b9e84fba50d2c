package org.benchleaf.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.text.Inline;
import org.benchleaf.text.TextBlock;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;

/** Makes the tree of a story's text from what {@link CleanHtml} has let through. */
final class StoryTree {

    /** Stands where a figure is cited while Markdown is read: this letter, the figure's id, {@link #FIGURE_END}. */
    static final char FIGURE_START = '\uE000';

    /** Ends the id of a cited figure. */
    static final char FIGURE_END = '\uE001';

    private static final Pattern MARK = Pattern.compile(FIGURE_START + "([^" + FIGURE_START + FIGURE_END + "]*+)" + FIGURE_END);
    private static final Set<String> BLOCKS = Set.of("p", "h1", "h2", "h3", "h4", "h5", "h6", "ul", "ol", "blockquote", "pre",
            "hr", "table");
    private static final int MOST_DIGITS = 9;

    private final Set<String> cited;

    /**
     * For the text of a story.
     *
     * @param cited ids of the figures that its author cites; a mark around anything else is text
     */
    StoryTree(Set<String> cited) {
        this.cited = Set.copyOf(cited);
    }

    /** The blocks that clean nodes make; words outside any element are a line. */
    List<TextBlock> blocks(List<Node> nodes) {
        List<TextBlock> blocks = new ArrayList<>();
        List<Node> line = new ArrayList<>();
        for (Node node : nodes) {
            if (node instanceof Element element && BLOCKS.contains(element.normalName())) {
                endLine(line, blocks);
                blocks.add(block(element));
            } else {
                line.add(node);
            }
        }
        endLine(line, blocks);
        return blocks;
    }

    private void endLine(List<Node> line, List<TextBlock> blocks) {
        if (line.stream().anyMatch(node -> !(node instanceof TextNode text && text.isBlank()))) {
            blocks.add(new TextBlock.Line(withoutEnds(inlines(line))));
        }
        line.clear();
    }

    /** The ends of lines around a block belong to the way in which HTML is written. */
    private static List<Inline> withoutEnds(List<Inline> parts) {
        List<Inline> kept = new ArrayList<>(parts);
        int last = kept.size() - 1;
        if (kept.get(0) instanceof Inline.Text text) {
            kept.set(0, new Inline.Text(text.text().stripLeading()));
        }
        if (kept.get(last) instanceof Inline.Text text) {
            kept.set(last, new Inline.Text(text.text().stripTrailing()));
        }
        return kept;
    }

    private TextBlock block(Element element) {
        return switch (element.normalName()) {
            case "p" -> new TextBlock.Paragraph(inlines(element.childNodes()));
            case "ul" -> new TextBlock.ItemList(false, 1, items(element));
            case "ol" -> new TextBlock.ItemList(true, first(element.attr("start")), items(element));
            case "blockquote" -> new TextBlock.BlockQuote(blocks(element.childNodes()));
            case "pre" -> new TextBlock.CodeBlock(element.wholeText());
            case "hr" -> new TextBlock.ThematicBreak();
            case "table" -> new TextBlock.TextTable(rows(element, "thead"), rows(element, "tbody"));
            default -> new TextBlock.Subheading(element.normalName().charAt(1) - '0', inlines(element.childNodes()));
        };
    }

    private List<List<TextBlock>> items(Element list) {
        return list.children().stream().map(item -> blocks(item.childNodes())).toList();
    }

    /** The number of the first item, of at most nine digits as CommonMark has it. */
    private static int first(String start) {
        return start.matches("\\d{1," + MOST_DIGITS + "}") ? Integer.parseInt(start) : 1;
    }

    private List<List<TextBlock.Cell>> rows(Element table, String group) {
        return table.children().stream().filter(part -> part.normalName().equals(group)).flatMap(part -> part.children().stream())
                .map(row -> row.children().stream().map(cell -> new TextBlock.Cell(inlines(cell.childNodes()))).toList()).toList();
    }

    private List<Inline> inlines(List<Node> nodes) {
        List<Inline> parts = new ArrayList<>();
        for (Node node : nodes) {
            if (node instanceof TextNode text) {
                text(text.getWholeText(), parts);
            } else if (node instanceof Element element) {
                inline(element, parts);
            }
        }
        return parts;
    }

    private void inline(Element element, List<Inline> parts) {
        switch (element.normalName()) {
            case "em" -> parts.add(new Inline.Emphasis(inlines(element.childNodes())));
            case "strong" -> parts.add(new Inline.Strong(inlines(element.childNodes())));
            case "code" -> parts.add(new Inline.Code(element.wholeText()));
            case "br" -> parts.add(new Inline.LineBreak());
            case "a" -> parts.add(new Inline.Hyperlink(element.attr("href"), Optional.of(element.attr("title"))
                    .filter(title -> element.hasAttr("title")), Optional.empty(), inlines(element.childNodes())));
            // A block inside running text, which Markdown does not make, is no more than its words.
            default -> parts.addAll(inlines(element.childNodes()));
        }
    }

    private void text(String text, List<Inline> parts) {
        Matcher mark = MARK.matcher(text);
        int from = 0;
        while (mark.find()) {
            if (cited.contains(mark.group(1))) {
                words(text.substring(from, mark.start()), parts);
                parts.add(new Inline.CitedFigure(mark.group(1)));
                from = mark.end();
            }
        }
        words(text.substring(from), parts);
    }

    private static void words(String text, List<Inline> parts) {
        if (!text.isEmpty()) {
            parts.add(new Inline.Text(text));
        }
    }
}
