package org.benchleaf.compose.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.benchleaf.compose.chart.EvidenceRow;
import org.benchleaf.compose.chart.EvidenceSeries;
import org.benchleaf.compose.chart.EvidenceStrip;
import org.benchleaf.compose.part.DataTable;
import org.benchleaf.compose.part.Evidence;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Facts;
import org.benchleaf.page.Paths;
import org.benchleaf.page.Table;
import org.benchleaf.text.Inline;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** The numbers of evidence as tables: those of a series for the page, those of a whole measure as a file. */
final class EvidenceTables {

    private final Sheet sheet;
    private final Words words;

    EvidenceTables(Sheet sheet) {
        this.sheet = sheet;
        this.words = sheet.words();
    }

    /** One row for each time, spot or direction; columns in which nothing would stand are left out. */
    Table of(EvidenceSeries series, String caption) {
        String kind = series.first().kind();
        String unit = series.first().unit().isEmpty() ? "" : " (" + series.first().unit() + ")";
        EvidenceStrip strip = new EvidenceStrip(sheet, series);
        List<Table.Column> columns = new ArrayList<>(List.of(new Table.Column(words.say("evidence.case"), false),
                new Table.Column(words.say("evidence.of-" + kind), false)));
        List<Function<Evidence.Reach, String>> cells = new ArrayList<>();
        for (String name : List.of("count", "low", "middle", "high", "total")) {
            Function<Evidence.Reach, String> cell = cell(name, strip);
            if (reaches(series).anyMatch(reach -> !cell.apply(reach).isEmpty())) {
                String header = words.say(name.equals("middle") ? "evidence.middle-" + kind : "evidence." + name);
                columns.add(new Table.Column(name.equals("count") || name.equals("total") ? header : header + unit, true));
                cells.add(cell);
            }
        }
        return new Table(series.anchor() + "-table", words.say("evidence.table", "what", caption), columns,
                series.rows().stream().flatMap(row ->
                row.evidence().reaches().stream().map(reach -> row(row, reach, strip, cells))).toList(), Optional.empty());
    }

    private static Stream<Evidence.Reach> reaches(EvidenceSeries series) {
        return series.rows().stream().flatMap(row -> row.evidence().reaches().stream());
    }

    private static Function<Evidence.Reach, String> cell(String name, EvidenceStrip strip) {
        return switch (name) {
            case "count" -> Evidence.Reach::count;
            case "total" -> Evidence.Reach::total;
            case "low" -> reach -> reach.low().isEmpty() ? "" : strip.number(reach.low());
            case "high" -> reach -> reach.high().isEmpty() ? "" : strip.number(reach.high());
            default -> reach -> reach.middle().isEmpty() ? "" : strip.middle(reach);
        };
    }

    private List<RichText> row(EvidenceRow row, Evidence.Reach reach, EvidenceStrip strip,
            List<Function<Evidence.Reach, String>> cells) {
        List<RichText> html = new ArrayList<>(List.of(link(row), RichText.of(strip.of(row.evidence(), reach))));
        cells.forEach(cell -> {
            String text = cell.apply(reach);
            html.add(RichText.of(text.isEmpty() ? words.say("evidence.not-told") : text));
        });
        return html;
    }

    private RichText link(EvidenceRow row) {
        return RichText.of(new Inline.Hyperlink(sheet.way(row.evidence().address()), Optional.empty(),
                Optional.of(row.card().language()), List.of(new Inline.Text(row.card().title()))));
    }

    /** What is compared with nothing, and why. */
    Table apart(List<EvidenceRow> rows) {
        return new Table("apart-table", words.say("evidence.apart-caption"), words.columns("evidence.case", "evidence.why"),
                rows.stream().map(row -> List.of(link(row), RichText.of(why(row.evidence())))).toList(), Optional.empty());
    }

    private String why(Evidence evidence) {
        String why = words.say("evidence-apart." + evidence.apart());
        return evidence.because().isEmpty() ? why : words.say("evidence.because", "why", why, "because", evidence.because());
    }

    /** Every number of a measure that may be given out, as a file; empty if there is none. */
    Optional<DataTable> file(EvidenceMeasure measure, String name) {
        List<EvidenceRow> given = Stream.concat(measure.series().stream().flatMap(one -> one.rows().stream()), measure.apart().stream())
                .filter(row -> !row.evidence().file().isEmpty() && !row.evidence().reaches().isEmpty()).toList();
        if (given.isEmpty()) {
            return Optional.empty();
        }
        Map<String, String> behind = new LinkedHashMap<>();
        given.stream().flatMap(row -> row.evidence().reaches().stream()).flatMap(reach -> reach.read().stream())
                .forEach(read -> behind.putIfAbsent(read.column(), read.unit()));
        return Optional.of(new DataTable(Paths.fileName(measure.name()), words.say("evidence.file-caption", "measure", name),
                columns(behind), given.stream().flatMap(row -> row.evidence().reaches().stream()
                        .map(reach -> cells(row, reach, behind.keySet()))).toList()));
    }

    /** What each column of a file holds, for readers. */
    Facts about(DataTable file) {
        return new Facts(file.columns().stream().map(column -> Fact.of(column.name(), column.unit().isEmpty() ? column.header()
                : words.say("evidence.in-unit", "method", column.header(), "unit", column.unit()))).toList());
    }

    /**
     * The columns of a file.
     *
     * @param behind those of what the numbers were worked out from, with their units
     */
    private List<DataTable.Column> columns(Map<String, String> behind) {
        List<DataTable.Column> columns = new ArrayList<>();
        for (String name : List.of("title", "technique", "paper", "treatment", "compared by", "apart", "of", "form")) {
            columns.add(DataTable.Column.words(words.say("evidence-column." + name.replace(' ', '-')), name));
        }
        for (String name : List.of("readings", "least", "middle", "most")) {
            columns.add(DataTable.Column.numbers(words.say("evidence-column." + name), name));
        }
        columns.add(DataTable.Column.words(words.say("evidence-column.unit"), "unit"));
        behind.forEach((name, unit) -> columns.add(new DataTable.Column(words.say("evidence-column." + name.replace(' ', '-')),
                name, unit, true)));
        for (String name : List.of("page", "data")) {
            columns.add(DataTable.Column.words(words.say("evidence-column." + name), name));
        }
        return columns;
    }

    private List<DataTable.Cell> cells(EvidenceRow row, Evidence.Reach reach, Set<String> behind) {
        Evidence evidence = row.evidence();
        EvidenceChoices choices = new EvidenceChoices(words);
        Stream<String> behindIt = behind.stream().map(name -> reach.read().stream().filter(read -> read.column().equals(name))
                .map(Evidence.Read::number).findFirst().orElse(""));
        return Stream.of(Stream.of(row.card().title(), row.card().technique(), row.card().paper(), choices.treatment(row.card()),
                evidence.like(), evidence.apart(), reach.of(), reach.form(), reach.count(), reach.low(), reach.middle(),
                reach.high(), evidence.unit()), behindIt, Stream.of(evidence.address(), evidence.file())).flatMap(cells -> cells)
                .map(EvidenceTables::oneLine).toList();
    }

    /** A row of the file is one line, so that a case taken down can leave it line by line. */
    private static DataTable.Cell oneLine(String text) {
        return DataTable.Cell.words(text.strip().replaceAll("\\s++", " "));
    }
}
