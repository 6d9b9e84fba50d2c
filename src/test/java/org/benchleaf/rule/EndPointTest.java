package org.benchleaf.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.benchleaf.read.AuthorGuideReader;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** End points in words of the trade beside the readings of the baths. Common practice, no source. */
class EndPointTest {

    private static Bench bench;

    @BeforeAll
    static void setUp(@TempDir Path folder) {
        bench = new Bench(folder);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "two baths in a row stay clear              | {bath: 1, colour: clear}, {bath: 2, colour: clear}",
        "the water stops yellowing                  | {bath: 1, colour: yellow}, {bath: 2, colour: clear}",
        "the last bath stays colourless             | {bath: 1, colour: yellow}, {bath: 2, colour: none}",
        "the conductivity stays below 5 µS/cm       | {bath: 1, conductivity: 9.1 µS/cm}, {bath: 2, conductivity: 4.2 µS/cm}",
        "conductivity of two baths under 5 \u03bcS/cm | {bath: 1, conductivity: 4.9 µS/cm}, {bath: 2, conductivity: 4.2 µS/cm}",
        "the pH of the used bath is above 7         | {bath: 1, pH used: pH 6.4}, {bath: 2, pH used: pH 7.3}",
        "the water is clear and pH 7 or more        | {bath: 2, colour: clear, pH used: pH 7.0}"})
    void an_end_point_that_was_read_is_not_asked_for(String until, String readings) {
        assertThat(spoken(until, readings)).doesNotContain("end-point-reached");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "two baths in a row stay clear              | {bath: 1, colour: yellow}, {bath: 2, colour: clear}",
        "the water stops yellowing                  | {bath: 1, colour: clear}, {bath: 2, colour: pale yellow}",
        "the water stays clear                      | {bath: 1, pH used: pH 6.4}",
        "the conductivity stays below 5 µS/cm       | {bath: 1, conductivity: 4.2 µS/cm}, {bath: 2, conductivity: 6.0 µS/cm}",
        "conductivity of two baths under 5 µS/cm    | {bath: 1, conductivity: 9.1 µS/cm}, {bath: 2, conductivity: 4.2 µS/cm}",
        "the conductivity stays below 5 µS/cm       | {bath: 2, colour: clear}",
        "the pH of the used bath is above 7         | {bath: 2, pH used: pH 6.8}",
        "the water is clear and pH 7 or more        | {bath: 2, colour: clear, pH used: pH 6.1}",
        "the sheet feels soft                       | {bath: 2, colour: clear}"})
    void an_end_point_that_was_not_read_is_asked_for(String until, String readings) {
        assertThat(spoken(until, readings)).contains("end-point-reached");
    }

    /** The wordings that authors are shown, each with a number in the place of N. */
    static Stream<String> shown() {
        return AuthorGuideReader.read().endPoints().stream().flatMap(one -> Stream.concat(one.written().stream(), Stream.of(one.example())))
                .map(words -> words.matches("(?:two|three|four|[2-4]) baths") ? words + " stay clear" : words)
                .map(words -> words.replace("N", words.startsWith("pH") ? "8" : "20"));
    }

    @ParameterizedTest
    @MethodSource("shown")
    void a_wording_that_authors_are_shown_is_held_against_the_readings(String until) {
        boolean many = until.matches("(?:three|four|[34]) .*");
        assertThat(spoken(until, "{bath: 1, colour: clear, conductivity: 1 µS/cm, pH used: pH 9}, {bath: 2, colour: clear,"
                + " conductivity: 1 µS/cm, pH used: pH 9}").contains("end-point-reached")).isEqualTo(many);
        assertThat(spoken(until, "{bath: 1, colour: yellow, conductivity: 500 µS/cm, pH used: pH 5}, {bath: 2, colour: yellow,"
                + " conductivity: 500 µS/cm, pH used: pH 5}")).contains("end-point-reached");
    }

    private static List<String> spoken(String until, String readings) {
        return Bench.spoken(bench.check(Variation.of(List.of(),
                "steps:\n  - {id: wash, until: '" + until + "', bath: {readings: [" + readings + "]}}\n")));
    }
}
