package org.benchleaf.browser;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * How a reader looks at a page.
 *
 * @param width of the window in CSS pixels: 320 is a desk zoomed to 400 % (WCAG 2.2, 1.4.10)
 * @param look light, dark, in the system's own few colours, or on paper
 */
record Setting(int width, Look look) {

    enum Look {
        LIGHT("", "light", "none"), DARK("", "dark", "none"), FORCED("", "light", "active"), PRINT("print", "light", "none");

        private final String media;
        private final String scheme;
        private final String forced;

        Look(String media, String scheme, String forced) {
            this.media = media;
            this.scheme = scheme;
            this.forced = forced;
        }

        /** As the browser's protocol asks for it. */
        Map<String, Object> emulation() {
            return Map.of("media", media, "features", List.of(
                    Map.of("name", "prefers-color-scheme", "value", scheme),
                    Map.of("name", "forced-colors", "value", forced)));
        }
    }

    static final Setting PHONE = new Setting(320, Look.LIGHT);
    static final Setting DESK = new Setting(1280, Look.LIGHT);

    /** Every width with every look. */
    static List<Setting> all() {
        List<Setting> all = new ArrayList<>();
        for (Look look : Look.values()) {
            for (int width : new int[] {320, 768, 1280}) {
                all.add(new Setting(width, look));
            }
        }
        return List.copyOf(all);
    }

    @Override
    public String toString() {
        return width + " px, " + look.name().toLowerCase(java.util.Locale.ROOT);
    }
}
