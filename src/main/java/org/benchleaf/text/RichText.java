package org.benchleaf.text;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Running text of a page: words with links, numbers and stress among them.
 *
 * @param parts its pieces, in order; none if it says nothing
 */
public record RichText(List<Inline> parts) {

    /** Text that says nothing. */
    public static final RichText NOTHING = new RichText(List.of());

    public RichText {
        parts = List.copyOf(parts);
    }

    /** Plain words. */
    public static RichText of(String text) {
        return text.isEmpty() ? NOTHING : of(new Inline.Text(text));
    }

    /** A single piece. */
    public static RichText of(Inline part) {
        return new RichText(List.of(part));
    }

    /** Several texts after each other, with the same words between each two. */
    public static RichText joined(String between, List<RichText> texts) {
        List<Inline> all = new ArrayList<>();
        for (RichText text : texts) {
            if (!all.isEmpty()) {
                all.add(new Inline.Text(between));
            }
            all.addAll(text.parts());
        }
        return new RichText(all);
    }

    /** This text and another behind it. */
    public RichText then(RichText next) {
        return new RichText(Stream.concat(parts.stream(), next.parts().stream()).toList());
    }

    /** This text and plain words behind it. */
    public RichText then(String words) {
        return then(of(words));
    }

    /** This text and a piece behind it. */
    public RichText then(Inline part) {
        return then(of(part));
    }

    /** Whether nobody would read anything. */
    public boolean isBlank() {
        return plain().isBlank();
    }

    /** The words with nothing but their letters. */
    public String plain() {
        return Inline.plain(parts);
    }

    /** The words alone, so that a fingerprint of what is told changes only with them. */
    @Override
    public String toString() {
        return plain();
    }
}
