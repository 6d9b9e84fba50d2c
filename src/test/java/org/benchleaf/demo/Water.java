package org.benchleaf.demo;

import java.awt.image.BufferedImage;

/** A shallow bath over a picture: it tints, bends what lies below a little, and carries a net of light. */
record Water(Tray tray, View view, Noise noise, Rgb tint, double depth) {

    BufferedImage over(BufferedImage dry) {
        BufferedImage wet = new BufferedImage(dry.getWidth(), dry.getHeight(), BufferedImage.TYPE_INT_RGB);
        for (int py = 0; py < dry.getHeight(); py++) {
            for (int px = 0; px < dry.getWidth(); px++) {
                wet.setRGB(px, py, seen(dry, px, py));
            }
        }
        return wet;
    }

    private int seen(BufferedImage dry, int px, int py) {
        double x = (px - view.toPixels().getTranslateX()) / view.pixelsPerMm();
        double y = (py - view.toPixels().getTranslateY()) / view.pixelsPerMm();
        double in = Curve.rise(0, 1.5, tray.depth(x, y));
        if (in <= 0) {
            return dry.getRGB(px, py);
        }
        double bend = 0.6 * view.pixelsPerMm();
        double sx = px + in * bend * noise.layered(x, y, 52, 2);
        double sy = py + in * bend * noise.layered(y + 300, x, 52, 2);
        Rgb below = between(dry, sx, sy);
        Rgb seen = below.stained(tint, depth * in * (1 + 0.15 * noise.layered(x, y, 120, 2)));
        double net = Math.abs(noise.layered(x + 4 * noise.at(x, y, 30), y * 1.25, 62, 2));
        double caustic = 0.055 * Curve.bump(net, 0.07) - 0.02 * Curve.rise(0.15, 0.45, net);
        double sheen = 0.16 * Curve.bump(noise.layered(x * 0.35 + 0.55 * y, y - 0.3 * x, 130, 2) - 0.42, 0.09);
        double lip = 0.35 * Curve.bump(tray.depth(x, y) - 1.2, 0.9);
        return seen.times(1 + in * caustic).towards(Rgb.WHITE, in * (sheen + lip)).packed();
    }

    private static Rgb between(BufferedImage image, double x, double y) {
        int ix = Math.min(Math.max((int) x, 0), image.getWidth() - 2);
        int iy = Math.min(Math.max((int) y, 0), image.getHeight() - 2);
        Rgb top = Rgb.of(image.getRGB(ix, iy)).towards(Rgb.of(image.getRGB(ix + 1, iy)), x - ix);
        Rgb foot = Rgb.of(image.getRGB(ix, iy + 1)).towards(Rgb.of(image.getRGB(ix + 1, iy + 1)), x - ix);
        return top.towards(foot, y - iy);
    }
}
