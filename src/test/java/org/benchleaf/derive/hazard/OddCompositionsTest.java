package org.benchleaf.derive.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchleaf.derive.Invented.q;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.derive.Invented;
import org.benchleaf.message.Messages;
import org.benchleaf.model.Recipe;
import org.benchleaf.model.Reference;
import org.benchleaf.model.StatedValue;
import org.benchleaf.model.Substance;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.read.MethodReader;
import org.benchleaf.read.ReferenceReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Odd bottles and cases: nothing is called harmless that data for every part do not back. */
class OddCompositionsTest {

    private static final Reference REFERENCE = ReferenceReader.shipped();
    private static final Bottles BOTTLES = new Bottles(REFERENCE, MethodReader.read());

    @TempDir
    private Path content;

    static Stream<Arguments> bottles() throws IOException {
        return rows("odd-bottles.txt");
    }

    static Stream<Arguments> meetings() throws IOException {
        return rows("odd-meetings.txt");
    }

    private static Stream<Arguments> rows(String file) throws IOException {
        return Files.readAllLines(Path.of("src/test/resources/check-values", file)).stream()
                .filter(line -> !line.startsWith("#")).map(line -> line.split("\\s\\|\\s"))
                .map(cells -> Arguments.of(cells[0], cells[1].strip()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bottles")
    void an_odd_bottle_is_never_called_harmless_without_data(String bottle, String expected) {
        Hazards found = ask(BOTTLES, bottle);

        backed(bottle, found, REFERENCE);
        assertThat(found.known()).as("%s %s", bottle, found.unknown()).isEqualTo(!expected.equals("unknown"));
        assertThat(found.waste().drain()).as(bottle).isEqualTo(expected.endsWith("drain"));
        if (expected.startsWith("none")) {
            assertThat(found.isUnclassified()).as("%s %s", bottle, found.hazardStatements()).isTrue();
        } else if (!expected.equals("unknown")) {
            assertThat(found.hazardStatements()).as(bottle).contains(expected.split(" "));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("meetings")
    void what_must_not_meet_is_told_under_every_name(String bottle, String expected) {
        Hazards found = ask(BOTTLES, bottle);

        if (expected.equals("nothing")) {
            assertThat(found.incompatible()).as(bottle).isEmpty();
        } else {
            assertThat(found.incompatible()).as(bottle).anyMatch(clash -> (clash.gives() + " " + clash.why()).contains(expected));
        }
    }

    /** What every answer must hold to, whatever it is an answer to. */
    private static void backed(String what, Hazards found, Reference reference) {
        if (!found.known()) {
            assertThat(found.isUnclassified() || found.waste().drain() || found.waste().group().isPresent()).as(what).isFalse();
            assertThat(found.access().trainee()).as(what).isEqualTo(Reference.Trainee.REFUSED);
            assertThat(found.access().withheld()).as(what).isTrue();
            return;
        }
        assertThat(found.parts().keySet()).as(what).isNotEmpty().allSatisfy(key ->
                assertThat(reference.substances().get(key).hazards()).isNotEqualTo(Substance.Answer.UNKNOWN));
        assertThat(found.parts().values().stream().mapToDouble(MassShare::most).sum()).as(what).isGreaterThan(0.999);
    }

    /** A studio's row stands in the place of the shipped one, be it graver or not known. */
    @Test
    void a_row_of_the_studio_counts_before_the_shipped_one() throws IOException {
        Files.createDirectories(content.resolve("reference"));
        Files.writeString(content.resolve("reference/substances.yaml"), """
                glycerol: {name: Glycerol, form: liquid, hazards: unknown, because: Its sheet is lost., source: sheet, edition: "2026"}
                wheat starch: {name: Wheat starch, form: solid, hazards: known, \
                classes: [{class: Resp. Sens. 1, statement: H334, source: sheet}], acidity: {is: neutral, source: sheet}, \
                waste: adhesives, source: sheet, edition: "2026"}
                """);
        Messages messages = new Messages();
        Reference reference = ReferenceReader.read(content, messages);
        Bottles bottles = new Bottles(reference, MethodReader.read());

        assertThat(messages.all()).isEmpty();
        Hazards unknown = ask(bottles, "glycerol 0.1 % m/m; rest water");
        backed("glycerol", unknown, reference);
        assertThat(unknown.known()).isFalse();
        assertThat(ask(bottles, "wheat starch 10 % m/m; rest water").hazardStatements()).contains("H334");
        assertThat(ask(bottles, "wheat starch 10 % m/m; rest water").waste().group()).isNotEqualTo(Optional.of("adhesives"));
    }

    /** Saturated limewater is 0.0203 mol/kg; a quarter of it is still above pH 11.5 (CLP Annex I, 3.2.3.1.2). */
    @Test
    void a_stock_of_a_stock_keeps_what_the_first_was() {
        Invented invented = new Invented().solution("lime-water", new Recipe.Saturate("calcium-hydroxide", "deionised-water", q("20 °C")))
                .solution("half", oneIn("lime-water", 2)).solution("quarter", oneIn("half", 2));

        assertThat(hazards(invented, "quarter").hazardStatements()).contains("H314");
    }

    @ParameterizedTest
    @ValueSource(strings = {"thin", "thinner", "by-mass", "by-volume", "in-parts", "trace", "shaken", "dissolved", "synonym"})
    void what_holds_something_unknown_is_unknown_however_it_was_made(String id) {
        Invented invented = withMystery();

        Hazards found = hazards(invented, id);
        backed(id, found, REFERENCE);
        assertThat(found.known()).as(id).isFalse();
    }

    private static Invented withMystery() {
        Invented invented = new Invented();
        invented.material("mystery", "liquid", "", Optional.empty(), Optional.empty());
        invented.material("powder", "solid", "no such powder", Optional.empty(), Optional.empty());
        invented.material("acetone", "liquid", "acetone", Optional.empty(), Optional.empty());
        invented.material("rubbing", "liquid", "rubbing alcohol of no table", Optional.empty(), Optional.empty());
        List<Recipe.Share> byMass = List.of(new Recipe.Share("acetone", q("20 % m/m"), "acetone"),
                new Recipe.Share("mystery", q("1 % m/m"), "mystery"));
        List<Recipe.Share> byVolume = List.of(new Recipe.Share("acetone", q("20 % v/v"), "acetone"),
                new Recipe.Share("mystery", q("1 % v/v"), "mystery"));
        return invented.solution("thin", oneIn("mystery", 1000)).solution("thinner", oneIn("thin", 1000))
                .solution("by-mass", new Recipe.Mix(byMass, "deionised-water"))
                .solution("by-volume", new Recipe.Mix(byVolume, "deionised-water"))
                .solution("in-parts", new Recipe.Parts(new ArrayList<>(List.of(new Recipe.Portion("acetone", 3),
                        new Recipe.Portion("mystery", 1), new Recipe.Portion("deionised-water", 6))), true, false))
                .solution("trace", new Recipe.Adjust("deionised-water", "mystery", StatedValue.of(q("pH 7"), "7"), Optional.empty()))
                .solution("shaken", new Recipe.Saturate("powder", "deionised-water", q("20 °C")))
                .solution("dissolved", new Recipe.Dissolve("powder", q("0.01 % m/v"), "deionised-water"))
                .solution("synonym", oneIn("rubbing", 10));
    }

    private static Recipe oneIn(String stock, int parts) {
        return new Recipe.Dilute(stock, Optional.empty(), Optional.of(Quantity.number(parts)), "deionised-water");
    }

    private static Hazards ask(Bottles bottles, String bottle) {
        return ((Bottles.Told) bottles.ask(bottle, Optional.empty())).hazards();
    }

    private static Hazards hazards(Invented invented, String id) {
        return invented.derived().worked().hazards().get(id);
    }
}
