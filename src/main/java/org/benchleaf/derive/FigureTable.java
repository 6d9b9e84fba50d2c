package org.benchleaf.derive;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.derive.figure.Reading;
import org.benchleaf.json.JsonText;
import org.benchleaf.model.Library;
import org.benchleaf.model.Method;
import org.benchleaf.model.Source;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * Figures with their working, as data and as text.
 *
 * <p>The same figures give the same bytes on every machine.
 */
public final class FigureTable {

    private final Library library;

    /** Makes ready to write figures; the library has the formulas and the sources. */
    public FigureTable(Library library) {
        this.library = library;
    }

    /** The figures of a case as JSON in UTF-8, one value a line. */
    public byte[] json(WorkedCase worked) {
        TreatmentCase source = worked.source();
        Map<String, Object> table = new LinkedHashMap<>();
        table.put("case", source.id());
        table.put("title", source.title());
        source.sources().retelling().map(retelling -> library.sources().get(retelling.passage().source()))
                .ifPresent(told -> table.put("retoldFrom", told.author() + " " + told.year() + ": " + told.title()));
        table.put("figures", worked.figures().values().stream().map(this::data).toList());
        return (JsonText.of(table) + "\n").getBytes(StandardCharsets.UTF_8);
    }

    private Map<String, Object> data(Figure figure) {
        Quantity value = figure.value();
        Map<String, Object> data = new LinkedHashMap<>();
        data.put("id", figure.id());
        data.put("label", figure.label());
        data.put("value", value.value());
        data.put("low", value.low());
        data.put("high", value.high());
        data.put("unit", value.unit() == Unit.COUNT ? "count" : value.unit().symbol());
        data.put("method", figure.method());
        data.put("formula", formula(figure));
        data.put("inputs", figure.inputs().stream().map(given -> JsonText.object("key", given.key(), "label", given.label(),
                "value", given.text(), "from", given.from().text())).toList());
        data.put("sources", figure.sources().stream().map(this::source).toList());
        data.put("notes", figure.notes());
        return data;
    }

    private Optional<Method> method(Figure figure) {
        return Optional.ofNullable(library.methods().get(figure.method()))
                .or(() -> library.formulary().method(figure.method()));
    }

    private String formula(Figure figure) {
        return method(figure).map(Method::formula).orElse("");
    }

    private String source(String key) {
        return Optional.ofNullable(library.sources().get(key)).or(() -> library.formulary().source(key))
                .map(FigureTable::cited).orElse(key);
    }

    private static String cited(Source source) {
        String year = source.year().isBlank() ? "" : " (" + source.year() + ")";
        String where = source.where().isBlank() ? "" : ". " + source.where();
        return source.author() + year + ", " + source.title() + where + " [" + source.status() + "]";
    }

    /** The figures of a case as lines for a terminal, each with its working below it. */
    public String text(WorkedCase worked) {
        StringBuilder text = new StringBuilder(worked.source().title()).append("\n");
        String owner = "";
        for (Figure figure : worked.figures().values()) {
            String next = figure.key().group();
            if (!next.equals(owner)) {
                owner = next;
                text.append('\n').append(owner).append('\n');
            }
            text.append(text(figure));
        }
        return text.toString();
    }

    /** What a report states keeps the words of its form. */
    private static String told(Figure figure) {
        return figure.key().name().startsWith(FigureKey.STATED) ? figure.inputs().get(0).text() : Reading.of(figure.value());
    }

    private String text(Figure figure) {
        StringBuilder text = new StringBuilder("  ").append(figure.id()).append(" = ")
                .append(told(figure));
        if (figure.value().spread() == Quantity.Spread.RANGE) {
            text.append(" (about ").append(Reading.of(figure.value().exact())).append(')');
        }
        text.append("\n      ").append(figure.label()).append('\n');
        String formula = formula(figure);
        if (!formula.isEmpty()) {
            text.append("      formula: ").append(formula).append('\n');
        }
        for (Figure.Given given : figure.inputs()) {
            text.append("      ").append(given.label()).append(": ").append(given.text())
                    .append(" (").append(given.from().text()).append(")\n");
        }
        for (String source : figure.sources()) {
            text.append("      source: ").append(source(source)).append('\n');
        }
        for (String note : figure.notes()) {
            text.append("      note: ").append(note).append('\n');
        }
        return text.toString();
    }
}
