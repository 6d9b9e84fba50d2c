package org.benchleaf.compose;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.benchleaf.model.Term;

/** The glossary. */
final class GlossaryPage implements SitePageMaker {

    private static final SitePageName NAME = new SitePageName("glossary", Paths.GLOSSARY, true);

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
        sheet.add(new Glossary(desk.library().glossary().stream().map(term -> entry(sheet, term, byId)).toList(),
                words.group("glossary")));
        return List.of(sheet.page(title, words.say("glossary.lead")));
    }

    private static Glossary.Entry entry(Sheet sheet, Term term, Map<String, Term> byId) {
        return new Glossary.Entry(GlossaryTerms.anchor(term.id()), term.term(), String.join(", ", term.also()),
                RichText.of(term.plain()), term.more().map(RichText::of),
                term.see().stream().filter(byId::containsKey).map(id -> Link.to(byId.get(id).term(),
                        "#" + GlossaryTerms.anchor(id))).toList(),
                term.source().flatMap(sheet::cite), term.drawing().map(drawing -> new TermDrawings(sheet.words()).make(term, drawing)));
    }
}
