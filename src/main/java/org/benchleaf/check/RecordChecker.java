package org.benchleaf.check;

import static org.benchleaf.quantity.Dimension.CONDUCTIVITY;
import static org.benchleaf.quantity.Dimension.MASS;
import static org.benchleaf.quantity.Dimension.TEMPERATURE;
import static org.benchleaf.quantity.Dimension.VOLUME;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.message.Messages;
import org.benchleaf.model.BenchRecord;
import org.benchleaf.model.BenchRecord.Noted;
import org.benchleaf.read.Node;
import org.benchleaf.read.RecordDraft;

/** Checks that a bench record can be understood, with each amount in it, and turns it into a record. */
public final class RecordChecker {

    private static final List<String> MASSES = List.of("dry", "wet", "restrained", "wet with web", "wet web", "day before", "taken out");

    /** When a sheet went into a bath and out of it, and when the bath was read. */
    private static final List<String> TIMES = List.of("laid in", "lifted out", "read at");

    private final Messages messages;

    private RecordChecker(Messages messages) {
        this.messages = messages;
    }

    /** The record; what is wrong with it is added to the messages of the draft, and then there is none. */
    public static Optional<BenchRecord> check(RecordDraft draft) {
        return draft.root().flatMap(root -> new RecordChecker(draft.messages()).record(root));
    }

    private Optional<BenchRecord> record(Node.Mapping root) {
        Form.RECORD.check(root, messages);
        Fields fields = new Fields(root, new Fields.Soundness(messages));
        List<BenchRecord.Entry> steps = fields.groups("steps").stream().map(RecordChecker::entry).toList();
        Optional<BenchRecord.Seat> seat = fields.text("class").map(course -> new BenchRecord.Seat(course, fields.whole("issue"),
                fields.need(fields.whole("station"), "station", 1), fields.text("trainees"), fields.place("station")));
        List<BenchRecord.Mark> marks = fields.groups("outcomes").stream().map(RecordChecker::mark).toList();
        return messages.hasErrors() ? Optional.empty()
                : Optional.of(new BenchRecord(fields.needText("case"), fields.text("sheet"), seat, steps, marks));
    }

    private static BenchRecord.Mark mark(Fields outcome) {
        return new BenchRecord.Mark(outcome.needText("at"), outcome.needText("will"), outcome.text("trainee"),
                outcome.text("met").map("met"::equals), outcome.whole("help today"), outcome.whole("help next time"),
                outcome.text("assessor"), outcome.text("remark"), outcome.place());
    }

    private static BenchRecord.Entry entry(Fields step) {
        Map<Noted, Map<String, String>> parts = new LinkedHashMap<>();
        step.group("weighing").ifPresent(weighing -> {
            MASSES.forEach(key -> weighing.positive(key, MASS));
            parts.put(new Noted(Noted.Kind.WEIGHING, 0), texts(weighing));
        });
        step.group("mist").ifPresent(mist -> {
            mist.positive("amount", VOLUME);
            parts.put(new Noted(Noted.Kind.MIST, 0), texts(mist));
        });
        step.groups("tests").forEach(test -> parts.put(noted(test, "test", Noted.Kind.TEST), texts(test)));
        step.groups("changes").forEach(change -> parts.put(noted(change, "change", Noted.Kind.CHANGE), change(change)));
        step.groups("looks").forEach(look -> {
            look.moment("at", LocalDateTime.MIN);
            parts.put(noted(look, "look", Noted.Kind.LOOK), texts(look));
        });
        step.groups("days").forEach(day -> {
            day.positive("mass", MASS);
            parts.put(noted(day, "day", Noted.Kind.DAY), texts(day));
        });
        List<Map<String, String>> readings = new ArrayList<>();
        step.groups("readings").forEach(reading -> readings.add(reading(reading)));
        return new BenchRecord.Entry(step.needText("step"), step.moment("began", LocalDateTime.MIN),
                step.moment("ended", LocalDateTime.MIN),
                step.group("released").map(by -> new BenchRecord.Release(by.needText("by"), by.text("role"),
                        by.moment("at", LocalDateTime.MIN))),
                step.text("seen"), step.text("because"), step.text("pictures"), readings, parts,
                new BenchRecord.Account(step.text("done by"), step.text("noticed"), step.text("deviation"), step.text("initials")),
                step.place());
    }

    private static Noted noted(Fields group, String number, Noted.Kind kind) {
        return new Noted(kind, group.whole(number).orElse(0));
    }

    private static Map<String, String> change(Fields change) {
        change.moment("changed at", LocalDateTime.MIN);
        return texts(change);
    }

    private static Map<String, String> reading(Fields reading) {
        reading.whole("bath");
        reading.ph("pH fresh");
        reading.ph("pH used");
        reading.positive("conductivity", CONDUCTIVITY);
        reading.positive("added", VOLUME);
        reading.quantity("temperature", TEMPERATURE);
        TIMES.forEach(key -> reading.moment(key, LocalDateTime.MIN));
        return texts(reading);
    }

    private static Map<String, String> texts(Fields fields) {
        Map<String, String> texts = new LinkedHashMap<>();
        fields.keys().forEach(key -> fields.text(key).ifPresent(text -> texts.put(key, text)));
        return texts;
    }
}
