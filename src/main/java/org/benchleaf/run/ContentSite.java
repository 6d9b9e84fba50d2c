package org.benchleaf.run;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.compose.Books;
import org.benchleaf.compose.SiteComposer;
import org.benchleaf.compose.SitePages;
import org.benchleaf.compose.cases.TranslatedPages;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.SearchEntry;
import org.benchleaf.compose.site.SearchIndex;
import org.benchleaf.message.Messages;
import org.benchleaf.model.Studio;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.Page;
import org.benchleaf.privacy.PrivateScan;
import org.benchleaf.privacy.Searchable;
import org.benchleaf.privacy.SearchedFiles;
import org.benchleaf.publish.FinishedPages;
import org.benchleaf.publish.SiteFile;
import org.benchleaf.publish.SitePublisher;
import org.benchleaf.publish.TakenFiles;
import org.benchleaf.read.AuthorGuideReader;
import org.benchleaf.read.CheckValueReader;

/** The files of a whole site, made from what all cases share and the cards of those that have pages in it. */
final class ContentSite implements WholeSite {

    private final SharedContent common;
    private final PrivateValues values;
    private final Audience audience;
    private final List<CaseCard> cards;
    private final SiteMarks marks;
    private final SitePublisher publisher;
    private final Supplier<List<SiteFile>> assets;

    /**
     * Prepares.
     *
     * @param publisher without pictures
     * @param assets the styles, scripts and drawings
     */
    ContentSite(SharedContent common, PrivateValues values, Audience audience, List<CaseCard> cards, SiteMarks marks,
            SitePublisher publisher, Supplier<List<SiteFile>> assets) {
        this.common = common;
        this.values = values;
        this.audience = audience;
        this.cards = List.copyOf(cards);
        this.marks = marks;
        this.publisher = publisher.with(CasePictures.noted(cards));
        this.assets = assets;
    }

    @Override
    public String mark() {
        return marks.ofPages(audience, cards);
    }

    @Override
    public String searchMark() {
        return marks.ofSearch(audience, cards);
    }

    @Override
    public Pages pages(Progress.Shown shown, Messages said) {
        SitePages pages = SiteComposer.compose(common.library(), cards, CheckValueReader.read(common.library().formulary()),
                AuthorGuideReader.read(), audience);
        List<SiteFile> files = new ArrayList<>();
        try (Progress progress = shown.of("Pages of the whole site", pages.pages().size())) {
            files.addAll(pages.pages().parallelStream().map(page -> {
                SiteFile file = publisher.publish(page);
                progress.step();
                return file;
            }).toList());
        }
        PageFiles made = new PageFiles(publisher, FinishedPages.ofSite());
        List<SearchEntry> own = made.searched(pages.pages(), Page::title, files);
        Map<String, List<SearchEntry>> translated = new LinkedHashMap<>();
        for (TranslatedPages there : pages.translated()) {
            translated.put(there.language(), made.told(there, files, none -> TakenFiles.none()));
        }
        pages.files().forEach(file -> files.add(publisher.publish(file)));
        files.addAll(assets.get());
        if (forms().contains(Studio.TakeAlong.INSTALLED)) {
            files.add(publisher.worker());
        }
        scan(values.scan(), files, SearchedFiles.none(), said);
        files.addAll(unsearched());
        return new Pages(files.subList(1, files.size()), new Found(own, translated));
    }

    @Override
    public List<SiteFile> search(Found found, Messages said) {
        List<DataFile> index = new ArrayList<>(SearchIndex.files(common.library(), cards, found.own()));
        new TreeSet<>(found.translated().keySet()).forEach(language ->
                index.addAll(SearchIndex.files(common.library(), language, cards, found.translated().get(language))));
        List<SiteFile> files = index.stream().map(publisher::publish).toList();
        scanNew(files, SearchedFiles.none(), said);
        return files;
    }

    @Override
    public Optional<String> takenKey() {
        Set<Studio.TakeAlong> forms = forms();
        return forms.contains(Studio.TakeAlong.EPUB) || forms.contains(Studio.TakeAlong.ZIP)
                ? Optional.of(mark() + marks.day() + new TreeSet<>(forms)) : Optional.empty();
    }

    @Override
    public TakenFiles taken(List<SiteFile> files, Messages said) {
        TakenFiles taken = TakenFiles.ofSite(forms(), Books.ofLibrary(common.library(), cards, marks.day()), files,
                publisher.takenStyles().book());
        // What packs hold as it stands was searched by itself, but for what is not searched there.
        Set<String> unsearched = unsearched().stream().map(SiteFile::path).collect(Collectors.toSet());
        scanNew(taken.files(), SearchedFiles.of(files.stream().filter(file -> !unsearched.contains(file.path())).toList()), said);
        return taken;
    }

    @Override
    public SiteFile first(TakenFiles taken, Messages said) {
        SiteFile file = publisher.with(taken).publish(SiteComposer.first(common.library(), cards, audience));
        scanNew(List.of(file), SearchedFiles.none(), said);
        return file;
    }

    @Override
    public Messages sources() {
        Messages said = new Messages();
        if (values.areRead()) {
            PrivateScan inShared = values.inShared();
            common.draft().texts().forEach(source -> inShared.scanSource(source).forEach(said::add));
        }
        return said;
    }

    /** The program's own files, of which nothing is the studio's; short names of functions would be taken for names of people. */
    private List<SiteFile> unsearched() {
        return Stream.concat(Stream.of(publisher.calculations()), common.library().studio().fonts() == Studio.Fonts.OF_THE_SITE
                ? publisher.fonts().stream() : Stream.empty()).toList();
    }

    /** What is made of pages that were searched holds no value but a new one, and there is none if no case was read. */
    private void scanNew(List<SiteFile> files, SearchedFiles elsewhere, Messages said) {
        if (values.areRead()) {
            scan(values.scan(), files, elsewhere, said);
        }
    }

    private static void scan(PrivateScan all, List<SiteFile> files, SearchedFiles elsewhere, Messages said) {
        files.parallelStream().map(file -> all.scan(Searchable.of(file, elsewhere))).toList()
                .forEach(leaks -> leaks.forEach(said::add));
    }

    private Set<Studio.TakeAlong> forms() {
        return common.library().studio().takeAlong();
    }
}
