package org.benchleaf.command;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.benchleaf.message.OpenQuestion;
import org.benchleaf.run.Told;

/**
 * Lists what the publications of retold cases leave open of the rules, a line each: nothing that has to be answered. What one missing
 * fact leaves open of several rules or steps has one line.
 */
final class PublicationGaps {

    private PublicationGaps() {
    }

    /** The lines of all retold cases, by file what the publication of each leaves open; none if none does. */
    static List<String> of(Map<String, List<Told>> byFile) {
        List<String> lines = new ArrayList<>();
        byFile.forEach((file, open) -> {
            Collection<List<Told>> matters = together(open);
            lines.add(file + " is retold, and its publication leaves " + matters.size() + " open of what the rules ask. Enter what the"
                    + " publication tells of it and leave the rest: the results tell it as not given, and no sheets for the bench"
                    + " are made while a rule is not kept. 'check --explain CODE' tells each rule.");
            matters.forEach(some -> lines.add(some.size() == 1 ? line(some.get(0)) : line(some)));
            lines.add("");
        });
        return lines;
    }

    /** What one missing fact leaves open, together, at its first place; all else by itself. */
    private static Collection<List<Told>> together(List<Told> open) {
        Map<String, List<Told>> some = new LinkedHashMap<>();
        open.forEach(message -> {
            String fact = asked(message).isNone() ? line(message) : asked(message).fact();
            List<Told> same = some.computeIfAbsent(fact, key -> new ArrayList<>());
            if (same.stream().noneMatch(other -> line(other).equals(line(message)))) {
                same.add(message);
            }
        });
        return some.values();
    }

    private static OpenQuestion asked(Told message) {
        return message.listed().asks();
    }

    private static String line(Told message) {
        return "  line " + message.line() + ", " + message.code() + ": " + message.listed().what();
    }

    private static String line(List<Told> same) {
        List<String> steps = same.stream().map(message -> asked(message).step()).filter(step -> !step.isEmpty()).distinct().toList();
        return "  line " + same.get(0).line() + ", " + same.stream().map(Told::code).distinct().collect(Collectors.joining(", "))
                + ": Whether these rules are kept" + (steps.isEmpty() ? "" : " at " + (steps.size() == 1 ? "step" : "steps") + " '"
                + String.join("', '", steps) + "'") + " cannot be told: " + asked(same.get(0)).fact() + ".";
    }
}
