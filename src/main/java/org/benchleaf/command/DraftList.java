package org.benchleaf.command;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.benchleaf.message.ConsentMessages;
import org.benchleaf.run.Told;

/** Lists what drafts still need, a line each, in the order in which the work is done. */
final class DraftList {

    /** The keys of a case file in the order in which a treatment gets its answers. */
    private static final List<String> ORDER = List.of("title", "summary", "level", "language", "object", "condition",
            "proposal", "publication", "source", "tests", "instruments", "solutions", "steps", "results", "trials", "pictures", "reasons");

    private DraftList() {
    }

    /** The lines of all drafts, by file what is open in each; none if nothing is. */
    static List<String> of(Map<String, List<Told>> byFile) {
        List<String> lines = new ArrayList<>();
        byFile.forEach((file, open) -> {
            lines.add(file + " is a draft, which is never published (advice " + ConsentMessages.STILL_DRAFT.code() + "). "
                    + open.size() + " still open:");
            open.stream().sorted(Comparator.comparingInt(DraftList::turn)).map(DraftList::line).forEach(lines::add);
            lines.add("");
        });
        return lines;
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
