package org.benchleaf.compose.site;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiFunction;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.part.SiteDesk;
import org.benchleaf.page.LinkGroups;
import org.benchleaf.page.LinkList;
import org.benchleaf.page.Paths;
import org.benchleaf.words.Words;

/** The ways to sort cases: by kind of object, damage, technique, step, material, level. */
public enum Facets {
    OBJECT("object", (card, desk) -> List.of(card.kind())),
    DAMAGE("damage", (card, desk) -> card.damages()),
    TECHNIQUE("technique", (card, desk) -> card.technique().isEmpty() ? List.of() : List.of(card.technique())),
    STEP("step", (card, desk) -> card.steps()),
    MATERIAL("material", (card, desk) -> card.materials()),
    LEVEL("level", (card, desk) -> card.level().isEmpty() ? List.of() : List.of(card.level()));

    private final String word;
    private final BiFunction<CaseCard, SiteDesk, List<String>> values;

    Facets(String word, BiFunction<CaseCard, SiteDesk, List<String>> values) {
        this.word = word;
        this.values = values;
    }

    /** The facet's word in paths and keys. */
    public String word() {
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

    /** What a value means, where that is no word of its own. */
    Optional<String> lead(String value, Words words) {
        return this == LEVEL ? Optional.of(words.say("browse.level-lead", "for", words.term("level-for", value))) : Optional.empty();
    }

    /** Where the cases of a value are listed: with the material itself, else on a page of their own. */
    String path(String value) {
        return this == MATERIAL ? Paths.material(value) + "#cases" : Paths.browse(word, value);
    }

    /** One group of links for each facet that has values. */
    static List<LinkGroups.Group> groups(Sheet sheet, SiteDesk desk) {
        List<LinkGroups.Group> groups = new ArrayList<>();
        for (Facets facet : values()) {
            List<LinkGroups.Entry> entries = new ArrayList<>();
            facet.sorted(desk).forEach((value, cards) -> entries.add(new LinkGroups.Entry(
                    sheet.link(facet.label(value, desk, sheet.words()), facet.path(value)),
                    sheet.words().count("browse.cases", cards.size()))));
            if (!entries.isEmpty()) {
                groups.add(new LinkGroups.Group(facet.anchor(), sheet.words().say("browse.by-" + facet.word), entries));
            }
        }
        return groups;
    }

    /** A link to each facet that has values, with how many. */
    static List<LinkList.Entry> ways(Sheet sheet, SiteDesk desk) {
        List<LinkList.Entry> ways = new ArrayList<>();
        for (Facets facet : values()) {
            int count = facet.sorted(desk).size();
            if (count > 0) {
                ways.add(new LinkList.Entry(sheet.link(sheet.words().say("browse.by-" + facet.word),
                        Paths.BROWSE + "#" + facet.anchor()), sheet.words().count("library.values", count)));
            }
        }
        return ways;
    }

    private String anchor() {
        return "by-" + word;
    }
}
