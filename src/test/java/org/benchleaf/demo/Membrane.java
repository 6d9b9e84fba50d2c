package org.benchleaf.demo;

import java.awt.image.BufferedImage;

/** A milky vapour-permeable membrane over a tray, one corner turned back so that the sheet is seen below it. */
record Membrane(Tray tray, View view, Noise noise) {

    BufferedImage over(BufferedImage open) {
        BufferedImage covered = new BufferedImage(open.getWidth(), open.getHeight(), BufferedImage.TYPE_INT_RGB);
        for (int py = 0; py < open.getHeight(); py++) {
            for (int px = 0; px < open.getWidth(); px++) {
                covered.setRGB(px, py, seen(open.getRGB(px, py), px, py));
            }
        }
        return covered;
    }

    private int seen(int below, int px, int py) {
        double x = px / view.pixelsPerMm() - view.toPixels().getTranslateX() / view.pixelsPerMm();
        double y = py / view.pixelsPerMm() - view.toPixels().getTranslateY() / view.pixelsPerMm();
        Rgb seen = Rgb.of(below);
        double inTray = tray.depth(x, y) - 9 - 4 * noise.layered(x, y, 90, 2);
        double turned = turnedBack(x, y);
        double shadow = 0.3 * Curve.fall(-Math.min(inTray, turned), 12);
        seen = seen.times(1 - shadow);
        double on = Curve.rise(0, 1.2, Math.min(inTray, turned));
        Rgb film = seen.towards(Rgb.of(0xe9eef0), 0.5).times(1 + creases(x, y));
        seen = seen.towards(film, on);
        double flap = Curve.rise(0, 1.2, turned) * (1 - Curve.rise(66, 67, turned)) * Curve.rise(0, 1.2, inTray);
        double roll = 0.86 + 0.2 * Curve.bump(turned - 18, 16) - 0.12 * Curve.rise(40, 66, turned);
        return seen.towards(Rgb.of(0xeff2f2).times(roll + 0.6 * creases(x, y)), flap * 0.9).packed();
    }

    /** Distance from the turned-back edge, which cuts off the lower right corner; below zero where the sheet is bare. */
    private double turnedBack(double x, double y) {
        double edge = (x - 610) * 0.72 + (y - 640) * 0.69;
        return -edge + 14 * noise.layered(x, y, 120, 2) - 40;
    }

    private double creases(double x, double y) {
        double u = x * 0.8 + y * 0.6 + 40 * noise.layered(x, y, 200, 2);
        double v = -x * 0.6 + y * 0.8;
        double fine = noise.ridges(u, v * 0.25, 90);
        double soft = noise.layered(u, v * 0.3, 120, 3);
        return 0.1 * fine + 0.07 * soft;
    }
}
