package org.benchleaf.compose.site;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.GlossaryTerms;
import org.benchleaf.compose.part.SearchEntry;
import org.benchleaf.compose.part.Stems;
import org.benchleaf.compose.part.WordList;
import org.benchleaf.json.JsonText;
import org.benchleaf.model.Library;
import org.benchleaf.model.LibraryTexts;
import org.benchleaf.model.Phrases;
import org.benchleaf.model.Term;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.Paths;
import org.benchleaf.words.Words;

/**
 * Makes the index of the search: a line for each page and each term of the glossary, as scripts, for no page may fetch. What is
 * too long for one file goes into further ones, which the page loads when it needs them.
 */
public final class SearchIndex {

    /** A file of the index on a slow line takes no longer than a picture (common practice, no source). */
    private static final int LONGEST_FILE = 60_000;
    private static final String BETWEEN = ",\n";
    /**
     * How far up a kind of page stands where the words fit as well, in tenths; other kinds stand at ten. Pages for the public stand
     * before those of a class, and what only authors of files read comes last.
     */
    private static final Map<String, Integer> RANKS = Map.ofEntries(Map.entry("home", 17), Map.entry("case-study", 16),
            Map.entry("term", 15), Map.entry("material", 13), Map.entry("step-sheet", 11), Map.entry("substances", 9),
            Map.entry("browse", 7), Map.entry("checked", 7), Map.entry("sources", 7), Map.entry("methods", 6), Map.entry("sums", 6),
            Map.entry("rules", 5), Map.entry("class-preparation", 5), Map.entry("class-stations", 5), Map.entry("class-orders", 5),
            Map.entry("class-assessment", 5), Map.entry("class-record", 5), Map.entry("writing", 3), Map.entry("writing-file", 3));
    private static final int USUAL_RANK = 10;
    /** Pages that only lead to others, labels that say what another page says, and the search itself. */
    private static final Set<String> NOT_FOUND = Set.of("search", "glossary", "class-labels");

    /** What the lines of one kind of page share. */
    private record LineKind(String label, int rank) {

        static LineKind of(SearchEntry entry) {
            return new LineKind(entry.label(), RANKS.getOrDefault(entry.kind(), USUAL_RANK));
        }
    }

    private SearchIndex() {
    }

    /**
     * The files of the index, the first of which every search loads.
     *
     * @param cards the cases, with the entries of their pages
     * @param pages what was read from the site's own pages, with their titles
     */
    public static List<DataFile> files(Library library, List<CaseCard> cards, List<SearchEntry> pages) {
        return written(library, "", cards.stream().flatMap(card -> card.found().stream()).toList(), pages);
    }

    /**
     * The files of the index of the pages in another language.
     *
     * @param language BCP 47 tag
     * @param pages what was read from the site's own pages in it, with their titles
     */
    public static List<DataFile> files(Library library, String language, List<CaseCard> cards, List<SearchEntry> pages) {
        return written(LibraryTexts.in(library.translations().get(language), library), language, cards.stream()
                .flatMap(card -> card.translated().stream()).filter(there -> there.language().equals(language))
                .flatMap(there -> there.found().stream()).toList(), pages);
    }

    private static List<DataFile> written(Library library, String language, List<SearchEntry> ofCases, List<SearchEntry> pages) {
        List<SearchEntry> entries = new ArrayList<>();
        pages.stream().filter(entry -> !NOT_FOUND.contains(entry.kind())).forEach(entries::add);
        library.glossary().forEach(term -> entries.add(ofTerm(term, library, language)));
        SharedWords shared = SharedWords.of(entries);
        ofCases.stream().filter(entry -> !NOT_FOUND.contains(entry.kind())).forEach(entries::add);
        List<LineKind> kinds = entries.stream().map(LineKind::of).distinct().toList();
        List<List<String>> parts = parts(entries.stream().map(entry -> line(entry, kinds, shared)).toList(),
                bytes(head(entries.size(), kinds, shared)));
        List<DataFile> files = new ArrayList<>();
        for (int part = 1; part <= parts.size(); part++) {
            files.add(new DataFile(Paths.searchIndex(language, part), (part == 1 ? head(parts.size(), kinds, shared) : "")
                    + script(parts.get(part - 1))));
        }
        return files;
    }

    private static String head(int files, List<LineKind> kinds, SharedWords shared) {
        return "window.BENCHLEAF_INDEX_FILES = " + files + ";\nwindow.BENCHLEAF_KINDS = " + JsonText.script(kinds.stream().map(kind ->
                JsonText.object("n", kind.label(), "r", kind.rank())).toList())
                + ";\nwindow.BENCHLEAF_WORDS = " + JsonText.script(shared.packed()) + ";\n";
    }

    private static List<List<String>> parts(List<String> lines, int head) {
        List<List<String>> parts = new ArrayList<>(List.of(new ArrayList<>()));
        int frame = bytes(script(List.of()));
        int length = head + frame;
        for (String line : lines) {
            int added = bytes(line + BETWEEN);
            if (!parts.get(parts.size() - 1).isEmpty() && length + added > LONGEST_FILE) {
                parts.add(new ArrayList<>());
                length = frame;
            }
            parts.get(parts.size() - 1).add(line);
            length += added;
        }
        return parts;
    }

    private static int bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8).length;
    }

    private static String script(List<String> lines) {
        return "window.BENCHLEAF_INDEX = (window.BENCHLEAF_INDEX || []).concat([\n" + String.join(BETWEEN, lines) + "\n]);\n";
    }

    /** The words of its explanation are found in the explanation itself, which the line holds. */
    private static SearchEntry ofTerm(Term term, Library library, String folder) {
        String language = folder.isEmpty() ? library.studio().language() : folder;
        Stems stems = Stems.in(language);
        Phrases phrases = library.phrases();
        List<String> strong = Stream.concat(Stream.of(term.term()), term.also().stream()).map(phrases::of)
                .flatMap(word -> stems.of(word).stream()).toList();
        String path = Paths.GLOSSARY + "#" + GlossaryTerms.anchor(term.id());
        return new SearchEntry(folder.isEmpty() ? path : folder + "/" + path, "term", phrases.of(term.term()),
                Words.in(language).say("search.kind-term"), phrases.of(term.plain()), WordList.packed(strong), "");
    }

    private static String line(SearchEntry entry, List<LineKind> kinds, SharedWords shared) {
        return JsonText.script(JsonText.object("h", entry.path(), "t", entry.title(), "k", kinds.indexOf(LineKind.of(entry)),
                "a", given(entry.about()), "s", given(shared.placesIn(entry.strong())),
                "w", given(shared.placesIn(entry.weak())), "x", given(shared.othersIn(entry.strong())),
                "y", given(shared.othersIn(entry.weak()))));
    }

    private static Optional<String> given(String text) {
        return Optional.of(text).filter(some -> !some.isEmpty());
    }
}
