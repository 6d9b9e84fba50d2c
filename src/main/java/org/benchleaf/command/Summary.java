package org.benchleaf.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.message.ConsentMessages;
import org.benchleaf.message.EditionMessages;
import org.benchleaf.message.Message;
import org.benchleaf.message.Severity;
import org.benchleaf.pack.Edition;
import org.benchleaf.run.Publishing;
import org.benchleaf.run.Told;

/** Words what a run of publishing came to, in a few lines that fit on one screen. */
final class Summary {

    private static final int MOST_KINDS = 12;
    private static final Set<String> CONSENT = Stream.of(ConsentMessages.values()).map(Message.Id::code).collect(Collectors.toSet());

    private Summary() {
    }

    static List<String> of(Publishing.Outcome outcome, List<Path> sites, Optional<Path> templates, long nanos) {
        List<String> lines = new ArrayList<>();
        if (!outcome.isNew()) {
            long errors = outcome.told().stream().filter(Told::isError).count();
            lines.add("Nothing was published: " + count(errors, "error") + " in " + count(outcome.cases(), "case") + ".");
        } else {
            for (int site = 0; site < sites.size(); site++) {
                published(outcome, outcome.editions().get(site), sites.get(site), lines);
            }
        }
        lines.add(row("templates", templates.map(folder -> folder.toString().replace('\\', '/'))
                .orElse("the program's own")));
        kinds(outcome.told(), lines);
        lines.add(row("time", String.format(Locale.ROOT, "%.1f s", nanos / 1e9)));
        return lines;
    }

    /** What was taken down, where nothing else was done. */
    static List<String> ofWithdrawals(List<Message> told) {
        // A case that left two sites is told of twice.
        long cases = told.stream().filter(each -> each.id() == EditionMessages.TAKEN_DOWN)
                .map(each -> each.place().file()).map(folder -> folder.substring(folder.lastIndexOf('/') + 1)).distinct().count();
        List<String> lines = new ArrayList<>(List.of(cases == 0 ? "Nothing was taken down."
                : "Taken down: files of " + count(cases, "case") + ".", "Nothing was made anew."));
        kinds(told.stream().map(Told::of).toList(), lines);
        return lines;
    }

    private static void published(Publishing.Outcome outcome, Edition edition, Path site, List<String> lines) {
        lines.add("Published in " + site.resolve("index.html").toString().replace('\\', '/'));
        lines.add(row("cases", outcome.published() + " of " + outcome.cases()
                + (outcome.kept() == 0 ? "" : ", " + outcome.kept() + " unchanged")));
        lines.add(row("pages", edition.pages() + ", with all files " + edition.files() + " (" + size(edition.bytes()) + ")"));
        lines.add(row("written", edition.written() + (edition.removed() == 0 ? "" : ", removed " + edition.removed())));
        lines.add(row("heaviest", edition.heaviest() + " (" + size(edition.weight()) + " with its pictures)"));
    }

    private static void kinds(List<Told> told, List<String> lines) {
        for (Severity severity : Severity.values()) {
            Map<String, Integer> byCode = new TreeMap<>();
            told.stream().filter(each -> each.severity() == severity)
                    .forEach(each -> byCode.merge(each.code(), 1, Integer::sum));
            if (!byCode.isEmpty()) {
                int all = byCode.values().stream().mapToInt(Integer::intValue).sum();
                lines.add(row(severity.word(), all + ": " + list(byCode)));
            }
        }
    }

    /** First what decides whether pages stand at all, then the kinds with the most messages. */
    private static String list(Map<String, Integer> byCode) {
        List<String> words = byCode.entrySet().stream().sorted(Comparator
                .comparing((Map.Entry<String, Integer> each) -> !CONSENT.contains(each.getKey()))
                .thenComparing(Map.Entry.<String, Integer>comparingByValue().reversed()).thenComparing(Map.Entry.comparingByKey()))
                .map(each -> each.getKey() + (each.getValue() == 1 ? "" : " ×" + each.getValue())).toList();
        return String.join(", ", words.subList(0, Math.min(MOST_KINDS, words.size())))
                + (words.size() > MOST_KINDS ? " and " + (words.size() - MOST_KINDS) + " more kinds" : "");
    }

    private static String row(String name, String value) {
        return String.format(Locale.ROOT, "  %-9s %s", name, value);
    }

    private static String count(long number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }

    private static String size(long bytes) {
        if (bytes < 1_000_000) {
            return String.format(Locale.ROOT, "%.0f kB", Math.ceil(bytes / 1000.0));
        }
        return String.format(Locale.ROOT, "%.1f MB", bytes / 1e6);
    }
}
