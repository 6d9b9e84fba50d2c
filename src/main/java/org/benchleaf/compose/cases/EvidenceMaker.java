package org.benchleaf.compose.cases;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchleaf.calculate.Figure;
import org.benchleaf.compose.part.ColourTable;
import org.benchleaf.compose.part.DataTable;
import org.benchleaf.compose.part.Evidence;
import org.benchleaf.compose.part.ReadingsTables;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.derive.figure.WorkedResult;
import org.benchleaf.model.MeasuringConditions;
import org.benchleaf.model.PhKind;
import org.benchleaf.model.Result;
import org.benchleaf.model.StatedValue;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Makes of a result what it may be compared by, and says why where it may not. */
final class EvidenceMaker implements Result.Kinds<Evidence> {

    private static final int SIZE_DECIMALS = 1;

    private final Sheet sheet;
    private final WorkedResult worked;
    private final String id;
    private final String address;
    private final String file;

    /**
     * Makes ready for one result.
     *
     * @param id of the result on its page
     * @param address where the case tells it
     * @param file that holds the same numbers; empty if there is none
     */
    EvidenceMaker(Sheet sheet, WorkedResult worked, String id, String address, String file) {
        this.sheet = sheet;
        this.worked = worked;
        this.id = id;
        this.address = address;
        this.file = file;
    }

    Evidence make() {
        return worked.source().ask(this);
    }

    private Evidence numbers(String kind, String like, String unit, String apart, List<Evidence.Reach> reaches) {
        return new Evidence(worked.source().measure().word(), kind, like, unit,
                apart.isEmpty() && reaches.isEmpty() ? "no-numbers" : apart, "", reaches, address, file);
    }

    private Evidence apart(String why, String because) {
        return new Evidence(worked.source().measure().word(), "method", "", "", why, because, List.of(), address, "");
    }

    @Override
    public Evidence readings(Result.Readings result) {
        ReadingsTables tables = new ReadingsTables(sheet, id, result, worked);
        return read(result.method(), result.conditions(), result.unit(), Stream.of(
                reach("before", result.before(), tables).map(reach -> reach.with(total("before"))),
                reach("after", result.after(), tables).map(reach -> reach.with(total("after"))))
                .flatMap(Optional::stream).toList());
    }

    /** Counts in fields add up; a mean of them is of one field. */
    private List<Evidence.Read> total(String when) {
        return value("total-" + when).stream().map(sum -> new Evidence.Read(Evidence.Read.TOTAL, "", plain(sum.value()))).toList();
    }

    private static Optional<Evidence.Reach> reach(String when, List<Double> readings, ReadingsTables tables) {
        if (readings.isEmpty()) {
            return Optional.empty();
        }
        List<Integer> order = IntStream.range(0, readings.size()).boxed().sorted(Comparator.comparing(readings::get)).toList();
        String least = tables.cell(readings, order.get(0)).plain();
        String most = tables.cell(readings, order.get(order.size() - 1)).plain();
        boolean single = readings.size() == 1;
        String middle = single ? least : tables.mean(when).map(any -> DataTable.Cell.number(tables.toldMean(when)).plain()).orElse("");
        return Optional.of(new Evidence.Reach(when, "one", String.valueOf(readings.size()), single ? "" : least, middle,
                single ? "" : most));
    }

    /** Numbers read with a method: a pH is compared by the kind of its measurement, all else by the words of the method. */
    private Evidence read(String method, MeasuringConditions conditions, Unit unit, List<Evidence.Reach> reaches) {
        String apart = conditions.apart().map(MeasuringConditions.Apart::word).orElse(conditions.aged().isPresent() ? "after-ageing" : "");
        boolean byKind = !conditions.ph().isEmpty();
        String like = byKind ? conditions.ph().stream().sorted().map(PhKind::word).collect(Collectors.joining(", ")) : method;
        String symbol = unit == Unit.PH || unit == Unit.COUNT ? "" : unit.symbol();
        return numbers(byKind ? "ph" : "method", like, symbol, apart, reaches);
    }

    @Override
    public Evidence stated(Result.Stated result) {
        return read(result.method(), result.conditions(), result.unit(), Stream.of(
                result.before().map(value -> reach("before", value)), result.after().map(value -> reach("after", value)))
                .flatMap(Optional::stream).toList());
    }

    private static Evidence.Reach reach(String when, StatedValue value) {
        String count = value.readings().map(String::valueOf).orElse("");
        String number = value.written().matches("\\d++(\\.\\d++)?+") ? value.written() : plain(value.value().value());
        return switch (value.form()) {
            case ONE, MEAN -> new Evidence.Reach(when, "one", count, "", number, "");
            case ABOUT -> new Evidence.Reach(when, "about", count, "", number, "");
            case LESS_THAN -> new Evidence.Reach(when, "less", count, "", number, "");
            case MORE_THAN -> new Evidence.Reach(when, "more", count, "", number, "");
            case RANGE -> new Evidence.Reach(when, "one", count, plain(value.value().low()), "", plain(value.value().high()));
        };
    }

    private static String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }

    /** Differences are compared spot by spot, for spots are of unlike things: a margin, an ink, a stain. */
    @Override
    public Evidence colour(Result.Colour result) {
        List<Optional<String>> conditions = List.of(result.formula(), result.illuminant(), result.observer(), result.geometry());
        ColourTable table = new ColourTable(sheet, id, result, worked);
        List<Evidence.Reach> reaches = new ArrayList<>();
        result.spots().forEach(spot -> table.difference(spot).ifPresent(difference -> reaches.add(
                Evidence.Reach.one(spot.at(), DataTable.Cell.number(difference).plain()).with(coordinates(table, spot)))));
        return numbers("colour", conditions.stream().flatMap(Optional::stream).collect(Collectors.joining(", ")), "",
                conditions.stream().anyMatch(Optional::isEmpty) ? "conditions-not-stated" : "", reaches);
    }

    private static List<Evidence.Read> coordinates(ColourTable table, Result.ColourSpot spot) {
        List<Evidence.Read> read = new ArrayList<>();
        for (String when : List.of("before", "after")) {
            List<Double> lab = when.equals("before") ? spot.before() : spot.after();
            for (int i = 0; i < lab.size(); i++) {
                read.add(new Evidence.Read("Lab".charAt(i) + " " + when, "", DataTable.Cell.number(table.number(lab.get(i))).plain()));
            }
        }
        return read;
    }

    /** Sheets are of unlike sizes, so their change in parts of a hundred is compared, along and across the grain. */
    @Override
    public Evidence size(Result.Size result) {
        String apart = Stream.of("humidity-not-stated", "other-humidity", "grain-unknown")
                .filter(worked.cautions()::contains).findFirst().orElse("");
        return numbers("size", result.method(), Unit.PERCENT.symbol(), apart, Stream.of(change("along", "change", ""),
                change("across", "across-change", "across-")).flatMap(Optional::stream).toList());
    }

    private Optional<Evidence.Reach> change(String direction, String figure, String side) {
        return value(figure).map(change -> {
            boolean exact = percent(change.low()).equals(percent(change.high()));
            return new Evidence.Reach(direction, "one", "", exact ? "" : percent(change.low()), percent(change.value()),
                    exact ? "" : percent(change.high())).with(Stream.of("before", "after").flatMap(when ->
                    length(figure, side + when, when).stream()).toList());
        });
    }

    /** A length that the change was worked out from. */
    private Optional<Evidence.Read> length(String figure, String input, String when) {
        return worked.figures().get(figure).inputs().stream().filter(given -> given.key().equals(input)).findFirst()
                .map(given -> given.values().get(0).in(Unit.MILLIMETRE)).map(length -> new Evidence.Read("length " + when,
                        Unit.MILLIMETRE.symbol(), plain(length)));
    }

    private String percent(double number) {
        return DataTable.Cell.number(sheet.numbers().fixed(number, SIZE_DECIMALS)).plain();
    }

    private Optional<Quantity> value(String figure) {
        return Optional.ofNullable(worked.figures().get(figure)).map(Figure::value);
    }

    @Override
    public Evidence reserve(Result.Reserve result) {
        String origin = result.measured().isPresent() ? "titrated" : value("reserve").isPresent() ? "reported" : "ceiling";
        return numbers("reserve", origin, Unit.MOLE_PER_KILOGRAM.symbol(),
                worked.cautions().contains("below-titration-limit") ? "below-titration-limit" : "",
                value("reserve").or(() -> value("ceiling-reserve")).map(amount -> Evidence.Reach.one("sheet", rough(amount)))
                        .stream().toList());
    }

    private String rough(Quantity amount) {
        return DataTable.Cell.number(sheet.numbers().rough(amount.in(Unit.MOLE_PER_KILOGRAM))).plain();
    }

    @Override
    public Evidence words(Result.Words result) {
        return apart("in-words", result.method());
    }

    @Override
    public Evidence notMeasured(Result.NotMeasured result) {
        return apart("not-measured", result.because());
    }
}
