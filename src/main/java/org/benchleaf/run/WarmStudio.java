package org.benchleaf.run;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.benchleaf.compose.CaseComposition;
import org.benchleaf.compose.SiteComposition;
import org.benchleaf.compose.cases.TranslatedPages;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.message.Message;
import org.benchleaf.message.Messages;
import org.benchleaf.model.CourseClass;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.Page;
import org.benchleaf.privacy.PrivateScan;
import org.benchleaf.publish.FinishedPages;
import org.benchleaf.publish.Pictures;
import org.benchleaf.publish.SiteFile;
import org.benchleaf.publish.SitePublisher;
import org.benchleaf.publish.TemplateStop;
import org.benchleaf.read.AuthorGuideReader;
import org.benchleaf.read.CheckValueReader;

/**
 * The content of a studio, kept read from one look to the next: what an edit touches is read again, and made again when it is
 * asked for. Not for several threads at once.
 *
 * <p>A case touches its own pages and, by its card, those of the whole site; a class its case; the glossary the words of all
 * pages and nothing that is worked out; a template how pages look; any other shared file everything.
 */
public final class WarmStudio {

    /** Each holds a whole case, so few are kept; of the others the card stays. */
    private static final int MOST_CASES = 8;

    private final Path content;
    private final Optional<Path> templates;
    private final Supplier<LocalDate> today;
    private final PrivateFacts facts;
    private final Map<String, WarmCase> cases = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, WarmCase> eldest) {
            return size() > MOST_CASES;
        }
    };
    private final Map<String, Map<Audience, CaseCard>> cards = new ConcurrentHashMap<>();
    /** Cases of which the card may be another one; until it is made anew the last good one stands. */
    private final Set<String> stale = new HashSet<>();
    private final Map<Audience, Site> sites = new EnumMap<>(Audience.class);
    private DiskState state;
    private LocalDate day;
    private SharedContent shared;
    private Optional<SitePublisher> publisher = Optional.empty();
    private Optional<Message> templateFault = Optional.empty();
    private Optional<List<SiteFile>> assets = Optional.empty();
    private Set<String> lastChanged = Set.of();
    private SharedTold told;

    /**
     * Reads what all cases share.
     *
     * @param templates the folder of templates; the program's own if empty
     * @param today the day by which permissions are judged
     */
    public WarmStudio(Path content, Optional<Path> templates, Supplier<LocalDate> today) {
        this.content = content;
        this.templates = templates;
        this.today = today;
        this.facts = new PrivateFacts(content);
        this.day = today.get();
        // Before anything is read, so that what changes from here on is found at the next look.
        this.state = DiskState.of(content, templates);
        this.shared = SharedContent.read(content);
        this.stale.addAll(state.cases().keySet());
        openTemplates();
    }

    /** Of which pages one in another language is, and the page of which it is the translation. */
    record Translated(TranslatedPages pages, Page original) {
    }

    /**
     * A page before it is written.
     *
     * @param translated empty for a page of the original language
     * @param publisher writes it, with its pictures
     * @param look stands for everything else that decides how it looks: templates, dots of pictures
     */
    record Composed(Page page, Optional<Translated> translated, SitePublisher publisher, List<Object> look) {

        /** The finished page; one in another language with its original words marked, as an edition has it. */
        SiteFile previewed(String script) {
            SiteFile file = publisher.publish(page.previewed(script));
            return translated.map(one -> SiteFile.text(file.path(), one.pages().marked(file.text(),
                    FinishedPages.ofSite().original(publisher.publish(one.original()))).html())).orElse(file);
        }
    }

    /**
     * The pages of a whole site, and from what they are made.
     */
    private record Site(SharedContent shared, List<CaseCard> cards, SiteComposition composition) {
    }

    /** Looks at the disk and the day; whether anything has changed. */
    boolean look() {
        DiskState now = DiskState.of(content, templates);
        LocalDate then = today.get();
        if (now.equals(state) && then.equals(day)) {
            return false;
        }
        DiskState before = state;
        try {
            take(now, then);
        } catch (RuntimeException failed) {
            // Another look at the same files is a new one.
            state = before;
            throw failed;
        }
        return true;
    }

    private void take(DiskState now, LocalDate then) {
        DiskState before = state;
        state = now;
        if (!then.equals(day)) {
            day = then;
            forgetAll();
        }
        casesChanged(before);
        sharedChanged(before);
        if (!now.templates().equals(before.templates())) {
            openTemplates();
        }
    }

    private void casesChanged(DiskState before) {
        Set<String> changed = state.casesOtherThanIn(before);
        if (!changed.isEmpty()) {
            lastChanged = changed;
            forget(changed);
            facts.forget(changed);
            cards.keySet().retainAll(state.cases().keySet());
            stale.retainAll(state.cases().keySet());
            cases.values().forEach(WarmCase::forgetMessages);
        }
    }

    private void sharedChanged(DiskState before) {
        boolean words = !state.glossary().equals(before.glossary());
        Set<String> classes = state.classesOtherThanIn(before);
        boolean all = !state.others().equals(before.others());
        if (!words && classes.isEmpty() && !all) {
            return;
        }
        SharedContent old = shared;
        shared = SharedContent.read(content);
        if (all || old.messages().hasErrors() != shared.messages().hasErrors()) {
            forgetAll();
        } else {
            Set<String> theirs = new TreeSet<>();
            Stream.of(old, shared).flatMap(each -> each.library().classes().stream())
                    .filter(course -> classes.contains(course.id())).map(CourseClass::caseId).forEach(theirs::add);
            forget(theirs);
            cases.replaceAll((id, one) -> one.with(shared));
        }
    }

    private void forgetAll() {
        forget(state.cases().keySet());
    }

    private void forget(Set<String> ids) {
        cases.keySet().removeAll(ids);
        stale.addAll(ids);
    }

    private void openTemplates() {
        try {
            publisher = Optional.of(SharedContent.publisher(templates));
            assets = Optional.empty();
            templateFault = Optional.empty();
        } catch (TemplateStop wrong) {
            templateFault = Optional.of(wrong.told());
        }
    }

    /** The sites, that for the public first. */
    List<Audience> audiences() {
        return shared.audiences();
    }

    /** The ids of all cases. */
    Set<String> caseIds() {
        return state.cases().keySet();
    }

    /** The cases that changed last. */
    Set<String> lastChanged() {
        return lastChanged;
    }

    /** One case as it stands; empty if there is none of that name. */
    Optional<WarmCase> caseNamed(String id) {
        return state.cases().containsKey(id) ? Optional.of(cases.computeIfAbsent(id, this::read)) : Optional.empty();
    }

    private WarmCase read(String id) {
        return WarmCase.read(content, content.resolve("cases").resolve(id), shared, day);
    }

    /** Whether pages can be made of what is shared. */
    boolean isSound() {
        return !shared.messages().hasErrors() && templateFault.isEmpty();
    }

    /** A page of a case; empty if there is none or it cannot be made now. */
    Optional<Composed> casePage(String id, Audience audience, String path) {
        return caseNamed(id).filter(one -> isSound()).flatMap(one -> one.composition(audience).flatMap(pages -> pages.page(path)
                .map(page -> composed(page, translated(pages, page), one.pictures(audience).orElseThrow(), state.pictures(content, id)))));
    }

    /** A page of the whole site; empty if there is none or it cannot be made now. */
    Optional<Composed> sitePage(Audience audience, String path) {
        return isSound() ? site(audience).composition().page(path).map(page -> composed(page,
                translated(site(audience).composition(), page),
                CasePictures.noted(site(audience).cards()), Map.of())) : Optional.empty();
    }

    private static Optional<Translated> translated(CaseComposition pages, Page page) {
        return pages.translationOf(page.path()).map(one -> new Translated(one, pages.page(one.originalOf(page)).orElseThrow()));
    }

    private static Optional<Translated> translated(SiteComposition pages, Page page) {
        return pages.translationOf(page.path()).map(one -> new Translated(one, pages.page(one.originalOf(page)).orElseThrow()));
    }

    private Composed composed(Page page, Optional<Translated> translated, Pictures pictures, Object dots) {
        SitePublisher own = publisher.orElseThrow();
        return new Composed(page, translated, own.with(pictures), List.of(own, dots, translated.map(Translated::original)));
    }

    private Site site(Audience audience) {
        List<CaseCard> now = cards(audience);
        Site before = sites.get(audience);
        if (before == null || before.shared() != shared || !before.cards().equals(now)) {
            sites.put(audience, new Site(shared, now, new SiteComposition(shared.library(), now,
                    CheckValueReader.read(shared.library().formulary()), AuthorGuideReader.read(), audience)));
        }
        return sites.get(audience);
    }

    private List<CaseCard> cards(Audience audience) {
        // Each case is looked at by one thread alone, and what is kept stays as it is meanwhile.
        Map<String, WarmCase> kept = new HashMap<>(cases);
        stale.parallelStream().forEach(id -> {
            WarmCase one = kept.containsKey(id) ? kept.get(id) : read(id);
            Map<Audience, CaseCard> own = new EnumMap<>(Audience.class);
            audiences().forEach(site -> one.card(site).ifPresent(card -> own.put(site, card)));
            if (one.composition(audience).isPresent()) {
                cards.put(id, own);
            }
        });
        stale.clear();
        return cards.entrySet().stream().sorted(Map.Entry.comparingByKey()).map(one -> one.getValue().get(audience))
                .filter(card -> card != null).toList();
    }

    /** A file of data of a site; empty if there is none or it cannot be made now. */
    Optional<SiteFile> data(Optional<String> caseId, Audience audience, String path) {
        if (!isSound()) {
            return Optional.empty();
        }
        List<DataFile> files = caseId.flatMap(this::caseNamed).map(one -> one.files(audience))
                .orElseGet(() -> site(audience).composition().files());
        return files.stream().filter(file -> file.path().equals(path)).findFirst().map(publisher.orElseThrow()::publish);
    }

    /** The styles, scripts and drawings of a site. */
    List<SiteFile> assets() {
        if (assets.isEmpty()) {
            assets = publisher.map(one -> Stream.of(one.assets(), one.fonts(),
                    List.of(one.calculations())).flatMap(List::stream).toList());
        }
        return assets.orElse(List.of());
    }

    /** The picture of which a file of a site is made; empty if there is none. */
    Optional<WarmPictures.Source> picture(String id, Audience audience, String path) {
        return caseNamed(id).flatMap(one -> one.picture(audience, path)).map(picture -> {
            Path folder = CasePictures.folder(content, id);
            return new WarmPictures.Source(id, folder, state.pictures(content, id).getOrDefault(folder.resolve(picture.file()),
                    ""), picture);
        });
    }

    /** Looks for the private values of all cases. */
    PrivateScan privateScan() {
        return facts.scan(caseIds(), shared.studioName());
    }

    /** What is told of the files that all cases share. */
    Messages sharedMessages() {
        PrivateScan scan = privateScan();
        if (told == null || told.shared() != shared || told.scan() != scan) {
            Messages messages = new Messages();
            messages.addAll(shared.messages());
            shared.draft().texts().forEach(text -> scan.scanSource(text).forEach(messages::add));
            told = new SharedTold(shared, scan, messages);
        }
        Messages all = new Messages();
        all.addAll(told.messages());
        templateFault.ifPresent(all::add);
        return all;
    }

    /** What was told of shared files, and from what: to look through them takes longer than to make a page. */
    private record SharedTold(SharedContent shared, PrivateScan scan, Messages messages) {
    }
}
