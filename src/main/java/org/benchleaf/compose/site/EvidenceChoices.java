package org.benchleaf.compose.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.page.EvidenceFilter;
import org.benchleaf.page.Paths;
import org.benchleaf.words.Words;

/** By what the cases of a page of evidence can be chosen: technique, paper and treatment. */
final class EvidenceChoices {

    private static final List<String> WAYS = List.of("technique", "paper", "step");

    private final Words words;

    EvidenceChoices(Words words) {
        this.words = words;
    }

    /** The choices that tell the cases apart; empty if none does. */
    Optional<EvidenceFilter> filter(List<CaseCard> cards) {
        List<EvidenceFilter.Choice> choices = new ArrayList<>();
        for (String way : WAYS) {
            Map<String, String> values = new TreeMap<>();
            cards.forEach(card -> values(card, way).forEach(value -> values.putIfAbsent(key(way, value), label(way, value))));
            if (values.size() > 1) {
                choices.add(new EvidenceFilter.Choice("only-" + way, words.say("evidence-filter.by-" + way), values.entrySet().stream()
                        .map(value -> new EvidenceFilter.Value(value.getKey(), value.getValue())).toList()));
            }
        }
        return choices.isEmpty() || cards.size() < 2 ? Optional.empty()
                : Optional.of(new EvidenceFilter(choices, words.group("evidence-filter")));
    }

    /** The keys of all values of a case, with spaces between. */
    String keys(CaseCard card) {
        return WAYS.stream().flatMap(way -> values(card, way).stream().map(value -> key(way, value))).distinct()
                .collect(Collectors.joining(" "));
    }

    /** Technique and paper, as far as they are known, then what was done, in words. */
    String about(CaseCard card) {
        return Stream.of("technique", "paper").flatMap(way -> values(card, way).stream()).collect(Collectors.joining(" · "));
    }

    /** What was done, in words. */
    String treatment(CaseCard card) {
        return values(card, "step").stream().map(step -> label("step", step)).collect(Collectors.joining(", "));
    }

    private static List<String> values(CaseCard card, String way) {
        return (way.equals("step") ? card.steps() : List.of(way.equals("paper") ? card.paper() : card.technique())).stream()
                .filter(value -> !value.isEmpty()).toList();
    }

    private static String key(String way, String value) {
        return way + "-" + Paths.fileName(value);
    }

    private String label(String way, String value) {
        return way.equals("step") ? words.term("step-kind", value) : value;
    }
}
