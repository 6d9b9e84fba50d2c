package org.benchleaf.derive.hazard;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.benchleaf.model.Reference;
import org.benchleaf.quantity.Quantity;

/** Tells what a composition can do, what becomes of it and who may use it, whatever it is made for. */
final class MixtureAssessor {

    private final Reference reference;
    private final Function<Quantity, Optional<Quantity>> flashPoints;
    private final WasteChoice waste;
    private final Meetings meetings;
    private final AccessTable access;

    /**
     * Makes an assessor.
     *
     * @param flashPoints of ethanol in water, by strength by volume
     */
    MixtureAssessor(Reference reference, Function<Quantity, Optional<Quantity>> flashPoints) {
        this.reference = reference;
        this.flashPoints = flashPoints;
        this.waste = new WasteChoice(reference);
        this.meetings = new Meetings(reference);
        this.access = new AccessTable(reference);
    }

    /** The table of what must not meet, for what comes together outside one bottle. */
    Meetings meetings() {
        return meetings;
    }

    /** The table of who may use what, for one use by itself. */
    AccessTable access() {
        return access;
    }

    Classification classified(Composition composition) {
        return new Classification(reference, composition, flashPoints);
    }

    /**
     * The whole answer.
     *
     * @param id of what it is
     * @param found its classes
     * @param amount the most that is handled; empty if that is not known
     * @param uses kinds of step and parts of steps that use it
     * @param cautions that are due where it is prepared, each with the ids of what it follows from
     */
    Hazards hazards(String id, Composition composition, Classification found, Optional<Quantity> amount,
            Set<String> uses, Map<Reference.Caution, List<String>> cautions) {
        List<String> statements = found.statements();
        List<Hazards.Clash> clashes = meetings.among(composition.substances(reference));
        List<Hazards.Unknown> unknown = new ArrayList<>(unknown(composition, found));
        clashes.forEach(clash -> unknown.add(new UnknownWords(reference).of("reaction", "reacts", "one", clash.one(),
                "with", clash.with(), "gives", clash.gives())));
        List<String> firstAid = reference.firstAid().stream()
                .filter(row -> row.statements().stream().anyMatch(statements::contains))
                .map(Reference.FirstAid::where).toList();
        return new Hazards(id, composition.shares(), unknown, found.signal(), found.pictograms(), statements,
                found.named(), found.precautions(), found.grounds(), waste.of(composition, statements, unknown.isEmpty()),
                clashes,
                access.of(composition, statements, amount, uses, unknown.isEmpty()), firstAid,
                Situation.wear(cautions.keySet(), reference), cautions.keySet().stream().map(Reference.Caution::key).toList(),
                subjects(cautions));
    }

    private static Map<String, List<String>> subjects(Map<Reference.Caution, List<String>> cautions) {
        Map<String, List<String>> subjects = new LinkedHashMap<>();
        cautions.forEach((caution, of) -> {
            if (!of.isEmpty()) {
                subjects.put(caution.key(), of);
            }
        });
        return subjects;
    }

    /** What is not known of the parts, of the hazards of each, and of what the rules asked for. */
    static List<Hazards.Unknown> unknown(Composition composition, Classification found) {
        Set<Hazards.Unknown> unknown = new LinkedHashSet<>(composition.unknown());
        unknown.addAll(found.unknown());
        return new ArrayList<>(unknown);
    }
}
