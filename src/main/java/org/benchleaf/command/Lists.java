package org.benchleaf.command;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.run.Told;

/**
 * Messages as they are told at a terminal: many of one sort in a list with a line each, the others one by one.
 *
 * @param single those that are told one by one
 * @param lines the lists
 */
record Lists(List<Told> single, List<String> lines) {

    Lists {
        single = List.copyOf(single);
        lines = List.copyOf(lines);
    }

    static Lists of(List<Told> messages) {
        Set<String> drafts = DraftList.files(messages);
        Set<String> retold = PublicationGaps.files(messages);
        return new Lists(messages.stream().filter(message -> !DraftList.tells(message, drafts) && !PublicationGaps.tells(message, retold))
                .toList(), Stream.concat(DraftList.of(messages).stream(), PublicationGaps.of(messages).stream()).toList());
    }
}
