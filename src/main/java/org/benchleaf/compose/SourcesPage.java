package org.benchleaf.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.benchleaf.model.Source;

/** The list of sources by number, each with the pages that cite it. */
final class SourcesPage implements SitePageMaker {

    @Override
    public String kind() {
        return "sources";
    }

    @Override
    public String path() {
        return Paths.SOURCES;
    }

    @Override
    public boolean inMenu() {
        return false;
    }

    @Override
    public List<Page> make(SiteDesk desk) {
        Sheet sheet = desk.sheet(this);
        Words words = sheet.words();
        String title = words.say("way.sources");
        Map<String, List<Link>> citing = citing(sheet, desk);
        sheet.add(Opening.plain(title, words.say("sources.lead")));
        sheet.add(new Bibliography(Sources.of(desk.library()).all().stream()
                .map(source -> entry(words, source, citing)).toList(), words.group("sources")));
        return List.of(sheet.page(title, words.say("sources.lead")));
    }

    private static Bibliography.Entry entry(Words words, Source source, Map<String, List<Link>> citing) {
        return new Bibliography.Entry(Sources.anchor(source.key()), source.author(), source.year(), source.title(),
                source.where(), words.term("source-status", source.status()),
                citing.getOrDefault(source.key(), List.of()));
    }

    private static Map<String, List<Link>> citing(Sheet sheet, SiteDesk desk) {
        Map<String, List<Link>> citing = new TreeMap<>();
        desk.cards().forEach(card -> card.sources().forEach(key ->
                add(citing, key, sheet.link(card.title(), card.start()))));
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
