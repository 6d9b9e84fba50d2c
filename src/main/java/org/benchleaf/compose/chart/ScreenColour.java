package org.benchleaf.compose.chart;

/**
 * The colour of a screen that comes nearest to CIELAB coordinates: white to white, the rest by IEC 61966-2-1.
 *
 * <p>Only for showing; screens differ, and a colour that a screen cannot show is cut to what it can.
 */
final class ScreenColour {

    private static final double[] WHITE = {0.95047, 1, 1.08883};
    private static final double[][] TO_SCREEN = {
        {3.2404542, -1.5371385, -0.4985314}, {-0.9692660, 1.8760108, 0.0415560}, {0.0556434, -0.2040259, 1.0572252}};

    private ScreenColour() {
    }

    /** The colour as six hexadecimal digits behind a number sign. */
    static String of(double lightness, double a, double b) {
        double y = (lightness + 16) / 116;
        double[] xyz = {cube(y + a / 500) * WHITE[0], cube(y) * WHITE[1], cube(y - b / 200) * WHITE[2]};
        StringBuilder hex = new StringBuilder("#");
        for (double[] row : TO_SCREEN) {
            double linear = row[0] * xyz[0] + row[1] * xyz[1] + row[2] * xyz[2];
            int level = (int) StrictMath.rint(255 * Math.min(1, Math.max(0, curved(linear))));
            hex.append(level < 16 ? "0" : "").append(Integer.toHexString(level));
        }
        return hex.toString();
    }

    private static double cube(double t) {
        return t > 6.0 / 29 ? t * t * t : 3 * 36.0 / 841 * (t - 4.0 / 29);
    }

    private static double curved(double linear) {
        return linear <= 0.0031308 ? 12.92 * linear : 1.055 * StrictMath.pow(linear, 1 / 2.4) - 0.055;
    }
}
