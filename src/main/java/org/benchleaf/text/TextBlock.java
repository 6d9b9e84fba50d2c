package org.benchleaf.text;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A paragraph of running text, or what stands between paragraphs. */
public sealed interface TextBlock {

    /** The words, those of each part set apart by a blank. */
    String plain();

    /** Asks a question whose answer differs by kind. */
    <R> R ask(Kinds<R> kinds);

    /** One method for each kind of block. */
    interface Kinds<R> {
        R paragraph(Paragraph paragraph);

        R line(Line line);

        R subheading(Subheading subheading);

        R itemList(ItemList list);

        R blockQuote(BlockQuote quote);

        R codeBlock(CodeBlock code);

        R thematicBreak(ThematicBreak thematicBreak);

        R textTable(TextTable table);

        R formula(Formula formula);
    }

    /** The words of several blocks, set apart by blanks. */
    static String plain(List<TextBlock> blocks) {
        return joined(blocks.stream().map(TextBlock::plain));
    }

    private static String joined(Stream<String> texts) {
        return texts.filter(text -> !text.isEmpty()).collect(Collectors.joining(" "));
    }

    /** A paragraph. */
    record Paragraph(List<Inline> parts) implements TextBlock {
        public Paragraph {
            parts = List.copyOf(parts);
        }

        /** A paragraph of plain words. */
        public static Paragraph of(String words) {
            return new Paragraph(List.of(new Inline.Text(words)));
        }

        @Override
        public String plain() {
            return Inline.plain(parts);
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.paragraph(this);
        }
    }

    /** Words that are no paragraph of their own, as in a list without blank lines between its items. */
    record Line(List<Inline> parts) implements TextBlock {
        public Line {
            parts = List.copyOf(parts);
        }

        @Override
        public String plain() {
            return Inline.plain(parts);
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.line(this);
        }
    }

    /** A heading below those of the sections; levels are counted from 1 for that of the page. */
    record Subheading(int level, List<Inline> parts) implements TextBlock {
        public Subheading {
            parts = List.copyOf(parts);
        }

        @Override
        public String plain() {
            return Inline.plain(parts);
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.subheading(this);
        }
    }

    /**
     * Items below each other.
     *
     * @param numbered whether each has a number
     * @param first the number of the first
     * @param items each of one or more blocks
     */
    record ItemList(boolean numbered, int first, List<List<TextBlock>> items) implements TextBlock {
        public ItemList {
            items = items.stream().map(List::copyOf).toList();
        }

        /** A list without numbers whose items are single lines. */
        public static ItemList of(List<Line> lines) {
            return new ItemList(false, 1, lines.stream().map(line -> List.<TextBlock>of(line)).toList());
        }

        @Override
        public String plain() {
            return joined(items.stream().map(TextBlock::plain));
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.itemList(this);
        }
    }

    /** What somebody else said, set apart. */
    record BlockQuote(List<TextBlock> blocks) implements TextBlock {
        public BlockQuote {
            blocks = List.copyOf(blocks);
        }

        @Override
        public String plain() {
            return TextBlock.plain(blocks);
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.blockQuote(this);
        }
    }

    /** Lines that are typed or read by a program; blanks and ends of lines count. */
    record CodeBlock(String lines) implements TextBlock {
        @Override
        public String plain() {
            return lines;
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.codeBlock(this);
        }
    }

    /** A turn of the story without a heading. */
    record ThematicBreak() implements TextBlock {
        @Override
        public String plain() {
            return "";
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.thematicBreak(this);
        }
    }

    /**
     * A table.
     *
     * @param head rows of cells that name what stands below them; may be empty
     * @param body the other rows; may be empty
     */
    record TextTable(List<List<Cell>> head, List<List<Cell>> body) implements TextBlock {
        public TextTable {
            head = head.stream().map(List::copyOf).toList();
            body = body.stream().map(List::copyOf).toList();
        }

        @Override
        public String plain() {
            return joined(Stream.concat(head.stream(), body.stream()).flatMap(List::stream).map(cell -> Inline.plain(cell.parts())));
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.textTable(this);
        }
    }

    /** One cell of a table. */
    record Cell(List<Inline> parts) {
        public Cell {
            parts = List.copyOf(parts);
        }
    }

    /**
     * A formula from the program's own tables.
     *
     * @param mathml presentation MathML, without the outer {@code math} element
     * @param label what is told of it to those who do not see it
     */
    record Formula(String mathml, String label) implements TextBlock {
        @Override
        public String plain() {
            return label;
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.formula(this);
        }
    }
}
