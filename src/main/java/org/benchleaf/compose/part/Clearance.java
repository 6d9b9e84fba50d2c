package org.benchleaf.compose.part;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.derive.WorkedCase;
import org.benchleaf.message.ConsentMessages;
import org.benchleaf.message.Message;
import org.benchleaf.message.Place;
import org.benchleaf.model.Permission;
import org.benchleaf.model.Permission.Covered;
import org.benchleaf.model.Permission.Use;
import org.benchleaf.model.Picture;
import org.benchleaf.model.Publication;
import org.benchleaf.model.SourceLicence;
import org.benchleaf.model.TreatmentCase;

/**
 * What of a case may be produced in one site on one day, and what is said about the rest.
 *
 * @param day the day of publishing, handed in from outside
 * @param audience for whom the site is
 * @param outputs what may be produced
 * @param printed what of it may be printed
 * @param strengths whether the site may tell the strengths of solutions, in whatever file
 * @param told why the rest is not produced, never silent, and what the permissions say in free words
 */
public record Clearance(LocalDate day, Audience audience, Set<Output> outputs, Set<Output> printed, boolean strengths,
        List<Message> told) {

    /** What is cut from a case, with the permissions that each needs. */
    public enum Output {
        /** The page for the public. */
        CASE_STUDY("The case study", Covered.CASE_STUDY, Use.TEXT),
        /** The sheet for the bench. */
        STEP_SHEET("The step sheet", Covered.STEP_SHEET, Use.TEACHING),
        /** The sheet for the technician, with its labels. */
        PREPARATION_SHEET("The preparation sheet", Covered.PREPARATION_SHEET, Use.TEACHING),
        /** The page of measured results; trainees and the public both see it. */
        RESULTS("The results page", Covered.RESULTS, Use.TEXT, Use.TEACHING),
        /** The readings and times as files beside the results. */
        DATA("The set of data files", Covered.DATA, Use.TEXT, Use.TEACHING),
        /** Every worked-out number with its working; it belongs to the sheets and to the results. */
        FIGURES("The file of figures", Covered.DATA, Use.TEXT, Use.TEACHING),
        /** The pictures, wherever they stand. */
        PICTURES("The set of pictures", Covered.PICTURES, Use.PICTURES);

        /** What tells how much of what to take. */
        private static final Set<Output> RECIPES = EnumSet.of(STEP_SHEET, PREPARATION_SHEET, FIGURES);

        private final String words;
        private final Covered covered;
        private final List<Use> anyOf;

        Output(String words, Covered covered, Use... anyOf) {
            this.words = words;
            this.covered = covered;
            this.anyOf = List.of(anyOf);
        }

        /** The permissions of which one is enough, beside that for the treatment itself. */
        List<Use> anyOf() {
            return anyOf;
        }

        /** The permissions of which one is enough in a site: what only teaching allows is not for a public whose sheets stand apart. */
        private List<Use> anyOf(Audience audience) {
            return audience != Audience.PUBLIC ? anyOf : anyOf.stream().filter(use -> use != Use.TEACHING).toList();
        }
    }

    public Clearance {
        outputs = Collections.unmodifiableSet(copy(outputs));
        printed = Collections.unmodifiableSet(copy(printed));
        told = List.copyOf(told);
    }

    private static Set<Output> copy(Set<Output> outputs) {
        return outputs.isEmpty() ? EnumSet.noneOf(Output.class) : EnumSet.copyOf(outputs);
    }

    /**
     * Tells what may be produced in a site on a day.
     *
     * <p>Nothing without a permission for the treatment; of the rest, each output by its own permission, if that covers
     * it and a way in which the site is read. A case that is retold from a publication whose licence allows that needs none
     * of them, unless one was taken back. Pictures or data alone make no page, so they also need one of the others.
     * Where the strengths of solutions are not for the public, nothing that tells them stands in a site that anybody can
     * read.
     */
    public static Clearance on(LocalDate day, Publication publication, Audience audience) {
        Optional<Message> closed = closed(day, publication);
        if (closed.isPresent()) {
            return new Clearance(day, audience, Set.of(), Set.of(), false, List.of(closed.get()));
        }
        Set<Output> outputs = EnumSet.noneOf(Output.class);
        List<Message> told = new ArrayList<>();
        List<Output> keptInBySource = new ArrayList<>();
        for (Output output : Output.values()) {
            if (output.anyOf(audience).isEmpty()) {
                continue;
            }
            if (isKeptInBySource(output, day, publication, audience)) {
                keptInBySource.add(output);
            } else {
                refused(output, day, publication, audience).ifPresentOrElse(told::add, () -> outputs.add(output));
            }
        }
        publication.sourceLicence().filter(licence -> !keptInBySource.isEmpty())
                .ifPresent(licence -> told.add(keptIn(keptInBySource, licence, audience)));
        publication.permissions().stream().filter(permission -> !permission.note().isEmpty()
                        && permission.uses().stream().anyMatch(use -> permission.inForce(use, day)))
                .forEach(permission -> told.add(ConsentMessages.PERMISSION_NOTE.at(permission.place(),
                        "on", permission.on(), "note", permission.note())));
        publication.sourceLicence().ifPresent(licence -> licence.keep().ifPresent(keep -> told.add(
                ConsentMessages.SOURCE_CONDITION.at(licence.place(), "licence", licence.words(), "keep", keep))));
        Set<Output> printed = EnumSet.copyOf(outputs.isEmpty() ? EnumSet.noneOf(Output.class) : outputs);
        printed.removeIf(output -> !publication.isAllowedBySource() && permitting(output, day, publication, audience).noneMatch(
                permission -> permission.covers(Covered.PRINT)));
        Clearance whole = new Clearance(day, audience, outputs, printed, true, told);
        return (publication.strengthsForPublic() ? whole : whole.withoutStrengths(publication)).withoutLoneParts();
    }

    /**
     * Tells what the author alone may look at before anything is published: of a draft everything that the site may hold
     * once it is cleared and all permissions are there, of any other case what {@link #on} allows. Nothing of a draft may be
     * printed.
     */
    public static Clearance forAuthor(LocalDate day, Publication publication, Audience audience) {
        if (publication.state() != Publication.State.DRAFT) {
            return on(day, publication, audience);
        }
        Set<Output> outputs = EnumSet.allOf(Output.class);
        outputs.removeIf(output -> output.anyOf(audience).isEmpty());
        Clearance whole = new Clearance(day, audience, outputs, Set.of(), true,
                List.of(ConsentMessages.STILL_DRAFT.at(publication.place())));
        return (publication.strengthsForPublic() ? whole : whole.withoutStrengths(publication)).withoutLoneParts();
    }

    private Clearance withoutStrengths(Publication publication) {
        return withoutRecipes(ConsentMessages.STRENGTHS_HELD_BACK.at(publication.place(), "written",
                publication.strengths().isPresent() ? "'no'" : "not written, which counts as 'no'"));
    }

    /**
     * The same where recipes of the case are not for the public, whatever its author and owner agreed to: here it is
     * decided which site shows them.
     *
     * @param why a sentence that names what is withheld and for which reason
     * @param place where it is written
     */
    Clearance withRecipesWithheld(String why, Place place) {
        return withoutRecipes(ConsentMessages.RECIPE_WITHHELD.at(place, "why", why)).withoutLoneParts();
    }

    /**
     * The same after what the case is made with has been worked out: recipes that are not for the public are held back, and
     * nobody is led to repeat what a publication, or the record of a treatment that is done, leaves open. What a publication tells of
     * how strong a thing of unknown hazards was is told as it tells it; no amount to take is.
     */
    public Clearance of(WorkedCase worked) {
        Map<String, List<String>> all = worked.withheld();
        Map<String, List<String>> withheld = new LinkedHashMap<>(all);
        if (worked.source().sources().retelling().isPresent()) {
            withheld.values().removeIf(List::isEmpty);
        }
        Clearance told = worked.source().sources().retelling().map(retelling -> withoutOpenSheets(open(worked),
                ConsentMessages.OPEN_IN_SOURCE, retelling.passage().place())).orElseGet(() -> withoutOpenSheets(
                openRules(worked).toList(), ConsentMessages.OPEN_IN_RECORD, worked.source().publication().place()));
        Clearance left = all.isEmpty() || !audience.isPublic() ? told : told.withoutFigures();
        return withheld.isEmpty() ? left : left.withRecipesWithheld(withheld.entrySet().stream().map(one -> "'" + one.getKey()
                + "' is not for the public" + (one.getValue().isEmpty() ? ", since its hazards are not known"
                        : " (" + String.join(" ", one.getValue()) + ")")).collect(Collectors.joining("; ")),
                worked.source().publication().place());
    }

    /** What the publication leaves open of rules, and things of unknown hazards, in words. */
    private static List<String> open(WorkedCase worked) {
        return Stream.concat(openRules(worked), worked.withheld().entrySet().stream().filter(one -> one.getValue().isEmpty())
                .map(one -> "hazards of '" + one.getKey() + "'")).toList();
    }

    private static Stream<String> openRules(WorkedCase worked) {
        return worked.findings().stream().filter(finding -> finding.standing().isOpen())
                .map(finding -> finding.what().replaceFirst("\\.$", "")).distinct();
    }

    private Clearance withoutOpenSheets(List<String> open, ConsentMessages why, Place place) {
        Set<Output> left = copy(outputs);
        if (open.isEmpty() || !left.removeAll(EnumSet.of(Output.STEP_SHEET, Output.PREPARATION_SHEET))) {
            return this;
        }
        Message message = why.at(place, "open", String.join("; ", open));
        return new Clearance(day, audience, left, printed, strengths, Stream.concat(told.stream(), Stream.of(message)).toList())
                .withoutLoneParts();
    }

    private Clearance withoutFigures() {
        Set<Output> left = copy(outputs);
        left.remove(Output.FIGURES);
        return new Clearance(day, audience, left, printed, strengths, told);
    }

    private Clearance withoutRecipes(Message message) {
        if (!audience.isPublic()) {
            return this;
        }
        Set<Output> left = copy(outputs);
        left.removeAll(Output.RECIPES);
        boolean sheets = allows(Output.STEP_SHEET) || allows(Output.PREPARATION_SHEET);
        return new Clearance(day, audience, left, printed, false,
                sheets ? Stream.concat(told.stream(), Stream.of(message)).toList() : told);
    }

    private Clearance withoutLoneParts() {
        return outputs.stream().allMatch(output -> output == Output.PICTURES || output == Output.DATA
                || output == Output.FIGURES) ? new Clearance(day, audience, Set.of(), Set.of(), strengths, told) : this;
    }

    /** Whether an output may be produced. */
    public boolean allows(Output output) {
        return outputs.contains(output);
    }

    /** Whether an output may be printed. */
    boolean prints(Output output) {
        return printed.contains(output);
    }

    /**
     * Whether a file of the case may stand in the site.
     *
     * @param file its path in the case's folder
     */
    public boolean allowsFile(String file) {
        return TakenName.kinds(file).stream().allMatch(this::allows);
    }

    private boolean allows(TakenName.Kind kind) {
        return switch (kind) {
            case STUDY -> allows(Output.CASE_STUDY);
            case STEPS -> allows(Output.STEP_SHEET);
            case PREPARATION -> allows(Output.PREPARATION_SHEET);
            case RESULTS -> allows(Output.RESULTS);
            case FIGURES -> allows(Output.FIGURES);
            case PICTURES -> allows(Output.PICTURES);
            case CLASSES -> allows(Output.STEP_SHEET) && allows(Output.PREPARATION_SHEET);
            case DATA -> allows(Output.DATA);
        };
    }

    /** The pictures that may be shown: beside the public text all, beside the sheets alone those of a step. */
    public List<Picture> pictures(TreatmentCase source) {
        if (!allows(Output.PICTURES)) {
            return List.of();
        }
        return source.pictures().stream().filter(picture -> allows(Output.CASE_STUDY)
                || picture.step().isPresent() && allows(Output.STEP_SHEET)).toList();
    }

    private static Optional<Message> closed(LocalDate day, Publication publication) {
        return switch (publication.state()) {
            case DRAFT -> Optional.of(ConsentMessages.STILL_DRAFT.at(publication.place()));
            case WITHDRAWN -> Optional.of(ConsentMessages.TAKEN_BACK.at(publication.place()));
            case CLEARED -> publication.withholdUntil().filter(day::isBefore)
                    .map(until -> ConsentMessages.WITHHELD.at(publication.place(), "until", until, "day", day));
        };
    }

    private static Optional<Message> refused(Output output, LocalDate day, Publication publication, Audience audience) {
        List<Use> wanted = output.anyOf(audience);
        // Of a treatment that is retold no owner can be asked; what was taken back all the same stays so.
        boolean retold = publication.sourceLicence().isPresent() && !isTakenBack(publication, wanted, day);
        if (retold && publication.isAllowedBySource()) {
            return Optional.empty();
        }
        if (!retold && !publication.permits(Use.TREATMENT, day)) {
            return Optional.of(message(output, publication.sourceLicence().isPresent() ? withTreatment(wanted)
                    : List.of(Use.TREATMENT), day, publication));
        }
        if (wanted.stream().noneMatch(use -> publication.permits(use, day))) {
            return Optional.of(message(output, wanted, day, publication));
        }
        if (permitting(output, day, publication, audience).findAny().isEmpty()) {
            return Optional.of(notCovered(output, wanted, day, publication));
        }
        return Optional.empty();
    }

    private static boolean isTakenBack(Publication publication, List<Use> wanted, LocalDate day) {
        return named(publication, withTreatment(wanted), permission -> permission.withdrawnOn().filter(on -> !day.isBefore(on)).isPresent())
                .isPresent();
    }

    private static List<Use> withTreatment(List<Use> wanted) {
        return Stream.concat(Stream.of(Use.TREATMENT), wanted.stream()).toList();
    }

    /** Whether nobody was asked for an output of a retold case, and the licence of its source does not allow it either. */
    private static boolean isKeptInBySource(Output output, LocalDate day, Publication publication, Audience audience) {
        List<Use> wanted = output.anyOf(audience);
        return publication.sourceLicence().isPresent() && !publication.isAllowedBySource()
                && !isTakenBack(publication, wanted, day) && named(publication, wanted, permission -> true).isEmpty();
    }

    /** One cause, told once with all that it keeps in. */
    private static Message keptIn(List<Output> outputs, SourceLicence licence, Audience audience) {
        return (licence.terms() == SourceLicence.Terms.FORBIDS ? ConsentMessages.SOURCE_FORBIDS
                : ConsentMessages.SOURCE_LICENCE_NOT_KNOWN).at(licence.place(), "licence", licence.words(),
                "outputs", outputs.stream().map(output -> output.words.replaceFirst("^The", "the")).collect(Collectors.joining(", ")),
                "missing", words(outputs.stream().flatMap(output -> output.anyOf(audience).stream()).distinct().toList()));
    }

    /** The permissions on which an output rests. */
    private static Stream<Permission> permitting(Output output, LocalDate day, Publication publication,
            Audience audience) {
        return publication.permissions().stream()
                .filter(permission -> output.anyOf(audience).stream().anyMatch(use -> permission.inForce(use, day)))
                .filter(permission -> permission.covers(output.covered)
                        && audience.ways().stream().anyMatch(permission::covers));
    }

    private static Message notCovered(Output output, List<Use> wanted, LocalDate day, Publication publication) {
        Permission named = publication.permissions().stream()
                .filter(permission -> wanted.stream().anyMatch(use -> permission.inForce(use, day))).findFirst().orElseThrow();
        return ConsentMessages.NOT_COVERED.at(named.place(), "output", output.words, "missing", words(wanted), "covers",
                named.covers().stream().sorted().map(Covered::words).collect(Collectors.joining(", ")));
    }

    /** Says why: taken back, run out, not yet given, or never given. */
    private static Message message(Output output, List<Use> missing, LocalDate day, Publication publication) {
        String uses = words(missing);
        Optional<Permission> ended = named(publication, missing, permission ->
                permission.withdrawnOn().filter(on -> !day.isBefore(on)).isPresent());
        Optional<Permission> over = named(publication, missing, permission ->
                permission.until().filter(day::isAfter).isPresent());
        Optional<Permission> later = named(publication, missing, permission -> day.isBefore(permission.on()));
        if (ended.isPresent()) {
            return ConsentMessages.PERMISSION_TAKEN_BACK.at(ended.get().place(), "output", output.words,
                    "missing", uses, "withdrawn", ended.get().withdrawnOn().orElseThrow());
        }
        if (over.isPresent()) {
            return ConsentMessages.PERMISSION_RUN_OUT.at(over.get().place(), "output", output.words,
                    "missing", uses, "until", over.get().until().orElseThrow());
        }
        if (later.isPresent()) {
            return ConsentMessages.PERMISSION_IN_FUTURE.at(later.get().place(), "output", output.words,
                    "missing", uses, "from", later.get().on(), "day", day);
        }
        return ConsentMessages.NOT_PERMITTED.at(publication.place(), "output", output.words, "missing", uses,
                "day", day);
    }

    private static Optional<Permission> named(Publication publication, List<Use> missing, Predicate<Permission> standing) {
        return publication.permissions().stream()
                .filter(permission -> missing.stream().anyMatch(permission.uses()::contains)).filter(standing).findFirst();
    }

    private static String words(List<Use> uses) {
        return uses.stream().map(use -> use.name().toLowerCase(Locale.ROOT)).collect(Collectors.joining(" or "));
    }
}
