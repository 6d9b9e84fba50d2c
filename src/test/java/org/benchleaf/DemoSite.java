package org.benchleaf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.benchleaf.check.CaseChecker;
import org.benchleaf.check.Checked;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.compose.PageComposer;
import org.benchleaf.compose.SiteComposer;
import org.benchleaf.compose.SitePages;
import org.benchleaf.compose.cases.CasePages;
import org.benchleaf.compose.cases.PictureManifest;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.compose.part.ForeignWords;
import org.benchleaf.compose.part.PageSearch;
import org.benchleaf.compose.part.PageTree;
import org.benchleaf.compose.part.SearchEntry;
import org.benchleaf.compose.site.SearchIndex;
import org.benchleaf.derive.Derived;
import org.benchleaf.derive.Deriver;
import org.benchleaf.derive.WorkedCase;
import org.benchleaf.message.MessageText;
import org.benchleaf.model.Library;
import org.benchleaf.model.Picture;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.Page;
import org.benchleaf.publish.Rendition;
import org.benchleaf.publish.SiteFile;
import org.benchleaf.publish.SitePublisher;
import org.benchleaf.read.AuthorGuideReader;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.LibraryReader;

/**
 * The demo's pages as the stages make them, for tests that look at whole pages; pictures keep their own size.
 *
 * @param library what all cases share
 * @param cases the pages of each case
 * @param site the pages of the whole site
 * @param files everything, published
 * @param leftOut what was said of each case that has errors and so got no pages
 */
public record DemoSite(Library library, List<CasePages> cases, SitePages site, List<SiteFile> files,
        List<String> leftOut) {

    /** A day on which every demo case is cleared. */
    public static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final Path CONTENT = Path.of("content");

    /** The demo's pages, made once for all tests that only look at them. */
    public static DemoSite made() {
        return Made.SITE;
    }

    private static final class Made {
        private static final DemoSite SITE = make();
    }

    /** Makes the demo's pages from {@code content/}. */
    public static DemoSite make() {
        Library library = LibraryChecker.check(LibraryReader.read(CONTENT)).library();
        SitePublisher publisher = SitePublisher.with(Path.of("templates"), (caseId, picture) ->
                List.of(rendition(caseId, picture)));
        List<CasePages> cases = new ArrayList<>();
        List<String> leftOut = new ArrayList<>();
        for (Path folder : CaseReader.folders(CONTENT)) {
            Checked checked = CaseChecker.check(CaseReader.read(CONTENT, folder), library, DAY, new Deriver(library)::ph);
            Derived derived = new Deriver(library, CaseChecker::tested).derive(checked.treatment().orElseThrow(), checked.findings());
            if (checked.messages().hasErrors() || derived.messages().hasErrors()) {
                leftOut.add(Stream.of(checked.messages(), derived.messages())
                        .flatMap(messages -> messages.all().stream()).map(MessageText::of)
                        .collect(Collectors.joining("\n")));
            } else {
                cases.add(compose(derived, library));
            }
        }
        SitePages site = SiteComposer.compose(library, cases.stream().map(CasePages::card).toList(),
                org.benchleaf.read.CheckValueReader.read(library.formulary()),
                AuthorGuideReader.read(), Audience.EVERYBODY);
        List<SiteFile> files = new ArrayList<>(publisher.assets());
        files.addAll(publisher.fonts());
        pages(cases, site).forEach(page -> files.add(publisher.publish(page)));
        Stream.concat(cases.stream().flatMap(one -> one.translated().stream()), site.translated().stream()).forEach(translated ->
                translated.pages().forEach(page -> files.add(SiteFile.text(page.path(), translated.marked(publisher.publish(page).text(),
                        ForeignWords.Original.of(PageTree.of(files.stream().filter(file -> file.path().equals(translated.originalOf(page)))
                                .findFirst().orElseThrow().text()))).html()))));
        search(library, cases, site, files).forEach(file -> files.add(publisher.publish(file)));
        dataFiles(cases, site).forEach(file -> files.add(publisher.publish(file)));
        return new DemoSite(library, cases, site, files, leftOut);
    }

    /** The index of the search and the sentences of every page. */
    private static List<DataFile> search(Library library, List<CasePages> cases, SitePages site, List<SiteFile> files) {
        java.util.Map<String, String> texts = files.stream().filter(SiteFile::isPage)
                .collect(Collectors.toMap(SiteFile::path, SiteFile::text));
        List<DataFile> search = new ArrayList<>();
        java.util.function.Function<Page, PageSearch> read = page -> {
            PageSearch one = PageSearch.of(page, PageTree.of(texts.get(page.path())));
            search.add(one.sentences());
            return one;
        };
        List<CaseCard> cards = cases.stream().map(one -> one.card().foundBy(one.pages().stream()
                .map(page -> read.apply(page).entry(one.searchTitle(page))).toList())).toList();
        List<SearchEntry> entries = site.pages().stream().map(page -> read.apply(page).entry(page.title())).toList();
        search.addAll(SearchIndex.files(library, cards, entries));
        site.translated().forEach(there -> search.addAll(SearchIndex.files(library, there.language(), cards, List.of())));
        return search;
    }

    /** One case of the demo, worked out. */
    public static WorkedCase worked(String caseId, Library library) {
        Checked checked = CaseChecker.check(CaseReader.read(CONTENT, CONTENT.resolve("cases").resolve(caseId)), library, DAY,
                new Deriver(library)::ph);
        return new Deriver(library).derive(checked.treatment().orElseThrow(), checked.findings()).worked();
    }

    private static CasePages compose(Derived derived, Library library) {
        TreatmentCase treatment = derived.worked().source();
        treatment.pictures().forEach(DemoSite::remember);
        return PageComposer.compose(derived.worked(), library, Clearance.on(DAY, treatment.publication(), Audience.EVERYBODY));
    }

    private static final java.util.Map<String, Path> PICTURES = new java.util.concurrent.ConcurrentHashMap<>();

    private static void remember(Picture picture) {
        Path folder = Path.of(picture.place().file()).getParent();
        PICTURES.put(folder.getFileName() + "/" + picture.id(), folder.resolve("pictures").resolve(picture.file()));
    }

    private static Rendition rendition(String caseId, String picture) {
        Path file = PICTURES.get(caseId + "/" + picture);
        try {
            var image = ImageIO.read(file.toFile());
            return new Rendition("cases/" + caseId + "/pictures/" + file.getFileName(), image.getWidth(),
                    image.getHeight());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** Every page. */
    public static List<Page> pages(List<CasePages> cases, SitePages site) {
        return Stream.concat(cases.stream().flatMap(one -> one.pages().stream()), site.pages().stream()).toList();
    }

    private static List<DataFile> dataFiles(List<CasePages> cases, SitePages site) {
        return Stream.of(cases.stream().flatMap(one -> one.files().stream()), site.files().stream(),
                cases.stream().flatMap(one -> one.manifest().map(manifest -> manifest.file(picture -> {
                    Rendition size = rendition(one.card().id(), picture);
                    return List.of(new PictureManifest.Size(size.path(), size.width(), size.height()));
                })).stream())).flatMap(files -> files).toList();
    }

    /** Writes the demo's pages into a folder, to be looked at. */
    public static void main(String[] arguments) throws IOException {
        Path target = Path.of(arguments[0]);
        DemoSite demo = make();
        demo.leftOut().forEach(System.err::println);
        for (SiteFile file : demo.files()) {
            Path to = target.resolve(file.path());
            Files.createDirectories(to.getParent());
            Files.write(to, file.bytes());
        }
        for (String key : PICTURES.keySet()) {
            Path from = PICTURES.get(key);
            Path to = target.resolve("cases").resolve(key.split("/")[0]).resolve("pictures").resolve(from.getFileName());
            Files.createDirectories(to.getParent());
            Files.copy(from, to, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
