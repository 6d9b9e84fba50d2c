package org.benchleaf.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.benchleaf.model.Inline;

/**
 * Running text of a page: words with links, numbers and stress among them.
 *
 * @param parts its pieces, in order; none if it says nothing
 */
public record Html(List<Inline> parts) {

    /** Text that says nothing. */
    static final Html NOTHING = new Html(List.of());

    public Html {
        parts = List.copyOf(parts);
    }

    /** Plain words. */
    public static Html ofText(String text) {
        return text.isEmpty() ? NOTHING : of(new Inline.Text(text));
    }

    /** A single piece. */
    static Html of(Inline part) {
        return new Html(List.of(part));
    }

    /** Several texts after each other, with the same words between each two. */
    static Html joined(String between, List<Html> texts) {
        List<Inline> all = new ArrayList<>();
        for (Html text : texts) {
            if (!all.isEmpty()) {
                all.add(new Inline.Text(between));
            }
            all.addAll(text.parts());
        }
        return new Html(all);
    }

    /** This text and another behind it. */
    Html then(Html next) {
        return new Html(Stream.concat(parts.stream(), next.parts().stream()).toList());
    }

    /** This text and plain words behind it. */
    Html then(String words) {
        return then(ofText(words));
    }

    /** This text and a piece behind it. */
    Html then(Inline part) {
        return then(of(part));
    }

    /** Whether nobody would read anything. */
    boolean isBlank() {
        return plain().isBlank();
    }

    /** The words with nothing but their letters. */
    public String plain() {
        return Inline.plain(parts);
    }
}
