package org.benchleaf.demo;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;

/** A small paste brush laid into the corner of a close view, with its shadow. */
final class MendingTools {
    private MendingTools() {
    }

    /** Draws the brush over a picture that shows so many pixels to the millimetre. */
    static void onto(BufferedImage picture, double pixelsPerMm) {
        Graphics2D g = picture.createGraphics();
        Mask.smooth(g);
        AffineTransform place = AffineTransform.getTranslateInstance(picture.getWidth() * 0.7, picture.getHeight() * 0.36);
        place.rotate(StrictMath.toRadians(-31));
        place.scale(pixelsPerMm, pixelsPerMm);
        for (int i = 8; i >= 1; i--) {
            g.setTransform(AffineTransform.getTranslateInstance(pixelsPerMm * 0.8, pixelsPerMm * 1.1));
            g.transform(place);
            g.setColor(new Color(40, 30, 10, 9));
            g.fill(taper(-0.5 * i * 0.22, 17, 0.1 + i * 0.1, 2.6 + i * 0.22));
            g.fill(taper(17, 80, 2 + i * 0.22, 3 + i * 0.22));
        }
        g.setTransform(place);
        hair(g);
        g.setPaint(new GradientPaint(0, -2.4f, Rgb.of(0x6d6f70).color(), 0, 0.4f, Rgb.of(0xdfe1e0).color(), true));
        g.fill(taper(14, 26, 2.3, 1.7));
        g.setPaint(new GradientPaint(0, -2.4f, Rgb.of(0x5a3519).color(), 0, 0.2f, Rgb.of(0xb07a45).color(), true));
        g.fill(taper(26, 90, 1.7, 2.6));
        g.dispose();
    }

    private static void hair(Graphics2D g) {
        g.setColor(Rgb.of(0x2c2119).color());
        Path2D tip = new Path2D.Double();
        tip.moveTo(0, 0);
        tip.curveTo(4, -1.5, 8, -3, 14.5, -2.3);
        tip.lineTo(14.5, 2.3);
        tip.curveTo(8, 3, 4, 1.2, 0, 0);
        g.fill(tip);
        g.setStroke(new BasicStroke(0.09f));
        for (int i = -8; i <= 8; i++) {
            g.setColor(i % 3 == 0 ? Rgb.of(0x6b563f).color() : Rgb.of(0x443426).color());
            Path2D strand = new Path2D.Double();
            strand.moveTo(0.4 + Math.abs(i) * 0.25, i * 0.03);
            strand.quadTo(7, i * 0.34, 14.4, i * 0.27);
            g.draw(strand);
        }
    }

    private static Path2D taper(double from, double to, double halfFrom, double halfTo) {
        Path2D p = new Path2D.Double();
        p.moveTo(from, -halfFrom);
        p.lineTo(to, -halfTo);
        p.lineTo(to, halfTo);
        p.lineTo(from, halfFrom);
        p.closePath();
        return p;
    }
}
