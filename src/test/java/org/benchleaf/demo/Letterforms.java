package org.benchleaf.demo;

import java.awt.geom.Path2D;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The drawn alphabet: no machine's fonts are used, so the same letters come out everywhere. */
final class Letterforms {
    private static final Map<Character, Glyph> GLYPHS = read();

    /** One letter: its pen strokes, the points that carry a serif, and the width it takes; capitals are 1 high. */
    record Glyph(Path2D strokes, List<double[]> serifs, double advance) {
    }

    private Letterforms() {
    }

    static Glyph of(char letter) {
        Glyph glyph = GLYPHS.get(letter);
        if (glyph == null) {
            throw new IllegalArgumentException("no letterform is drawn for '" + letter + "'");
        }
        return glyph;
    }

    private static Map<Character, Glyph> read() {
        Map<Character, Glyph> glyphs = new HashMap<>();
        try (InputStream in = Letterforms.class.getResourceAsStream("/demo/letterforms.txt");
                BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            lines.lines().filter(line -> !line.startsWith("#") && !line.isBlank())
                    .forEach(line -> glyphs.put(line.charAt(0), parse(line.substring(2).split("(?=[MLCS])"))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        glyphs.put(' ', new Glyph(new Path2D.Double(), List.of(), 0.34));
        return glyphs;
    }

    private static Glyph parse(String[] parts) {
        Path2D strokes = new Path2D.Double();
        List<double[]> serifs = new ArrayList<>();
        for (int i = 1; i < parts.length; i++) {
            double[] n = numbers(parts[i].substring(1));
            switch (parts[i].charAt(0)) {
                case 'M' -> strokes.moveTo(n[0], n[1]);
                case 'L' -> strokes.lineTo(n[0], n[1]);
                case 'C' -> strokes.curveTo(n[0], n[1], n[2], n[3], n[4], n[5]);
                default -> serifs.add(n);
            }
        }
        return new Glyph(strokes, serifs, Double.parseDouble(parts[0].trim()) / 100);
    }

    private static double[] numbers(String text) {
        String[] words = text.trim().split(" ");
        double[] numbers = new double[words.length];
        for (int i = 0; i < words.length; i++) {
            numbers[i] = Double.parseDouble(words[i]) / 100;
        }
        return numbers;
    }
}
