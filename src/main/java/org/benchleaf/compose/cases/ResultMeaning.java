package org.benchleaf.compose.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.benchleaf.calculate.Figure;
import org.benchleaf.compose.part.ReadingsTables;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.derive.figure.WorkedResult;
import org.benchleaf.model.Result;
import org.benchleaf.page.Meaning;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;
/** Says in plain words what a result tells and what it does not. */
public final class ResultMeaning implements Result.Kinds<Meaning> {

    private final Sheet sheet;
    private final Words words;
    private final WorkedResult worked;
    private final List<RichText> says = new ArrayList<>();
    private final List<String> limits = new ArrayList<>();

    public ResultMeaning(Sheet sheet, WorkedResult worked) {
        this.sheet = sheet;
        this.words = sheet.words();
        this.worked = worked;
    }

    /** The meaning with every caution that belongs to the result. */
    public Meaning make() {
        return worked.source().ask(this);
    }

    private Meaning made() {
        worked.cautions().forEach(caution -> limits.add(words.say("caution." + caution)));
        return new Meaning(says, limits, words.group("meaning"));
    }

    private void found(String key, Object... holes) {
        says.add(sheet.linked(words.say("meaning-says." + key, holes)));
    }

    private void limit(String key, Object... holes) {
        limits.add(words.say("meaning-limit." + key, holes));
    }

    @Override
    public Meaning readings(Result.Readings result) {
        if (worked.figures().containsKey("left")) {
            found("counted", "before", amount("total-before"), "after", amount("total-after"), "left", amount("left"),
                    "removed", amount("removed"));
        } else {
            figure("change").ifPresent(figure -> {
                change(figure);
                chance(figure.value(), new ReadingsTables(sheet, "", result, worked));
            });
        }
        if (!result.places().isEmpty()) {
            limits.add(words.count("meaning-limit.places", result.places().size()));
        }
        return made();
    }

    @Override
    public Meaning stated(Result.Stated result) {
        figure("change").ifPresent(this::change);
        return made();
    }

    private String amount(String figure) {
        return sheet.amount(worked.figures().get(figure)).text();
    }

    private void change(Figure figure) {
        double mean = figure.value().value();
        found(mean > 0 ? "higher" : mean < 0 ? "lower" : "same", "amount", sheet.amount(size(figure)).text());
    }

    private void chance(Quantity change, ReadingsTables tables) {
        if (change.spread() == Quantity.Spread.TOLERANCE) {
            boolean zero = change.low() <= 0 && change.high() >= 0;
            found(zero ? "chance-may" : "chance-unlikely", "low", tables.toldChange(change.low()),
                    "high", tables.toldChange(change.high()));
        }
    }

    /** The size of a change without its sign, since the sentence says in which direction it went. */
    private static Figure size(Figure figure) {
        Quantity value = figure.value();
        boolean turned = value.value() < 0;
        Quantity size = !turned ? value : new Quantity(-value.value(), -value.high(), -value.low(), value.unit(),
                value.spread());
        return new Figure(figure.key(), figure.label(), size, figure.method(), figure.inputs(), figure.sources(),
                figure.notes());
    }

    @Override
    public Meaning colour(Result.Colour result) {
        direction("lightness", "lighter", "darker");
        direction("chroma", "stronger", "weaker");
        limits.add(words.count("meaning-limit.spots", result.spots().size()));
        limit("seen");
        return made();
    }

    /** Whether all spots went one way, and how far. */
    private void direction(String name, String up, String down) {
        double[] changes = worked.figures().entrySet().stream().filter(entry -> entry.getKey().startsWith(name + "."))
                .mapToDouble(entry -> entry.getValue().value().value()).toArray();
        if (changes.length == 0) {
            return;
        }
        double least = DoubleStream.of(changes).min().orElseThrow();
        double most = DoubleStream.of(changes).max().orElseThrow();
        boolean rises = least > 0;
        if (changes.length == 1 || !rises && most >= 0) {
            found(name + "-changed", "least", tenth(least), "most", tenth(most));
        } else {
            says.add(sheet.linked(words.count("meaning-says." + (rises ? up : down), changes.length,
                    "least", tenth(rises ? least : -most), "most", tenth(rises ? most : -least))));
        }
    }

    private String tenth(double number) {
        return sheet.numbers().fixed(number, 1);
    }

    @Override
    public Meaning size(Result.Size result) {
        figure("change").ifPresent(along -> figure("across-change").ifPresent(across -> found("size",
                "along", Words.capital(along.label()), "alongAmount", sheet.amount(along).text(),
                "across", across.label(), "acrossAmount", sheet.amount(across).text())));
        return made();
    }

    @Override
    public Meaning reserve(Result.Reserve result) {
        figure("carbonate").ifPresent(figure -> found("reserve", "amount", sheet.amount(figure).text()));
        figure("ceiling-carbonate").ifPresent(figure -> found("ceiling", "amount", sheet.amount(figure).text()));
        return made();
    }

    @Override
    public Meaning words(Result.Words result) {
        return made();
    }

    @Override
    public Meaning notMeasured(Result.NotMeasured result) {
        return made();
    }

    private Optional<Figure> figure(String name) {
        return Optional.ofNullable(worked.figures().get(name));
    }
}
