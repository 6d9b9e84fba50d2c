package org.benchleaf.demo;

/** One thing that lies on or in the sheet: paper tone, stain, ink, dirt, tissue. */
@FunctionalInterface
interface Coat {
    /** Gives the colour at a point of the sheet, in millimetres, with this coat over what is below. */
    Rgb over(double x, double y, Rgb below);
}
