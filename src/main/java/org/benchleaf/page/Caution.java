package org.benchleaf.page;

import org.benchleaf.text.RichText;

/**
 * Something that can happen, and what to do before it can.
 *
 * @param level {@code danger} or {@code care}
 * @param word the level in words
 * @param name what it is in a few words, for the line that opens
 * @param text what can happen
 * @param first what to do first; may be empty
 */
public record Caution(String level, String word, String name, RichText text, RichText first) {
}
