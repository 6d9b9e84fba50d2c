package org.benchleaf.text;

import java.util.List;

/** Makes a tree of text of another: each piece as it is, with what a subclass makes of its own kinds. */
public abstract class TextMapping implements Inline.Kinds<List<Inline>>, TextBlock.Kinds<TextBlock> {

    /** What becomes of pieces after each other. */
    public final List<Inline> all(List<Inline> parts) {
        return parts.stream().flatMap(part -> part.ask(this).stream()).toList();
    }

    @Override
    public List<Inline> text(Inline.Text text) {
        return List.of(text);
    }

    @Override
    public List<Inline> emphasis(Inline.Emphasis emphasis) {
        return List.of(new Inline.Emphasis(all(emphasis.parts())));
    }

    @Override
    public List<Inline> strong(Inline.Strong strong) {
        return List.of(new Inline.Strong(all(strong.parts())));
    }

    @Override
    public List<Inline> code(Inline.Code code) {
        return List.of(code);
    }

    @Override
    public List<Inline> lineBreak(Inline.LineBreak lineBreak) {
        return List.of(lineBreak);
    }

    @Override
    public List<Inline> quotation(Inline.Quotation quotation) {
        return List.of(quotation);
    }

    @Override
    public List<Inline> hyperlink(Inline.Hyperlink hyperlink) {
        return List.of(new Inline.Hyperlink(hyperlink.href(), hyperlink.title(), hyperlink.language(), all(hyperlink.parts())));
    }

    @Override
    public List<Inline> anchor(Inline.Anchor anchor) {
        return List.of(new Inline.Anchor(anchor.id(), all(anchor.parts())));
    }

    @Override
    public List<Inline> citedFigure(Inline.CitedFigure figure) {
        return List.of(figure);
    }

    @Override
    public List<Inline> workedNumber(Inline.WorkedNumber number) {
        return List.of(number);
    }

    @Override
    public List<Inline> markedFigure(Inline.MarkedFigure figure) {
        return List.of(new Inline.MarkedFigure(figure.figure(), all(figure.parts())));
    }

    @Override
    public List<Inline> termLink(Inline.TermLink term) {
        return List.of(term);
    }

    @Override
    public TextBlock paragraph(TextBlock.Paragraph paragraph) {
        return new TextBlock.Paragraph(all(paragraph.parts()));
    }

    @Override
    public TextBlock line(TextBlock.Line line) {
        return new TextBlock.Line(all(line.parts()));
    }

    @Override
    public TextBlock subheading(TextBlock.Subheading subheading) {
        return new TextBlock.Subheading(subheading.level(), all(subheading.parts()));
    }

    @Override
    public TextBlock itemList(TextBlock.ItemList list) {
        return new TextBlock.ItemList(list.numbered(), list.first(), list.items().stream().map(this::blocks).toList());
    }

    @Override
    public TextBlock blockQuote(TextBlock.BlockQuote quote) {
        return new TextBlock.BlockQuote(blocks(quote.blocks()));
    }

    private List<TextBlock> blocks(List<TextBlock> blocks) {
        return blocks.stream().map(block -> block.ask(this)).toList();
    }

    @Override
    public TextBlock codeBlock(TextBlock.CodeBlock code) {
        return code;
    }

    @Override
    public TextBlock thematicBreak(TextBlock.ThematicBreak thematicBreak) {
        return thematicBreak;
    }

    @Override
    public TextBlock textTable(TextBlock.TextTable table) {
        return new TextBlock.TextTable(headRows(table.head()), rows(table.body()));
    }

    /** What becomes of the rows that name what stands below them. */
    protected List<List<TextBlock.Cell>> headRows(List<List<TextBlock.Cell>> rows) {
        return rows(rows);
    }

    private List<List<TextBlock.Cell>> rows(List<List<TextBlock.Cell>> rows) {
        return rows.stream().map(row -> row.stream().map(cell -> new TextBlock.Cell(all(cell.parts()))).toList()).toList();
    }

    @Override
    public TextBlock formula(TextBlock.Formula formula) {
        return formula;
    }
}
