package org.benchleaf.derive.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.calculate.Inputs;
import org.benchleaf.message.FigureMessages;
import org.benchleaf.message.Place;
import org.benchleaf.model.MeasuringConditions;
import org.benchleaf.model.Part;
import org.benchleaf.model.PhKind;
import org.benchleaf.model.Result;
import org.benchleaf.model.StatedValue;
import org.benchleaf.model.Step;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.science.SeriesSummary;
import org.benchleaf.science.Sheets;
import org.benchleaf.science.WhitePoint;

/** Works out the statistics of one result, and what must be said beside it. */
public final class ResultFigures implements Result.Kinds<WorkedResult> {

    private static final Map<String, String> FORMULAS = Map.of("CIEDE2000", "de2000", "CIE76", "de76",
            "CIELAB 1976", "de76", "CIE94", "de94");

    /** What may lie below nothing by its kind. */
    private static final List<Dimension> SIGNED = List.of(Dimension.ACIDITY, Dimension.TEMPERATURE, Dimension.NUMBER);

    private final Bench bench;
    private final String name;
    private final Map<String, Figure> figures = new LinkedHashMap<>();
    private final Set<String> cautions = new LinkedHashSet<>();

    /**
     * Makes ready to work.
     *
     * @param name the result's name in figure ids, such as {@code pH}
     */
    public ResultFigures(Bench bench, String name) {
        this.bench = bench;
        this.name = name;
    }

    private String say(String english, Object... holes) {
        return bench.say(english, holes);
    }

    private WorkedResult worked(Result source) {
        return new WorkedResult(source, name, figures, List.copyOf(cautions));
    }

    private FigureKey key(String name) {
        return key(name, "");
    }

    private FigureKey key(String figure, String qualifier) {
        return FigureKey.ofResult(name, figure, qualifier);
    }

    private void keep(Figure figure) {
        figures.put(figure.key().local(), figure);
    }

    private void keepAll(Map<String, Figure> made) {
        made.values().forEach(this::keep);
    }

    private void put(String name, String label, Quantity value, String method, List<Figure.Given> inputs,
            String... notes) {
        keep(bench.ledger().put(key(name), label, value, method, inputs, notes));
    }

    @Override
    public WorkedResult readings(Result.Readings result) {
        summary("before", result.before(), result);
        summary("after", result.after(), result);
        readingCautions(result);
        if (bothSides(!result.before().isEmpty(), !result.after().isEmpty(), result.conditions())) {
            change(result);
        }
        return worked(result);
    }

    /** Whether there are two sides that may be compared; why not is told. */
    private boolean bothSides(boolean before, boolean after, MeasuringConditions conditions) {
        Optional<String> apart = before && after ? conditions.apart().map(MeasuringConditions.Apart::word) : Optional.of("one-time-only");
        apart.ifPresent(cautions::add);
        return apart.isEmpty();
    }

    private void readingCautions(Result.Readings result) {
        if (result.unit() == Unit.PH) {
            cautions.add("arithmetic-mean-of-ph");
        }
        conditions(result.conditions());
        int fewest = Math.min(result.before().isEmpty() ? Integer.MAX_VALUE : result.before().size(),
                result.after().isEmpty() ? Integer.MAX_VALUE : result.after().size());
        if (fewest == 1) {
            cautions.add("single-reading");
        }
        if (fewest < fewest()) {
            cautions.add("fewer-than-three");
        }
    }

    /** What must be said of the way in which numbers were read. */
    private void conditions(MeasuringConditions conditions) {
        if (conditions.ph().contains(PhKind.SURFACE)) {
            cautions.add("surface-only");
        }
        if (conditions.ph().contains(PhKind.STRIP)) {
            cautions.add("indicator-strips");
        }
        if (conditions.aged().isPresent()) {
            cautions.add("after-ageing");
        }
    }

    @Override
    public WorkedResult stated(Result.Stated result) {
        result.before().ifPresent(value -> stated("before", value, result.unit()));
        result.after().ifPresent(value -> stated("after", value, result.unit()));
        conditions(result.conditions());
        List<StatedValue> values = Stream.of(result.before(), result.after()).flatMap(Optional::stream).toList();
        if (values.stream().anyMatch(value -> value.form() == StatedValue.Form.MEAN && value.readings().isEmpty())) {
            cautions.add("number-of-readings-not-recorded");
        }
        if (bothSides(result.before().isPresent(), result.after().isPresent(), result.conditions())) {
            statedChange(result, values);
        }
        return worked(result);
    }

    /** A value with an open end is no number of its own: "more than 7" is told in its words alone. */
    private void stated(String when, StatedValue value, Unit unit) {
        if (value.forSums().isEmpty()) {
            return;
        }
        String stated = FigureKey.STATED + when;
        String label = say("{measure} {when}, as given", "measure", name.replace('-', ' '), "when", say(when));
        put(stated, label, value.value(), "as-given",
                List.of(new Figure.Given(stated, label, List.of(value.value()), value.told(unit), Job.CASE_FILE)));
    }

    private void statedChange(Result.Stated result, List<StatedValue> values) {
        if (!values.stream().allMatch(StatedValue::isNumber)) {
            cautions.add("no-single-number");
            return;
        }
        cautions.add("no-single-readings");
        Job job = new Job("change", result.place()).word("paired", "no", Job.CASE_FILE)
                .given("before", averaged(values.get(0).value(), result.unit()), Job.CASE_FILE)
                .given("after", averaged(values.get(1).value(), result.unit()), Job.CASE_FILE)
                .note("The difference of two values as they were reported.")
                .gives("mean-change", key("change"), "change");
        Optional.ofNullable(bench.ledger().work(job).get(key("change").id()))
                .ifPresent(change -> keep(bench.ledger().keep(inUnit(change, difference(result.unit())))));
        if (result.unit() == Unit.PH) {
            activityRatio(result.place());
        }
    }

    /** Readings so few say nothing about chance. */
    private int fewest() {
        return (int) bench.constant("fewest-readings").value().value();
    }

    /** Calcium carbonate that permanent paper has; also the least that a titration after TAPPI T 553 tells in numbers. */
    private double threshold() {
        return bench.constant("reserve-of-permanent-paper").value().in(Unit.PERCENT_BY_MASS);
    }

    private void summary(String when, List<Double> readings, Result.Readings result) {
        if (readings.isEmpty()) {
            return;
        }
        List<Quantity> read = quantities(readings, result);
        String told = say(when);
        Job job = new Job("summary", result.place()).given("readings", read, Job.CASE_FILE)
                .gives("count", key("n-" + when), say("number of readings {when}", "when", told))
                .gives("mean", key("mean-" + when), say("mean {when}", "when", told));
        if (result.unit() == Unit.PH) {
            job.note("The arithmetic mean of the pH values.");
        }
        if (readings.size() > 1) {
            job.gives("sd", key("sd-" + when), say("standard deviation {when}", "when", told));
        }
        keepAll(bench.ledger().work(job));
        if (readings.size() > 1) {
            keepAll(bench.ledger().work(new Job("reach", result.place()).given("readings", read, Job.CASE_FILE)
                    .gives("range", key("range-" + when), say("smallest and largest reading {when}", "when", told))));
        }
        if (result.unit() == Unit.PH && readings.size() > 1) {
            keepAll(bench.ledger().work(new Job("activity-mean", result.place()).given("readings", read, Job.CASE_FILE)
                    .note("Shown beside the arithmetic mean, so that nobody must guess which mean is meant.")
                    .gives("ph", key("activity-mean-" + when), say("mean of hydrogen ion activity {when}, as pH", "when", told))));
        }
        if (result.unit() == Unit.COUNT) {
            keepAll(bench.ledger().work(new Job("sum", result.place()).given("amounts", read, Job.CASE_FILE)
                    .gives("total", key("total-" + when), say("counted {when}", "when", told))));
        }
    }

    /** A difference of two pH values is not itself a pH, and one of two means of counts is not a count. */
    private static Unit difference(Unit unit) {
        return unit == Unit.PH || unit == Unit.COUNT ? Unit.NONE : unit;
    }

    private void change(Result.Readings result) {
        boolean paired = isPaired(result);
        if (!paired) {
            cautions.add("not-paired");
        }
        Map<String, Figure> made = bench.ledger().work(changeJob(result, paired));
        boolean holds = holdsInterval(result, made);
        Optional.ofNullable(made.get(key("change").id())).ifPresent(change ->
                keep(bench.ledger().keep(withInterval(change, holds ? made : Map.of(), difference(result.unit())))));
        Optional.ofNullable(made.get(key("change-p").id())).ifPresent(p -> {
            if (holds) {
                keep(p);
            } else {
                bench.ledger().drop(p.id());
            }
        });
        Optional.ofNullable(made.get(key("change-sd").id())).ifPresent(figure ->
                keep(bench.ledger().keep(inUnit(figure, difference(result.unit())))));
        bench.ledger().drop(key("change-low").id());
        bench.ledger().drop(key("change-high").id());
        besideChange(result, paired);
    }

    private static boolean isPaired(Result.Readings result) {
        int places = result.places().size();
        return places > 0 && places == result.before().size() && places == result.after().size();
    }

    private Job changeJob(Result.Readings result, boolean paired) {
        Job job = new Job("change", result.place()).given("before", averaged(result.before(), result), Job.CASE_FILE)
                .given("after", averaged(result.after(), result), Job.CASE_FILE)
                .word("paired", paired ? "yes" : "no", Job.CASE_FILE)
                .note(paired ? "Each place is compared with itself."
                        : "Places are not compared one by one; the two means are (Welch).")
                .gives("mean-change", key("change"), "change of the mean")
                .gives("low", key("change-low")).gives("high", key("change-high"));
        if (paired && result.before().size() > 1) {
            job.gives("sd", key("change-sd"), "standard deviation of the change");
        }
        if (Math.min(result.before().size(), result.after().size()) >= fewest()) {
            job.gives("p", key("change-p"), "p-value of the change");
        }
        return job;
    }

    /** Things counted do not scatter as the test supposes; and of what cannot be less than nothing no interval runs below it. */
    private boolean holdsInterval(Result.Readings result, Map<String, Figure> made) {
        Optional<Figure> low = Optional.ofNullable(made.get(key("change-low").id()));
        if (low.isEmpty()) {
            return true;
        }
        boolean below = SIGNED.stream().noneMatch(result.unit().dimension()::equals)
                && SeriesSummary.fallsBelowNothing(quantities(result.before(), result), low.get().value());
        if (result.unit() == Unit.COUNT || below) {
            cautions.add(result.unit() == Unit.COUNT ? "counted" : "interval-below-nothing");
            return false;
        }
        return true;
    }

    private void besideChange(Result.Readings result, boolean paired) {
        if (paired && result.places().size() > 1) {
            keepAll(bench.ledger().work(new Job("place-changes", result.place())
                    .given("before", quantities(result.before(), result), Job.CASE_FILE)
                    .given("after", quantities(result.after(), result), Job.CASE_FILE)
                    .gives("range", key("range-change"), "smallest and largest change at one place")));
        }
        if (result.unit() == Unit.PH) {
            activityRatio(result.place());
        }
        Optional<Figure> before = Optional.ofNullable(figures.get("total-before"));
        Optional<Figure> after = Optional.ofNullable(figures.get("total-after"));
        if (paired && before.isPresent() && after.isPresent() && before.get().value().value() > 0) {
            keepAll(bench.ledger().work(new Job("share-left", result.place()).given("before", before.get())
                    .given("after", after.get()).gives("left", key("left")).gives("removed", key("removed"))));
        }
    }

    /** Beside a change of pH: how many times less or more active the hydrogen ions are. */
    private void activityRatio(Place place) {
        Optional.ofNullable(figures.get("change")).ifPresent(change -> keepAll(bench.ledger().work(
                new Job("activity-ratio", place).given("change", change).gives("ratio", key("activity-ratio")))));
    }

    /** Readings as they are averaged: a count of spots like any other, but its mean is no longer a count. */
    private static List<Quantity> averaged(List<Double> readings, Result.Readings result) {
        return quantities(readings, result).stream().map(one -> averaged(one, result.unit())).toList();
    }

    private static Quantity averaged(Quantity one, Unit unit) {
        return inUnit(one, unit == Unit.COUNT ? Unit.NONE : unit);
    }

    private static Quantity inUnit(Quantity value, Unit unit) {
        return new Quantity(value.value(), value.low(), value.high(), unit, value.spread());
    }

    /** Readings, known to the step of their instrument; where none is told, to the finest step that one of them was read to. */
    private static List<Quantity> quantities(List<Double> readings, Result.Readings result) {
        Optional<Quantity> step = result.conditions().step();
        return step.isEmpty() || result.unit() == Unit.COUNT ? quantities(readings, result.unit())
                : readings.stream().map(one -> Quantity.reading(one, step.get().value(), result.unit())).toList();
    }

    private static List<Quantity> quantities(List<Double> readings, Unit unit) {
        List<Quantity> read = readings.stream().map(one -> Quantity.of(one, unit).asRead()).toList();
        double half = read.stream().mapToDouble(Quantity::halfWidth).min().orElse(0);
        return readings.stream().map(one -> Quantity.resolved(one, half, unit)).toList();
    }

    /** The change with its interval as its own ends, so that nobody quotes one without the other. */
    private Figure withInterval(Figure change, Map<String, Figure> made, Unit unit) {
        double mean = change.value().value();
        Optional<Figure> low = Optional.ofNullable(made.get(key("change-low").id()));
        Optional<Figure> high = Optional.ofNullable(made.get(key("change-high").id()));
        Quantity value = low.isPresent() && high.isPresent()
                ? new Quantity(mean, low.get().value().value(), high.get().value().value(), unit,
                        Quantity.Spread.TOLERANCE)
                : inUnit(change.value(), unit);
        String label = low.isPresent() ? say("{change}, with its 95 % interval", "change", change.label()) : change.label();
        return new Figure(change.key(), label, value, change.method(), change.inputs(), change.sources(), change.notes());
    }

    private static Figure inUnit(Figure figure, Unit unit) {
        return new Figure(figure.key(), figure.label(), inUnit(figure.value(), unit), figure.method(),
                figure.inputs(), figure.sources(), figure.notes());
    }

    @Override
    public WorkedResult colour(Result.Colour result) {
        String formula = FORMULAS.getOrDefault(result.formula().orElse("CIEDE2000"), "de2000");
        result.formula().or(() -> said("formula-not-stated"));
        result.illuminant().or(() -> said("illuminant-not-stated"));
        result.observer().or(() -> said("observer-not-stated"));
        List<Figure> differences = new ArrayList<>();
        for (Result.ColourSpot spot : result.spots()) {
            if (spot.before().size() == 3 && spot.after().size() == 3) {
                spot(result, spot, formula).ifPresent(differences::add);
            } else {
                cautions.add("one-time-only");
            }
        }
        if (differences.size() > 1) {
            keepAll(bench.ledger().work(new Job("reach", result.place())
                    .each("readings", differences.stream().map(Ledger::given).toList())
                    .note("The range shows the smallest and the largest reading.").gives("range", key(formula, "mean"),
                            say("mean colour difference of all spots, {conditions}", "conditions", conditions(result, formula)))));
        }
        if (result.spots().size() < fewest()) {
            cautions.add("fewer-than-three");
        }
        white(result).ifPresent(white -> result.spots().forEach(spot -> {
            yellowness("yellowness-before", spot.before(), spot, white, result);
            yellowness("yellowness-after", spot.after(), spot, white, result);
        }));
        return worked(result);
    }

    /** The white that L*, a*, b* were worked out with, if light and observer are stated and yellowness has its factors. */
    private static Optional<WhitePoint> white(Result.Colour result) {
        return result.illuminant().flatMap(light -> result.observer().flatMap(observer ->
                WhitePoint.named(light + "/" + observer.replace("°", "").strip()))).filter(WhitePoint::forPaper);
    }

    /** From L*, a*, b*, since instruments hand out those: with the white known, X, Y, Z follow without loss. */
    private void yellowness(String name, List<Double> lab, Result.ColourSpot spot, WhitePoint white, Result.Colour result) {
        if (lab.size() != 3 || !isNearWhite(lab)) {
            return;
        }
        keepAll(bench.ledger().work(new Job("yellowness", result.place())
                .given("lab", quantities(lab, Unit.NONE), Job.CASE_FILE)
                .word("white", white.written(), Job.CASE_FILE)
                .gives("yellowness", key(name, FigureKey.named(spot.id())), say("yellowness {when}, {spot} (ASTM E313, {white})",
                        "when", say(name.substring(name.indexOf('-') + 1)), "spot", spot.at(), "white", white.written()))));
    }

    /**
     * Yellowness is an index of whites that have turned yellow or brown; of a blue ground or a red letter it says
     * nothing (ASTM E313 keeps it to near whites; the ends here are common practice, no source).
     */
    private boolean isNearWhite(List<Double> lab) {
        double chroma = Math.hypot(lab.get(1), lab.get(2));
        double hue = Math.toDegrees(StrictMath.atan2(lab.get(2), lab.get(1)));
        Quantity yellow = bench.constant("yellow-hue").value();
        return chroma < bench.constant("near-white-chroma").value().value() || hue > yellow.low() && hue < yellow.high();
    }

    private Optional<String> said(String caution) {
        cautions.add(caution);
        return Optional.empty();
    }

    private Optional<Figure> spot(Result.Colour result, Result.ColourSpot spot, String formula) {
        String at = FigureKey.named(spot.id());
        String conditions = conditions(result, formula);
        Map<String, Figure> made = bench.ledger().work(new Job("colour-difference", result.place())
                .given("before", quantities(spot.before(), Unit.NONE), Job.CASE_FILE)
                .given("after", quantities(spot.after(), Unit.NONE), Job.CASE_FILE)
                .note(say("Measured with {conditions}.", "conditions", measuredWith(result)))
                .gives(formula, key(formula, at), say("colour difference, {spot}, {conditions}", "spot", spot.at(),
                        "conditions", conditions))
                .gives("lightness", key("lightness", at), say("change of lightness, {spot}", "spot", spot.at()))
                .gives("chroma", key("chroma", at), say("change of chroma, {spot}", "spot", spot.at()))
                .gives("hue", key("hue", at), say("difference of hue, {spot}", "spot", spot.at())));
        keepAll(made);
        return Optional.ofNullable(made.get(key(formula, at).id()));
    }

    private String conditions(Result.Colour result, String formula) {
        String name = formula.equals("de2000") ? "CIEDE2000" : formula.equals("de94") ? "CIE94" : "CIE76";
        return name + ", " + illuminant(result) + ", " + observer(result);
    }

    private String illuminant(Result.Colour result) {
        return say("illuminant {light}", "light", result.illuminant().orElseGet(() -> say("not stated")));
    }

    private String observer(Result.Colour result) {
        return say("observer {angle}", "angle", result.observer().orElseGet(() -> say("not stated")));
    }

    private String measuredWith(Result.Colour result) {
        List<String> words = new ArrayList<>();
        words.add(illuminant(result));
        words.add(observer(result));
        result.geometry().ifPresent(geometry -> words.add(say("geometry {geometry}", "geometry", geometry)));
        result.aperture().ifPresent(aperture -> words.add(say("aperture {aperture}", "aperture", Reading.of(aperture))));
        result.readingsEach().ifPresent(each -> words.add(say("{n} readings each", "n", each)));
        return String.join(", ", words);
    }

    @Override
    public WorkedResult size(Result.Size result) {
        Optional<String> grain = bench.paper().grain();
        boolean turned = grain.filter("along the width"::equals).isPresent();
        keepAll(bench.ledger().work(new Job("size-change", result.place())
                .given("before", asRead(turned ? result.widthBefore() : result.heightBefore(), result), Job.CASE_FILE)
                .given("after", asRead(turned ? result.widthAfter() : result.heightAfter(), result), Job.CASE_FILE)
                .given("across-before", asRead(turned ? result.heightBefore() : result.widthBefore(), result), Job.CASE_FILE)
                .given("across-after", asRead(turned ? result.heightAfter() : result.widthAfter(), result), Job.CASE_FILE)
                .gives("change", key("change"), grain.isEmpty() ? "change of height" : "change along the grain")
                .gives("across-change", key("across-change"), grain.isEmpty() ? "change of width" : "change across the grain")
                .gives("area-change", key("area-change"), "change of area")));
        if (grain.isEmpty()) {
            cautions.add("grain-unknown");
        }
        humidity(result);
        withinOneStep(result, result.heightBefore(), result.heightAfter(), WorkedResult.HEIGHT_WITHIN_ONE_STEP);
        withinOneStep(result, result.widthBefore(), result.widthAfter(), WorkedResult.WIDTH_WITHIN_ONE_STEP);
        return worked(result);
    }

    private void withinOneStep(Result.Size result, Quantity before, Quantity after, String caution) {
        if (isByRule(result) && Sheets.changedWithin(before, after, bench.constant("step-of-a-rule").value())) {
            cautions.add(caution);
        }
    }

    private static boolean isByRule(Result.Size result) {
        return result.method().contains("rule");
    }

    /** A length as its tool can read it: one by a rule is known to a step of the rule, however many zeros were written. */
    private Quantity asRead(Quantity length, Result.Size result) {
        double step = bench.constant("step-of-a-rule").value().in(length.unit());
        Quantity byRule = Quantity.reading(length.value(), step, length.unit());
        return isByRule(result) && byRule.halfWidth() > length.halfWidth() ? byRule : length;
    }

    private void humidity(Result.Size result) {
        if (result.humidityBefore().isEmpty() || result.humidityAfter().isEmpty()) {
            cautions.add("humidity-not-stated");
            return;
        }
        Quantity before = result.humidityBefore().get();
        Quantity after = result.humidityAfter().get();
        double apart = SeriesSummary.changes(List.of(before), List.of(after)).in(Unit.PERCENT_HUMIDITY);
        if (Math.abs(apart) > bench.constant("same-humidity").value().in(Unit.PERCENT_HUMIDITY)) {
            cautions.add("other-humidity");
            bench.messages().add(FigureMessages.OTHER_HUMIDITY.at(result.place(), "before", Reading.of(before),
                    "after", Reading.of(after)));
        }
    }

    @Override
    public WorkedResult reserve(Result.Reserve result) {
        result.measured().ifPresent(titration -> titrated(result, titration));
        if (result.measured().isEmpty()) {
            result.carbonate().ifPresent(carbonate -> reported("carbonate", "calcium carbonate, as reported", carbonate));
            result.amount().ifPresentOrElse(amount -> reported("reserve", "alkaline reserve, as reported", amount),
                    () -> result.carbonate().ifPresent(carbonate -> keepAll(bench.ledger().work(new Job("reserve-of-carbonate",
                            result.place()).given("carbonate", carbonate, Job.CASE_FILE).gives("reserve", key("reserve"))))));
        }
        result.step().flatMap(bench.source()::step).ifPresent(step -> ceiling(result, step));
        Optional.ofNullable(figures.get("carbonate")).ifPresent(carbonate -> cautions.add(
                carbonate.value().in(Unit.PERCENT_BY_MASS) >= threshold() ? "threshold-met" : "threshold-not-met"));
        Optional.ofNullable(figures.get("ceiling-carbonate")).ifPresent(carbonate -> {
            cautions.add("ceiling");
            if (carbonate.value().in(Unit.PERCENT_BY_MASS) < threshold()) {
                cautions.add("ceiling-below-threshold");
            }
        });
        return worked(result);
    }

    private void titrated(Result.Reserve result, Result.Titration titration) {
        Job job = new Job("alkaline-reserve", result.place()).given("sample", titration.sample(), Job.CASE_FILE)
                .given("acid-volume", titration.acidVolume(), Job.CASE_FILE)
                .given("acid", titration.acid(), Job.CASE_FILE)
                .given("base-volume", titration.baseVolume(), Job.CASE_FILE)
                .given("base", titration.base(), Job.CASE_FILE)
                .gives("reserve", key("reserve")).gives("carbonate", key("carbonate"));
        titration.moisture().ifPresent(moisture -> job.given("moisture", moisture, Job.CASE_FILE));
        keepAll(bench.ledger().work(job));
        Optional.ofNullable(figures.get("carbonate")).filter(one -> one.value().in(Unit.PERCENT_BY_MASS) < threshold())
                .ifPresent(low -> cautions.add("below-titration-limit"));
    }

    private void reported(String name, String label, Quantity value) {
        put(name, label, value, "as-given", List.of(Ledger.given(name, label, value, Job.CASE_FILE)));
    }

    /** What the bath of a step leaves at most: all the calcium in the liquid that the sheet holds. */
    private void ceiling(Result.Reserve result, Step step) {
        Optional<Quantity> grammage = bench.paper().grammage();
        Optional<Figure> calcium = step.part(Part.Bath.class).flatMap(bath -> calcium(bath.of()));
        if (grammage.isEmpty() || calcium.isEmpty()) {
            bench.missing(bench.paper().grammageMissing().filter(missing -> grammage.isEmpty()), key("ceiling-reserve").id(),
                    grammage.isEmpty() ? "the sheet's mass per area"
                    : "the calcium in the bath of step '" + step.id() + "'", grammage.isEmpty()
                    ? "'grammage:' under 'support:'" : "a bath of limewater, or of a dilution of it", result.place());
            return;
        }
        Quantity uptake = result.uptake().or(() -> bench.ledger().value("mass-at-solids", Inputs.none()
                .with("dry", grammage.get(), Job.CASE_FILE)
                .with("solids", bench.constant("wet-solids").value(), Job.USUAL), "water")).orElseThrow();
        keepAll(bench.ledger().work(new Job("reserve-ceiling", result.place())
                .given("grammage", grammage.get(), Job.CASE_FILE)
                .given("uptake", uptake, result.uptake().isPresent() ? Job.CASE_FILE : Job.USUAL)
                .given("calcium", calcium.get())
                .note("A ceiling, not a measurement: it takes all calcium in the wet sheet to stay there as carbonate.")
                .gives("carbonate", key("ceiling-carbonate"), "calcium carbonate at most")
                .gives("reserve", key("ceiling-reserve"), "alkaline reserve at most")
                .gives("baths-to-two-per-cent", key("baths-to-two-per-cent"))));
    }

    private Optional<Figure> calcium(String solution) {
        return bench.ledger().figure(solution + ".calcium");
    }

    @Override
    public WorkedResult words(Result.Words result) {
        cautions.add("in-words");
        return worked(result);
    }

    @Override
    public WorkedResult notMeasured(Result.NotMeasured result) {
        return worked(result);
    }
}
