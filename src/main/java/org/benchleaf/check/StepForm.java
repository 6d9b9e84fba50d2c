package org.benchleaf.check;

import static org.benchleaf.check.References.Kind.ITEM;
import static org.benchleaf.check.References.Kind.MATERIAL;
import static org.benchleaf.check.References.Kind.MEDIUM;
import static org.benchleaf.check.References.Kind.SOLUTION;
import static org.benchleaf.check.References.Kind.STEP;
import static org.benchleaf.quantity.Dimension.SHARE;
import static org.benchleaf.quantity.Dimension.TIME;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.message.FormMessages;
import org.benchleaf.model.CalendarSpan;
import org.benchleaf.model.StatedTime;
import org.benchleaf.model.Step;
import org.benchleaf.model.StepKind;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Reads the steps of a case. */
final class StepForm {

    private static final String OTHER = "other";

    private final Context context;
    private final PartForm parts;

    StepForm(Context context) {
        this.context = context;
        this.parts = new PartForm(context);
    }

    List<Step> read(List<Fields> steps) {
        List<Step> read = new ArrayList<>();
        for (Fields fields : steps) {
            read.add(step(fields));
        }
        checkDays(read, steps);
        checkCircles(read, steps);
        return read;
    }

    private Step step(Fields fields) {
        String id = fields.needText("id");
        context.references().declare(STEP, id, fields.place("id"));
        fields.scalars("after").forEach(other -> context.references().use(other, STEP));
        fields.scalars("avoid").forEach(medium -> context.references().use(medium, MEDIUM));
        fields.scalars("uses").forEach(used -> context.references().use(used, MATERIAL, SOLUTION));
        fields.scalars("of").forEach(item -> context.references().use(item, ITEM));
        Optional<StatedTime> takes = TimeForm.read(fields, "takes", context.library().formulary());
        Optional<Quantity> atMost = fields.positive("at most", TIME);
        if (takes.isPresent() && atMost.isPresent()
                && takes.get().span().lowIn(Unit.MINUTE) > atMost.get().highIn(Unit.MINUTE)) {
            fields.messages().add(FormMessages.TAKES_OVER_MOST.at(fields.place("takes"), "step", id));
        }
        return new Step(id, kind(fields), fields.text("named"), fields.texts("of"), fields.needText("do"), fields.text("see"),
                fields.text("watch"), fields.text("if not"),
                fields.text("until"), fields.texts("looked for"), takes, fields.missing("takes"), handsOn(fields), fields.texts("after"),
                wait(fields), atMost, fields.group("hold").map(StepForm::hold), fields.text("by").orElse("conservator"),
                fields.whole("people").orElse(1), fields.yes("overnight", false),
                within(fields).isPresent() ? Optional.empty() : fields.date("on"), within(fields),
                fields.text("area").orElse("whole"), fields.text("edge"),
                fields.text("applied").filter(word -> fields.missing("applied").isEmpty()), fields.texts("avoid"), fields.texts("uses"),
                fields.yes("practised", false), fields.group("emergency").map(StepForm::emergency),
                fields.group("resize").map(StepForm::decision), fields.text("aim"), fields.text("instead"),
                parts.read(fields), fields.place("id"));
    }

    /** The kind that is written, or the nearest one of a step that the list lacks. */
    private static StepKind kind(Fields fields) {
        boolean free = fields.text("kind").filter(OTHER::equals).isPresent();
        if (free ? fields.text("named").isEmpty() || fields.text("nearest").isEmpty()
                : fields.text("named").isPresent() || fields.text("nearest").isPresent()) {
            String what = free ? "A step of kind 'other' needs its name and its nearest kind."
                    : "'named:' and 'nearest:' belong to a step of kind 'other'.";
            fields.messages().add(FormMessages.FREE_STEP.at(fields.place("kind"), "what", what));
        }
        String key = free ? "nearest" : "kind";
        return fields.need(fields.word(key, StepKind::of), key, StepKind.EXAMINATION);
    }

    /** The month or the year of a step, where only that is written. */
    private static Optional<CalendarSpan> within(Fields fields) {
        return fields.isScalar("on") ? fields.text("on").flatMap(CalendarSpan::read) : Optional.empty();
    }

    /** A time, a day, or what must be seen first, in words. */
    private Optional<Step.Wait> wait(Fields fields) {
        Optional<String> text = fields.text("wait");
        if (text.isEmpty() || fields.missing("wait").isPresent()) {
            return Optional.empty();
        }
        String written = text.get();
        if (!Character.isDigit(written.charAt(0)) && !TimeForm.isTold(written)) {
            return Optional.of(new Step.Wait(Optional.empty(), Optional.empty(), text));
        }
        return Optional.of(written.length() == LocalDate.EPOCH.toString().length() && written.indexOf('-') > 0
                ? new Step.Wait(Optional.empty(), fields.date("wait"), Optional.empty())
                : new Step.Wait(TimeForm.read(fields, "wait", context.library().formulary()), Optional.empty(), Optional.empty()));
    }

    private Optional<StatedTime> handsOn(Fields fields) {
        Optional<String> text = fields.isScalar("hands-on") ? fields.text("hands-on") : Optional.empty();
        if (text.filter(TimeForm::isTold).isPresent()) {
            return TimeForm.read(fields, "hands-on", context.library().formulary());
        }
        return (text.filter(written -> written.endsWith("%")).isPresent() ? fields.within("hands-on", 0, 100, SHARE)
                : fields.quantity("hands-on", TIME, SHARE)).map(StatedTime::of);
    }

    private static Step.Hold hold(Fields hold) {
        return new Step.Hold(hold.needText("before"), hold.needText("released by"), hold.text("look"),
                hold.text("meanwhile"), hold.positive("takes", TIME), hold.positive("at most", TIME));
    }

    private static Step.Emergency emergency(Fields emergency) {
        return new Step.Emergency(emergency.needText("averted"), emergency.date("report by"));
    }

    private static Step.Decision decision(Fields decision) {
        boolean yes = decision.need(decision.word("decision", Fields::yesOrNo), "decision", false);
        return new Step.Decision(yes, decision.text("why"));
    }

    private static void checkDays(List<Step> steps, List<Fields> fields) {
        Map<String, Step> byId = new HashMap<>();
        steps.forEach(step -> byId.putIfAbsent(step.id(), step));
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            for (String before : step.after()) {
                Optional<Step> earlier = Optional.ofNullable(byId.get(before));
                if (step.lastDay().isPresent() && earlier.flatMap(Step::firstDay).filter(step.lastDay().get()::isBefore).isPresent()) {
                    fields.get(i).messages().add(FormMessages.DATES_AGAINST_ORDER.at(fields.get(i).place("on"),
                            "step", step.id(), "on", fields.get(i).text("on").orElse(""), "before", before,
                            "other", fields.get(steps.indexOf(earlier.get())).text("on").orElse("")));
                }
            }
        }
    }

    private static void checkCircles(List<Step> steps, List<Fields> fields) {
        Map<String, List<String>> waits = new HashMap<>();
        steps.forEach(step -> waits.putIfAbsent(step.id(), step.after()));
        Circles circles = new Circles(waits);
        for (int i = 0; i < steps.size(); i++) {
            int at = i;
            circles.through(steps.get(i).id()).ifPresent(path -> fields.get(at).messages().add(FormMessages.CIRCLE.at(
                    fields.get(at).place("after"), "id", steps.get(at).id(), "path", String.join(" after ", path))));
        }
    }
}
