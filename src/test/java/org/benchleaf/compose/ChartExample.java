package org.benchleaf.compose;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.Chart;
import org.benchleaf.page.Table;
import org.benchleaf.text.RichText;

/** A Chart as it stands on a page. */
final class ChartExample implements Supplier<Block> {

    @Override
    public Block get() {
        Table table = new Table("ph", "pH, surface", List.of(new Table.Column("Place", false),
                new Table.Column("Before", true), new Table.Column("After", true)),
                List.of(List.of(RichText.of("centre"), RichText.of("4.4"), RichText.of("7.0"))), Optional.empty());
        return new Chart(List.of(new Chart.Drawing("ph-chart", "pH before and after", "One line for each place.", 640, 100, List.of(
                Chart.Mark.line("grid", 200, 10, 200, 80), Chart.Mark.text(0, 40, "start", "centre"),
                Chart.Mark.at("dot", "before", 220, 35, "4.4"), Chart.Mark.at("square", "after", 500, 35, "7.0"),
                Chart.Mark.at("tick", "change", 300, 60, ""), Chart.Mark.at("hold", "hold", 320, 60, ""),
                Chart.Mark.box("bar", "hands", 340, 60, 40, 12, ""),
                Chart.Mark.hatch("hatch", 340, 60, 40, 12), Chart.Mark.reach("span", 480, 520, 35, "7.0"),
                Chart.Mark.head("way", 200, 80, 300, 40), Chart.Mark.swatch(400, 60, 40, 20, "#c8b090", "")),
                "Circles before, squares after.")),
                "ph-numbers", List.of(table), false);
    }
}
