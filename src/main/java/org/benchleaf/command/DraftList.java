package org.benchleaf.command;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.benchleaf.message.ConsentMessages;
import org.benchleaf.message.DraftMessages;
import org.benchleaf.message.Message;

/** Lists what drafts still need, a line each, in the order in which the work is done. */
final class DraftList {

    /** The keys of a case file in the order in which a treatment gets its answers. */
    private static final List<String> ORDER = List.of("title", "summary", "level", "language", "object", "condition",
            "proposal", "publication", "source", "tests", "instruments", "solutions", "steps", "results", "trials", "pictures", "reasons");

    private DraftList() {
    }

    /** The lines of all drafts among the messages; none if nothing is open. */
    static List<String> of(List<Message> messages) {
        Map<String, List<Message>> byFile = new TreeMap<>();
        messages.stream().filter(message -> message.id() instanceof DraftMessages)
                .forEach(message -> byFile.computeIfAbsent(message.place().file(), file -> new ArrayList<>()).add(message));
        List<String> lines = new ArrayList<>();
        byFile.forEach((file, open) -> {
            lines.add(file + " is a draft, which is never published. " + open.size() + " still open:");
            open.stream().sorted(Comparator.comparingInt(DraftList::turn)).map(DraftList::line).forEach(lines::add);
            lines.add("");
        });
        return lines;
    }

    /** Whether the list says a message: what is open, and that a case of which something is open is a draft. */
    static boolean tells(Message message, List<Message> all) {
        return message.id() instanceof DraftMessages || message.id() == ConsentMessages.STILL_DRAFT
                && all.stream().anyMatch(other -> other.id() instanceof DraftMessages
                        && other.place().file().equals(message.place().file()));
    }

    private static int turn(Message message) {
        String[] way = message.place().pointer().split("/", 3);
        int at = way.length < 2 ? -1 : ORDER.indexOf(way[1]);
        return at < 0 ? ORDER.size() : at;
    }

    private static String line(Message message) {
        return "  [ ] line " + message.place().line() + ": " + message.what() + " " + message.fix();
    }
}
