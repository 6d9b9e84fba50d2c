package org.benchleaf.check;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.message.Nearest;
import org.benchleaf.model.Library;
import org.benchleaf.model.Material;
import org.benchleaf.model.Substance;

/**
 * Finds the materials of a studio by what else they are called: what the label says, the substance and its other names, and all of these
 * in the languages that the studio has words in. What the studio does not have is looked for in the table of substances.
 */
final class OtherNames {

    /** Of more than these it cannot be told which is meant. */
    private static final int MOST = 3;

    private final Library library;
    private final Map<String, Set<String>> materials = new TreeMap<>();
    private final Map<String, Set<String>> substances = new TreeMap<>();

    OtherNames(Library library) {
        this.library = library;
        library.reference().substances().values().forEach(row -> names(row).forEach(name -> add(substances, name, row.key())));
        library.materials().values().forEach(material -> names(material).forEach(name -> add(materials, name, material.id())));
    }

    /** What someone means who writes exactly such a name. */
    Optional<String> called(String written) {
        return Optional.ofNullable(materials.get(Nearest.plain(written))).map(OtherNames::question);
    }

    /** What someone may mean who writes nearly such a name. */
    Optional<String> near(String written) {
        return Nearest.to(Nearest.plain(written), materials.keySet()).map(materials::get).map(OtherNames::question)
                .or(() -> inTheTable(Nearest.plain(written)));
    }

    private Optional<String> inTheTable(String written) {
        return Optional.ofNullable(substances.get(written)).or(() -> Nearest.to(written, substances.keySet()).map(substances::get))
                .map(keys -> keys.iterator().next()).map(key -> "The studio has no material of that name; the table of substances has '"
                        + key + "'. To use it, enter the bottle in a file of content/materials, with 'substance: " + key + "'.");
    }

    private static String question(Set<String> ids) {
        return "Did you mean " + ids.stream().limit(MOST).map(id -> "'" + id + "'").collect(Collectors.joining(" or ")) + "?";
    }

    private Stream<String> names(Material material) {
        return Stream.of(Stream.of(material.name(), material.name().replaceFirst(",.*", "")), material.substance().stream(),
                material.substance().map(library.reference().substances()::get).stream().flatMap(this::names))
                .flatMap(one -> one).flatMap(this::inEachLanguage);
    }

    private Stream<String> names(Substance row) {
        return Stream.concat(Stream.of(row.key(), row.name()), row.synonyms().stream()).flatMap(this::inEachLanguage);
    }

    private Stream<String> inEachLanguage(String name) {
        Collection<String> all = new LinkedHashSet<>(List.of(name));
        library.translations().values().forEach(phrases -> all.add(phrases.of(name)));
        return all.stream();
    }

    private static void add(Map<String, Set<String>> names, String name, String id) {
        names.computeIfAbsent(Nearest.plain(name.strip()), any -> new TreeSet<>()).add(id);
    }
}
