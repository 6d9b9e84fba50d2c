package org.benchleaf.rule;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.benchleaf.model.Damage;
import org.benchleaf.model.Material;
import org.benchleaf.model.Part;
import org.benchleaf.model.Picture;
import org.benchleaf.model.Step;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.QuantityReader;
import org.benchleaf.quantity.Unit;

/** What the words of a step or a picture say, held against what its keys say of the same thing. */
final class TextSense {

    private static final Pattern BETWEEN_WORDS = Pattern.compile("[^\\p{L}]++");
    private static final Pattern CELSIUS =
            Pattern.compile("(-?\\d{1,4}(?:\\.\\d{1,3})?)(?:\\h?°C)?\\h?(?:to|–)?\\h?(\\d{1,4}(?:\\.\\d{1,3})?)?\\h?°C");
    private static final Pattern BETWEEN_CLAUSES = Pattern.compile("[,.;:()]");
    private static final Pattern BETWEEN_NUMBERS = Pattern.compile("[^\\p{L}\\p{N}]++");
    private static final Pattern DIGITS = Pattern.compile("\\d{1,3}");
    private static final List<String> NUMBERS = List.of("one", "two", "three", "four", "five", "six", "seven", "eight", "nine",
            "ten", "eleven", "twelve");
    /** As many words after a number may still be what is counted, adjectives included. */
    private static final int MOST_AFTER = 3;
    /** So much of a word tells what it comes from: erase and eraser, brush and brushing. */
    private static final int STEM = 4;
    /** Nearer together than this, thermometers at a bench do not tell two temperatures apart; common practice. */
    private static final String NEAR = " ± 1 °C";

    private final TreatmentCase treatment;
    private final Liquids liquids;

    TextSense(TreatmentCase treatment, Liquids liquids) {
        this.treatment = treatment;
        this.liquids = liquids;
    }

    /** Whether the cleaning tools that answer to the words stand in the order of the words. */
    boolean inOrder(Step step, List<String> words) {
        List<Integer> ranks = cleaningTools(step).map(id -> rank(id, words)).flatMap(Optional::stream).toList();
        return ranks.equals(ranks.stream().sorted().toList());
    }

    private Optional<Integer> rank(String id, List<String> words) {
        Set<String> own = stems(id + " " + liquids.material(id).map(Material::name).orElse(""));
        return Stream.iterate(0, index -> index < words.size(), index -> index + 1)
                .filter(index -> own.containsAll(stems(words.get(index)))).findFirst();
    }

    /** Whether the words of the step speak of each of its cleaning tools. */
    boolean tellsTools(Step step) {
        Set<String> told = stems(String.join(" ", texts(step)));
        return cleaningTools(step).allMatch(id -> stems(id + " " + liquids.material(id).map(Material::name).orElse(""))
                .stream().anyMatch(told::contains));
    }

    /** Whether each temperature in the words of the step is one that its parts or its solutions give; so too where they give none. */
    boolean temperaturesAlike(Step step) {
        List<Quantity> given = Stream.of(step.part(Part.Bath.class).flatMap(Part.Bath::temperature),
                step.part(Part.Heat.class).flatMap(Part.Heat::temperature),
                step.part(Part.Mend.class).flatMap(Part.Mend::activation).flatMap(Part.Activation::window))
                .flatMap(Optional::stream).toList();
        return given.isEmpty() || texts(step).stream().flatMap(text -> temperatures(text).stream())
                .allMatch(said -> given.stream().anyMatch(one -> said.lowIn(Unit.CELSIUS) <= one.highIn(Unit.CELSIUS)
                        && said.highIn(Unit.CELSIUS) >= one.lowIn(Unit.CELSIUS)));
    }

    private static List<Quantity> temperatures(String text) {
        List<String> all = new ArrayList<>();
        Matcher matcher = CELSIUS.matcher(text);
        while (matcher.find()) {
            all.add(matcher.group(1));
            Optional.ofNullable(matcher.group(2)).ifPresent(all::add);
        }
        return all.stream().map(number -> QuantityReader.read(number + NEAR, Dimension.TEMPERATURE).quantity())
                .flatMap(Optional::stream).toList();
    }

    /** Whether each count of damages in the words of a picture is the one of the condition; a picture of a part may show fewer. */
    boolean countsAlike(Picture picture) {
        return treatment.condition().stream().map(Damage::what).distinct().allMatch(what -> {
            long listed = treatment.condition().stream().filter(damage -> damage.what().equals(what)).count();
            return Stream.of(picture.alt(), picture.caption()).flatMap(BETWEEN_CLAUSES::splitAsStream)
                    .flatMap(clause -> counts(clause, what))
                    .allMatch(said -> said == listed || said < listed && picture.sheet().isEmpty());
        });
    }

    /** The numbers in a clause that stand before a damage, or its plural, with at most two words between. */
    private static Stream<Integer> counts(String clause, String what) {
        List<String> words = List.of(BETWEEN_NUMBERS.split(clause.toLowerCase(Locale.ROOT)));
        return Stream.iterate(0, index -> index < words.size(), index -> index + 1).flatMap(index -> {
            String after = " " + String.join(" ", words.subList(index + 1, Math.min(words.size(), index + 1 + MOST_AFTER))) + " ";
            String named = " " + what.toLowerCase(Locale.ROOT);
            return number(words.get(index)).filter(any -> after.contains(named + " ") || after.contains(named + "s ")).stream();
        });
    }

    private static Optional<Integer> number(String word) {
        int index = NUMBERS.indexOf(word);
        return index >= 0 ? Optional.of(index + 1) : DIGITS.matcher(word).matches() ? Optional.of(Integer.valueOf(word)) : Optional.empty();
    }

    private static Stream<String> cleaningTools(Step step) {
        return step.part(Part.Cleaning.class).map(Part.Cleaning::tools).orElse(List.of()).stream();
    }

    private static List<String> texts(Step step) {
        return Stream.of(Optional.of(step.instruction()), step.see(), step.watch(), step.ifNot(), step.until())
                .flatMap(Optional::stream).toList();
    }

    private static Set<String> stems(String text) {
        Set<String> stems = new HashSet<>();
        BETWEEN_WORDS.splitAsStream(text.toLowerCase(Locale.ROOT)).filter(word -> word.length() >= STEM)
                .forEach(word -> stems.add(word.substring(0, STEM)));
        return stems;
    }
}
