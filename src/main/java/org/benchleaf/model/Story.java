package org.benchleaf.model;

import java.util.List;
import org.benchleaf.message.Place;
import org.benchleaf.text.TextBlock;

/** The Markdown text of a case, in sections. */
public record Story(List<Section> sections) {

    public Story {
        sections = List.copyOf(sections);
    }

    /**
     * One section.
     *
     * @param id the heading's id; a step's id makes the section belong to that step; empty before the first heading
     * @param heading the heading's text; empty before the first heading
     * @param text what stands below it
     * @param written heading and text in Markdown as the author wrote them, without comments
     * @param citations the figures cited, with their places
     * @param place where it begins
     */
    public record Section(String id, String heading, List<TextBlock> text, String written, List<Citation> citations, Place place) {
        public Section {
            text = List.copyOf(text);
            citations = List.copyOf(citations);
        }
    }

    /** A figure cited in the text. */
    public record Citation(String figure, Place place) {
    }
}
