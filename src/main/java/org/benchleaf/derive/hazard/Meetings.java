package org.benchleaf.derive.hazard;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Substance;

/** Finds what must not meet among the substances that come together in one bottle, bath or step. */
final class Meetings {

    private final Reference reference;

    Meetings(Reference reference) {
        this.reference = reference;
    }

    /** Each two of these substances that must not meet. */
    List<Hazards.Clash> among(List<Substance> substances) {
        Set<Hazards.Clash> clashes = new LinkedHashSet<>();
        for (int i = 0; i < substances.size(); i++) {
            for (int j = i + 1; j < substances.size(); j++) {
                clashes.addAll(between(substances.get(i), substances.get(j)));
            }
        }
        return List.copyOf(clashes);
    }

    private List<Hazards.Clash> between(Substance one, Substance other) {
        List<Hazards.Clash> clashes = new ArrayList<>();
        reference.incompatible().stream().filter(row -> row.parts(one, other)).forEach(row ->
                clashes.add(new Hazards.Clash(one.key(), other.key(), row.gives(), row.words(), row.source())));
        return clashes;
    }
}
