package org.benchleaf.check;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.benchleaf.message.Place;
import org.benchleaf.model.CaseTexts;
import org.benchleaf.read.LibraryDraft;
import org.benchleaf.read.Node;
import org.benchleaf.read.StudioWordsFile;
import org.benchleaf.read.TranslationFile;

/**
 * How far a studio's own words have come in another language.
 *
 * @param words of texts that the studio says, each made from the text as it is now
 * @param outdated texts whose words were made from another wording, with the places of their keys
 * @param unsaid texts that have words but that no file of the studio's says, with the places of their keys
 * @param of how many texts the studio says
 * @param place of the file
 */
public record StudioWords(Map<String, String> words, Map<String, Place> outdated, Map<String, Place> unsaid, int of, Place place) {

    public StudioWords {
        words = Collections.unmodifiableMap(new LinkedHashMap<>(words));
        outdated = Collections.unmodifiableMap(new LinkedHashMap<>(outdated));
        unsaid = Collections.unmodifiableMap(new LinkedHashMap<>(unsaid));
    }

    /**
     * Compares a file of words with what the studio says.
     *
     * @param texts of the studio by their addresses ({@link org.benchleaf.model.LibraryTexts#byAddress})
     */
    public static StudioWords of(LibraryDraft.YamlPart file, Map<String, String> texts) {
        Map<String, String> words = new LinkedHashMap<>();
        Map<String, Place> outdated = new LinkedHashMap<>();
        Map<String, Place> unsaid = new LinkedHashMap<>();
        Set<String> said = new LinkedHashSet<>(texts.values());
        Set<String> old = outdated(TranslationFile.marks(file.root()), texts);
        StudioWordsFile.words(file.root()).forEach((text, entry) -> {
            String told = ((Node.Scalar) entry.value()).text().strip();
            if (told.isEmpty()) {
                return;
            }
            if (!said.contains(text)) {
                unsaid.put(text, entry.keyPlace());
            } else if (old.contains(text)) {
                outdated.put(text, entry.keyPlace());
            } else {
                words.put(text, told);
            }
        });
        return new StudioWords(words, outdated, unsaid, said.size(), file.place());
    }

    /** Texts with marks, of which none is of the wording that they have now. */
    private static Set<String> outdated(Map<String, String> marks, Map<String, String> texts) {
        Set<String> marked = new LinkedHashSet<>();
        Set<String> upToDate = new LinkedHashSet<>();
        texts.forEach((address, text) -> {
            if (marks.containsKey(address)) {
                marked.add(text);
                if (marks.get(address).equals(CaseTexts.mark(text))) {
                    upToDate.add(text);
                }
            }
        });
        marked.removeAll(upToDate);
        return marked;
    }
}
