package org.benchleaf.derive.hazard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.derive.figure.Bench;
import org.benchleaf.derive.figure.UsedThings;
import org.benchleaf.derive.figure.Uses;
import org.benchleaf.model.Finding;
import org.benchleaf.model.Part;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Solution;
import org.benchleaf.model.Step;
import org.benchleaf.model.StepKind;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Tells what everything that is prepared and used can do, and what each step needs for the protection of the person. */
public final class HazardAssessor {

    private final Bench bench;
    private final Reference reference;
    private final Compositions compositions;
    private final Exposure exposure;
    private final BoughtMaterials bought;
    private final MixtureAssessor mixtures;
    private final Map<String, Classification> classes = new LinkedHashMap<>();

    /**
     * What came of it.
     *
     * @param hazards by id of the solution or material; what has no class is there too if it is prepared
     * @param care by step id
     * @param findings those handed in and those that vapour added
     * @param substances keys of every row of the table that something in the case is made of
     */
    public record Assessment(Map<String, Hazards> hazards, Map<String, StepCare> care, List<Finding> findings,
            Set<String> substances) {
    }

    public HazardAssessor(Bench bench) {
        this.bench = bench;
        this.reference = bench.library().reference();
        this.compositions = new Compositions(bench);
        this.exposure = new Exposure(bench, compositions);
        this.bought = new BoughtMaterials(reference);
        this.mixtures = new MixtureAssessor(reference, new EthanolFlash(bench.ledger()::outcome));
    }

    public Assessment assess(List<Finding> findings) {
        Map<String, Hazards> hazards = new LinkedHashMap<>();
        Set<String> ids = new LinkedHashSet<>();
        bench.source().solutions().forEach(solution -> {
            ids.addAll(solution.recipe().ingredients());
            ids.add(solution.id());
        });
        bench.source().steps().forEach(step -> ids.addAll(UsedThings.of(step)));
        bench.source().tests().forEach(test -> ids.add(test.with()));
        for (String id : ids) {
            boolean prepared = bench.source().solution(id).isPresent();
            boolean chemical = bench.material(id).filter(bought::isAsked).isPresent();
            if (prepared || !classified(id).statements().isEmpty()
                    || chemical && !MixtureAssessor.unknown(compositions.of(id), classified(id)).isEmpty()) {
                hazards.put(id, hazards(id));
            }
        }
        Map<String, StepCare> care = new LinkedHashMap<>();
        bench.source().steps().forEach(step -> care.put(step.id(), care(step)));
        Map<String, List<Meeting>> met = new HazardReview(bench, compositions, mixtures.meetings(), hazards).tell(care);
        care.replaceAll((step, one) -> one.with(met.getOrDefault(step, List.of())));
        List<Finding> all = new ArrayList<>(findings);
        all.addAll(exposure.findings());
        return new Assessment(hazards, care, all, substances(ids));
    }

    private Set<String> substances(Set<String> ids) {
        Set<String> keys = new TreeSet<>();
        ids.forEach(id -> keys.addAll(compositions.of(id).shares().keySet()));
        keys.retainAll(reference.substances().keySet());
        return keys;
    }

    private Classification classified(String id) {
        Classification done = classes.get(id);
        if (done == null) {
            done = mixtures.classified(compositions.of(id));
            classes.put(id, done);
        }
        return done;
    }

    private Hazards hazards(String id) {
        Map<Reference.Caution, List<String>> cautions = bench.source().solution(id).map(this::whenPreparing).orElse(Map.of());
        return mixtures.hazards(id, compositions.of(id), classified(id), most(bench.uses().of(id).stream()), Set.of(), cautions);
    }

    /** The most that one use takes; empty if that is not known. */
    private static Optional<Quantity> most(Stream<Uses.Use> uses) {
        return uses.map(use -> use.figure().value())
                .max(Comparator.comparingDouble(amount -> amount.high() * amount.unit().factor()));
    }

    /** The cautions that are due when a solution is prepared, each with the ids of what it follows from. */
    private Map<Reference.Caution, List<String>> whenPreparing(Solution solution) {
        Map<Reference.Caution, List<String>> cautions = new LinkedHashMap<>();
        preparing(solution).due(reference).forEach(caution -> {
            List<String> from = solution.recipe().ingredients().stream().filter(id -> brings(id, caution.when())).toList();
            boolean made = (from.isEmpty() || !caution.when().statements().isEmpty()) && brings(solution.id(), caution.when());
            cautions.put(caution, made ? Stream.concat(from.stream(), Stream.of(solution.id())).toList() : from);
        });
        return cautions;
    }

    /** Whoever prepares a solution handles its ingredients at full strength. */
    private Situation preparing(Solution solution) {
        List<String> ids = new ArrayList<>(solution.recipe().ingredients());
        ids.add(solution.id());
        String words = String.join(" ", solution.how()) + " " + solution.name();
        double most = bench.uses().of(solution.id()).stream().mapToDouble(HazardAssessor::millilitres).max().orElse(0);
        return situation(Optional.empty(),
                Composition.preparing(solution.recipe().ingredients().stream().map(compositions::of), reference), ids, words,
                Math.max(most, solution.least().filter(least -> least.dimension() == Dimension.VOLUME)
                        .map(least -> least.in(Unit.MILLILITRE)).orElse(0.0)));
    }

    private Situation situation(Optional<String> step, Set<String> parts, List<String> ids, String words,
            double millilitres) {
        Set<String> statements = new LinkedHashSet<>();
        Set<String> substances = new LinkedHashSet<>();
        Set<String> traits = new LinkedHashSet<>();
        StringBuilder written = new StringBuilder(words);
        for (String id : ids) {
            statements.addAll(classified(id).statements());
            substances.addAll(compositions.of(id).shares().keySet());
            written.append(' ').append(substanceWords(id));
            bench.material(id).ifPresent(material -> {
                traits.addAll(material.traits());
                written.append(' ').append(material.name());
            });
        }
        return new Situation(step, parts, statements, substances, traits, written.toString().toLowerCase(Locale.ROOT),
                millilitres);
    }

    /** What a step names, and at the tests every liquid that is tried, since it is handled there first. */
    private List<String> handled(Step step) {
        Set<String> ids = new LinkedHashSet<>(UsedThings.of(step));
        if (step.kind() == StepKind.TESTING) {
            bench.source().tests().forEach(test -> ids.add(test.with()));
            ids.removeIf(id -> bench.source().solution(id).isEmpty() && bench.material(id).isEmpty());
        }
        return List.copyOf(ids);
    }

    private StepCare care(Step step) {
        List<String> ids = handled(step);
        Set<String> parts = new LinkedHashSet<>();
        step.parts().forEach(part -> parts.add(part.word()));
        double most = ids.stream().filter(id -> compositions.of(id).spirit().isPresent())
                .flatMap(id -> bench.uses().of(id).stream()).filter(use -> use.by().equals(step.id()))
                .mapToDouble(HazardAssessor::millilitres).max().orElse(0);
        Situation situation = situation(Optional.of(step.kind().word()), parts, ids, words(step), most);
        List<Reference.Caution> due = situation.due(reference);
        List<String> hazardous = ids.stream().filter(id -> !classified(id).statements().isEmpty()).toList();
        boolean chemical = !hazardous.isEmpty() || due.stream().anyMatch(caution ->
                !caution.when().statements().isEmpty() || !caution.when().substances().isEmpty());
        return new StepCare(step.id(), wear(step, due), due.stream().map(Reference.Caution::key).toList(),
                subjects(due, ids), hazardous, exposure.of(step), chemical, access(step, ids, parts), List.of());
    }

    /** What the cautions ask for and what the step itself names, of each kind the strictest. */
    private List<String> wear(Step step, List<Reference.Caution> due) {
        Set<String> codes = new LinkedHashSet<>(Situation.wear(due, reference));
        step.uses().stream().map(bench::material).flatMap(Optional::stream).forEach(tool -> codes.addAll(reference.worn(tool)));
        return reference.strictest(codes);
    }

    /** Whether a caution follows from this by its statements, substances or traits, or by the names of what is in it. */
    private boolean brings(String id, Reference.When when) {
        return situation(Optional.empty(), Set.of(), List.of(id), "", 0).brings(when)
                || Situation.isNamed(when, substanceWords(id));
    }

    /** Keys and names of the substances in it, so that a caution finds them whatever the studio calls its bottle. */
    private String substanceWords(String id) {
        return compositions.of(id).substances(reference).stream().map(row -> row.key() + " " + row.name())
                .collect(Collectors.joining(" ")).toLowerCase(Locale.ROOT);
    }

    /** Of what is used, that which a caution follows from. */
    private Map<String, List<String>> subjects(List<Reference.Caution> due, List<String> ids) {
        Map<String, List<String>> subjects = new LinkedHashMap<>();
        for (Reference.Caution caution : due) {
            List<String> of = ids.stream().filter(id -> brings(id, caution.when())).toList();
            if (!of.isEmpty()) {
                subjects.put(caution.key(), of);
            }
        }
        return subjects;
    }

    /** Who may use what the step handles; of things without a substance, such as a brush, nothing is asked. */
    private Map<String, Hazards.Access> access(Step step, List<String> ids, Set<String> parts) {
        Set<String> uses = new LinkedHashSet<>(parts);
        uses.add(step.kind().word());
        Map<String, Hazards.Access> found = new LinkedHashMap<>();
        ids.stream().filter(id -> !compositions.of(id).shares().isEmpty()).forEach(id -> found.put(id,
                mixtures.access().of(compositions.of(id), classified(id).statements(),
                        mostInStep(id, step), uses, true)));
        return found;
    }

    /** The most of it that one use in the step takes; empty if that is not known. */
    private Optional<Quantity> mostInStep(String id, Step step) {
        return most(bench.uses().of(id).stream().filter(use -> use.by().equals(step.id())));
    }

    private static double millilitres(Uses.Use use) {
        return use.figure().value().dimension() == Dimension.VOLUME ? use.figure().value().highIn(Unit.MILLILITRE) : 0;
    }

    /** What is written about the step, the media that it meets and the damages of the sheet. */
    private String words(Step step) {
        StringBuilder words = new StringBuilder(step.instruction());
        step.see().ifPresent(text -> words.append(' ').append(text));
        step.watch().ifPresent(text -> words.append(' ').append(text));
        step.uses().forEach(id -> words.append(' ').append(id));
        boolean ultrasonic = step.part(Part.Mist.class).filter(Part.Mist::ultrasonic).isPresent()
                || step.part(Part.Chamber.class).filter(chamber -> chamber.pack().contains("ultrasonic")).isPresent();
        words.append(ultrasonic ? " ultrasonic" : "");
        bench.source().object().media().stream().filter(medium -> medium.isMetBy(step))
                .forEach(medium -> words.append(' ').append(medium.is()).append(' ')
                .append(medium.colour().orElse("")));
        bench.source().condition().forEach(damage -> words.append(' ').append(damage.what()));
        return words.toString();
    }
}
