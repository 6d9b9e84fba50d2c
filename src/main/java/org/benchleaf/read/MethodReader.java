package org.benchleaf.read;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.model.Constant;
import org.benchleaf.model.Formulary;
import org.benchleaf.model.Method;
import org.benchleaf.model.ReferenceTable;
import org.benchleaf.model.Source;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.QuantityReader;
import org.benchleaf.quantity.Unit;

/** Reads the methods of calculation, their sources, constants and reference tables, which are part of the program. */
public final class MethodReader {

    private static final String FOLDER = "/reference/";
    private static final List<String> TABLES = List.of("flash-points", "vapour-limits", "glassware", "divisions");

    private MethodReader() {
    }

    /**
     * Reads all methods.
     *
     * @throws IllegalStateException if one of our own files is missing or wrong
     */
    public static Formulary read() {
        List<Source> sources = OwnYaml.list(FOLDER + "sources.yaml").stream().map(MethodReader::source).toList();
        List<Method> methods = methods("methods.yaml");
        List<ReferenceTable> tables = TABLES.stream().map(MethodReader::table).toList();
        List<Constant> constants = OwnYaml.list(FOLDER + "constants.yaml").stream().map(MethodReader::constant).toList();
        Formulary formulary = new Formulary(methods, methods("plain-methods.yaml"), sources, tables, constants);
        requireKnownSources(formulary);
        return formulary;
    }

    private static List<Method> methods(String file) {
        return OwnYaml.list(FOLDER + file).stream().map(MethodReader::method).toList();
    }

    private static ReferenceTable table(String name) {
        String path = FOLDER + name + ".csv";
        CsvTable table = CsvTable.parse(path, OwnFile.text(path));
        return new ReferenceTable(name, table.about(), table.rows());
    }

    private static Source source(OwnYaml entry) {
        Source source = new Source(entry.text("key"), entry.text("author"), entry.text("year"), entry.text("title"),
                entry.text("where"), entry.optionalText("address"), entry.text("status"), !entry.flag("unpublished"));
        entry.allRead();
        return source;
    }

    private static Constant constant(OwnYaml entry) {
        Quantity value = quantity(entry, entry.text("value"));
        Optional<Quantity> ends = entry.optionalText("ends").map(text -> quantity(entry, text).to(value.unit()));
        Constant constant = new Constant(entry.text("name"), entry.text("about"),
                ends.map(reach -> Quantity.between(reach.low(), value.value(), reach.high(), value.unit())).orElse(value),
                entry.texts("sources"));
        entry.allRead();
        return constant;
    }

    /** A bare percentage is a share. */
    private static Quantity quantity(OwnYaml entry, String text) {
        return QuantityReader.read(text).quantity().or(() -> QuantityReader.read(text, Dimension.SHARE).quantity())
                .orElseThrow(() -> new IllegalStateException(entry.where() + ": '" + text + "' is no quantity"));
    }

    private static Method method(OwnYaml entry) {
        Method method = new Method(entry.text("name"), entry.text("title"), entry.text("subject"), entry.text("answers"),
                entry.text("formula"), entry.text("mathml"), entry.text("range"), entry.texts("sources"),
                entry.flag("own ends"), entry.texts("caveats"), entry.children("inputs").stream().map(MethodReader::input).toList(),
                entry.children("outputs").stream().map(MethodReader::output).toList());
        entry.allRead();
        return method;
    }

    private static Method.Input input(OwnYaml entry) {
        List<Dimension> dimensions = entry.texts("dimensions").stream().map(name -> dimension(entry, name)).toList();
        Optional<String> usual = entry.optionalText("usual");
        Method.Input input = new Method.Input(entry.text("key"), entry.text("label"), dimensions, entry.texts("words"),
                entry.flag("many"), usual, entry.flag("required"), entry.optionalNumber("low"),
                entry.optionalNumber("high"), entry.optionalText("unit").map(text -> unit(entry, text)),
                entry.text("range source"), entry.text("example"));
        entry.allRead();
        if (input.required() && usual.isPresent()) {
            throw new IllegalStateException(entry.where() + " is required and has a usual value");
        }
        if ((input.low().isPresent() || input.high().isPresent()) && input.unit().isEmpty()) {
            throw new IllegalStateException(entry.where() + " has a range without unit");
        }
        return input;
    }

    private static Method.Output output(OwnYaml entry) {
        Method.Output output = new Method.Output(entry.text("key"), entry.text("label"),
                unit(entry, entry.text("unit")), entry.flag("yes or no"));
        entry.allRead();
        return output;
    }

    private static Dimension dimension(OwnYaml entry, String words) {
        try {
            return Dimension.valueOf(words.toUpperCase(Locale.ROOT).replace(' ', '_'));
        } catch (IllegalArgumentException unknown) {
            throw new IllegalStateException(entry.where() + ": no dimension is called '" + words + "'", unknown);
        }
    }

    /** A symbol, or the words "count" and "none" for the units that have no spelling. */
    private static Unit unit(OwnYaml entry, String text) {
        return switch (text) {
            case "count" -> Unit.COUNT;
            case "none" -> Unit.NONE;
            default -> Unit.spelled(text).orElseThrow(
                    () -> new IllegalStateException(entry.where() + ": no unit is written '" + text + "'"));
        };
    }

    private static void requireKnownSources(Formulary formulary) {
        for (Method method : Stream.concat(formulary.methods().stream(), formulary.plainMethods().stream()).toList()) {
            for (String key : method.sources()) {
                formulary.source(key).orElseThrow(() -> new IllegalStateException(
                        "method " + method.name() + " cites '" + key + "', which sources.yaml does not have"));
            }
        }
        for (Constant constant : formulary.constants()) {
            for (String key : constant.sources()) {
                formulary.source(key).orElseThrow(() -> new IllegalStateException(
                        "constant " + constant.name() + " cites '" + key + "', which sources.yaml does not have"));
            }
        }
    }
}
