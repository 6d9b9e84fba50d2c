package org.benchleaf.demo;

import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.image.BufferedImage;
import java.util.stream.IntStream;

/** Lays a sheet on its ground under a light and photographs it. */
final class Bench {
    private final View view;
    private final Ground ground;
    private final Light light;

    Bench(View view, Ground ground, Light light) {
        this.view = view;
        this.ground = ground;
        this.light = light;
    }

    BufferedImage photograph(Sheet sheet) {
        int w = view.width();
        int h = view.height();
        float[] cover = new float[w * h];
        Rgb[] colour = new Rgb[w * h];
        double[] height = new double[w * h];
        AffineTransform back = back();
        each((px, py, i) -> {
            double[] p = point(back, px, py);
            Sheet.Seen seen = sheet.at(p[0], p[1], view.mmPerPixel());
            cover[i] = (float) seen.cover();
            colour[i] = seen.colour();
            height[i] = seen.height();
        });
        return lit(cover, colour, height, back);
    }

    private BufferedImage lit(float[] cover, Rgb[] colour, double[] height, AffineTransform back) {
        Mask mask = Mask.of(view, cover);
        double size = shadowSize();
        Mask near = mask.blurred(size * 0.35);
        Mask wide = mask.blurred(size * 1.6);
        int[] pixels = new int[cover.length];
        each((px, py, i) -> {
            double lamp = light.at((double) px / view.width(), (double) py / view.height());
            Rgb seen = colour[i].times(shade(cover, height, px, py));
            if (cover[i] < 1) {
                double[] p = point(back, px, py);
                double dark = shadow(near, px, py, size * 0.5) * 0.34 + shadow(wide, px, py, size) * 0.26;
                seen = ground.at(p[0], p[1]).times(1 - dark).towards(seen, cover[i]);
            }
            pixels[i] = seen.times(lamp).packed();
        });
        BufferedImage image = new BufferedImage(view.width(), view.height(), BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, view.width(), view.height(), pixels, 0, view.width());
        return image;
    }

    /** The shadow reaches a little way from the sheet, as far as a sheet of paper lies off its ground. */
    private double shadowSize() {
        return Math.max(1.1, 3.2 * view.mmPerPixel()) * (0.6 + 0.4 * light.shadow());
    }

    private double shadow(Mask mask, int px, int py, double mm) {
        double reach = mm * view.pixelsPerMm() * light.shadow();
        return mask.atPixel(px + light.fromX() * reach, py + light.fromY() * reach);
    }

    private double shade(float[] cover, double[] height, int px, int py) {
        int w = view.width();
        int i = py * w + px;
        double x = slope(cover, height, i, px > 0 ? i - 1 : i, px + 1 < w ? i + 1 : i);
        double y = slope(cover, height, i, py > 0 ? i - w : i, py + 1 < view.height() ? i + w : i);
        return light.on(x * view.pixelsPerMm(), y * view.pixelsPerMm());
    }

    private static double slope(float[] cover, double[] height, int here, int before, int after) {
        int from = cover[before] > 0 ? before : here;
        int to = cover[after] > 0 ? after : here;
        int steps = (from == here ? 0 : 1) + (to == here ? 0 : 1);
        return steps == 0 ? 0 : (height[to] - height[from]) / steps;
    }

    private AffineTransform back() {
        try {
            return view.toPixels().createInverse();
        } catch (NoninvertibleTransformException e) {
            throw new IllegalStateException("a view must have a size: " + view, e);
        }
    }

    private static double[] point(AffineTransform back, int px, int py) {
        double[] p = {px + 0.5, py + 0.5};
        back.transform(p, 0, p, 0, 1);
        return p;
    }

    private interface Pixel {
        void at(int px, int py, int index);
    }

    private void each(Pixel pixel) {
        IntStream.range(0, view.height()).parallel().forEach(py -> {
            for (int px = 0; px < view.width(); px++) {
                pixel.at(px, py, py * view.width() + px);
            }
        });
    }
}
