package org.benchleaf.page;

import java.util.Map;

/**
 * Comfort where scripts run: one step at a time, ticks kept on this device, the screen kept on.
 *
 * @param store under which name this device keeps ticks and timers
 * @param words fixed labels
 */
public record BenchDesk(String store, Map<String, String> words) implements Block {
}
