package org.benchleaf.check;

import static org.benchleaf.check.References.Kind.ARM;
import static org.benchleaf.check.References.Kind.STEP;
import static org.benchleaf.check.References.Kind.TRIAL;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.message.FormMessages;
import org.benchleaf.model.StatedValue;
import org.benchleaf.model.Trial;
import org.benchleaf.quantity.Unit;

/** Reads the trials of a case: arms side by side, and what was measured in each. */
final class TrialForm {

    private static final String NO_UNIT = "none";

    private final Context context;

    TrialForm(Context context) {
        this.context = context;
    }

    List<Trial> read(List<Fields> trials) {
        return trials.stream().map(this::trial).toList();
    }

    private Trial trial(Fields fields) {
        String id = fields.needText("id");
        context.references().declare(TRIAL, id, fields.place("id"));
        Optional<Trial.Ground> ground = ground(fields);
        List<Trial.Arm> arms = fields.groups("arms").stream().map(arm -> arm(id, ground, arm)).toList();
        return new Trial(id, fields.needText("question"), ground, fields.needText("what"), fields.needText("varies"),
                fields.texts("alike"), arms, fields.groups("results").stream().map(result -> measure(id, result)).toList(),
                fields.text("found"), fields.place("id"));
    }

    /** On what it is tried; only a case that is retold, and gets no sheets for the bench by it, may say that nobody told it. */
    private Optional<Trial.Ground> ground(Fields fields) {
        return context.retold() && fields.isScalar("of") && fields.missing("of").isPresent() ? Optional.empty()
                : Optional.of(fields.need(fields.word("of", Trial.Ground::of), "of", Trial.Ground.OBJECT));
    }

    /** An arm on the object is done by steps, so that all is asked of it that is asked of any step. */
    private Trial.Arm arm(String trial, Optional<Trial.Ground> ground, Fields fields) {
        String id = fields.needText("id");
        context.references().declare(ARM, qualified(trial, id), fields.place("id"));
        fields.scalars("steps").forEach(step -> context.references().use(step, STEP));
        boolean control = fields.yes("control", false);
        if (ground.filter(Trial.Ground.OBJECT::equals).isPresent() && !control && fields.scalars("steps").isEmpty()) {
            fields.messages().add(FormMessages.ARM_WITHOUT_STEPS.at(fields.place("id"), "arm", id, "trial", trial));
        }
        return new Trial.Arm(id, fields.needText("is"), control, fields.whole("n"), fields.texts("steps"));
    }

    private Trial.Measure measure(String trial, Fields fields) {
        String measure = fields.needText("measure");
        boolean inWords = isInWords(fields);
        Unit unit = inWords ? Unit.NONE : ResultForm.unit(measure, fields);
        return new Trial.Measure(measure, fields.needText("method"), unit, fields.groups("readings").stream()
                .map(reading -> inWords ? inWords(trial, reading) : reading(trial, unit, reading)).toList());
    }

    /** Whether a measure without a unit tells ranks or grades: no digit stands in what was read of any arm. */
    private static boolean isInWords(Fields fields) {
        List<String> told = fields.groups("readings").stream().flatMap(reading -> Stream.of("before", "after", "difference")
                .flatMap(key -> words(reading, key).stream())).toList();
        boolean bare = !fields.has("unit") || fields.text("unit").filter(NO_UNIT::equals).isPresent();
        return bare && !told.isEmpty() && told.stream().flatMapToInt(String::chars).noneMatch(Character::isDigit);
    }

    private Trial.Reading inWords(String trial, Fields fields) {
        return new Trial.Reading(arm(trial, fields), Optional.empty(), Optional.empty(), words(fields, "before"), words(fields, "after"),
                stated(fields, Unit.NONE, "difference"), words(fields, "rank"));
    }

    private static Optional<String> words(Fields fields, String key) {
        return fields.isScalar(key) && fields.missing(key).isEmpty() ? fields.text(key) : Optional.empty();
    }

    private Trial.Reading reading(String trial, Unit unit, Fields fields) {
        return new Trial.Reading(arm(trial, fields), stated(fields, unit, "before"), stated(fields, unit, "after"), Optional.empty(),
                Optional.empty(), stated(fields, unit, "difference"), words(fields, "rank"));
    }

    private String arm(String trial, Fields reading) {
        reading.scalar("arm").ifPresent(arm -> context.references().use(qualified(trial, arm.text().strip()), arm.place(), ARM));
        return reading.needText("arm");
    }

    /** A value as it is stated; words that are none are told. */
    private static Optional<StatedValue> stated(Fields fields, Unit unit, String key) {
        boolean missing = !fields.has(key) || fields.isScalar(key) && fields.missing(key).isPresent();
        int told = fields.messages().all().size();
        Optional<StatedValue> value = missing ? Optional.empty() : new StatedForm(fields, unit).read(key);
        if (!missing && value.isEmpty() && fields.messages().all().size() == told) {
            fields.soundness().spoil(fields.place(key));
            fields.messages().add(FormMessages.STATED_VALUE.at(fields.place(key), "found", fields.text(key).orElse("")));
        }
        return value;
    }

    private static String qualified(String trial, String arm) {
        return trial + "." + arm;
    }
}
