package org.benchleaf.derive.hazard;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.derive.figure.Bench;
import org.benchleaf.derive.figure.UsedThings;
import org.benchleaf.message.HazardMessages;
import org.benchleaf.message.Place;
import org.benchleaf.model.Permission;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Solution;
import org.benchleaf.model.SpotTest;
import org.benchleaf.model.Step;
import org.benchleaf.model.StepKind;
import org.benchleaf.model.Substance;

/**
 * Finds in a case what must not reach a sheet for the bench: hazards that are not known, substances that must not meet,
 * and what no trainee may use. None of this can be answered with a reason in the case file.
 */
final class HazardReview {

    private final Bench bench;
    private final Reference reference;
    private final Compositions compositions;
    private final Meetings meetings;
    private final Map<String, Hazards> hazards;
    private final Set<Hazards.Unknown> told = new LinkedHashSet<>();
    private final boolean asPublished;
    private final Map<String, List<Meeting>> met = new LinkedHashMap<>();

    HazardReview(Bench bench, Compositions compositions, Meetings meetings, Map<String, Hazards> hazards) {
        this.bench = bench;
        this.reference = bench.library().reference();
        this.compositions = compositions;
        this.meetings = meetings;
        this.hazards = hazards;
        this.asPublished = bench.source().sources().retelling().isPresent()
                && bench.library().classes().stream().noneMatch(course -> course.caseId().equals(bench.source().id()));
    }

    /**
     * Adds a message for each finding. What a retold case brings together as its publication does stops nothing, unless a class
     * works through the case.
     *
     * @return what comes together in a retold case, by the steps at which it is told
     */
    Map<String, List<Meeting>> tell(Map<String, StepCare> care) {
        bench.source().solutions().forEach(solution -> {
            unknown(List.of(solution.id()), "solution '" + solution.id() + "'", solution.place());
            unknown(solution.recipe().ingredients(), "solution '" + solution.id() + "'", solution.place());
            clash(List.of(solution.id()), "solution '" + solution.id() + "'", solution.place(), Optional.empty());
        });
        bench.source().tests().forEach(test ->
                unknown(List.of(test.with()), "the spot test on '" + test.medium() + "'", test.place()));
        for (Step step : bench.source().steps()) {
            List<String> used = UsedThings.of(step);
            unknown(used, "step '" + step.id() + "'", step.place());
            clash(used, "step '" + step.id() + "'", step.place(), Optional.of(step));
            refused(step, care.get(step.id()));
        }
        new SheetResidues(bench, compositions, meetings).found().forEach(this::inTheSheet);
        inOneBottle();
        return met;
    }

    /** What of these is not known at a place, each only where it is first met; those for which the same is to be done, together. */
    private void unknown(Collection<String> ids, String where, Place place) {
        Map<String, Map<String, String>> whys = new LinkedHashMap<>();
        ids.forEach(id -> Optional.ofNullable(hazards.get(id)).map(Hazards::unknown).orElse(List.of()).stream().filter(told::add)
                .forEach(one -> whys.computeIfAbsent(one.remedy(), any -> new LinkedHashMap<>())
                        .merge(id, one.why(), (first, second) -> first + " " + second)));
        whys.forEach((remedy, things) -> bench.messages().add((forSheets() ? HazardMessages.HAZARD_UNKNOWN
                : HazardMessages.HAZARD_UNKNOWN_UNTAUGHT).at(place, "where", where, "thing", String.join("', '", things.keySet()),
                "why", things.values().stream().distinct().collect(Collectors.joining(" ")), "remedy", remedy)));
    }

    /** Whether sheets for the bench may come of the case: a permission for them was given and not taken back. */
    private boolean forSheets() {
        return bench.source().publication().permissions().stream().anyMatch(permission ->
                permission.uses().contains(Permission.Use.TEACHING) && permission.withdrawnOn().isEmpty());
    }

    /** What clashes in a solution by itself is told there, once, and hides no other clash of a step. */
    private void clash(List<String> ids, String where, Place place, Optional<Step> at) {
        List<Hazards.Clash> all = meetings.among(substances(ids));
        at.ifPresent(step -> all.forEach(clash ->
                meet(step, inOne(clash, ids) ? Meeting.Where.SOLUTION : Meeting.Where.STEP, clash, ids)));
        for (Hazards.Clash clash : firstOfEachPair(all)) {
            if (ids.size() == 1 || !inOne(clash, ids)) {
                bench.messages().add((asPublished ? HazardMessages.MEET_AS_PUBLISHED : HazardMessages.MUST_NOT_MEET).at(place,
                        "where", where, "one", name(clash.one()), "other", name(clash.with()), "gives", clash.gives(), "why", clash.why()));
            }
        }
    }

    private boolean inOne(Hazards.Clash clash, Collection<String> ids) {
        return ids.stream().anyMatch(id -> holds(id, clash.one()) && holds(id, clash.with()));
    }

    private void inTheSheet(SheetResidues.Found found) {
        Hazards.Clash clash = found.clash();
        meet(found.step(), Meeting.Where.SHEET, new Hazards.Clash(found.residue().key(), found.brought().key(), clash.gives(), clash.why(),
                clash.source()), Stream.concat(UsedThings.of(found.earlier()).stream(), UsedThings.of(found.step()).stream()).toList());
        bench.messages().add((asPublished ? HazardMessages.MEET_IN_THE_SHEET_AS_PUBLISHED : HazardMessages.MUST_NOT_MEET_IN_THE_SHEET)
                .at(found.step().place(), "step", found.step().id(), "earlier", found.earlier().id(), "one", name(found.residue().key()),
                        "other", name(found.brought().key()), "gives", clash.gives(), "why", clash.why()));
    }

    private void meet(Step step, Meeting.Where where, Hazards.Clash clash, Collection<String> ids) {
        if (asPublished) {
            met.computeIfAbsent(step.id(), any -> new ArrayList<>()).add(new Meeting(where, name(clash.one()), name(clash.with()),
                    clash.gives(), clash.why(), bringing(clash, ids)));
        }
    }

    private Set<String> bringing(Hazards.Clash clash, Collection<String> ids) {
        return ids.stream().filter(id -> holds(id, clash.one()) || holds(id, clash.with())).collect(Collectors.toSet());
    }

    /** Where several rows speak of one pair, the first is the nearest to it. */
    private static Collection<Hazards.Clash> firstOfEachPair(List<Hazards.Clash> clashes) {
        Map<List<String>, Hazards.Clash> first = new LinkedHashMap<>();
        clashes.forEach(clash -> first.putIfAbsent(List.of(clash.one(), clash.with()), clash));
        return first.values();
    }

    private List<Substance> substances(List<String> ids) {
        return ids.stream().map(compositions::of).flatMap(one -> one.substances(reference).stream()).distinct().toList();
    }

    private String name(String substance) {
        return reference.substances().get(substance).within();
    }

    /** What is left over of a kind is collected in one bottle; two things that clash there have clashed nowhere before. */
    private void inOneBottle() {
        Map<String, List<String>> bottles = new LinkedHashMap<>();
        bench.source().solutions().stream().map(Solution::id).forEach(id -> collect(bottles, id));
        bench.source().steps().forEach(step -> UsedThings.of(step).forEach(id -> collect(bottles, id)));
        bench.source().tests().forEach(test -> collect(bottles, test.with()));
        bottles.forEach((group, ids) -> firstOfEachPair(meetings.among(substances(ids))).stream()
                .filter(clash -> !inOne(clash, ids))
                .forEach(clash -> inOneBottle(group, ids, clash)));
    }

    private void inOneBottle(String group, List<String> ids, Hazards.Clash clash) {
        Set<String> bringing = bringing(clash, ids);
        List<Step> left = bench.source().steps().stream().filter(step -> handled(step).anyMatch(bringing::contains)).toList();
        (left.isEmpty() ? bench.source().steps().stream().limit(1).toList() : left).forEach(step ->
                meet(step, Meeting.Where.WASTE, clash, ids));
        bench.messages().add((asPublished ? HazardMessages.MEET_AS_WASTE_AS_PUBLISHED : HazardMessages.MUST_NOT_MEET_AS_WASTE).at(
                bench.source().place(), "group", group, "one", name(clash.one()), "other", name(clash.with()),
                "gives", clash.gives(), "why", clash.why()));
    }

    private Stream<String> handled(Step step) {
        return Stream.concat(UsedThings.of(step).stream(), step.kind() != StepKind.TESTING ? Stream.of()
                : bench.source().tests().stream().map(SpotTest::with));
    }

    private void collect(Map<String, List<String>> bottles, String id) {
        Optional.ofNullable(hazards.get(id)).flatMap(one -> one.waste().group()).ifPresent(group ->
                bottles.computeIfAbsent(group, any -> new ArrayList<>()).add(id));
    }

    private boolean holds(String id, String substance) {
        return compositions.of(id).shares().containsKey(substance);
    }

    private void refused(Step step, StepCare care) {
        if (!forSheets()) {
            return;
        }
        care.access().forEach((id, access) -> {
            List<Reference.Access> rows = access.why().stream()
                    .filter(row -> row.trainee() == Reference.Trainee.REFUSED).toList();
            if (!rows.isEmpty()) {
                bench.messages().add(HazardMessages.NOT_FOR_TRAINEES.at(step.place(), "step", step.id(), "thing", id,
                        "why", rows.stream().map(Reference.Access::why).distinct().collect(Collectors.joining(" ")),
                        "instead", rows.stream().flatMap(row -> row.instead().stream()).findFirst()
                                .orElse("another material or method")));
            }
        });
    }
}
