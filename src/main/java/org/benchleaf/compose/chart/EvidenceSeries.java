package org.benchleaf.compose.chart;

import java.util.List;
import org.benchleaf.compose.part.Evidence;
import org.benchleaf.page.Paths;

/**
 * Results that may be compared, drawn on one scale.
 *
 * @param rows a case and its result, in the order of the cases; a page may show a part of them
 * @param cases how many there are on all pages
 * @param readings how many readings they rest on, on all pages
 * @param scale that holds the numbers of all pages
 */
public record EvidenceSeries(List<EvidenceRow> rows, int cases, int readings, AxisScale scale) {

    static final int WIDTH = 300;
    private static final int START = 18;

    public EvidenceSeries {
        rows = List.copyOf(rows);
    }

    /** All rows, none of them without numbers. */
    public static EvidenceSeries of(List<EvidenceRow> rows) {
        List<Double> numbers = rows.stream().flatMap(row -> row.evidence().reaches().stream())
                .flatMap(reach -> reach.numbers().stream()).toList();
        return new EvidenceSeries(rows, (int) rows.stream().map(row -> row.card().id()).distinct().count(),
                rows.stream().mapToInt(row -> row.evidence().readings()).sum(),
                AxisScale.holding(numbers, START, WIDTH - START));
    }

    /** A part of the rows, on the same scale. */
    public EvidenceSeries part(int from, int to) {
        return new EvidenceSeries(rows.subList(from, to), cases, readings, scale);
    }

    public Evidence first() {
        return rows.get(0).evidence();
    }

    /** The anchor of the series on its pages. */
    public String anchor() {
        return "like-" + Paths.fileName(key(first()));
    }

    /** What two results have in common that may be compared. */
    public static String key(Evidence evidence) {
        return evidence.kind() + " " + evidence.like() + " " + evidence.unit();
    }
}
