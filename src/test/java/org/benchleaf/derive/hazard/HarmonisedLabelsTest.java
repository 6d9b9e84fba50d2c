package org.benchleaf.derive.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.benchleaf.model.Precedence;
import org.benchleaf.model.Reference;
import org.benchleaf.read.MethodReader;
import org.benchleaf.read.ReferenceReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds the labels that come out for single substances against the harmonised ones: annex-vi-labels.csv, whose head has the source. */
class HarmonisedLabelsTest {

    private static final Reference REFERENCE = ReferenceReader.shipped();
    private static final Bottles BOTTLES = new Bottles(REFERENCE, MethodReader.read());
    private static final Set<String> STRONGER = Set.of("GHS05", "GHS06", "GHS08");

    static Stream<Arguments> rows() throws IOException {
        return Files.readAllLines(Path.of("src/test/resources/check-values/annex-vi-labels.csv")).stream()
                .filter(line -> !line.startsWith("#")).map(line -> line.split("\\|"))
                .map(cells -> Arguments.of(Stream.of(cells).map(String::strip).toArray()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void a_label_says_no_less_than_the_harmonised_one(String substance, String index, String signal, String pictograms,
            String statements, String source) {
        Hazards found = ((Bottles.Told) BOTTLES.ask(substance + " 100 % m/m", Optional.empty())).hazards();

        assertThat(List.of(statements.split(" "))).as(index + " " + source + " " + found.hazardStatements())
                .allMatch(code -> found.hazardStatements().contains(code) || isCovered(code, found.hazardStatements()));
        Set<String> missing = new TreeSet<>(List.of(pictograms.split(" ")));
        missing.removeAll(found.pictograms());
        if (found.pictograms().stream().anyMatch(STRONGER::contains)) {
            missing.remove("GHS07");
        }
        assertThat(missing).as(index + " " + found.pictograms()).isEmpty();
        assertThat(found.signal()).as(index).isIn(signal.equals("Danger") ? List.of(Optional.of("Danger"))
                : List.of(Optional.of("Danger"), Optional.of("Warning")));
    }

    private static boolean isCovered(String code, List<String> told) {
        Precedence row = REFERENCE.precedence().get(code);
        return row != null && told.stream().anyMatch(row.leftOutBeside()::contains);
    }

    @Test
    void sixty_substances_and_more_are_compared() throws IOException {
        assertThat(rows().map(row -> row.get()[0]).distinct()).hasSizeGreaterThanOrEqualTo(60);
        assertThat(rows().map(row -> row.get()[5])).allMatch(List.of("consolidated", "chem.echa", "memory")::contains);
        assertThat(rows().filter(row -> !row.get()[5].equals("memory"))).as("read, not remembered").hasSizeGreaterThanOrEqualTo(65);
    }
}
