package org.benchleaf.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.model.Part;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Draws what was read bath by bath: the pH of the fresh and of the used bath. */
final class BathChart {

    private static final int WIDTH = 560;
    private static final int HEIGHT = 220;
    private static final int LEFT = 60;

    private final Sheet sheet;
    private final String id;
    private final String step;
    private final Part.Bath bath;

    BathChart(Sheet sheet, String id, String step, Part.Bath bath) {
        this.sheet = sheet;
        this.id = id;
        this.step = step;
        this.bath = bath;
    }

    /** The readings as a table and a file. */
    DataTable data() {
        Words words = sheet.words();
        List<List<String>> rows = new ArrayList<>();
        for (Part.BathReading reading : bath.readings()) {
            rows.add(List.of(String.valueOf(reading.bath()), number(reading.phFresh(), Unit.PH),
                    number(reading.phUsed(), Unit.PH), number(reading.conductivity(), Unit.MICROSIEMENS_PER_CENTIMETRE),
                    number(reading.added(), Unit.MILLILITRE), reading.colour().orElse(words.say("results.not-read"))));
        }
        return new DataTable(id, words.say("baths.caption", "step", step), List.of(
                new DataTable.Column(words.say("baths.bath"), "bath", "", true),
                new DataTable.Column(words.say("baths.fresh"), "pH fresh", "", true),
                new DataTable.Column(words.say("baths.used"), "pH used", "", true),
                new DataTable.Column(words.say("baths.conductivity"), "conductivity", "µS/cm", true),
                new DataTable.Column(words.say("baths.added"), "stock added", "mL", true),
                new DataTable.Column(words.say("baths.colour"), "colour", "", false)), rows);
    }

    private String number(Optional<Quantity> value, Unit unit) {
        int decimals = unit == Unit.MICROSIEMENS_PER_CENTIMETRE ? 0 : 1;
        return value.map(one -> sheet.numbers().fixed(one.in(unit), Math.max(decimals,
                NumberText.decimalsOf(one.in(unit)))))
                .orElse(sheet.words().say("results.not-read"));
    }

    /** The drawing, if there are two baths with a pH to compare. */
    Optional<Chart> chart(Table table) {
        List<Double> all = new ArrayList<>();
        bath.readings().forEach(reading -> {
            reading.phFresh().ifPresent(value -> all.add(value.in(Unit.PH)));
            reading.phUsed().ifPresent(value -> all.add(value.in(Unit.PH)));
        });
        if (bath.readings().size() < 2 || all.size() < 2) {
            return Optional.empty();
        }
        Words words = sheet.words();
        Scale up = Scale.holding(all, HEIGHT, 20);
        double gap = (WIDTH - LEFT - 40.0) / bath.readings().size();
        List<Chart.Mark> marks = new ArrayList<>();
        for (double mark : up.marks()) {
            marks.add(Chart.Mark.line("grid", LEFT, up.at(mark), WIDTH - 20, up.at(mark)));
            marks.add(Chart.Mark.text(LEFT - 10, up.at(mark) + 5, "end", sheet.numbers().rough(mark)));
        }
        for (int i = 0; i < bath.readings().size(); i++) {
            Part.BathReading reading = bath.readings().get(i);
            double x = LEFT + gap * (i + 0.5);
            marks.add(Chart.Mark.text(x, HEIGHT + 22, "middle", words.say("baths.number", "n", reading.bath())));
            if (reading.phFresh().isPresent() && reading.phUsed().isPresent()) {
                marks.add(Chart.Mark.line("pair", x, up.at(reading.phFresh().get().in(Unit.PH)), x,
                        up.at(reading.phUsed().get().in(Unit.PH))));
            }
            reading.phFresh().ifPresent(value -> marks.add(Chart.Mark.at("dot", "before", x,
                    up.at(value.in(Unit.PH)), number(reading.phFresh(), Unit.PH))));
            reading.phUsed().ifPresent(value -> marks.add(Chart.Mark.at("square", "after", x,
                    up.at(value.in(Unit.PH)), number(reading.phUsed(), Unit.PH))));
        }
        marks.add(Chart.Mark.at("dot", "before", LEFT + 6, HEIGHT + 46, ""));
        marks.add(Chart.Mark.text(LEFT + 18, HEIGHT + 51, "start", words.say("baths.fresh")));
        marks.add(Chart.Mark.at("square", "after", LEFT + 186, HEIGHT + 46, ""));
        marks.add(Chart.Mark.text(LEFT + 198, HEIGHT + 51, "start", words.say("baths.used")));
        return Optional.of(new Chart(id + "-chart", words.say("baths.title"), words.say("baths.description"), WIDTH,
                HEIGHT + 66, marks, words.say("baths.note"), table));
    }
}
