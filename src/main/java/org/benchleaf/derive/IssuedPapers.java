package org.benchleaf.derive;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.message.ClassMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.model.ClassPapers;
import org.benchleaf.model.Step;
import org.benchleaf.quantity.Quantity;

/**
 * What the papers of a class state, put so that it can be kept beside the class and compared with a later state of it.
 *
 * @param mark of everything that they state
 * @param amounts how much of each solution is made and of each material needed, by id
 * @param cautions keys of the cautions of each step, by its id
 */
public record IssuedPapers(String mark, Map<String, String> amounts, Map<String, List<String>> cautions) {

    public IssuedPapers {
        amounts = Collections.unmodifiableMap(new LinkedHashMap<>(amounts));
        cautions = Collections.unmodifiableMap(new LinkedHashMap<>(cautions));
    }

    private static final int LETTERS_OF_A_MARK = 12;

    /** Of a plan that is not finished. */
    static final IssuedPapers NONE = new IssuedPapers("", Map.of(), Map.of());

    /**
     * What has changed of one amount, or of the cautions of one step; empty on the side where it does not occur.
     *
     * @param of id
     */
    public record Difference<T>(String of, Optional<T> before, Optional<T> now) {
    }

    /** What a class states now. */
    static IssuedPapers of(ClassPlan plan, Map<String, StepCare> care) {
        Map<String, String> amounts = new LinkedHashMap<>();
        plan.preparations().forEach(one -> amounts.put(one.solution(), amount(one.batch())
                + (one.batches() > 1 ? ", " + one.batches() + " times" : "")));
        plan.supplies().orders().forEach(order -> amounts.putIfAbsent(order.material(), amount(order.needed().value())));
        Map<String, List<String>> cautions = new LinkedHashMap<>();
        plan.steps().forEach(step -> Optional.ofNullable(care.get(step.id())).map(StepCare::cautions)
                .filter(keys -> !keys.isEmpty()).ifPresent(keys -> cautions.put(step.id(), keys)));
        return new IssuedPapers(mark(plan, care, amounts, cautions), amounts, cautions);
    }

    /** As it is measured out; how far it may lie off stands with its working. */
    private static String amount(Quantity quantity) {
        return Reading.of(quantity.spread() == Quantity.Spread.TOLERANCE ? quantity.exact() : quantity);
    }

    private static String mark(ClassPlan plan, Map<String, StepCare> care, Object... more) {
        List<Object> stated = new ArrayList<>(List.of(plan.source().title(), plan.source().starts(), plan.source().stations()));
        stated.addAll(List.of(more));
        plan.source().papers().outcomes().forEach(one -> stated.addAll(List.of(one.at(), one.will(), one.metWhen(), one.must())));
        plan.starts().forEach(one -> stated.addAll(List.of(one.solution(), one.begin(), one.readyFor())));
        plan.supplies().layOut().forEach(one -> stated.addAll(List.of(one.id(), one.all().map(Reading::of), one.words())));
        plan.supplies().vessels().forEach(one -> stated.addAll(List.of(one.solution(), one.count(), one.each().map(Reading::of))));
        for (Step step : plan.steps()) {
            stated.addAll(List.of(step.id(), step.instruction(), step.see(), step.watch(), step.ifNot(), step.until(),
                    step.hold().map(hold -> List.of(hold.before(), hold.releasedBy(), hold.look())),
                    Optional.ofNullable(care.get(step.id())).map(StepCare::wear)));
        }
        plan.schedule().map(ScheduleReading::new).ifPresent(reading -> stated.addAll(reading.turns()));
        return hash(stated.toString());
    }

    private static String hash(String text) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)))
                    .substring(0, LETTERS_OF_A_MARK);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    /** The amounts that are others than in an issue. */
    public List<Difference<String>> amountsSince(ClassPapers.Issued before) {
        return differences(before.amounts(), amounts);
    }

    /** The steps whose cautions are others than in an issue, as keys. */
    public List<Difference<List<String>>> cautionsSince(ClassPapers.Issued before) {
        return differences(before.cautions(), cautions);
    }

    private static <T> List<Difference<T>> differences(Map<String, T> before, Map<String, T> now) {
        return Stream.concat(now.keySet().stream(), before.keySet().stream()).distinct()
                .filter(of -> !Objects.equals(before.get(of), now.get(of))).map(of -> new Difference<>(of,
                        Optional.ofNullable(before.get(of)), Optional.ofNullable(now.get(of)))).toList();
    }

    /** Tells where the class and what was handed out do not agree. */
    void check(ClassPlan plan, Messages messages) {
        ClassPapers papers = plan.source().papers();
        papers.issue().ifPresent(issue -> {
            papers.issued().stream().filter(one -> one.number() == issue.number() && !one.mark().equals(mark)).forEach(one ->
                    messages.add(ClassMessages.CHANGED_SINCE_ISSUE.at(issue.place(), "number", one.number(), "on", one.on(),
                            "class", plan.source().id())));
            papers.issued().stream().mapToInt(ClassPapers.Issued::number).max().stream().filter(last -> last > issue.number())
                    .forEach(last -> messages.add(ClassMessages.LOWER_THAN_ISSUED.at(issue.place(), "number", issue.number(),
                            "last", last)));
        });
    }
}
