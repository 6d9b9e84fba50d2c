package org.benchleaf.compose;

import java.util.List;

/**
 * A chart drawn from marks, with the table that holds the same numbers.
 *
 * @param id unique on the page
 * @param title for readers who do not see it
 * @param description what it shows, in words
 * @param width of the drawing, in its own units
 * @param height of the drawing, in its own units
 * @param marks what is drawn, from back to front
 * @param caption what to look for
 * @param table the same numbers
 */
public record Chart(String id, String title, String description, int width, int height, List<Mark> marks,
        String caption, Table table) implements Block {

    public Chart {
        marks = List.copyOf(marks);
    }

    /**
     * One mark. Its kind chooses the shape; what a kind does not need is zero or empty.
     *
     * @param kind {@code line}, {@code dot}, {@code square}, {@code tick}, {@code hold}, {@code bar}, {@code swatch},
     *     {@code arrow} or {@code text}
     * @param tone names the series, such as {@code before}; shapes differ as well as colours
     * @param text of a text mark
     * @param anchor start, middle or end, for text
     * @param fill the colour of a swatch
     * @param value the number that the mark stands for, as the table has it
     */
    public record Mark(String kind, String tone, int x, int y, int x2, int y2, String text, String anchor,
            String fill, String value) {

        static Mark line(String tone, double x, double y, double x2, double y2) {
            return new Mark("line", tone, round(x), round(y), round(x2), round(y2), "", "", "", "");
        }

        static Mark at(String kind, String tone, double x, double y, String value) {
            return new Mark(kind, tone, round(x), round(y), 0, 0, "", "", "", value);
        }

        /** A mark with a width and a height, from its upper left corner. */
        static Mark box(String kind, String tone, double x, double y, double width, double height, String value) {
            return new Mark(kind, tone, round(x), round(y), round(width), round(height), "", "", "", value);
        }

        static Mark swatch(double x, double y, double width, double height, String fill, String value) {
            return new Mark("swatch", "", round(x), round(y), round(width), round(height), "", "", fill, value);
        }

        static Mark text(double x, double y, String anchor, String text) {
            return new Mark("text", "", round(x), round(y), 0, 0, text, anchor, "", "");
        }

        private static int round(double number) {
            return (int) StrictMath.rint(number);
        }
    }
}
