package org.benchleaf.calculate;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.benchleaf.model.Part;
import org.benchleaf.model.Step;

/**
 * The names of figures.
 *
 * <p>A figure of a step is {@code step.name}. Where two parts of one step give a figure of the same name, the part's
 * word comes first, {@code step.part-name}, whether or not both figures could be worked out, so that a name stays.
 */
final class FigureNames {

    static final Map<String, List<String>> NAMES = Map.ofEntries(
            Map.entry("bath", List.of("volume", "total", "tray-volume", "tray-total", "record-total", "sheet-mass", "liquor", "held",
                    "left", "filling-time", "change-time", "wet-time", "bath-time")),
            Map.entry("mist", List.of("amount", "left-in-bottle", "vapour", "vapour-ppm", "vapour-lower-limit",
                    "vapour-exposure-limit")),
            Map.entry("chamber", List.of("amount", "left-in-bottle", "water", "vapour", "vapour-ppm", "vapour-lower-limit",
                    "vapour-exposure-limit")),
            Map.entry("blotters", List.of("sheet-mass", "dry-mass", "wet-mass", "blotter-mass", "for-water", "cover",
                    "per-change", "total", "class-total")),
            Map.entry("press", List.of("pressure")),
            Map.entry("mend", List.of("lining", "area", "pieces", "tissue-mass", "paste-mass", "coating-mass", "activator-mass")),
            Map.entry("support", List.of("carrier-height", "carrier-width")),
            Map.entry("weighing", List.of("wet-solids", "water", "restraint-mass", "restrained-solids", "rate")),
            Map.entry("layer", List.of("volume", "total", "vapour", "vapour-ppm", "vapour-lower-limit", "vapour-exposure-limit")),
            Map.entry("suction", List.of("amount", "left-in-bottle", "vapour", "vapour-ppm", "vapour-lower-limit",
                    "vapour-exposure-limit")),
            Map.entry("light", List.of("exposure")),
            Map.entry("gas", List.of("amount", "left-in-bottle", "room-rise")));

    /** What the hand needs; the other figures of a step stand behind these. */
    private static final Set<String> AT_HAND = Set.of("tray-volume", "volume", "tray-total", "total", "amount", "water",
            "per-change", "pieces", "area", "paste-mass", "activator-mass", "exposure", "pressure", "carrier-height", "carrier-width",
            "restraint-mass");

    private FigureNames() {
    }

    static boolean isAtHand(String name) {
        return AT_HAND.contains(name);
    }

    /** What tells a figure of a step from those of its other parts: the part's word, or nothing where only one has such a figure. */
    static String qualifier(Step step, Part part, String name) {
        long parts = step.parts().stream()
                .filter(one -> NAMES.getOrDefault(one.word(), List.of()).contains(name)).count();
        return parts > 1 ? part.word() : "";
    }
}
