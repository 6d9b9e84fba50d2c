package org.benchleaf.compose.site;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.compose.chart.TermDrawings;
import org.benchleaf.compose.part.GlossaryTerms;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.part.SiteDesk;
import org.benchleaf.compose.part.SitePageMaker;
import org.benchleaf.compose.part.SitePageName;
import org.benchleaf.compose.part.Stems;
import org.benchleaf.model.Library;
import org.benchleaf.model.Phrases;
import org.benchleaf.model.Term;
import org.benchleaf.page.Glossary;
import org.benchleaf.page.Link;
import org.benchleaf.page.Opening;
import org.benchleaf.page.Page;
import org.benchleaf.page.Paths;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** The glossary. */
public final class GlossaryPage implements SitePageMaker {

    private static final SitePageName NAME = new SitePageName("glossary", Paths.GLOSSARY, true);
    private static final String DIGITS = "0–9";

    @Override
    public SitePageName name() {
        return NAME;
    }

    @Override
    public List<Page> make(SiteDesk desk) {
        Sheet sheet = desk.sheet(NAME);
        Words words = sheet.words();
        String title = words.say("way.glossary");
        Map<String, Term> byId = desk.library().glossary().stream()
                .collect(Collectors.toMap(Term::id, term -> term, (first, second) -> first));
        sheet.add(Opening.plain(title, words.say("glossary.lead")));
        List<Glossary.Entry> entries = ordered(desk.library()).map(term -> entry(sheet, term, byId)).toList();
        sheet.add(new Glossary(letters(entries), entries, words.group("glossary")));
        return List.of(sheet.page(title, words.say("glossary.lead")));
    }

    /** By the letters of the language without their signs, as its readers look them up. */
    private static Stream<Term> ordered(Library library) {
        return library.glossary().stream().sorted(Comparator.comparing((Term term) -> Stems.plain(library.phrases().of(term.term())))
                .thenComparing(Term::id));
    }

    /** Each letter with which a term begins, as a link to the first of its terms; all that begin with a digit have one. */
    private static List<Link> letters(List<Glossary.Entry> entries) {
        Map<String, Link> letters = new LinkedHashMap<>();
        for (Glossary.Entry entry : entries) {
            String first = Stems.plain(entry.term()).substring(0, 1);
            String letter = Character.isDigit(first.charAt(0)) ? DIGITS : first.toUpperCase(Locale.ROOT);
            letters.putIfAbsent(letter, Link.to(letter, "#" + entry.id()));
        }
        return List.copyOf(letters.values());
    }

    private static Glossary.Entry entry(Sheet sheet, Term term, Map<String, Term> byId) {
        Phrases phrases = sheet.library().phrases();
        return new Glossary.Entry(GlossaryTerms.anchor(term.id()), phrases.of(term.term()),
                sheet.words().list(term.also().stream().map(phrases::of).toList()), RichText.of(phrases.of(term.plain())),
                term.more().map(phrases::of).map(RichText::of),
                term.see().stream().filter(byId::containsKey).map(id -> Link.to(phrases.of(byId.get(id).term()),
                        "#" + GlossaryTerms.anchor(id))).toList(),
                term.source().flatMap(sheet::cite), term.drawing().map(drawing ->
                        new TermDrawings(sheet.words()).make(term.id(), phrases.of(term.term()), drawing)));
    }
}
