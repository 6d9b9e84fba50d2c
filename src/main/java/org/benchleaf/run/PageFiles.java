package org.benchleaf.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.benchleaf.compose.cases.TranslatedPages;
import org.benchleaf.compose.part.PageSearch;
import org.benchleaf.compose.part.SearchEntry;
import org.benchleaf.page.Page;
import org.benchleaf.publish.FinishedPages;
import org.benchleaf.publish.SiteFile;
import org.benchleaf.publish.SitePublisher;
import org.benchleaf.publish.TakenFiles;

/** Adds to the files of pages what is made from them: the sentences that the search shows, and the same pages in other languages. */
final class PageFiles {

    private final SitePublisher publisher;
    private final FinishedPages finished;

    /**
     * Prepares.
     *
     * @param publisher knows the pictures of the pages
     * @param finished reads the pages
     */
    PageFiles(SitePublisher publisher, FinishedPages finished) {
        this.publisher = publisher;
        this.finished = finished;
    }

    /**
     * Adds pages in another language and what can be taken away of them, and returns what the search knows of them.
     *
     * @param files those of the pages in their own language among them
     * @param taken makes of finished pages what can be taken away
     */
    List<SearchEntry> told(TranslatedPages translated, List<SiteFile> files, Function<List<SiteFile>, TakenFiles> taken) {
        Map<String, SiteFile> originals = files.stream().collect(Collectors.toMap(SiteFile::path, file -> file));
        List<Page> pages = translated.pages();
        BiFunction<Page, SitePublisher, SiteFile> told = (page, maker) -> finished.file(page.path(), translated.marked(
                maker.publish(page).text(), finished.original(originals.get(translated.originalOf(page)))));
        List<SiteFile> there = new ArrayList<>(pages.stream().map(page -> told.apply(page, publisher)).toList());
        TakenFiles away = there.isEmpty() ? TakenFiles.none() : taken.apply(there);
        if (!away.files().isEmpty()) {
            there.set(0, told.apply(pages.get(0), publisher.with(away)));
        }
        files.addAll(there);
        files.addAll(away.files());
        List<SearchEntry> found = searched(pages, translated::searchTitle, files);
        finished.forget();
        return found;
    }

    /**
     * What the search knows of pages, read from their files; the sentences that it shows are added to the files.
     *
     * @param title of a page as the search lists it
     */
    List<SearchEntry> searched(List<Page> pages, Function<Page, String> title, List<SiteFile> files) {
        Map<String, SiteFile> byPath = files.stream().collect(Collectors.toMap(SiteFile::path, file -> file));
        List<PageSearch> read = pages.parallelStream().map(page -> PageSearch.of(page, finished.tree(byPath.get(page.path())))).toList();
        read.forEach(search -> files.add(publisher.publish(search.sentences())));
        return IntStream.range(0, read.size()).mapToObj(at -> read.get(at).entry(title.apply(pages.get(at)))).toList();
    }
}
