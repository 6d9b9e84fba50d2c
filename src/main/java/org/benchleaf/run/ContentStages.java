package org.benchleaf.run;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.check.CaseChecker;
import org.benchleaf.compose.PageComposer;
import org.benchleaf.compose.cases.Book;
import org.benchleaf.compose.cases.CasePages;
import org.benchleaf.compose.cases.TranslatedPages;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.compose.part.SearchEntry;
import org.benchleaf.derive.Derived;
import org.benchleaf.derive.WorkedCase;
import org.benchleaf.message.ConsentMessages;
import org.benchleaf.message.DraftMessages;
import org.benchleaf.message.EditionMessages;
import org.benchleaf.message.MessageText;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Severity;
import org.benchleaf.model.Studio;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.privacy.PrivateScan;
import org.benchleaf.privacy.Searchable;
import org.benchleaf.privacy.SearchedFiles;
import org.benchleaf.publish.FinishedPages;
import org.benchleaf.publish.SiteFile;
import org.benchleaf.publish.SitePublisher;
import org.benchleaf.publish.TakenFiles;
import org.benchleaf.read.CaseReader;
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
    private final PrivateValues values;
    private List<SiteFile> assets;
    private List<Searchable> takenAlong;

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
        this.values = new PrivateValues(content, cases, common.studioName());
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
            Messages review = new CaseReview(common, day).of(caseFolder, draft, checked, values.scan());
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
                PrivateScan others = values.scan().without(draft.id());
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
            FinishedPages finished = FinishedPages.ofCase();
            List<SiteFile> files = new ArrayList<>(published(pages, data, publisher.with(pictures), pictures.files(), finished, said));
            files.addAll(data);
            files.addAll(pictures.files());
            pictures.link(pages.linkPicture()).ifPresent(files::add);
            PageFiles made = new PageFiles(publisher.with(pictures), finished);
            List<SearchEntry> found = made.searched(pages.pages(), pages::searchTitle, files);
            CaseCard card = pages.card().withPictureFiles(pictures.noted(pages.card().picture())).foundBy(found);
            for (TranslatedPages translated : pages.translated()) {
                card = card.foundBy(translated.language(), made.told(translated, files,
                        there -> taken(translated.book().orElseThrow(), there, data, pictures.files(), finished, said)));
            }
            scan(files, card, said);
            return Optional.of(new Part(files, card));
        }

        private List<SiteFile> published(CasePages pages, List<SiteFile> data, SitePublisher withPictures,
                List<SiteFile> pictures, FinishedPages finished, Messages said) {
            List<SiteFile> files = pages.pages().stream().map(withPictures::publish).toList();
            if (files.isEmpty() || forms().isEmpty()) {
                return files;
            }
            TakenFiles taken = taken(pages.book(), files, data, pictures, finished, said);
            List<SiteFile> all = new ArrayList<>(files);
            // Once more, since the first page lists the files made of them with their sizes.
            all.set(0, withPictures.with(taken).publish(pages.pages().get(0)));
            all.addAll(taken.files());
            return all;
        }

        private TakenFiles taken(Book book, List<SiteFile> pages, List<SiteFile> data, List<SiteFile> pictures,
                FinishedPages finished, Messages said) {
            TakenFiles taken = TakenFiles.ofCase(forms(), book, pages, data, Stream.concat(pictures.stream(), assets().stream()).toList(),
                    publisher.takenStyles(), finished);
            taken.unprinted().forEach((page, letter) -> said.add(EditionMessages.LETTER_NOT_PRINTED.at(draft.place(),
                    "letter", letter, "page", page)));
            return taken;
        }

        /** No page of the case may hold private values, its own or another's; what goes to the site's own pages neither. */
        private void scan(List<SiteFile> files, CaseCard card, Messages said) {
            PrivateScan all = own.with(values.scan().without(draft.id()));
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

    /** Made once, when the first page needs them. */
    private synchronized List<SiteFile> assets() {
        if (assets == null) {
            assets = publisher.assets();
        }
        return assets;
    }

    @Override
    public Optional<String> privateValues() {
        return values.marks();
    }

    @Override
    public PrivateScan newValues(String before) {
        return values.newSince(before);
    }

    private Set<Studio.TakeAlong> forms() {
        return common.library().studio().takeAlong();
    }

    @Override
    public WholeSite whole(Audience audience, List<CaseCard> cards) {
        return new ContentSite(common, values, audience, cards, new SiteMarks(seed + shared.ofAssets() + shared.ofClasses(), day),
                publisher, this::assets);
    }
}
