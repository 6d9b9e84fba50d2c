package org.benchleaf.page;

import java.util.List;

/**
 * One or two drawings of the same numbers, with the tables that hold them.
 *
 * <p>Each is drawn narrow enough for a phone, so that it serves every screen and no one has to push it sideways.
 *
 * @param drawings one, or two that stand beside each other where there is room
 * @param numbers anchor of the tables
 * @param tables the same numbers
 * @param wide whether the tables need the whole width, below the drawings
 */
public record Chart(List<Drawing> drawings, String numbers, List<Table> tables, boolean wide) implements Block {

    /** The width of every drawing; at this width a letter is as large as in the tables. */
    public static final int WIDTH = 420;

    public Chart {
        drawings = List.copyOf(drawings);
        tables = List.copyOf(tables);
    }

    /**
     * One drawing.
     *
     * @param id unique on the page
     * @param title for readers who do not see it
     * @param description what it shows, in words
     * @param width in the drawing's own units
     * @param height in the drawing's own units
     * @param marks what is drawn, from back to front
     * @param caption what to look for
     */
    public record Drawing(String id, String title, String description, int width, int height, List<Mark> marks,
            String caption) {
        public Drawing {
            marks = List.copyOf(marks);
        }

        /** A drawing of the usual width, as high as its lowest mark needs. */
        public static Drawing of(String id, String title, String description, double height, List<Mark> marks, String caption) {
            return new Drawing(id, title, description, WIDTH, (int) StrictMath.ceil(height), marks, caption);
        }
    }

    /**
     * One mark. Its kind chooses the shape; what a kind does not need is zero or empty.
     *
     * @param kind {@code line}, {@code dot}, {@code square}, {@code tick}, {@code hold}, {@code bar}, {@code swatch},
     *     {@code path} or {@code text}
     * @param tone names the series, such as {@code before}; shapes differ as well as colours
     * @param text of a text mark; the course of a path
     * @param anchor start, middle or end, for text
     * @param fill the colour of a swatch
     * @param value the number that the mark stands for, as a table has it
     */
    public record Mark(String kind, String tone, int x, int y, int x2, int y2, String text, String anchor,
            String fill, String value) {

        public static Mark line(String tone, double x, double y, double x2, double y2) {
            return new Mark("line", tone, round(x), round(y), round(x2), round(y2), "", "", "", "");
        }

        public static Mark at(String kind, String tone, double x, double y, String value) {
            return new Mark(kind, tone, round(x), round(y), 0, 0, "", "", "", value);
        }

        /** A mark with a width and a height, from its upper left corner. */
        public static Mark box(String kind, String tone, double x, double y, double width, double height, String value) {
            return new Mark(kind, tone, round(x), round(y), round(width), round(height), "", "", "", value);
        }

        public static Mark swatch(double x, double y, double width, double height, String fill, String value) {
            return new Mark("swatch", "", round(x), round(y), round(width), round(height), "", "", fill, value);
        }

        public static Mark text(double x, double y, String anchor, String text) {
            return new Mark("text", "", round(x), round(y), 0, 0, text, anchor, "", "");
        }

        /** A line of its own course, in the commands of an SVG path. */
        public static Mark path(String tone, String course, String value) {
            return new Mark("path", tone, 0, 0, 0, 0, course, "", "", value);
        }

        /** The reach of an interval: a line with feet. */
        public static Mark reach(String tone, double from, double to, double y, String value) {
            return path(tone, "M" + round(from) + " " + round(y - 7) + "v14M" + round(from) + " " + round(y) + "H"
                    + round(to) + "M" + round(to) + " " + round(y - 7) + "v14", value);
        }

        /** A square stood on its corner. */
        public static Mark diamond(String tone, double x, double y, String value) {
            return path(tone, "M" + round(x - 8) + " " + round(y) + "l8 -8l8 8l-8 8Z", value);
        }

        /** The head of an arrow that ends at a point, coming from another; it keeps off the mark that stands there. */
        public static Mark head(String tone, double fromX, double fromY, double x, double y) {
            double length = StrictMath.hypot(x - fromX, y - fromY);
            double alongX = (x - fromX) / length;
            double alongY = (y - fromY) / length;
            double tipX = x - 9 * alongX;
            double tipY = y - 9 * alongY;
            return path(tone, "M" + round(tipX) + " " + round(tipY) + "L" + round(tipX - 11 * alongX + 5 * alongY) + " "
                    + round(tipY - 11 * alongY - 5 * alongX) + "L" + round(tipX - 11 * alongX - 5 * alongY) + " "
                    + round(tipY - 11 * alongY + 5 * alongX) + "Z", "");
        }

        /** Slanted strokes across a box. */
        public static Mark hatch(String tone, double x, double y, double width, double height) {
            StringBuilder strokes = new StringBuilder();
            for (double at = 3; at + height < width; at += 7) {
                strokes.append('M').append(round(x + at)).append(' ').append(round(y + height)).append('l')
                        .append(round(height)).append(" -").append(round(height));
            }
            return path(tone, strokes.isEmpty() ? "M" + round(x) + " " + round(y) : strokes.toString(), "");
        }

        private static int round(double number) {
            return (int) StrictMath.rint(number);
        }
    }
}
