package org.benchleaf.model;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The words that a case tells of its sheet, by which advice and arguments are found. */
public final class SheetWords {

    /** Before the key of a substance, of a medium that moved in a liquid that holds it. */
    private static final String MOVES_IN = "moves in ";

    private SheetWords() {
    }

    /** What the sheet, its media and its damages are described as. */
    public static List<String> described(TreatmentCase treatment) {
        return Stream.of(sheet(treatment), treatment.object().media().stream().flatMap(medium ->
                Stream.concat(names(medium), medium.state().stream())), damages(treatment)).flatMap(all -> all).toList();
    }

    /** The words by which it is told that a colour moved in a liquid that holds the substance of that key. */
    public static String moving(String substance) {
        return MOVES_IN + substance;
    }

    /** What it is described as, how it is sized, and in what its media moved when they were tested: {@code moves in water}. */
    public static List<String> tested(TreatmentCase treatment, Library library) {
        return Stream.of(described(treatment).stream(), treatment.object().support().sizing().stream(), treatment.object().media()
                .stream().flatMap(medium -> moves(medium, treatment, library))).flatMap(all -> all).toList();
    }

    /**
     * The same as far as a step leaves it open: nothing of a medium that the step keeps out of it, and not how a medium moves where
     * a test of it with that very liquid passed.
     */
    public static List<String> open(Step step, String liquid, TreatmentCase treatment, Library library) {
        Predicate<Medium> cleared = medium -> treatment.tests().stream().anyMatch(test -> test.medium().equals(medium.id())
                && test.isLiquidNamed() && test.with().equals(liquid) && test.result().isPassed());
        return Stream.of(sheet(treatment), treatment.object().support().sizing().stream(), treatment.object().media().stream()
                .filter(medium -> medium.isMetBy(step) && !isKeptOut(medium, step)).flatMap(medium -> cleared.test(medium) ? names(medium)
                        : Stream.of(names(medium), medium.state().stream(), moves(medium, treatment, library)).flatMap(all -> all)),
                damages(treatment)).flatMap(all -> all).toList();
    }

    /** No medium is kept out of a bath of the whole sheet. */
    private static boolean isKeptOut(Medium medium, Step step) {
        return step.avoids().contains(medium.id()) && (!step.area().equals("whole") || step.part(Part.Bath.class).isEmpty());
    }

    private static Stream<String> sheet(TreatmentCase treatment) {
        PrintObject object = treatment.object();
        return Stream.of(Stream.of(object.kind(), object.technique(), object.support().paper()),
                object.support().features().stream(), object.support().state().stream(), object.afterwards().stream())
                .flatMap(all -> all);
    }

    private static Stream<String> damages(TreatmentCase treatment) {
        return treatment.condition().stream().map(Damage::what);
    }

    private static Stream<String> names(Medium medium) {
        return Stream.concat(Stream.of(medium.is()), medium.colour().stream());
    }

    private static Stream<String> moves(Medium medium, TreatmentCase treatment, Library library) {
        return treatment.tests().stream().filter(test -> test.medium().equals(medium.id()) && test.result().isChange())
                .flatMap(test -> library.substances(treatment.matter(test.with()))).map(SheetWords::moving).distinct();
    }
}
