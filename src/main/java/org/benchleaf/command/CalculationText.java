package org.benchleaf.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.Origin;
import org.benchleaf.calculate.Outcome;
import org.benchleaf.json.JsonText;
import org.benchleaf.model.Formulary;
import org.benchleaf.model.Method;
import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Puts a finished calculation, or the list of all calculations, into lines for a terminal or into JSON. */
final class CalculationText {

    /** The unit of an answer in JSON, where every value is a number. */
    private static final String YES_OR_NO = "yes/no";
    private static final Map<String, Double> ANSWERS = Map.of("yes", 1.0, "no", 0.0);

    private final Formulary formulary;

    CalculationText(Formulary formulary) {
        this.formulary = formulary;
    }

    /** The list of all calculations, each with what goes in and what comes out. */
    String list() {
        StringBuilder text = new StringBuilder();
        for (Method method : formulary.methods()) {
            text.append(method.name()).append("\n    ").append(method.answers()).append('\n');
            for (Method.Input input : method.inputs()) {
                text.append("    ").append(input(input)).append('\n');
            }
            text.append("    gives: ").append(method.outputs().stream().map(CalculationText::output)
                    .collect(Collectors.joining(", "))).append("\n\n");
        }
        return text.append("calculate NAME key=value …").toString();
    }

    /** The same list as JSON. */
    String listAsJson() {
        List<Object> methods = new ArrayList<>();
        for (Method method : formulary.methods()) {
            Map<String, Object> entry = new LinkedHashMap<>();
            entry.put("name", method.name());
            entry.put("title", method.title());
            entry.put("answers", method.answers());
            entry.put("range", method.range());
            entry.put("inputs", method.inputs().stream().map(CalculationText::inputAsMap).toList());
            entry.put("outputs", method.outputs().stream().map(CalculationText::outputAsMap).toList());
            methods.add(entry);
        }
        return JsonText.of(Map.of("calculations", methods));
    }

    /** One result with its working. */
    String result(Outcome.Worked worked) {
        Method method = worked.method();
        StringBuilder text = new StringBuilder(method.title()).append("\n\n");
        int widest = method.outputs().stream().mapToInt(output -> output.key().length()).max().orElse(0);
        for (Method.Output output : method.outputs()) {
            text.append("  ").append(output.key()).append(" ".repeat(widest - output.key().length() + 2))
                    .append(value(worked, output.key())).append("   (").append(output.label()).append(")\n");
        }
        text.append("\nFormula: ").append(method.formula()).append("\nRange:   ").append(method.range())
                .append("\nInputs:\n");
        for (Figure.Given given : worked.givens()) {
            text.append("  ").append(given.key()).append(" = ").append(given.text())
                    .append(given.from() == Origin.Place.GIVEN ? "" : "   (" + given.from().text() + ")").append('\n');
        }
        text.append("Sources:\n");
        method.sources().forEach(key -> text.append("  ").append(citation(key)).append('\n'));
        lines(text, "Note", worked.notes().stream().map(Clause::english).toList());
        lines(text, "Mind", method.caveats());
        return text.toString().stripTrailing();
    }

    /** One result as JSON: every figure is a number at full precision, and what has no number is told apart. */
    String resultAsJson(Outcome.Worked worked) {
        List<Object> figures = new ArrayList<>();
        List<Object> withheld = new ArrayList<>();
        for (Method.Output output : worked.method().outputs()) {
            Optional<Quantity> number = Optional.ofNullable(worked.numbers().get(output.key()))
                    .or(() -> yesOrNo(worked, output.key()));
            if (number.isPresent()) {
                figures.add(figure(worked, output, number.get()));
            } else {
                withheld.add(withheld(worked, output));
            }
        }
        Map<String, Object> whole = new LinkedHashMap<>();
        whole.put("calculation", worked.method().name());
        whole.put("title", worked.method().title());
        whole.put("figures", figures);
        whole.put("withheld", withheld);
        whole.put("notes", joined(worked.notes().stream().map(Clause::english).toList(), worked.method().caveats()));
        return JsonText.of(whole);
    }

    /** Yes as 1 and no as 0; neither where the spread of what was put in reaches both. */
    private static Optional<Quantity> yesOrNo(Outcome.Worked worked, String key) {
        return Optional.ofNullable(worked.words().get(key)).map(ANSWERS::get).map(Quantity::number);
    }

    private Map<String, Object> figure(Outcome.Worked worked, Method.Output output, Quantity number) {
        Map<String, Object> figure = new LinkedHashMap<>();
        figure.put("id", output.key());
        figure.put("label", output.label());
        figure.put("value", number.value());
        figure.put("low", number.low());
        figure.put("high", number.high());
        figure.put("unit", output.yesOrNo() ? YES_OR_NO : unit(number.unit()));
        figure.put("formula", worked.method().formula());
        figure.put("inputs", worked.givens().stream().map(CalculationText::given).toList());
        figure.put("sources", worked.method().sources().stream().map(this::citation).toList());
        return figure;
    }

    private static Map<String, Object> withheld(Outcome.Worked worked, Method.Output output) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("id", output.key());
        entry.put("label", output.label());
        entry.put("why", worked.withheld().getOrDefault(output.key(),
                Clause.of("what was put in allows both yes and no")).english());
        return entry;
    }

    private static Map<String, Object> given(Figure.Given given) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("key", given.key());
        entry.put("label", given.label());
        entry.put("value", given.text());
        entry.put("from", given.from().text());
        return entry;
    }

    private String citation(String key) {
        return formulary.source(key).map(source -> source.author()
                + (source.year().isEmpty() ? "" : " (" + source.year() + ")") + ", " + source.title() + ". "
                + source.where() + ". [" + source.status() + "]").orElse(key);
    }

    private static String value(Outcome.Worked worked, String key) {
        if (worked.withheld().containsKey(key)) {
            return "no value: " + worked.withheld().get(key).english();
        }
        Quantity number = worked.numbers().get(key);
        if (number == null) {
            return worked.words().get(key);
        }
        String unit = number.unit() == Unit.PH || number.unit() == Unit.COUNT || number.unit() == Unit.NONE ? ""
                : " " + number.unit().symbol();
        return switch (number.spread()) {
            case NONE -> number.value() + unit;
            case TOLERANCE, RESOLUTION -> number.value() + " ± " + number.halfWidth() + unit;
            case RANGE -> number.value() + " (" + number.low() + " to " + number.high() + ")" + unit;
        };
    }

    private static String unit(Unit unit) {
        return unit == Unit.COUNT ? "count" : unit.symbol();
    }

    private static String input(Method.Input input) {
        String example = input.words().isEmpty() ? "such as " + input.example() : String.join(" | ", input.words());
        String state = input.usual().map(usual -> "usual: " + usual)
                .orElse(input.required() ? "needed" : "may be left out");
        return input.key() + "=…  " + input.label() + "; " + example + "; " + state;
    }

    private static Map<String, Object> inputAsMap(Method.Input input) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("key", input.key());
        entry.put("label", input.label());
        entry.put("required", input.required());
        entry.put("usual", input.usual().orElse(null));
        entry.put("words", input.words());
        entry.put("low", input.low().orElse(null));
        entry.put("high", input.high().orElse(null));
        entry.put("unit", input.unit().map(CalculationText::unit).orElse(""));
        entry.put("source", input.rangeSource());
        entry.put("example", input.example());
        return entry;
    }

    private static Map<String, Object> outputAsMap(Method.Output output) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("key", output.key());
        entry.put("label", output.label());
        entry.put("unit", output.yesOrNo() ? YES_OR_NO : unit(output.unit()));
        return entry;
    }

    private static String output(Method.Output output) {
        String unit = unit(output.unit());
        return unit.isEmpty() ? output.key() : output.key() + " (" + unit + ")";
    }

    private static List<String> joined(List<String> first, List<String> second) {
        List<String> all = new ArrayList<>(first);
        all.addAll(second);
        return all;
    }

    private static void lines(StringBuilder text, String word, List<String> lines) {
        lines.forEach(line -> text.append(word).append(": ").append(line).append('\n'));
    }
}
