package org.benchleaf.demo;

import java.awt.geom.AffineTransform;

/** Where the camera stands: a rectangle of the bench, in millimetres of the sheet, and the size of its picture. */
record View(int width, int height, double pixelsPerMm, AffineTransform toPixels) {

    /** Looks at a rectangle of the sheet's own plane, the longer side {@code longSide} pixels long. */
    static View of(double left, double top, double wide, double high, int longSide) {
        double scale = longSide / Math.max(wide, high);
        AffineTransform t = AffineTransform.getScaleInstance(scale, scale);
        t.translate(-left, -top);
        return new View((int) Math.round(wide * scale), (int) Math.round(high * scale), scale, t);
    }

    /** Looks at a whole sheet with a margin for the ground, and room for scale and patches at the foot. */
    static View ofSheet(double sheetWide, double sheetHigh, int longSide) {
        double margin = 0.07 * Math.max(sheetWide, sheetHigh);
        return of(-margin, -margin, sheetWide + 2 * margin, sheetHigh + margin * 2.7, longSide);
    }

    /** Turns the sheet a little on the table, about its centre, as a hand would lay it. */
    View turned(double degrees, double centreX, double centreY) {
        AffineTransform t = new AffineTransform(toPixels);
        t.rotate(StrictMath.toRadians(degrees), centreX, centreY);
        return new View(width, height, pixelsPerMm, t);
    }

    /** Looks at the verso: the sheet of this width lies turned over, left for right. */
    View turnedOver(double sheetWide) {
        AffineTransform t = new AffineTransform(toPixels);
        t.translate(sheetWide, 0);
        t.scale(-1, 1);
        return new View(width, height, pixelsPerMm, t);
    }

    double mmPerPixel() {
        return 1 / pixelsPerMm;
    }
}
