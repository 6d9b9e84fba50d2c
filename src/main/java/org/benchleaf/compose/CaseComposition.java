package org.benchleaf.compose;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.compose.cases.Book;
import org.benchleaf.compose.cases.CardMaker;
import org.benchleaf.compose.cases.PictureManifest;
import org.benchleaf.compose.cases.TranslatedPages;
import org.benchleaf.compose.classes.ClassDesk;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.CasePageMaker;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.compose.part.LanguageFolder;
import org.benchleaf.compose.part.LinkPicture;
import org.benchleaf.derive.Deriver;
import org.benchleaf.derive.WorkedCase;
import org.benchleaf.model.Library;
import org.benchleaf.model.LibraryTexts;
import org.benchleaf.model.Translation;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.Page;

/** The pages that one worked case may have, each made when it is asked for. Not for several threads at once. */
public final class CaseComposition {

    private final CaseDesk desk;
    private final List<CasePageMaker> makers;
    private final List<ClassDesk> classes;
    private final Map<String, Supplier<Page>> pages = new LinkedHashMap<>();
    private final Map<Translation, CaseDesk> told = new IdentityHashMap<>();

    /**
     * Settles which pages there are, and makes none.
     *
     * @param clearance what may be produced; a case of which nothing may be gets no pages
     */
    public CaseComposition(WorkedCase worked, Library library, Clearance clearance) {
        CaseDesk before = new CaseDesk(worked, library, clearance, List.of(), PageMakers.NAMES, LanguageFolder.NONE);
        this.makers = PageMakers.CASE.stream().filter(maker -> maker.applies(before)).toList();
        this.desk = new CaseDesk(worked, library, clearance, makers.stream().map(CasePageMaker::name).toList(),
                PageMakers.NAMES, new LanguageFolder("", Set.of(), languages(worked.source())));
        this.classes = ClassDesk.of(desk);
        makers.forEach(maker -> pages.put(desk.path(maker.name().file()), () -> maker.make(desk)));
        classes.forEach(course -> PageMakers.CLASS.forEach(maker ->
                pages.put(course.path(maker.name().ending()), () -> maker.make(course))));
    }

    private static List<String> languages(TreatmentCase source) {
        return Stream.concat(Stream.of(source.language()), source.translations().stream().map(Translation::language)).toList();
    }

    /** The same pages in each of the other languages of the case. */
    List<TranslatedPages> translated() {
        return desk.treatment().translations().stream().map(this::in).toList();
    }

    /** The case in the words of a language, which pages and card share. */
    private CaseDesk told(Translation translation) {
        return told.computeIfAbsent(translation, one -> {
            Library library = LibraryTexts.in(one.phrases(), desk.library());
            return new CaseDesk(new Deriver(library).told(desk.worked(), one), library, desk.clearance(), desk.pages(), desk.names(),
                    folder(one));
        });
    }

    private TranslatedPages in(Translation translation) {
        CaseDesk told = told(translation);
        List<TranslatedPages.PageGroup> there = new ArrayList<>();
        makers.forEach(maker -> there.add(group(told, told.path(maker.name().file()), () -> maker.make(told))));
        ClassDesk.of(told).forEach(course -> PageMakers.CLASS.forEach(maker ->
                there.add(group(told, course.path(maker.name().ending()), () -> maker.make(course)))));
        return new TranslatedPages(desk.treatment().language(), told.treatment().title(), told.folder(), told.library().phrases(), there,
                Optional.of(Books.translated(told, ownPaths().stream().map(told.folder()::of).toList())));
    }

    private static TranslatedPages.PageGroup group(CaseDesk told, String path, Supplier<Page> page) {
        return new TranslatedPages.PageGroup(List.of(told.folder().of(path)), () -> List.of(page.get()));
    }

    /** The paths of the pages, those of the case before those of its classes. */
    public List<String> paths() {
        return List.copyOf(pages.keySet());
    }

    /** One page, also in another language, made anew each time; empty if there is none at that path. */
    public Optional<Page> page(String path) {
        return pages.containsKey(path) ? Optional.of(pages.get(path).get())
                : translationOf(path).flatMap(translated -> translated.page(path));
    }

    /** The pages of the language to which a path belongs; empty for a path of the original. */
    public Optional<TranslatedPages> translationOf(String path) {
        return translated().stream().filter(translated -> path.startsWith(translated.language() + "/")).findFirst();
    }

    /** The data beside the pages. */
    public List<DataFile> files() {
        List<DataFile> files = new ArrayList<>(makers.stream().flatMap(maker -> maker.files(desk).stream()).toList());
        desk.treatment().translations().forEach(one -> makers.forEach(maker -> files.addAll(maker.filesTold(told(one)))));
        classes.forEach(course -> PageMakers.CLASS.forEach(maker -> files.addAll(maker.files(course))));
        return files;
    }

    /** Its pictures for viewers of other sites, once the sizes of their files are known; empty if there may be none. */
    public Optional<PictureManifest> manifest() {
        return PictureManifest.of(desk);
    }

    /** The picture beside a link to it; empty if there may be none. */
    Optional<LinkPicture> linkPicture() {
        return desk.linkPicture();
    }

    /** The book of its own pages, not those of classes. */
    Book book() {
        return Books.ofCase(desk, ownPaths());
    }

    private List<String> ownPaths() {
        return makers.stream().map(maker -> desk.path(maker.name().file())).toList();
    }

    /** What the pages of the whole site need of the case. */
    public CaseCard card() {
        return CardMaker.card(desk, ownPaths(), desk.treatment().translations().stream().map(this::translatedCard).toList());
    }

    private CaseCard.Translated translatedCard(Translation translation) {
        return CardMaker.translated(told(translation), desk, ownPaths().stream().map(folder(translation)::of).toList());
    }

    private LanguageFolder folder(Translation translation) {
        return new LanguageFolder(translation.language(), Stream.concat(pages.keySet().stream(),
                PageMakers.toldPaths(desk.library(), List.of())).collect(Collectors.toSet()), languages(desk.treatment()));
    }

    /** Every page, in the order of their paths. */
    List<Page> all() {
        return pages.values().stream().map(Supplier::get).toList();
    }
}
