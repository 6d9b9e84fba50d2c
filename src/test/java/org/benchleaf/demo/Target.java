package org.benchleaf.demo;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;

/** The centimetre scale and the grey and colour patches that lie beside the sheet. */
final class Target {
    private static final List<Rgb> GREYS = List.of(Rgb.of(0xf3f3f2), Rgb.of(0xc9c9c9), Rgb.of(0xa0a0a0),
            Rgb.of(0x7a7a79), Rgb.of(0x555555), Rgb.of(0x343434));
    private static final List<Rgb> COLOURS = List.of(Rgb.of(0x3b4d9b), Rgb.of(0x4f9350), Rgb.of(0xaf3a3c),
            Rgb.of(0xe8c52f), Rgb.of(0xb85a93), Rgb.of(0x2a86a1));
    private final BufferedImage picture;
    private final double centimetre;
    private final double height;

    private Target(BufferedImage picture, double centimetre) {
        this.picture = picture;
        this.centimetre = centimetre;
        this.height = Math.max(picture.getHeight(), picture.getWidth()) * 0.016;
    }

    /** Lays a scale of so many centimetres at the foot left and the patches at the foot right. */
    static BufferedImage beside(BufferedImage picture, View view, int centimetres) {
        Target target = new Target(picture, view.pixelsPerMm() * 10);
        Graphics2D g = picture.createGraphics();
        Mask.smooth(g);
        double foot = picture.getHeight() - target.height * 2.7;
        double edge = target.height * 2;
        target.scale(g, edge, foot, centimetres);
        target.patches(g, picture.getWidth() - edge, foot);
        g.dispose();
        return picture;
    }

    private void scale(Graphics2D g, double x, double y, int centimetres) {
        int step = centimetres > 20 ? 5 : 1;
        double block = centimetre * step;
        int blocks = centimetres / step;
        double pad = height * 0.35;
        double unit = height * 1.6;
        card(g, x - pad, y - pad, blocks * block + pad * 2 + unit, height * 1.75 + pad);
        for (int i = 0; i < blocks; i++) {
            g.setColor(i % 2 == 0 ? Rgb.grey(0.1).color() : Rgb.grey(0.93).color());
            g.fill(new Rectangle2D.Double(x + i * block, y, block, height * 0.55));
        }
        g.setColor(Rgb.grey(0.1).color());
        g.setStroke(new BasicStroke((float) (height * 0.05)));
        g.draw(new Rectangle2D.Double(x, y, blocks * block, height * 0.55));
        Type type = Type.plain();
        int every = blocks > 12 ? 5 : 1;
        for (int i = 0; i <= blocks; i += every) {
            g.fill(type.centred(String.valueOf(i * step), x + i * block, y + height * 1.42, height * 0.52));
        }
        g.fill(type.left("cm", x + blocks * block + height * 0.62, y + height * 1.42, height * 0.52));
    }

    private void patches(Graphics2D g, double right, double y) {
        double size = height * 1.25;
        double pad = height * 0.35;
        double wide = size * (GREYS.size() + COLOURS.size());
        double x = right - wide;
        card(g, x - pad, y - pad, wide + pad * 2, size + pad * 2);
        for (Rgb patch : GREYS) {
            x = patch(g, patch, x, y, size);
        }
        for (Rgb patch : COLOURS) {
            x = patch(g, patch, x, y, size);
        }
    }

    private static double patch(Graphics2D g, Rgb colour, double x, double y, double size) {
        g.setColor(colour.color());
        g.fill(new Rectangle2D.Double(x, y, size, size));
        return x + size;
    }

    private void card(Graphics2D g, double x, double y, double w, double h) {
        for (int i = 6; i >= 1; i--) {
            g.setColor(new Color(0, 0, 0, 14));
            double d = i * height * 0.05;
            g.fill(new Rectangle2D.Double(x + height * 0.08 - d * 0.5, y + height * 0.1 - d * 0.5, w + d, h + d));
        }
        g.setColor(Rgb.of(0xecebe7).color());
        g.fill(new Rectangle2D.Double(x, y, w, h));
    }
}
