package org.benchleaf.read;

import java.util.Optional;
import java.util.Set;
import org.benchleaf.model.AcuteRoute;
import org.benchleaf.model.MixtureRule;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Reads one row of the rules by which a mixture takes over classes. */
final class MixtureRuleRow {

    private static final Dimension[] DOSES =
            {Dimension.MASS_FRACTION, Dimension.MASS_PER_VOLUME, Dimension.PARTS_PER_MILLION};

    private MixtureRuleRow() {
    }

    static MixtureRule read(ReferenceRow row, Set<String> statements) {
        return new MixtureRule(row.key(),
                row.optionalWord("by", MixtureRule.By.values(), MixtureRule.By::word).orElse(MixtureRule.By.EACH),
                row.rows("of").stream().map(MixtureRuleRow::addend).toList(), row.optionalText("gives"),
                row.has("statement") ? Optional.of(row.oneOf("statement", statements)) : Optional.empty(),
                row.yes("named"),
                row.optionalQuantity("flows up to", Dimension.DIFFUSIVITY), row.yes("gone in water"),
                row.text("source"));
    }

    private static MixtureRule.Addend addend(ReferenceRow inner) {
        return new MixtureRule.Addend(inner.text("class"), inner.quantity("limit", Dimension.MASS_FRACTION),
                inner.yes("own"), inner.yes("factor"),
                inner.optionalQuantity("counts from", Dimension.MASS_FRACTION)
                        .orElseGet(() -> Quantity.of(0, Unit.PERCENT_BY_MASS)),
                inner.optionalText("note"), inner.set("only"));
    }

    static AcuteRoute acute(ReferenceRow row, Set<String> statements) {
        return new AcuteRoute(row.key(), row.oneOf("way in", Set.of("mouth", "skin", "breath")),
                row.rows("categories").stream().map(inner -> new AcuteRoute.Category(inner.text("class"),
                        inner.quantity("up to", DOSES), inner.quantity("taken as", DOSES),
                        inner.oneOf("statement", statements))).toList(), row.text("source"));
    }
}
