package org.benchleaf.compose.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchleaf.calculate.Figure;
import org.benchleaf.derive.figure.WorkedResult;
import org.benchleaf.model.Result;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.words.NumberText;
import org.benchleaf.words.Words;

/** The readings of one result place by place, and their statistics, each a table and a file. */
public final class ReadingsTables {

    private final Sheet sheet;
    private final String id;
    private final Result.Readings result;
    private final Map<String, Figure> figures;
    /** Why no interval is told. */
    private final String noInterval;

    public ReadingsTables(Sheet sheet, String id, Result.Readings result, WorkedResult worked) {
        this.sheet = sheet;
        this.id = id;
        this.result = result;
        this.figures = worked.figures();
        this.noInterval = Stream.of("counted", "interval-below-nothing").filter(worked.cautions()::contains).findFirst()
                .orElse("no-interval");
    }

    /** The readings, one row a place. */
    public DataTable readings() {
        Words words = sheet.words();
        List<DataTable.Column> columns = List.of(DataTable.Column.words(words.say("results.place"), "place"),
                new DataTable.Column(words.say("results.before"), "before", unit(), true),
                new DataTable.Column(words.say("results.after"), "after", unit(), true));
        return new DataTable(id, words.say("results.readings-caption", "measure",
                words.measure(result.measure()), "method", result.method()), columns,
                IntStream.range(0, count()).mapToObj(i -> List.of(DataTable.Cell.words(place(i)),
                        cell(result.before(), i), cell(result.after(), i))).toList());
    }

    /** Count, mean, spread and interval before, after and of the change; of a single reading there are none. */
    public Optional<DataTable> statistics() {
        List<String> times = Stream.of("before", "after", "change").filter(this::isTold).toList();
        if (times.isEmpty() || count() < 2) {
            return Optional.empty();
        }
        Words words = sheet.words();
        List<DataTable.Column> columns = new ArrayList<>(List.of(
                DataTable.Column.words(words.say("statistics.what"), "statistic")));
        times.forEach(when -> columns.add(new DataTable.Column(words.say("statistics." + when), when, unit(), true)));
        List<List<DataTable.Cell>> rows = new ArrayList<>();
        rows.add(row("count", times, this::number));
        rows.add(row("mean", times, when -> end(when.equals("change") ? when : "mean-" + when, Quantity::value)));
        rows.add(row("sd", times, when -> end(when.equals("change") ? "change-sd" : "sd-" + when, Quantity::value)));
        rows.add(row("least", times, when -> reach(when, Quantity::low)));
        rows.add(row("most", times, when -> reach(when, Quantity::high)));
        if (times.contains("change")) {
            rows.add(row("low", times, when -> interval(when, Quantity::low)));
            rows.add(row("high", times, when -> interval(when, Quantity::high)));
        }
        return Optional.of(new DataTable(id + "-statistics", words.say("statistics.caption", "measure",
                words.measure(result.measure())), columns, rows));
    }

    private boolean isTold(String when) {
        return figures.containsKey("sd-" + when) || when.equals("change") && figures.containsKey(when);
    }

    private List<DataTable.Cell> row(String statistic, List<String> times, Function<String, DataTable.Cell> cell) {
        List<DataTable.Cell> row = new ArrayList<>(List.of(
                DataTable.Cell.words(sheet.words().say("statistics." + statistic))));
        times.forEach(when -> row.add(cell.apply(when)));
        return row;
    }

    private DataTable.Cell number(String when) {
        if (when.equals("change")) {
            return paired() ? DataTable.Cell.number(String.valueOf(result.places().size())) : notPaired();
        }
        return DataTable.Cell.number(String.valueOf((when.equals("before") ? result.before() : result.after()).size()));
    }

    private DataTable.Cell reach(String when, ToDoubleFunction<Quantity> end) {
        return Optional.ofNullable(figures.get("range-" + when)).map(one -> DataTable.Cell.number(
                sheet.numbers().fixed(end.applyAsDouble(one.value()), decimals()))).orElseGet(this::notPaired);
    }

    /** A mean, a standard deviation or a change as its figure is told everywhere, so that one number stands on all pages. */
    private DataTable.Cell end(String figure, ToDoubleFunction<Quantity> end) {
        return Optional.ofNullable(figures.get(figure)).map(one -> DataTable.Cell.number(told(one, end.applyAsDouble(one.value()))))
                .orElseGet(this::notPaired);
    }

    private String told(Figure figure, double number) {
        return Resolution.stepOf(figure).map(step -> sheet.numbers().shownBy(Quantity.of(number, step.unit()), step).number())
                .orElseGet(() -> sheet.numbers().fixed(number, Resolution.of(figure).orElse(decimals())));
    }

    private DataTable.Cell notPaired() {
        return DataTable.Cell.missing(sheet.words().say("statistics.not-paired"));
    }

    private DataTable.Cell interval(String when, ToDoubleFunction<Quantity> end) {
        if (!when.equals("change")) {
            return DataTable.Cell.missing(sheet.words().say("statistics.change-only"));
        }
        return interval().map(change -> DataTable.Cell.number(toldChange(end.applyAsDouble(change))))
                .orElseGet(() -> DataTable.Cell.missing(sheet.words().say("statistics." + noInterval)));
    }

    /** The change with the ends of its 95 % interval, where there are readings enough for one. */
    public Optional<Quantity> interval() {
        return Optional.ofNullable(figures.get("change")).map(Figure::value)
                .filter(change -> change.spread() == Quantity.Spread.TOLERANCE);
    }

    /** A mean, where there is one. */
    public Optional<Double> mean(String when) {
        return Optional.ofNullable(figures.get("mean-" + when)).map(figure -> figure.value().value());
    }

    /** The mean as the statistics show it. */
    public String toldMean(String when) {
        Figure mean = figures.get("mean-" + when);
        return told(mean, mean.value().value());
    }

    /** An end of the change, or the change, as the statistics show it. */
    public String toldChange(double number) {
        return told(figures.get("change"), number);
    }

    /** Whether every place was read both before and after. */
    public boolean paired() {
        return !result.places().isEmpty() && result.places().size() == result.before().size()
                && result.places().size() == result.after().size();
    }

    /** As many decimals as the finest reading was written with, and at least those of the step, so that the column lines up. */
    private int decimals() {
        int step = result.conditions().step().map(one -> NumberText.decimalsOf(one.value())).orElse(0);
        return Math.max(step, writtenDecimals());
    }

    private int writtenDecimals() {
        return Stream.concat(result.before().stream(), result.after().stream()).mapToInt(NumberText::decimalsOf).max()
                .orElse(0);
    }

    /** The smallest step that the readings tell. */
    public double finest() {
        return StrictMath.pow(10, -decimals());
    }

    public int count() {
        return Math.max(result.before().size(), result.after().size());
    }

    public String place(int i) {
        return i < result.places().size() ? result.places().get(i)
                : sheet.words().say("results.reading-number", "n", i + 1);
    }

    /** A reading as the table shows it. */
    public DataTable.Cell cell(List<Double> readings, int i) {
        return i < readings.size() ? DataTable.Cell.number(sheet.numbers().fixed(readings.get(i), decimals()))
                : DataTable.Cell.missing(sheet.words().say("results.not-read"));
    }

    /** The unit as a header tells it; none for a pH and for counts. */
    public String unit() {
        return result.unit() == Unit.PH || result.unit() == Unit.COUNT ? "" : result.unit().symbol();
    }
}
