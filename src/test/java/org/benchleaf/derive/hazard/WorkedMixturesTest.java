package org.benchleaf.derive.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.benchleaf.calculate.Calculations;
import org.benchleaf.message.Messages;
import org.benchleaf.model.Reference;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.read.MethodReader;
import org.benchleaf.read.ReferenceReader;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds the classification of mixtures against published examples and against the limits of the regulation. */
class WorkedMixturesTest {

    private static final Path VALUES = Path.of("src/test/resources/check-values");
    private static Bottles bottles;
    private static Reference reference;

    @TempDir
    private static Path content;

    @BeforeAll
    static void read() throws IOException {
        Files.createDirectories(content.resolve("reference"));
        Files.copy(VALUES.resolve("guidance-substances.yaml"), content.resolve("reference/substances.yaml"));
        Messages messages = new Messages();
        reference = ReferenceReader.read(content, messages);
        assertThat(messages.all()).isEmpty();
        bottles = new Bottles(reference, MethodReader.read());
    }

    static Stream<Arguments> rows() throws IOException {
        return Files.readAllLines(VALUES.resolve("worked-mixtures.csv")).stream().filter(line -> !line.startsWith("#"))
                .map(line -> line.split("\\|", -1))
                .map(cells -> Arguments.of(Stream.of(cells).map(String::strip).toArray()));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void a_mixture_has_the_statements_that_its_source_gives(String line, String ph, String statements, String signal,
            String known, String source) {
        Hazards hazards = ph.isEmpty() ? ask(line, "") : byShares(line, ph);

        assertThat(hazards.hazardStatements()).as(line + ": " + hazards.grounds())
                .isEqualTo(statements.isEmpty() ? List.of() : List.of(statements.split(" ")));
        assertThat(hazards.signal().orElse("")).isEqualTo(signal);
        assertThat(hazards.known()).as(hazards.unknown().toString()).isEqualTo(known.equals("yes"));
        assertThat(hazards.precautions()).hasSizeLessThanOrEqualTo(6);
        assertThat(source).isNotBlank();
    }

    /** Beside serious eye damage or airway sensitising no exclamation mark stands for irritation (article 26). */
    @Test
    void a_stronger_pictogram_takes_off_the_exclamation_mark() {
        assertThat(ask("rule corrosive 4.9 % m/m; rest exercise nothing", "").pictograms()).containsExactly("GHS05");
        assertThat(ask("rule airway sens 1 % m/m; rule skin 10 % m/m; rest exercise nothing", "").pictograms())
                .containsExactly("GHS08");
        assertThat(ask("exercise four 100 % m/m", "").pictograms()).containsExactly("GHS06");
    }

    /** The label states how much is of unknown toxicity (CLP Annex I, 3.1.3.6.2.2). */
    @Test
    void a_share_of_unknown_toxicity_is_told() {
        Hazards hazards = ask("exercise one 26 % m/m; exercise two 23 % m/m; exercise three 11 % m/m; "
                + "exercise four 40 % m/m", "");

        assertThat(hazards.unknown()).singleElement().satisfies(one -> {
            assertThat(one.about()).isEqualTo("toxicity");
            assertThat(one.why()).contains("11 %", "vapour");
        });
        // The example prints 873 mg/kg and 6.6 mg/L.
        assertThat(hazards.grounds()).extracting(ground -> estimate(ground.because()))
                .anySatisfy(oral -> assertThat(oral).isCloseTo(873, within(0.5)))
                .anySatisfy(vapour -> assertThat(vapour).isCloseTo(6.6, within(0.05)));
    }

    /** Every class that a shipped substance has is met by a rule, so that none gets lost in a mixture. */
    @Test
    void no_class_of_a_substance_is_unknown_to_the_rules() {
        reference.substances().values().forEach(row -> row.classes().forEach(one -> assertThat(
                one.name().startsWith("Flam. Liq.") || one.name().startsWith("Acute Tox.")
                        || reference.rules().stream().flatMap(rule -> rule.of().stream())
                                .anyMatch(addend -> isMet(addend.hazardClass(), one.name())))
                .as(row.key() + ": " + one.name()).isTrue()));
    }

    @Test
    void every_statement_that_a_rule_can_give_is_worded() {
        assertThat(reference.statements()).containsKey("EUH208");
        assertThat(reference.rules()).allSatisfy(rule -> assertThat(rule.statement().map(reference.statements()::containsKey)
                .orElse(true)).as(rule.key()).isTrue());
    }

    private static double estimate(String because) {
        Matcher number = Pattern.compile("comes to ([0-9.]+)").matcher(because);
        return number.find() ? Double.parseDouble(number.group(1)) : Double.NaN;
    }

    private static boolean isMet(String rule, String hazardClass) {
        String bare = hazardClass.replaceFirst(" \\(.*\\)$", "");
        return rule.equals(hazardClass) || rule.equals(bare) || rule.equals(bare.replaceFirst("(\\d)[A-C]$", "$1"));
    }

    /** The rules by shares alone: the pH is set where it decides nothing, whatever the equilibrium would say. */
    private static Hazards byShares(String line, String ph) {
        BottleShares shares = new BottleShares(reference, new BottleLine(line).items());
        Composition composition = new Composition(shares.shares(), Optional.of(Quantity.of(Double.parseDouble(ph), Unit.PH)),
                shares.spirit(), shares.unknown());
        MixtureAssessor mixtures = new MixtureAssessor(reference, new EthanolFlash(new Calculations(MethodReader.read())::run));
        return mixtures.hazards(line, composition, mixtures.classified(composition), Optional.empty(), Set.of(), Map.of());
    }

    private static Hazards ask(String line, String ph) {
        Bottles.Answer answer = bottles.ask(line, ph.isEmpty() ? Optional.empty()
                : Optional.of(Quantity.of(Double.parseDouble(ph), Unit.PH)));
        assertThat(answer).isInstanceOf(Bottles.Told.class);
        return ((Bottles.Told) answer).hazards();
    }
}
