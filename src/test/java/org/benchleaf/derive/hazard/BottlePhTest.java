package org.benchleaf.derive.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.model.Reference;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.read.ReferenceReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds the pH of what is dissolved in water against handbooks, and what cannot be worked out to "not known". */
class BottlePhTest {

    private static final Reference REFERENCE = ReferenceReader.shipped();

    static Stream<Arguments> rows() throws IOException {
        return Files.readAllLines(Path.of("src/test/resources/check-values/bottle-ph.csv")).stream()
                .filter(line -> !line.startsWith("#")).map(line -> line.split("\\|", -1))
                .map(cells -> Arguments.of(Stream.of(cells).map(String::strip).toArray()));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void the_worked_out_ph_holds_the_published_one(String substance, double percent, double ph, double within,
            String source) {
        Composition told = inWater(Map.of(substance, MassShare.of(percent / 100)), 1 - percent / 100);

        Quantity found = told.ph().orElseThrow(() -> new AssertionError(told.unknown().toString()));
        assertThat(found.low() - within).as(source).isLessThanOrEqualTo(ph);
        assertThat(found.high() + within).as(source).isGreaterThanOrEqualTo(ph);
        // Two tenths beyond what the model admits of itself would be no answer.
        assertThat(found.high() - found.low()).isLessThan(0.6);
    }

    /** Every shipped row answers what it does to the pH, be it that this is not known. */
    @Test
    void every_substance_says_what_it_does_to_the_ph_of_water() {
        assertThat(REFERENCE.substances().values()).allSatisfy(row -> assertThat(row.acidity()).as(row.key()).isPresent());
    }

    /** The rows say by themselves that their solutions may have any pH; nothing but a measured pH makes them known. */
    @Test
    void what_cannot_be_worked_out_is_told_and_never_neutral() {
        for (String substance : List.of("sodium hypochlorite", "calcium hypochlorite", "chlorine dioxide",
                "calcium hydroxide nanoparticles")) {
            Composition told = inWater(Map.of(substance, MassShare.of(0.001)), 0.999);
            assertThat(told.ph()).as(substance).isEmpty();
            assertThat(told.unknown()).as(substance).extracting(Hazards.Unknown::about).contains("ph");
        }
    }

    /** Dissolved, these give no strongly acid or alkaline water, but nobody may read a number into that. */
    @Test
    void what_is_only_known_not_to_be_extreme_has_no_ph() {
        assertThat(inWater(Map.of("gelatine", MassShare.of(0.01)), 0.99).ph()).isEmpty();
        assertThat(inWater(Map.of("gelatine", MassShare.of(0.01), "sodium hydroxide", MassShare.of(0.004)), 0.986).ph())
                .hasValueSatisfying(ph -> assertThat(ph.high()).isGreaterThan(12.5));
    }

    /** From 0.01 to 1 mol/kg the handbook has 10.6 and 11.6 for ammonia (CRC, from memory); both ends are told. */
    @Test
    void an_uncertain_share_has_the_ph_of_both_its_ends() {
        Composition told = inWater(Map.of("ammonia solution", new MassShare(0.00017, 0.017)), 0.99);

        assertThat(told.ph()).hasValueSatisfying(ph -> {
            assertThat(ph.low()).isBetween(10.5, 10.7);
            assertThat(ph.high()).isBetween(11.5, 11.7);
        });
    }

    /** Equal amounts of a strong acid and a strong base: whichever is a little more decides, so all of it is possible. */
    @Test
    void an_acid_and_a_base_of_uncertain_shares_may_be_either() {
        Composition told = inWater(Map.of("sodium hydroxide", new MassShare(0.009, 0.011),
                "hydrochloric acid", new MassShare(0.0082, 0.01)), 0.98);

        assertThat(told.ph()).hasValueSatisfying(ph -> {
            assertThat(ph.low()).isLessThan(2);
            assertThat(ph.high()).isGreaterThan(11.5);
        });
    }

    private static Composition inWater(Map<String, MassShare> parts, double water) {
        Map<String, MassShare> shares = new java.util.LinkedHashMap<>(parts);
        shares.put("water", MassShare.of(water));
        return new MixturePh(REFERENCE).told(new Composition(shares, Optional.empty(), Optional.empty(), List.of()));
    }
}
