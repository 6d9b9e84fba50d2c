package org.benchleaf.calculate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.model.Formulary;
import org.benchleaf.model.Method;
import org.benchleaf.model.ReferenceTable;
import org.benchleaf.quantity.Decimal;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Unit;

/**
 * What the calculations need of the formulary, as text that a page can carry: inputs, outputs and tables.
 *
 * <p>One line a record, its cells parted by tabs: {@code method}, {@code input}, {@code output}, {@code table}, {@code row}.
 * What is told about a method (formula, sources, where it holds) stands on pages and not in here.
 */
public final class FormularyText {

    /** The tables that {@link Calculations} looks things up in. */
    static final List<String> TABLES = List.of("flash-points", "vapour-limits", "glassware");
    private static final String TAB = "\t";
    private static final String LIST = "|";

    private final List<Method> methods = new ArrayList<>();
    private final List<ReferenceTable> tables = new ArrayList<>();

    private FormularyText() {
    }

    /** The text of a formulary. */
    public static String of(Formulary formulary) {
        Stream<String> methods = formulary.methods().stream().flatMap(FormularyText::lines);
        Stream<String> tables = TABLES.stream().map(formulary::table).flatMap(FormularyText::lines);
        return Stream.concat(methods, tables).collect(Collectors.joining("\n"));
    }

    /** The formulary of a text that {@link #of} made, with all that calculations need. */
    public static Formulary read(String text) {
        FormularyText read = new FormularyText();
        for (List<String> line : Cells.lines(text)) {
            read.take(line.get(0), line.subList(1, line.size()));
        }
        return new Formulary(read.methods, List.of(), List.of(), read.tables, List.of());
    }

    private static Stream<String> lines(Method method) {
        Stream<String> head = Stream.of(String.join(TAB, "method", method.name(), method.ownEnds() ? "own" : ""));
        Stream<String> inputs = method.inputs().stream().map(input -> String.join(TAB, "input", input.key(), input.label(),
                input.dimensions().stream().map(Dimension::name).collect(Collectors.joining(LIST)),
                String.join(LIST, input.words()), input.many() ? "many" : "", input.usual().orElse(""),
                input.required() ? "required" : "", input.low().map(String::valueOf).orElse(""),
                input.high().map(String::valueOf).orElse(""), input.unit().map(Unit::name).orElse(""),
                input.rangeSource(), input.example()));
        Stream<String> outputs = method.outputs().stream().map(output -> String.join(TAB, "output", output.key(),
                output.label(), output.unit().name(), output.yesOrNo() ? "yes" : ""));
        return Stream.of(head, inputs, outputs).flatMap(each -> each);
    }

    private static Stream<String> lines(ReferenceTable table) {
        return Stream.concat(Stream.of("table\t" + table.name()), table.rows().stream().map(row -> row.entrySet().stream()
                .sorted(Map.Entry.comparingByKey()).map(cell -> cell.getKey() + TAB + cell.getValue())
                .collect(Collectors.joining(TAB, "row\t", ""))));
    }

    private void take(String kind, List<String> cells) {
        switch (kind) {
            case "method" -> methods.add(new Method(cells.get(0), "", "", "", "", "", "", List.of(), !cells.get(1).isEmpty(),
                    List.of(), List.of(), List.of()));
            case "input" -> extend(Stream.of(input(cells)), Stream.empty());
            case "output" -> extend(Stream.empty(), Stream.of(new Method.Output(cells.get(0), cells.get(1),
                    Unit.valueOf(cells.get(2)), !cells.get(3).isEmpty())));
            case "table" -> tables.add(new ReferenceTable(cells.get(0), "", List.of()));
            case "row" -> addRow(cells);
            default -> throw new IllegalArgumentException("no line of a formulary begins with " + kind);
        }
    }

    private void extend(Stream<Method.Input> inputs, Stream<Method.Output> outputs) {
        Method last = methods.remove(methods.size() - 1);
        methods.add(new Method(last.name(), "", "", "", "", "", "", List.of(), last.ownEnds(), List.of(),
                Stream.concat(last.inputs().stream(), inputs).toList(),
                Stream.concat(last.outputs().stream(), outputs).toList()));
    }

    private void addRow(List<String> cells) {
        Map<String, String> row = new LinkedHashMap<>();
        for (int at = 0; at + 1 < cells.size(); at += 2) {
            row.put(cells.get(at), cells.get(at + 1));
        }
        ReferenceTable last = tables.remove(tables.size() - 1);
        tables.add(new ReferenceTable(last.name(), "", Stream.concat(last.rows().stream(), Stream.of(row)).toList()));
    }

    private static Method.Input input(List<String> cells) {
        return new Method.Input(cells.get(0), cells.get(1),
                Cells.cut(cells.get(2), '|').stream().map(Dimension::valueOf).toList(), Cells.cut(cells.get(3), '|'),
                !cells.get(4).isEmpty(), given(cells.get(5)), !cells.get(6).isEmpty(), given(cells.get(7)).map(Decimal::number),
                given(cells.get(8)).map(Decimal::number), given(cells.get(9)).map(Unit::valueOf), cells.get(10), cells.get(11));
    }

    private static Optional<String> given(String cell) {
        return Optional.of(cell).filter(text -> !text.isEmpty());
    }
}
