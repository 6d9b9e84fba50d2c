package org.benchleaf.page;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Where a script says what of the site is kept on the device, and what a newer edition brings.
 *
 * @param words what it says, by key
 */
public record KeptOffline(Map<String, String> words) implements Block {

    public KeptOffline {
        words = Collections.unmodifiableMap(new LinkedHashMap<>(words));
    }
}
