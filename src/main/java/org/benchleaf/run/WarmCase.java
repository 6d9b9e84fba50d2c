package org.benchleaf.run;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.check.CaseChecker;
import org.benchleaf.check.Checked;
import org.benchleaf.compose.CaseComposition;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.derive.Derived;
import org.benchleaf.message.Messages;
import org.benchleaf.model.Picture;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.page.DataFile;
import org.benchleaf.privacy.PrivateScan;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.Draft;

/** One case as its files stood when it was read, with what was made of it so far. Not for several threads at once. */
final class WarmCase {

    private final Path content;
    private final Path folder;
    private final SharedContent shared;
    private final CaseReview review;
    private final LocalDate day;
    private final Draft draft;
    private final Checked checked;
    private final Optional<Derived> derived;
    private final Map<Audience, Pages> pages = new EnumMap<>(Audience.class);
    private Messages messages;

    private WarmCase(Path content, Path folder, SharedContent shared, LocalDate day, Draft draft, Checked checked,
            Optional<Derived> derived) {
        this.content = content;
        this.folder = folder;
        this.shared = shared;
        this.review = new CaseReview(shared, day);
        this.day = day;
        this.draft = draft;
        this.checked = checked;
        this.derived = derived.or(() -> review.derived(checked));
    }

    /**
     * What a site holds of the case.
     *
     * @param clearance of that site
     * @param composition makes the pages
     * @param pictures their sizes
     */
    private record Pages(Clearance clearance, CaseComposition composition, CasePictures pictures) {
    }

    /** Reads, checks and works out. */
    static WarmCase read(Path content, Path folder, SharedContent shared, LocalDate day) {
        Draft draft = CaseReader.read(content, folder);
        return new WarmCase(content, folder, shared, day, draft,
                CaseChecker.check(draft, shared.library(), day, shared.deriver()::ph), Optional.empty());
    }

    /** The same case where what is shared has changed in nothing that cases are checked or worked out with. */
    WarmCase with(SharedContent other) {
        return new WarmCase(content, folder, other, day, draft, checked,
                other.messages().hasErrors() ? Optional.empty() : derived);
    }

    /** Whether it is still a draft. */
    boolean isDraft() {
        return draft.isUnfinished();
    }

    /**
     * Everything that {@code check} tells of the case.
     *
     * @param others looks for the private values of all cases
     */
    Messages messages(PrivateScan others) {
        if (messages == null) {
            messages = review.of(folder, draft, checked, derived, others);
        }
        return messages;
    }

    /** Forgets what was told, since private values of other cases have changed. */
    void forgetMessages() {
        messages = null;
    }

    /** Makes the pages of a site; empty if the case cannot be understood or worked out. */
    Optional<CaseComposition> composition(Audience audience) {
        return pages(audience).map(Pages::composition);
    }

    /** The sizes of the pictures in a site. */
    Optional<CasePictures> pictures(Audience audience) {
        return pages(audience).map(Pages::pictures);
    }

    /** The picture of which a file of a site is made. */
    Optional<Picture> picture(Audience audience, String path) {
        return pages(audience).flatMap(site -> site.clearance().pictures(checked.treatment().orElseThrow()).stream()
                .filter(picture -> site.pictures().of(draft.id(), picture.id()).stream()
                        .anyMatch(size -> size.path().equals(path))).findFirst());
    }

    /** The data of a site. */
    List<DataFile> files(Audience audience) {
        return pages(audience).map(site -> Stream.concat(site.composition().files().stream(),
                site.pictures().manifest(site.composition().manifest()).stream()).toList()).orElse(List.of());
    }

    /** What the pages of the whole site need of the case; empty if the site has no page of it. */
    Optional<CaseCard> card(Audience audience) {
        return pages(audience).filter(site -> !site.composition().paths().isEmpty()).map(site -> {
            CaseCard card = site.composition().card();
            return card.withPictureFiles(site.pictures().noted(card.picture()));
        });
    }

    /** Looks for private values, those of the case and those of all others. */
    PrivateScan scan(PrivateScan others) {
        return PrivateScan.ofCase(draft.id(), draft.confidential(), shared.studioName()).with(others.without(draft.id()));
    }

    private Optional<Pages> pages(Audience audience) {
        return derived.filter(one -> checked.treatment().isPresent() && !one.messages().hasErrors())
                .map(one -> pages.computeIfAbsent(audience, site -> pages(checked.treatment().get(), one, site)));
    }

    private Pages pages(TreatmentCase treatment, Derived one, Audience audience) {
        Clearance clearance = Clearance.forAuthor(day, treatment.publication(), audience).of(one.worked());
        // What is told of pictures stands in the review.
        return new Pages(clearance, new CaseComposition(one.worked(), shared.library(), clearance),
                CasePictures.sizes(content, treatment, clearance, new Messages()));
    }
}
