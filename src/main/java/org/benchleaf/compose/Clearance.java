package org.benchleaf.compose;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.benchleaf.message.ConsentMessages;
import org.benchleaf.message.Message;
import org.benchleaf.model.Permission;
import org.benchleaf.model.Permission.Use;
import org.benchleaf.model.Picture;
import org.benchleaf.model.Publication;
import org.benchleaf.model.TreatmentCase;

/**
 * What of a case may be produced on one day, and what is said about the rest.
 *
 * @param day the day of publishing, handed in from outside
 * @param outputs what may be produced
 * @param strengthsForPublic whether the case study may print the strengths of solutions
 * @param told why the rest is not produced; never silent
 */
public record Clearance(LocalDate day, Set<Output> outputs, boolean strengthsForPublic, List<Message> told) {

    /** What is cut from a case, with the permissions that each needs. */
    public enum Output {
        /** The page for the public. */
        CASE_STUDY("The case study", Use.TEXT),
        /** The sheet for the bench. */
        STEP_SHEET("The step sheet", Use.TEACHING),
        /** The sheet for the technician, with its labels. */
        PREPARATION_SHEET("The preparation sheet", Use.TEACHING),
        /** The page of measured results; trainees and the public both see it. */
        RESULTS("The results page", Use.TEXT, Use.TEACHING),
        /** Every worked-out number with its working; it belongs to the sheets and to the results. */
        FIGURES("The file of figures", Use.TEXT, Use.TEACHING),
        /** The pictures, wherever they stand. */
        PICTURES("The set of pictures", Use.PICTURES);

        private final String words;
        private final List<Use> anyOf;

        Output(String words, Use... anyOf) {
            this.words = words;
            this.anyOf = List.of(anyOf);
        }

        /** The permissions of which one is enough, beside that for the treatment itself. */
        public List<Use> anyOf() {
            return anyOf;
        }
    }

    public Clearance {
        outputs = outputs.isEmpty() ? Set.of() : java.util.Collections.unmodifiableSet(EnumSet.copyOf(outputs));
        told = List.copyOf(told);
    }

    /**
     * Tells what may be produced on a day.
     *
     * <p>Nothing without a permission for the treatment; of the rest, each output by its own permission. Pictures
     * alone make no page, so they also need one of the others.
     */
    public static Clearance on(LocalDate day, TreatmentCase source) {
        return on(day, source.publication());
    }

    /** Tells the same from the publication of a case alone. */
    public static Clearance on(LocalDate day, Publication publication) {
        Optional<Message> closed = closed(day, publication);
        if (closed.isPresent()) {
            return new Clearance(day, Set.of(), false, List.of(closed.get()));
        }
        Set<Output> outputs = EnumSet.noneOf(Output.class);
        List<Message> told = new ArrayList<>();
        for (Output output : Output.values()) {
            Optional<Message> refused = refused(output, day, publication);
            refused.ifPresentOrElse(told::add, () -> outputs.add(output));
        }
        if (outputs.equals(EnumSet.of(Output.PICTURES))) {
            outputs.clear();
        }
        return new Clearance(day, outputs, publication.strengthsForPublic(), told);
    }

    /** Whether an output may be produced. */
    public boolean allows(Output output) {
        return outputs.contains(output);
    }

    /**
     * Whether a file of the case may stand in a site.
     *
     * @param file its path in the case's folder
     */
    public boolean allowsFile(String file) {
        return switch (file) {
            case "index.html" -> allows(Output.CASE_STUDY);
            case "steps.html" -> allows(Output.STEP_SHEET);
            case "preparation.html" -> allows(Output.PREPARATION_SHEET);
            case "figures.json" -> allows(Output.FIGURES);
            default -> allows(file.startsWith("pictures/") ? Output.PICTURES : Output.RESULTS);
        };
    }

    /** The pictures that may be shown: beside the public text all, beside the sheets alone those of a step. */
    public List<Picture> pictures(TreatmentCase source) {
        if (!allows(Output.PICTURES)) {
            return List.of();
        }
        return source.pictures().stream().filter(picture -> allows(Output.CASE_STUDY) || picture.step().isPresent())
                .toList();
    }

    /** Whether nothing at all may be produced. */
    public boolean isClosed() {
        return outputs.isEmpty();
    }

    private static Optional<Message> closed(LocalDate day, Publication publication) {
        return switch (publication.state()) {
            case DRAFT -> Optional.of(ConsentMessages.STILL_DRAFT.at(publication.place()));
            case WITHDRAWN -> Optional.of(ConsentMessages.TAKEN_BACK.at(publication.place()));
            case CLEARED -> publication.withholdUntil().filter(day::isBefore)
                    .map(until -> ConsentMessages.WITHHELD.at(publication.place(), "until", until, "day", day));
        };
    }

    private static Optional<Message> refused(Output output, LocalDate day, Publication publication) {
        if (!publication.permits(Use.TREATMENT, day)) {
            return Optional.of(message(output, List.of(Use.TREATMENT), day, publication));
        }
        if (output.anyOf.stream().noneMatch(use -> publication.permits(use, day))) {
            return Optional.of(message(output, output.anyOf, day, publication));
        }
        return Optional.empty();
    }

    /** Says why: taken back, not yet given, or never given. */
    private static Message message(Output output, List<Use> missing, LocalDate day, Publication publication) {
        String uses = missing.stream().map(Clearance::word).collect(Collectors.joining(" or "));
        List<Permission> named = publication.permissions().stream()
                .filter(permission -> missing.stream().anyMatch(permission.uses()::contains)).toList();
        Optional<Permission> ended = named.stream()
                .filter(permission -> permission.withdrawnOn().filter(on -> !day.isBefore(on)).isPresent()).findFirst();
        Optional<Permission> later = named.stream().filter(permission -> day.isBefore(permission.on())).findFirst();
        if (ended.isPresent()) {
            return ConsentMessages.PERMISSION_TAKEN_BACK.at(ended.get().place(), "output", output.words,
                    "missing", uses, "withdrawn", ended.get().withdrawnOn().orElseThrow());
        }
        if (later.isPresent()) {
            return ConsentMessages.PERMISSION_IN_FUTURE.at(later.get().place(), "output", output.words,
                    "missing", uses, "from", later.get().on(), "day", day);
        }
        return ConsentMessages.NOT_PERMITTED.at(publication.place(), "output", output.words, "missing", uses,
                "day", day);
    }

    private static String word(Use use) {
        return use.name().toLowerCase(java.util.Locale.ROOT);
    }
}
