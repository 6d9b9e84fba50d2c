package org.benchleaf.derive;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Substance;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * Classifies one composition: flash point, pH and the addition of shares, each with its ground, also where two rules
 * disagree; then the strictest result goes onto the label.
 *
 * <p>Source: Regulation (EC) No 1272/2008, Annex I, 2.6, 3.2 and 3.3; articles 26 to 28 for what a label leaves out.
 */
final class Classification {

    private static final double LOWEST_BOILING = 35;
    private static final double HIGHLY_FLAMMABLE = 23;
    private static final double FLAMMABLE = 60;
    private static final double CAUSTIC = 11.5;
    private static final double ACID = 2;
    private static final double COUNTS_FROM = 0.01;
    private static final int MOST_PRECAUTIONS = 6;
    private static final Map<String, List<String>> COVERED_BY = Map.of("H315", List.of("H314"),
            "H319", List.of("H314", "H318"));

    private final Bench bench;
    private final Reference reference;
    private final Composition composition;
    private final Set<String> statements = new LinkedHashSet<>();
    private final List<Hazards.Ground> grounds = new ArrayList<>();

    Classification(Bench bench, Composition composition) {
        this.bench = bench;
        this.reference = bench.library().reference();
        this.composition = composition;
        composition.spirit().ifPresent(this::fire);
        composition.ph().ifPresent(this::acidity);
        limitsOfItsOwn();
        reference.limits().forEach(this::addition);
    }

    /** H codes, most severe first, without those that a stronger one covers. */
    List<String> statements() {
        return statements.stream().filter(code -> !covered(code))
                .sorted(Comparator.comparingInt(code -> reference.statements().get(code).rank())).toList();
    }

    private boolean covered(String statement) {
        return COVERED_BY.getOrDefault(statement, List.of()).stream().anyMatch(statements::contains);
    }

    List<Hazards.Ground> grounds() {
        return grounds;
    }

    Optional<String> signal() {
        List<String> words = statements().stream().map(reference.statements()::get)
                .flatMap(statement -> statement.signal().stream()).toList();
        return words.contains("Danger") ? Optional.of("Danger") : words.stream().findFirst();
    }

    /** Pictograms by number; the exclamation mark gives way to corrosion where it speaks of skin and eyes alone. */
    List<String> pictograms() {
        Set<String> codes = new LinkedHashSet<>();
        boolean corrosive = statements().contains("H314") || statements().contains("H318");
        for (String statement : statements()) {
            if (corrosive && (statement.equals("H315") || statement.equals("H319"))) {
                continue;
            }
            reference.statements().get(statement).pictogram().ifPresent(codes::add);
        }
        if (codes.contains("GHS06")) {
            codes.remove("GHS07");
        }
        return codes.stream().sorted().toList();
    }

    List<String> precautions() {
        return statements().stream().flatMap(code -> reference.statements().get(code).precautions().stream())
                .distinct().sorted(Comparator.comparingInt((String code) -> reference.statements().get(code).rank())
                        .thenComparing(Comparator.naturalOrder())).limit(MOST_PRECAUTIONS).toList();
    }

    private void fire(Composition.Spirit spirit) {
        Substance substance = reference.substances().get(spirit.substance());
        Optional<Substance.Fire> fire = substance.fire();
        Optional<Quantity> read = spirit.substance().equals("ethanol") ? flashPoint(spirit.strength()) : Optional.empty();
        boolean weak = spirit.substance().equals("ethanol") && read.isEmpty();
        if (weak) {
            ground("none", Optional.empty(), "Below 5 % v/v no flash point is published; the weakest mixture of the table has 62 °C, and the"
                    + " limit is 60 °C.", "flash-point-table");
            return;
        }
        Optional<Quantity> flashPoint = read.or(() -> fire.flatMap(Substance.Fire::flashPoint));
        if (flashPoint.isEmpty()) {
            // What is classified keeps its class where nobody says its flash point.
            substance.classes().stream().filter(one -> one.name().startsWith("Flam. Liq.")).forEach(one ->
                    give(one.name(), one.statement(), "As the substance itself; its flash point is not in the table.",
                            one.source()));
            return;
        }
        // Rounded down: the table's own basis of strength is uncertain.
        double flash = Math.floor(flashPoint.get().low());
        String because = "Flash point " + (int) flash + " °C at the lowest" + (read.isPresent()
                ? " for " + Reading.of(spirit.strength()) + " " + substance.name().toLowerCase(Locale.ROOT)
                : ", that of the pure liquid, since none is known for mixtures") + ".";
        String source = read.isPresent() ? "flash-point-table" : fire.orElseThrow().source();
        if (flash < HIGHLY_FLAMMABLE) {
            boolean extremely = fire.flatMap(Substance.Fire::boilingPoint).map(Quantity::low).orElse(0.0)
                    <= LOWEST_BOILING;
            give(extremely ? "Flam. Liq. 1" : "Flam. Liq. 2", extremely ? "H224" : "H225", because, source);
        } else if (flash <= FLAMMABLE) {
            give("Flam. Liq. 3", "H226", because, source);
        } else {
            ground("none", Optional.empty(), because + " The limit is 60 °C.", source);
        }
    }

    private Optional<Quantity> flashPoint(Quantity strength) {
        double high = strength.highIn(Unit.PERCENT_BY_VOLUME);
        Outcome outcome = bench.ledger().outcome("ethanol-mixture", Inputs.none()
                .with("strength", Quantity.of(high, Unit.PERCENT_BY_VOLUME), Job.CASE_FILE)
                .with("volume", Quantity.of(100, Unit.MILLILITRE), Job.USUAL)
                .with("stock", Quantity.of(100, Unit.PERCENT_BY_VOLUME), Job.USUAL));
        return outcome instanceof Outcome.Worked worked
                ? Optional.ofNullable(worked.numbers().get("flash-point")) : Optional.empty();
    }

    private void acidity(Quantity ph) {
        if (ph.high() >= CAUSTIC || ph.low() <= ACID) {
            String because = "pH " + (ph.high() >= CAUSTIC ? Reading.number(ph.high()) : Reading.number(ph.low()))
                    + ": without other data a pH of 2 or less, or 11.5 or more, counts as corrosive.";
            give("Skin Corr. 1", "H314", because, "clp-i-32");
            give("Eye Dam. 1", "H318", because, "clp-i-33");
        } else {
            ground("none", Optional.empty(), "pH between 2 and 11.5: the pH by itself gives no class.", "clp-i-32");
        }
    }

    private void limitsOfItsOwn() {
        composition.shares().forEach((key, share) -> Optional.ofNullable(reference.substances().get(key))
                .ifPresent(substance -> substance.classes().stream().filter(one -> one.from().isPresent())
                        .filter(one -> share >= fraction(one.from().get())
                                && one.below().map(below -> share < fraction(below)).orElse(true))
                        .forEach(one -> give(one.name(), one.statement(), percent(share) + " "
                                + substance.name().toLowerCase(Locale.ROOT) + ", its own limit is "
                                + Reading.of(one.from().get()) + ".", one.source()))));
        // A substance by itself also has the classes that no rule of addition speaks of, but for fire, which is read off.
        Set<String> added = reference.limits().stream().flatMap(limit -> limit.sum().keySet().stream())
                .collect(Collectors.toSet());
        composition.shares().forEach((key, share) -> Optional.ofNullable(reference.substances().get(key))
                .filter(substance -> share >= 1).ifPresent(substance -> substance.classes().stream()
                        .filter(one -> one.from().isEmpty() && !added.contains(one.name())
                                && !one.name().startsWith("Flam."))
                        .forEach(one -> give(one.name(), one.statement(), "As the substance itself.", one.source()))));
    }

    private void addition(Reference.MixtureLimit limit) {
        double sum = 0;
        double passedOver = 0;
        Set<String> names = new LinkedHashSet<>();
        for (Map.Entry<String, Double> part : composition.shares().entrySet()) {
            int factor = factor(part.getKey(), limit);
            if (factor > 0 && part.getValue() >= COUNTS_FROM) {
                sum += factor * part.getValue();
            } else if (factor > 0) {
                passedOver += part.getValue();
            }
            if (factor > 0) {
                names.add(reference.substances().get(part.getKey()).name().toLowerCase(Locale.ROOT));
            }
        }
        String of = String.join(", ", names);
        if (sum >= fraction(limit.from()) && covered(limit.statement())) {
            return;
        }
        if (sum >= fraction(limit.from()) && limit.below().map(below -> belowOf(limit, below)).orElse(true)) {
            give(limit.gives(), limit.statement(), "The shares that count (" + of + ") add up to " + percent(sum)
                    + ", the limit is " + Reading.of(limit.from()) + ".", limit.source());
        } else if (sum > 0 && sum < fraction(limit.from())) {
            ground("not " + limit.gives(), Optional.empty(), "The shares that count (" + of + ") add up to " + percent(sum)
                    + ", below the limit of " + Reading.of(limit.from()) + ".", limit.source());
        } else if (passedOver > 0) {
            ground("not " + limit.gives(), Optional.empty(), "By addition not classified: " + percent(passedOver) + " of " + of
                    + " is below 1 %, from which a substance counts.", limit.source());
        }
    }

    private boolean belowOf(Reference.MixtureLimit limit, Quantity below) {
        double sum = composition.shares().entrySet().stream().filter(part -> part.getValue() >= COUNTS_FROM)
                .mapToDouble(part -> factor(part.getKey(), limit) * part.getValue()).sum();
        return sum < fraction(below);
    }

    /** How often a substance counts in a sum: once even where two of its classes are added. */
    private int factor(String key, Reference.MixtureLimit limit) {
        return Optional.ofNullable(reference.substances().get(key)).stream().flatMap(row -> row.classes().stream())
                .filter(one -> one.from().isEmpty())
                .mapToInt(one -> limit.sum().getOrDefault(one.name(), 0)).max().orElse(0);
    }

    private void give(String name, String statement, String because, String source) {
        statements.add(statement);
        ground(name + ", " + statement, Optional.of(statement), because, source);
    }

    private void ground(String name, Optional<String> statement, String because, String source) {
        Hazards.Ground ground = new Hazards.Ground(name, statement, because, source);
        if (!grounds.contains(ground)) {
            grounds.add(ground);
        }
    }

    private static double fraction(Quantity share) {
        return share.in(Unit.PERCENT_BY_MASS) / 100;
    }

    private static String percent(double share) {
        return Reading.number(share * 100) + " % by mass";
    }
}
