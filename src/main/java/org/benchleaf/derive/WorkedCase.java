package org.benchleaf.derive;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.benchleaf.calculate.Figure;
import org.benchleaf.derive.classes.ClassPlan;
import org.benchleaf.derive.figure.AsStated;
import org.benchleaf.derive.figure.Preparation;
import org.benchleaf.derive.figure.WorkedResult;
import org.benchleaf.derive.hazard.Hazards;
import org.benchleaf.derive.hazard.StepCare;
import org.benchleaf.derive.time.DayOnRecord;
import org.benchleaf.derive.time.Timeline;
import org.benchleaf.model.CaseTexts;
import org.benchleaf.model.Finding;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Translation;
import org.benchleaf.model.TreatmentCase;

/**
 * A case with everything that follows from it.
 *
 * @param source the case as checked
 * @param figures every derived figure by its id, in the order of the case
 * @param timeline when each step can begin and end
 * @param daysOnRecord the steps whose day is on record, beside the plan, in the order of the case
 * @param preparations what to make, in the order in which to begin
 * @param results the results with their statistics, in the order of the case
 * @param hazards what each prepared solution and used material can do, by id
 * @param care what each step needs for protection, by step id
 * @param findings what the trade's rules had to say and how it was answered
 * @param classes the classes that work through the case, with what each needs
 * @param substances keys of the substances of the table that its solutions, materials, parts and spot tests are made of, by the alphabet
 */
public record WorkedCase(TreatmentCase source, Map<String, Figure> figures, Timeline timeline,
        List<DayOnRecord> daysOnRecord, List<Preparation> preparations, List<WorkedResult> results, Map<String, Hazards> hazards,
        Map<String, StepCare> care, List<Finding> findings,
        List<ClassPlan> classes, List<String> substances) {

    public WorkedCase {
        daysOnRecord = List.copyOf(daysOnRecord);
        preparations = List.copyOf(preparations);
        results = List.copyOf(results);
        findings = List.copyOf(findings);
        classes = List.copyOf(classes);
        substances = List.copyOf(substances);
    }

    /** Whether it tells what was done, by others or in the past, and not what is planned: its times are those that are on record. */
    public boolean isOnRecordAlone() {
        return source.sources().retelling().isPresent() || findings.stream().anyMatch(finding -> finding.standing().isOpen());
    }

    /** What reports state of its results, by the names under which a story cites it. */
    public Map<String, AsStated> asStated() {
        Map<String, AsStated> told = new LinkedHashMap<>();
        results.forEach(result -> told.putAll(result.asStated()));
        return told;
    }

    /** The same case told in the words of one of its translations; what was worked out stays as it is. */
    WorkedCase in(Translation translation) {
        TreatmentCase told = CaseTexts.in(translation, source);
        Map<String, String> reasons = new HashMap<>();
        for (int at = 0; at < source.reasons().size(); at++) {
            reasons.put(source.reasons().get(at).why(), told.reasons().get(at).why());
        }
        List<Finding> answered = findings.stream().map(finding -> finding.told(translation.phrases().of(finding.what()),
                finding.reason().map(why -> reasons.getOrDefault(why, why)), told, translation.phrases())).toList();
        return new WorkedCase(told, figures, timeline, daysOnRecord, preparations, results, hazards, care, answered,
                classes, substances);
    }

    /** The same case with what was worked out told in other words. */
    WorkedCase saying(Map<String, Figure> toldFigures, List<Preparation> toldPreparations, List<WorkedResult> toldResults,
            Map<String, Hazards> toldHazards, Map<String, StepCare> toldCare, List<ClassPlan> toldClasses) {
        return new WorkedCase(source, toldFigures, timeline, daysOnRecord, toldPreparations, toldResults, toldHazards, toldCare,
                findings, toldClasses, substances);
    }

    /**
     * What is in the case of which no recipe is for the public, by id of the solution or material, each with the reasons;
     * empty if there is none. What is not known is not for the public either.
     */
    public Map<String, List<String>> withheld() {
        Map<String, List<String>> withheld = new LinkedHashMap<>();
        hazards.forEach((id, one) -> withhold(withheld, id, one.access()));
        care.values().forEach(one -> one.access().forEach((id, access) -> withhold(withheld, id, access)));
        return withheld;
    }

    private static void withhold(Map<String, List<String>> withheld, String id, Hazards.Access access) {
        if (access.withheld()) {
            withheld.putIfAbsent(id, access.why().stream().filter(Reference.Access::withheld)
                    .map(Reference.Access::why).distinct().toList());
        }
    }
}
