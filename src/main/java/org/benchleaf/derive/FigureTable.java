package org.benchleaf.derive;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import org.benchleaf.calculate.Figure;
import org.benchleaf.derive.figure.Reading;
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

    // Not the virtual machine's own way of writing numbers, which differs between its versions.
    private static final JsonFactory JSON = new JsonFactoryBuilder()
            .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER).build();

    private final Library library;

    /** Makes ready to write figures; the library has the formulas and the sources. */
    public FigureTable(Library library) {
        this.library = library;
    }

    /** The figures of a case as JSON in UTF-8, one value a line. */
    public byte[] json(WorkedCase worked) {
        TreatmentCase source = worked.source();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (JsonGenerator json = JSON.createGenerator(bytes)) {
            json.setPrettyPrinter(printer());
            json.writeStartObject();
            json.writeStringField("case", source.id());
            json.writeStringField("title", source.title());
            Optional<Source> retold = source.sources().retelling()
                    .map(retelling -> library.sources().get(retelling.passage().source()));
            if (retold.isPresent()) {
                json.writeStringField("retoldFrom", retold.get().author() + " " + retold.get().year() + ": " + retold.get().title());
            }
            json.writeArrayFieldStart("figures");
            for (Figure figure : worked.figures().values()) {
                write(json, figure);
            }
            json.writeEndArray();
            json.writeEndObject();
            json.writeRaw('\n');
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private static DefaultPrettyPrinter printer() {
        Separators separators = Separators.createDefaultInstance().withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                .withObjectEmptySeparator("").withArrayEmptySeparator("");
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter(separators);
        printer.indentArraysWith(lines);
        printer.indentObjectsWith(lines);
        return printer;
    }

    private void write(JsonGenerator json, Figure figure) throws IOException {
        Quantity value = figure.value();
        json.writeStartObject();
        json.writeStringField("id", figure.id());
        json.writeStringField("label", figure.label());
        json.writeNumberField("value", value.value());
        json.writeNumberField("low", value.low());
        json.writeNumberField("high", value.high());
        json.writeStringField("unit", value.unit() == Unit.COUNT ? "count" : value.unit().symbol());
        json.writeStringField("method", figure.method());
        json.writeStringField("formula", formula(figure));
        json.writeArrayFieldStart("inputs");
        for (Figure.Given given : figure.inputs()) {
            json.writeStartObject();
            json.writeStringField("key", given.key());
            json.writeStringField("label", given.label());
            json.writeStringField("value", given.text());
            json.writeStringField("from", given.from().text());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("sources");
        for (String source : figure.sources()) {
            json.writeString(source(source));
        }
        json.writeEndArray();
        json.writeArrayFieldStart("notes");
        for (String note : figure.notes()) {
            json.writeString(note);
        }
        json.writeEndArray();
        json.writeEndObject();
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

    private String text(Figure figure) {
        StringBuilder text = new StringBuilder("  ").append(figure.id()).append(" = ")
                .append(Reading.of(figure.value()));
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
