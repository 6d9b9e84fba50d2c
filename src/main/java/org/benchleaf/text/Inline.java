package org.benchleaf.text;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** A piece of running text: of a story as it was read, or of a page as it is to be written. */
public sealed interface Inline {

    /** The same words with nothing but their letters. */
    String plain();

    /** Asks a question whose answer differs by kind. */
    <R> R ask(Kinds<R> kinds);

    /** One method for each kind of piece. */
    interface Kinds<R> {
        R text(Text text);

        R emphasis(Emphasis emphasis);

        R strong(Strong strong);

        R code(Code code);

        R lineBreak(LineBreak lineBreak);

        R quotation(Quotation quotation);

        R hyperlink(Hyperlink hyperlink);

        R anchor(Anchor anchor);

        R citedFigure(CitedFigure figure);

        R workedNumber(WorkedNumber number);

        R markedFigure(MarkedFigure figure);

        R termLink(TermLink term);
    }

    /** The words of several pieces after each other. */
    static String plain(List<Inline> parts) {
        return parts.stream().map(Inline::plain).collect(Collectors.joining());
    }

    /** Letters as they are read. */
    record Text(String text) implements Inline {
        @Override
        public String plain() {
            return text;
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.text(this);
        }
    }

    /** Stressed words. */
    record Emphasis(List<Inline> parts) implements Inline {
        public Emphasis {
            parts = List.copyOf(parts);
        }

        @Override
        public String plain() {
            return Inline.plain(parts);
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.emphasis(this);
        }
    }

    /** Words of more weight than those around them. */
    record Strong(List<Inline> parts) implements Inline {
        public Strong {
            parts = List.copyOf(parts);
        }

        @Override
        public String plain() {
            return Inline.plain(parts);
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.strong(this);
        }
    }

    /** Letters that are typed or read by a program. */
    record Code(String text) implements Inline {
        @Override
        public String plain() {
            return text;
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.code(this);
        }
    }

    /** The end of a line inside a paragraph. */
    record LineBreak() implements Inline {
        @Override
        public String plain() {
            return "\n";
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.lineBreak(this);
        }
    }

    /** The words of somebody else; the marks of quotation are not among them. */
    record Quotation(String words) implements Inline {
        @Override
        public String plain() {
            return words;
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.quotation(this);
        }
    }

    /**
     * Words that lead somewhere.
     *
     * @param href an address fit for the page on which the words stand
     * @param title what is told of it besides; may be empty
     * @param language BCP 47 tag of the words, where it is not that of the text around them
     */
    record Hyperlink(String href, Optional<String> title, Optional<String> language, List<Inline> parts) implements Inline {
        public Hyperlink {
            parts = List.copyOf(parts);
        }

        /** Words of the language around them that lead to an address. */
        public static Hyperlink to(String href, String words) {
            return new Hyperlink(href, Optional.empty(), Optional.empty(), List.of(new Text(words)));
        }

        @Override
        public String plain() {
            return Inline.plain(parts);
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.hyperlink(this);
        }
    }

    /** Words to which a link can lead, by an id that is unique on the page. */
    record Anchor(String id, List<Inline> parts) implements Inline {
        public Anchor {
            parts = List.copyOf(parts);
        }

        @Override
        public String plain() {
            return Inline.plain(parts);
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.anchor(this);
        }
    }

    /** The place in a story where its author cites a figure by id; a page has its number there instead. */
    record CitedFigure(String figure) implements Inline {
        /** Nothing: the author wrote no word here. */
        @Override
        public String plain() {
            return "";
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.citedFigure(this);
        }
    }

    /** A worked-out number that leads to its working, by the anchor that lies inside it. */
    record WorkedNumber(String anchor, String text) implements Inline {
        @Override
        public String plain() {
            return text;
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.workedNumber(this);
        }
    }

    /** Words that tell a figure, marked with its id so that a script can tell it anew. */
    record MarkedFigure(String figure, List<Inline> parts) implements Inline {
        public MarkedFigure {
            parts = List.copyOf(parts);
        }

        @Override
        public String plain() {
            return Inline.plain(parts);
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.markedFigure(this);
        }
    }

    /** A term of the glossary that leads to its entry. */
    record TermLink(String href, String term) implements Inline {
        @Override
        public String plain() {
            return term;
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.termLink(this);
        }
    }
}
