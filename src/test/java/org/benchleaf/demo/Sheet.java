package org.benchleaf.demo;

import java.util.List;

/** One sheet as it lies there: its outline, tears, relief, and what lies on it from the paper upward. */
record Sheet(Outline outline, List<Tear> tears, List<Relief> reliefs, List<Coat> coats, Rgb fibre) {

    /** What is seen of the sheet at a point: how much of the pixel it covers, its colour, its height. */
    record Seen(double cover, Rgb colour, double height) {
    }

    Sheet {
        tears = List.copyOf(tears);
        reliefs = List.copyOf(reliefs);
        coats = List.copyOf(coats);
    }

    Seen at(double x, double y, double pixel) {
        double qx = x;
        double qy = y;
        double open = 0;
        Tear.Near[] nears = new Tear.Near[tears.size()];
        for (int i = 0; i < nears.length; i++) {
            Tear tear = tears.get(i);
            Tear.Near near = tear.near(x, y);
            nears[i] = near;
            double shift = tear.shift(near);
            qx -= shift * near.acrossX();
            qy -= shift * near.acrossY();
            open = Math.max(open, tear.openness(near, pixel));
        }
        double inside = outline.inside(qx, qy);
        double cover = Curve.rise(-pixel * 0.6, pixel * 0.6, inside) * (1 - open);
        if (cover <= 0) {
            return new Seen(0, Rgb.WHITE, 0);
        }
        return new Seen(cover, colour(x, y, qx, qy, nears), height(qx, qy));
    }

    private Rgb colour(double x, double y, double qx, double qy, Tear.Near[] nears) {
        Rgb seen = Rgb.WHITE;
        for (Coat coat : coats) {
            seen = coat.over(qx, qy, seen);
        }
        for (int i = 0; i < nears.length; i++) {
            seen = tears.get(i).edged(x, y, nears[i], seen, fibre);
        }
        return seen;
    }

    private double height(double x, double y) {
        double sum = 0;
        for (Relief relief : reliefs) {
            sum += relief.at(x, y);
        }
        return sum;
    }
}
