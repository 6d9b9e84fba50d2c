package org.benchleaf.pack;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.benchleaf.message.EditionMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.page.CaseFiles;

/** Verifies what only shows once the whole edition is known: links between batches, and pages that nothing leads to. */
final class WholeCheck {

    private static final String FIRST_PAGE = "index.html";

    private final Workshop workshop;
    private final Map<String, Remembered> batches;
    private final Set<String> paths;
    private final Set<String> unmade;
    private final Map<String, Set<String>> idsOf = new HashMap<>();

    WholeCheck(Workshop workshop, Map<String, Remembered> batches, Set<String> paths, Set<String> unmade) {
        this.workshop = workshop;
        this.batches = new TreeMap<>(batches);
        this.paths = paths;
        this.unmade = unmade;
    }

    Messages faults() {
        Messages messages = new Messages();
        batches.values().forEach(each -> each.batch().leaves().forEach((leaf, page) -> follow(leaf, page, messages)));
        if (unmade.isEmpty()) {
            orphans(messages);
        }
        return messages;
    }

    private void follow(String leaf, String page, Messages messages) {
        int hash = leaf.indexOf('#');
        String path = hash < 0 ? leaf : leaf.substring(0, hash);
        if (CaseFiles.caseOf(path).filter(unmade::contains).isPresent()) {
            return;
        }
        if (!paths.contains(path)) {
            messages.add(EditionMessages.LINK_TO_NOTHING.at(Disk.place(workshop.shown(page)), "link", leaf));
        } else if (hash >= 0 && path.endsWith(".html") && !leaf.endsWith("#top") && !ids(path).contains(leaf.substring(hash + 1))) {
            messages.add(EditionMessages.ANCHOR_MISSING.at(Disk.place(workshop.shown(page)), "link", leaf));
        }
    }

    /** The ids of a page, read once and only if a link from elsewhere names one: few pages are linked so. */
    private Set<String> ids(String path) {
        return idsOf.computeIfAbsent(path, key -> {
            Path staged = workshop.staged().resolve(key);
            Path file = Disk.look(staged).isPresent() ? staged : workshop.site().resolve(key);
            return Disk.reading(file, () -> PageScan.of(Files.readString(file, StandardCharsets.UTF_8)).ids());
        });
    }

    private void orphans(Messages messages) {
        Map<String, List<String>> reach = new HashMap<>();
        batches.values().forEach(each -> reach.putAll(each.batch().reach()));
        Set<String> reached = new HashSet<>(Set.of(FIRST_PAGE));
        Deque<String> next = new ArrayDeque<>(reached);
        while (!next.isEmpty()) {
            for (String page : reach.getOrDefault(next.remove(), List.of())) {
                if (reached.add(page)) {
                    next.add(page);
                }
            }
        }
        new TreeMap<>(reach).keySet().stream().filter(page -> !reached.contains(page))
                .forEach(page -> messages.add(EditionMessages.ORPHAN_PAGE.at(Disk.place(workshop.shown(page)))));
    }
}
