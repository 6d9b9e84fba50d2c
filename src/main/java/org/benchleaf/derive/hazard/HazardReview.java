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
import org.benchleaf.derive.figure.Bench;
import org.benchleaf.derive.figure.UsedThings;
import org.benchleaf.message.HazardMessages;
import org.benchleaf.message.Place;
import org.benchleaf.model.Permission;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Solution;
import org.benchleaf.model.Step;
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

    HazardReview(Bench bench, Compositions compositions, Meetings meetings, Map<String, Hazards> hazards) {
        this.bench = bench;
        this.reference = bench.library().reference();
        this.compositions = compositions;
        this.meetings = meetings;
        this.hazards = hazards;
    }

    /** Adds a message for each finding. */
    void tell(Map<String, StepCare> care) {
        bench.source().solutions().forEach(solution -> {
            unknown(solution.id(), "solution '" + solution.id() + "'", solution.place());
            solution.recipe().ingredients().forEach(id ->
                    unknown(id, "solution '" + solution.id() + "'", solution.place()));
            clash(List.of(solution.id()), "solution '" + solution.id() + "'", solution.place());
        });
        bench.source().tests().forEach(test ->
                unknown(test.with(), "the spot test on '" + test.medium() + "'", test.place()));
        for (Step step : bench.source().steps()) {
            List<String> used = UsedThings.of(step);
            used.forEach(id -> unknown(id, "step '" + step.id() + "'", step.place()));
            clash(used, "step '" + step.id() + "'", step.place());
            refused(step, care.get(step.id()));
        }
        new SheetResidues(bench, compositions, meetings).tell();
        inOneBottle();
    }

    private void unknown(String id, String where, Place place) {
        Optional.ofNullable(hazards.get(id)).map(Hazards::unknown).orElse(List.of()).stream().filter(told::add)
                .forEach(one -> bench.messages().add((forSheets() ? HazardMessages.HAZARD_UNKNOWN
                        : HazardMessages.HAZARD_UNKNOWN_UNTAUGHT).at(place, "where", where, "thing", id,
                        "why", one.why(), "remedy", one.remedy())));
    }

    /** Whether sheets for the bench may come of the case: a permission for them was given and not taken back. */
    private boolean forSheets() {
        return bench.source().publication().permissions().stream().anyMatch(permission ->
                permission.uses().contains(Permission.Use.TEACHING) && permission.withdrawnOn().isEmpty());
    }

    /** What clashes in a solution by itself is told there, once, and hides no other clash of a step. */
    private void clash(List<String> ids, String where, Place place) {
        for (Hazards.Clash clash : firstOfEachPair(meetings.among(substances(ids)))) {
            if (ids.size() > 1 && ids.stream().anyMatch(id -> holds(id, clash.one()) && holds(id, clash.with()))) {
                continue;
            }
            bench.messages().add(HazardMessages.MUST_NOT_MEET.at(place, "where", where, "one", name(clash.one()),
                    "other", name(clash.with()), "gives", clash.gives(), "why", clash.why()));
        }
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
        return reference.substances().get(substance).name().toLowerCase(java.util.Locale.ROOT);
    }

    /** What is left over of a kind is collected in one bottle; two things that clash there have clashed nowhere before. */
    private void inOneBottle() {
        Map<String, List<String>> bottles = new LinkedHashMap<>();
        bench.source().solutions().stream().map(Solution::id).forEach(id -> collect(bottles, id));
        bench.source().steps().forEach(step -> UsedThings.of(step).forEach(id -> collect(bottles, id)));
        bench.source().tests().forEach(test -> collect(bottles, test.with()));
        bottles.forEach((group, ids) -> firstOfEachPair(meetings.among(substances(ids))).stream()
                .filter(clash -> ids.stream().noneMatch(id -> holds(id, clash.one()) && holds(id, clash.with())))
                .forEach(clash -> bench.messages().add(HazardMessages.MUST_NOT_MEET_AS_WASTE.at(
                        bench.source().place(), "group", group, "one", name(clash.one()), "other", name(clash.with()),
                        "gives", clash.gives(), "why", clash.why()))));
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
