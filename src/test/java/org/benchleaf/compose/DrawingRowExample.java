package org.benchleaf.compose;

import java.util.List;
import java.util.function.Supplier;
import org.benchleaf.compose.chart.DrawingPen;
import org.benchleaf.page.Block;
import org.benchleaf.page.DrawingRow;

/** A DrawingRow as it stands on a page. */
final class DrawingRowExample implements Supplier<Block> {

    @Override
    public Block get() {
        return new DrawingRow(List.of(new DrawingPen().line("sheet", 20, 30, 220, 30).hatched(20, 40, 200, 8)
                .length(20, 50, 60, "30 mm").drawing("step-wash-tray", "The tray, filled to its mark",
                        "The sheet lies 30 mm from the wall.", "From the side.")));
    }
}
