package org.benchleaf.compose.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.benchleaf.compose.part.GlossaryTerms;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.part.SiteDesk;
import org.benchleaf.compose.part.SitePageMaker;
import org.benchleaf.compose.part.SitePageName;
import org.benchleaf.compose.part.Sources;
import org.benchleaf.model.Source;
import org.benchleaf.page.Bibliography;
import org.benchleaf.page.Link;
import org.benchleaf.page.Opening;
import org.benchleaf.page.Page;
import org.benchleaf.page.Paths;
import org.benchleaf.page.Section;
import org.benchleaf.words.Words;

/** The list of sources by number, each with the pages that cite it. */
public final class SourcesPage implements SitePageMaker {

    private static final SitePageName NAME = new SitePageName("sources", Paths.SOURCES, false);

    /** How many cases a source names; the rest is counted, because every case names its own sources. */
    private static final int MOST_CASES = 12;

    @Override
    public SitePageName name() {
        return NAME;
    }

    @Override
    public List<Page> make(SiteDesk desk) {
        Sheet sheet = desk.sheet(NAME);
        Words words = sheet.words();
        String title = words.say("way.sources");
        Sources sources = Sources.of(desk.library());
        Citing citing = new Citing(cases(sheet, desk), others(sheet, desk));
        sheet.add(Opening.plain(title, words.say("sources.lead")));
        sheet.add(new Bibliography(true, entries(words, sources.publications(), citing), words.group("sources")));
        sheet.add(new Section("no-publications", words.say("sources.others"), Optional.of(words.say("sources.others-lead")),
                List.of(new Bibliography(false, entries(words, sources.others(), citing), words.group("sources")))));
        return List.of(sheet.page(title, words.say("sources.lead")));
    }

    /** What cites each source: cases and other pages by its key. */
    private record Citing(Map<String, List<Link>> cases, Map<String, List<Link>> others) {
    }

    private static List<Bibliography.Entry> entries(Words words, List<Source> sources, Citing citing) {
        return sources.stream().map(source -> entry(words, source, citing.cases().getOrDefault(source.key(), List.of()),
                citing.others().getOrDefault(source.key(), List.of()))).toList();
    }

    private static Bibliography.Entry entry(Words words, Source source, List<Link> cases, List<Link> others) {
        List<Link> named = Stream.concat(others.stream(), cases.stream().limit(MOST_CASES)).toList();
        int more = cases.size() - Math.min(cases.size(), MOST_CASES);
        return new Bibliography.Entry(Sources.anchor(source.key()), source.author(), source.year(), source.title(),
                source.where(), source.address(), words.term("source-status", source.status()), named,
                more == 0 ? "" : words.count("sources.more", more));
    }

    private static Map<String, List<Link>> cases(Sheet sheet, SiteDesk desk) {
        Map<String, List<Link>> citing = new TreeMap<>();
        desk.cards().forEach(card -> card.sources().forEach(key ->
                add(citing, key, sheet.link(card.title(), card.start()))));
        return citing;
    }

    private static Map<String, List<Link>> others(Sheet sheet, SiteDesk desk) {
        Map<String, List<Link>> citing = new TreeMap<>();
        desk.library().glossary().forEach(term -> term.source().ifPresent(key ->
                add(citing, key, sheet.link(term.term(), Paths.GLOSSARY + "#" + GlossaryTerms.anchor(term.id())))));
        desk.library().materials().values().forEach(material -> material.source().ifPresent(key ->
                add(citing, key, sheet.link(material.name(), Paths.material(material.id())))));
        return citing;
    }

    private static void add(Map<String, List<Link>> citing, String key, Link link) {
        citing.computeIfAbsent(key, any -> new ArrayList<>()).add(link);
    }
}
