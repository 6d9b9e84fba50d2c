package org.benchleaf.demo;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.function.Consumer;

/** How much of each pixel of a view is covered by something drawn, from 0 to 1. */
final class Mask {
    private final View view;
    private final float[] cover;

    private Mask(View view, float[] cover) {
        this.view = view;
        this.cover = cover;
    }

    static Mask of(View view, float[] cover) {
        return new Mask(view, cover.clone());
    }

    /** Gives what a drawing in millimetres of the sheet covers. */
    static Mask drawn(View view, Consumer<Graphics2D> drawing) {
        BufferedImage image = new BufferedImage(view.width(), view.height(), BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        smooth(g);
        g.setTransform(view.toPixels());
        g.setColor(Color.WHITE);
        drawing.accept(g);
        g.dispose();
        float[] cover = new float[view.width() * view.height()];
        int[] pixels = image.getRGB(0, 0, view.width(), view.height(), null, 0, view.width());
        for (int i = 0; i < cover.length; i++) {
            cover[i] = (pixels[i] >>> 24) / 255f;
        }
        return new Mask(view, cover);
    }

    static Mask filled(View view, Shape shape) {
        return drawn(view, g -> g.fill(shape));
    }

    static Mask stroked(View view, Shape shape, double width) {
        return drawn(view, g -> {
            g.setStroke(new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.draw(shape);
        });
    }

    static void smooth(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    /** Gives the same cover spread softly; the width is in millimetres. */
    Mask blurred(double mm) {
        int radius = Math.max(1, (int) Math.round(mm * view.pixelsPerMm() / 1.7));
        float[] a = cover.clone();
        float[] b = new float[a.length];
        for (int pass = 0; pass < 3; pass++) {
            boxRows(a, b, view.width(), view.height(), radius);
            boxColumns(b, a, view.width(), view.height(), radius);
        }
        return new Mask(view, a);
    }

    /** Gives the cover at a point of the sheet, between pixels where need be; 0 outside the view. */
    double at(double x, double y) {
        AffineTransform t = view.toPixels();
        double px = t.getScaleX() * x + t.getShearX() * y + t.getTranslateX() - 0.5;
        double py = t.getShearY() * x + t.getScaleY() * y + t.getTranslateY() - 0.5;
        return atPixel(px, py);
    }

    double atPixel(double px, double py) {
        int ix = (int) Math.floor(px);
        int iy = (int) Math.floor(py);
        double fx = px - ix;
        double fy = py - iy;
        double top = cell(ix, iy) * (1 - fx) + cell(ix + 1, iy) * fx;
        double foot = cell(ix, iy + 1) * (1 - fx) + cell(ix + 1, iy + 1) * fx;
        return top * (1 - fy) + foot * fy;
    }

    private float cell(int x, int y) {
        int cx = Math.min(Math.max(x, 0), view.width() - 1);
        int cy = Math.min(Math.max(y, 0), view.height() - 1);
        return cover[cy * view.width() + cx];
    }

    private static void boxRows(float[] from, float[] to, int w, int h, int r) {
        for (int y = 0; y < h; y++) {
            box(from, to, y * w, 1, w, r);
        }
    }

    private static void boxColumns(float[] from, float[] to, int w, int h, int r) {
        for (int x = 0; x < w; x++) {
            box(from, to, x, w, h, r);
        }
    }

    private static void box(float[] from, float[] to, int start, int step, int n, int r) {
        double sum = 0;
        for (int i = -r; i <= r; i++) {
            sum += from[start + step * Math.min(Math.max(i, 0), n - 1)];
        }
        for (int i = 0; i < n; i++) {
            to[start + step * i] = (float) (sum / (2 * r + 1));
            sum += from[start + step * Math.min(i + r + 1, n - 1)] - from[start + step * Math.max(i - r, 0)];
        }
    }
}
