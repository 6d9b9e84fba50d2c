package org.benchleaf.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.model.Material;
import org.benchleaf.model.Term;

/** Makes the index of the search: one entry for each case, material and term, as a script, for no page may fetch. */
final class SearchIndex {

    private static final int LONGEST_TEXT = 600;

    private SearchIndex() {
    }

    static DataFile file(SiteDesk desk) {
        List<Map<String, Object>> entries = new ArrayList<>();
        Words words = Words.in(desk.language());
        desk.cards().forEach(card -> entries.add(ofCase(card, words)));
        desk.library().materials().values().forEach(material -> entries.add(ofMaterial(material, words)));
        desk.library().glossary().forEach(term -> entries.add(ofTerm(term, words)));
        return new DataFile(Paths.SEARCH_INDEX, entries.stream().map(ScriptJson::text)
                .collect(Collectors.joining(",\n", "window.BENCHLEAF_INDEX = [\n", "\n];\n")));
    }

    private static Map<String, Object> ofCase(CaseCard card, Words words) {
        String terms = Stream.of(card.damages().stream(), card.steps().stream(),
                Stream.of(card.kind(), card.technique(), card.level())).flatMap(s -> s).distinct()
                .collect(Collectors.joining(", "));
        return ScriptJson.object("t", card.title(), "k", words.say("search.kind-case"), "h", card.start(),
                "s", card.summary(), "w", terms, "x", shortened(String.join(" · ", card.texts())));
    }

    private static Map<String, Object> ofMaterial(Material material, Words words) {
        return ScriptJson.object("t", material.name(), "k", words.say("search.kind-material"),
                "h", Paths.material(material.id()), "s", material.plain(), "w", material.kind(), "x", "");
    }

    private static Map<String, Object> ofTerm(Term term, Words words) {
        return ScriptJson.object("t", term.term(), "k", words.say("search.kind-term"),
                "h", Paths.GLOSSARY + "#" + GlossaryTerms.anchor(term.id()), "s", term.plain(),
                "w", String.join(", ", term.also()), "x", "");
    }

    private static String shortened(String text) {
        return text.length() <= LONGEST_TEXT ? text : text.substring(0, LONGEST_TEXT);
    }
}
