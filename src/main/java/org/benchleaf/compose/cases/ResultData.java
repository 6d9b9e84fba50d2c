package org.benchleaf.compose.cases;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.calculate.Figure;
import org.benchleaf.compose.chart.TimelineChart;
import org.benchleaf.compose.part.BathTable;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.compose.part.ColourTable;
import org.benchleaf.compose.part.DataTable;
import org.benchleaf.compose.part.Licences;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.part.TrialTables;
import org.benchleaf.derive.FigureTable;
import org.benchleaf.derive.figure.WorkedResult;
import org.benchleaf.json.JsonText;
import org.benchleaf.model.Part;
import org.benchleaf.model.Step;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.Paths;
import org.benchleaf.quantity.Amount;
import org.benchleaf.words.Words;

/** The tables and files of a case's results. */
final class ResultData {

    private final Sheet sheet;
    private final CaseDesk desk;

    ResultData(Sheet sheet, CaseDesk desk) {
        this.sheet = sheet;
        this.desk = desk;
    }

    /** One for each result, in the order of the case. */
    List<ResultSections> results() {
        List<ResultSections> sections = new ArrayList<>();
        List<WorkedResult> results = desk.worked().results();
        for (int i = 0; i < results.size(); i++) {
            sections.add(new ResultSections(sheet, desk, results.get(i),
                    "result-" + (i + 1) + "-" + Paths.fileName(results.get(i).source().measure().word())));
        }
        return sections;
    }

    /** Each step's baths with readings. */
    List<BathTable> baths() {
        List<BathTable> tables = new ArrayList<>();
        for (Step step : desk.treatment().steps()) {
            step.part(Part.Bath.class).filter(bath -> !bath.readings().isEmpty())
                    .ifPresent(bath -> tables.add(new BathTable(sheet, desk, step, bath)));
        }
        return tables;
    }

    /** Each trial with its arms. */
    List<TrialTables> trials() {
        return desk.treatment().trials().stream().map(trial -> new TrialTables(sheet, desk, trial)).toList();
    }

    /** Every table of the case. */
    List<DataTable> tables() {
        return Stream.of(trials().stream().flatMap(trial -> trial.tables().stream()),
                results().stream().flatMap(result -> result.tables().stream()),
                baths().stream().map(BathTable::data), Stream.of(new TimelineChart(sheet, desk).data()))
                .flatMap(tables -> tables).toList();
    }

    /** The files beside the page: each table with its description, and every worked-out figure. */
    List<DataFile> files() {
        List<DataFile> files = new ArrayList<>();
        for (DataTable table : hasTables() ? tables() : List.<DataTable>of()) {
            files.add(new DataFile(desk.path(table.file()), table.csv()));
            files.add(new DataFile(desk.path(table.file() + "-metadata.json"), table.metadata(
                    desk.treatment().language(), table.about(Words.in(desk.treatment().language())),
                    Optional.of(desk.treatment().publication().licence()), desk.basis())));
        }
        if (hasFigures()) {
            files.add(new DataFile(desk.path("figures.json"), new String(
                    new FigureTable(desk.library()).json(desk.worked()), StandardCharsets.UTF_8)));
        }
        return files;
    }

    boolean hasFigures() {
        return desk.clearance().allows(Clearance.Output.FIGURES);
    }

    private boolean hasTables() {
        return desk.clearance().allows(Clearance.Output.DATA);
    }

    /** The results as a data set, in words that the page tells too. */
    Map<String, Object> linkedData() {
        Words words = sheet.words();
        List<Object> files = new ArrayList<>();
        if (hasTables()) {
            tables().forEach(table -> files.add(download("text/csv", table.file())));
        }
        if (hasFigures()) {
            files.add(download("application/json", "figures.json"));
        }
        return JsonText.object("@context", "https://schema.org", "@type", "Dataset", "name", desk.treatment().title(),
                "description", words.say("results.lead"),
                "license", Licences.address(desk.treatment().publication().licence()),
                "inLanguage", desk.treatment().language(), "isBasedOn", desk.basis(),
                "creator", JsonText.object("@type", "Organization", "name", sheet.library().studio().name()),
                "variableMeasured", desk.worked().results().stream().flatMap(this::variables).toList(),
                "distribution", files);
    }

    private Stream<Object> variables(WorkedResult result) {
        return result.figures().values().stream().map(figure -> variable(result, figure));
    }

    private Object variable(WorkedResult result, Figure figure) {
        Amount amount = sheet.amount(figure);
        return JsonText.object("@type", "PropertyValue", "name", figure.label(), "value", amount.number(),
                "unitText", amount.unit().isEmpty() ? null : amount.unit(),
                "measurementTechnique", technique(result));
    }

    private String technique(WorkedResult result) {
        if (result.source() instanceof org.benchleaf.model.Result.Readings readings) {
            return readings.method();
        }
        if (result.source() instanceof org.benchleaf.model.Result.Size size) {
            return size.method();
        }
        return result.source() instanceof org.benchleaf.model.Result.Colour colour
                ? new ColourTable(sheet, "", colour, result).conditions() : null;
    }

    /** One of the files, which lie beside the page in the language of the original. */
    private Object download(String format, String file) {
        return JsonText.object("@type", "DataDownload", "encodingFormat", format, "contentUrl", sheet.way(desk.path(file)));
    }
}
