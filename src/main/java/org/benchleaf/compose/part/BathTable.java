package org.benchleaf.compose.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.calculate.Figure;
import org.benchleaf.model.Part;
import org.benchleaf.model.Recipe;
import org.benchleaf.model.Solution;
import org.benchleaf.model.Step;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Paths;
import org.benchleaf.page.Working;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.words.NumberText;
import org.benchleaf.words.StepTitle;
import org.benchleaf.words.Words;

/** What was read in the baths of one step, a table and a file. */
public final class BathTable {

    private final Sheet sheet;
    private final CaseDesk desk;
    private final Step step;
    private final Part.Bath bath;

    public BathTable(Sheet sheet, CaseDesk desk, Step step, Part.Bath bath) {
        this.sheet = sheet;
        this.desk = desk;
        this.step = step;
        this.bath = bath;
    }

    public String id() {
        return "baths-" + Paths.fileName(step.id());
    }

    public Part.Bath bath() {
        return bath;
    }

    /** How it was planned, how much water one bath took and how much of it came to each gram of paper. */
    public List<Fact> planned() {
        List<Fact> facts = new ArrayList<>(new PartFacts(sheet, desk).bath(bath));
        volume().ifPresent(volume -> facts.add(amount("baths.volume", volume)));
        ratio().ifPresent(ratio -> facts.add(amount("baths.ratio", ratio)));
        return facts;
    }

    /** How that water was worked out. */
    public Stream<Working> workings() {
        WorkingMaker maker = new WorkingMaker(sheet);
        return Stream.concat(volume().stream(), ratio().stream()).map(maker::make);
    }

    private Optional<Figure> volume() {
        return figure("tray-volume").or(() -> figure("volume"));
    }

    private Optional<Figure> ratio() {
        return figure("liquor");
    }

    private Optional<Figure> figure(String name) {
        return sheet.figure(step.id() + "." + name);
    }

    private Fact amount(String label, Figure figure) {
        return Fact.of(sheet.words().say(label), sheet.amount(figure).text());
    }

    public DataTable data() {
        Words words = sheet.words();
        List<DataTable.Column> columns = new ArrayList<>(List.of(
                DataTable.Column.numbers(words.say("baths.bath"), "bath"),
                DataTable.Column.numbers(words.say("baths.fresh"), "pH fresh"),
                DataTable.Column.numbers(words.say("baths.used"), "pH used"),
                new DataTable.Column(words.say("baths.conductivity"), "conductivity", "µS/cm", true)));
        if (sheet.tellsStrengths()) {
            columns.add(new DataTable.Column(added(words), "stock added", "mL", true));
        }
        columns.add(DataTable.Column.words(words.say("baths.colour"), "colour"));
        return new DataTable(id(), words.say("baths.caption", "step", new StepTitle(words, desk.treatment()).of(step)),
                columns, bath.readings().stream().map(this::row).toList());
    }

    /** What was added to the bath, by its name where its recipe brings it to a pH with something. */
    private String added(Words words) {
        return desk.treatment().solution(bath.of()).map(Solution::recipe).filter(Recipe.Adjust.class::isInstance)
                .map(Recipe.Adjust.class::cast)
                .map(recipe -> words.say("baths.added-of", "stock", new HazardMaker(sheet, desk).name(recipe.with())))
                .orElseGet(() -> words.say("baths.added"));
    }

    private List<DataTable.Cell> row(Part.BathReading reading) {
        List<DataTable.Cell> cells = new ArrayList<>(List.of(DataTable.Cell.number(String.valueOf(reading.bath())),
                cell(ph(reading.phFresh())), cell(ph(reading.phUsed())), cell(conductivity(reading))));
        if (sheet.tellsStrengths()) {
            cells.add(cell(reading.added().map(added -> number(added, Unit.MILLILITRE, 1))));
        }
        cells.add(reading.colour().map(DataTable.Cell::words).orElse(cell(Optional.empty())));
        return cells;
    }

    private DataTable.Cell cell(Optional<String> number) {
        return number.map(DataTable.Cell::number)
                .orElse(DataTable.Cell.missing(sheet.words().say("results.not-read")));
    }

    /** A pH as the table shows it. */
    public Optional<String> ph(Optional<Quantity> value) {
        return value.map(one -> number(one, Unit.PH, 1));
    }

    /** A conductivity as the table shows it. */
    public Optional<String> conductivity(Part.BathReading reading) {
        return reading.conductivity().map(one -> number(one, Unit.MICROSIEMENS_PER_CENTIMETRE, 0));
    }

    private String number(Quantity value, Unit unit, int decimals) {
        return sheet.numbers().fixed(value.in(unit), Math.max(decimals,
                Math.min(3, NumberText.decimalsOf(value.in(unit)))));
    }
}
