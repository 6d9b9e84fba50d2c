package org.benchleaf.rule;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.benchleaf.model.CaseField;
import org.benchleaf.model.Instrument;
import org.benchleaf.model.Step;

/**
 * A fact without which a question cannot be answered.
 *
 * @param told that it is missing, to an author, as a clause such as {@code 'temperature:' under 'bath:' is not given}
 * @param remedy what to write and where, as the beginning of a sentence
 * @param read that it is missing, to a reader, as a clause such as {@code the temperature of the bath is not given}, with %s where
 *        a name stands
 * @param named the ids of what is named there, in this order
 */
record MissingFact(String told, String remedy, String read, List<String> named) {

    MissingFact {
        named = List.copyOf(named);
    }

    private MissingFact(String told, String remedy, String read) {
        this(told, remedy, read, List.of());
    }

    /** The facts that are missing, as one clause. */
    static String told(Set<MissingFact> missing) {
        return missing.stream().map(MissingFact::told).distinct().collect(Collectors.joining("; "));
    }

    /** The facts that are missing, as one clause for readers of the pages. */
    static String read(Set<MissingFact> missing, Function<String, String> name) {
        return missing.stream().map(fact -> String.format(Locale.ROOT, fact.read, fact.named.stream().map(name).toArray())).distinct()
                .collect(Collectors.joining("; "));
    }

    /** What would supply one or the other of them, as a sentence. */
    static String remedies(Set<MissingFact> missing) {
        return missing.stream().map(MissingFact::remedy).distinct().collect(Collectors.joining("; or else: ")) + ".";
    }

    /** A field that the author left out. */
    static MissingFact of(CaseField field, Asked asked) {
        return new MissingFact(field.written() + owner(field, asked) + " is not known", "Add " + field.written() + place(field, asked),
                field.says() + " is not given");
    }

    /** A field whose range lies on both sides of a limit. */
    static MissingFact straddling(CaseField field, Asked asked) {
        return new MissingFact("the range of " + field.written() + owner(field, asked) + " lies on both sides of the limit",
                "Narrow " + field.written() + place(field, asked), "the range of " + field.says() + " lies on both sides of the limit");
    }

    /** Two fields whose ranges overlap, so that neither is known to be the greater. */
    static MissingFact overlapping(CaseField one, CaseField other) {
        return new MissingFact("the ranges of " + one.written() + " and " + other.written() + " overlap",
                "Narrow " + one.written() + " or " + other.written(),
                "the ranges of " + one.says() + " and of " + other.says() + " overlap");
    }

    /** What a pH meter was calibrated with, or when. */
    static MissingFact meter(Instrument meter, String key) {
        return new MissingFact("'" + key + ":' of the instrument '" + meter.id() + "' is not given",
                "Add '" + key + ":' to '" + meter.id() + "' under 'instruments:'", key.equals("buffers")
                        ? "with which buffers the meter was calibrated is not given" : "when the meter was calibrated is not given");
    }

    /** The colour that a bath had at its end. */
    static MissingFact bathColour(Step step) {
        return new MissingFact("'colour:' under 'readings:' under 'bath:' is not given for the last baths",
                "Add the baths with their 'colour:' under 'readings:' of step '" + step.id() + "'",
                "the colour of the last baths is not given");
    }

    /** What was read in the last baths. */
    static MissingFact bathReading(Step step, String key) {
        return new MissingFact("'" + key + ":' under 'readings:' under 'bath:' is not given for the last baths",
                "Add the baths with their '" + key + ":' under 'readings:' of step '" + step.id() + "'",
                "what was read in the last baths is not given");
    }

    /** An end point in words of which nothing read in the baths tells. */
    static MissingFact endPoint(Step step) {
        return new MissingFact("'until:' of step '" + step.id() + "' asks for something that no reading of its baths tells",
                "Write 'until:' as what was read, such as 'two baths in a row stay clear' or 'the conductivity stays below 5 µS/cm',"
                        + " or say under 'reasons' how the end was seen",
                "the end point asks for something that no reading of the baths tells");
    }

    /** The liquid of a step that wets the sheet. */
    static MissingFact liquid() {
        return new MissingFact("the liquid is not given",
                "Name the liquid with 'of:' under 'bath:' or 'mist:', or under 'uses:' of the step",
                "the liquid is not given");
    }

    /** What is in a liquid that is told by its water alone. */
    static MissingFact composition() {
        return new MissingFact("what the liquid carries is not given",
                "Name the solution with 'of:' under 'bath:', or what is dissolved in it under 'uses:' of the step",
                "what the liquid carried is not given");
    }

    /** What a liquid is made of. */
    static MissingFact contents(String material) {
        return new MissingFact("what '" + material + "' holds is not given",
                "Add 'substance:' or 'traits:' to '" + material + "' in the studio's materials",
                "what is in %s is not given", List.of(material));
    }

    /** The tools of a step. */
    static MissingFact tools() {
        return new MissingFact("the tools are not given", "Name them with 'tools:' under 'cleaning:', or under 'uses:' of the step",
                "the tools are not given");
    }

    /** What a test gave: nobody made it, or it does not tell. */
    static MissingFact result(String medium, String with) {
        return new MissingFact("the result of the test of '" + medium + "' with '" + with + "' is not known",
                "Test '" + medium + "' with '" + with + "' and write its 'result:' under 'tests:'",
                "the result of a test of %s with %s is not given", List.of(medium, with));
    }

    /** With which liquid a test was made. */
    static MissingFact testedLiquid(String medium) {
        return new MissingFact("the liquid of a test of '" + medium + "' is not given",
                "Name the liquid with 'with:' in the test of '" + medium + "' under 'tests:'",
                "with which liquid %s was tested is not given", List.of(medium));
    }

    /** How long a test lasted. */
    static MissingFact dwell(String medium, String with) {
        return new MissingFact("'dwell:' of the test of '" + medium + "' with '" + with + "' is not given",
                "Add 'dwell:' to the test of '" + medium + "' with '" + with + "' under 'tests:'",
                "how long the test of %s with %s lasted is not given", List.of(medium, with));
    }

    /** How long a liquid touches a medium in all, of which this is told. */
    static MissingFact contact(String told) {
        return new MissingFact("how long the liquid touches the medium is not given in full (" + told + ")",
                "Give the times of these steps: 'each:' under 'bath:', 'changes:' under 'blotters:', or 'takes:'",
                "how long the liquid touches the medium is not given in full");
    }

    /** What the sheet is made of. */
    static MissingFact paper() {
        return new MissingFact("'paper:' under 'support:' is not known", "Name the paper with 'paper:' under 'support:' of 'object:'",
                "what paper it is, is not given");
    }

    /** Which medium a step of fixing protects. */
    static MissingFact fixedMedium(Step fixing) {
        return new MissingFact("the medium that step '" + fixing.id() + "' fixes is not given",
                "Add 'medium:' under 'fixing:' of step '" + fixing.id() + "'", "which medium was fixed is not given");
    }

    private static String owner(CaseField field, Asked asked) {
        return switch (field.home()) {
            case LAYER -> asked.layer().map(layer -> " of '" + layer.name() + "'").orElse("");
            case LIQUID -> asked.liquid().map(liquid -> " for '" + liquid + "'").orElse("");
            default -> "";
        };
    }

    private static String place(CaseField field, Asked asked) {
        return switch (field.home()) {
            case CASE -> " to the case";
            case OBJECT -> " of 'object:'";
            case LAYER -> asked.layer().filter(layer -> layer.medium().isPresent())
                    .map(layer -> " to '" + layer.name() + "' under 'media:'; write 'sound' where nothing is wrong with it")
                    .orElse(" under 'support:'; write 'sound' where nothing is wrong with it");
            case STEP -> asked.step().map(step -> " of step '" + step.id() + "'").orElse(" of the step");
            case LIQUID -> asked.liquid().map(liquid -> " of '" + liquid + "'").orElse(" of the solution");
            case HOUSING -> " to the step of kind 'housing'";
            case MEASURING -> " to the step of kind 'measuring'";
            case RESULT -> " of the result";
            case PICTURE -> " to the picture";
        };
    }
}
