package org.benchleaf.command;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.benchleaf.json.JsonText;
import org.benchleaf.model.BenchRecord;
import org.benchleaf.read.YamlText;

/** Writes bench records as lines for the case file, or as data. */
final class RecordText {

    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm");

    private final List<BenchRecord> records;

    RecordText(List<BenchRecord> records) {
        this.records = List.copyOf(records);
    }

    /** One list of steps a record, in YAML; what the case file has no key for stands in remarks. */
    String text() {
        return records.stream().map(RecordText::lines).collect(Collectors.joining("\n"));
    }

    String json() {
        return JsonText.of(records.stream().map(RecordText::data).toList()) + "\n";
    }

    private static String lines(BenchRecord record) {
        StringBuilder text = new StringBuilder("# " + record.caseId() + ", written down at the bench"
                + record.sheet().map(sheet -> "; step sheet of issue " + sheet).orElse("") + "\nsteps:\n");
        record.steps().forEach(entry -> lines(entry).forEach(line -> text.append(line).append('\n')));
        return text.toString();
    }

    private static List<String> lines(BenchRecord.Entry entry) {
        List<String> lines = new ArrayList<>(List.of("  - id: " + YamlText.inBraces(entry.step())));
        entry.released().ifPresent(by -> lines.add(remark("released by " + by.by() + by.role().map(role -> " (" + role + ")").orElse("")
                + by.at().map(at -> ", " + MINUTE.format(at)).orElse(""))));
        entry.began().ifPresent(time -> lines.add(remark("begun " + MINUTE.format(time))));
        entry.ended().ifPresent(time -> lines.add(remark("ended " + MINUTE.format(time))));
        entry.seen().ifPresent(seen -> lines.add(remark("seen " + seen + entry.because().map(why -> ": " + why).orElse(""))));
        entry.pictures().ifPresent(names -> lines.add(remark("pictures: " + names)));
        entry.began().map(LocalDateTime::toLocalDate).ifPresent(day -> lines.add("    on: " + day));
        entry.parts().forEach((part, values) -> lines.add(line(part, values)));
        if (!entry.readings().isEmpty()) {
            lines.addAll(List.of("    bath:", "      readings:"));
            entry.readings().forEach(reading -> lines.add("        - " + group(reading)));
        }
        return lines;
    }

    private static String line(BenchRecord.Noted part, Map<String, String> values) {
        return switch (part.kind()) {
            case TEST -> remark("tested " + values.getOrDefault("what", part.name()) + ": " + values.getOrDefault("result", ""));
            case LOOK -> remark("looked " + values.getOrDefault("what", part.name()) + Optional.ofNullable(values.get("at"))
                    .map(at -> ", " + at).orElse("") + ": " + values.getOrDefault("seen", ""));
            case DAY -> remark("weighed " + values.getOrDefault("on", part.name()) + ": " + values.getOrDefault("mass", ""));
            case WEIGHING, MIST, CHANGE -> "    " + part.name() + ": " + group(values);
        };
    }

    /** A line break in a remark would end it and make front matter of the rest. */
    private static String remark(String text) {
        return "    # " + text.replaceAll("\\R", " ");
    }

    private static String group(Map<String, String> values) {
        return values.entrySet().stream().map(entry -> entry.getKey() + ": " + YamlText.inBraces(entry.getValue()))
                .collect(Collectors.joining(", ", "{", "}"));
    }

    private static Map<String, Object> data(BenchRecord record) {
        Map<String, Object> data = new LinkedHashMap<>();
        data.put("case", record.caseId());
        record.sheet().ifPresent(sheet -> data.put("sheet", sheet));
        record.seat().ifPresent(seat -> {
            data.put("class", seat.course());
            seat.issue().ifPresent(issue -> data.put("issue", issue));
            data.put("station", seat.station());
            put(data, "trainees", seat.trainees());
        });
        data.put("steps", record.steps().stream().map(RecordText::data).toList());
        if (!record.marks().isEmpty()) {
            data.put("outcomes", record.marks().stream().map(RecordText::data).toList());
        }
        return data;
    }

    private static Map<String, Object> data(BenchRecord.Entry entry) {
        Map<String, Object> data = new LinkedHashMap<>();
        data.put("step", entry.step());
        put(data, "done by", entry.account().doneBy());
        put(data, "began", entry.began().map(MINUTE::format));
        put(data, "ended", entry.ended().map(MINUTE::format));
        entry.released().ifPresent(by -> {
            Map<String, Object> release = new LinkedHashMap<>();
            release.put("by", by.by());
            put(release, "role", by.role());
            put(release, "at", by.at().map(MINUTE::format));
            data.put("released", release);
        });
        put(data, "seen", entry.seen());
        put(data, "because", entry.because());
        put(data, "pictures", entry.pictures());
        put(data, "noticed", entry.account().noticed());
        put(data, "deviation", entry.account().deviation());
        put(data, "initials", entry.account().initials());
        entry.parts().forEach((part, values) -> data.put(part.name(), values));
        if (!entry.readings().isEmpty()) {
            data.put("readings", entry.readings());
        }
        return data;
    }

    private static Map<String, Object> data(BenchRecord.Mark mark) {
        Map<String, Object> data = new LinkedHashMap<>(Map.of("at", mark.step()));
        data.put("will", mark.will());
        put(data, "trainee", mark.trainee());
        put(data, "met", mark.met().map(met -> met ? "met" : "not yet"));
        mark.helpToday().ifPresent(help -> data.put("help today", help));
        mark.helpNext().ifPresent(help -> data.put("help next time", help));
        put(data, "assessor", mark.assessor());
        put(data, "remark", mark.remark());
        return data;
    }

    private static void put(Map<String, Object> data, String key, Optional<String> text) {
        text.ifPresent(value -> data.put(key, value));
    }
}
