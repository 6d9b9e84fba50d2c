package org.benchleaf.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.benchleaf.message.ConsentMessages;
import org.benchleaf.message.Message;

/** Lists what the publications of retold cases leave open of the rules, a line each: nothing that has to be answered. */
final class PublicationGaps {

    private PublicationGaps() {
    }

    /** The lines of all retold cases among the messages; none if their publications leave nothing open. */
    static List<String> of(List<Message> messages) {
        Map<String, List<Message>> byFile = new TreeMap<>();
        messages.stream().filter(message -> message.id().leftToSource())
                .forEach(message -> byFile.computeIfAbsent(message.place().file(), file -> new ArrayList<>()).add(message));
        List<String> lines = new ArrayList<>();
        byFile.forEach((file, open) -> {
            lines.add(file + " is retold, and its publication leaves " + open.size() + " open of what the rules ask. Enter what the"
                    + " publication tells of it and leave the rest: the results tell it as not recorded, and no sheets for the bench"
                    + " are made while a rule is not kept. 'check --explain CODE' tells each rule.");
            open.stream().map(PublicationGaps::line).distinct().forEach(lines::add);
            lines.add("");
        });
        return lines;
    }

    /** Whether the list says a message: what is left open, and that no sheets are made because of it. */
    static boolean tells(Message message, List<Message> all) {
        return message.id().leftToSource() || message.id() == ConsentMessages.OPEN_IN_SOURCE && all.stream().anyMatch(other ->
                other.id().leftToSource() && other.place().file().equals(message.place().file()));
    }

    private static String line(Message message) {
        return "  line " + message.place().line() + ", " + message.code() + ": " + message.what();
    }
}
