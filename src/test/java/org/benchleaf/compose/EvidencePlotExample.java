package org.benchleaf.compose;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.Chart;
import org.benchleaf.page.EvidencePlot;
import org.benchleaf.page.Link;
import org.benchleaf.page.Table;
import org.benchleaf.text.RichText;

/** An EvidencePlot as it stands on a page. */
final class EvidencePlotExample implements Supplier<Block> {

    @Override
    public Block get() {
        Table table = new Table("like-ph-surface-table", "pH, surface", List.of(new Table.Column("Case", false),
                new Table.Column("When", false), new Table.Column("Mean", true)), List.of(List.of(
                RichText.of("A tide table"), RichText.of("Before"), RichText.of("4.4"))), Optional.empty());
        Chart.Drawing axis = new Chart.Drawing("like-ph-surface-axis", "Scale: pH", "From 4 to 8.", 300, 24,
                List.of(Chart.Mark.text(18, 16, "middle", "4"), Chart.Mark.text(282, 16, "middle", "8")), "");
        Chart.Drawing drawn = new Chart.Drawing("like-ph-surface-1", "A tide table", "Before: 4.4", 300, 28,
                List.of(Chart.Mark.at("dot", "before", 44, 14, "4.4")), "");
        return new EvidencePlot("Circle: before. Square: after.", Optional.of(axis), List.of(new EvidencePlot.Row(
                Link.to("A tide table", "../cases/tide-table/results.html"), "en", "letterpress", "technique-letterpress",
                Optional.of(drawn))), table);
    }
}
