package org.benchleaf.compose.site;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.benchleaf.compose.chart.EvidenceRow;
import org.benchleaf.compose.chart.EvidenceSeries;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.page.Paths;

/**
 * One measure with what the cases tell of it.
 *
 * @param name as the first case names it
 * @param series results that may be compared, the largest series first
 * @param apart results that are compared with none
 */
record EvidenceMeasure(String name, List<EvidenceSeries> series, List<EvidenceRow> apart) {

    EvidenceMeasure {
        series = List.copyOf(series);
        apart = List.copyOf(apart);
    }

    /** Every measure of which a case has numbers, in the order of their names; names that differ only in capitals are one. */
    static List<EvidenceMeasure> all(List<CaseCard> cards) {
        Map<String, List<EvidenceRow>> byMeasure = new TreeMap<>();
        cards.forEach(card -> card.evidence().forEach(one -> byMeasure.computeIfAbsent(Paths.fileName(one.measure()),
                any -> new ArrayList<>()).add(new EvidenceRow(card, one))));
        return byMeasure.values().stream().filter(rows -> rows.stream().anyMatch(row -> !row.evidence().reaches().isEmpty()))
                .map(EvidenceMeasure::of).toList();
    }

    private static EvidenceMeasure of(List<EvidenceRow> rows) {
        Map<String, List<EvidenceRow>> alike = new LinkedHashMap<>();
        rows.stream().filter(row -> row.evidence().isComparable()).forEach(row -> alike.computeIfAbsent(
                Paths.fileName(EvidenceSeries.key(row.evidence())), any -> new ArrayList<>()).add(row));
        return new EvidenceMeasure(rows.get(0).evidence().measure(), alike.values().stream().map(EvidenceSeries::of)
                .sorted(Comparator.comparingInt((EvidenceSeries one) -> -one.cases())).toList(),
                rows.stream().filter(row -> !row.evidence().isComparable()).toList());
    }

    /** Every case that tells of it, each once, in order. */
    List<CaseCard> cases() {
        return Stream.concat(series.stream().flatMap(one -> one.rows().stream()), apart.stream()).map(EvidenceRow::card)
                .distinct().toList();
    }

    /** The cases that have a number of it, in order. */
    List<CaseCard> measured() {
        return Stream.concat(series.stream().flatMap(one -> one.rows().stream()), apart.stream())
                .filter(row -> !row.evidence().reaches().isEmpty()).map(EvidenceRow::card).distinct().toList();
    }

    /** The same cut into pages of so many rows, series before what stands apart. */
    List<EvidenceMeasure> pages(int most) {
        List<EvidenceMeasure> pages = new ArrayList<>();
        List<EvidenceSeries> page = new ArrayList<>();
        int room = most;
        for (EvidenceSeries one : series) {
            for (int from = 0; from < one.rows().size();) {
                int to = Math.min(one.rows().size(), from + room);
                page.add(one.part(from, to));
                room -= to - from;
                from = to;
                if (room == 0) {
                    pages.add(new EvidenceMeasure(name, page, List.of()));
                    page = new ArrayList<>();
                    room = most;
                }
            }
        }
        return withApart(pages, page, room, most);
    }

    private List<EvidenceMeasure> withApart(List<EvidenceMeasure> pages, List<EvidenceSeries> last, int room, int most) {
        List<EvidenceSeries> page = last;
        int from = 0;
        int left = room;
        while (!page.isEmpty() || from < apart.size()) {
            int to = Math.min(apart.size(), from + left);
            pages.add(new EvidenceMeasure(name, page, apart.subList(from, to)));
            page = List.of();
            from = to;
            left = most;
        }
        return pages;
    }
}
