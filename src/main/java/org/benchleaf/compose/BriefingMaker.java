package org.benchleaf.compose;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.derive.Hazards;
import org.benchleaf.derive.StepCare;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Step;

/** Gathers from all steps what everybody must know before the first of them. */
final class BriefingMaker {

    private final Sheet sheet;
    private final CaseDesk desk;
    private final Reference reference;
    private final HazardMaker hazards;

    BriefingMaker(Sheet sheet, CaseDesk desk) {
        this.sheet = sheet;
        this.desk = desk;
        this.reference = desk.library().reference();
        this.hazards = new HazardMaker(sheet, desk);
    }

    /** The briefing of the whole case. */
    Briefing make() {
        Words words = sheet.words();
        return new Briefing("briefing", words.say("briefing.heading"), words.say("briefing.lead"), cautions(), wear(),
                usedHazards(), aid(), waste(), words.say("briefing.defer"), words.group("briefing"));
    }

    /** What can happen at one step, the gravest first. */
    List<Caution> cautions(StepCare care) {
        return care.cautions().stream().map(reference.cautions()::get).filter(java.util.Objects::nonNull)
                .sorted(java.util.Comparator.comparing(caution -> !caution.level().equals("danger")))
                .map(this::caution).toList();
    }

    private List<Caution> cautions() {
        Map<String, Caution> told = new LinkedHashMap<>();
        desk.worked().care().values().stream().flatMap(care -> cautions(care).stream())
                .forEach(caution -> told.putIfAbsent(caution.text().markup().replaceAll("<[^>]*>", ""), caution));
        return told.values().stream()
                .sorted(java.util.Comparator.comparing(caution -> !caution.level().equals("danger"))).toList();
    }

    private Caution caution(Reference.Caution caution) {
        return new Caution(caution.level(), sheet.words().say("caution-level." + caution.level()),
                sheet.linked(caution.words()), sheet.linked(caution.doFirst()));
    }

    /** What to wear, and at which steps. */
    private List<Fact> wear() {
        Map<String, List<Integer>> steps = new LinkedHashMap<>();
        List<Step> all = desk.treatment().steps();
        for (int i = 0; i < all.size(); i++) {
            StepCare care = desk.worked().care().get(all.get(i).id());
            if (care != null) {
                for (String code : care.wear()) {
                    steps.computeIfAbsent(code, any -> new ArrayList<>()).add(i + 1);
                }
            }
        }
        List<Fact> facts = new ArrayList<>();
        steps.forEach((code, numbers) -> Optional.ofNullable(reference.equipment().get(code)).ifPresent(equipment ->
                facts.add(Fact.of(equipment.words(), sheet.words().count("briefing.steps", numbers.size(), "steps",
                        String.join(", ", numbers.stream().map(String::valueOf).toList()))))));
        return facts;
    }

    private List<Hazard> usedHazards() {
        Set<String> ids = new LinkedHashSet<>();
        desk.treatment().solutions().forEach(solution -> ids.add(solution.id()));
        desk.worked().care().values().forEach(care -> ids.addAll(care.materials()));
        return ids.stream().map(hazards::of).flatMap(Optional::stream)
                .filter(hazard -> hazard.signal().isPresent() || !hazard.says().isEmpty()).toList();
    }

    private List<Fact> aid() {
        Set<String> codes = new LinkedHashSet<>();
        desk.worked().hazards().values().forEach(one -> codes.addAll(one.hazardStatements()));
        List<Fact> aid = new ArrayList<>();
        for (Reference.FirstAid row : reference.firstAid()) {
            if (row.statements().stream().anyMatch(codes::contains)) {
                aid.add(Fact.of(sheet.words().term("first-aid", row.where()), row.words()));
            }
        }
        aid.add(Fact.of(sheet.words().say("briefing.here"), desk.library().studio().emergency()));
        return aid;
    }

    private List<Fact> waste() {
        Map<String, List<String>> of = new LinkedHashMap<>();
        for (Hazards one : desk.worked().hazards().values()) {
            one.waste().ifPresent(key -> of.computeIfAbsent(key, any -> new ArrayList<>())
                    .add(hazards.name(one.of())));
        }
        List<Fact> facts = new ArrayList<>();
        of.forEach((key, names) -> Optional.ofNullable(reference.waste().get(key)).ifPresent(kind ->
                facts.add(Fact.of(String.join("; ", names), kind.words()))));
        facts.add(Fact.of(sheet.words().say("briefing.here"), desk.library().studio().waste()));
        return facts;
    }
}
