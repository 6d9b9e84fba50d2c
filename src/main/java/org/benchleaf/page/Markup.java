package org.benchleaf.page;

/**
 * Lines in a language of their own that stand on a page as they are: MathML of a formula, the SVG of a pictogram, JSON-LD.
 *
 * <p>Made only of the program's own tables and by {@code JsonText}, never of what somebody wrote.
 */
public record Markup(String lines) {
}
