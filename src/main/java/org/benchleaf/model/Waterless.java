package org.benchleaf.model;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Unit;

/** Which liquids of a case are shown to be of solvents without water. */
public final class Waterless {

    private static final String WATER = "water";
    private static final Set<Dimension> SHARES = Set.of(Dimension.VOLUME_FRACTION, Dimension.MASS_FRACTION);

    private final TreatmentCase treatment;
    private final Library library;

    public Waterless(TreatmentCase treatment, Library library) {
        this.treatment = treatment;
        this.library = library;
    }

    /** Whether all of it is known, none of it holds water, and a solvent carries it; what is not known is taken as water is. */
    public boolean is(String id) {
        List<Optional<Material>> made = treatment.matter(id).map(leaf -> Optional.ofNullable(library.materials().get(leaf))).toList();
        return made.stream().allMatch(leaf -> leaf.filter(this::holdsNone).isPresent())
                && made.stream().flatMap(Optional::stream).anyMatch(this::isSolvent);
    }

    private boolean holdsNone(Material material) {
        boolean described = material.substance().isPresent() || !material.traits().isEmpty();
        boolean dissolved = substance(material).filter(substance -> substance.form().equals("solution")).isPresent();
        double least = library.formulary().constant("least-without-water").value().in(Unit.PERCENT);
        boolean weak = material.strength().filter(strength -> !SHARES.contains(strength.dimension())
                || strength.in(Unit.usual(strength.dimension())) < least).isPresent();
        boolean named = Stream.of(Stream.of(material.id(), material.kind()), material.substance().stream(), material.traits().stream())
                .flatMap(words -> words).anyMatch(word -> word.toLowerCase(Locale.ROOT).contains(WATER));
        return described && !dissolved && !weak && !named;
    }

    private boolean isSolvent(Material material) {
        return substance(material).filter(substance -> substance.form().equals("liquid")).flatMap(Substance::acidity)
                .filter(acidity -> acidity.is() == Substance.Acidity.Kind.NEUTRAL).isPresent();
    }

    private Optional<Substance> substance(Material material) {
        return material.substance().map(library.reference().substances()::get);
    }
}
