package org.benchleaf.read;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.model.LowReserve;
import org.benchleaf.model.Substance;
import org.benchleaf.quantity.Dimension;

/** Reads one row of the table of substances, and holds it to its three answers: hazards known, none, or unknown. */
final class SubstanceRow {

    private static final Set<String> FORMS = Set.of("liquid", "solid", "solution", "gas", "dust");
    private static final Set<String> WAYS = Set.of("mouth", "skin", "breath");
    private static final double MOST_FACTOR = 1e6;
    private static final int MOST_PROTONS = 12;

    private static final Set<Substance.Acidity.Kind> WITH_CONSTANTS = Set.of(Substance.Acidity.Kind.WEAK_BASE,
            Substance.Acidity.Kind.WEAK_ACID, Substance.Acidity.Kind.SALT, Substance.Acidity.Kind.AMMONIUM_SALT);

    private final ReferenceRow row;

    private SubstanceRow(ReferenceRow row) {
        this.row = row;
    }

    /**
     * Reads a row.
     *
     * @param words the classes, each with the statements that go with it
     * @param waste the kinds of waste
     * @param first what stood under each key at first, which a later row may not make milder; this row is added
     */
    static Substance read(ReferenceRow row, Map<String, Set<String>> words, Set<String> waste, Map<String, Substance> first) {
        Substance made = new SubstanceRow(row).substance(words, waste);
        Substance before = first.putIfAbsent(made.key(), made);
        if (before != null && made.hazards() != Substance.Answer.UNKNOWN) {
            List<Substance.HazardClass> left = before.classes().stream().filter(one -> made.classes().stream()
                    .noneMatch(own -> own.isAtLeast(one))).toList();
            if (!left.isEmpty()) {
                row.refuseMilder(left);
            }
        }
        return made;
    }

    private Substance substance(Map<String, Set<String>> words, Set<String> waste) {
        List<Substance.HazardClass> classes = row.rows("classes").stream()
                .map(inner -> hazardClass(inner, words)).toList();
        Optional<String> because = row.optionalText("because");
        return new Substance(row.key(), row.text("name"), row.texts("synonyms"), row.optionalText("cas"),
                row.oneOf("form", FORMS), row.optionalQuantity("molar mass", Dimension.MASS_PER_AMOUNT),
                row.measured("density", Dimension.MASS_PER_VOLUME),
                row.measured("vapour pressure", Dimension.PRESSURE), row.measured("viscosity", Dimension.DIFFUSIVITY),
                answer(classes, because), because, classes, new HashSet<>(row.texts("notes in the law")),
                row.optionalQuantity("benzene", Dimension.MASS_FRACTION), toxicityUnknown(), row.yes("supplied in water"), fire(),
                exposure(), saturated(), acidity(), lowReserve(),
                row.has("waste") ? Optional.of(row.oneOf("waste", waste)) : Optional.empty(), row.set("reacts as"),
                row.row("gloves").map(inner -> new Substance.Gloves(inner.text("words"), inner.text("source"))),
                row.optionalText("note"), row.text("source"), row.text("edition"));
    }

    /** Known means classes, none means none with the reason that shows it, unknown means a reason too. */
    private Substance.Answer answer(List<Substance.HazardClass> classes, Optional<String> because) {
        row.text("hazards");
        Optional<Substance.Answer> answer =
                row.optionalWord("hazards", Substance.Answer.values(), Substance.Answer::word);
        boolean known = answer.filter(Substance.Answer.KNOWN::equals).isPresent();
        if (known && classes.isEmpty()) {
            row.refuse("hazards", "'known' with a list 'classes:', or 'none' or 'unknown' with 'because:'");
        }
        if (answer.filter(Substance.Answer.NONE::equals).isPresent() && !classes.isEmpty()) {
            row.refuse("hazards", "'known' where classes follow, or take the classes out");
        }
        if (answer.isPresent() && !known && because.isEmpty()) {
            row.text("because");
        }
        return answer.orElse(Substance.Answer.UNKNOWN);
    }

    private static Substance.HazardClass hazardClass(ReferenceRow inner, Map<String, Set<String>> words) {
        String name = inner.classWord("class", words.keySet());
        return new Substance.HazardClass(name, words.containsKey(name) ? inner.oneOf("statement", words.get(name))
                        : inner.text("statement"),
                inner.optionalQuantity("from", Dimension.MASS_FRACTION),
                inner.optionalQuantity("below", Dimension.MASS_FRACTION),
                inner.optionalQuantity("ate", Dimension.MASS_FRACTION, Dimension.MASS_PER_VOLUME,
                        Dimension.PARTS_PER_MILLION),
                factor(inner), inner.yes("minimum"),
                organs(inner, name), inner.text("source"));
    }

    /** The M factor, with a source of its own where the entry of the class states none. */
    private static Optional<Double> factor(ReferenceRow inner) {
        if (!inner.isGroup("factor")) {
            return inner.optionalNumber("factor", 1, MOST_FACTOR);
        }
        return inner.row("factor").flatMap(row -> {
            row.text("source");
            return row.optionalNumber("value", 1, MOST_FACTOR);
        });
    }

    private static Optional<Substance.Organs> organs(ReferenceRow inner, String name) {
        if (inner.has("organs") && !name.matches("STOT [SR]E [12]")) {
            inner.refuse("organs", "nothing: only STOT SE 1, STOT SE 2, STOT RE 1 and STOT RE 2 damage organs");
        }
        return inner.row("organs").map(row -> new Substance.Organs(row.texts("words"), row.text("source")));
    }

    private Set<String> toxicityUnknown() {
        return Set.copyOf(row.textsOf("toxicity not known", WAYS));
    }

    private Optional<Substance.Fire> fire() {
        return row.row("fire").map(inner -> new Substance.Fire(
                inner.optionalQuantity("flash point", Dimension.TEMPERATURE),
                inner.optionalQuantity("boiling point", Dimension.TEMPERATURE),
                inner.optionalQuantity("lower limit", Dimension.VOLUME_FRACTION),
                inner.optionalQuantity("upper limit", Dimension.VOLUME_FRACTION), inner.text("source")));
    }

    private List<Substance.ExposureLimit> exposure() {
        return row.rows("exposure").stream().map(inner -> new Substance.ExposureLimit(inner.text("kind"),
                inner.quantity("limit", Dimension.PARTS_PER_MILLION, Dimension.MASS_PER_VOLUME),
                inner.text("where"), inner.text("source"))).toList();
    }

    private Optional<Substance.Saturated> saturated() {
        return row.row("saturated").map(inner -> new Substance.Saturated(
                inner.quantity("share", Dimension.MASS_FRACTION), inner.quantity("ph", Dimension.ACIDITY),
                inner.text("source")));
    }

    private Optional<LowReserve> lowReserve() {
        return row.row("low reserve").map(inner -> new LowReserve(
                Set.copyOf(inner.textsOf("rules out", LowReserve.STATEMENTS)),
                Optional.of(inner.quantity("up to", Dimension.MASS_FRACTION)), inner.text("test"), inner.text("source")));
    }

    private Optional<Substance.Acidity> acidity() {
        return row.row("acidity").map(inner -> {
            Substance.Acidity.Kind is = inner.optionalWord("is", Substance.Acidity.Kind.values(), Substance.Acidity.Kind::word)
                    .orElse(Substance.Acidity.Kind.NOT_KNOWN);
            inner.text("is");
            List<Double> constants = constants(inner, "pK", WITH_CONSTANTS.contains(is));
            return new Substance.Acidity(is, inner.optionalNumber("per", 1, MOST_PROTONS).orElse(1.0).intValue(),
                    inner.optionalNumber("acids", 1, MOST_PROTONS).orElse(1.0).intValue(), constants,
                    constants(inner, "base", is == Substance.Acidity.Kind.AMMONIUM_SALT), inner.text("source"));
        });
    }

    private static List<Double> constants(ReferenceRow row, String name, boolean needed) {
        List<Double> constants = new ArrayList<>();
        row.texts(name).forEach(text -> {
            if (text.matches("-?\\d+(\\.\\d+)?")) {
                constants.add(Double.parseDouble(text));
            } else {
                row.refuse(name, "numbers in square brackets, as in [9.24]");
            }
        });
        if (constants.isEmpty() == needed) {
            row.refuse(name, needed ? "pK values in square brackets, as in [9.24]"
                    : "nothing: only weak acids, weak bases and salts have it");
        }
        return constants;
    }
}
