package org.benchleaf.compose.cases;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A book made of finished pages.
 *
 * @param title of the whole
 * @param creator who made it
 * @param language BCP 47 tag
 * @param direction {@code ltr} or {@code rtl}
 * @param identifier a text that no other book has, the same for each edition of this one
 * @param modified the day of this edition
 * @param rights licence in words; empty if its parts differ
 * @param words fixed words of a book, by key
 * @param parts in the order of reading
 * @param crate describes a folder of the same pages; empty if there is none
 */
public record Book(String title, String creator, String language, String direction, String identifier,
        LocalDate modified, String rights, Map<String, String> words, List<Part> parts,
        Optional<Crate> crate) {

    public Book {
        words = Map.copyOf(words);
        parts = List.copyOf(parts);
    }

    /**
     * Some pages under a title.
     *
     * @param pages their paths from the site's root
     */
    public record Part(String title, List<String> pages) {

        public Part {
            pages = List.copyOf(pages);
        }
    }
}
