package org.benchleaf.compose.part;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.derive.figure.Preparation;
import org.benchleaf.derive.hazard.Hazards;
import org.benchleaf.derive.hazard.StepCare;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Step;
import org.benchleaf.page.Briefing;
import org.benchleaf.page.Caution;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Hazard;
import org.benchleaf.words.Words;

/** Gathers from all steps, or from all preparations, what everybody must know before the first of them. */
public final class BriefingMaker {

    private final Sheet sheet;
    private final CaseDesk desk;
    private final Reference reference;
    private final HazardMaker hazards;

    public BriefingMaker(Sheet sheet, CaseDesk desk) {
        this.sheet = sheet;
        this.desk = desk;
        this.reference = desk.library().reference();
        this.hazards = new HazardMaker(sheet, desk);
    }

    /**
     * What trainees must know before the first step of the case.
     *
     * @param besides what else is told of all that is left, after what the studio says
     */
    public Briefing beforeSteps(List<Fact> besides) {
        Set<String> ids = new LinkedHashSet<>();
        desk.treatment().solutions().forEach(solution -> ids.add(solution.id()));
        desk.worked().care().values().forEach(care -> ids.addAll(care.materials()));
        List<Handled> steps = new ArrayList<>();
        List<Step> all = desk.treatment().steps();
        for (int i = 0; i < all.size(); i++) {
            Optional<StepCare> care = Optional.ofNullable(desk.worked().care().get(all.get(i).id()));
            steps.add(new Handled(String.valueOf(i + 1), care.map(StepCare::cautions).orElse(List.of()),
                    care.map(one -> named(one.subjects())).orElse(Map.of()), care.map(StepCare::wear).orElse(List.of())));
        }
        Briefing.Tick read = new Briefing.Tick("tick-briefing", sheet.words().say("briefing.read"));
        return briefing(steps, ids, due -> Stream.concat(waste(due, desk.worked().hazards().keySet(), Map.of(), studioWaste()).stream(),
                        besides.stream()).toList(), "bench.caution-of", Optional.of(read),
                names -> sheet.words().count("briefing.steps", names.size(), "steps",
                        sheet.words().list(names)));
    }

    /** What the technician must know, who handles every ingredient at full strength. */
    public Briefing beforePreparing() {
        return beforePreparing(desk.worked().preparations(), Map.of(), Map.of(), desk.worked().hazards().keySet(), Map.of(), studioWaste());
    }

    /**
     * The same for a part of the case.
     *
     * @param made what is prepared
     * @param done names of steps that are done before a class, by their ids
     * @param besides keys of cautions for other work, by what it is called
     * @param used ids of all that is at hand
     * @param own what is told of the vessels in which waste of a kind is collected, by its key
     * @param here what the studio or the class says of all that is left
     */
    public Briefing beforePreparing(List<Preparation> made, Map<String, String> done, Map<String, List<String>> besides,
            Set<String> used, Map<String, String> own, Fact here) {
        Map<String, Hazards> all = desk.worked().hazards();
        List<Handled> preparations = new ArrayList<>();
        made.forEach(preparation -> {
            Optional<Hazards> found = Optional.ofNullable(all.get(preparation.solution()));
            List<String> cautions = found.map(Hazards::cautions).orElse(List.of());
            Map<String, List<String>> subjects = new LinkedHashMap<>();
            cautions.forEach(caution -> subjects.put(caution, List.of(made(preparation.solution(),
                    found.get().subjects().getOrDefault(caution, List.of())))));
            preparations.add(new Handled(hazards.name(preparation.solution()), cautions, subjects,
                    found.map(Hazards::wear).orElse(List.of())));
        });
        done.forEach((step, name) -> handled(step, name).ifPresent(preparations::add));
        besides.forEach((name, cautions) -> preparations.add(new Handled(name, cautions, about(cautions, name), List.of())));
        return briefing(preparations, used, due -> waste(due, used, own, here), "prepare.caution-of", Optional.empty(),
                names -> String.join("; ", names));
    }

    private Optional<Handled> handled(String step, String name) {
        return Optional.ofNullable(desk.worked().care().get(step)).map(care ->
                new Handled(name, care.cautions(), about(care.cautions(), name), care.wear()));
    }

    private static Map<String, List<String>> about(List<String> cautions, String name) {
        return cautions.stream().collect(Collectors.toMap(caution -> caution, any -> List.of(name)));
    }

    /** What is made, with that of its ingredients from which the caution follows. */
    private String made(String solution, List<String> from) {
        List<String> ingredients = from.stream().filter(id -> !id.equals(solution)).map(hazards::name).distinct().toList();
        return ingredients.isEmpty() ? hazards.name(solution) : sheet.words().say("prepare.caution-from",
                "solution", hazards.name(solution), "ingredients", sheet.words().list(ingredients));
    }

    private Map<String, List<String>> named(Map<String, List<String>> ids) {
        Map<String, List<String>> names = new LinkedHashMap<>();
        ids.forEach((caution, of) -> names.put(caution, of.stream().map(hazards::name).toList()));
        return names;
    }

    /** Something that is handled, by the name under which the sheet tells it, with the names of what its cautions speak of. */
    private record Handled(String name, List<String> cautions, Map<String, List<String>> subjects, List<String> wear) {
    }

    private Briefing briefing(List<Handled> handled, Set<String> used, Function<Set<String>, List<Fact>> left, String how,
            Optional<Briefing.Tick> read,
            Function<List<String>, String> where) {
        Words words = sheet.words();
        Set<String> due = new LinkedHashSet<>();
        Map<String, List<String>> subjects = new LinkedHashMap<>();
        for (Handled one : handled) {
            due.addAll(one.cautions());
            one.subjects().forEach((key, names) -> subjects.computeIfAbsent(key, any -> new ArrayList<>()).addAll(names));
        }
        Map<Boolean, List<Caution>> grave = cautions(due, subjects, how).stream()
                .collect(Collectors.partitioningBy(caution -> caution.level().equals("danger")));
        return new Briefing("briefing", words.say("briefing.heading"), words.say("briefing.lead"),
                grave.get(true), grave.get(false), wear(handled, where), usedHazards(used), aid(due), left.apply(due),
                words.say("briefing.defer"), read,
                words.group("briefing"));
    }

    /**
     * Cautions by their keys, the gravest first.
     *
     * @param subjects ids of what each speaks of, by its key; nothing is named where there are none
     */
    public List<Caution> cautions(Collection<String> keys, Map<String, List<String>> subjects) {
        return cautions(keys, named(subjects), "bench.caution-of");
    }

    private List<Caution> cautions(Collection<String> keys, Map<String, List<String>> subjects, String how) {
        return keys.stream().map(reference.cautions()::get).filter(Objects::nonNull)
                .sorted(Comparator.comparing(caution -> !caution.level().equals("danger")))
                .map(caution -> caution(caution, subjects.getOrDefault(caution.key(), List.of()), how)).toList();
    }

    /** The words of the equipment with these codes. */
    public List<String> equipment(List<String> codes) {
        return codes.stream().map(reference.equipment()::get).filter(Objects::nonNull)
                .map(Reference.Equipment::words).toList();
    }

    private Caution caution(Reference.Caution caution, List<String> subjects, String how) {
        String here = subjects.isEmpty() ? "" : " " + sheet.words().say(how, "things",
                subjects.stream().distinct().collect(Collectors.joining("; ")));
        return new Caution(caution.level(), sheet.words().say("caution-level." + caution.level()),
                caution.name().orElse(caution.words()),
                sheet.linked(caution.words() + here), sheet.linked(caution.doFirst()));
    }

    private List<Fact> wear(List<Handled> handled, Function<List<String>, String> where) {
        Map<String, List<String>> names = new LinkedHashMap<>();
        handled.forEach(one -> one.wear().forEach(code ->
                names.computeIfAbsent(code, any -> new ArrayList<>()).add(one.name())));
        return reference.equipment().values().stream().filter(equipment -> names.containsKey(equipment.code()))
                .map(equipment -> Fact.of(equipment.words(), where.apply(names.get(equipment.code())))).toList();
    }

    private List<Hazard> usedHazards(Set<String> ids) {
        return ids.stream().map(hazards::of).flatMap(Optional::stream)
                .filter(hazard -> hazard.signal().isPresent() || !hazard.says().isEmpty() || !hazard.unknown().isEmpty())
                .toList();
    }

    private List<Fact> aid(Set<String> due) {
        Set<String> codes = new LinkedHashSet<>();
        desk.worked().hazards().values().forEach(one -> codes.addAll(one.hazardStatements()));
        List<Fact> aid = new ArrayList<>();
        for (Reference.FirstAid row : reference.firstAid()) {
            if (!Collections.disjoint(row.statements(), codes) || !Collections.disjoint(row.cautions(), due)) {
                aid.add(Fact.of(sheet.words().term("first-aid", row.where()), row.words()));
            }
        }
        aid.add(Fact.of(sheet.words().say("briefing.here"), desk.library().phrases().of(desk.library().studio().emergency())));
        return aid;
    }

    private Fact studioWaste() {
        return Fact.of(sheet.words().say("briefing.here"), desk.library().phrases().of(desk.library().studio().waste()));
    }

    private List<Fact> waste(Set<String> due, Set<String> left, Map<String, String> own, Fact here) {
        Map<String, List<String>> of = new LinkedHashMap<>();
        desk.worked().hazards().values().stream().filter(one -> left.contains(one.of())).forEach(one ->
                of.computeIfAbsent(HazardMaker.waste(reference, one, own), any -> new ArrayList<>()).add(hazards.name(one.of())));
        List<Fact> facts = new ArrayList<>();
        of.forEach((words, names) -> facts.add(Fact.of(String.join("; ", names), words)));
        reference.waste().values().stream().filter(kind -> !Collections.disjoint(kind.cautions(), due))
                .forEach(kind -> facts.add(Fact.of(kind.name(), kind.words())));
        facts.add(here);
        return facts;
    }
}
