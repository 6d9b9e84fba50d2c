package org.benchleaf.read;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Place;
import org.benchleaf.message.SourceText;
import org.benchleaf.model.Confidential;
import org.benchleaf.model.Story;

/**
 * One case as it was read, not yet understood.
 *
 * @param id the folder's name
 * @param root the front matter, private values withheld; empty if it could not be read
 * @param story the Markdown text
 * @param translations the same words in other languages
 * @param tables readings from instruments, by file name
 * @param confidential the private values
 * @param sources its files as they may be shown, private values blotted out
 * @param isUnfinished whether its author calls it a draft, also where the rest of it cannot be read
 * @param messages what was said while reading
 * @param place the head of the file
 */
public record Draft(String id, Optional<Node.Mapping> root, Story story, List<Translated> translations,
        Map<String, ReadingsTable> tables, Confidential confidential, List<SourceText> sources, boolean isUnfinished,
        Messages messages, Place place) {

    public Draft {
        translations = List.copyOf(translations);
        tables = Map.copyOf(tables);
        sources = List.copyOf(sources);
    }

    /** The same without its words in other languages. */
    public Draft inItsOwnLanguage() {
        return new Draft(id, root, story, List.of(), tables, confidential, sources, isUnfinished, messages, place);
    }

    /**
     * One file of translated words.
     *
     * @param language BCP 47 tag from the file's name
     * @param root its front matter
     * @param story its Markdown text
     */
    public record Translated(String language, Optional<Node.Mapping> root, Story story, Place place) {
    }
}
