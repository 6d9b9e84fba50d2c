package org.benchleaf.compose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchleaf.compose.cases.TranslatedPages;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.Installation;
import org.benchleaf.compose.part.LanguageFolder;
import org.benchleaf.compose.part.SiteDesk;
import org.benchleaf.compose.part.SitePageMaker;
import org.benchleaf.compose.site.EvidencePages;
import org.benchleaf.compose.site.Feeds;
import org.benchleaf.compose.site.SiteMap;
import org.benchleaf.compose.site.SiteReference;
import org.benchleaf.compose.site.SumsPage;
import org.benchleaf.compose.site.WritingPage;
import org.benchleaf.model.AuthorGuide;
import org.benchleaf.model.CheckValues;
import org.benchleaf.model.Library;
import org.benchleaf.model.LibraryTexts;
import org.benchleaf.model.Phrases;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.Page;

/** The pages of the whole site, each kind made once when one of its pages is asked for. Not for several threads at once. */
public final class SiteComposition {

    private final SiteDesk desk;
    private final List<String> languages;
    private final Map<SitePageMaker, List<Page>> made = new HashMap<>();
    private List<DataFile> files;

    /**
     * Prepares the pages and makes none.
     *
     * @param checks the values from outside that the page of methods holds each calculation against
     * @param guide what an author of case files is shown
     * @param audience for whom the site is; the cards are those of its own pages
     */
    public SiteComposition(Library library, List<CaseCard> cards, List<CheckValues> checks, AuthorGuide guide,
            Audience audience) {
        this.languages = Stream.concat(Stream.of(library.studio().language()), library.translations().keySet().stream()
                .filter(tag -> cards.stream().anyMatch(card -> isToldIn(card, tag))).sorted()).toList();
        this.desk = new SiteDesk(library, SiteDesk.ordered(cards), checks, guide, audience, PageMakers.NAMES,
                new LanguageFolder("", PageMakers.toldPaths(library, cards).collect(Collectors.toSet()), languages));
    }

    private static boolean isToldIn(CaseCard card, String tag) {
        return card.translated().stream().anyMatch(there -> there.language().equals(tag) && !there.pages().isEmpty());
    }

    /** The pages of each kind that stands in several languages, in each other language in which a case is told. */
    List<TranslatedPages> translated() {
        return languages.stream().skip(1).map(this::in).toList();
    }

    private TranslatedPages in(String tag) {
        Library library = LibraryTexts.in(desk.library().translations().get(tag), desk.library());
        Stream<String> ofCases = desk.cards().stream().flatMap(card -> card.translated().stream())
                .filter(there -> there.language().equals(tag)).flatMap(there -> there.pages().stream())
                .map(path -> path.substring(tag.length() + 1));
        LanguageFolder folder = new LanguageFolder(tag, Stream.concat(PageMakers.toldPaths(library, desk.cards()), ofCases)
                .collect(Collectors.toSet()), languages);
        // What a reader of the language can read comes first.
        List<CaseCard> cards = SiteDesk.ordered(desk.cards().stream().map(card -> card.in(tag)).toList()).stream()
                .sorted(Comparator.comparing(card -> !isToldIn(card, tag))).toList();
        SiteDesk there = new SiteDesk(library, cards, desk.checks(), desk.guide(), desk.audience(), desk.names(), folder);
        return new TranslatedPages(desk.language(), "", folder, library.phrases(), PageMakers.TOLD.stream()
                .map(maker -> new TranslatedPages.PageGroup(maker.paths(library, cards).map(folder::of).toList(), () -> maker.make(there)))
                .toList(), Optional.empty());
    }

    /** The pages of the language to which a path belongs; empty for a path of the site's own. */
    public Optional<TranslatedPages> translationOf(String path) {
        return translated().stream().filter(translated -> path.startsWith(translated.language() + "/")).findFirst();
    }

    /** One page; empty if there is none at that path. The kind whose own path is most like it is asked first. */
    public Optional<Page> page(String path) {
        Optional<TranslatedPages> translated = translationOf(path);
        return translated.isPresent() ? translated.get().page(path)
                : ownPage(path);
    }

    private Optional<Page> ownPage(String path) {
        List<SitePageMaker> makers = new ArrayList<>(PageMakers.SITE);
        makers.sort(Comparator.comparingInt(maker -> -alike(maker.name().path(), path)));
        return makers.stream().flatMap(maker -> made.computeIfAbsent(maker, one -> one.make(desk)).stream())
                .filter(page -> page.path().equals(path)).findFirst();
    }

    /** How many letters two paths have in common from their beginning. */
    private static int alike(String one, String other) {
        int shorter = Math.min(one.length(), other.length());
        return IntStream.range(0, shorter).filter(at -> one.charAt(at) != other.charAt(at)).findFirst().orElse(shorter);
    }

    /** The data beside the pages, such as the schemas and how the site is cited. */
    public List<DataFile> files() {
        if (files == null) {
            List<Phrases> others = languages.stream().skip(1).map(desk.library().translations()::get).toList();
            files = Stream.of(WritingPage.files(), SumsPage.data(desk.language(), desk.library().formulary(), others),
                    List.of(SiteReference.file(desk)), EvidencePages.files(desk),
                    Feeds.of(desk).map(Feeds::files).orElse(List.of()), installation()).flatMap(List::stream).toList();
        }
        return files;
    }

    private List<DataFile> installation() {
        return Installation.isWanted(desk.library().studio())
                ? List.of(Installation.manifest(desk.library().studio(), desk.language())) : List.of();
    }

    /** The map of the site, which names all its pages. */
    public List<DataFile> map(List<Page> pages) {
        return SiteMap.of(desk, pages).map(SiteMap::files).orElse(List.of());
    }

    /** Every page, in the order of their kinds; several kinds are made at once. */
    List<Page> all() {
        return PageMakers.SITE.parallelStream().flatMap(maker -> maker.make(desk).stream()).toList();
    }
}
