package org.benchleaf.model;

import java.util.List;
import java.util.Optional;

/**
 * What an author of case files is shown beside the keys of the files.
 *
 * @param firstCase a first case, step by step
 * @param testWords the closed words for the results of spot tests
 * @param endPoints the wordings of end points that are held against readings
 * @param licences the licences of publications that are known
 * @param figures the figures that a story can cite
 */
public record AuthorGuide(List<Lesson> firstCase, TestWords testWords, List<EndPointWording> endPoints,
        List<SourceLicence> licences, List<CitableFigure> figures) {

    /** Of a book, which is for readers. */
    public static final AuthorGuide EMPTY = new AuthorGuide(List.of(), new TestWords(List.of()), List.of(), List.of(),
            List.of());

    public AuthorGuide {
        firstCase = List.copyOf(firstCase);
        endPoints = List.copyOf(endPoints);
        licences = List.copyOf(licences);
        figures = List.copyOf(figures);
    }

    /**
     * One step on the way to a first case.
     *
     * @param name its heading
     * @param text paragraphs
     * @param changes passages that are written anew, before anything is added
     * @param facts lines put at the end of the facts; empty where none are
     * @param story lines put at the end of the file; empty where none are
     * @param tells all that the check then says
     */
    public record Lesson(String name, List<String> text, List<Change> changes, Optional<String> facts, Optional<String> story,
            String tells) {
        public Lesson {
            text = List.copyOf(text);
            changes = List.copyOf(changes);
        }
    }

    /**
     * A way to word the end point of a bath.
     *
     * @param asks what it asks for
     * @param written how it may be worded
     * @param example a whole end point
     * @param read what it is held against
     */
    public record EndPointWording(String asks, List<String> written, String example, String read) {
        public EndPointWording {
            written = List.copyOf(written);
        }
    }

    /** A passage of the file before and after; it stands there once. */
    public record Change(String from, String to) {
    }

    /**
     * A figure by the name under which a story cites it.
     *
     * @param of what it belongs to: a part of a step, a way to prepare a solution, a kind of result and so on
     * @param cited how it is written, with … for the id of the step, solution, result or material
     * @param means what it tells
     */
    public record CitableFigure(String of, String cited, String means) {
    }
}
