package org.benchleaf.compose.part;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.model.Library;
import org.benchleaf.model.Source;
import org.benchleaf.page.Citation;
import org.benchleaf.page.Paths;

/**
 * The sources of a site: publications by their numbers, one numbering for all pages in the order of their keys; what is none
 * by its name.
 */
public final class Sources {

    private final Library library;
    private final Map<String, Integer> numbers = new LinkedHashMap<>();
    /** Authors and years that more than one source has. */
    private final Set<String> shared = new HashSet<>();

    private Sources(Library library) {
        this.library = library;
        keys(true).forEach(key -> numbers.put(key, numbers.size() + 1));
        Set<String> seen = new HashSet<>();
        library.sources().values().stream().map(Sources::authorAndYear).filter(name -> !seen.add(name)).forEach(shared::add);
    }

    private List<String> keys(boolean published) {
        return library.sources().values().stream().filter(source -> source.published() == published).map(Source::key).sorted().toList();
    }

    /** The numbering of a library's sources. */
    public static Sources of(Library library) {
        return new Sources(library);
    }

    /** All publications in the order of their numbers. */
    public List<Source> publications() {
        return numbers.keySet().stream().map(library.sources()::get).toList();
    }

    /** What things rest on that is no publication. */
    public List<Source> others() {
        return keys(false).stream().map(library.sources()::get).toList();
    }

    /** A source as it is cited, if the library has it. */
    Optional<Citation> cite(String key, String listHref) {
        return Optional.ofNullable(library.sources().get(key))
                .map(source -> new Citation(Optional.ofNullable(numbers.get(key)), name(source), listHref + "#" + anchor(key)));
    }

    /** Author and year; with the title where others have the same. */
    private String name(Source source) {
        String name = authorAndYear(source);
        return shared.contains(name) ? name + ": " + source.title() : name;
    }

    /** A source in full: who, when, what and where. */
    String reference(String key) {
        return reference(library.sources().get(key));
    }

    static String reference(Source source) {
        return authorAndYear(source) + ": " + source.title() + (source.where().isBlank() ? "" : ". " + source.where());
    }

    /** The anchor of a source in the list. */
    public static String anchor(String key) {
        return "source-" + Paths.slug(key);
    }

    private static String authorAndYear(Source source) {
        return source.year().isBlank() ? source.author() : source.author() + " " + source.year();
    }
}
