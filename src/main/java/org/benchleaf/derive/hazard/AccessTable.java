package org.benchleaf.derive.hazard;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Substance;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Tells from what is in a mixture who may see and use it; what is not known is for nobody in training. */
final class AccessTable {

    private final Reference reference;

    AccessTable(Reference reference) {
        this.reference = reference;
    }

    /**
     * What holds for a mixture.
     *
     * @param amount the most that is handled; where it is not known, any amount is taken to be reached
     * @param uses kinds of step and parts of steps that use it
     * @param known whether everything about it is known
     */
    Hazards.Access of(Composition composition, List<String> statements, Optional<Quantity> amount, Set<String> uses,
            boolean known) {
        List<Reference.Access> rows = reference.access().stream()
                .filter(row -> holds(row, composition, statements) && isMuch(row, amount) && isUsed(row, uses)).toList();
        Reference.Trainee strictest = rows.stream().map(Reference.Access::trainee).max(Comparator.naturalOrder())
                .orElse(Reference.Trainee.ALLOWED);
        return new Hazards.Access(known ? strictest : Reference.Trainee.REFUSED,
                !known || rows.stream().anyMatch(Reference.Access::withheld), rows);
    }

    private boolean holds(Reference.Access row, Composition composition, List<String> statements) {
        boolean ofSubstance = row.substances().isEmpty() && row.groups().isEmpty()
                || composition.substances(reference).stream().anyMatch(part -> isMeant(row, part)
                        && composition.most(part.key()) >= row.from()
                                .map(from -> from.in(Unit.PERCENT_BY_MASS) / 100).orElse(0.0));
        boolean ofPh = !row.ph() || composition.ph().filter(reference.limits()::isExtreme).isPresent();
        return ofSubstance && ofPh && (row.statements().isEmpty() || statements.stream().anyMatch(row.statements()::contains));
    }

    private static boolean isMeant(Reference.Access row, Substance part) {
        return row.substances().contains(part.key()) || part.reactsAs().stream().anyMatch(row.groups()::contains);
    }

    private static boolean isMuch(Reference.Access row, Optional<Quantity> amount) {
        return row.moreThan().isEmpty() || amount.isEmpty()
                || amount.get().dimension() != row.moreThan().get().dimension()
                || amount.get().highIn(row.moreThan().get().unit()) > row.moreThan().get().value();
    }

    private static boolean isUsed(Reference.Access row, Set<String> uses) {
        return row.usedBy().isEmpty() || row.usedBy().stream().anyMatch(uses::contains);
    }
}
