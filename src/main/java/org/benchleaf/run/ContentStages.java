package org.benchleaf.run;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchleaf.check.CaseChecker;
import org.benchleaf.compose.Books;
import org.benchleaf.compose.PageComposer;
import org.benchleaf.compose.SiteComposer;
import org.benchleaf.compose.SitePages;
import org.benchleaf.compose.cases.Book;
import org.benchleaf.compose.cases.CasePages;
import org.benchleaf.compose.cases.TranslatedPages;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.compose.part.PageSearch;
import org.benchleaf.compose.part.SearchEntry;
import org.benchleaf.compose.site.SearchIndex;
import org.benchleaf.derive.Derived;
import org.benchleaf.derive.WorkedCase;
import org.benchleaf.message.ConsentMessages;
import org.benchleaf.message.DraftMessages;
import org.benchleaf.message.EditionMessages;
import org.benchleaf.message.MessageText;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Severity;
import org.benchleaf.model.Confidential;
import org.benchleaf.model.Studio;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.page.Page;
import org.benchleaf.privacy.PrivateMarks;
import org.benchleaf.privacy.PrivateScan;
import org.benchleaf.privacy.Searchable;
import org.benchleaf.privacy.SearchedFiles;
import org.benchleaf.publish.SiteFile;
import org.benchleaf.publish.SitePublisher;
import org.benchleaf.publish.TakenFiles;
import org.benchleaf.read.AuthorGuideReader;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.CheckValueReader;
import org.benchleaf.read.Draft;

/** The line of stages for one content folder and one day. */
public final class ContentStages implements Stages {

    private final Path content;
    private final SharedInput shared;
    private final String seed;
    private final LocalDate day;
    private final SharedContent common;
    private final SitePublisher publisher;
    private final List<Audience> audiences;
    private final List<Path> cases;
    private Map<String, Confidential> values;
    private List<SiteFile> assets;
    private List<Searchable> takenAlong;
    private volatile PrivateScan others;

    private ContentStages(Path content, Optional<Path> templates, LocalDate day) {
        this.content = content;
        this.day = day;
        // Before anything is read, so that what changes from here on is found at the end.
        this.shared = SharedInput.of(content, templates);
        this.seed = shared.seed();
        this.common = SharedContent.read(content);
        this.publisher = SharedContent.publisher(templates);
        this.audiences = common.audiences();
        this.cases = CaseReader.folders(content);
    }

    /**
     * Reads what all cases share.
     *
     * @param templates the folder of templates; the program's own if empty
     * @throws org.benchleaf.publish.TemplateStop if one of them cannot be used
     */
    public static ContentStages open(Path content, Optional<Path> templates, LocalDate day) {
        return new ContentStages(content, templates, day);
    }

    /** What was said about what all cases share. */
    public Messages messages() {
        return common.messages();
    }

    @Override
    public String seed(String caseId) {
        Set<String> classes = common.library().classes().stream().filter(course -> course.caseId().equals(caseId))
                .flatMap(course -> Stream.of(course.id() + ".yaml", course.id() + ".issues.yaml")).collect(Collectors.toSet());
        return ofPages() + (classes.isEmpty() ? "" : shared.ofClasses(classes));
    }

    /** The installed site keeps the shared files as files; every other form holds them inside. */
    private String ofPages() {
        return forms().stream().allMatch(Studio.TakeAlong.INSTALLED::equals) ? seed : seed + shared.ofAssets();
    }

    @Override
    public Optional<Path> changed() {
        return shared.changed();
    }

    @Override
    public List<Audience> audiences() {
        return audiences;
    }

    @Override
    public List<Path> cases() {
        return cases;
    }

    @Override
    public Checked check(Path caseFolder) {
        Draft draft = CaseReader.read(content, caseFolder);
        org.benchleaf.check.Checked checked = CaseChecker.check(draft, common.library(), day, common.deriver()::ph);
        if (draft.isUnfinished() || checked.treatment().isEmpty()) {
            Messages review = new CaseReview(common, day).of(caseFolder, draft, checked, others());
            return draft.isUnfinished() ? new NotMade("draft", leftOut(draft, review)) : new NotMade("unsound", review);
        }
        Messages messages = new Messages();
        messages.addAll(checked.messages());
        Map<Audience, Clearance> clearances = new EnumMap<>(Audience.class);
        audiences.forEach(audience -> clearances.put(audience,
                Clearance.on(day, checked.treatment().get().publication(), audience)));
        clearances.values().stream().flatMap(clearance -> clearance.told().stream()).distinct().forEach(messages::add);
        PrivateScan own = PrivateScan.ofCase(draft.id(), draft.confidential(), common.studioName());
        messages.addAll(own.messages());
        Stream.concat(draft.sources().stream(), common.draft().textsOf(draft.id()).stream())
                .forEach(source -> own.scanSource(source).forEach(messages::add));
        return new Sound(draft, checked, clearances, own, messages);
    }

    /** What is told of a draft when the others are published. */
    private static Messages leftOut(Draft draft, Messages told) {
        long errors = told.all().stream().filter(message -> message.severity() == Severity.ERROR).count();
        long open = told.all().stream().filter(message -> message.id() instanceof DraftMessages).count();
        Messages messages = new Messages();
        if (errors == 0 && open == 0) {
            told.all().stream().filter(message -> message.id() == ConsentMessages.STILL_DRAFT).forEach(messages::add);
        } else {
            messages.add(DraftMessages.LEFT_OUT.at(draft.place(), "case", draft.id(),
                    "errors", errors + (errors == 1 ? " error" : " errors"), "open", open));
        }
        return messages;
    }

    /**
     * A case of which no pages are made.
     *
     * @param standing {@code draft}, in which nothing is held against the others, or {@code unsound}: it cannot be understood
     */
    private record NotMade(String standing, Messages messages) implements Checked {

        @Override
        public Made make() {
            return new Made(Map.of(), new Messages());
        }
    }

    /** A case that may be made. */
    private final class Sound implements Checked {

        private final Draft draft;
        private final org.benchleaf.check.Checked checked;
        private final Map<Audience, Clearance> clearances;
        private final PrivateScan own;
        private final Messages messages;

        Sound(Draft draft, org.benchleaf.check.Checked checked, Map<Audience, Clearance> clearances, PrivateScan own,
                Messages messages) {
            this.draft = draft;
            this.checked = checked;
            this.clearances = clearances;
            this.own = own;
            this.messages = messages;
        }

        @Override
        public Messages messages() {
            return messages;
        }

        @Override
        public String standing() {
            StringBuilder standing = new StringBuilder().append(checked.findings());
            clearances.forEach((audience, clearance) -> standing.append(audience).append(clearance.outputs())
                    .append(clearance.printed()).append(clearance.strengths()));
            messages.all().stream().map(MessageText::of).forEach(standing::append);
            return standing.toString();
        }

        @Override
        public Made make() {
            TreatmentCase treatment = checked.treatment().orElseThrow();
            Derived derived = common.deriver().derive(treatment, checked.findings());
            Messages said = new Messages();
            said.addAll(derived.messages());
            Map<Audience, Part> parts = new EnumMap<>(Audience.class);
            for (Clearance before : said.hasErrors() ? List.<Clearance>of() : clearances.values()) {
                Clearance clearance = before.of(derived.worked());
                clearance.told().stream().filter(message -> !before.told().contains(message)).forEach(said::add);
                part(treatment, derived.worked(), clearance, said).ifPresent(part -> parts.put(clearance.audience(), part));
            }
            if (said.hasErrors()) {
                // No pages, so that the private values of other cases are looked for in the sources at least.
                PrivateScan others = others().without(draft.id());
                draft.sources().forEach(source -> others.scanSource(source).forEach(said::add));
            }
            return new Made(said.hasErrors() ? Map.of() : parts, said);
        }

        private Optional<Part> part(TreatmentCase treatment, WorkedCase worked, Clearance clearance, Messages said) {
            CasePages pages = PageComposer.compose(worked, common.library(), clearance);
            CasePictures pictures = CasePictures.make(content, treatment, clearance, said);
            if (said.hasErrors()) {
                return Optional.empty();
            }
            List<SiteFile> data = Stream.concat(pages.files().stream(), pictures.manifest(pages.manifest()).stream())
                    .map(publisher::publish).toList();
            List<SiteFile> files = new ArrayList<>(published(pages, data, publisher.with(pictures), pictures.files(), said));
            files.addAll(data);
            files.addAll(pictures.files());
            pictures.link(pages.linkPicture()).ifPresent(files::add);
            List<SearchEntry> found = searched(pages.pages(), pages::searchTitle, files);
            CaseCard card = pages.card().withPictureFiles(pictures.noted(pages.card().picture())).foundBy(found);
            for (TranslatedPages translated : pages.translated()) {
                card = card.foundBy(translated.language(), told(translated, publisher.with(pictures), files,
                        there -> taken(forms(), translated.book().orElseThrow(), there, data, pictures.files(), said)));
            }
            scan(files, card, said);
            return Optional.of(new Part(files, card));
        }

        private List<SiteFile> published(CasePages pages, List<SiteFile> data, SitePublisher withPictures,
                List<SiteFile> pictures, Messages said) {
            List<SiteFile> files = pages.pages().stream().map(withPictures::publish).toList();
            if (files.isEmpty() || forms().isEmpty()) {
                return files;
            }
            TakenFiles taken = taken(forms(), pages.book(), files, data, pictures, said);
            List<SiteFile> all = new ArrayList<>(files);
            // Once more, since the first page lists the files made of them with their sizes.
            all.set(0, withPictures.with(taken).publish(pages.pages().get(0)));
            all.addAll(taken.files());
            return all;
        }

        private TakenFiles taken(Set<Studio.TakeAlong> forms, Book book, List<SiteFile> pages, List<SiteFile> data,
                List<SiteFile> pictures, Messages said) {
            TakenFiles taken = TakenFiles.ofCase(forms, book, pages, data, Stream.concat(pictures.stream(), assets().stream()).toList(),
                    publisher.takenStyles());
            taken.unprinted().forEach((page, letter) -> said.add(EditionMessages.LETTER_NOT_PRINTED.at(draft.place(),
                    "letter", letter, "page", page)));
            return taken;
        }

        /** No page of the case may hold private values, its own or another's; what goes to the site's own pages neither. */
        private void scan(List<SiteFile> files, CaseCard card, Messages said) {
            PrivateScan all = own.with(others().without(draft.id()));
            List<Searchable> aside = takenAlong();
            // Where they belong to all cases, they are searched for whole names alone.
            aside.forEach(file -> own.scan(file).forEach(said::add));
            SearchedFiles elsewhere = SearchedFiles.of(Stream.concat(aside.stream().map(Searchable::file), files.stream()).toList());
            Stream.concat(files.stream(), Stream.of(SiteFile.text(card.path(), card.toString())))
                    .forEach(file -> all.scan(Searchable.of(file, elsewhere)).forEach(said::add));
        }
    }

    /** The shared files, made ready to be searched once for all cases; none where nothing that holds them is taken away. */
    private synchronized List<Searchable> takenAlong() {
        if (takenAlong == null) {
            takenAlong = forms().isEmpty() ? List.of() : assets().stream().map(Searchable::of).toList();
        }
        return takenAlong;
    }

    /**
     * Adds pages in another language and what can be taken away of them, and returns what the search knows of them.
     *
     * @param taken makes of finished pages what can be taken away
     */
    private List<SearchEntry> told(TranslatedPages translated, SitePublisher withPictures, List<SiteFile> files,
            Function<List<SiteFile>, TakenFiles> taken) {
        Map<String, SiteFile> originals = files.stream().collect(Collectors.toMap(SiteFile::path, file -> file));
        List<Page> pages = translated.pages();
        BiFunction<Page, SitePublisher, SiteFile> told = (page, maker) -> SiteFile.text(page.path(), translated.marked(
                maker.publish(page).text(), originals.get(translated.originalOf(page)).text()));
        List<SiteFile> there = new ArrayList<>(pages.stream().map(page -> told.apply(page, withPictures)).toList());
        TakenFiles away = there.isEmpty() ? TakenFiles.none() : taken.apply(there);
        if (!away.files().isEmpty()) {
            there.set(0, told.apply(pages.get(0), withPictures.with(away)));
        }
        files.addAll(there);
        files.addAll(away.files());
        return searched(pages, translated::searchTitle, files);
    }

    /**
     * What the search knows of pages, read from their files; the sentences that it shows are added to the files.
     *
     * @param title of a page as the search lists it
     */
    private List<SearchEntry> searched(List<Page> pages, Function<Page, String> title, List<SiteFile> files) {
        Map<String, SiteFile> byPath = files.stream().collect(Collectors.toMap(SiteFile::path, file -> file));
        List<PageSearch> read = pages.parallelStream().map(page -> PageSearch.of(page, byPath.get(page.path()).text())).toList();
        read.forEach(search -> files.add(publisher.publish(search.sentences())));
        return IntStream.range(0, read.size()).mapToObj(at -> read.get(at).entry(title.apply(pages.get(at)))).toList();
    }

    /** Made once, when the first page needs them. */
    private synchronized List<SiteFile> assets() {
        if (assets == null) {
            assets = publisher.assets();
        }
        return assets;
    }

    /** Made when the first case is, so that a run in which nothing has changed reads no case. */
    private synchronized PrivateScan others() {
        if (others == null) {
            Map<String, Confidential> all = new ConcurrentHashMap<>();
            cases.parallelStream().forEach(folder -> all.put(folder.getFileName().toString(),
                    CaseReader.confidential(content, folder)));
            values = all;
            others = PrivateScan.ofAll(all, common.studioName());
        }
        return others;
    }

    @Override
    public Optional<String> privateValues() {
        return others == null ? Optional.empty() : Optional.of(PrivateMarks.of(values));
    }

    @Override
    public PrivateScan newValues(String before) {
        others();
        return PrivateScan.ofAll(PrivateMarks.newSince(before, values), common.studioName());
    }

    private Set<Studio.TakeAlong> forms() {
        return common.library().studio().takeAlong();
    }

    @Override
    public SharedFiles shared(Audience audience, List<CaseCard> cards, Progress.Shown shown) {
        SitePages pages = SiteComposer.compose(common.library(), cards,
                CheckValueReader.read(common.library().formulary()), AuthorGuideReader.read(), audience);
        List<SiteFile> files = new ArrayList<>();
        SitePublisher withPictures = publisher.with(CasePictures.noted(cards));
        try (Progress progress = shown.of("Pages of the whole site", pages.pages().size())) {
            files.addAll(pages.pages().parallelStream().map(page -> {
                SiteFile file = withPictures.publish(page);
                progress.step();
                return file;
            }).toList());
        }
        SearchIndex.files(common.library(), cards, searched(pages.pages(), Page::title, files))
                .forEach(file -> files.add(publisher.publish(file)));
        pages.translated().forEach(there -> SearchIndex.files(common.library(), there.language(), cards, told(there, withPictures, files,
                        none -> TakenFiles.none()))
                .forEach(file -> files.add(publisher.publish(file))));
        pages.files().forEach(file -> files.add(publisher.publish(file)));
        files.addAll(assets());
        if (forms().contains(Studio.TakeAlong.INSTALLED)) {
            files.add(publisher.worker());
        }
        Messages said = new Messages();
        if (others != null) {
            PrivateScan inShared = PrivateScan.ofShared(values, common.studioName());
            common.draft().texts().forEach(source -> inShared.scanSource(source).forEach(said::add));
        }
        scanned(files, said);
        // Not searched: its short names of functions would be taken for names of people.
        files.add(publisher.calculations());
        if (common.library().studio().fonts() == Studio.Fonts.OF_THE_SITE) {
            files.addAll(publisher.fonts());
        }
        return new SharedFiles(files, said, bundles(cards, withPictures, pages.pages().get(0)));
    }

    private void scanned(List<SiteFile> files, Messages said) {
        if (others != null) {
            files.parallelStream().map(file -> others.scan(Searchable.of(file))).toList()
                    .forEach(leaks -> leaks.forEach(said::add));
        }
    }

    private Optional<Bundles> bundles(List<CaseCard> cards, SitePublisher withPictures, Page first) {
        Set<Studio.TakeAlong> forms = forms();
        if (!forms.contains(Studio.TakeAlong.EPUB) && !forms.contains(Studio.TakeAlong.ZIP)) {
            return Optional.empty();
        }
        return Optional.of(new Bundles() {
            @Override
            public String key() {
                return ofPages() + day + new TreeSet<>(forms);
            }

            @Override
            public TakenFiles make(List<SiteFile> files, Messages said) {
                TakenFiles taken = TakenFiles.ofSite(forms, Books.ofLibrary(common.library(), cards, day), files,
                        publisher.takenStyles().book());
                scanned(taken.files(), said);
                return taken;
            }

            @Override
            public SiteFile offered(TakenFiles taken) {
                return withPictures.with(taken).publish(first);
            }
        });
    }
}
