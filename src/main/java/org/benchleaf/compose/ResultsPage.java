package org.benchleaf.compose;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.derive.FigureTable;
import org.benchleaf.derive.WorkedResult;
import org.benchleaf.model.Finding;
import org.benchleaf.model.Part;
import org.benchleaf.model.Result;
import org.benchleaf.model.Rule;
import org.benchleaf.model.Step;

/** What was measured, how, and what follows: charts with their tables, figures with their working, data as files. */
final class ResultsPage implements CasePageMaker {

    @Override
    public String kind() {
        return "results";
    }

    @Override
    public String file() {
        return "results.html";
    }

    @Override
    public boolean applies(CaseDesk desk) {
        return desk.clearance().allows(Clearance.Output.RESULTS) && !desk.treatment().results().isEmpty();
    }

    @Override
    public Page make(CaseDesk desk) {
        Sheet sheet = desk.sheet(this);
        Words words = sheet.words();
        sheet.add(new Opening(Optional.of(words.say("case-page.results")), desk.treatment().title(),
                Optional.of(words.say("results.lead")), List.of(), Optional.empty()));
        sections(sheet, desk).forEach(sheet::add);
        baths(sheet, desk).ifPresent(sheet::add);
        findings(sheet, desk).ifPresent(sheet::add);
        data(sheet, desk).ifPresent(sheet::add);
        sheet.linkedData(linkedData(sheet, desk));
        return desk.finish(sheet, this, words.say("results.page-description", "case", desk.treatment().title()));
    }

    @Override
    public List<DataFile> files(CaseDesk desk) {
        Sheet sheet = desk.sheet(this);
        List<DataFile> files = new ArrayList<>();
        for (DataTable table : tables(sheet, desk)) {
            files.add(new DataFile(desk.path(table.id() + ".csv"), table.csv()));
            files.add(new DataFile(desk.path(table.id() + ".csv-metadata.json"), table.metadata(
                    desk.treatment().language(), desk.treatment().publication().licence())));
        }
        if (hasFigures(desk)) {
            files.add(new DataFile(desk.path("figures.json"), new String(
                    new FigureTable(desk.library()).json(desk.worked()), StandardCharsets.UTF_8)));
        }
        return files;
    }

    /** The figures tell strengths, so they are public only where strengths are, or where the sheets tell them anyway. */
    private static boolean hasFigures(CaseDesk desk) {
        return desk.clearance().allows(Clearance.Output.FIGURES) && (desk.clearance().strengthsForPublic()
                || desk.clearance().allows(Clearance.Output.STEP_SHEET));
    }

    private static List<DataTable> tables(Sheet sheet, CaseDesk desk) {
        List<DataTable> tables = new ArrayList<>();
        List<WorkedResult> results = desk.worked().results();
        for (int i = 0; i < results.size(); i++) {
            if (results.get(i).source() instanceof Result.Readings readings) {
                tables.add(new ReadingsChart(sheet, id(results.get(i), i), readings).data());
            } else if (results.get(i).source() instanceof Result.Colour colour) {
                tables.add(new ColourChart(sheet, id(results.get(i), i), colour, results.get(i)).data());
            }
        }
        for (Step step : desk.treatment().steps()) {
            step.part(Part.Bath.class).filter(bath -> !bath.readings().isEmpty()).ifPresent(bath ->
                    tables.add(baths(sheet, step, bath).data()));
        }
        tables.add(new TimelineChart(sheet, desk).data());
        return tables;
    }

    private static String id(WorkedResult result, int number) {
        return "result-" + (number + 1) + "-" + Paths.slug(result.source().measure());
    }

    private static Link file(Sheet sheet, CaseDesk desk, DataTable table) {
        return sheet.link(sheet.words().say("results.file", "what", table.caption()), desk.path(table.id() + ".csv"));
    }

    private List<Section> sections(Sheet sheet, CaseDesk desk) {
        List<Section> sections = new ArrayList<>();
        List<WorkedResult> results = desk.worked().results();
        for (int i = 0; i < results.size(); i++) {
            String id = id(results.get(i), i);
            sections.add(new Section("section-" + id, sheet.words().term("measure", results.get(i).source().measure()),
                    Optional.empty(), results.get(i).source().ask(new Blocks(sheet, desk, results.get(i), id))));
        }
        return sections;
    }

    /** What a result of each kind has to show. */
    private record Blocks(Sheet sheet, CaseDesk desk, WorkedResult worked, String id)
            implements Result.Kinds<List<Block>> {

        @Override
        public List<Block> readings(Result.Readings result) {
            ReadingsChart readings = new ReadingsChart(sheet, id, result);
            DataTable data = readings.data();
            Table table = data.table(Optional.of(file(sheet, desk, data)));
            List<Block> blocks = new ArrayList<>();
            blocks.add(new Facts(how(Optional.of(result.method()), result.instrument(), result.equilibrated()
                    .map(time -> sheet.numbers().duration(time).text()), result.note())));
            readings.chart(table).ifPresentOrElse(blocks::add, () -> blocks.add(table));
            return rest(blocks);
        }

        @Override
        public List<Block> colour(Result.Colour result) {
            ColourChart colours = new ColourChart(sheet, id, result, worked);
            DataTable data = colours.data();
            Table table = data.table(Optional.of(file(sheet, desk, data)));
            List<Block> blocks = new ArrayList<>();
            List<Fact> facts = how(Optional.empty(), result.instrument(), result.equilibrated()
                    .map(time -> sheet.numbers().duration(time).text()), result.note());
            facts.add(0, Fact.of(sheet.words().say("results.conditions"), String.join(", ", java.util.stream.Stream.of(
                    result.formula(), result.illuminant(), result.observer(), result.geometry(),
                    result.aperture().map(aperture -> sheet.numbers().written(aperture).text()),
                    result.readingsEach().map(each -> sheet.words().count("results.readings-each", each)))
                    .flatMap(Optional::stream).toList())));
            blocks.add(new Facts(facts));
            colours.chart(table).ifPresentOrElse(blocks::add, () -> blocks.add(table));
            return rest(blocks);
        }

        @Override
        public List<Block> size(Result.Size result) {
            List<Fact> facts = how(Optional.of(result.method()), Optional.empty(), Optional.empty(), result.note());
            facts.add(Fact.of(sheet.words().say("results.before"), size(result.heightBefore(), result.widthBefore(),
                    result.humidityBefore())));
            facts.add(Fact.of(sheet.words().say("results.after"), size(result.heightAfter(), result.widthAfter(),
                    result.humidityAfter())));
            return rest(new ArrayList<>(List.of(new Facts(facts))));
        }

        private String size(org.benchleaf.quantity.Quantity height, org.benchleaf.quantity.Quantity width,
                Optional<org.benchleaf.quantity.Quantity> humidity) {
            NumberText numbers = sheet.numbers();
            return sheet.words().say("size", "height", numbers.written(height).text(), "width",
                    numbers.written(width).text()) + humidity.map(value -> sheet.words().say("results.at-humidity",
                    "humidity", numbers.written(value).text())).orElse("");
        }

        @Override
        public List<Block> reserve(Result.Reserve result) {
            return rest(new ArrayList<>(List.of(new Facts(how(result.method(), Optional.empty(), Optional.empty(),
                    result.note())))));
        }

        @Override
        public List<Block> words(Result.Words result) {
            List<Fact> facts = how(Optional.of(result.method()), Optional.empty(), Optional.empty(), result.note());
            String none = sheet.words().say("result.not-reported");
            facts.add(Fact.of(sheet.words().say("results.before"), result.before().orElse(none)));
            facts.add(Fact.of(sheet.words().say("results.after"), result.after().orElse(none)));
            return rest(new ArrayList<>(List.of(new Facts(facts))));
        }

        @Override
        public List<Block> notMeasured(Result.NotMeasured result) {
            return List.of(new Facts(List.of(Fact.of(sheet.words().say("results.not-measured"), result.because()))));
        }

        private List<Fact> how(Optional<String> method, Optional<String> instrument, Optional<String> rested,
                Optional<String> note) {
            List<Fact> facts = new ArrayList<>();
            method.ifPresent(text -> facts.add(Fact.of(sheet.words().say("results.method"), text)));
            instrument.flatMap(id -> desk.treatment().instruments().stream().filter(one -> one.id().equals(id))
                    .findFirst()).ifPresent(one -> facts.add(Fact.of(sheet.words().say("results.instrument"),
                    one.is() + (one.calibrated().isEmpty() ? "" : sheet.words().say("results.calibrated", "days",
                            String.join(", ", one.calibrated().stream().map(sheet.numbers()::date).toList()))))));
            rested.ifPresent(time -> facts.add(Fact.of(sheet.words().say("results.rested"), time)));
            note.ifPresent(text -> facts.add(Fact.of(sheet.words().say("results.note"), text)));
            return facts;
        }

        /** The figures with their working, and what must be said beside them. */
        private List<Block> rest(List<Block> blocks) {
            blocks.removeIf(block -> block instanceof Facts facts && facts.facts().isEmpty());
            worked.figures().values().stream().filter(figure -> !sheet.shows(figure.id())).map(sheet::working)
                    .forEach(blocks::add);
            worked.cautions().forEach(caution -> blocks.add(new Note("plain", sheet.words().say("notice.word"),
                    Html.ofText(sheet.words().say("caution." + caution)))));
            return blocks;
        }
    }

    private static BathChart baths(Sheet sheet, Step step, Part.Bath bath) {
        return new BathChart(sheet, "baths-" + Paths.slug(step.id()),
                sheet.words().term("step-kind", step.kind().word()), bath);
    }

    private static Optional<Section> baths(Sheet sheet, CaseDesk desk) {
        List<Block> blocks = new ArrayList<>();
        for (Step step : desk.treatment().steps()) {
            step.part(Part.Bath.class).filter(bath -> !bath.readings().isEmpty()).ifPresent(bath -> {
                BathChart chart = baths(sheet, step, bath);
                DataTable data = chart.data();
                Table table = data.table(Optional.of(file(sheet, desk, data)));
                chart.chart(table).ifPresentOrElse(blocks::add, () -> blocks.add(table));
            });
        }
        Words words = sheet.words();
        return blocks.isEmpty() ? Optional.empty() : Optional.of(new Section("baths", words.say("baths.heading"),
                Optional.of(words.say("baths.lead")), blocks));
    }

    /** How the rules of the trade were answered, for colleagues. */
    private static Optional<Section> findings(Sheet sheet, CaseDesk desk) {
        Words words = sheet.words();
        List<Fact> facts = new ArrayList<>();
        for (Finding finding : desk.worked().findings()) {
            String statement = desk.library().rules().stream().filter(rule -> rule.id().equals(finding.rule()))
                    .findFirst().map(Rule::statement).orElse(finding.what());
            facts.add(new Fact(statement, new Html("<a href=\"" + Html.escape(sheet.way(Paths.RULES + "#"
                    + RulesPage.anchor(finding.rule()))) + "\">" + Html.escape(words.say("findings.rule", "rule",
                    finding.rule())) + "</a>: " + Html.escape(finding.reason().orElse(finding.what())))));
        }
        return facts.isEmpty() ? Optional.empty() : Optional.of(new Section("findings", words.say("findings.heading"),
                Optional.of(words.say("findings.lead")), List.of(new Facts(facts))));
    }

    private static Optional<Section> data(Sheet sheet, CaseDesk desk) {
        List<LinkList.Entry> links = new ArrayList<>();
        for (DataTable table : tables(sheet, desk)) {
            links.add(new LinkList.Entry(sheet.link(table.id() + ".csv", desk.path(table.id() + ".csv")), table.caption()));
        }
        Words words = sheet.words();
        if (hasFigures(desk)) {
            links.add(new LinkList.Entry(sheet.link("figures.json", desk.path("figures.json")),
                    words.say("results.figures-about")));
        }
        return Optional.of(new Section("data", words.say("results.data"), Optional.of(words.say("results.data-lead",
                "licence", desk.treatment().publication().licence())), List.of(new LinkList(links))));
    }

    private static String linkedData(Sheet sheet, CaseDesk desk) {
        return Json.text(Json.object("@context", "https://schema.org", "@type", "Dataset",
                "name", desk.treatment().title(), "description", desk.treatment().summary(),
                "license", desk.treatment().publication().licence(), "inLanguage", desk.treatment().language(),
                "variableMeasured", desk.treatment().results().stream().map(result -> Json.object(
                        "@type", "PropertyValue", "name", sheet.words().term("measure", result.measure()))).toList(),
                "distribution", tables(sheet, desk).stream().map(table -> Json.object("@type", "DataDownload",
                        "encodingFormat", "text/csv", "contentUrl", table.id() + ".csv")).toList()));
    }
}
