package org.benchleaf.demo;

import java.awt.image.BufferedImage;
import java.util.function.IntFunction;

/** One picture of a case: its folder, its name, and how to draw it so many pixels long. */
record Picture(String caseFolder, String name, IntFunction<BufferedImage> drawing) {
    BufferedImage drawn(int longSide) {
        return drawing.apply(longSide);
    }
}
