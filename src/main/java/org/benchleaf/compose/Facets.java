package org.benchleaf.compose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.stream.Collectors;

/** The ways to sort cases: by kind of object, damage, technique, step, material, level. */
enum Facets {
    OBJECT("object", (card, desk) -> List.of(card.kind())),
    DAMAGE("damage", (card, desk) -> card.damages()),
    TECHNIQUE("technique", (card, desk) -> card.technique().isEmpty() ? List.of() : List.of(card.technique())),
    STEP("step", (card, desk) -> card.steps()),
    MATERIAL("material", (card, desk) -> card.materials()),
    LEVEL("level", (card, desk) -> List.of(card.level()));

    private final String word;
    private final BiFunction<CaseCard, SiteDesk, List<String>> values;

    Facets(String word, BiFunction<CaseCard, SiteDesk, List<String>> values) {
        this.word = word;
        this.values = values;
    }

    /** The facet's word in paths and keys. */
    String word() {
        return word;
    }

    /**
     * The cases under each value, values in order of their words.
     *
     * <p>Values that differ only in capitals or signs share a page, so they count as the one that comes first.
     */
    Map<String, List<CaseCard>> sorted(SiteDesk desk) {
        Map<String, List<CaseCard>> sorted = new TreeMap<>();
        Map<String, String> spelled = new HashMap<>();
        for (CaseCard card : desk.cards()) {
            values.apply(card, desk).forEach(value ->
                    sorted.computeIfAbsent(spelled.computeIfAbsent(Paths.slug(value), slug -> value),
                            any -> new ArrayList<>()).add(card));
        }
        return sorted;
    }

    /** A value in words. */
    String label(String value, SiteDesk desk, Words words) {
        return switch (this) {
            case MATERIAL -> desk.library().materials().containsKey(value)
                    ? desk.library().materials().get(value).name() : value;
            case STEP -> words.term("step-kind", value);
            case LEVEL -> words.term("level", value);
            default -> value;
        };
    }

    /** Where the cases of a value are listed: with the material itself, else on a page of their own. */
    String path(String value) {
        return this == MATERIAL ? Paths.material(value) + "#cases" : Paths.browse(word, value);
    }

    /**
     * One group of links for each facet that has values.
     *
     * @param most how many values a group shows, the commonest; a link leads to the rest
     */
    static List<LinkGroups.Group> groups(Sheet sheet, SiteDesk desk, int most) {
        List<LinkGroups.Group> groups = new ArrayList<>();
        for (Facets facet : values()) {
            Map<String, List<CaseCard>> sorted = facet.sorted(desk);
            Set<String> shown = commonest(sorted, most);
            List<LinkGroups.Entry> entries = new ArrayList<>();
            sorted.forEach((value, cards) -> {
                if (shown.contains(value)) {
                    entries.add(new LinkGroups.Entry(
                            sheet.link(facet.label(value, desk, sheet.words()), facet.path(value)),
                            sheet.words().count("browse.cases", cards.size())));
                }
            });
            if (shown.size() < sorted.size()) {
                entries.add(new LinkGroups.Entry(sheet.link(sheet.words().say("browse.all-" + facet.word,
                        "n", sorted.size()), Paths.BROWSE + "#by-" + facet.word), ""));
            }
            if (!entries.isEmpty()) {
                groups.add(new LinkGroups.Group("by-" + facet.word, sheet.words().say("browse.by-" + facet.word),
                        entries));
            }
        }
        return groups;
    }

    private static Set<String> commonest(Map<String, List<CaseCard>> sorted, int most) {
        return sorted.entrySet().stream()
                .sorted(Comparator.comparingInt((Map.Entry<String, List<CaseCard>> entry) -> -entry.getValue().size())
                        .thenComparing(Map.Entry::getKey))
                .limit(most).map(Map.Entry::getKey).collect(Collectors.toSet());
    }
}
