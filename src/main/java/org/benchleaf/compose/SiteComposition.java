package org.benchleaf.compose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchleaf.model.AuthorGuide;
import org.benchleaf.model.CheckValues;
import org.benchleaf.model.Library;

/** The pages of the whole site, each kind made once when one of its pages is asked for. Not for several threads at once. */
public final class SiteComposition {

    private final SiteDesk desk;
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
        this.desk = new SiteDesk(library, SiteDesk.ordered(cards), checks, guide, audience, PageMakers.NAMES);
    }

    /** One page; empty if there is none at that path. The kind whose own path is most like it is asked first. */
    public Optional<Page> page(String path) {
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
            files = Stream.of(WritingPage.files(), List.of(SumsPage.data(desk.language(), desk.library().formulary()),
                    SiteReference.file(desk.library().studio(), Words.in(desk.language()))), EvidencePages.files(desk),
                    Feeds.of(desk).map(Feeds::files).orElse(List.of()), installation()).flatMap(List::stream).toList();
        }
        return files;
    }

    private List<DataFile> installation() {
        return Installation.isWanted(desk.library().studio())
                ? List.of(Installation.manifest(desk.library().studio(), desk.language())) : List.of();
    }

    /** The map of the site, which names all its pages. */
    List<DataFile> map(List<Page> pages) {
        return SiteMap.of(desk, pages).map(SiteMap::files).orElse(List.of());
    }

    /** Every page, in the order of their kinds; several kinds are made at once. */
    List<Page> all() {
        return PageMakers.SITE.parallelStream().flatMap(maker -> maker.make(desk).stream()).toList();
    }
}
