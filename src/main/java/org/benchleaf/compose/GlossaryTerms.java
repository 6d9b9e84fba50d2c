package org.benchleaf.compose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.benchleaf.model.Library;
import org.benchleaf.model.Term;

/**
 * Every form of every glossary term, longest first, as one pattern.
 *
 * @param pattern finds any form as a whole word
 * @param ids term ids by lower-case form
 */
record GlossaryTerms(Pattern pattern, Map<String, String> ids) {

    private static final Pattern NOTHING = Pattern.compile("(?!)");

    static GlossaryTerms of(Library library) {
        Map<String, String> ids = new HashMap<>();
        for (Term term : library.glossary()) {
            ids.putIfAbsent(term.term().toLowerCase(Locale.ROOT), term.id());
            term.also().forEach(form -> ids.putIfAbsent(form.toLowerCase(Locale.ROOT), term.id()));
        }
        List<String> forms = new ArrayList<>(ids.keySet());
        forms.sort(Comparator.comparingInt(String::length).reversed().thenComparing(Comparator.naturalOrder()));
        if (forms.isEmpty()) {
            return new GlossaryTerms(NOTHING, ids);
        }
        String any = forms.stream().map(Pattern::quote).collect(Collectors.joining("|"));
        return new GlossaryTerms(Pattern.compile("(?<![\\p{L}\\p{N}-])(?:" + any + ")(?![\\p{L}\\p{N}-])",
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE), ids);
    }

    /** The anchor of a term in the glossary. */
    static String anchor(String id) {
        return "term-" + Paths.slug(id);
    }
}
