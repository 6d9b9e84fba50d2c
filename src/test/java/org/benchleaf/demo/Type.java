package org.benchleaf.demo;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;

/**
 * A cut of the drawn alphabet: how heavy its stems and hairlines are, how wide and how far apart its letters stand.
 *
 * <p>Weights are shares of the capital height; letters are drawn with a pen that is {@code stem} wide and {@code hair} high.
 */
record Type(double stem, double hair, double serif, double width, double spacing, double lean) {

    static Type roman() {
        return new Type(0.15, 0.06, 0.12, 1, 0.06, 0);
    }

    static Type plain() {
        return new Type(0.11, 0.11, 0, 1, 0.12, 0);
    }

    static Type fat() {
        return new Type(0.27, 0.08, 0.13, 1.3, 0.3, 0);
    }

    Type wider(double by) {
        return new Type(stem, hair, serif, width * by, spacing, lean);
    }

    Type spaced(double more) {
        return new Type(stem, hair, serif, width, spacing + more, lean);
    }

    Type leaning(double by) {
        return new Type(stem, hair, serif, width, spacing, by);
    }

    double measure(String text, double size) {
        double x = 0;
        for (char c : text.toCharArray()) {
            x += (Letterforms.of(c).advance() * width + spacing) * size;
        }
        return x - spacing * size;
    }

    /** Gives the letters of a line, starting at x, standing on y. */
    Path2D left(String text, double x, double y, double size) {
        Path2D line = new Path2D.Double(Path2D.WIND_NON_ZERO);
        double at = x;
        for (char c : text.toCharArray()) {
            Letterforms.Glyph glyph = Letterforms.of(c);
            line.append(letter(glyph, at, y, size), false);
            at += (glyph.advance() * width + spacing) * size;
        }
        return line;
    }

    Path2D centred(String text, double x, double y, double size) {
        return left(text, x - measure(text, size) / 2, y, size);
    }

    Path2D right(String text, double x, double y, double size) {
        return left(text, x - measure(text, size), y, size);
    }

    /** Gives the line centred and set as large as the measure and the height allow. */
    Path2D fitted(String text, double x, double y, double measure, double size) {
        double natural = measure(text, size);
        Type cut = new Type(stem, hair, serif, width * measure / natural, spacing * measure / natural, lean);
        return cut.centred(text, x, y, size);
    }

    private Shape letter(Letterforms.Glyph glyph, double x, double y, double size) {
        Path2D inked = new Path2D.Double(Path2D.WIND_NON_ZERO);
        inked.append(pen(scaled(glyph.strokes())), false);
        for (double[] s : glyph.serifs()) {
            Path2D bar = new Path2D.Double();
            double lift = s[1] <= 0.0 ? hair / 2 : s[1] >= 0.6 ? -hair / 2 : 0;
            bar.moveTo(s[0] * width - stem / 2 - serif, s[1] + lift);
            bar.lineTo(s[0] * width + stem / 2 + serif, s[1] + lift);
            inked.append(serif == 0 ? new Path2D.Double() : pen(bar), false);
        }
        AffineTransform place = AffineTransform.getTranslateInstance(x, y);
        place.shear(-lean, 0);
        place.scale(size, -size);
        return place.createTransformedShape(inked);
    }

    private Shape scaled(Shape strokes) {
        return AffineTransform.getScaleInstance(width, 1).createTransformedShape(strokes);
    }

    /** A round pen in a space squeezed by stem and hair is an oval pen in the letter's own space. */
    private Shape pen(Shape path) {
        Shape squeezed = AffineTransform.getScaleInstance(1 / stem, 1 / hair).createTransformedShape(path);
        Shape drawn = new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND).createStrokedShape(squeezed);
        return AffineTransform.getScaleInstance(stem, hair).createTransformedShape(drawn);
    }
}
