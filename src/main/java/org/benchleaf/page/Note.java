package org.benchleaf.page;

import org.benchleaf.text.RichText;

/**
 * A remark set apart.
 *
 * @param tone {@code plain}, {@code care} or {@code danger}; never told by colour alone
 * @param word the word of its tone, such as "Care"
 * @param text what it says
 */
public record Note(String tone, String word, RichText text) implements Block {
}
