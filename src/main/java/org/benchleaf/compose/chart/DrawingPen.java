package org.benchleaf.compose.chart;

import java.util.ArrayList;
import java.util.List;
import org.benchleaf.page.Chart;

/**
 * Draws one line drawing of a step, in the units of a phone 240 wide, so that its letters are as large as the text there
 * and still readable beside the text on paper.
 */
public final class DrawingPen {

    /** Units across each drawing. */
    static final int WIDTH = 240;
    /** From one line of words to the next. */
    static final int LINE = 16;
    /** About the width of a letter, rather more than less. */
    private static final double LETTER = 7.2;

    private final List<Chart.Mark> marks = new ArrayList<>();
    private double lowest;

    /** The length in units, kept between two ends so that it can be drawn. */
    static double within(double length, double least, double most) {
        return Math.max(least, Math.min(most, length));
    }

    /** How wide a line of words is, about. */
    static double wide(String words) {
        return LETTER * words.length();
    }

    public DrawingPen line(String tone, double x, double y, double x2, double y2) {
        marks.add(Chart.Mark.line(tone, x, y, x2, y2));
        return below(Math.max(y, y2) + 3);
    }

    DrawingPen box(String tone, double x, double y, double width, double height) {
        marks.add(Chart.Mark.box("bar", tone, x, y, width, height, ""));
        return below(y + height + 2);
    }

    public DrawingPen hatched(double x, double y, double width, double height) {
        box("plate", x, y, width, height);
        marks.add(Chart.Mark.hatch("hatch", x, y, width, height));
        return this;
    }

    DrawingPen path(String tone, String course) {
        marks.add(Chart.Mark.path(tone, course, ""));
        return this;
    }

    /** A line with a head, for a direction only. */
    DrawingPen arrow(double x, double y, double x2, double y2) {
        line("part", x, y, x2, y2);
        marks.add(Chart.Mark.head("way", x, y, x2, y2));
        return this;
    }

    /** Words around a place, moved so far that no letter lies outside. */
    DrawingPen label(double x, double y, String words) {
        double half = wide(words) / 2;
        marks.add(Chart.Mark.text(within(x, Math.min(half, WIDTH / 2.0), Math.max(WIDTH - half, WIDTH / 2.0)), y, "middle", words));
        return below(y + 5);
    }

    /** Words from a place to the right, in as many lines as they need; returns how many. */
    int words(double x, double y, String words) {
        List<String> lines = lines(words, WIDTH - x);
        for (int i = 0; i < lines.size(); i++) {
            marks.add(Chart.Mark.text(x, y + LINE * i, "start", lines.get(i)));
            below(y + LINE * i + 5);
        }
        return lines.size();
    }

    /** A length between two feet, with its words below. */
    public DrawingPen length(double from, double to, double y, String words) {
        marks.add(Chart.Mark.reach("fine", from, to, y, ""));
        return label((from + to) / 2, y + 22, words);
    }

    /** A height between two feet. */
    DrawingPen height(double x, double from, double to) {
        return line("fine", x, from, x, to).line("fine", x - 5, from, x + 5, from).line("fine", x - 5, to, x + 5, to);
    }

    public Chart.Drawing drawing(String id, String title, String description, String caption) {
        return new Chart.Drawing(id, title, description, WIDTH, (int) StrictMath.ceil(lowest), marks, caption);
    }

    /** Keeps room down to a height, for what a path draws there. */
    DrawingPen below(double y) {
        lowest = Math.max(lowest, y);
        return this;
    }

    private static List<String> lines(String words, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words.split(" ")) {
            if (!line.isEmpty() && wide(line + " " + word) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
