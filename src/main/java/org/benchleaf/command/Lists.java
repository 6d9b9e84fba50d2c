package org.benchleaf.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
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
        Map<String, List<Told>> drafts = byFile(messages, Told.List.DRAFT);
        Map<String, List<Told>> retold = byFile(messages, Told.List.SOURCE);
        return new Lists(messages.stream().filter(message -> switch (message.listed().list()) {
            case NONE -> true;
            case DRAFT, SOURCE -> false;
            case HEAD_OF_DRAFT -> !drafts.containsKey(message.file());
        }).toList(), Stream.concat(DraftList.of(drafts).stream(), PublicationGaps.of(retold).stream()).toList());
    }

    private static Map<String, List<Told>> byFile(List<Told> messages, Told.List list) {
        Map<String, List<Told>> byFile = new TreeMap<>();
        messages.stream().filter(message -> message.listed().list() == list)
                .forEach(message -> byFile.computeIfAbsent(message.file(), file -> new ArrayList<>()).add(message));
        return byFile;
    }
}
