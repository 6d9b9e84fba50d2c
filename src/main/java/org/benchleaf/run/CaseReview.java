package org.benchleaf.run;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.benchleaf.check.Checked;
import org.benchleaf.check.Remainder;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.derive.Derived;
import org.benchleaf.message.ConsentMessages;
import org.benchleaf.message.DraftMessages;
import org.benchleaf.message.FormMessages;
import org.benchleaf.message.LeakMessages;
import org.benchleaf.message.Message;
import org.benchleaf.message.Messages;
import org.benchleaf.message.ReadingMessages;
import org.benchleaf.message.ReferenceMessages;
import org.benchleaf.model.Picture;
import org.benchleaf.model.Publication;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.privacy.PrivateScan;
import org.benchleaf.publish.PictureMaker;
import org.benchleaf.read.Draft;

/** Everything that can be told of a case without making its pages: no stage hides what a later one can still tell. */
public final class CaseReview {

    private final SharedContent shared;
    private final LocalDate day;

    /** Prepares for the cases of one studio on one day. */
    public CaseReview(SharedContent shared, LocalDate day) {
        this.shared = shared;
        this.day = day;
    }

    /**
     * What there is to tell, each once.
     *
     * @param folder of the case
     * @param others looks for the private values of all cases
     */
    public Messages of(Path folder, Draft draft, Checked checked, PrivateScan others) {
        return of(folder, draft, checked, derived(checked), others);
    }

    /**
     * The same of a case that was worked out before.
     *
     * @param derived as {@link #derived} gives it
     */
    Messages of(Path folder, Draft draft, Checked checked, Optional<Derived> derived, PrivateScan others) {
        Messages messages = new Messages();
        messages.addAll(checked.messages());
        leaks(draft, others, messages);
        // Their heads alone, so that a check stays quick; the dots are read when the pictures are made.
        pictures(checked).forEach(picture -> PictureMaker.look(folder.resolve("pictures"), picture, messages));
        // What has errors gets no sheets anyway.
        Optional<Derived> whole = derived.filter(one -> checked.treatment().isPresent() && !one.messages().hasErrors());
        publication(checked).stream().flatMap(publication -> shared.audiences().stream()
                        .map(audience -> Clearance.on(day, publication, audience)))
                .map(clearance -> whole.map(Derived::worked).map(clearance::of).orElse(clearance))
                .flatMap(clearance -> clearance.told().stream()).distinct().forEach(messages::add);
        derived.stream().flatMap(one -> checked.remainder().map(remainder -> remainder.sound(one.messages()))
                .orElse(one.messages().all()).stream()).forEach(messages::add);
        return draft.isUnfinished() ? unfinished(messages) : messages;
    }

    /** Of a draft only what is written has to be right; what the trade will ask of the finished case is listed. */
    private static Messages unfinished(Messages told) {
        Messages messages = new Messages();
        told.all().stream().map(message -> isOfWhatIsWritten(message.id()) ? message : DraftMessages.settle(message))
                .forEach(messages::add);
        return messages;
    }

    private static boolean isOfWhatIsWritten(Message.Id id) {
        return id instanceof ReadingMessages || id instanceof FormMessages || id instanceof LeakMessages
                || id instanceof DraftMessages || id instanceof ConsentMessages || id instanceof ReferenceMessages;
    }

    private void leaks(Draft draft, PrivateScan others, Messages messages) {
        PrivateScan own = PrivateScan.ofCase(draft.id(), draft.confidential(), shared.studioName());
        messages.addAll(own.messages());
        PrivateScan all = own.with(others.without(draft.id()));
        draft.sources().forEach(source -> all.scanSource(source).forEach(messages::add));
        // A class belongs to its case, and its words stand on the case's pages.
        shared.draft().textsOf(draft.id()).forEach(source -> own.scanSource(source).forEach(messages::add));
    }

    private static List<Picture> pictures(Checked checked) {
        return checked.treatment().map(TreatmentCase::pictures)
                .orElseGet(() -> checked.remainder().map(Remainder::pictures).orElse(List.of()));
    }

    /** The case worked out, of one with errors as far as it can be; empty where nothing can. */
    Optional<Derived> derived(Checked checked) {
        // What is shared holds stand-ins where it has errors; nothing is worked out from those.
        return shared.messages().hasErrors() ? Optional.empty()
                : checked.treatment().or(() -> checked.remainder().flatMap(Remainder::toWorkOut))
                        .map(treatment -> shared.deriver().derive(treatment, checked.findings()));
    }

    private static Optional<Publication> publication(Checked checked) {
        return checked.treatment().map(TreatmentCase::publication)
                .or(() -> checked.remainder().flatMap(Remainder::publication));
    }
}
