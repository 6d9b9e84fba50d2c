package org.benchleaf.model;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.quantity.Quantity;

/**
 * How a mixture takes over a class from what is in it.
 *
 * @param key the rule's own key
 * @param by whether shares are added or each part is looked at by itself
 * @param of the classes that count, each with its limit
 * @param gives the class that results; empty where it is that of the part
 * @param statement its H code; empty where it is that of the part
 * @param named whether a part is named on the label from a tenth of its limit on (EUH208)
 * @param flowsUpTo the greatest viscosity at which it holds; empty if viscosity does not matter
 * @param goneInWater whether what is dissolved in water has lost the class
 * @param source where the rule was read
 */
public record MixtureRule(String key, By by, List<Addend> of, Optional<String> gives, Optional<String> statement,
        boolean named, Optional<Quantity> flowsUpTo, boolean goneInWater, String source) {

    public MixtureRule {
        of = List.copyOf(of);
    }

    /** How shares count. */
    public enum By {
        /** Shares divided by their limits are added; one or more gives the class. */
        SUM,
        /** Each part by itself: its share against its limit. */
        EACH,
        /** Each part by itself, where the law has no rule by shares and asks for a test; its class is taken on. */
        TESTED;

        /** As a row writes it. */
        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /**
     * A class that counts.
     *
     * @param hazardClass such as {@code Skin Corr. 1}, which also means its subcategories 1A, 1B and 1C
     * @param limit the share by mass from which such parts by themselves give the class that results
     * @param own whether a part's own limit for this class stands in the place of the limit
     * @param multiplied whether the share counts as often as the M factor of the part says
     * @param countsFrom the share from which a part counts at all
     * @param note only parts with this note of the law; empty for all
     * @param only only parts of these kinds of acidity or groups; empty for all
     */
    public record Addend(String hazardClass, Quantity limit, boolean own, boolean multiplied, Quantity countsFrom,
            Optional<String> note, Set<String> only) {
        public Addend {
            only = Set.copyOf(only);
        }
    }

    /** The addend that a class of a part falls under, the one with just its name before the one of the whole category. */
    public Optional<Addend> addendOf(Substance part, Substance.HazardClass hazard) {
        int bracket = hazard.name().endsWith(")") ? hazard.name().indexOf(" (") : -1;
        String bare = bracket < 0 ? hazard.name() : hazard.name().substring(0, bracket);
        String category = bare.replaceFirst("(\\d)[A-C]$", "$1");
        return named(part, hazard.name()).or(() -> named(part, bare)).or(() -> named(part, category));
    }

    private Optional<Addend> named(Substance part, String name) {
        return of.stream().filter(one -> one.hazardClass().equals(name))
                .filter(one -> one.note().map(part.notes()::contains).orElse(true))
                .filter(one -> one.only().isEmpty() || part.acidity().map(Substance.Acidity::is).map(Substance.Acidity.Kind::word)
                        .filter(one.only()::contains).isPresent() || part.reactsAs().stream().anyMatch(one.only()::contains))
                .findFirst();
    }

    /** Whether a class is the one that the rule gives, or a subcategory of it. */
    public boolean gives(Substance.HazardClass hazard) {
        return gives.filter(name -> hazard.name().equals(name)
                || hazard.name().replaceFirst("(\\d)[A-C]$", "$1").equals(name)).isPresent();
    }
}
