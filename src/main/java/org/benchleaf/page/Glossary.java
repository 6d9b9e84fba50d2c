package org.benchleaf.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.text.RichText;

/**
 * Terms and what they mean.
 *
 * @param letters with which terms begin, each a link to the first of them
 * @param entries in alphabetical order
 * @param words fixed labels
 */
public record Glossary(List<Link> letters, List<Entry> entries, Map<String, String> words) implements Block {

    public Glossary {
        letters = List.copyOf(letters);
        entries = List.copyOf(entries);
    }

    /** One term: other forms, meaning in plain words, more for a trainee, other terms, a source, a drawing. */
    public record Entry(String id, String term, String also, RichText plain, Optional<RichText> more, List<Link> see,
            Optional<Citation> source, Optional<Chart.Drawing> drawing) {
        public Entry {
            see = List.copyOf(see);
        }
    }
}
