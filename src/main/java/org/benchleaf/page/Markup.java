package org.benchleaf.page;

import org.benchleaf.compose.part.ScriptJson;

/**
 * Lines in a language of their own that stand on a page as they are: MathML of a formula, the SVG of a pictogram, JSON-LD.
 *
 * <p>Made only of the program's own tables and by {@link ScriptJson}, never of what somebody wrote.
 */
public record Markup(String lines) {
}
