package org.benchleaf.science;

import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * A colour in CIELAB.
 *
 * @param lightness L*, 0 black to 100 white
 * @param red a*, green below 0, red above
 * @param yellow b*, blue below 0, yellow above
 */
public record Colour(Quantity lightness, Quantity red, Quantity yellow) {

    private static final double EDGE = 6.0 / 29;

    /**
     * How two colours differ.
     *
     * @param de76 ΔE*ab, CIE 1976
     * @param de94 ΔE*94, graphic arts, the first colour being the reference
     * @param de2000 ΔE00, CIEDE2000
     * @param lightnessChange ΔL*, second less first
     * @param chromaChange ΔC*ab, second less first
     * @param hueChange ΔH*ab, positive where the hue angle grows
     */
    public record Difference(Quantity de76, Quantity de94, Quantity de2000, Quantity lightnessChange,
            Quantity chromaChange, Quantity hueChange) {
    }

    /** A measured or white colour as CIE tristimulus values, Y of the white being 100. */
    public record Tristimulus(Quantity x, Quantity y, Quantity z) {

        private static final double MOST = 200;

        double xValue() {
            return value(x);
        }

        double yValue() {
            return value(y);
        }

        double zValue() {
            return value(z);
        }

        private static double value(Quantity number) {
            return Require.within("xyz", number, 0, MOST, Unit.NONE, "CIE 15:2004, Y of a white being 100");
        }
    }

    /**
     * Gives the colour whose values are already in CIELAB.
     *
     * @throws OutsideRange if the lightness is not from 0 to 100 or a* or b* are beyond 200
     */
    public static Colour of(String input, Quantity lightness, Quantity red, Quantity yellow) {
        String source = "CIE 15:2004, CIELAB";
        Require.within(input, lightness, 0, 100, Unit.NONE, source);
        Require.within(input, red, -200, 200, Unit.NONE, source);
        Require.within(input, yellow, -200, 200, Unit.NONE, source);
        return new Colour(lightness, red, yellow);
    }

    /**
     * Works out the colour in CIELAB from tristimulus values.
     *
     * <p>Formula: L* = 116 f(Y/Yn) − 16; a* = 500 (f(X/Xn) − f(Y/Yn)); b* = 200 (f(Y/Yn) − f(Z/Zn)), f the cube root
     * above (6/29)³ and a straight line below.
     *
     * <p>Units: plain numbers.
     *
     * <p>Range: tristimulus values 0 to 200.
     *
     * <p>Source: CIE 15:2004, Colorimetry, section 8.2.1.
     *
     * @throws OutsideRange if a value lies outside its range
     */
    public static Colour of(Tristimulus measured, Tristimulus white) {
        double fx = compressed(measured.xValue() / white.xValue());
        double fy = compressed(measured.yValue() / white.yValue());
        double fz = compressed(measured.zValue() / white.zValue());
        return new Colour(Quantity.number(116 * fy - 16), Quantity.number(500 * (fx - fy)),
                Quantity.number(200 * (fy - fz)));
    }

    /**
     * Works out the tristimulus values of this colour.
     *
     * <p>Formula: Y = Yn g((L* + 16) / 116), X = Xn g(f + a* / 500), Z = Zn g(f − b* / 200), f = (L* + 16) / 116, g the
     * cube above 6/29 and a straight line below.
     *
     * <p>Units: plain numbers.
     *
     * <p>Range: any colour whose tristimulus values are not negative.
     *
     * <p>Source: CIE 15:2004, Colorimetry, 8.2.1 turned round.
     *
     * @param white the white that the colour was worked out with
     */
    public Tristimulus tristimulus(Tristimulus white) {
        double fy = (l() + 16) / 116;
        return new Tristimulus(Quantity.number(white.xValue() * expanded(fy + red.value() / 500)),
                Quantity.number(white.yValue() * expanded(fy)),
                Quantity.number(white.zValue() * expanded(fy - yellow.value() / 200)));
    }

    /** The share of the white of which {@link #compressed} is given. */
    private static double expanded(double compressed) {
        return compressed > EDGE ? compressed * compressed * compressed
                : Math.max(0, 3 * EDGE * EDGE * (compressed - 4.0 / 29));
    }

    /**
     * Works out how another colour differs from this one.
     *
     * <p>Formula: ΔE*ab the distance; ΔE*94 with SL = 1, SC = 1 + 0.045 C₁, SH = 1 + 0.015 C₁; ΔE00 with kL = kC =
     * kH = 1.
     *
     * <p>Units: plain numbers.
     *
     * <p>Range: any colours.
     *
     * <p>Source: CIE 15:2004; CIE 116:1995; Sharma, Wu and Dalal (2005), Color Res. Appl. 30, 21-30.
     */
    public Difference to(Colour after) {
        double dL = after.l() - l();
        double dC = after.chroma() - chroma();
        double hue = hueChange(after);
        double de76 = Math.sqrt(dL * dL + dC * dC + hue * hue);
        double sc = 1 + 0.045 * chroma();
        double sh = 1 + 0.015 * chroma();
        double de94 = Math.sqrt(dL * dL + square(dC / sc) + square(hue / sh));
        return new Difference(Quantity.number(de76), Quantity.number(de94), Quantity.number(ciede2000(after)),
                Quantity.number(dL), Quantity.number(dC), Quantity.number(hue));
    }

    double l() {
        return lightness.in(Unit.NONE);
    }

    private double a() {
        return red.in(Unit.NONE);
    }

    private double b() {
        return yellow.in(Unit.NONE);
    }

    private double chroma() {
        return hypotenuse(a(), b());
    }

    /** ΔH*ab = 2 √(C₁ C₂) sin(Δh/2), written without angles: it keeps its digits where the hues are nearly equal. */
    private double hueChange(Colour other) {
        double c1 = chroma();
        double c2 = other.chroma();
        double cross = a() * other.b() - b() * other.a();
        double dot = a() * other.a() + b() * other.b();
        if (c1 == 0 || c2 == 0) {
            return 0;
        }
        double squared = 2 * (c1 * c2 - dot);
        double size = dot > 0 ? Math.abs(cross) / Math.sqrt((c1 * c2 + dot) / 2) : Math.sqrt(Math.max(0, squared));
        return cross < 0 ? -size : size;
    }

    private double ciede2000(Colour other) {
        double meanChroma = (chroma() + other.chroma()) / 2;
        double g = (1 - Math.sqrt(seventh(meanChroma))) / 2;
        double a1 = (1 + g) * a();
        double a2 = (1 + g) * other.a();
        double c1 = hypotenuse(a1, b());
        double c2 = hypotenuse(a2, other.b());
        double h1 = hueAngle(a1, b());
        double h2 = hueAngle(a2, other.b());
        boolean grey = c1 * c2 == 0;
        double dL = other.l() - l();
        double dC = c2 - c1;
        double dH = 2 * Math.sqrt(c1 * c2) * sine((grey ? 0 : turn(h2 - h1)) / 2);
        double c = (c1 + c2) / 2;
        double h = grey ? h1 + h2 : meanHue(h1, h2);
        double fromMiddle = square((l() + other.l()) / 2 - 50);
        double t = 1 - 0.17 * cosine(h - 30) + 0.24 * cosine(2 * h) + 0.32 * cosine(3 * h + 6)
                - 0.20 * cosine(4 * h - 63);
        double sl = 1 + 0.015 * fromMiddle / Math.sqrt(20 + fromMiddle);
        double sc = 1 + 0.045 * c;
        double sh = 1 + 0.015 * c * t;
        double rotation = -2 * Math.sqrt(seventh(c)) * sine(60 * StrictMath.exp(-square((h - 275) / 25)));
        return Math.sqrt(Math.max(0, square(dL / sl) + square(dC / sc) + square(dH / sh)
                + rotation * (dC / sc) * (dH / sh)));
    }

    private static double compressed(double ratio) {
        return ratio > EDGE * EDGE * EDGE ? StrictMath.cbrt(ratio) : ratio / (3 * EDGE * EDGE) + 4.0 / 29;
    }

    private static double seventh(double chroma) {
        double power = chroma * square(chroma * chroma * chroma);
        return power / (power + 6_103_515_625.0);
    }

    private static double hueAngle(double a, double b) {
        if (a == 0 && b == 0) {
            return 0;
        }
        double degrees = StrictMath.atan2(b, a) * 180 / Math.PI;
        return degrees < 0 ? degrees + 360 : degrees;
    }

    private static double turn(double degrees) {
        if (degrees > 180) {
            return degrees - 360;
        }
        return degrees < -180 ? degrees + 360 : degrees;
    }

    private static double meanHue(double h1, double h2) {
        if (Math.abs(h1 - h2) <= 180) {
            return (h1 + h2) / 2;
        }
        return h1 + h2 < 360 ? (h1 + h2 + 360) / 2 : (h1 + h2 - 360) / 2;
    }

    private static double hypotenuse(double a, double b) {
        return Math.sqrt(a * a + b * b);
    }

    private static double square(double x) {
        return x * x;
    }

    private static double sine(double degrees) {
        return StrictMath.sin(degrees * Math.PI / 180);
    }

    private static double cosine(double degrees) {
        return StrictMath.cos(degrees * Math.PI / 180);
    }
}
