package org.benchleaf.compose.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.compose.part.BathTable;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.model.Part;
import org.benchleaf.page.Chart;
import org.benchleaf.page.Table;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.words.Words;

/** Draws what was read bath by bath: pH of the fresh and of the used bath, below it the conductivity, then the colour. */
public final class BathChart {

    private static final int LEFT = 44;
    private static final int TOP = 62;
    private static final int PH = 190;
    private static final int BARS = 70;
    /** About the width of a letter in the units of the drawing. */
    private static final double LETTER = 8.6;

    private final Sheet sheet;
    private final Part.Bath bath;
    private final BathTable table;
    private final List<Chart.Mark> marks = new ArrayList<>();
    private final double gap;

    public BathChart(Sheet sheet, BathTable table) {
        this.sheet = sheet;
        this.table = table;
        this.bath = table.bath();
        this.gap = (Chart.WIDTH - LEFT) / (double) Math.max(1, bath.readings().size());
    }

    /** The drawing, if there are two baths with a pH to compare. */
    public Optional<Chart> chart(List<Table> beside) {
        List<Double> all = bath.readings().stream().flatMap(reading -> Stream.of(reading.phFresh(), reading.phUsed()))
                .flatMap(Optional::stream).map(value -> value.in(Unit.PH)).toList();
        if (bath.readings().size() < 2 || all.size() < 2) {
            return Optional.empty();
        }
        Words words = sheet.words();
        AxisScale up = AxisScale.holding(all, TOP + PH, TOP + 8);
        legend();
        axis(up);
        for (int i = 0; i < bath.readings().size(); i++) {
            ph(up, bath.readings().get(i), middle(i));
        }
        double y = colours(conductivities(TOP + PH + 34));
        return Optional.of(new Chart(List.of(Chart.Drawing.of(table.id() + "-chart", words.say("baths.title"),
                words.say("baths.description"), y, marks, words.say("baths.note"))), table.id() + "-numbers", beside, false));
    }

    private double middle(int i) {
        return LEFT + gap * (i + 0.5);
    }

    private void legend() {
        Words words = sheet.words();
        marks.add(Chart.Mark.at("dot", "before", 8, 10, ""));
        marks.add(Chart.Mark.text(22, 16, "start", words.say("baths.fresh")));
        marks.add(Chart.Mark.at("square", "after", 8, 34, ""));
        marks.add(Chart.Mark.text(22, 40, "start", words.say("baths.used")));
    }

    private void axis(AxisScale up) {
        for (double mark : up.marks()) {
            marks.add(Chart.Mark.line("grid", LEFT, up.at(mark), Chart.WIDTH, up.at(mark)));
            marks.add(Chart.Mark.text(LEFT - 8, up.at(mark) + 5, "end", sheet.numbers().fixed(mark, up.decimals())));
        }
    }

    private void ph(AxisScale up, Part.BathReading reading, double x) {
        Optional<Double> fresh = reading.phFresh().map(value -> up.at(value.in(Unit.PH)));
        Optional<Double> used = reading.phUsed().map(value -> up.at(value.in(Unit.PH)));
        marks.add(Chart.Mark.text(x, TOP + PH + 24, "middle", sheet.words().say("baths.number", "n", reading.bath())));
        fresh.ifPresent(from -> used.ifPresent(to -> marks.add(Chart.Mark.line("pair", x, from, x, to))));
        boolean crowded = fresh.isPresent() && used.isPresent() && Math.abs(fresh.get() - used.get()) < 20;
        point("dot", "before", x, fresh, reading.phFresh(), crowded ? -4 : 5);
        point("square", "after", x, used, reading.phUsed(), crowded ? 14 : 5);
    }

    private void point(String shape, String tone, double x, Optional<Double> y, Optional<Quantity> value, int drop) {
        y.ifPresent(at -> {
            String number = table.ph(value).orElseThrow();
            marks.add(Chart.Mark.at(shape, tone, x, at, number));
            marks.add(Chart.Mark.text(x + 13, at + drop, "start", number));
        });
    }

    private double conductivities(double top) {
        List<Double> all = bath.readings().stream().flatMap(reading -> reading.conductivity().stream())
                .map(value -> value.in(Unit.MICROSIEMENS_PER_CENTIMETRE)).toList();
        if (all.isEmpty()) {
            return top;
        }
        double most = all.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        double foot = top + 50 + BARS;
        marks.add(Chart.Mark.text(0, top + 20, "start", sheet.words().say("baths.conductivity-axis")));
        marks.add(Chart.Mark.line("rule", LEFT, foot, Chart.WIDTH, foot));
        for (int i = 0; i < bath.readings().size(); i++) {
            Part.BathReading reading = bath.readings().get(i);
            double height = most <= 0 ? 0 : BARS * reading.conductivity().map(value ->
                    value.in(Unit.MICROSIEMENS_PER_CENTIMETRE)).orElse(0.0) / most;
            double x = middle(i);
            table.conductivity(reading).ifPresent(number -> {
                marks.add(Chart.Mark.box("bar", "hands", x - 16, foot - height, 32, height, number));
                marks.add(Chart.Mark.text(x, foot - height - 6, "middle", number));
            });
        }
        return foot + 12;
    }

    /** The colour in words under each bath, as far as the words fit. */
    private double colours(double top) {
        int most = (int) (gap / LETTER);
        List<List<String>> said = bath.readings().stream().map(reading ->
                reading.colour().map(colour -> lines(colour, most)).orElse(List.of())).toList();
        boolean fits = said.stream().flatMap(List::stream).allMatch(line -> line.length() <= most);
        int lines = said.stream().mapToInt(List::size).max().orElse(0);
        if (!fits || lines == 0) {
            return top;
        }
        marks.add(Chart.Mark.text(0, top + 20, "start", sheet.words().say("baths.colour")));
        for (int i = 0; i < said.size(); i++) {
            for (int line = 0; line < said.get(i).size(); line++) {
                marks.add(Chart.Mark.text(middle(i), top + 44 + 20 * line, "middle", said.get(i).get(line)));
            }
        }
        return top + 36 + 20 * lines;
    }

    private static List<String> lines(String text, int most) {
        List<String> lines = new ArrayList<>();
        for (String word : text.split(" ")) {
            String last = lines.isEmpty() ? "" : lines.get(lines.size() - 1) + " " + word;
            if (!lines.isEmpty() && last.length() <= most) {
                lines.set(lines.size() - 1, last);
            } else {
                lines.add(word);
            }
        }
        return lines;
    }
}
