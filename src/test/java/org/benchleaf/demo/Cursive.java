package org.benchleaf.demo;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** A running hand that says nothing: invented letters with loops, thin going up and heavy coming down. */
final class Cursive {
    private static final double[][][] LETTERS = {
        {{0.1, 0.1}, {0.32, 1}, {0.36, 0.2}, {0.6, 0.02}, {0.92, 1}, {0.96, 0.2}, {1.25, 0.1}},
        {{0.05, 0.2}, {0.18, 0.95}, {0.2, 0}, {0.3, 0.5}, {0.58, 1}, {0.74, 0.75}, {0.75, 0.1}, {1.05, 0.12}},
        {{0.1, 0.18}, {0.46, 0.55}, {0.4, 1}, {0.16, 0.7}, {0.24, 0.06}, {0.66, 0.14}},
        {{0.1, 0.18}, {0.46, 0.55}, {0.4, 1}, {0.16, 0.7}, {0.24, 0.06}, {0.66, 0.14}},
        {{0.1, 0.4}, {0.42, 1}, {0.08, 0.6}, {0.28, 0}, {0.62, 0.5}, {0.42, 1}, {0.6, 0.84}, {0.95, 0.8}},
        {{0.1, 0.1}, {0.56, 1.5}, {0.6, 2.3}, {0.38, 2.1}, {0.28, 0.3}, {0.42, 0}, {0.7, 0.14}},
        {{0.1, 0.1}, {0.42, 1.6}, {0.36, 0.3}, {0.5, 0}, {0.8, 0.16}},
        {{0.1, 0.4}, {0.5, 1}, {0.12, 0.65}, {0.24, 0.05}, {0.6, 0.6}, {0.68, 1}, {0.62, -0.8}, {0.3, -1.5}, {0.14, -1.1},
            {0.62, -0.2}, {1, 0.15}},
        {{0.1, 0.1}, {0.42, 1.05}, {0.52, 0.42}, {0.3, 0}, {0.12, 0.16}, {0.8, 0.12}},
        {{0.1, 0.4}, {0.46, 1}, {0.1, 0.6}, {0.26, 0}, {0.6, 0.6}, {0.8, 2.1}, {0.7, 0.3}, {1, 0.1}},
        {{0.1, 0.1}, {0.52, 1.6}, {0.5, 2.3}, {0.3, 2}, {0.2, 0}, {0.32, 0.6}, {0.6, 1}, {0.74, 0.7}, {0.76, 0.1}, {1.05, 0.1}},
        {{0.1, 0.2}, {0.26, 1}, {0.32, 0.2}, {0.6, 0.1}, {0.9, 1}, {0.84, -0.9}, {0.5, -1.5}, {0.36, -1.1}, {0.9, -0.1}, {1.2, 0.12}},
        {{0.05, 0.2}, {0.16, 0.95}, {0.18, 0}, {0.28, 0.6}, {0.48, 1}, {0.58, 0.7}, {0.58, 0}, {0.68, 0.6}, {0.9, 1},
            {1.02, 0.7}, {1.03, 0.1}, {1.35, 0.12}},
    };
    private static final int CROSSED = 6;
    private static final double LEAN = 0.62;
    private final Random chance;
    private final List<Mark> marks = new ArrayList<>();

    /** A short piece of a stroke, and how wide the pen opened there. */
    record Mark(double x1, double y1, double x2, double y2, double width) {
    }

    Cursive(int seed) {
        this.chance = new Random(seed);
    }

    List<Mark> marks() {
        return List.copyOf(marks);
    }

    /** Writes words from x until the measure is full. */
    Cursive line(double x, double y, double measure, double size) {
        double at = x;
        while (at < x + measure - size * 3) {
            int letters = 2 + chance.nextInt(3) + chance.nextInt(5);
            double room = x + measure - at;
            letters = Math.min(letters, (int) (room / size / 0.95));
            at = word(at, y + (chance.nextDouble() - 0.5) * size * 0.25, Math.max(letters, 1), size, 1) + size * 1.1;
        }
        return this;
    }

    /** Writes one word and gives where it ends; a {@code firstSize} above 1 begins it with a capital. */
    double word(double x, double y, int letters, double size, double firstSize) {
        List<double[]> path = new ArrayList<>();
        double at = x;
        for (int i = 0; i < letters; i++) {
            int kind = chance.nextInt(LETTERS.length);
            double[][] letter = LETTERS[kind];
            double s = size * (0.92 + 0.16 * chance.nextDouble()) * (i == 0 ? firstSize : 1);
            for (double[] p : letter) {
                path.add(new double[] {at + s * (p[0] + LEAN * p[1]) * 0.92, y - s * p[1]});
            }
            if (kind == CROSSED && i > 0) {
                cross(at + 0.55 * s, y, s);
            }
            at += s * (letter[letter.length - 1][0] - 0.08) * 0.92;
        }
        stroke(path, size * 0.055, size * 0.19);
        return at;
    }

    /** Draws a flourish through the given points. */
    Cursive flourish(double size, double[]... points) {
        stroke(List.of(points), size * 0.06, size * 0.2);
        return this;
    }

    private void cross(double x, double y, double s) {
        double top = y - s * 1.25;
        stroke(List.of(new double[] {x, top + 0.1 * s}, new double[] {x + 0.5 * s, top},
                new double[] {x + s, top - 0.06 * s}), s * 0.07, s * 0.1);
    }

    private void stroke(List<double[]> path, double thin, double heavy) {
        double pressed = thin;
        for (int i = 0; i + 1 < path.size(); i++) {
            double[] a = path.get(Math.max(0, i - 1));
            double[] b = path.get(i);
            double[] c = path.get(i + 1);
            double[] d = path.get(Math.min(path.size() - 1, i + 2));
            double[] from = b;
            for (int k = 1; k <= 14; k++) {
                double[] to = between(a, b, c, d, k / 14.0);
                double long_ = StrictMath.hypot(to[0] - from[0], to[1] - from[1]);
                double down = long_ == 0 ? 0 : Math.max(0, (to[1] - from[1]) / long_);
                pressed += (thin + (heavy - thin) * down * down - pressed) * 0.3;
                marks.add(new Mark(from[0], from[1], to[0], to[1], pressed));
                from = to;
            }
        }
    }

    private static double[] between(double[] a, double[] b, double[] c, double[] d, double t) {
        double[] p = new double[2];
        for (int i = 0; i < 2; i++) {
            double pull = 0.5 * (c[i] - a[i]);
            double next = 0.5 * (d[i] - b[i]);
            double t2 = t * t;
            double t3 = t2 * t;
            p[i] = (2 * t3 - 3 * t2 + 1) * b[i] + (t3 - 2 * t2 + t) * pull + (3 * t2 - 2 * t3) * c[i] + (t3 - t2) * next;
        }
        return p;
    }

    /** Draws the marks at least so wide, each made wider or narrower by a factor. */
    static void draw(Graphics2D g, List<Mark> marks, double least, double factor) {
        for (Mark m : marks) {
            if (m.width >= least) {
                g.setStroke(new BasicStroke((float) (m.width * factor), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
                g.draw(new Line2D.Double(m.x1, m.y1, m.x2, m.y2));
            }
        }
    }
}
