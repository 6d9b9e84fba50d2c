package org.benchleaf.check;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.benchleaf.model.Term;
import org.benchleaf.model.TreatmentCase;

/** The entries of the glossary that speak of a case: every public site prints them, whatever the case keeps in. */
final class GlossaryWords {

    private static final Pattern BETWEEN_WORDS = Pattern.compile("[^\\p{L}\\p{N}]++");
    private static final Pattern HEAD_ENDS = Pattern.compile("[,;:(–—]");
    private static final List<String> ARTICLES = List.of("a", "an", "the");

    private GlossaryWords() {
    }

    /** The words of each entry that names the case: by its address, by its title without an article, or by an id of several words. */
    static Stream<Wording> naming(TreatmentCase source, List<Term> glossary) {
        String title = withoutArticle(words(HEAD_ENDS.split(source.title(), 2)[0]));
        String id = source.id().contains("-") ? words(source.id()) : "";
        return glossary.stream().filter(term -> isNamed(text(term), source.id(), List.of(title, id)))
                .map(term -> new Wording("The glossary's entry '" + term.term() + "', which names this case,", text(term),
                        source.language(), true, term.place()));
    }

    private static boolean isNamed(String text, String id, List<String> names) {
        String words = words(text);
        return text.contains("cases/" + id) || names.stream().filter(name -> !name.isBlank()).anyMatch(words::contains);
    }

    private static String text(Term term) {
        return term.plain() + term.more().map(more -> " " + more).orElse("");
    }

    private static String withoutArticle(String title) {
        return ARTICLES.stream().filter(article -> title.startsWith(" " + article + " ")).findFirst()
                .map(article -> title.substring(article.length() + 1)).orElse(title);
    }

    /** In small letters, each word between blanks. */
    private static String words(String text) {
        return " " + BETWEEN_WORDS.matcher(text.toLowerCase(Locale.ROOT)).replaceAll(" ").strip() + " ";
    }
}
