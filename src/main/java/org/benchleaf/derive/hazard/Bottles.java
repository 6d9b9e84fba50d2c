package org.benchleaf.derive.hazard;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.calculate.Calculations;
import org.benchleaf.message.Holes;
import org.benchleaf.message.Nearest;
import org.benchleaf.model.Formulary;
import org.benchleaf.model.Material;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Substance;
import org.benchleaf.quantity.Quantity;

/** Answers for any bottle: what is in it, what it can do, what becomes of it, and what of that is not known. */
public final class Bottles {

    private final Reference reference;
    private final MixtureAssessor mixtures;

    /** An assessor with the tables that hold for a studio. */
    public Bottles(Reference reference, Formulary formulary) {
        this.reference = reference;
        this.mixtures = new MixtureAssessor(reference, new EthanolFlash(new Calculations(formulary)::run));
    }

    /** What came of asking: the hazards, or what is wrong with the line. */
    public sealed interface Answer permits Told, Refused {
    }

    /**
     * The hazards of a bottle.
     *
     * @param parts every part by the key of its substance, or as written where the table has none, with its share by mass
     * @param hazards what it can do
     */
    public record Told(Map<String, MassShare> parts, Hazards hazards) implements Answer {
        public Told {
            parts = new LinkedHashMap<>(parts);
        }
    }

    /** A line that cannot be read, with each slip as a sentence that says where it stands. */
    public record Refused(List<String> slips) implements Answer {
        public Refused {
            slips = List.copyOf(slips);
        }
    }

    /**
     * Answers for one bottle.
     *
     * @param line such as {@code isopropanol 12 % m/m; acetone 8 % m/m; rest ethanol}
     * @param ph measured; empty if it is to be worked out
     */
    public Answer ask(String line, Optional<Quantity> ph) {
        BottleLine read = new BottleLine(line);
        if (!read.slips().isEmpty()) {
            return new Refused(read.slips().stream().map(this::sentence).toList());
        }
        BottleShares shares = new BottleShares(reference, read.items());
        Map<String, MassShare> known = new LinkedHashMap<>(shares.shares());
        known.keySet().retainAll(reference.substances().keySet());
        Composition composition = new Composition(known, ph, shares.spirit(), shares.unknown());
        for (String part : shares.shares().keySet()) {
            if (!reference.substances().containsKey(part)) {
                composition = composition.lacking(notFound(part));
            }
        }
        MixturePh equilibrium = new MixturePh(reference);
        Composition told = equilibrium.told(equilibrium.compared(composition));
        return new Told(shares.shares(), hazards(line, told));
    }

    /** What a material of the studio can do as it is sold. */
    public Hazards of(Material material) {
        MixturePh equilibrium = new MixturePh(reference);
        return hazards(material.id(), equilibrium.told(equilibrium.compared(new BoughtMaterials(reference).of(material))));
    }

    /** What a substance can do by itself. */
    public Hazards of(Substance substance) {
        return hazards(substance.key(), new MixturePh(reference).told(new Composition(
                Map.of(substance.key(), MassShare.WHOLE), Optional.empty(), Optional.empty(), List.of())));
    }

    private Hazards hazards(String line, Composition composition) {
        Classification found = mixtures.classified(composition);
        Situation handling = new Situation(Optional.empty(), Composition.preparing(Stream.of(composition), reference),
                Set.copyOf(found.statements()),
                composition.shares().keySet(), Set.of(), "", 0);
        return mixtures.hazards(line, composition, found, Optional.empty(), Set.of(), cautions(handling));
    }

    /** The bottle is all that is asked about, so no caution needs to name it. */
    private Map<Reference.Caution, List<String>> cautions(Situation handling) {
        Map<Reference.Caution, List<String>> cautions = new LinkedHashMap<>();
        handling.due(reference).forEach(caution -> cautions.put(caution, List.of()));
        return cautions;
    }

    private Hazards.Unknown notFound(String part) {
        List<String> near = Nearest.several(part.toLowerCase(java.util.Locale.ROOT), reference.substanceNames().toList());
        UnknownWords words = new UnknownWords(reference);
        return near.isEmpty() ? words.of("composition", "bottle-not-found", "part", part)
                : words.of("composition", "bottle-near", "part", part, "near", String.join(", ", near));
    }

    private String sentence(BottleLine.Slip slip) {
        Reference.Wording wording = reference.wordings().get(slip.key());
        Object[] pairs = {"column", slip.column(), "found", slip.found()};
        return Holes.fill(wording.words(), pairs) + " " + Holes.fill(wording.remedy().orElse(""), pairs);
    }
}
