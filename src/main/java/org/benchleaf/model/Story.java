package org.benchleaf.model;

import java.util.List;
import org.benchleaf.message.Place;

/** The Markdown text of a case, in sections. */
public record Story(List<Section> sections) {

    /** Stands in a section's HTML where a figure is cited: this character, the figure's name, {@link #FIGURE_END}. */
    public static final char FIGURE_START = '\uE000';

    /** Ends the name of a cited figure. */
    public static final char FIGURE_END = '\uE001';

    public Story {
        sections = List.copyOf(sections);
    }

    /**
     * One section.
     *
     * @param id the heading's id; a step's id makes the section belong to that step; empty before the first heading
     * @param heading the heading's text; empty before the first heading
     * @param html the text below it as clean HTML, figures between {@link #FIGURE_START} and {@link #FIGURE_END}
     * @param written heading and text in Markdown as the author wrote them, without comments
     * @param citations the figures cited, with their places
     * @param place where it begins
     */
    public record Section(String id, String heading, String html, String written, List<Citation> citations, Place place) {
        public Section {
            citations = List.copyOf(citations);
        }
    }

    /** A figure cited in the text. */
    public record Citation(String figure, Place place) {
    }
}
