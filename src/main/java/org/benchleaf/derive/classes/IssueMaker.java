package org.benchleaf.derive.classes;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.derive.figure.Reading;
import org.benchleaf.derive.hazard.StepCare;
import org.benchleaf.message.ClassMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.model.ClassPapers;
import org.benchleaf.model.Step;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;

/** Puts down what the papers of a class state, and holds it against what was handed out. */
final class IssueMaker {

    private static final int LETTERS_OF_A_MARK = 12;

    private IssueMaker() {
    }

    /** What the papers of a class state now. */
    static IssuedPapers of(ClassPlan plan, Map<String, StepCare> care) {
        Map<String, ClassPapers.Amount> amounts = new LinkedHashMap<>();
        plan.preparations().forEach(one -> amounts.put(one.solution(), new ClassPapers.Amount(amount(one.batch()), one.batches())));
        // What is cut into pieces stands on the lay-out list by their number and size.
        plan.supplies().orders().stream().filter(order -> order.needed().value().dimension() != Dimension.AREA).forEach(order ->
                amounts.putIfAbsent(order.material(), new ClassPapers.Amount(amount(order.needed().value()), 1)));
        Map<String, String> told = new LinkedHashMap<>();
        amounts.forEach((id, amount) -> told.put(id, amount.text()));
        Map<String, List<String>> cautions = new LinkedHashMap<>();
        plan.steps().forEach(step -> Optional.ofNullable(care.get(step.id())).map(StepCare::cautions)
                .filter(keys -> !keys.isEmpty()).ifPresent(keys -> cautions.put(step.id(), keys)));
        return new IssuedPapers(mark(plan, care, told, cautions), amounts, cautions);
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
        plan.duties().forEach(one -> stated.addAll(List.of(one.kind(), one.step(), one.by(), one.stretches())));
        plan.supplies().layOut().forEach(one -> stated.addAll(List.of(one.id(), one.all().map(Reading::of), one.words(),
                one.size().map(size -> Reading.of(size.height()) + " × " + Reading.of(size.width())))));
        plan.supplies().vessels().forEach(one -> stated.addAll(List.of(one.solution(), one.count(), one.each().map(Reading::of))));
        for (Step step : plan.steps()) {
            stated.addAll(List.of(step.id(), step.instruction(), step.see(), step.watch(), step.ifNot(), step.until(),
                    step.hold().map(hold -> List.of(hold.before(), hold.releasedBy(), plan.source().look(step))),
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

    /** Tells where the class and what was handed out do not agree. */
    static void check(ClassPlan plan, Messages messages) {
        ClassPapers papers = plan.source().papers();
        papers.issue().ifPresent(issue -> {
            papers.issued().stream().filter(one -> one.number() == issue.number() && !one.mark().equals(plan.papers().mark()))
                    .forEach(one ->
                    messages.add(ClassMessages.CHANGED_SINCE_ISSUE.at(issue.place(), "number", one.number(), "on", one.on(),
                            "class", plan.source().id())));
            papers.issued().stream().mapToInt(ClassPapers.Issued::number).max().stream().filter(last -> last > issue.number())
                    .forEach(last -> messages.add(ClassMessages.LOWER_THAN_ISSUED.at(issue.place(), "number", issue.number(),
                            "last", last)));
        });
    }
}
