package org.benchleaf.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.DemoSite;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.calculate.Origin;
import org.benchleaf.compose.cases.ResultMeaning;
import org.benchleaf.compose.chart.ReadingsChart;
import org.benchleaf.compose.part.ReadingsTables;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.derive.figure.WorkedResult;
import org.benchleaf.message.Place;
import org.benchleaf.model.MeasureName;
import org.benchleaf.model.MeasuringConditions;
import org.benchleaf.model.Result;
import org.benchleaf.page.Chart;
import org.benchleaf.page.Meaning;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.junit.jupiter.api.Test;

/** Holds what is said of a result to what its readings can bear; digits after common practice, no source. */
class ResultWordsTest {

    private static final Place PLACE = Place.file("content/cases/invented/case.md");

    private static Sheet sheet() {
        return new Sheet("cases/x/results.html", "results", "en", DemoSite.made().library(), Map.of(), PageMakers.NAMES);
    }

    private static Result.Readings readings(Unit unit, List<String> places, List<Double> before, List<Double> after) {
        return new Result.Readings(MeasureName.of("height"), "steel rule", unit, places, before, after, Optional.empty(),
                Optional.empty(), Optional.empty(), MeasuringConditions.of("steel rule"), PLACE);
    }

    private static Figure figure(String name, Quantity value, String method, String... readings) {
        List<Figure.Given> given = java.util.stream.Stream.of(readings)
                .map(text -> new Figure.Given("before", "readings before", numbers(text), text, Origin.Place.CASE_FILE)).toList();
        return new Figure(new FigureKey(FigureKey.Owner.RESULT, "height", name, ""), name, value, method, given, List.of(), List.of());
    }

    private static List<Quantity> numbers(String text) {
        return java.util.regex.Pattern.compile("-?[0-9.]+").matcher(text).results()
                .map(number -> Quantity.number(Double.parseDouble(number.group()))).toList();
    }

    private static WorkedResult worked(Result result, Figure... figures) {
        Map<String, Figure> byName = new LinkedHashMap<>();
        for (Figure figure : figures) {
            byName.put(figure.label(), figure);
        }
        return new WorkedResult(result, "pH", byName, List.of());
    }

    private static Quantity spread(double low, double value, double high, Unit unit, Quantity.Spread spread) {
        return new Quantity(value, low, high, unit, spread);
    }

    @Test
    void a_mean_has_one_decimal_more_than_the_readings_and_a_reach_has_theirs() {
        assertThat(sheet().amount(figure("mean-before", Quantity.of(18.5, Unit.MILLIMETRE), "summary",
                "18, 22, 15, 19 mm")).text()).isEqualTo("18.5\u202Fmm");
        assertThat(sheet().amount(figure("mean-before", Quantity.of(4.4399999999999995, Unit.PH), "summary",
                "pH 4.4, 4.5, 4.3, 4.6, 4.4")).text()).isEqualTo("4.44");
        assertThat(sheet().amount(figure("range-after", Quantity.between(7, 7.2, 7.4, Unit.PH), "reach",
                "pH 7.3, 7.1, 7.2, 7.4, 7")).text()).isEqualTo("7.0–7.4");
    }

    @Test
    void a_p_value_is_told_to_three_decimals_and_not_below() {
        assertThat(sheet().amount(figure("change-p", Quantity.number(2.18e-6), "change", "1.5")).text())
                .isEqualTo("less than 0.001");
        assertThat(sheet().amount(figure("change-p", Quantity.number(0.02068), "change", "1.5")).text())
                .isEqualTo("0.021");
    }

    @Test
    void the_mean_of_spots_is_told_to_a_tenth_like_each_spot() {
        Figure mean = new Figure(new FigureKey(FigureKey.Owner.RESULT, "colour", "de2000", "mean"), "mean",
                Quantity.between(0.2415, 1.567, 2.9493, Unit.NONE), "reach", List.of(), List.of(), List.of());
        assertThat(sheet().amount(mean).text()).isEqualTo("1.6 (0.2–2.9)");
    }

    @Test
    void two_readings_have_a_change_but_no_interval_on_the_drawing_or_in_the_table() {
        Result.Readings result = readings(Unit.MILLIMETRE, List.of(), List.of(4.0, 6.0), List.of(1.0, 2.0));
        ReadingsTables tables = new ReadingsTables(sheet(), "height", result, worked(result,
                figure("mean-before", Quantity.of(5, Unit.MILLIMETRE), "summary", "4, 6"),
                figure("sd-before", Quantity.of(1.4, Unit.MILLIMETRE), "summary", "4, 6"),
                figure("mean-after", Quantity.of(1.5, Unit.MILLIMETRE), "summary", "1, 2"),
                figure("sd-after", Quantity.of(0.7, Unit.MILLIMETRE), "summary", "1, 2"),
                figure("change", Quantity.of(-3.5, Unit.MILLIMETRE), "change", "4, 6")));
        Chart chart = new ReadingsChart(sheet(), "height", result, tables).chart(List.of()).orElseThrow();
        assertThat(chart.drawings().get(0).marks()).noneMatch(mark -> mark.tone().equals("span"));
        // Places that are not the same are not joined.
        assertThat(chart.drawings().get(0).marks()).filteredOn(mark -> mark.tone().equals("pair")).hasSize(1);
        // Of two readings nothing is told finer than they were read.
        assertThat(tables.statistics().orElseThrow().csv()).contains("Mean,5,2,-4");
        assertThat(tables.statistics().orElseThrow().rows()).anySatisfy(row ->
                assertThat(row.get(3).shown()).isEqualTo("too few readings, or no scatter"));
    }

    @Test
    void a_single_reading_is_neither_drawn_nor_averaged() {
        Result.Readings result = readings(Unit.PH, List.of("centre"), List.of(4.4), List.of());
        ReadingsTables tables = new ReadingsTables(sheet(), "ph", result, worked(result,
                figure("mean-before", Quantity.of(4.4, Unit.PH), "summary")));
        assertThat(new ReadingsChart(sheet(), "ph", result, tables).chart(List.of())).isEmpty();
        assertThat(tables.statistics()).isEmpty();
        assertThat(tables.readings().rows().get(0).get(2).shown()).isEqualTo("not read");
    }

    @Test
    void a_scale_is_never_finer_than_the_readings() {
        Result.Readings result = readings(Unit.PH, List.of("head", "foot"), List.of(4.9, 5.1), List.of());
        ReadingsTables tables = new ReadingsTables(sheet(), "ph", result, worked(result));
        Chart chart = new ReadingsChart(sheet(), "ph", result, tables).chart(List.of()).orElseThrow();
        assertThat(chart.drawings().get(0).marks()).filteredOn(mark -> mark.kind().equals("text")
                && mark.anchor().equals("middle")).isNotEmpty().allMatch(mark -> mark.text().matches("\\d\\.\\d"));
        assertThat(chart.drawings().get(0).marks()).noneMatch(mark -> mark.text().equals("After"));
    }

    @Test
    void an_interval_that_holds_zero_is_not_called_a_change() {
        Result.Readings result = readings(Unit.MILLIMETRE, List.of("a", "b", "c"), List.of(4.0, 6.0, 5.0),
                List.of(3.0, 6.5, 4.0));
        Meaning meaning = new ResultMeaning(sheet(), worked(result, figure("change",
                spread(-2.6, -0.5, 1.6, Unit.MILLIMETRE, Quantity.Spread.TOLERANCE), "change", "4.0, 6.5, 5.0"))).make();
        assertThat(meaning.says().get(0).plain()).startsWith("On average 0.5 ± 2.1\u202Fmm lower");
        assertThat(meaning.says().get(1).plain()).contains("from −2.60 to 1.60").contains("chance alone may explain it");
        assertThat(meaning.limits()).contains("Only these 3 places were read; elsewhere it may differ.");
    }

    @Test
    void what_was_told_in_words_stays_in_words() {
        Result.Words result = new Result.Words(MeasureName.of("strength"), "by hand", Optional.of("1"), Optional.of("doubled"), List.of(),
                Optional.empty(), PLACE);
        Meaning meaning = new ResultMeaning(sheet(), new WorkedResult(result, "pH", Map.of(), List.of("in-words"))).make();
        assertThat(meaning.says()).isEmpty();
        assertThat(meaning.limits()).containsExactly("Told in words: no change is worked out from it.");
    }
}
