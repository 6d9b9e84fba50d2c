package org.benchleaf.demo;

import java.util.List;

/** The edge of a sheet: a rectangle that is a little uneven, with worn corners and pieces lost. */
record Outline(double left, double top, double wide, double high, double unevenness, Noise noise, List<Loss> losses) {

    /** A piece lost from the sheet: about a circle, ragged. */
    record Loss(double x, double y, double radius) {
    }

    Outline {
        losses = List.copyOf(losses);
    }

    Outline(double wide, double high, double unevenness, Noise noise, List<Loss> losses) {
        this(0, 0, wide, high, unevenness, noise, losses);
    }

    Outline movedBy(double x, double y) {
        return new Outline(left + x, top + y, wide, high, unevenness, noise, losses);
    }

    /** Gives how far inside the sheet a point lies, in millimetres; below zero outside. */
    double inside(double x, double y) {
        double side = Math.min(x - left - waver(y, 3), left + wide - x - waver(y, 71));
        double end = Math.min(y - top - waver(x, 139), top + high - y - waver(x, 211));
        double d = Math.min(Math.min(side, end), corner(side, end));
        for (Loss loss : losses) {
            d = Math.min(d, beyond(loss, x, y));
        }
        return d;
    }

    private double waver(double along, double lane) {
        return unevenness * (0.5 + 0.5 * noise.layered(along, lane * 40, 30, 2)
                + 0.35 * noise.layered(along, lane * 40, 2.5, 3));
    }

    private double corner(double side, double end) {
        double r = unevenness * 2.5;
        if (side > r || end > r) {
            return r;
        }
        return r - StrictMath.hypot(r - side, r - end);
    }

    private double beyond(Loss loss, double x, double y) {
        double d = StrictMath.hypot(x - loss.x, y - loss.y) - loss.radius;
        return d > loss.radius ? d : d + loss.radius * 0.55 * noise.layered(x, y, loss.radius, 4);
    }
}
