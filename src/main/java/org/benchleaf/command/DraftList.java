package org.benchleaf.command;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.benchleaf.run.Told;

/** Lists what drafts still need, a line each, in the order in which the work is done. */
final class DraftList {

    /** The keys of a case file in the order in which a treatment gets its answers. */
    private static final List<String> ORDER = List.of("title", "summary", "level", "language", "object", "condition",
            "proposal", "publication", "source", "tests", "instruments", "solutions", "steps", "results", "trials", "pictures", "reasons");

    private DraftList() {
    }

    /** The lines of all drafts among the messages; none if nothing is open. */
    static List<String> of(List<Told> messages) {
        Map<String, List<Told>> byFile = new TreeMap<>();
        messages.stream().filter(message -> message.listed().list() == Told.List.DRAFT)
                .forEach(message -> byFile.computeIfAbsent(message.file(), file -> new ArrayList<>()).add(message));
        List<String> lines = new ArrayList<>();
        byFile.forEach((file, open) -> {
            lines.add(file + " is a draft, which is never published. " + open.size() + " still open:");
            open.stream().sorted(Comparator.comparingInt(DraftList::turn)).map(DraftList::line).forEach(lines::add);
            lines.add("");
        });
        return lines;
    }

    /** Whether the list says a message: what is open, and that a case of which something is open is a draft. */
    static boolean tells(Told message, Set<String> drafts) {
        return message.listed().list() == Told.List.DRAFT
                || message.listed().list() == Told.List.HEAD_OF_DRAFT && drafts.contains(message.file());
    }

    /** The files of drafts in which something is open. */
    static Set<String> files(List<Told> messages) {
        return messages.stream().filter(message -> message.listed().list() == Told.List.DRAFT).map(Told::file).collect(Collectors.toSet());
    }

    private static int turn(Told message) {
        String[] way = message.listed().pointer().split("/", 3);
        int at = way.length < 2 ? -1 : ORDER.indexOf(way[1]);
        return at < 0 ? ORDER.size() : at;
    }

    private static String line(Told message) {
        return "  [ ] line " + message.line() + ": " + message.listed().what() + " " + message.listed().fix();
    }
}
