package org.benchleaf.check;

import static org.benchleaf.check.References.Kind.INSTRUMENT;
import static org.benchleaf.check.References.Kind.ITEM;
import static org.benchleaf.check.References.Kind.STEP;
import static org.benchleaf.quantity.Dimension.AMOUNT_PER_MASS;
import static org.benchleaf.quantity.Dimension.AMOUNT_PER_VOLUME;
import static org.benchleaf.quantity.Dimension.HUMIDITY;
import static org.benchleaf.quantity.Dimension.LENGTH;
import static org.benchleaf.quantity.Dimension.MASS;
import static org.benchleaf.quantity.Dimension.MASS_FRACTION;
import static org.benchleaf.quantity.Dimension.MASS_PER_MASS;
import static org.benchleaf.quantity.Dimension.TIME;
import static org.benchleaf.quantity.Dimension.VOLUME;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.message.FormMessages;
import org.benchleaf.message.Nearest;
import org.benchleaf.model.Instrument;
import org.benchleaf.model.MeasureName;
import org.benchleaf.model.MeasuringConditions;
import org.benchleaf.model.PrintObject;
import org.benchleaf.model.ReadDay;
import org.benchleaf.model.Result;
import org.benchleaf.model.StatedDay;
import org.benchleaf.model.StatedValue;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.read.Node;

/** Reads the results of a case. */
final class ResultForm {

    private static final String PH = "pH";

    private final Context context;
    private final List<Instrument> instruments;
    private final List<PrintObject.Item> items;
    private final List<ReadDay> days = new ArrayList<>();

    /** Makes ready for results that were read with these instruments on these items. */
    ResultForm(Context context, List<Instrument> instruments, List<PrintObject.Item> items) {
        this.context = context;
        this.instruments = instruments;
        this.items = items;
    }

    List<Result> read(List<Fields> results) {
        List<Result> read = new ArrayList<>();
        results.forEach(fields -> {
            read.add(result(fields));
            fields.group("read").ifPresent(group -> {
                day(fields, group, "before");
                day(fields, group, "after");
            });
        });
        return read;
    }

    /** When the results were read that were read before, as far as that is told. */
    List<ReadDay> days() {
        return List.copyOf(days);
    }

    private void day(Fields result, Fields group, String key) {
        group.day(key).ifPresent(day -> {
            days.add(new ReadDay(result.place("measure"), key.equals("before"), day));
            if (day.first().isAfter(context.today())) {
                group.messages().add(FormMessages.DATE_TO_COME.at(group.place(key), "found", group.text(key).orElse("")));
            }
            tellUncalibrated(result, group, key, day);
        });
    }

    /** A meter of pH drifts from day to day; another instrument is good from its calibration on. */
    private void tellUncalibrated(Fields result, Fields group, String key, StatedDay day) {
        Optional<String> used = result.text("instrument").or(() -> result.group("with").flatMap(with -> with.text("instrument")));
        Optional<Instrument> instrument = used.flatMap(id -> instruments.stream().filter(one -> one.id().equals(id)).findFirst())
                .filter(one -> !one.calibrated().isEmpty());
        boolean daily = isPh(result.text("measure").orElse(""));
        boolean calibrated = instrument.isEmpty() || instrument.get().calibrated().stream().anyMatch(on -> !on.isAfter(day.last())
                && (!daily || !on.isBefore(day.first())));
        if (!calibrated) {
            group.messages().add(FormMessages.READ_UNCALIBRATED.at(group.place(key), "measure", result.text("measure").orElse(""),
                    "when", key, "day", group.text(key).orElse(""), "instrument", instrument.get().id(),
                    "days", String.join(", ", instrument.get().calibrated().stream().map(String::valueOf).toList())));
        }
    }

    private Result result(Fields fields) {
        String kind = fields.needText("measure");
        fields.scalar("of").ifPresent(id -> context.references().use(id, ITEM));
        String measure = fields.text("of").flatMap(id -> items.stream().filter(item -> item.id().equals(id)).findFirst())
                .map(item -> kind + ", " + item.is()).orElse(kind);
        fields.scalar("instrument").ifPresent(id -> context.references().use(id, INSTRUMENT));
        if (fields.has("not measured")) {
            List.of("before", "after", "spots", "file").stream().filter(fields::has).findFirst().ifPresent(key ->
                    fields.messages().add(FormMessages.NOT_MEASURED_BUT_READ.at(fields.keyPlace("not measured"),
                            "measure", measure, "key", key)));
            return new Result.NotMeasured(MeasureName.of(measure), fields.needText("not measured"), fields.place("measure"));
        }
        return switch (kind) {
            case "colour" -> colour(measure, fields);
            case "size" -> size(measure, fields);
            case "reserve" -> reserve(measure, fields);
            default -> inWords(fields) ? statedOrWords(measure, fields) : readings(measure, fields);
        };
    }

    private static boolean inWords(Fields fields) {
        return !fields.has("file") && List.of("before", "after").stream().anyMatch(key ->
                fields.isScalar(key) && !fields.text(key).orElse("").matches(ReadingConditionsForm.NUMBER));
    }

    /** A value with a unit is a number as a report states it; everything else is words. */
    private Result statedOrWords(String measure, Fields fields) {
        if (!fields.has("unit") && !isPh(measure)) {
            return words(measure, fields, Optional.empty());
        }
        Unit unit = unit(measure, fields);
        StatedForm form = new StatedForm(fields, unit);
        Optional<StatedValue> before = form.read("before");
        Optional<StatedValue> after = form.read("after");
        boolean told = List.of("before", "after").stream().allMatch(key -> !fields.has(key)
                || (key.equals("before") ? before : after).isPresent() || fields.isScalar(key) && fields.missing(key).isPresent());
        return before.isEmpty() && after.isEmpty() || !told ? words(measure, fields, Optional.of(unit).filter(one -> one != Unit.NONE))
                : new Result.Stated(MeasureName.of(measure), method(measure, fields), unit, before, after, fields.text("instrument"),
                        fields.positive("equilibrated", TIME), fields.text("note"), conditions(fields, unit),
                        fields.place("measure"));
    }

    private MeasuringConditions conditions(Fields fields, Unit unit) {
        return new ReadingConditionsForm(fields, unit, instruments).read();
    }

    private static boolean isPh(String measure) {
        return measure.equals(PH) || measure.startsWith(PH + " ") || measure.startsWith(PH + ",");
    }

    private Result words(String measure, Fields fields, Optional<Unit> unit) {
        return new Result.Words(MeasureName.of(measure), method(measure, fields), fields.text("before"), fields.text("after"),
                fields.texts("ranks"), unit, fields.text("instrument"), fields.positive("equilibrated", TIME), fields.text("note"),
                conditions(fields, unit.orElse(Unit.NONE)), fields.place("measure"));
    }

    private String method(String measure, Fields fields) {
        Optional<String> method = fields.text("method");
        if (method.isEmpty() && isPh(measure)) {
            fields.messages().add(FormMessages.PH_METHOD.at(fields.place("measure")));
            return "";
        }
        return fields.need(method, "method", "");
    }

    private Result readings(String measure, Fields fields) {
        String method = method(measure, fields);
        Unit unit = unit(measure, fields);
        TableColumns.Readings table = TableColumns.readings(fields, context);
        List<String> places = table.places().isEmpty() ? fields.texts("places") : table.places();
        List<Double> before = fields.has("file") ? table.before() : numbers(fields, "before", places.size(), unit);
        List<Double> after = fields.has("file") ? table.after() : numbers(fields, "after", places.size(), unit);
        if (before.isEmpty() && after.isEmpty() && !fields.has("before") && !fields.has("after")
                && !fields.has("file")) {
            fields.messages().add(FormMessages.NO_READINGS.at(fields.place("measure"), "measure", measure));
        }
        return new Result.Readings(MeasureName.of(measure), method, unit, places, before, after, fields.text("instrument"),
                fields.positive("equilibrated", TIME), fields.text("note"), conditions(fields, unit), fields.place("measure"));
    }

    static Unit unit(String measure, Fields fields) {
        if (isPh(measure)) {
            return Unit.PH;
        }
        Optional<Node.Scalar> written = fields.scalar("unit");
        if (written.isEmpty()) {
            fields.messages().add(FormMessages.UNIT_FOR_READINGS.at(fields.place("measure"), "measure", measure));
            return Unit.NONE;
        }
        String spelling = written.get().text().strip();
        if (spelling.equals("none")) {
            return Unit.NONE;
        }
        if (spelling.equals("count") || spelling.equals(Unit.COUNT.symbol())) {
            return Unit.COUNT;
        }
        return Unit.spelled(spelling).orElseGet(() -> {
            fields.messages().add(FormMessages.UNKNOWN_UNIT.at(written.get().place(), "found", spelling,
                    "remedy", Nearest.to(spelling, Unit.spellings()).map(near -> "Did you mean '" + near + "'?")
                            .orElse("Write a unit such as mm, g or µS/cm, 'count' for things counted, or 'none'.")));
            return Unit.NONE;
        });
    }

    /** One reading or a list of them; as many as there are places, where places are given. */
    private static List<Double> numbers(Fields fields, String key, int places, Unit unit) {
        List<Node.Scalar> written = fields.isScalar(key)
                ? fields.scalar(key).map(List::of).orElse(List.of()) : fields.scalars(key);
        List<Double> numbers = new ArrayList<>();
        for (Node.Scalar scalar : written) {
            number(scalar, fields).ifPresent(numbers::add);
        }
        if (places > 0 && !written.isEmpty() && written.size() != places) {
            fields.messages().add(FormMessages.READINGS_COUNT.at(fields.place(key), "count", written.size(),
                    "places", places));
        }
        if (unit == Unit.PH && numbers.stream().anyMatch(number -> number < 0 || number > 14)) {
            fields.messages().add(FormMessages.OUT_OF_RANGE.at(fields.place(key),
                    "found", numbers.stream().filter(number -> number < 0 || number > 14).findFirst().get(),
                    "low", "0", "high", "14"));
        }
        return numbers;
    }

    static Optional<Double> number(Node.Scalar scalar, Fields fields) {
        String text = scalar.text().strip();
        if (text.matches(ReadingConditionsForm.NUMBER)) {
            return Optional.of(Double.valueOf(text));
        }
        fields.soundness().spoil(scalar.place());
        fields.messages().add(text.matches("[+-]?\\d+,\\d+")
                ? FormMessages.DECIMAL_COMMA.at(scalar.place(), "found", text,
                        "remedy", "Write '" + text.replace(',', '.') + "', with a point.")
                : FormMessages.NOT_A_NUMBER.at(scalar.place(), "found", text, "wanted", "a plain number",
                        "usual", "7.4", "stated", Amounts.OR_STATED, "said", text));
        return Optional.empty();
    }

    private Result colour(String measure, Fields fields) {
        Optional<Fields> with = fields.group("with");
        with.flatMap(group -> group.scalar("instrument"))
                .ifPresent(id -> context.references().use(id, INSTRUMENT));
        List<Result.ColourSpot> spots = new ArrayList<>(TableColumns.spots(fields, context));
        fields.groups("spots").forEach(spot -> spots.add(new Result.ColourSpot(spot.needText("at"),
                coordinates(spot, "before"), coordinates(spot, "after"))));
        if (spots.isEmpty() && !fields.has("file") && !fields.has("spots")) {
            fields.messages().add(FormMessages.NO_READINGS.at(fields.place("measure"), "measure", measure));
        }
        return new Result.Colour(MeasureName.of(measure), with.flatMap(group -> group.text("formula")),
                with.flatMap(group -> group.text("illuminant")), with.flatMap(group -> group.text("observer")),
                with.flatMap(group -> group.text("geometry")), with.flatMap(group -> group.positive("aperture", LENGTH)),
                with.flatMap(group -> group.whole("readings each")), with.flatMap(group -> group.text("instrument")),
                fields.positive("equilibrated", TIME), spots, fields.text("note"), fields.place("measure"));
    }

    private static List<Double> coordinates(Fields spot, String key) {
        if (!spot.has(key)) {
            return List.of();
        }
        List<Double> numbers = new ArrayList<>();
        spot.scalars(key).forEach(scalar -> number(scalar, spot).ifPresent(numbers::add));
        boolean slipped = numbers.size() < spot.scalars(key).size();
        if (!slipped && !TableColumns.areCoordinates(numbers)) {
            spot.messages().add(FormMessages.COLOUR_COORDINATES.at(spot.place(key)));
        }
        return numbers;
    }

    private static Result size(String measure, Fields fields) {
        Fields before = fields.needGroup("before");
        Fields after = fields.needGroup("after");
        return new Result.Size(MeasureName.of(measure), fields.needText("method"), before.needReading("height", LENGTH),
                before.needReading("width", LENGTH), after.needReading("height", LENGTH),
                after.needReading("width", LENGTH), before.within("humidity", 0, 100, HUMIDITY),
                after.within("humidity", 0, 100, HUMIDITY), fields.text("note"), fields.place("measure"));
    }

    private Result reserve(String measure, Fields fields) {
        fields.scalar("step").ifPresent(id -> context.references().use(id, STEP));
        if (List.of("step", "titration", "carbonate", "amount").stream().noneMatch(fields::has)) {
            fields.messages().add(FormMessages.NO_READINGS.at(fields.place("measure"), "measure", measure));
        }
        return new Result.Reserve(MeasureName.of(measure), fields.text("method"), fields.text("step"),
                fields.group("titration").map(ResultForm::titration),
                fields.asRead("carbonate", fields.within("carbonate", 0, 100, MASS_FRACTION)),
                fields.reading("amount", AMOUNT_PER_MASS), fields.reading("uptake", MASS_PER_MASS),
                fields.text("note"), fields.place("measure"));
    }

    private static Result.Titration titration(Fields titration) {
        Optional<Quantity> moisture = titration.asRead("moisture", titration.within("moisture", 0, 100, MASS_FRACTION));
        return new Result.Titration(titration.needReading("sample", MASS), moisture,
                titration.needReading("acid volume", VOLUME), titration.needReading("acid", AMOUNT_PER_VOLUME),
                titration.needReading("base volume", VOLUME), titration.needReading("base", AMOUNT_PER_VOLUME));
    }
}
