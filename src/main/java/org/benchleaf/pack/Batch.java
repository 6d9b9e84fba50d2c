package org.benchleaf.pack;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;

/**
 * What is remembered of the files of one case (or of those that all cases share): enough to check the whole edition's
 * links without reading any file again.
 *
 * @param files what was written, by path
 * @param reach for each page, the other pages of the site it leads to
 * @param leaves addresses outside the batch, {@code path} or {@code path#anchor}, each with a page that has it
 * @param heaviest the page that loads most, with its pictures; empty if there is no page
 * @param weight how many bytes that page loads
 */
record Batch(Map<String, Written> files, Map<String, List<String>> reach, Map<String, String> leaves,
        String heaviest, long weight) {

    /**
     * One file as it was written.
     *
     * @param hash SHA-256 of its bytes, in hexadecimal
     * @param size in bytes
     * @param time of its last change, as the disk gave it; 0 if not known
     */
    record Written(String hash, long size, long time) {
    }

    /** A fault of a link that can be told without the rest of the edition. */
    record Fault(String page, String link, Target.Kind kind, String reason) {
    }

    /** A batch that was scanned, and the faults found. */
    record Scanned(Batch batch, List<Fault> faults) {
    }

    /**
     * Follows the links of a batch.
     *
     * @param shared keeps one copy of each path that many pages name
     */
    static Scanned scan(Map<String, Written> files, Map<String, PageScan> pages,
            Map<String, List<PageScan.Link>> styles, UnaryOperator<String> shared) {
        Scan scan = new Scan(files, pages, shared);
        styles.forEach(scan::follow);
        pages.forEach((path, page) -> scan.follow(path, page.links()));
        return new Scanned(new Batch(files, scan.reach, scan.leaves, scan.heaviest, scan.weight), scan.faults);
    }

    /** One walk over the links of a batch. */
    private static final class Scan {

        private final Map<String, Written> files;
        private final Map<String, PageScan> pages;
        private final UnaryOperator<String> shared;
        private final Map<String, List<String>> reach = new TreeMap<>();
        private final Map<String, String> leaves = new TreeMap<>();
        private final List<Fault> faults = new ArrayList<>();
        private String heaviest = "";
        private long weight;

        Scan(Map<String, Written> files, Map<String, PageScan> pages, UnaryOperator<String> shared) {
            this.files = files;
            this.pages = pages;
            this.shared = shared;
        }

        void follow(String page, List<PageScan.Link> links) {
            Set<String> reached = new TreeSet<>();
            Set<String> loaded = new TreeSet<>(Set.of(page));
            for (PageScan.Link link : new LinkedHashSet<>(links)) {
                Target target = Target.of(page, link);
                if (target.kind() == Target.Kind.INSIDE) {
                    inside(page, link, target).ifPresent(faults::add);
                    if (target.path().endsWith(".html") && !target.path().equals(page)) {
                        reached.add(shared.apply(target.path()));
                    }
                    if (link.loads() && !link.alternative()) {
                        loaded.add(target.path());
                    }
                } else if (target.kind() != Target.Kind.OUTSIDE) {
                    faults.add(new Fault(page, link.value(), target.kind(), target.path()));
                }
            }
            if (pages.containsKey(page)) {
                reach.put(page, List.copyOf(reached));
                weigh(page, loaded);
            }
        }

        private Optional<Fault> inside(String page, PageScan.Link link, Target target) {
            if (!files.containsKey(target.path())) {
                String whole = target.anchor().isEmpty() ? target.path() : target.path() + "#" + target.anchor();
                leaves.merge(shared.apply(whole), page, (one, other) -> one.compareTo(other) <= 0 ? one : other);
                return Optional.empty();
            }
            PageScan there = pages.get(target.path());
            boolean found = there == null || target.anchor().isEmpty() || target.anchor().equals("top")
                    || there.ids().contains(target.anchor());
            return found ? Optional.empty() : Optional.of(new Fault(page, link.value(), Target.Kind.INSIDE, ""));
        }

        private void weigh(String page, Set<String> loaded) {
            long sum = loaded.stream().filter(files::containsKey).mapToLong(path -> files.get(path).size()).sum();
            if (sum > weight || sum == weight && page.compareTo(heaviest) < 0) {
                weight = sum;
                heaviest = page;
            }
        }
    }
}
