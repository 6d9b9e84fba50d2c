package org.benchleaf.compose.part;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.model.Library;
import org.benchleaf.model.Phrases;
import org.benchleaf.model.Term;
import org.benchleaf.page.Paths;

/**
 * Every form of every glossary term, longest first, as one pattern.
 *
 * @param pattern finds any form as a whole word
 * @param ids term ids by lower-case form
 */
public record GlossaryTerms(Pattern pattern, Map<String, String> ids) {

    private static final Pattern NOTHING = Pattern.compile("(?!)");
    /** Made once for all pages: making the pattern takes longer than looking through a page for it. */
    private static final Map<Key, GlossaryTerms> MADE = Collections.synchronizedMap(new Newest());

    private record Key(List<Term> glossary, Phrases phrases) {
    }

    /** Those asked for last: a glossary that is edited while its pages are previewed comes in hundreds of states, the last of use. */
    private static final class Newest extends LinkedHashMap<Key, GlossaryTerms> {

        private static final long serialVersionUID = 1L;
        /** One in each language of a site. */
        private static final int MOST = 8;

        Newest() {
            super(2 * MOST, 0.75f, true);
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, GlossaryTerms> eldest) {
            return size() > MOST;
        }
    }

    /** The terms of a library's glossary, in the language of the library. */
    static GlossaryTerms of(Library library) {
        return MADE.computeIfAbsent(new Key(library.glossary(), library.phrases()), GlossaryTerms::made);
    }

    private static GlossaryTerms made(Key key) {
        Map<String, String> ids = new HashMap<>();
        for (Term term : key.glossary()) {
            Stream.concat(Stream.of(term.term()), term.also().stream())
                    .forEach(form -> ids.putIfAbsent(key.phrases().of(form).toLowerCase(Locale.ROOT), term.id()));
        }
        List<String> forms = new ArrayList<>(ids.keySet());
        forms.sort(Comparator.comparingInt(String::length).reversed().thenComparing(Comparator.naturalOrder()));
        if (forms.isEmpty()) {
            return new GlossaryTerms(NOTHING, ids);
        }
        // By their first letters, so that at most words only one of hundreds of forms is tried.
        Map<String, List<String>> byLetter = forms.stream().collect(Collectors.groupingBy(
                form -> form.substring(0, form.offsetByCodePoints(0, 1)), TreeMap::new, Collectors.toList()));
        String any = byLetter.entrySet().stream().map(letter -> Pattern.quote(letter.getKey()) + letter.getValue().stream()
                .map(form -> Pattern.quote(form.substring(letter.getKey().length()))).collect(Collectors.joining("|", "(?:", ")")))
                .collect(Collectors.joining("|"));
        return new GlossaryTerms(Pattern.compile("(?<![\\p{L}\\p{M}\\p{N}-])(?:" + any + ")(?![\\p{L}\\p{M}\\p{N}-])",
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE), ids);
    }

    /** The anchor of a term in the glossary. */
    public static String anchor(String id) {
        return "term-" + Paths.slug(id);
    }
}
